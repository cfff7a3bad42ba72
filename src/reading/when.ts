import { addDays, addMonths, type Day, dayOf, isDay, weekday } from '../units/calendar.ts'
import type { DateItem } from './item.ts'

export type Part = NonNullable<DateItem['part']>
export type Unit = 'minute' | 'hour' | 'day' | 'night' | 'week' | 'month' | 'year'
type Which = 'last' | 'this' | 'next' | 'coming'
type Feast = 'thanksgiving' | 'labor day' | 'memorial day' | 'easter' | 'good friday' | 'mothers day' | 'fathers day'

/** What the words of a date mean before it is known which day is today. Months 1 to 12, weekdays 0 Sunday to 6. */
export type Said =
  /** `n` days on; `own`: by the writer's own day, which lasts until three in the morning. */
  | { as: 'day'; n: number; own?: boolean }
  /** `week`: of the calendar week so many on; `weeks`: that much earlier. */
  | { as: 'weekday'; wd: number; which?: Which; week?: number; weeks?: number }
  /** Day 0 is the month's last. `months`: of the month so many on. */
  | { as: 'date'; day: number; month?: number; year?: number; months?: number }
  /** Days of a month from `a` to `b` (0 the last, -6 a week's end before it), `at` where one day must stand for them. */
  | { as: 'piece'; month?: number; year?: number; months?: number; a: number; b: number; at?: number; which?: Which }
  /** Three months from `month`, the meteorologists' seasons. */
  | { as: 'season'; month: number; which?: Which }
  | { as: 'shift'; n: number; unit: Unit; base?: Said; loose?: boolean }
  /** Weeks begin on Monday (ISO 8601). */
  | { as: 'period'; unit: 'week' | 'weekend' | 'month' | 'year'; n: number }
  /** The last (or next) `n` units, today among them. */
  | { as: 'run'; n: number; unit: Unit; ahead?: boolean }
  | { as: 'feast'; name: Feast }

export interface When {
  past: Day
  future: Day
  span?: { from: Day; to: Day }
  time?: string
  /** Only a day to come can be meant. */
  ahead?: true
}
type Span = { from: Day; to: Day }

export const earlier = (a: Day, b: Day): Day => (a < b ? a : b)
export const later = (a: Day, b: Day): Day => (a > b ? a : b)
const yearOf = (day: Day) => Number(day.slice(0, 4))
const monthNo = (day: Day) => Number(day.slice(5, 7))

/** Day `d` of a month, 0 and below counted from its last; undefined where the month has no such day. */
const inMonth = (year: number, month: number, d: number): Day | undefined => {
  if (d <= 0) return addDays(addMonths(dayOf(year, month, 1), 1), d - 1)
  const day = dayOf(year, month, d)
  return d <= 28 || isDay(day) ? day : undefined
}
/** The `n`th `wd` of a month; -1 the last. */
const nth = (year: number, month: number, wd: number, n: number): Day => {
  if (n < 0) {
    const last = inMonth(year, month, 0)!
    return addDays(last, -((weekday(last) - wd + 7) % 7))
  }
  const first = dayOf(year, month, 1)
  return addDays(first, ((wd - weekday(first) + 7) % 7) + 7 * (n - 1))
}
/** Easter Sunday, Gregorian (the anonymous algorithm as given by Meeus, Astronomical Algorithms, chapter 8). */
const easter = (year: number): Day => {
  const a = year % 19
  const [b, c] = [Math.floor(year / 100), year % 100]
  const f = Math.floor((b + 8) / 25)
  const h = (19 * a + b - (b >> 2) - Math.floor((b - f + 1) / 3) + 15) % 30
  const l = (32 + 2 * (b % 4) + 2 * (c >> 2) - h - (c % 4)) % 7
  const m = Math.floor((a + 11 * h + 22 * l) / 451)
  const n = h + l - 7 * m + 114
  return dayOf(year, Math.floor(n / 31), (n % 31) + 1)
}
/** Federal holidays by 5 U.S.C. 6103; mother's and father's day by custom of the States. */
const FEASTS: Record<Feast, (year: number) => Day> = {
  thanksgiving: y => nth(y, 11, 4, 4),
  'labor day': y => nth(y, 9, 1, 1),
  'memorial day': y => nth(y, 5, 1, -1),
  easter,
  'good friday': y => addDays(easter(y), -2),
  'mothers day': y => nth(y, 5, 0, 2),
  'fathers day': y => nth(y, 6, 0, 3),
}

