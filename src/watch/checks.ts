import { type Book, pileState, piles, setting } from '../book/book.ts'
import type { EventOf } from '../book/events.ts'
import { hasFeed, isCovered, type PileState, type Told } from '../book/pile.ts'
import { addDays, type Day, daysBetween, type Instant, monthOf } from '../units/calendar.ts'
import { climb, type Nudge, type Task } from './escalate.ts'
import { hourOf, type Moment } from './hours.ts'
import { namedOn } from './named.ts'
import { readersOf } from './readers.ts'
import { since } from './recent.ts'
import { missing, openRound } from './rounds.ts'

export type CheckWhy = 'plain' | 'sealed' | 'hail' | 'wind' | 'rain' | 'thaw' | 'animal'

/** When a covered pile should next be walked, and why then. */
export interface CheckPlan {
  pile: string
  /** Last day somebody walked it, or found something on it. */
  last?: Day
  due: Day
  everyDays: number
  why: CheckWhy
  /** When the book learned what makes it due. */
  since: Instant
  /** Stable name of this one walk. */
  stem: string
}

/**
 * No published number exists for how often a pile is to be walked; handbooks say "regularly". A week, and after every
 * storm, is common practice, no source. So are the weights below.
 */
export const PLAIN_DAYS = 7
const WARM_MONTHS = [5, 6, 7, 8, 9]
const WEIGHTS = { warm: 0.7, edge: 0.7, mesh: 1.25, second: 1.2, oldSheet: 0.7 }
/** A sheet that has lain through one summer's sun, days. */
const OLD_SHEET_DAYS = 365
/** Days after sealing: gas lifts the sheet and weights slide while the feed ferments. Common practice, no source. */
const AFTER_SEALING = [1, 3]
/** Animals come back to a place where they found feed. Common practice, no source. */
const AFTER_ANIMAL = 3
/** Wind from which loose edges lift, mph; the U.S. weather service's advisory begins near here. From memory. */
const BIG_WIND_MPH = 40
/** A day's rain that finds every low spot, inches. Common practice, no source. */
const BIG_RAIN_IN = 1

/**
 * Days between plain checks: the farm's setting, more often when warm and while the edge is open, less often under mesh
 * or a second sheet; all as it stood on `day`, so that a plan does not move because a month or the feeding began.
 */
export const checkEvery = (book: Book, p: PileState, day: Day): number => {
  const sheets = p.sheets.filter(s => s.on <= day)
  const mesh = p.covers.findLast(t => t.event.material === 'mesh' && t.event.change !== 'back' && t.event.on <= day)?.event.change === 'on'
  const plain = setting(book, 'checkDays', PLAIN_DAYS)
  let days = plain
  if (WARM_MONTHS.includes(monthOf(day))) days *= WEIGHTS.warm
  if (p.openedOn !== undefined && p.openedOn <= day) days *= WEIGHTS.edge
  if (mesh) days *= WEIGHTS.mesh
  if (sheets.length > 1) days *= WEIGHTS.second
  const oldest = sheets[0]?.on
  if (oldest && daysBetween(oldest, day) > OLD_SHEET_DAYS) days *= WEIGHTS.oldSheet
  return Math.max(1, Math.min(Math.round(days), Math.ceil(plain * 1.5)))
}

type Seen = Pick<Told, 'n' | 'at'> & { on: Day }
const seen = (t: Pick<Told, 'n' | 'at'> & { event: { on: Day } }): Seen => ({ n: t.n, at: t.at, on: t.event.on })
const after = (a: Seen, b: Seen): boolean => a.on > b.on || (a.on === b.on && a.n > b.n)

/** The last walk of a pile, or the last thing found on it: who reports a hole has been there. Both lists are in the order of happening. */
const lastLook = (p: PileState): Seen | undefined => {
  const [check, damage] = [p.checks.at(-1), p.damages.at(-1)].map(t => t && seen(t))
  return check && damage ? (after(check, damage) ? check : damage) : (check ?? damage)
}

const triggerOf = ({ kind, mph, inches }: EventOf<'weather'>): CheckWhy | undefined => {
  if (kind === 'hail' || kind === 'thaw') return kind
  if (kind === 'wind') return (mph ?? BIG_WIND_MPH) >= BIG_WIND_MPH ? kind : undefined
  return kind === 'rain' && (inches ?? 0) >= BIG_RAIN_IN ? kind : undefined
}

