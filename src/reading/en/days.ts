import type { Found, Rule, Words } from '../days.ts'
import type { Unit } from '../when.ts'
import {
  EN_AFTER_SAT_VERB as AFTER_SAT_VERB,
  EN_AFTER_SUN as AFTER_SUN,
  EN_BEFORE_DAY as BEFORE_DAY,
  EN_BEFORE_SAT_DAY as BEFORE_SAT_DAY,
  EN_BEFORE_SAT_VERB as BEFORE_SAT_VERB,
  EN_BEFORE_SUN as BEFORE_SUN,
  EN_PARTS,
  EN_MONTH_BY as MONTH_BY,
  EN_MONTHS as MONTHS,
  EN_ORDINALS as ORDINALS,
  EN_PILES as PILES,
  EN_SEASONS as SEASONS,
  EN_SMALL as SMALL,
  EN_SPANS as UNITS,
  EN_WEEKDAYS as WEEKDAYS,
  EN_WHICH as WHICH,
} from './dates.ts'
import { dayMonth, monthDay, ordinalDay, piece, yearAt } from './monthDays.ts'

/** "sat the tires on" and "sun came out" name no day. */
const meansDay = (s: Words, i: number): boolean => {
  const word = s.w[i]
  if (word !== 'sat' && word !== 'sun') return true
  const before = s.all[i - 1] ?? ''
  const after = s.all[i + 1] ?? ''
  if (EN_PARTS.has(after)) return true
  const counted = s.number(i + 1) !== undefined || s.claimed(i + 1)
  if (word === 'sat') {
    if (BEFORE_DAY.has(before) || WEEKDAYS.has(before) || after === 'and' || after === '&') return true
    // "patched it sat": done to it on that day
    if (before === 'it' && i >= 2 && !/\w/.test(after)) return true
    if (BEFORE_SAT_VERB.has(before)) return false
    if (UNITS.has(s.all[i + 2] ?? '') && counted) return false
    if (AFTER_SAT_VERB.has(after))
      return BEFORE_SAT_DAY.has(before) || (s.claimed(i - 1) && after !== 'the' && after !== 'all') || (after === 'at' && s.clock(i + 1))
    return true
  }
  if (before === 'and' || before === '&') return WEEKDAYS.has(s.all[i - 2] ?? '')
  if (AFTER_SUN.has(after) && !(after === 'and' && WEEKDAYS.has(s.all[i + 2] ?? ''))) return false
  return BEFORE_DAY.has(before) ? before !== 'from' && before !== 'by' : !BEFORE_SUN.has(before)
}

/** A count before days and weeks: "2", "a couple of", "two and a half". */
const countAt = (s: Words, i: number): { to: number; n: number; loose?: boolean } | undefined => {
  const plain = s.tokens[i]?.kind === 'number' && s.w[i] ? s.tokens[i]!.value : undefined
  let k = i
  let n: number
  if (plain !== undefined) {
    if (plain > 400) return undefined
    n = plain
    k++
  } else {
    let word = s.w[i] ?? ''
    if ((word === 'a' || word === 'the') && /^(couple|few|half)$/.test(s.w[i + 1] ?? '')) word = s.w[++k]!
    if (word === 'half') return s.w[k + 1] === 'a' || s.w[k + 1] === 'an' ? { to: k + 2, n: 0.5 } : { to: k + 1, n: 0.5 }
    const small = SMALL.get(word)
    if (small === undefined) return undefined
    n = small
    k++
    const tail = SMALL.get(s.w[k] ?? '')
    if (small >= 20 && small % 10 === 0 && tail !== undefined && tail > 0 && tail < 10 && (s.w[k]?.length ?? 0) > 2) {
      n += tail
      k++
    }
    if (word === 'couple' || word === 'few') {
      if (s.w[k] === 'of') k++
      if (word === 'few') return { to: k, n, loose: true }
    }
  }
  if (s.w[k] === 'and' && s.w[k + 1] === 'a' && s.w[k + 2] === 'half') return { to: k + 3, n: n + 0.5 }
  return { to: k, n }
}

const spanAt = (s: Words, i: number): { to: number; n: number; unit: Unit; loose?: boolean } | undefined => {
  const c = countAt(s, i)
  const unit = c && UNITS.get(s.w[c.to] ?? '')
  if (!c || !unit) return undefined
  if (s.w[c.to + 1] === 'and' && s.w[c.to + 2] === 'a' && s.w[c.to + 3] === 'half')
    return { to: c.to + 4, n: c.n + 0.5, unit, loose: c.loose }
  return { to: c.to + 1, n: c.n, unit, loose: c.loose }
}

