import { type Book, boxes, piles, setting } from '../book/book.ts'
import type { PileState, Told } from '../book/pile.ts'
import { type Day, daysBetween, type Instant, localTime } from '../units/calendar.ts'
import { LB_PER_TON } from '../units/measure.ts'
import { clockText, hourOf, type Moment, toldAt } from './hours.ts'
import type { CoverNeed, DueItem, WatchFigures } from './item.ts'
import { sunHours } from './sun.ts'

export interface Tally {
  pile: string
  crop: string
  by: string
  /** Loads; those told by weight alone count as none. */
  count: number
  /** As told, or by the box; undefined where one load of them has neither. */
  lb?: number
}

const loadLb = (book: Book, t: Told<'load'>): number | undefined => {
  const { lb, count, box } = t.event
  const each = box === undefined ? undefined : boxes(book).get(box)?.lb
  return lb ?? (each !== undefined && count !== undefined ? each * count : undefined)
}

const loadsOf = (book: Book, from: Day, to: Day): { pile: PileState; load: Told<'load'> }[] =>
  piles(book).flatMap(pile => pile.loads.filter(t => t.event.on >= from && t.event.on <= to).map(load => ({ pile, load })))

/** What was hauled between two days, by pile, crop and driver. */
export const tally = (book: Book, from: Day, to: Day): Tally[] => {
  const rows = new Map<string, Tally & { known: boolean }>()
  for (const { pile, load } of loadsOf(book, from, to)) {
    const by = load.event.by ?? load.by
    const key = JSON.stringify([pile.name, load.event.crop, by])
    const row = rows.get(key) ?? { pile: pile.name, crop: load.event.crop, by, count: 0, lb: 0, known: true }
    const lb = loadLb(book, load)
    row.count += load.event.count ?? 0
    row.lb = (row.lb ?? 0) + (lb ?? 0)
    row.known &&= lb !== undefined
    rows.set(key, row)
  }
  return [...rows.values()].map(({ known, lb, ...row }) => (known ? { ...row, lb: lb ?? 0 } : row))
}

/** Packing weight for each ton hauled in an hour: the rule of 800, lb (Kaatz, Michigan State; Garcia, South Dakota State). */
export const RULE_OF_800 = 800
/** Hauling that long must be seen before a pace is spoken of, hours. */
const PACE_HOURS = 1
/** How far the hauling may run ahead of the packing before it is said. */
const SLACK = 1.1

export interface Pace {
  pile: string
  tonsHour: number
  /** Of the tractors that pack, together. */
  lb: number
  /** What the tractors can pack, tons an hour. */
  okTonsHour: number
  /** What the hauling would want, lb. */
  needLb: number
}

/** The hauling of one day against the tractors that pack; undefined where one of them is not known. */
export const paceOf = (book: Book, p: PileState, day: Day, figures: WatchFigures): Pace | undefined => {
  const loads = p.loads.filter(t => t.event.on === day).sort((a, b) => a.n - b.n)
  const first = loads[0]
  const last = loads.at(-1)
  const pack = p.packs.findLast(t => t.event.on <= day && t.event.tractorLb !== undefined)?.event
  if (!first || !last || !pack) return undefined
  const hours = (Date.parse(last.at) - Date.parse(first.at)) / 3_600_000
  if (hours < PACE_HOURS) return undefined
  const told = loads.map(t => loadLb(book, t))
  const all = told.every(lb => lb !== undefined)
    ? told.reduce<number>((sum, lb) => sum + (lb ?? 0), 0)
    : figures.hauledLb?.(p.name, day, day)
  if (all === undefined) return undefined
  // What was told first was hauled before the clock of this pace began.
  const counts = loads.map(t => t.event.count ?? 1)
  const total = counts.reduce((a, b) => a + b, 0)
  const firstLb = told[0] ?? (all * counts[0]!) / total
  const tonsHour = (all - firstLb) / LB_PER_TON / hours
  const lb = (pack.tractors ?? 1) * pack.tractorLb!
  return { pile: p.name, tonsHour, lb, okTonsHour: lb / RULE_OF_800, needLb: tonsHour * RULE_OF_800 }
}

export interface CoverJob {
  pile: string
  widthFt: number
  lengthFt: number
  tires: number
  bags: number
  people: number
  minutes: number
  fromStock: 'yes' | 'no' | ''
}

/** Hands for a covering, all common practice, no source: unrolling and drawing, and how fast one person sets tires and bags. */
const SET_UP_MIN = 20
const FT2_PER_PERSON_MIN = 100
const TIRES_PER_PERSON_MIN = 2
const BAGS_PER_PERSON_MIN = 1.5
const PEOPLE_PER_FT = 1 / 10
const MIN_PEOPLE = 4

/** A covering as a job of so many people and minutes. */
export const coverJob = (pile: string, need: CoverNeed, people?: number): CoverJob => {
  const hands = people ?? Math.max(MIN_PEOPLE, Math.ceil(need.widthFt * PEOPLE_PER_FT))
  const tires = need.tires ?? 0
  const bags = need.bags ?? 0
  const work = (need.widthFt * need.lengthFt) / FT2_PER_PERSON_MIN + tires / TIRES_PER_PERSON_MIN + bags / BAGS_PER_PERSON_MIN
  const fromStock = need.fromStock === undefined ? '' : need.fromStock ? 'yes' : 'no'
  return { pile, widthFt: need.widthFt, lengthFt: need.lengthFt, tires, bags, people: hands, minutes: SET_UP_MIN + work / hands, fromStock }
}

/** Best hours of sun of a day at the farm's place, by its wall clock; undefined where the place was not set. */
export const bestSun = (book: Book, day: Day, zone: string): { from: string; to: string } | undefined => {
  const lat = setting(book, 'lat', Number.NaN)
  const lon = setting(book, 'lon', Number.NaN)
  if (!Number.isFinite(lat) || !Number.isFinite(lon)) return undefined
  const sun = sunHours(hourOf(day, 0, zone), lat, lon)
  const clock = (at: Instant): string => clockText(localTime(at, zone).hour)
  return sun && { from: clock(sun.from), to: clock(sun.to) }
}

/** Piles that got feed and lie open: `days` since the last load. One opened again for more counts: its sheet is off where the feed goes on. */
export const uncovered = (book: Book, day: Day): { pile: PileState; days: number; since: Instant }[] =>
  piles(book).flatMap(pile => {
    const last = pile.loads.at(-1)
    if (!last || pile.stage !== 'filling' || last.event.on > day) return []
    return [{ pile, days: daysBetween(last.event.on, day), since: last.at }]
  })

/** Hauling that outruns the packing, once a pile and day. */
export const fillingDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] =>
  piles(book).flatMap(p => {
    const last = p.loads.at(-1)
    if (!last || p.stage !== 'filling' || toldAt(last.at, m.zone).day !== m.day || last.event.on !== m.day) return []
    const key = `pace:${p.name}:${m.day}`
    if (book.said.has(key)) return []
    const pace = paceOf(book, p, m.day, figures)
    if (!pace || pace.tonsHour <= pace.okTonsHour * SLACK) return []
    return [{ key, at: last.at, to: 'crew', message: { code: 'pace-high', data: { ...pace } } }]
  })
