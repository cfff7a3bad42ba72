import { type Book, eventsBetween, piles, setting } from '../book/book.ts'
import type { PileState } from '../book/pile.ts'
import type { Datum, Message } from '../book/questions.ts'
import { addDays, type Day, daysBetween, type Instant, weekday } from '../units/calendar.ts'
import { checkPlans } from './checks.ts'
import { edgePlan } from './edge.ts'
import { coverJob, sunTomorrow, tally, uncovered } from './filling.ts'
import { hourOf, type Moment } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'
import { recent } from './recent.ts'
import { openTopFt, unpatched } from './repairs.ts'
import { missing, openRound, startDay } from './rounds.ts'

export const MAX_LINES = 12

/** One line of a summary; the higher, the sooner it stands. */
export interface Line {
  urgency: number
  message: Message
}

const line = (urgency: number, code: string, data: Record<string, Datum>): Line => ({ urgency, message: { code, data } })

/** A head and the most urgent lines, never more than twelve in all; what is left out is counted. */
export const compose = (head: Message, lines: Line[]): Message[] => {
  const sorted = [...lines].sort((a, b) => b.urgency - a.urgency).map(l => l.message)
  const room = MAX_LINES - 1
  if (sorted.length <= room) return [head, ...sorted]
  return [head, ...sorted.slice(0, room - 1), { code: 'summary-more', data: { count: sorted.length - room + 1 } }]
}

const summary = (book: Book, key: string, at: Instant, to: string, name: string, day: Day, lines: Line[]): DueItem[] => {
  if (!lines.length && setting(book, 'emptySummaries', false) === false) return []
  const head: Message = { code: lines.length ? `${name}-head` : `${name}-nothing`, data: { day } }
  return [{ key, at, to, message: compose(head, lines) }]
}

const feedingSince = (p: PileState): Instant | undefined =>
  [...p.opens.filter(t => t.event.why === 'feed'), ...p.feeds, ...p.faces].map(t => t.at).sort()[0]

/** A pile being fed: days left with their range, and the face against the season's minimum. */
const pileLine = (p: PileState, figures: WatchFigures): Line => {
  const left = figures.daysLeft?.(p.name)
  const face = figures.faceRate?.(p.name)
  const data: Record<string, Datum> = { pile: p.name }
  if (left) Object.assign(data, { days: left.days, low: left.low ?? '', high: left.high ?? '', runsOut: left.runsOut ?? '' })
  if (face) Object.assign(data, { inPerDay: face.inPerDay, minInPerDay: face.minInPerDay, enough: face.enough ? 'yes' : 'no' })
  const code = left && face ? 'morning-pile' : left ? 'morning-pile-days' : face ? 'morning-pile-face' : 'morning-pile-bare'
  const soon = left ? Math.max(0, 30 - left.days) : 0
  return line(40 + soon + (face && !face.enough ? 15 : 0), code, data)
}

/** More bare than this share over the three days is worth a word; feet are told roughly. */
const BARE_SLACK = 1.3

const edgeLines = (p: PileState, figures: WatchFigures): Line[] => {
  const edge = edgePlan(p, figures)
  if (!edge) return []
  const { pile, rollFt, tires, bags, edgeTires, bareFt, bareDays } = edge
  if (rollFt >= 1) return [line(65, 'morning-roll', { pile, ft: rollFt, tires, bags, edgeTires, stackTires: tires - edgeTires })]
  return bareDays > 3 * BARE_SLACK ? [line(75, 'morning-bare', { pile, ft: bareFt, days: bareDays })] : []
}

/** What stood at the farm's morning hour. What was told since waits for the next: a summary that is caught up at noon does not repeat the forenoon. */
const morningLines = (book: Book, m: Moment, at: Instant, figures: WatchFigures): Line[] => {
  const { day } = m
  const lines: Line[] = []
  for (const p of piles(book)) {
    const open = p.open.filter(o => o.told.at <= at)
    const hurt = unpatched(p, open, day)
    if (hurt) lines.push(line(90 + Math.min(9, hurt.days), 'morning-damage', { ...hurt }))
    const began = p.stage === 'feeding' ? feedingSince(p) : undefined
    if (began && began <= at) lines.push(pileLine(p, figures), ...edgeLines(p, figures))
  }
  for (const u of uncovered(book, day)) {
    if (u.days >= 1 && u.since <= at)
      lines.push(line(95, 'morning-uncovered', { pile: u.pile.name, days: u.days, depthFt: openTopFt(u.days) }))
  }
  const round = openRound(book, m)
  // On the day of its start the round speaks for itself.
  if (round && startDay(round, m) < day && book.said.has(`round:${round.on}`))
    lines.push(line(85, 'morning-round', { on: round.on, piles: missing(round) }))
  for (const plan of checkPlans(book, m)) {
    if (plan.due > day || plan.since > at) continue
    const late = daysBetween(plan.due, day)
    lines.push(line(60 + Math.min(20, late), 'morning-check-due', { pile: plan.pile, why: plan.why, last: plan.last ?? '', late }))
  }
  return lines
}