/** "3 days ago", "a week ago friday", "a week from friday", "45 days after sept 3". */
const counted: Rule = (s, i) => {
  const c = spanAt(s, i)
  // "2 weeks and 3 days ago" is left whole
  if (!c || (s.w[i - 1] === 'and' && UNITS.has(s.w[i - 2] ?? ''))) return undefined
  const tail = s.w[c.to]
  const weeks = c.unit === 'week' && Number.isInteger(c.n) ? c.n : 0
  if (tail === 'ago' || (tail === 'back' && c.unit !== 'hour' && c.unit !== 'minute')) {
    const wd = WEEKDAYS.get(s.w[c.to + 1] ?? '')
    if (weeks && wd !== undefined && meansDay(s, c.to + 1))
      return { to: c.to + 2, said: { as: 'weekday', wd, which: 'last', weeks: -weeks } }
    return {
      to: s.w[c.to + 1] === 'today' ? c.to + 2 : c.to + 1,
      said: { as: 'shift', n: -c.n, unit: c.unit, loose: c.loose },
      part: c.unit === 'night' ? 'night' : undefined,
    }
  }
  if (tail === 'from') {
    if (/^(now|today)$/.test(s.w[c.to + 1] ?? '')) return { to: c.to + 2, said: { as: 'shift', n: c.n, unit: c.unit, loose: c.loose } }
  } else if (tail !== 'after' && tail !== 'before') return undefined
  const base = s.day(c.to + 1)
  if (!base || c.unit === 'hour' || c.unit === 'minute') return undefined
  return { to: base.to, said: { as: 'shift', n: tail === 'before' ? -c.n : c.n, unit: c.unit, base: base.said }, part: base.part }
}

/** "in 3 weeks", "within 2 days", "in may", "in the spring". */
const within: Rule = (s, i) => {
  let k = i + 1
  if (/^(about|around|roughly|another|maybe)$/.test(s.w[k] ?? '')) k++
  const c = spanAt(s, k)
  if (c && c.unit !== 'night') {
    // "70 loads in an hour", "120 in a day", "60 loads on north in 2 days" tell how long it took
    const before = s.all[i - 1] ?? ''
    if (
      s.claimed(i - 1) ||
      s.measure(i - 1) ||
      s.number(i - 1) !== undefined ||
      (s.w[k] === 'a' && c.unit === 'day') ||
      s.w[c.to] === 'ago'
    )
      return undefined
    if (/^(all|took|done|only|lasted|row)$/.test(before)) return undefined
    let to = c.to
    if (s.w[to] === 'or' && s.w[to + 1] === 'so') to += 2
    else if (s.w[to] === 'time' || (s.w[to] === 'from' && s.w[to + 1] === 'now')) to += s.w[to] === 'time' ? 1 : 2
    return { to, said: { as: 'shift', n: c.n, unit: c.unit, loose: c.loose } }
  }
  const name = s.w[i + 1] === 'the' ? (s.w[i + 2] ?? '') : (s.w[i + 1] ?? '')
  const to = s.w[i + 1] === 'the' ? i + 3 : i + 2
  const season = SEASONS.get(name)
  if (season !== undefined) return { to, said: { as: 'season', month: season } }
  const month = to === i + 2 ? MONTHS.get(name) : undefined
  if (month !== undefined && !PILES.has(s.all[to] ?? '') && !monthDay(s, i + 1)) {
    const y = yearAt(s, to)
    return { to: y.to, said: { as: 'piece', month, year: y.year, a: 1, b: 0 } }
  }
  const f = monthDay(s, i + 1) ?? (/^(early|mid|late)$/.test(s.w[i + 1] ?? '') ? piece(s, i + 1) : undefined)
  return f
}

