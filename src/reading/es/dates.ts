import type { Part, Said, Unit } from '../when.ts'
import { ES_TENS, ES_UNITS } from './numbers.ts'

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '))
const table = (rows: Record<string, number>): ReadonlyMap<string, number> =>
  new Map(Object.entries(rows).flatMap(([words, value]) => words.split(' ').map(word => [word, value] as const)))
const day = (n: number): Said => ({ as: 'day', n })
/** Before three in the morning it is still the evening before to the one who writes. */
const own = (n: number): Said => ({ as: 'day', n, own: true })
const date = (month: number, dayNo: number): Said => ({ as: 'date', month, day: dayNo })

/** Phrases that mean a day by themselves; accents folded, ñ is n. */
export const ES_PHRASES: [words: string, said: Said, part?: Part][] = [
  ['hoy, oy, hoi, el dia de hoy, hoy dia, hace rato, hace un rato, hace ratito, hace un ratito, hace poquito', own(0)],
  ['esta manana, esta manaña, hoy temprano, esta madrugada', own(0), 'morning'],
  ['esta tarde', own(0), 'afternoon'],
  ['esta noche, sta noche', own(0), 'night'],
  ['este mediodia, este medio dia', own(0), 'noon'],
  ['ayer, aller, ayr, el dia de ayer', day(-1)],
  ['anoche, anohce, anoce, anche, anoxe, la noche de ayer, ayer noche, ayer en la noche, ayer por la noche', day(-1), 'night'],
  ['antier, antes de ayer, anteayer, antiayer, antes de aller, antyer, antesdeayer', day(-2)],
  ['el otro dia', { as: 'shift', n: -3, unit: 'day', loose: true }],
  ['la otra noche', { as: 'shift', n: -3, unit: 'day', loose: true }, 'night'],
  ['antenoche, anteanoche, antes de anoche, antenoches, antier en la noche, antier noche', day(-2), 'night'],
  ['pasado manana', own(2)],
  ['de hoy en ocho, de hoy en 8', day(7)],
  ['de hoy en quince, de hoy en 15', day(14)],
  [
    'fin de mes, a fin de mes, fin del mes, a fines de mes, fines de mes, a finales de mes, finales de mes, el fin de mes, al final del mes, final de mes',
    { as: 'date', day: 0 },
  ],
  ['fin de ano, a fin de ano, fin del ano, ano viejo', date(12, 31)],
  ['fin de semana, el fin de semana, este fin de semana, el finde, este finde', { as: 'period', unit: 'weekend', n: 0 }],
  ['el fin de semana pasado, fin de semana pasado, el pasado fin de semana, el finde pasado', { as: 'period', unit: 'weekend', n: -1 }],
  ['el proximo fin de semana, proximo fin de semana', { as: 'period', unit: 'weekend', n: 1 }],
  ['la ultima semana', { as: 'run', n: 7, unit: 'day' }],
  ['el ultimo mes', { as: 'run', n: 1, unit: 'month' }],
  ['esta semana, lo que va de la semana, lo que va de esta semana', { as: 'period', unit: 'week', n: 0 }],
  ['la semana pasada, semana pasada, la pasada semana, la semana anterior', { as: 'period', unit: 'week', n: -1 }],
  ['la semana antepasada, semana antepasada', { as: 'period', unit: 'week', n: -2 }],
  [
    'la proxima semana, proxima semana, la semana proxima, la semana que viene, la semana que entra, semana que entra, semana que viene',
    { as: 'period', unit: 'week', n: 1 },
  ],
  ['este mes, lo que va del mes, lo que va de este mes', { as: 'period', unit: 'month', n: 0 }],
  ['el mes pasado, mes pasado, el pasado mes, el mes anterior', { as: 'period', unit: 'month', n: -1 }],
  ['el proximo mes, proximo mes, el mes proximo, el mes que viene, el mes que entra', { as: 'period', unit: 'month', n: 1 }],
  ['este ano, lo que va del ano', { as: 'period', unit: 'year', n: 0 }],
  ['el ano pasado, ano pasado, el ano anterior', { as: 'period', unit: 'year', n: -1 }],
  ['el proximo ano, proximo ano, el ano que viene, el ano que entra', { as: 'period', unit: 'year', n: 1 }],
  ['navidad, la navidad, navidades', date(12, 25)],
  ['nochebuena, noche buena, la nochebuena', date(12, 24)],
  ['ano nuevo', date(1, 1)],
  ['dia de muertos, dia de los muertos', date(11, 2)],
  ['dia de la virgen', date(12, 12)],
  ['dia de reyes', date(1, 6)],
  ['dia de gracias, dia de accion de gracias, accion de gracias', { as: 'feast', name: 'thanksgiving' }],
  ['domingo de pascua, pascua', { as: 'feast', name: 'easter' }],
  ['viernes santo', { as: 'feast', name: 'good friday' }],
]

