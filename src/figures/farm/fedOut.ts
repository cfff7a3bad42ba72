import { type Book, piles } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { addDays, type Day, daysBetween, localTime } from '../../units/calendar.ts'
import type { Ft, Lb, Share } from '../../units/measure.ts'
import { cropsIn } from './need.ts'
import type { Now } from './now.ts'
import { unitWeights } from './units.ts'

/** One day of feeding from a pile. */
export interface FedDay {
  on: Day
  /** What was logged, lb as fed; undefined where nothing was, or where only feet were. */
  lb?: Lb
  /** Feet taken off the face, where told. */
  ft?: Ft
  /** Part of a day that cows ate without a log of its weight: 1 on a day nobody logged, 0 on a logged one. */
  silent: Share
  /** The log is of this day and of all of it. */
  whole: boolean
  /** Spoiled feed thrown out and feed moved to another pile, lb. */
  lostLb: Lb
}

/**
 * A day whose log is this far under the usual is one where part of the log is missing; one so far over it, after days without
 * a log, is a log for several days. Common practice, no source.
 */
const PARTIAL: Share = 0.68
const SEVERAL = 1.7
const ENOUGH_DAYS = 5
/** The usual is the middle of so many logged days around one: rations change. */
const AROUND = 15

export const median = (list: readonly number[]): number | undefined => {
  if (!list.length) return undefined
  const s = [...list].sort((a, b) => a - b)
  const mid = s.length >> 1
  return s.length % 2 ? s[mid] : (s[mid - 1]! + s[mid]!) / 2
}

/** How much of today the cows have eaten already, by the clock: nothing before six, all by six in the evening. */
const eaten = (now: Now): Share => Math.min(1, Math.max(0, (localTime(now.at, now.zone).hour - 6) / 12))

/**
 * Days on which the pile stood shut although it had been opened: from a sheet that went back on over new loads until it is
 * fed from again.
 */
const shutDays = (p: PileState, until: Day): ((day: Day) => boolean) => {
  if (!p.openedOn) return () => false
  const sheets = p.covers.filter(
    t => t.event.change === 'on' && t.event.material !== 'tires' && t.event.material !== 'gravel bags' && t.event.on > p.openedOn!,
  )
  if (!sheets.length) return () => false
  const again = [...p.feeds, ...p.faces, ...p.opens.filter(t => t.event.why === 'feed')].map(t => t.event.on).sort()
  const spans = sheets
    .filter(t => p.loads.some(l => l.event.on <= t.event.on && daysBetween(l.event.on, t.event.on) <= 14 && l.event.on > p.openedOn!))
    .map(t => ({ from: t.event.on, to: again.find(d => d > t.event.on) ?? addDays(until, 1) }))
  return day => spans.some(s => day >= s.from && day < s.to)
}

/**
 * Days on which the cows ate off another pile of the same crop: it was logged there, and here for some days nothing was. A pile
 * with a ration of its own is fed every day, unless the other was opened after the last log here.
 */
const elsewhere = (book: Book, p: PileState, logged: ReadonlySet<Day>): ((day: Day) => boolean) => {
  const crops = new Set(cropsIn(p))
  const last = p.feeds.at(-1)?.event.on
  const own = p.rations.some(t => t.event.lbPerDay !== undefined || t.event.lbPerHead !== undefined)
  const others = piles(book).filter(
    q =>
      q !== p &&
      q.feeds.length > 0 &&
      cropsIn(q).some(c => crops.has(c)) &&
      (!own || (last !== undefined && q.openedOn !== undefined && q.openedOn > last)),
  )
  if (!others.length) return () => false
  const there = new Set(others.flatMap(q => q.feeds.map(t => t.event.on)))
  const near = (day: Day, set: ReadonlySet<Day>, span: number): number => {
    let n = 0
    for (let i = -span; i <= span; i++) if (set.has(addDays(day, i))) n++
    return n
  }
  return day => !logged.has(day) && near(day, logged, 3) === 0 && near(day, there, 3) >= 2
}

/** Logs that are less than their day, or more: what is missing was eaten in silence, what is too much was eaten in the silence before. */
const settle = (days: FedDay[], today: Day): void => {
  const logged = days.flatMap((d, i) => (d.lb === undefined ? [] : [{ i, lb: d.lb }]))
  if (logged.length < ENOUGH_DAYS) return
  const middle = median(logged.map(l => l.lb))!
  for (const [k, { i, lb }] of logged.entries()) {
    if (lb >= PARTIAL * middle && lb <= SEVERAL * middle) continue
    const from = Math.max(0, Math.min(k - (AROUND >> 1), logged.length - AROUND))
    const usual = median(logged.slice(from, from + AROUND).map(l => l.lb))!
    const d = days[i]!
    if (lb < PARTIAL * usual && d.on !== today) {
      d.silent = 1 - lb / usual
      d.whole = false
    } else if (lb > SEVERAL * usual && days[i - 1]?.silent === 1) {
      d.whole = false
      for (let n = Math.round(lb / usual) - 1, j = i - 1; n > 0 && days[j]?.silent === 1; n--, j--) days[j]!.silent = 0
    }
  }
}

/** Every month has the first 28 days: so far no calendar is needed. */
const nextDay = (day: Day): Day => {
  const d = Number(day.slice(8))
  return d < 28 ? `${day.slice(0, 8)}${d < 9 ? '0' : ''}${d + 1}` : addDays(day, 1)
}

/**
 * What left a pile, day by day, from its opening to now. A day without a log is a day when cows ate, not a day without
 * feeding: it stands as `silent`, and how much was eaten is for the estimate to say.
 */
export const fedOut = (book: Book, p: PileState, now: Now): FedDay[] => {
  if (!p.openedOn || p.openedOn > now.day) return []
  const unit = unitWeights(book)
  const byDay = new Map<Day, FedDay>()
  const at = (on: Day): FedDay => {
    const d: FedDay = byDay.get(on) ?? { on, silent: 1, whole: false, lostLb: 0 }
    byDay.set(on, d)
    return d
  }
  for (const { event: e } of p.feeds) {
    const d = at(e.on)
    const lb = e.lb ?? (e.count === undefined ? undefined : unit(e.unit ?? 'load') && e.count * unit(e.unit ?? 'load')!.lb)
    if (lb !== undefined) {
      d.lb = (d.lb ?? 0) + lb
      d.silent = 0
      d.whole = true
    }
    if (e.ft !== undefined) d.ft = (d.ft ?? 0) + e.ft
  }
  for (const { event: e } of [...p.spoils, ...p.shiftsOut]) {
    const each = e.count === undefined ? undefined : unit(e.unit ?? (e.type === 'spoil' ? 'bucket' : 'load'))?.lb
    at(e.on).lostLb += e.lb ?? (e.count ?? 0) * (each ?? 0)
  }
  const last = p.emptyOn ?? now.day
  const logged = new Set(p.feeds.map(t => t.event.on))
  const shut = shutDays(p, last)
  const away = elsewhere(book, p, logged)
  const days: FedDay[] = []
  for (let on = p.openedOn; on <= last; on = nextDay(on)) {
    const d: FedDay = byDay.get(on) ?? { on, silent: 1, whole: false, lostLb: 0 }
    if (d.lb === undefined) {
      if (shut(on) || away(on)) d.silent = 0
      else if (on === now.day && d.ft === undefined) d.silent = eaten(now)
    }
    days.push(d)
  }
  settle(days, now.day)
  return days
}