/** Reports of animals since the last check: the check of a later day has looked whether they came back. */
const animalsSince = (p: PileState, check: Day | undefined): Told<'damage'>[] => {
  const list: Told<'damage'>[] = []
  for (let i = p.damages.length - 1; i >= 0; i--) {
    const t = p.damages[i]!
    if (check !== undefined && t.event.on < check) break
    if (t.event.cause === 'animal') list.push(t)
  }
  return list
}

/** The plan of one pile; undefined where no sheet lies on it or nothing is under it. */
export const checkPlan = (book: Book, pile: string): CheckPlan | undefined => {
  const p = pileState(book, pile)
  // Under a pile being filled the sheet is off; that it lies open is another word.
  if (!p || p.stage === 'filling' || !isCovered(p) || !hasFeed(p)) return undefined
  const sealing = p.covers.findLast(t => t.event.change === 'on' && p.sheets.some(s => s.material === t.event.material))
  if (!sealing) return undefined
  const sealed = seen(sealing)
  const look = lastLook(p)
  const last = look && look.on >= sealed.on ? look : undefined
  const from = last ?? sealed
  const every = checkEvery(book, p, from.on)

  type Candidate = { due: Day; why: CheckWhy; by: Seen }
  const candidates: Candidate[] = [{ due: addDays(from.on, every), why: 'plain', by: from }]
  const early = AFTER_SEALING.map(n => addDays(sealed.on, n)).find(d => !last || last.on < d)
  if (early) candidates.push({ due: early, why: 'sealed', by: sealed })
  for (const t of since(book, 'weather', from.on)) {
    const why = triggerOf(t.event)
    if (!why || (last && after(last, seen(t)))) continue
    // A hole told in one breath with its weather, and before it.
    const found = p.damages.at(-1)?.event
    if (!(found?.cause === why && found.on >= t.event.on)) candidates.push({ due: addDays(t.event.on, 1), why, by: seen(t) })
  }
  for (const t of animalsSince(p, p.checks.at(-1)?.event.on)) {
    if (t.event.on >= sealed.on) candidates.push({ due: addDays(t.event.on, AFTER_ANIMAL), why: 'animal', by: seen(t) })
  }
  // What is told later goes before a walk that was due already when it was told, so that a storm is heard of however late the plain walk is.
  const next = candidates
    .sort((a, b) => a.by.n - b.by.n)
    .reduce((best, c) => (c.due < best.due || (c.by.n > best.by.n && best.due <= c.by.on) ? c : best))
  const stem = `${pile}/${next.why}/${next.due}/${next.by.n}`
  return { pile, ...(last && { last: last.on }), everyDays: every, due: next.due, why: next.why, since: next.by.at, stem }
}

/** Plans of all covered piles, but for those that an open round asks for. */
export const checkPlans = (book: Book, m: Moment): CheckPlan[] => {
  const round = openRound(book, m)
  const asked = new Set(round ? missing(round) : [])
  return piles(book).flatMap(p => (asked.has(p.name) ? [] : (checkPlan(book, p.name) ?? [])))
}

/** Days until a walk not taken is asked after: a plain one is less urgent than one after a storm. Common practice, no source. */
const PLAIN_STEP = 2
const STORM_STEP = 1

/** The first morning that named the walk; only from then on can anyone be asked again. Where nobody gets a morning, the day it was due. */
const namedFirst = (book: Book, plan: CheckPlan): Day | undefined =>
  namedOn(book, plan.stem) ?? (readersOf(book, 'morning').length ? undefined : plan.due)

/** A walk that a morning named and nobody took: asked once more, then the owner's. */
export const checksDue = (book: Book, m: Moment): Nudge[] => {
  if (hourOf(m.day, m.hours.ask, m.zone) > m.at) return []
  const tasks = checkPlans(book, m).flatMap((plan): Task[] => {
    const named = plan.due < m.day ? namedFirst(book, plan) : undefined
    if (!named) return []
    const late = daysBetween(plan.due, m.day)
    const line = { code: 'check-line', data: { pile: plan.pile, why: plan.why, last: plan.last ?? '', late } }
    const step = plan.why === 'plain' ? PLAIN_STEP : STORM_STEP
    return [{ stem: plan.stem, since: addDays(named, step), step, urgency: 50 + Math.min(20, late), line, piles: [plan.pile] }]
  })
  return climb(book, m, 'check', tasks, ['again', 'owner'])
}