/** The summary of this morning, once its hour has come; an earlier one that was slept through is not said any more. */
export const morningDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const key = `morning:${m.day}`
  const at = hourOf(m.day, m.hours.morning, m.zone)
  return at > m.at || book.said.has(key) ? [] : summary(book, key, at, 'crew', 'morning', m.day, morningLines(book, m, at, figures))
}

const eveningLines = (book: Book, m: Moment, figures: WatchFigures): Line[] => {
  const rows = tally(book, m.day, m.day)
  const lines: Line[] = []
  for (const name of new Set(rows.map(r => r.pile))) {
    const here = rows.filter(r => r.pile === name)
    for (const crop of new Set(here.map(r => r.crop))) {
      const ofCrop = here.filter(r => r.crop === crop)
      const lb = ofCrop.every(r => r.lb !== undefined) ? ofCrop.reduce((sum, r) => sum + (r.lb ?? 0), 0) : ''
      lines.push(line(80, 'evening-load', { pile: name, crop, count: ofCrop.reduce((sum, r) => sum + r.count, 0), lb }))
    }
  }
  const drivers = [...new Set(rows.map(r => r.by))]
  if (drivers.length > 1) {
    for (const by of drivers)
      lines.push(line(30, 'evening-driver', { by, count: rows.filter(r => r.by === by).reduce((sum, r) => sum + r.count, 0) }))
  }
  for (const { pile } of uncovered(book, m.day).filter(u => u.days === 0)) {
    const need = figures.need?.(pile.name)
    lines.push(need ? line(70, 'cover-tonight', { ...coverJob(pile.name, need) }) : line(70, 'cover-tonight-bare', { pile: pile.name }))
    const sun = sunTomorrow(book, m)
    if (sun) lines.push(line(60, 'cover-sun', sun))
  }
  return lines
}

/** The evening of a filling day: what was hauled, and the cover if that was the last load. */
export const eveningDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const key = `evening:${m.day}`
  const at = hourOf(m.day, m.hours.evening, m.zone)
  if (at > m.at || book.said.has(key) || !recent(book, m).some(t => t.event.type === 'load' && t.event.on === m.day)) return []
  return summary(book, key, at, 'crew', 'evening', m.day, eveningLines(book, m, figures))
}

/** The owner's week: 0 Sunday to 6 Saturday, at the evening hour. */
export const WEEKLY_DAY = 0

const weeklyLines = (book: Book, m: Moment, figures: WatchFigures): Line[] => {
  const from = addDays(m.day, -6)
  const events = eventsBetween(book, from, m.day)
  const lines: Line[] = []
  for (const p of piles(book)) {
    const fed = p.feeds.filter(t => t.event.on >= from && t.event.on <= m.day)
    const left = figures.daysLeft?.(p.name)
    if (p.stage === 'feeding') {
      const lb = fed.length && fed.every(t => t.event.lb !== undefined) ? fed.reduce((sum, t) => sum + (t.event.lb ?? 0), 0) : ''
      lines.push(line(60, 'weekly-fed', { pile: p.name, lb, days: left?.days ?? '', runsOut: left?.runsOut ?? '' }))
    }
    const hurt = unpatched(p, p.open, m.day)
    if (hurt) lines.push(line(90, 'morning-damage', { ...hurt }))
  }
  for (const plan of checkPlans(book, m)) {
    if (plan.due < m.day)
      lines.push(
        line(80, 'morning-check-due', { pile: plan.pile, why: plan.why, last: plan.last ?? '', late: daysBetween(plan.due, m.day) }),
      )
  }
  const rows = tally(book, from, m.day)
  const loads = rows.reduce((sum, r) => sum + r.count, 0)
  if (loads) lines.push(line(50, 'weekly-loads', { count: loads, piles: [...new Set(rows.map(r => r.pile))] }))
  const walks = events.filter(l => l.event.type === 'check').length
  if (walks) lines.push(line(40, 'weekly-walks', { count: walks }))
  return lines
}

/** Of the weekly summaries only the one of today; what a sleeping machine missed stands in the next. */
export const weeklyDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const key = `weekly:${m.day}`
  const at = hourOf(m.day, m.hours.evening, m.zone)
  if (at > m.at || weekday(m.day) !== setting(book, 'weeklyDay', WEEKLY_DAY) || book.said.has(key)) return []
  return summary(book, key, at, 'owner', 'weekly', m.day, weeklyLines(book, m, figures))
}
