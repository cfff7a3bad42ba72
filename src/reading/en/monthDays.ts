import type { Found, Rule, Words } from '../days.ts'
import type { Said } from '../when.ts'
import {
  EN_BEFORE_DAY as BEFORE_DAY,
  EN_CLOUDY as CLOUDY,
  EN_PARTS,
  EN_UNTIL,
  EN_FOLLOW as FOLLOW,
  EN_MONTHS as MONTHS,
  EN_ORDINALS as ORDINALS,
  EN_PICKING as PICKING,
  EN_PILES as PILES,
  EN_SEASONS as SEASONS,
  EN_SMALL as SMALL,
  EN_SPANS as UNITS,
  EN_WEEKDAYS as WEEKDAYS,
  EN_WHICH as WHICH,
} from './dates.ts'

const ends = (s: Words, i: number) => s.ends(i) || FOLLOW.has(s.all[i]!) || EN_PARTS.has(s.all[i]!) || s.clock(i)

/** The day of the month at `i`, in figures or words. */
export const dayNo = (s: Words, i: number): { to: number; n: number; ordinal: boolean } | undefined => {
  const plain = s.number(i)
  if (plain !== undefined) return plain >= 1 && plain <= 31 ? { to: i + 1, n: plain, ordinal: false } : undefined
  const word = s.w[i] ?? ''
  const figures = /^(\d{1,2})(?:st|nd|rd|th)$/.exec(word)
  if (figures) return Number(figures[1]) >= 1 && Number(figures[1]) <= 31 ? { to: i + 1, n: Number(figures[1]), ordinal: true } : undefined
  const first = ORDINALS.get(word)
  if (first !== undefined) return { to: i + 1, n: first, ordinal: true }
  const ten = word === 'twenty' ? 20 : word === 'thirty' ? 30 : 0
  if (ten) {
    const tail = ORDINALS.get(s.w[i + 1] ?? '')
    if (tail !== undefined && tail < 10 && ten + tail <= 31) return { to: i + 2, n: ten + tail, ordinal: true }
    const unit = SMALL.get(s.w[i + 1] ?? '')
    if (unit !== undefined && unit > 0 && unit < 10 && s.w[i + 1] !== 'a' && ten + unit <= 31)
      return { to: i + 2, n: ten + unit, ordinal: false }
    return { to: i + 1, n: ten, ordinal: false }
  }
  const small = SMALL.get(word)
  return small !== undefined && small >= 1 && small <= 20 && word.length > 2 && word !== 'few' && word !== 'couple'
    ? { to: i + 1, n: small, ordinal: false }
    : undefined
}

export const yearAt = (s: Words, i: number): { to: number; year?: number } => {
  const k = s.w[i] === ',' ? i + 1 : i
  const year = s.number(k)
  return year !== undefined && year >= 2000 && year < 2100 && /^\d{4}$/.test(s.tokens[k]!.text) && !s.measure(k + 1)
    ? { to: k + 1, year }
    : { to: i }
}

/** "sept 3", "may 28, 2027", "sept 3-9", "june first". */
export const monthDay = (s: Words, i: number): Found | undefined => {
  const month = MONTHS.get(s.w[i] ?? '')
  if (month === undefined) return undefined
  // "sept. 3"
  const dot = s.w[i + 1] === '.' && s.tokens[i]!.to === s.tokens[i + 1]!.from && s.number(i + 2) !== undefined
  const k = s.w[i + 1] === 'the' || dot ? i + 2 : i + 1
  const d = dayNo(s, k)
  if (!d || (CLOUDY.has(s.w[i]!) && !d.ordinal && s.noun(d.to)) || (!d.ordinal && s.measure(d.to))) return undefined
  if (/^(by|x|\*)$/.test(s.all[d.to] ?? '') && s.number(d.to + 1) !== undefined) return undefined
  // "may one of you", "may 6 be enough"
  if (month === 5 && !d.ordinal && (s.number(k) === undefined ? !s.ends(d.to) : /^(be|have|or|more|of)$/.test(s.all[d.to] ?? '')))
    return undefined
  const said: Said = { as: 'date', month, day: d.n }
  if (EN_UNTIL.has(s.w[d.to] ?? '')) {
    const end = dayNo(s, s.w[d.to + 1] === 'the' ? d.to + 2 : d.to + 1)
    if (end && !end.ordinal && s.measure(end.to)) return undefined
    if (end && end.n > d.n) {
      const y = yearAt(s, end.to)
      return { to: y.to, said: { ...said, year: y.year }, until: { as: 'date', month, day: end.n, year: y.year } }
    }
  }
  const y = yearAt(s, d.to)
  return { to: y.to, said: { ...said, year: y.year } }
}

