import { type Book, eventsOf, piles } from '../book/book.ts'
import { isCovered, lengthOf, type PileState } from '../book/pile.ts'
import { addDays, daysBetween, type Instant } from '../units/calendar.ts'
import { winterOf } from './freeze.ts'
import { hourOf, later, type Moment } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'
import { since } from './recent.ts'

/** Never more than three days of feed lie bare: Holmes, University of Wisconsin, and a Nebraska column citing it. */
export const BARE_DAYS = 3
/** Roll back again when less than this lies bare, days of feed. Common practice, no source. */
const LOW_DAYS = 1
/** Outside diameter of a common car tire, 26 in, touching along the cut: geometry. */
const TIRE_FT = 26 / 12
/** After each cut the edge is weighted again with a double row (Holmes). */
const EDGE_ROWS = 2
/** Days without a word of feeding after which the edge should be closed. Common practice, no source. */
const IDLE_DAYS = 4
/** How long after the thaw day it is still worth saying, days. */
const SPRING_DAYS = 40
/** How long before a new crop the rest of an old pile is spoken of, days. Common practice, no source. */
const HARVEST_AHEAD = 14

export interface EdgePlan {
  pile: string
  /** Feed that lies bare between face and sheet, ft. */
  bareFt: number
  bareDays: number
  /** How far to roll back next, ft; 0 while enough lies bare. */
  rollFt: number
  /** Weights that come off with it. */
  tires: number
  bags: number
  /** Of the tires, those that go along the new edge. */
  edgeTires: number
  /** How far the face has gone past the edge that was told last, days of feed; 0 where it has not. */
  behindDays: number
}

/** How far the sheet has been rolled back, ft from the end first opened; undefined where one roll was told without its feet. */
const rolledTo = (p: PileState): number | undefined => {
  const backs = p.covers.filter(t => t.event.change === 'back' && t.event.material !== 'mesh')
  if (!backs.length || backs.some(t => t.event.ft === undefined)) return undefined
  return backs.reduce((sum, t) => sum + t.event.ft!, 0)
}

/** The next roll of a pile being fed; undefined where face, rate or rolls are not known. */
export const edgePlan = (p: PileState, figures: WatchFigures): EdgePlan | undefined => {
  if (p.stage !== 'feeding' || !isCovered(p)) return undefined
  const face = figures.faceAt?.(p.name) ?? p.face?.atFt
  const rate = figures.faceRate?.(p.name)?.inPerDay
  const rolled = rolledTo(p)
  if (face === undefined || rate === undefined || rate <= 0 || rolled === undefined) return undefined
  const ftDay = rate / 12
  const length = lengthOf(p)
  const bareFt = Math.max(0, rolled - face)
  const room = length === undefined ? Number.POSITIVE_INFINITY : Math.max(0, length - rolled)
  const rollFt = bareFt < LOW_DAYS * ftDay ? Math.min(room, Math.max(0, BARE_DAYS * ftDay - bareFt)) : 0
  const share = room > 0 && Number.isFinite(room) ? rollFt / room : 0
  const tires = Math.round(p.tires * share)
  const width = p.measured?.widthFt ?? p.planned.widthFt
  const edgeTires = width === undefined ? tires : Math.min(tires, Math.ceil((EDGE_ROWS * width) / TIRE_FT))
  const behindDays = Math.max(0, face - rolled) / ftDay
  return { pile: p.name, bareFt, bareDays: bareFt / ftDay, rollFt, tires, bags: Math.round(p.bags * share), edgeTires, behindDays }
}

const notice = (book: Book, key: string, at: Instant, to: string, code: string, data: Record<string, string | number>): DueItem[] =>
  book.said.has(key) ? [] : [{ key, at, to, message: { code, data } }]

/**
 * In the cold an open edge keeps; from the first thaw told after February, or the farm's own thaw day, it must be sealed
 * again at every roll, and what was frozen down has come loose.
 */
const springEdge = (book: Book, p: PileState, m: Moment): DueItem[] => {
  const year = m.day.slice(0, 4)
  const { thawOn } = winterOf(book, `${year}-02-01`)
  if (p.stage !== 'feeding' || !isCovered(p) || m.day < `${year}-03-01` || m.day > addDays(later(thawOn, `${year}-03-01`), SPRING_DAYS))
    return []
  if (!p.openedOn || p.openedOn >= `${year}-03-01`) return []
  const thaw = since(book, 'weather', `${year}-03-01`).find(t => t.event.kind === 'thaw' && t.event.on <= m.day)
  if (!thaw && m.day < thawOn) return []
  const at = thaw ? thaw.at : hourOf(thawOn, m.hours.morning, m.zone)
  return at > m.at ? [] : notice(book, `edge-spring:${year}:${p.name}`, at, 'crew', 'edge-spring', { pile: p.name, days: BARE_DAYS })
}

/** Feeding was told day by day and is told no more: the edge stands open, or the telling has stopped. Once a month. */
const idleEdge = (book: Book, p: PileState, m: Moment): DueItem[] => {
  const told = [...p.feeds.slice(-3), ...p.faces.slice(-3)].map(t => t.event.on).sort()
  const last = told.at(-1)
  if (p.stage !== 'feeding' || !last || told.length < 3 || p.rations.length || daysBetween(told.at(-3)!, last) > 6) return []
  const at = hourOf(addDays(last, IDLE_DAYS), m.hours.ask, m.zone)
  return at > m.at
    ? []
    : notice(book, `edge-idle:${p.name}:${last.slice(0, 7)}`, at, 'crew', 'edge-idle', {
        pile: p.name,
        last,
        days: daysBetween(last, m.day),
      })
}

/** A new crop comes while the old pile of it still has feed: push it up and feed it first. */
const leftover = (book: Book, p: PileState, m: Moment, figures: WatchFigures): DueItem[] => {
  if (p.stage !== 'feeding') return []
  return eventsOf(book, 'harvest').flatMap(t => {
    const { crop, on } = t.event
    if (on < m.day || !p.loads.some(l => l.event.crop === crop)) return []
    const first = hourOf(addDays(on, -HARVEST_AHEAD), m.hours.morning, m.zone)
    const at = later(first, t.at)
    const left = figures.daysLeft?.(p.name)
    const ahead = daysBetween(m.day, on)
    if (at > m.at || !left || left.days <= ahead) return []
    const data = { pile: p.name, crop, on, daysOver: Math.round(left.days - ahead) }
    return notice(book, `leftover:${p.name}:${t.id}`, at, 'owner', 'edge-leftover', data)
  })
}

export const edgesDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] =>
  piles(book).flatMap(p => [...springEdge(book, p, m), ...idleEdge(book, p, m), ...leftover(book, p, m, figures)])
