import { type Book, piles } from '../book/book.ts'
import { hasFeed, type PileState, type Told } from '../book/pile.ts'
import { addDays, type Day, daysBetween, type Instant } from '../units/calendar.ts'
import { climb } from './escalate.ts'
import { isQuiet, later, type Moment, toldAt } from './hours.ts'
import type { DueItem } from './item.ts'
import { since } from './recent.ts'

/** A walk around all covers that one hail asks for. */
export interface Round {
  /** The day of the hail; there is one round a day, whoever tells of it. */
  on: Day
  at: Instant
  inches?: number
  /** Every pile that was covered, with what was found there once somebody said. */
  piles: { pile: string; found?: 'good' | 'trouble'; at?: Instant }[]
  open: boolean
}

/** After so many days the plain check takes over, and a report so old begins no round. Common practice, no source. */
const LAPSES_AFTER_DAYS = 7

const coveredOn = (p: PileState, day: Day): boolean => p.sheets.some(s => s.on <= day) && hasFeed(p)

/** What was found on a pile after a hail, by the last word. */
const foundSince = (p: PileState, hail: Told<'weather'>): { found: 'good' | 'trouble'; at: Instant } | undefined => {
  const later = (t: Pick<Told, 'n'> & { event: { on: Day } }): boolean =>
    t.event.on > hail.event.on || (t.event.on === hail.event.on && t.n > hail.n)
  // A hole and its hail told in one breath: the hole may stand first.
  const hurt = p.damages.findLast(t => later(t) || (t.event.cause === 'hail' && t.event.on >= hail.event.on))
  const check = p.checks.at(-1)
  const walked = check && later(check) ? check : undefined
  if (hurt || walked?.event.finding === 'trouble') return { found: 'trouble', at: (hurt ?? walked)!.at }
  return walked && { found: 'good', at: walked.at }
}

/** Two people telling of one night's hail begin one round; a new hail takes the unfinished round over. */
export const lastRound = (book: Book, m: Moment): Round | undefined => {
  const reports = since(book, 'weather', addDays(m.day, -LAPSES_AFTER_DAYS)).filter(
    t => t.event.kind === 'hail' && t.at <= m.at && daysBetween(t.event.on, toldAt(t.at, m.zone).day) < LAPSES_AFTER_DAYS,
  )
  const on = reports.at(-1)?.event.on
  const night = reports.filter(t => t.event.on === on)
  const hail = night[0]
  if (!hail) return undefined
  const inches = Math.max(0, ...night.map(t => t.event.inches ?? 0))
  const list = piles(book)
    .filter(p => coveredOn(p, hail.event.on))
    .map(p => ({ pile: p.name, ...foundSince(p, hail) }))
  return { on: hail.event.on, at: hail.at, ...(inches && { inches }), piles: list, open: list.some(l => !l.found) }
}

/** The round that still waits for piles; undefined when none does, or it is too old to matter. */
export const openRound = (book: Book, m: Moment): Round | undefined => {
  const r = lastRound(book, m)
  return r?.open ? r : undefined
}

export const missing = (r: Round): string[] => r.piles.filter(p => !p.found).map(p => p.pile)

/** The day on which a round is begun aloud: that of its report, or the next where the report fell into the quiet of an evening. */
export const startDay = (r: Round, m: Moment): Day => {
  const told = toldAt(r.at, m.zone)
  return isQuiet(told.hour, m.hours) && told.hour >= m.hours.quietTo ? addDays(told.day, 1) : told.day
}

/** The start of a round, its askings, and its close. */
export const roundsDue = (book: Book, m: Moment): DueItem[] => {
  const r = lastRound(book, m)
  if (!r?.piles.length) return []
  const start = `round:${r.on}`
  const wait = missing(r)
  const data = { on: r.on, inches: r.inches ?? 0, piles: wait.length ? wait : r.piles.map(p => p.pile), count: r.piles.length }
  if (r.open && !book.said.has(start))
    return [{ key: start, at: r.at, to: 'crew', message: { code: 'round-start', data }, offer: { did: 'walked', piles: wait } }]
  // A round that was never begun aloud needs no close.
  if (!book.said.has(start)) return []
  if (!r.open) {
    const at = r.piles.map(p => p.at!).reduce(later)
    const trouble = r.piles.filter(p => p.found === 'trouble').map(p => p.pile)
    const code = trouble.length ? 'round-trouble' : 'round-good'
    return [{ key: `round-closed:${r.on}`, at, to: 'crew', message: { code, data: { count: r.piles.length, piles: trouble } } }]
  }
  return climb(
    book,
    m,
    'round',
    [{ stem: r.on, since: addDays(startDay(r, m), 1), step: 1, urgency: 85, line: { code: 'round-line', data }, piles: wait }],
    ['again', 'owner'],
  )
}
