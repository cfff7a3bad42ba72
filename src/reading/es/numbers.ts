/** Spanish number words, accents folded. */
export const ES_UNITS: Record<string, number> = {
  cero: 0, uno: 1, dos: 2, tres: 3, cuatro: 4, cinco: 5, sinco: 5, seis: 6, ceis: 6, siete: 7, ciete: 7, ocho: 8, hocho: 8, nueve: 9, nuebe: 9, diez: 10, dies: 10,
  once: 11, onse: 11, doce: 12, dose: 12, trece: 13, trese: 13, catorce: 14, catorse: 14, quince: 15, quinse: 15, dieciseis: 16, diesiseis: 16, diecisiete: 17, dieciocho: 18, diesiocho: 18,
  diecinueve: 19, veintiuno: 21, veintiun: 21, veintiuna: 21, veintidos: 22, veintitres: 23, veinticuatro: 24, veinticinco: 25, veintiseis: 26, veintisiete: 27, veintiocho: 28,
  veintinueve: 29, bentidos: 22, vientidos: 22, veinteseis: 26,
}
export const ES_TENS: Record<string, number> = {
  veinte: 20, beinte: 20, vente: 20, treinta: 30, trenta: 30, cuarenta: 40, quarenta: 40, cincuenta: 50, sincuenta: 50, sesenta: 60, cecenta: 60, setenta: 70, ochenta: 80, noventa: 90,
}
export const ES_HUNDREDS: Record<string, number> = {
  cien: 100, ciento: 100, sien: 100, siento: 100, doscientos: 200, doscientas: 200, dosientos: 200, dosientas: 200, trescientos: 300, trescientas: 300, tresientos: 300, tresientas: 300,
  cuatrocientos: 400, cuatrocientas: 400, quinientos: 500, quinientas: 500, seiscientos: 600, seiscientas: 600, setecientos: 700, setecientas: 700, ochocientos: 800, ochocientas: 800, novecientos: 900, novecientas: 900,
}
export const ES_COUNTS: Record<string, number> = { par: 2, docena: 12, dosena: 12, docenas: 12 }
