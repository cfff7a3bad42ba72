import { type Book, eventsOf } from '../book/book.ts'
import { addDays, type Instant } from '../units/calendar.ts'
import { alertsDue } from './alerts.ts'
import { cautionsDue } from './cautions.ts'
import { checksDue } from './checks.ts'
import { coverDue } from './coverTonight.ts'
import { edgesDue } from './edge.ts'
import { withinLimit } from './escalate.ts'
import { fillingDue } from './filling.ts'
import { freezeDue } from './freeze.ts'
import { type Hours, hoursOf, isQuiet, type Moment, momentOf, nextHour } from './hours.ts'
import type { DueItem, Now, WatchFigures } from './item.ts'
import { landing } from './people.ts'
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
  alertsDue,
  roundsDue,
  repairsDue,
  checksDue,
  freezeDue,
  edgesDue,
  fillingDue,
  coverDue,
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
  const hours = hoursFor(book, m.hours)
  const items = SOURCES.flatMap(source => source(book, m, figures)).filter(
    item => !book.said.has(item.key) && (!isQuiet(m.hour, hours(item.to)) || keepsItsHour(book, item, m)),
  )
  return withinLimit(book, m, items).sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0))
}

/** The hours of whoever reads it: a person's own where it lands in their chat, else the farm's. */
const hoursFor = (book: Book, farm: Hours): ((to: string) => Hours) => {
  const known = new Map<string, Hours>()
  return to => {
    let hours = known.get(to)
    if (!hours) {
      const { person } = landing(book, to)
      hours = person === undefined ? farm : hoursOf(book, person)
      known.set(to, hours)
    }
    return hours
  }
}

/** The next instant after `now` at which something may become due by the clock alone; never more than a day away. */
export const nextDue = (book: Book, now: Now): Instant => {
  const m = momentOf(book, now)
  const own = [...book.members.values()].filter(x => x.role !== 'stranger').map(x => hoursOf(book, x.person))
  const clock = new Set([m.hours, ...own].flatMap(({ morning, ask, evening, weekly, quietTo }) => [morning, ask, evening, weekly, quietTo]))
  const hours = [...clock].map(h => nextHour(m, h))
  const reminders = eventsOf(book, 'remind').flatMap(t => {
    const { next } = occurrences(t, m)
    return next && !book.said.has(remindKey(t, next)) ? [next.at] : []
  })
  return [...hours, ...reminders].reduce((first, at) => (at < first ? at : first), `${addDays(m.day, 2)}T00:00:00.000Z`)
}
