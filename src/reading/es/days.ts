import type { Found, Rule, Words } from '../days.ts'
import type { Said, Unit } from '../when.ts'
import {
  ES_CLOUDY as CLOUDY,
  ES_FEW as FEW,
  ES_FOLLOW as FOLLOW,
  ES_MONTHS as MONTHS,
  ES_PICKING as PICKING,
  ES_SEASONS as SEASONS,
  ES_SMALL as SMALL,
  ES_SPANS as UNITS,
  ES_WEEKDAYS as WEEKDAYS,
} from './dates.ts'
import { dayMonth, dayNo, fromTo, monthDay, piece, yearAt } from './monthDays.ts'

const WEEKDAY_OR_AYER = /^(?:lunes|martes|miercoles|jueves|viernes|sabado|domingo|ayer|antier|anteayer)$/

const spanAt = (s: Words, i: number): { to: number; n: number; unit: Unit; loose?: boolean } | undefined => {
  let k = i
  let n = s.tokens[k]?.kind === 'number' && s.w[k] ? s.tokens[k]!.value : undefined
  let loose: boolean | undefined
  const word = s.w[k] ?? ''
  if (n !== undefined) k++
  else if (word === 'un' && s.w[k + 1] === 'par') {
    n = 2
    k += s.w[k + 2] === 'de' ? 3 : 2
  } else if (word === 'medio' || word === 'media') {
    n = 0.5
    k++
  } else if (FEW.has(word)) {
    n = 3
    loose = true
    k += s.w[k + 1] === 'cuantos' || s.w[k + 1] === 'cuantas' ? 2 : 1
  } else {
    n = SMALL.get(word)
    k++
    const tail = n !== undefined && n >= 30 && s.w[k] === 'y' ? SMALL.get(s.w[k + 1] ?? '') : undefined
    if (n !== undefined && tail !== undefined && tail < 10) {
      n += tail
      k += 2
    }
  }
  const unit = UNITS.get(s.w[k] ?? '')
  if (n === undefined || n > 400 || !unit) return undefined
  k++
  if (s.w[k] === 'y' && /^(medio|media)$/.test(s.w[k + 1] ?? '')) return { to: k + 2, n: n + 0.5, unit, loose }
  return { to: k, n, unit, loose }
}

/** "hace 2 días", "hace una semana"; "hace calor" is none. */
const ago: Rule = (s, i) => {
  let k = i + 1
  if (/^(como|ya|casi)$/.test(s.w[k] ?? '')) k++
  const c = spanAt(s, k)
  return c ? { to: c.to, said: { as: 'shift', n: -c.n, unit: c.unit, loose: c.loose } } : undefined
}

/** "en 3 días", "dentro de una semana", "en mayo", "en la primavera". */
const within: Rule = (s, i) => {
  let k = i + 1
  if (s.w[i] === 'dentro') {
    if (s.w[k] !== 'de') return undefined
    k++
  }
  const c = spanAt(s, k)
  if (c && c.unit !== 'night') {
    // "60 viajes en 2 días" tells how long it took
    if (s.w[i] === 'en' && (s.claimed(i - 1) || s.measure(i - 1) || s.number(i - 1) !== undefined)) return undefined
    return { to: s.w[c.to] === 'mas' ? c.to + 1 : c.to, said: { as: 'shift', n: c.n, unit: c.unit, loose: c.loose } }
  }
  if (s.w[i] !== 'en') return undefined
  if (s.w[k] === 'el' && s.w[k + 1] === 'mes' && s.w[k + 2] === 'de') k += 3
  const month = MONTHS.get(s.w[k] ?? '')
  if (month !== undefined && !CLOUDY.has(s.w[k]!) && !monthDay(s, k)) {
    const y = yearAt(s, k + 1)
    return { to: y.to, said: { as: 'piece', month, year: y.year, a: 1, b: 0 } }
  }
  if (/^(el|la)$/.test(s.w[k] ?? '')) k++
  const season = SEASONS.get(s.w[k] ?? '')
  return season === undefined ? undefined : { to: k + 1, said: { as: 'season', month: season } }
}

