import { lengthOf, type PileState } from '../../book/pile.ts'
import { type Day, daysBetween } from '../../units/calendar.ts'
import type { Ft, Share } from '../../units/measure.ts'

/** One reading of the face. */
export interface FaceReading {
  on: Day
  n: number
  /** From the end first opened. */
  atFt: Ft
  /** Told as feet that are left. */
  fromFarEnd: boolean
  /** Standard error, ft. */
  sdFt: Ft
}

/** Nothing shorter is a pile, ft. */
export const LEAST_FT: Ft = 3

/** How long a pile is along the way of its face, and how sure that is. */
export interface Length {
  ft: Ft
  /** Standard error, a share. */
  sd: Share
  from: 'measured' | 'planned' | 'sheet'
}

/** A length that was taped or stepped, and one that was only planned. Common practice, no source. */
const MEASURED_SD: Share = 0.007
const PLANNED_SD: Share = 0.01
/** A length told in tens or fives was rounded, or it happens to be one: ft. Common practice, no source. */
const ROUND_SD = { tens: 1.5, fives: 0.8, else: 0.3 }
/** A sheet hangs over at both ends by so much, ft, give or take. Common practice: two feet and what the store had. */
const OVERHANG: [Ft, Ft] = [9, 5]
/** A face is not plumb and is told by eye, ft. Common practice, no source. */
const EYE_SD: Ft = 1

export const lengthKnown = (p: PileState): Length | undefined => {
  const ft = lengthOf(p)
  if (ft !== undefined && ft >= LEAST_FT) {
    const measured = p.measured?.lengthFt !== undefined
    const rounded = ft % 10 === 0 ? ROUND_SD.tens : ft % 5 === 0 ? ROUND_SD.fives : ROUND_SD.else
    return { ft, sd: Math.hypot(measured ? MEASURED_SD : PLANNED_SD, rounded / ft), from: measured ? 'measured' : 'planned' }
  }
  const long = Math.max(0, ...p.sheets.map(s => Math.max(s.lengthFt ?? 0, s.widthFt ?? 0)))
  return long > 20 ? { ft: long - OVERHANG[0], sd: OVERHANG[1] / (long - OVERHANG[0]), from: 'sheet' } : undefined
}

/** The steps in which a crew tells feet: 10, 5 or 1, whichever all of its readings keep to. */
const grainOf = (feet: readonly Ft[]): Ft => [10, 5, 2].find(g => feet.length >= 2 && feet.every(f => f % g === 0)) ?? 1

/** Readings that count for the usual error beside what this crew's own readings show. Common practice, no source. */
const USUAL_COUNTS = 5

/**
 * Error of a reading as this crew reads, ft: how far each lies from the line between its neighbours, drawn toward the usual error. Between
 * three readings the face goes at nearly one rate.
 */
const errorOf = (readings: readonly { day: number; atFt: Ft }[], usual: Ft): Ft => {
  let sum = 0
  let n = 0
  for (let i = 1; i + 1 < readings.length; i++) {
    const [a, b, c] = [readings[i - 1]!, readings[i]!, readings[i + 1]!]
    if (b.day === a.day || c.day === b.day || c.day - a.day > 45) continue
    const w = (b.day - a.day) / (c.day - a.day)
    const off = b.atFt - (a.atFt + (c.atFt - a.atFt) * w)
    sum += Math.min(off * off, 25 * usual * usual) / (1 + w * w + (1 - w) * (1 - w))
    n++
  }
  return Math.sqrt((USUAL_COUNTS * usual * usual + sum) / (USUAL_COUNTS + n))
}

/** Readings of the face, in order. One beyond the pile's end is left out: it does not fit the length told. */
export const readingsOf = (p: PileState, length: Length | undefined): FaceReading[] => {
  const grain = grainOf(p.faces.map(t => t.event.atFt ?? t.event.leftFt ?? 0))
  const usual = Math.hypot(EYE_SD, grain / Math.sqrt(12))
  const list = p.faces.flatMap(({ n, event: e }): FaceReading[] => {
    const atFt = e.atFt ?? (length ? length.ft - (e.leftFt ?? 0) : undefined)
    if (atFt === undefined || atFt < 0 || (length && atFt > length.ft * (1 + 2 * length.sd) + 2)) return []
    return [{ on: e.on, n, atFt, fromFarEnd: e.atFt === undefined, sdFt: usual }]
  })
  if (list.length < 4) return list
  const sdFt = errorOf(
    list.map(r => ({ day: daysBetween(list[0]!.on, r.on), atFt: r.atFt })),
    usual,
  )
  return list.map(r => ({ ...r, sdFt }))
}

/** Feet fed since a day, as far as they were told; undefined where a day's feeding was told without feet. */
export const feetFedSince = (p: PileState, on: Day): Ft | undefined => {
  const later = p.feeds.filter(t => t.event.on > on)
  if (!later.length || later.some(t => t.event.ft === undefined)) return undefined
  return later.reduce((s, t) => s + (t.event.ft ?? 0), 0)
}

/** The face as told last: a reading, and what was taken off since in feet. Undefined where neither was ever told. */
export const faceTold = (p: PileState, day: Day): { atFt: Ft; on: Day; days: number } | undefined => {
  const length = lengthKnown(p)
  const last = readingsOf(p, length).findLast(r => r.on <= day)
  const base = last ?? (p.openedOn && p.feeds.some(t => t.event.ft !== undefined) ? { atFt: 0, on: p.openedOn } : undefined)
  if (!base) return undefined
  const since = p.feeds.filter(t => t.event.ft !== undefined && (last ? t.event.on > base.on : t.event.on >= base.on) && t.event.on <= day)
  const atFt = base.atFt + since.reduce((s, t) => s + t.event.ft!, 0)
  const on = since.at(-1)?.event.on ?? base.on
  return { atFt: length ? Math.min(length.ft, atFt) : atFt, on, days: daysBetween(on, day) }
}