/** Parts of the day that stand on their own; "mañana" is a part only in these and behind an hour. */
export const ES_PART_PHRASES: [words: string, part: Part][] = [
  [
    'en la manana, por la manana, a la manana, toda la manana, en la mananita, en la madrugada, por la madrugada, de madrugada, muy temprano en la manana',
    'morning',
  ],
  ['en la tarde, por la tarde, a la tarde, toda la tarde, en la tardecita', 'afternoon'],
  ['en la noche, por la noche, a la noche, toda la noche, de noche', 'night'],
]
/** Parts that need a day before them: "ayer tarde"; a part before a day: "la noche del viernes". */
export const ES_PARTS: ReadonlyMap<string, Part> = new Map<string, Part>([
  ['tarde', 'afternoon'],
  ['noche', 'night'],
  ['temprano', 'morning'],
])
/** Behind an hour: "6 de la tarde". */
export const ES_HOUR_PARTS: ReadonlyMap<string, Part> = new Map<string, Part>([
  ['manana', 'morning'],
  ['mananita', 'morning'],
  ['madrugada', 'morning'],
  ['tarde', 'afternoon'],
  ['noche', 'night'],
  ['mediodia', 'noon'],
])
/** Where a bare hour looks ahead instead of back. */
export const ES_AHEAD = set('recuerdame recuerdanos recuerdeme recuerda recordatorio recordar acuerdame acuerdate avisame alarma')
export const ES_JOINS = set('en , como')
/** Between two days: "del lunes al miercoles". */
export const ES_UNTIL = set('a al hasta -')
export const ES_BETWEEN = set('de del desde entre')
export const ES_SINCE = set('desde')

export const ES_WEEKDAYS = table({
  'domingo dom domigo domingos': 0,
  'lunes lun lune': 1,
  'martes marte': 2,
  'miercoles mier mie miercols mierkoles miercole': 3,
  'jueves jue juev jueve juebes': 4,
  'viernes vie vier biernes vierne bierne': 5,
  'sabado sab savado sabdo': 6,
})
export const ES_MONTHS = table({
  'enero ene': 1,
  'febrero feb': 2,
  'marzo mar marso': 3,
  'abril abr': 4,
  mayo: 5,
  'junio jun': 6,
  'julio jul': 7,
  'agosto ago': 8,
  'septiembre setiembre sept sep set': 9,
  'octubre oct': 10,
  'noviembre nov': 11,
  'diciembre dic disiembre': 12,
})
/** Short forms that mean something else in a sentence of either language. */
export const ES_CLOUDY = set('mar ago set')
export const ES_SEASONS = table({ primavera: 3, verano: 6, otono: 9, invierno: 12 })
export const ES_SPANS = new Map<string, Unit>([
  ...['dia', 'dias'].map(w => [w, 'day'] as const),
  ...['semana', 'semanas', 'sem'].map(w => [w, 'week'] as const),
  ...['mes', 'meses'].map(w => [w, 'month'] as const),
  ...['ano', 'anos'].map(w => [w, 'year'] as const),
  ...['hora', 'horas', 'hrs', 'hr'].map(w => [w, 'hour'] as const),
  ...['minuto', 'minutos', 'min', 'mins'].map(w => [w, 'minute'] as const),
  ...['noche', 'noches'].map(w => [w, 'night'] as const),
])
export const ES_SMALL: ReadonlyMap<string, number> = new Map(Object.entries({ ...ES_UNITS, ...ES_TENS, un: 1, una: 1 }))
/** "unos días": about three. */
export const ES_FEW = set('unos unas pocos pocas algunos algunas')
export const ES_FOLLOW = set(
  'a al le les para y e o en con se nos que por como hubo cayo hay no si tapamos echamos dimos pusimos pongo toca hasta , -',
)
export const ES_PICKING = set('borra quita cancela elimina es no el la en del al sobre a de')
/** Words whose own number stands behind them: "viaje 12". */
export const ES_NUMBERED = set('viaje carga troca pila silo numero lote corral caja tractor monton')
