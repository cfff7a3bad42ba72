import type { Found, Rule, Words } from '../days.ts'
import { ES_CLOUDY as CLOUDY, ES_MONTHS as MONTHS, ES_SMALL as SMALL } from './dates.ts'

export const dayNo = (s: Words, i: number): { to: number; n: number; first?: boolean } | undefined => {
  const plain = s.number(i)
  if (plain !== undefined) return plain >= 1 && plain <= 31 ? { to: i + 1, n: plain } : undefined
  const word = s.w[i] ?? ''
  if (/^(primero|primer|1ro|1ero|1er|1º|1°)$/.test(word)) return { to: i + 1, n: 1, first: true }
  if (word === 'treinta') return s.w[i + 1] === 'y' && /^(uno|un)$/.test(s.w[i + 2] ?? '') ? { to: i + 3, n: 31 } : { to: i + 1, n: 30 }
  const small = SMALL.get(word)
  return small !== undefined && small >= 1 && small <= 31 && word !== 'un' && word !== 'una' ? { to: i + 1, n: small } : undefined
}

export const yearAt = (s: Words, i: number): { to: number; year?: number } => {
  const k = s.w[i] === 'de' || s.w[i] === 'del' || s.w[i] === ',' ? i + 1 : i
  const year = s.number(k)
  return year !== undefined && year >= 2000 && year < 2100 && /^\d{4}$/.test(s.tokens[k]!.text) && !s.measure(k + 1)
    ? { to: k + 1, year }
    : { to: i }
}

/** "28 de mayo", "3 sept", "primero de junio del 2027". */
export const dayMonth = (s: Words, i: number): Found | undefined => {
  const d = dayNo(s, i)
  if (!d) return undefined
  const of = s.w[d.to] === 'de'
  const at = of ? d.to + 1 : d.to
  const name = s.w[at] ?? ''
  const month = MONTHS.get(name)
  if (month === undefined) {
    // "el 15 del mes pasado", "el 15 de este mes"
    const k = s.w[d.to] === 'del' || of ? d.to + 1 : -1
    if (k < 0) return undefined
    if (s.w[k] === 'este' && s.w[k + 1] === 'mes') return { to: k + 2, said: { as: 'date', day: d.n, months: 0 } }
    if (s.w[k] === 'proximo' && s.w[k + 1] === 'mes') return { to: k + 2, said: { as: 'date', day: d.n, months: 1 } }
    if (s.w[k] === 'mes' && s.w[k + 1] === 'pasado') return { to: k + 2, said: { as: 'date', day: d.n, months: -1 } }
    if (s.w[k] === 'mes' && s.w[k + 1] === 'que' && /^(viene|entra)$/.test(s.w[k + 2] ?? ''))
      return { to: k + 3, said: { as: 'date', day: d.n, months: 1 } }
    return undefined
  }
  if (!of && s.numbered(i)) return undefined
  if (!of && (CLOUDY.has(name) || (!d.first && s.number(i) === undefined))) return undefined
  const y = yearAt(s, at + 1)
  return { to: y.to, said: { as: 'date', month, day: d.n, year: y.year } }
}

/** "mayo 28". */
export const monthDay = (s: Words, i: number): Found | undefined => {
  const month = MONTHS.get(s.w[i] ?? '')
  if (month === undefined || CLOUDY.has(s.w[i]!)) return undefined
  const d = dayNo(s, i + 1)
  if (!d || s.measure(d.to) || s.number(i + 1) === undefined) return undefined
  const y = yearAt(s, d.to)
  return { to: y.to, said: { as: 'date', month, day: d.n, year: y.year } }
}

/** "a fines de mayo", "principios de junio", "mediados de sept". */
export const piece: Rule = (s, i) => {
  let k = s.w[i] === 'a' ? i + 1 : i
  const slice = /^(principios|principio|inicios)$/.test(s.w[k] ?? '')
    ? 0
    : /^mediados$/.test(s.w[k] ?? '')
      ? 1
      : /^(fines|finales|fin|final)$/.test(s.w[k] ?? '')
        ? 2
        : -1
  if (slice < 0 || s.w[k + 1] !== 'de') return undefined
  k += 2
  const month = MONTHS.get(s.w[k] ?? '')
  if (month === undefined) return undefined
  const y = yearAt(s, k + 1)
  return { to: y.to, said: { as: 'piece', month, year: y.year, a: [1, 11, 21][slice]!, b: [10, 20, 0][slice]!, at: [5, 15, 25][slice]! } }
}

/** "del 3 al 9 de sept", "del 3 al 9". */
export const fromTo: Rule = (s, i) => {
  const a = dayNo(s, i + 1)
  if (!a || !/^(al|a)$/.test(s.w[a.to] ?? '') || s.number(i + 1) === undefined) return undefined
  const b = dayNo(s, a.to + 1)
  if (!b || s.measure(b.to)) return undefined
  const full = dayMonth(s, a.to + 1)
  if (full?.said.as === 'date') return { to: full.to, said: { ...full.said, day: a.n }, until: full.said }
  return s.w[i] === 'del' && s.w[a.to] === 'al' && b.n > a.n
    ? { to: b.to, said: { as: 'date', day: a.n }, until: { as: 'date', day: b.n } }
    : undefined
}
