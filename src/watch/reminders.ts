import { type Book, eventsOf, nameOf, personOf } from '../book/book.ts'
import type { Told } from '../book/pile.ts'
import { addDays, addMonths, type Day, daysBetween, type Instant } from '../units/calendar.ts'
import { clockOf, hourOf, type Moment, toldAt } from './hours.ts'
import type { DueItem } from './item.ts'
import { landing, reach } from './people.ts'

/** Parts of a day that were named without an hour, and the hour they are kept at. Common practice, no source. */
const PARTS: [RegExp, string][] = [
  [/\b(?:tonight|this evening|(?:in the|tomorrow|day) evening|esta noche|(?:en|por) la noche)\b/i, '19:00'],
  [/\b(?:this afternoon|(?:in the|tomorrow|day) afternoon|(?:esta|en la|por la) tarde)\b/i, '14:00'],
]

/** Later hours of the same day for a reminder that names today but no hour, when the morning is over. */
const LATER_TODAY = [12, 17]

export interface Occurrence {
  day: Day
  at: Instant
}

type Again = { every: 'day' | 'week' | 'month'; step: number }
const againOf = ({ event }: Told<'remind'>): Again | undefined => event.every && { every: event.every, step: event.step ?? 1 }

/** The n-th day of a reminder, from 0. Months are counted from the first, so the 31st comes back after a short month. */
const nthDay = (first: Day, { every, step }: Again, n: number): Day =>
  every === 'month' ? addMonths(first, n * step) : addDays(first, (every === 'week' ? 7 : 1) * n * step)

const stepsTo = (first: Day, { every, step }: Again, day: Day): number => {
  const days = Math.max(0, daysBetween(first, day))
  return Math.floor(days / (step * (every === 'day' ? 1 : every === 'week' ? 7 : 31)))
}

const instantOn = (t: Told<'remind'>, day: Day, m: Moment): Instant => {
  const { time, said } = t.event
  const part = time ?? PARTS.find(([like]) => like.test(said ?? ''))?.[1]
  if (part) {
    const at = clockOf(day, part, m.zone)
    // "tonight" said at eight in the evening: at once would be no reminder
    return time || at > t.at ? at : new Date(Date.parse(t.at) + 3_600_000).toISOString()
  }
  const usual = hourOf(day, m.hours.morning, m.zone)
  if (t.event.every || usual > t.at || toldAt(t.at, m.zone).day !== day) return usual
  const told = toldAt(t.at, m.zone).hour
  const later = LATER_TODAY.find(h => h > told)
  return later === undefined ? t.at : hourOf(day, later, m.zone)
}

/** The last occurrence up to `m.at` and the first after it. A repeated one starts with the first that lies after it was told. */
export const occurrences = (t: Told<'remind'>, m: Moment): { last?: Occurrence; next?: Occurrence } => {
  const { on } = t.event
  const again = againOf(t)
  const occurrence = (day: Day): Occurrence => ({ day, at: instantOn(t, day, m) })
  if (!again) {
    const only = occurrence(on)
    return only.at <= m.at ? { last: only } : { next: only }
  }
  let last: Occurrence | undefined
  for (let n = Math.max(0, stepsTo(on, again, m.day) - 1); ; n++) {
    const o = occurrence(nthDay(on, again, n))
    if (o.at < t.at) continue
    if (o.at > m.at) return last ? { last, next: o } : { next: o }
    last = o
  }
}

export const remindKey = (t: Told<'remind'>, o: Occurrence): string => `remind:${t.id}:${o.day}`

/** Who set it, where that is somebody else than the one who reads it. */
const whoSet = (book: Book, t: Told<'remind'>, to: string): string => {
  const by = personOf(book, t.event.by, t.by)
  return by === to || to === 'crew' || to === 'owner' ? '' : nameOf(book, by)
}

/** Reminders whose time has come: of a repeated one only the last, however many were slept through. */
export const remindersDue = (book: Book, m: Moment): DueItem[] =>
  eventsOf(book, 'remind').flatMap(t => {
    const { last } = occurrences(t, m)
    if (!last) return []
    const { about, who, by } = t.event
    const to = reach(book, who, personOf(book, by, t.by))
    // What the crew is told names the one it is for; one's own chat need not.
    const { person } = landing(book, to)
    const named = to === 'crew' || person === to ? '' : to === 'owner' ? '' : nameOf(book, to)
    return [
      {
        key: remindKey(t, last),
        at: last.at,
        to,
        message: { code: 'reminder', data: { about, who: named, by: whoSet(book, t, to) } },
        reminder: t.id,
      },
    ]
  })

/** Reminders still to come, soonest first, for a list that can be read and cancelled. */
export const remindersAhead = (book: Book, m: Moment): { told: Told<'remind'>; next: Occurrence }[] =>
  eventsOf(book, 'remind')
    .flatMap(told => {
      const { next } = occurrences(told, m)
      return next ? [{ told, next }] : []
    })
    .sort((a, b) => (a.next.at < b.next.at ? -1 : a.next.at > b.next.at ? 1 : a.told.n - b.told.n))

/** Whom a reminder is for: `crew`, `owner` or a person. */
export const remindsWhom = (book: Book, t: Told<'remind'>): string => reach(book, t.event.who, personOf(book, t.event.by, t.by))

/** Whether a person may say that it is done, put it off or drop it: the one it is for, who set it, the owner, and anybody where it is the crew's. */
export const mayTouch = (book: Book, t: Told<'remind'>, person: string): boolean => {
  const whom = remindsWhom(book, t)
  return whom === person || whom === 'crew' || personOf(book, t.event.by, t.by) === person || book.members.get(person)?.role === 'owner'
}

/** Reminders for which a person named the hour: that wish goes before the quiet hours. */
export const askedFor = (book: Book, key: string): boolean => {
  const id = /^remind:(.+):\d{4}-\d{2}-\d{2}$/.exec(key)?.[1]
  const event = id === undefined ? undefined : book.byId.get(id)?.event
  return event?.type === 'remind' && event.time !== undefined
}
