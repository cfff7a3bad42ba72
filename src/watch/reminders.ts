import { type Book, eventsOf } from '../book/book.ts'
import type { Told } from '../book/pile.ts'
import { addDays, addMonths, type Day, daysBetween, type Instant } from '../units/calendar.ts'
import { clockOf, hourOf, type Moment, toldAt } from './hours.ts'
import type { DueItem } from './item.ts'
import { reach } from './people.ts'

/** Later hours of the same day for a reminder that names today but no hour, when the morning is over. */
const LATER_TODAY = [12, 17]

export interface Occurrence {
  day: Day
  at: Instant
}

/** The n-th day of a reminder, from 0. Months are counted from the first, so the 31st comes back after a short month. */
const nthDay = (first: Day, every: 'day' | 'week' | 'month', n: number): Day =>
  every === 'month' ? addMonths(first, n) : addDays(first, every === 'week' ? 7 * n : n)

const stepsTo = (first: Day, every: 'day' | 'week' | 'month', day: Day): number => {
  const days = Math.max(0, daysBetween(first, day))
  return Math.floor(every === 'day' ? days : every === 'week' ? days / 7 : days / 31)
}

const instantOn = (t: Told<'remind'>, day: Day, m: Moment): Instant => {
  const { time } = t.event
  if (time) return clockOf(day, time, m.zone)
  const usual = hourOf(day, m.hours.morning, m.zone)
  if (t.event.every || usual > t.at || toldAt(t.at, m.zone).day !== day) return usual
  const told = toldAt(t.at, m.zone).hour
  const later = LATER_TODAY.find(h => h > told)
  return later === undefined ? t.at : hourOf(day, later, m.zone)
}

/** The last occurrence up to `m.at` and the first after it. A repeated one starts with the first that lies after it was told. */
export const occurrences = (t: Told<'remind'>, m: Moment): { last?: Occurrence; next?: Occurrence } => {
  const { on, every } = t.event
  const occurrence = (day: Day): Occurrence => ({ day, at: instantOn(t, day, m) })
  if (!every) {
    const only = occurrence(on)
    return only.at <= m.at ? { last: only } : { next: only }
  }
  let last: Occurrence | undefined
  for (let n = Math.max(0, stepsTo(on, every, m.day) - 1); ; n++) {
    const o = occurrence(nthDay(on, every, n))
    if (o.at < t.at) continue
    if (o.at > m.at) return last ? { last, next: o } : { next: o }
    last = o
  }
}

export const remindKey = (t: Told<'remind'>, o: Occurrence): string => `remind:${t.id}:${o.day}`

/** Reminders whose time has come: of a repeated one only the last, however many were slept through. */
export const remindersDue = (book: Book, m: Moment): DueItem[] =>
  eventsOf(book, 'remind').flatMap(t => {
    const { last } = occurrences(t, m)
    if (!last) return []
    const { about, who, by } = t.event
    const to = reach(book, who, by ?? t.by)
    return [{ key: remindKey(t, last), at: last.at, to, message: { code: 'reminder', data: { about, who: who ?? '' } } }]
  })

/** Reminders still to come, soonest first, for a list that can be read and cancelled. */
export const remindersAhead = (book: Book, m: Moment): { told: Told<'remind'>; next: Occurrence }[] =>
  eventsOf(book, 'remind')
    .flatMap(told => {
      const { next } = occurrences(told, m)
      return next ? [{ told, next }] : []
    })
    .sort((a, b) => (a.next.at < b.next.at ? -1 : a.next.at > b.next.at ? 1 : a.told.n - b.told.n))

/** Reminders for which a person named the hour: that wish goes before the quiet hours. */
export const askedFor = (book: Book, key: string): boolean => {
  const id = /^remind:(.+):\d{4}-\d{2}-\d{2}$/.exec(key)?.[1]
  const event = id === undefined ? undefined : book.byId.get(id)?.event
  return event?.type === 'remind' && event.time !== undefined
}
