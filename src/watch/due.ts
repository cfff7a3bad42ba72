import { type Book, eventsOf } from '../book/book.ts'
import { addDays, type Instant } from '../units/calendar.ts'
import { cautionsDue } from './cautions.ts'
import { checksDue } from './checks.ts'
import { edgesDue } from './edge.ts'
import { withinLimit } from './escalate.ts'
import { fillingDue } from './filling.ts'
import { freezeDue } from './freeze.ts'
import { isQuiet, type Moment, momentOf, nextHour } from './hours.ts'
import type { DueItem, Now, WatchFigures } from './item.ts'
import { askedFor, occurrences, remindersDue, remindKey } from './reminders.ts'
import { repairsDue } from './repairs.ts'
import { roundsDue } from './rounds.ts'
import { eveningDue, morningDue, weeklyDue } from './summaries.ts'
import { suppliesDue } from './supplies.ts'
import { earlyDue } from './waiting.ts'

export type { DueItem, Now, WatchFigures } from './item.ts'

/** Everything that can become due, in the order in which it is said at one and the same instant. */
const SOURCES: ((book: Book, m: Moment, figures: WatchFigures) => DueItem[])[] = [
  morningDue,
  remindersDue,
  earlyDue,
  cautionsDue,
  roundsDue,
  repairsDue,
  checksDue,
  freezeDue,
  edgesDue,
  fillingDue,
  suppliesDue,
  eveningDue,
  weeklyDue,
]

/** An hour that somebody asked for is kept to the hour; later it is a catch-up and waits for the quiet to end. */
const ON_TIME_MS = 3_600_000
const keepsItsHour = (book: Book, item: DueItem, m: Moment): boolean =>
  Date.parse(m.at) - Date.parse(item.at) < ON_TIME_MS && askedFor(book, item.key)

/**
 * What is due at `now` and was not said yet, oldest first. The caller says each item and writes its key into the book
 * as said, both in one step; then the same call gives nothing more.
 */
export const due = (book: Book, now: Now, figures: WatchFigures): DueItem[] => {
  const m = momentOf(book, now)
  const quiet = isQuiet(m.hour, m.hours)
  const items = SOURCES.flatMap(source => source(book, m, figures)).filter(
    item => !book.said.has(item.key) && (!quiet || keepsItsHour(book, item, m)),
  )
  return withinLimit(book, m, items).sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
}

/** The next instant after `now` at which something may become due by the clock alone; never more than a day away. */
export const nextDue = (book: Book, now: Now): Instant => {
  const m = momentOf(book, now)
  const { morning, ask, evening, quietTo } = m.hours
  const hours = [morning, ask, evening, quietTo].map(h => nextHour(m, h))
  const reminders = eventsOf(book, 'remind').flatMap(t => {
    const { next } = occurrences(t, m)
    return next && !book.said.has(remindKey(t, next)) ? [next.at] : []
  })
  return [...hours, ...reminders].reduce((first, at) => (at < first ? at : first), `${addDays(m.day, 2)}T00:00:00.000Z`)
}