/** "last friday", "this past sat", "next may", "the last 3 days". */
const modified: Rule = (s, i) => {
  let which = WHICH.get(s.w[i]!)!
  let k = i + 1
  if (which === 'this' && /^(past|last)$/.test(s.w[k] ?? '')) {
    which = 'last'
    k++
  } else if (s.w[k] === 'coming') {
    which = 'coming'
    k++
  }
  const name = s.w[k] ?? ''
  const wd = WEEKDAYS.get(name)
  if (wd !== undefined) {
    if (!meansDay(s, k)) return undefined
    const before = s.w[k + 1] === 'before' && s.w[k + 2] === 'last'
    return { to: before ? k + 3 : k + 1, said: { as: 'weekday', wd, which } }
  }
  const dated = monthDay(s, k)
  if (dated) return dated
  const month = MONTHS.get(name)
  if (month !== undefined && !PILES.has(s.all[k + 1] ?? '') && !(name === 'may' && which === 'this'))
    return { to: k + 1, said: { as: 'piece', month, a: 1, b: 0, which } }
  const season = SEASONS.get(name)
  if (season !== undefined) return { to: k + 1, said: { as: 'season', month: season, which } }
  const whole = piece(s, i)
  if (whole) return whole
  const c = which === 'this' ? undefined : spanAt(s, k)
  if (c && c.n >= 1 && c.unit !== 'minute')
    return { to: c.to, said: { as: 'run', n: c.n, unit: c.unit, ahead: which === 'next' || which === 'coming' || undefined } }
  return undefined
}

const weekday: Rule = (s, i) => {
  const wd = WEEKDAYS.get(s.w[i]!)!
  if (!meansDay(s, i)) return undefined
  let k = i + 1
  if (s.w[k] === 'of') k++
  const which = WHICH.get(s.w[k] ?? '')
  if (which && which !== 'coming' && UNITS.get(s.w[k + 1] ?? '') === 'week')
    return { to: k + 2, said: { as: 'weekday', wd, week: which === 'last' ? -1 : which === 'next' ? 1 : 0 } }
  if (s.w[i + 1] === 'before' && s.w[i + 2] === 'last') return { to: i + 3, said: { as: 'weekday', wd, which: 'last', weeks: -1 } }
  return { to: i + 1, said: { as: 'weekday', wd } }
}

const month: Rule = (s, i) => {
  const f = monthDay(s, i)
  if (f) return f
  const y = yearAt(s, i + 1)
  const named = MONTH_BY.has(s.all[i - 1] ?? '') && !PILES.has(s.all[i + 1] ?? '')
  return named || (y.year !== undefined && s.w[i] !== 'may' && s.w[i] !== 'march')
    ? { to: y.to, said: { as: 'piece', month: MONTHS.get(s.w[i]!)!, year: y.year, a: 1, b: 0 } }
    : undefined
}

const season: Rule = (s, i) =>
  /^(since|by|come|until|till|til|before)$/.test(s.all[i - 1] ?? '')
    ? { to: i + 1, said: { as: 'season', month: SEASONS.get(s.w[i]!)! } }
    : undefined

/** "on" and "the" go with the day behind them; "the friday load" does not. */
const on: Rule = (s, i) => {
  const f = s.day(i + 1)
  return f && f.said.as !== 'season' ? f : undefined
}
const the: Rule = (s, i) => {
  const f = s.day(i + 1)
  return f && f.said.as !== 'weekday' && !(f.said.as === 'day' && f.said.n >= -1 && f.said.n <= 1) ? f : undefined
}

const number = (s: Words, i: number): Found | undefined => dayMonth(s, i) ?? counted(s, i) ?? ordinalDay(s, i) ?? piece(s, i)

/** The rules by the word they begin with. */
export const EN_RULES: ReadonlyMap<string, Rule> = new Map<string, Rule>([
  ...[...SMALL.keys(), 'half'].map(w => [w, (s: Words, i: number) => counted(s, i) ?? dayMonth(s, i)] as const),
  ...[...ORDINALS.keys(), 'twenty', 'thirty'].map(w => [w, number] as const),
  ...[...WEEKDAYS.keys()].map(w => [w, weekday] as const),
  // "tuesday's loads" is a day, "tuesdays" is a habit
  ...[...WEEKDAYS.keys()]
    .filter(w => w.endsWith('day'))
    .map(
      w =>
        [
          `${w}s`,
          (s: Words, i: number): Found | undefined =>
            /['’]/.test(s.tokens[i]!.text) ? { to: i + 1, said: { as: 'weekday', wd: WEEKDAYS.get(w)! } } : undefined,
        ] as const,
    ),
  ...[...MONTHS.keys()].map(w => [w, month] as const),
  ...[...SEASONS.keys()].map(w => [w, season] as const),
  ...[...WHICH.keys()].map(w => [w, modified] as const),
  ...['early', 'mid', 'middle', 'late', 'end', 'beginning', 'start'].map(w => [w, piece] as const),
  ['in', within],
  ['within', within],
  ['on', on],
  ['the', the],
])
export const EN_NUMBER: Rule = number