const ahead = (future: Day, today: Day, span?: Span): When => ({ past: today, future, span, ahead: true })
/** One fixed day. `full`: said with its year, so that a plan may lie in the past. */
const fixed = (day: Day, today: Day, full = false): When =>
  day > today ? ahead(day, today) : { past: day, future: full ? day : later(day, today) }
const spanned = ({ from, to }: Span, today: Day, at?: Day): When => {
  const span = { from, to }
  return from > today ? ahead(at ?? from, today, span) : { past: earlier(at ?? to, today), future: later(at ?? from, today), span }
}

/** The last of `make(k)`, `make(k - 1)` … not after today, and the first not before it; eight years reach over every leap day. */
const nearest = (today: Day, k: number, reach: number, make: (k: number) => Day | undefined): When => {
  let past: Day | undefined
  let future: Day | undefined
  for (let i = 1; i >= -reach && past === undefined; i--) {
    const day = make(k + i)
    if (day !== undefined && day <= today) past = day
  }
  for (let i = -1; i <= reach && future === undefined; i++) {
    const day = make(k + i)
    if (day !== undefined && day >= today) future = day
  }
  return { past: past ?? today, future: future ?? today }
}
const nearestSpan = (today: Day, year: number, which: Which | undefined, make: (year: number) => Span & { at?: Day }): When => {
  const some = [-2, -1, 0, 1, 2].map(i => make(year + i))
  const next = some.find(x => x.from > today)!
  const now = some.find(x => x.from <= today && x.to >= today)
  const last = some.findLast(x => x.to < today)!
  if (which === 'next' || which === 'coming') return spanned(next, today, next.at)
  if (which === 'last') return spanned(last, today, last.at)
  const [back, on] = [spanned(now ?? last, today, (now ?? last).at), spanned(now ?? next, today, (now ?? next).at)]
  return { past: back.past, future: on.future, span: back.span }
}

const monday = (today: Day, weeks: number): Day => addDays(today, 7 * weeks - ((weekday(today) + 6) % 7))
const round = (n: number) => Math.sign(n) * Math.round(Math.abs(n))
const shift = (day: Day, n: number, unit: Unit): Day => {
  if (unit === 'week') return addDays(day, round(7 * n))
  if (unit === 'month' || unit === 'year') {
    const months = unit === 'year' ? 12 * n : n
    return addDays(addMonths(day, Math.trunc(months)), round((months % 1) * 30))
  }
  return addDays(day, round(n))
}

/** How many days "a few weeks ago" may be off. Common practice, no source. */
const SLACK: Partial<Record<Unit, number>> = { day: 1, night: 1, week: 7, month: 30 }

