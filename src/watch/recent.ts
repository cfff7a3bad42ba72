import type { Book, Logged } from '../book/book.ts'
import type { EventType } from '../book/events.ts'
import type { Told } from '../book/pile.ts'
import { addDays, type Day, monthOf } from '../units/calendar.ts'
import type { Moment } from './hours.ts'

/** How long a word that answers an event is still worth saying, hours; long enough for one told in the evening and held until morning. */
export const FRESH_HOURS = 36

/** Events in force that were told within the last hours and are of these days: not what somebody remembers from last year. */
export const recent = (book: Book, m: Moment): Told[] => {
  const from = new Date(Date.parse(m.at) - FRESH_HOURS * 3_600_000).toISOString()
  const oldest = addDays(m.day, -7)
  const list: Logged[] = []
  // The log grows in time's order, so its end is enough.
  for (let i = book.logged.length - 1; i >= 0; i--) {
    const l = book.logged[i]!
    if (l.at < from) break
    if (l.withdrawnBy === undefined && l.event.on >= oldest && l.at <= m.at) list.push(l)
  }
  return list.reverse()
}

/**
 * Events of one type in force that happened on `day` or later, in the order they happened. Nothing is told before it
 * happens but a plan, and the log grows in time's order, so its end is enough however long the book is.
 */
export const since = <T extends EventType>(book: Book, type: T, day: Day): Told<T>[] => {
  const log = book.byType.get(type) ?? []
  const oldest = addDays(day, -1)
  const list: Told<T>[] = []
  for (let i = log.length - 1; i >= 0; i--) {
    const l = log[i]!
    if (l.at.slice(0, 10) < oldest) break
    if (l.withdrawnBy === undefined && l.event.on >= day) list.push(l as unknown as Told<T>)
  }
  return list.sort((a, b) => (a.event.on < b.event.on ? -1 : a.event.on > b.event.on ? 1 : a.n - b.n))
}

export const isType = <T extends EventType>(t: Told, type: T): t is Told<T> & Told => t.event.type === type

/** The year of a season that begins with March, before the first cutting: a winter belongs to the summer before it. */
export const seasonOf = (day: Day): number => Number(day.slice(0, 4)) - (monthOf(day) < 3 ? 1 : 0)
