import { type Book, eventsOf, piles } from '../book/book.ts'
import type { PileState } from '../book/pile.ts'
import type { Datum } from '../book/questions.ts'
import { type Day, daysBetween, type Instant } from '../units/calendar.ts'
import { checkPlans } from './checks.ts'
import { BARE_DAYS, edgePlan } from './edge.ts'
import { uncovered } from './filling.ts'
import type { Moment } from './hours.ts'
import type { WatchFigures } from './item.ts'
import { type Line, line } from './lines.ts'
import { isNew, namedOn } from './named.ts'
import { openTopFt, unpatched } from './repairs.ts'
import { missing, openRound, startDay } from './rounds.ts'

const feedingSince = (p: PileState): Instant | undefined =>
  [...p.opens.filter(t => t.event.why === 'feed'), ...p.feeds, ...p.faces].map(t => t.at).sort()[0]

/** So long without a word of a pile, and by no ration, its days are told only as they come to an end. Common practice, no source. */
const QUIET_DAYS = 10
/** Days left at which a pile nobody speaks of is spoken of. */
const ENDS = [14, 7, 3]

const isSpokenOf = (book: Book, p: PileState, day: Day): boolean =>
  eventsOf(book, 'ration').some(t => t.event.pile === undefined || t.event.pile === p.name) ||
  [p.feeds.at(-1), p.faces.at(-1), p.opens.at(-1), p.spoils.at(-1)].some(t => t && daysBetween(t.event.on, day) <= QUIET_DAYS)

/**
 * A pile being fed: days left with their range, and the face against the season's minimum. What only asks for more to be
 * told is said once; a line that is the same every morning is not read.
 */
const pileLines = (book: Book, p: PileState, day: Day, figures: WatchFigures): Line[] => {
  const left = figures.daysLeft?.(p.name)
  const face = figures.faceRate?.(p.name)
  const once = (stem: string, l: Line): Line[] => (isNew(book, stem, day) ? [{ ...l, named: stem }] : [])
  const began = `${p.name}:${p.openedOn ?? ''}`
  const data: Record<string, Datum> = { pile: p.name }
  if (!left && !face) return once(`bare:${began}`, line(40, 'morning-pile-bare', data))
  if (left && left.days < 0.5) return once(`out:${began}`, line(88, 'morning-pile-out', data))
  if (left) Object.assign(data, { days: left.days, low: left.low ?? '', high: left.high ?? '', runsOut: left.runsOut ?? '' })
  if (face) Object.assign(data, { inPerDay: face.inPerDay, minInPerDay: face.minInPerDay, enough: face.enough ? 'yes' : 'no' })
  const soon = left ? Math.max(0, 30 - left.days) : 0
  const said = line(
    40 + soon + (face && !face.enough ? 15 : 0),
    left && face ? 'morning-pile' : left ? 'morning-pile-days' : 'morning-pile-face',
    data,
  )
  if (isSpokenOf(book, p, day)) return [said]
  const end = left && ENDS.findLast(n => left.days <= n)
  return end === undefined ? [] : once(`end:${began}:${end}`, said)
}

/** A turn of the mix at the face, once a turn: the herd feels it in a day. */
const mixLines = (book: Book, p: PileState, day: Day, figures: WatchFigures): Line[] => {
  const turn = figures.mixTurn?.(p.name)
  if (!turn || p.face === undefined) return []
  const stem = `mix:${p.name}:${p.openedOn ?? ''}:${turn.crop ?? ''}:${Math.round(turn.atFt / MIX_STEP_FT)}`
  const before = `mix:${p.name}:${p.openedOn ?? ''}:${turn.crop ?? ''}:${Math.round(turn.atFt / MIX_STEP_FT) - 1}`
  if (!isNew(book, stem, day) || namedOn(book, before)) return []
  return [{ ...line(58, 'morning-mix', { pile: p.name, atFt: turn.atFt, on: turn.on ?? '', crop: turn.crop ?? '' }), named: stem }]
}
/** Turns nearer to one another than this are one slow turn, ft. */
const MIX_STEP_FT = 20

/** More bare than this share over the three days is worth a word; feet are told roughly. */
const BARE_SLACK = 1.3

const edgeLines = (book: Book, p: PileState, day: Day, figures: WatchFigures): Line[] => {
  const edge = edgePlan(p, figures)
  if (!edge) return []
  const { pile, rollFt, tires, bags, edgeTires, bareFt, bareDays, behindDays } = edge
  // The face is far past the last roll that was told: it goes on without being told of.
  if (behindDays > BARE_DAYS) return []
  const stem = `roll:${pile}:${p.covers.at(-1)?.id ?? ''}`
  if (rollFt >= 1)
    return isNew(book, stem, day)
      ? [{ ...line(65, 'morning-roll', { pile, ft: rollFt, tires, bags, edgeTires, stackTires: tires - edgeTires }), named: stem }]
      : []
  return bareDays > BARE_DAYS * BARE_SLACK ? [line(75, 'morning-bare', { pile, ft: bareFt, days: bareDays })] : []
}

/** What stays as it is is said every morning of its first week, then once a week. */
const isFresh = (days: number): boolean => days <= 7 || days % 7 === 0

/** What stood at the farm's morning hour. What was told since waits for the next: a summary that is caught up at noon does not repeat the forenoon. */
export const morningLines = (book: Book, m: Moment, at: Instant, figures: WatchFigures): Line[] => {
  const { day } = m
  const lines: Line[] = []
  for (const p of piles(book)) {
    const open = p.open.filter(o => o.told.at <= at)
    const hurt = unpatched(p, open, day)
    if (hurt && isFresh(hurt.days)) lines.push(line(90 + Math.min(9, hurt.days), 'morning-damage', { ...hurt }))
    const began = p.stage === 'feeding' ? feedingSince(p) : undefined
    if (began && began <= at)
      lines.push(...pileLines(book, p, day, figures), ...edgeLines(book, p, day, figures), ...mixLines(book, p, day, figures))
  }
  for (const u of uncovered(book, day)) {
    if (u.days >= 1 && u.since <= at && isFresh(u.days))
      lines.push(line(95, 'morning-uncovered', { pile: u.pile.name, days: u.days, depthFt: openTopFt(u.days) }))
  }
  const round = openRound(book, m)
  // On the day of its start the round speaks for itself.
  if (round && startDay(round, m) < day && book.said.has(`round:${round.on}`))
    lines.push(line(85, 'morning-round', { on: round.on, piles: missing(round) }))
  for (const plan of checkPlans(book, m)) {
    if (plan.due > day || plan.since > at) continue
    const late = daysBetween(plan.due, day)
    // Once said it is asked after, and then left to the week: a line that stands there every morning is not read.
    if (isNew(book, plan.stem, day))
      lines.push({
        ...line(60 + Math.min(20, late), 'morning-check-due', { pile: plan.pile, why: plan.why, last: plan.last ?? '', late }),
        named: plan.stem,
      })
  }
  return lines
}