/** "lunes", "lunes pasado", "viernes que viene", "viernes de la semana pasada". */
const weekdayFrom = (s: Words, i: number, which?: 'last' | 'this' | 'coming'): Found | undefined => {
  const wd = WEEKDAYS.get(s.w[i] ?? '')
  if (wd === undefined || s.w[i] === 'domingos') return undefined
  const k = i + 1
  const tail = s.w[k] ?? ''
  const next = s.w[k + 1] ?? ''
  if (tail === 'pasado' && next !== 'manana') return { to: k + 1, said: { as: 'weekday', wd, which: 'last' } }
  if (tail === 'antepasado') return { to: k + 1, said: { as: 'weekday', wd, which: 'last', weeks: -1 } }
  if (tail === 'proximo' || tail === 'siguiente' || tail === 'entrante') return { to: k + 1, said: { as: 'weekday', wd, which: 'coming' } }
  if (tail === 'que' && /^(viene|entra)$/.test(next)) return { to: k + 2, said: { as: 'weekday', wd, which: 'coming' } }
  if (tail === 'de' && next === 'esta' && s.w[k + 2] === 'semana') return { to: k + 3, said: { as: 'weekday', wd, week: 0 } }
  if (tail === 'de' && next === 'la') {
    if (s.w[k + 2] === 'semana' && s.w[k + 3] === 'pasada') return { to: k + 4, said: { as: 'weekday', wd, week: -1 } }
    if (s.w[k + 2] === 'semana' && s.w[k + 3] === 'que' && /^(viene|entra)$/.test(s.w[k + 4] ?? ''))
      return { to: k + 5, said: { as: 'weekday', wd, week: 1 } }
    if (s.w[k + 2] === 'proxima' && s.w[k + 3] === 'semana') return { to: k + 4, said: { as: 'weekday', wd, week: 1 } }
  }
  return { to: k, said: { as: 'weekday', wd, which } }
}

/** A man may be called Domingo: without "el" the name of a day wants the end of the clause or a figure behind it. */
const weekday: Rule = (s, i) => {
  const f = weekdayFrom(s, i)
  const led = /^(el|este|cada|desde|del|al|hasta|para|y|a|de|entre|pal|los|domingo)$/.test(s.all[i - 1] ?? '')
  if (s.all[i - 1] === 'los') return undefined
  if (
    s.w[i] === 'domingo' &&
    f?.to === i + 1 &&
    !led &&
    !s.ends(i + 1) &&
    s.number(i + 1) === undefined &&
    !FOLLOW.has(s.all[i + 1]!) &&
    !s.clock(i + 1)
  )
    return undefined
  return f
}

const season = (s: Words, i: number, which?: 'last' | 'this' | 'next'): Found | undefined => {
  const first = SEASONS.get(s.w[i] ?? '')
  if (first === undefined) return undefined
  if (/^pasad[oa]$/.test(s.w[i + 1] ?? '')) return { to: i + 2, said: { as: 'season', month: first, which: 'last' } }
  if (s.w[i + 1] === 'que' && /^(viene|entra)$/.test(s.w[i + 2] ?? ''))
    return { to: i + 3, said: { as: 'season', month: first, which: 'next' } }
  return which ||
    /^(desde|para)$/.test(s.all[i - 1] ?? '') ||
    (/^(el|la)$/.test(s.all[i - 1] ?? '') && /^(desde|para)$/.test(s.all[i - 2] ?? ''))
    ? { to: i + 1, said: { as: 'season', month: first, which } }
    : undefined
}

/** "el viernes 11 salieron": what follows counts nothing. */
const goesOn = (s: Words, i: number): boolean =>
  /^[a-z]{4,}(?:amos|imos|aron|ieron|eron|aba|e|o)$/.test(s.all[i] ?? '') && !s.measure(i) && s.number(i) === undefined