/** "early june", "end of may", "mid next week", "first week of june", "late fall". */
export const piece: Rule = (s, i) => {
  const word = s.w[i]!
  let k = i + 1
  const slice = /^(early|beginning|start)$/.test(word) ? 0 : /^(mid|middle)$/.test(word) ? 1 : /^(late|end)$/.test(word) ? 2 : -1
  if (slice >= 0) {
    if (s.w[k] === '-') k++
    const of = s.w[k] === 'of' || s.w[k] === 'in'
    if (of) k++
    const month = MONTHS.get(s.w[k] ?? '')
    if (month !== undefined && !PILES.has(s.all[k + 1] ?? '')) {
      const y = yearAt(s, k + 1)
      if (word === 'end') return of ? { to: y.to, said: { as: 'date', month, day: 0, year: y.year } } : undefined
      const from = [1, 11, 21][slice]!
      return { to: y.to, said: { as: 'piece', month, year: y.year, a: from, b: [10, 20, 0][slice]!, at: from + 4 } }
    }
    const which = WHICH.get(s.w[k] ?? '')
    if (which && which !== 'coming' && UNITS.get(s.w[k + 1] ?? '') === 'week') {
      return { to: k + 2, said: { as: 'weekday', wd: [1, 3, 5][slice]!, week: which === 'last' ? -1 : which === 'next' ? 1 : 0 } }
    }
    if (which && which !== 'coming' && UNITS.get(s.w[k + 1] ?? '') === 'month') {
      const months = which === 'last' ? -1 : which === 'next' ? 1 : 0
      return { to: k + 2, said: { as: 'piece', months, a: [1, 11, 21][slice]!, b: [10, 20, 0][slice]!, at: [5, 15, 25][slice]! } }
    }
    const season = SEASONS.get(s.w[k] ?? '')
    if (season !== undefined && !of) return { to: k + 1, said: { as: 'piece', month: ((season + slice - 1) % 12) + 1, a: 1, b: 0 } }
    return undefined
  }
  // "first week of june"
  const n = word === 'last' ? 5 : (ORDINALS.get(word) ?? Number(/^([1-4])(?:st|nd|rd|th)$/.exec(word)?.[1] ?? 0))
  if (n >= 1 && n <= 5 && UNITS.get(s.w[k] ?? '') === 'week' && (s.w[k + 1] === 'of' || s.w[k + 1] === 'in')) {
    const month = MONTHS.get(s.w[k + 2] ?? '')
    if (month !== undefined)
      return {
        to: k + 3,
        said: n === 5 ? { as: 'piece', month, a: -6, b: 0 } : { as: 'piece', month, a: 7 * n - 6, b: 7 * n, at: 7 * n - 3 },
      }
  }
  return undefined
}

/** "12th", "the 3rd", "the 12th of last month"; counted things ("3rd crop", "the 2nd sheet") and picks ("undo the 2nd") are none. */
export const ordinalDay = (s: Words, i: number): Found | undefined => {
  const d = dayNo(s, i)
  if (!d?.ordinal) return undefined
  const the = s.all[i - 1] === 'the'
  const before = s.all[the ? i - 2 : i - 1] ?? ''
  const said: Said = { as: 'date', day: d.n }
  if (s.w[d.to] === 'of') {
    const k = s.w[d.to + 1] === 'the' ? d.to + 2 : d.to + 1
    if (UNITS.get(s.w[k] ?? '') === 'month' && k > d.to + 1) return { to: k + 1, said }
    const which = WHICH.get(s.w[k] ?? '')
    if (which && UNITS.get(s.w[k + 1] ?? '') === 'month')
      return { to: k + 2, said: { ...said, months: which === 'last' ? -1 : which === 'this' ? 0 : 1 } }
  }
  // spelt out ("the third") it is a pick or a cut unless a month stands by it
  if (!/^\d/.test(s.w[i]!) && !(the && d.n > 12)) return undefined
  if (PICKING.has(before) || s.measure(d.to) || (d.n < 7 && s.alone(the ? i - 1 : i, d.to))) return undefined
  if (BEFORE_DAY.has(before) && before !== 'last' && before !== 'next' && before !== 'past' && before !== 'this')
    return d.n > 6 || ends(s, d.to) ? { to: d.to, said } : undefined
  if (WEEKDAYS.has(before) || (/^(and|&)$/.test(before) && /^\d+(st|nd|rd|th)$/.test(s.all[i - 2] ?? '') && ends(s, d.to)))
    return { to: d.to, said }
  return (the || d.n > 6) && ends(s, d.to) ? { to: d.to, said } : undefined
}

/** "3 sept", "the 12th of june 2027", "first of june". */
export const dayMonth = (s: Words, i: number): Found | undefined => {
  const d = dayNo(s, i)
  if (!d) return undefined
  const of = s.w[d.to] === 'of'
  const at = of ? d.to + 1 : d.to
  const name = s.w[at] ?? ''
  const month = MONTHS.get(name)
  if (month === undefined || PILES.has(s.all[at + 1] ?? '') || s.numbered(i)) return undefined
  if (!of && !d.ordinal && s.number(i) === undefined) return undefined
  const y = yearAt(s, at + 1)
  // "load 12 may be wet", "put 12 march …"
  if (CLOUDY.has(name) && !of && y.year === undefined && !s.ends(at + 1) && !s.clock(at + 1) && !/^(at|we|i)$/.test(s.all[at + 1] ?? ''))
    return undefined
  // "sept 3": the month of "10 sept 3" belongs to what follows
  return { to: y.to, said: { as: 'date', month, day: d.n, year: y.year } }
}
