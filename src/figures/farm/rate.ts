import { lengthOf, type PileState } from '../../book/pile.ts'
import { type Day, daysBetween } from '../../units/calendar.ts'
import type { Ft, In } from '../../units/measure.ts'
import { IN_PER_FT } from '../../units/measure.ts'
import { passing, placeOf } from './advance.ts'
import type { Estimate } from './estimate.ts'
import { dayIn } from './horizon.ts'
import { type FaceReading, lengthKnown, readingsOf } from './position.ts'

export interface Rate {
  inPerDay: In
  /** `readings`: the face was read twice or more; `feet`: feet taken off were told; `use`: the daily use against what lies in a foot. */
  from: 'readings' | 'feet' | 'use'
  /** Days it was taken over. */
  days: number
}

/** How far back "lately" reaches, days, and the shortest span that tells a rate apart from the rounding of a reading. */
const LATELY = 31
const SHORTEST = 4

/** Slope of the readings by least squares, ft a day; the opening counts as a reading of 0 where it is near enough. */
const slope = (readings: readonly FaceReading[]): number | undefined => {
  const first = readings[0]!
  const xs = readings.map(r => daysBetween(first.on, r.on))
  const mx = xs.reduce((a, b) => a + b, 0) / xs.length
  const my = readings.reduce((s, r) => s + r.atFt, 0) / xs.length
  const sxx = xs.reduce((s, x) => s + (x - mx) ** 2, 0)
  if (sxx === 0) return undefined
  return readings.reduce((s, r, i) => s + (xs[i]! - mx) * (r.atFt - my), 0) / sxx
}

/** Feet told as taken off, lately: per day over the days that were told. */
const byFeet = (p: PileState, day: Day): Rate | undefined => {
  const told = p.feeds.filter(t => t.event.ft !== undefined && daysBetween(t.event.on, day) <= LATELY / 2)
  const days = new Set(told.map(t => t.event.on)).size
  if (days < 2) return undefined
  const ft: Ft = told.reduce((s, t) => s + t.event.ft!, 0)
  return { inPerDay: (ft / days) * IN_PER_FT, from: 'feet', days }
}

/** How fast the face has moved lately, in/day; where no one read it, as fast as the use should move it. */
export const rateOf = (p: PileState, day: Day, estimate?: Estimate): Rate | undefined => {
  if (p.openedOn === undefined) return undefined
  const length = lengthKnown(p)
  const zero: FaceReading = { on: p.openedOn, n: 0, atFt: 0, fromFarEnd: false, sdFt: 1 }
  const all = [zero, ...readingsOf(p, length)].filter(r => r.on <= day)
  // Of one day the last reading counts.
  const one = all.filter((r, i) => all[i + 1]?.on !== r.on)
  const recent = one.filter(r => daysBetween(r.on, day) <= LATELY)
  const last = one.at(-1)
  if (last && last !== zero) {
    const before = one.findLast(r => daysBetween(r.on, last.on) >= SHORTEST)
    const used = recent.length >= 3 && daysBetween(recent[0]!.on, last.on) >= SHORTEST ? recent : before ? [before, last] : []
    const ft = used.length ? slope(used) : undefined
    if (ft !== undefined && ft > 0 && daysBetween(last.on, day) <= 2 * LATELY)
      return { inPerDay: ft * IN_PER_FT, from: 'readings', days: daysBetween(used[0]!.on, last.on) }
  }
  const fed = byFeet(p, day)
  if (fed) return fed
  if (!estimate?.use || !length || estimate.whole.lb <= 0) return undefined
  const perFt =
    estimate.parts.reduce((s, part) => s + part.weight * passing(part.form, placeOf(part.form, part.at)), 0) *
    (estimate.whole.lb / length.ft)
  return perFt > 0 ? { inPerDay: (estimate.use.lb / perFt) * IN_PER_FT, from: 'use', days: 0 } : undefined
}

/** Where the face stands today: as told last, moved on since at the rate it goes. */
export const faceToday = (p: PileState, day: Day, rate: Rate | undefined): Ft | undefined => {
  const last = readingsOf(p, lengthKnown(p)).findLast(r => r.on <= day)
  const from = last ?? (p.openedOn ? { atFt: 0, on: p.openedOn } : undefined)
  if (!from || (!last && !rate)) return undefined
  const days = Math.max(0, daysBetween(from.on, day))
  const told = p.feeds.filter(t => t.event.on > from.on && t.event.on <= day && t.event.ft !== undefined)
  const toldDays = new Set(told.map(t => t.event.on)).size
  const moved = told.reduce((s, t) => s + t.event.ft!, 0) + (Math.max(0, days - toldDays) * (rate?.inPerDay ?? 0)) / IN_PER_FT
  const at = from.atFt + moved
  return Math.min(at, lengthOf(p) ?? at)
}

/** The day the face gets so far, at its rate. */
export const reachesOn = (day: Day, fromFt: Ft, toFt: Ft, inPerDay: In): Day => dayIn(day, ((toFt - fromFt) * IN_PER_FT) / inPerDay + 0.5)
