import { type Book, eventsBetween, piles, setting } from '../book/book.ts'
import type { Message } from '../book/questions.ts'
import { addDays, type Instant, weekday } from '../units/calendar.ts'
import { checkPlans } from './checks.ts'
import { coverKey, coverLines } from './coverTonight.ts'
import { tally, uncovered } from './filling.ts'
import { type Hours, hourOf, hoursOf, type Moment } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'
import { lapsed, lapsesDue } from './lapses.ts'
import { compose, type Line, line } from './lines.ts'
import { morningLines } from './morning.ts'
import { namedKey } from './named.ts'
import { landing } from './people.ts'
import { type Reader, readersOf, type SummaryName } from './readers.ts'
import { isType, recent } from './recent.ts'
import { unpatched } from './repairs.ts'
import { settingOf } from './settings.ts'

/** That there is nothing to say is said at its hour, and not caught up. */
const ON_TIME_MS = 3_600_000
const isSaidEmpty = (book: Book, at: Instant, m: Moment): boolean =>
  setting(book, 'emptySummaries', false) && Date.parse(m.at) - Date.parse(at) < ON_TIME_MS

/** One summary for one reader; none where there is nothing to say and nobody asked for that to be said. */
const summary = (book: Book, name: SummaryName, reader: Reader, at: Instant, m: Moment, lines: Line[]): DueItem[] => {
  if (!lines.length && !isSaidEmpty(book, at, m)) return []
  const head: Message = { code: lines.length ? `${name}-head` : `${name}-nothing`, data: { day: m.day } }
  const { message, named } = compose(head, lines)
  const also = named.map(stem => namedKey(stem, m.day))
  return [{ key: `${name}:${m.day}${reader.mark}`, at, to: reader.to, message, ...(also.length && { also }) }]
}

/** The readers of a summary whose hour has come today and who did not get it yet. */
const ripe = (book: Book, m: Moment, name: SummaryName): { reader: Reader; at: Instant }[] =>
  readersOf(book, name).flatMap(reader => {
    const hours: Hours = reader.person === undefined ? m.hours : hoursOf(book, reader.person)
    const at = hourOf(m.day, hours[name], m.zone)
    return at > m.at || book.said.has(`${name}:${m.day}${reader.mark}`) ? [] : [{ reader, at }]
  })

/**
 * The summaries of this morning, once their hour has come, with the questions that were let go; an earlier one that was
 * slept through is not said any more.
 */
export const morningDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const taken = new Set<string>()
  const mornings = ripe(book, m, 'morning').flatMap(({ reader, at }) => {
    const { chat } = landing(book, reader.to)
    const lines = morningLines(book, m, at, figures)
    // Where there is no summary a question let go makes none.
    const lapse = lines.length || isSaidEmpty(book, at, m) ? lapsed(book, at).find(g => g.chat === chat && g.message) : undefined
    if (lapse) lines.push({ urgency: 20, message: lapse.message! })
    const items = summary(book, 'morning', reader, at, m, lines)
    if (lapse && items[0]) {
      taken.add(lapse.chat)
      items[0].lapses = lapse.ids
    }
    return items
  })
  return [...mornings, ...lapsesDue(book, m, taken)]
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
  for (const { pile } of uncovered(book, m.day).filter(u => u.days === 0))
    if (!book.said.has(coverKey(pile.name, m.day))) lines.push(...coverLines(book, pile, m, figures, true))
  return lines
}

/** The evening of a filling day: what was hauled, and the cover if that was the last load. */
export const eveningDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const readers = ripe(book, m, 'evening')
  if (!readers.length || !recent(book, m).some(t => isType(t, 'load') && t.event.on === m.day)) return []
  return readers.flatMap(({ reader, at }) => summary(book, 'evening', reader, at, m, eveningLines(book, m, figures)))
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
    if (p.stage === 'feeding' && left && left.days < 0.5) lines.push(line(60, 'morning-pile-out', { pile: p.name }))
    else if (p.stage === 'feeding') {
      const lb = fed.length && fed.every(t => t.event.lb !== undefined) ? fed.reduce((sum, t) => sum + (t.event.lb ?? 0), 0) : ''
      lines.push(line(60, 'weekly-fed', { pile: p.name, lb, days: left?.days ?? '', runsOut: left?.runsOut ?? '' }))
    }
    const hurt = unpatched(p, p.open, m.day)
    if (hurt) lines.push(line(90, 'morning-damage', { ...hurt }))
  }
  for (const plan of checkPlans(book, m)) {
    if (plan.due < m.day) lines.push(line(80, 'weekly-check', { pile: plan.pile, why: plan.why, last: plan.last ?? '' }))
  }
  const rows = tally(book, from, m.day)
  const loads = rows.reduce((sum, r) => sum + r.count, 0)
  if (loads) lines.push(line(50, 'weekly-loads', { count: loads, piles: [...new Set(rows.map(r => r.pile))] }))
  const walks = events.filter(l => l.event.type === 'check').length
  if (walks) lines.push(line(40, 'weekly-walks', { count: walks }))
  return lines
}

/** Of the weekly summaries only the one of today; what a sleeping machine missed stands in the next. */
export const weeklyDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] =>
  ripe(book, m, 'weekly').flatMap(({ reader, at }) =>
    weekday(m.day) === settingOf(book, 'weeklyDay', WEEKLY_DAY, reader.person)
      ? summary(book, 'weekly', reader, at, m, weeklyLines(book, m, figures))
      : [],
  )