/** The days a saying means, seen from a day and an hour (0 up to 24 by the farm's clock). Errors: none; every saying has an answer. */
export const resolve = (said: Said, now: { day: Day; hour: number }): When => {
  const today = now.day
  const year = yearOf(today)
  switch (said.as) {
    case 'day': {
      const day = addDays(today, said.n - (said.own && now.hour < 3 ? 1 : 0))
      return said.n > 0 ? ahead(day, today) : { past: day, future: later(day, today) }
    }
    case 'weekday': {
      const back = (weekday(today) - said.wd + 7) % 7
      const on = (said.wd - weekday(today) + 7) % 7
      const inWeek = (n: number) => addDays(monday(today, n), (said.wd + 6) % 7)
      if (said.week !== undefined) return fixed(inWeek(said.week), today)
      if (said.which === 'last') return { past: addDays(today, 7 * (said.weeks ?? 0) - (back || 7)), future: today }
      if (said.which === 'next') return ahead(inWeek(1), today)
      if (said.which === 'coming') return ahead(addDays(today, on || 7), today)
      // a plan for "friday" made on a Friday means the next one: today is called today
      return { past: addDays(today, -back), future: addDays(today, said.which === 'this' ? on : on || 7) }
    }
    case 'date': {
      if (said.months !== undefined) {
        const month = addMonths(dayOf(year, monthNo(today), 1), said.months)
        return fixed(inMonth(yearOf(month), monthNo(month), said.day) ?? addDays(addMonths(month, 1), -1), today)
      }
      const { month, day } = said
      if (month === undefined) return nearest(today, year * 12 + monthNo(today) - 1, 3, k => inMonth(Math.floor(k / 12), (k % 12) + 1, day))
      if (said.year !== undefined) return fixed(inMonth(said.year, month, day) ?? inMonth(said.year, month, 0)!, today, true)
      return nearest(today, year, 8, y => inMonth(y, month, day))
    }
    case 'piece': {
      const of = (y: number, month: number) => {
        const span = { from: inMonth(y, month, said.a)!, to: inMonth(y, month, said.b)! }
        return said.at === undefined ? span : { ...span, at: inMonth(y, month, said.at)! }
      }
      if (said.month === undefined || said.year !== undefined) {
        const month =
          said.month === undefined ? addMonths(dayOf(year, monthNo(today), 1), said.months ?? 0) : dayOf(said.year!, said.month, 1)
        const span = of(yearOf(month), monthNo(month))
        return spanned({ from: span.from, to: span.to }, today, 'at' in span ? span.at : undefined)
      }
      const month = said.month
      return nearestSpan(today, year, said.which, y => of(y, month))
    }
    case 'season':
      return nearestSpan(today, year, said.which, y => ({
        from: dayOf(y, said.month, 1),
        to: addDays(addMonths(dayOf(y, said.month, 1), 3), -1),
      }))
    case 'feast':
      return nearest(today, year, 2, FEASTS[said.name])
    case 'shift': {
      if (said.unit === 'hour' || said.unit === 'minute') {
        const minutes = Math.round(60 * now.hour + (said.unit === 'hour' ? 60 * said.n : said.n))
        const day = addDays(today, Math.floor(minutes / 1440))
        const of = ((minutes % 1440) + 1440) % 1440
        const time = `${String(Math.floor(of / 60)).padStart(2, '0')}:${String(of % 60).padStart(2, '0')}`
        return said.n > 0 ? { past: today, future: day, time, ahead: true } : { past: day, future: today, time }
      }
      if (said.base) {
        const base = resolve(said.base, now)
        const late = shift(base.future, said.n, said.unit)
        const early = shift(base.past, said.n, said.unit)
        // "45 days after sept 3" counts from the last 3rd as long as that is still to come; weekdays count from the coming one
        const future = said.base.as === 'date' && early >= today ? early : late
        return future > today && (early > today || said.base.as !== 'date')
          ? ahead(future, today)
          : { past: earlier(early, today), future: later(future, today) }
      }
      const day = shift(today, said.n, said.unit)
      if (said.n > 0) return ahead(day, today)
      const slack = said.loose ? SLACK[said.unit] : undefined
      return { past: day, future: today, ...(slack && { span: { from: addDays(day, -slack), to: earlier(addDays(day, slack), today) } }) }
    }
    case 'period': {
      if (said.unit === 'weekend') {
        const here = addDays(monday(today, 0), 5)
        const begun = here <= today ? here : addDays(here, -7)
        if (said.n > 0) return ahead(addDays(here, 7), today, { from: addDays(here, 7), to: addDays(here, 8) })
        const over = addDays(begun, said.n < 0 && addDays(begun, 1) >= today ? -7 : 0)
        return {
          past: earlier(addDays(over, 1), today),
          future: said.n < 0 ? today : later(here, today),
          span: { from: over, to: addDays(over, 1) },
        }
      }
      if (said.unit === 'week') return spanned({ from: monday(today, said.n), to: addDays(monday(today, said.n), 6) }, today)
      const from = said.unit === 'month' ? addMonths(dayOf(year, monthNo(today), 1), said.n) : dayOf(year + said.n, 1, 1)
      return spanned({ from, to: addDays(addMonths(from, said.unit === 'month' ? 1 : 12), -1) }, today)
    }
    case 'run': {
      if (said.ahead) return ahead(today, today, { from: today, to: shift(today, said.n, said.unit) })
      if (said.unit === 'hour' || said.unit === 'minute') {
        const from = addDays(today, Math.floor((now.hour - (said.unit === 'hour' ? said.n : said.n / 60)) / 24))
        return { past: today, future: today, span: { from, to: today } }
      }
      return { past: today, future: today, span: { from: earlier(addDays(shift(today, -said.n, said.unit), 1), today), to: today } }
    }
  }
}