/** "el 12", "el viernes", "el proximo lunes", "el 28 de mayo", "el dia 12"; "el 12 por ciento" and "borra el 2" are none. */
const the: Rule = (s, i) => {
  let k = i + 1
  const phrase = s.day(k)
  let numbered = false
  if (s.w[k] === 'dia') {
    k++
    numbered = true
  }
  if (s.w[i] === 'el' && (s.w[k] === 'pasado' || s.w[k] === 'proximo') && !(s.w[k] === 'pasado' && s.w[k + 1] === 'manana')) {
    const f = weekdayFrom(s, k + 1, s.w[k] === 'pasado' ? 'last' : 'coming')
    if (f) return f
  }
  const weekly = weekdayFrom(s, k)
  // "el lunes 14"; but "el sabado 6 viajes y el domingo 8": so many on each
  const again = s.all[i - 1] === 'y' && s.all.slice(0, i - 1).some(w => WEEKDAY_OR_AYER.test(w))
  const dated = weekly?.to === k + 1 && !again ? s.number(k + 1) : undefined
  if (weekly && dated !== undefined && dated >= 1 && dated <= 31 && (s.ends(k + 2) || goesOn(s, k + 2)))
    return { to: k + 2, said: { as: 'date', day: dated } }
  const f = weekly ?? dayMonth(s, k) ?? season(s, k)
  if (f) return f
  if (phrase && phrase.said.as !== 'day') return phrase
  if (s.w[i] !== 'el' && s.w[i] !== 'pal') return undefined
  const d = dayNo(s, k)
  const figures = s.number(k) !== undefined
  if (!d || d.first || !figures || s.measure(d.to) || (d.n < 7 && s.alone(i, d.to))) return undefined
  const before = s.all[i - 1] ?? ''
  if (!numbered && (PICKING.has(before) || (s.claimed(i - 1) && !s.ends(d.to) && !FOLLOW.has(s.all[d.to]!)))) return undefined
  if (/^(por|x|%|#|de|del|\*)$/.test(s.all[d.to] ?? '') && !/^(a|las|la)$/.test(s.all[d.to + 1] ?? '')) return undefined
  const next = s.all[d.to] ?? ''
  return s.ends(d.to) || FOLLOW.has(next) || /[aei]r(lo|la|los|las|le|les)?$/.test(next) || s.clock(d.to) || numbered
    ? { to: d.to, said: { as: 'date', day: d.n } }
    : undefined
}

/** "este viernes", "proximo lunes", "pasado lunes", "la proxima primavera". */
const modified: Rule = (s, i) => {
  const word = s.w[i]!
  const which = /^(este|esta)$/.test(word) ? 'this' : /^pasad/.test(word) ? 'last' : 'coming'
  let k = i + 1
  if (which === 'this' && /^(pasado|proximo)$/.test(s.w[k] ?? '')) return modified(s, k)
  if (s.w[k] === 'dia') k++
  return weekdayFrom(s, k, which) ?? season(s, k, which === 'coming' ? 'next' : which)
}

/** "los ultimos 3 días", "las ultimas 2 semanas". */
const run: Rule = (s, i) => {
  const k = /^(los|las)$/.test(s.w[i]!) ? i + 1 : i
  const m = /^(ultim|pasad|proxim)[oa]s$/.exec(s.w[k] ?? '')
  const c = m ? spanAt(s, k + 1) : undefined
  if (m && c) return { to: c.to, said: { as: 'run', n: c.n, unit: c.unit, ahead: m[1] === 'proxim' || undefined } }
  if (k === i) return undefined
  // "los 3 ultimos dias"
  const n = s.number(k) ?? SMALL.get(s.w[k] ?? '')
  const unit = UNITS.get(s.w[k + 2] ?? '')
  return n && unit && /^ultim[oa]s$/.test(s.w[k + 1] ?? '') ? { to: k + 3, said: { as: 'run', n, unit } } : undefined
}

/** "mañana" is tomorrow unless an article makes it the morning. */
const manana: Rule = (s, i) =>
  /^(la|esta|las|una|toda|cada)$/.test(s.all[i - 1] ?? '') ? undefined : { to: i + 1, said: { as: 'day', n: 1, own: true } }

const counted: Rule = (s, i) => {
  const f = dayMonth(s, i)
  if (f) return f
  const c = spanAt(s, i)
  return c && s.w[c.to] === 'atras' ? { to: c.to + 1, said: { as: 'shift', n: -c.n, unit: c.unit, loose: c.loose } } : undefined
}

/** The rules by the word they begin with. */
export const ES_RULES: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...[...SMALL.keys(), 'primero', ...FEW].map(w => [w, counted] as const),
  ...[...MONTHS.keys()].map(
    w =>
      [
        w,
        (s: Words, i: number) =>
          monthDay(s, i) ??
          (/^(desde|hasta|para)$/.test(s.all[i - 1] ?? '') && !CLOUDY.has(w)
            ? { to: i + 1, said: { as: 'piece', month: MONTHS.get(w)!, a: 1, b: 0 } satisfies Said }
            : undefined),
      ] as const,
  ),
  ...[...WEEKDAYS.keys()].map(w => [w, weekday] as const),
  ...[...SEASONS.keys()].map(w => [w, (s: Words, i: number) => season(s, i)] as const),
  ...['este', 'esta', 'pasado', 'pasada', 'proximo', 'proxima'].map(w => [w, modified] as const),
  ...['los', 'las', 'ultimos', 'ultimas', 'proximos', 'pasados'].map(w => [w, run] as const),
  ...['a', 'fines', 'fin', 'finales', 'final', 'principios', 'principio', 'inicios', 'mediados'].map(w => [w, piece] as const),
  ['hace', ago],
  ['ace', ago],
  ['en', within],
  ['dentro', within],
  ['el', the],
  ['pal', the],
  ['la', the],
  [
    'dia',
    (s, i) =>
      s.number(i + 1) !== undefined && s.all[i - 1] !== 'el'
        ? (dayMonth(s, i + 1) ??
          (s.ends(i + 2) && s.number(i + 1)! <= 31 && s.number(i + 1)! >= 1
            ? { to: i + 2, said: { as: 'date', day: s.number(i + 1)! } }
            : undefined))
        : undefined,
  ],
  ['manana', manana],
  ['del', fromTo],
  ['de', fromTo],
])
export const ES_NUMBER: Rule = counted
