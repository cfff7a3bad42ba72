import { type Book, setting } from '../book/book.ts'
import { addDays, type Day, type Instant, instantOf, type LocalTime, localTime } from '../units/calendar.ts'
import type { Now } from './item.ts'

/** The farm's hours of the day, by its own wall clock, 0 up to 24. All are settings. */
export interface Hours {
  morning: number
  /** When a thing left undone is asked after. */
  ask: number
  evening: number
  /** From here to `quietTo` of the next day nothing is said unasked. */
  quietFrom: number
  quietTo: number
}

/** An instant with everything the watch wants to know about it. */
export interface Moment extends Now {
  day: Day
  hour: number
  hours: Hours
}

/** An hour as a number (6, 6.5) or as text ("06:30"); anything else is the fallback. */
const hourSetting = (book: Book, name: string, fallback: number): number => {
  const value = setting<string | number>(book, name, fallback)
  if (typeof value === 'number') return value >= 0 && value < 24 ? value : fallback
  const m = /^(\d{1,2})(?::(\d{2}))?$/.exec(value)
  const hour = m ? Number(m[1]) + Number(m[2] ?? 0) / 60 : Number.NaN
  return hour >= 0 && hour < 24 ? hour : fallback
}

/** Hours that contradict one another give way to the summaries: who sets one wants it said. */
export const hoursOf = (book: Book): Hours => {
  const morning = hourSetting(book, 'morningHour', 6)
  const evening = hourSetting(book, 'eveningHour', 19)
  const from = hourSetting(book, 'quietFrom', 21)
  const quietTo = Math.min(hourSetting(book, 'quietTo', 5), morning)
  const quietFrom = morning >= from && from > quietTo ? quietTo : evening >= from && from > quietTo ? (evening + 1) % 24 : from
  const ask = hourSetting(book, 'askHour', 12)
  const hours = { morning, ask, evening, quietFrom, quietTo }
  return isQuiet(ask, hours) ? { ...hours, ask: morning } : hours
}

export const momentOf = (book: Book, now: Now): Moment => ({
  at: new Date(now.at).toISOString(),
  zone: now.zone,
  ...localTime(now.at, now.zone),
  hours: hoursOf(book),
})

/** 6.5 is `06:30`. */
export const clockText = (hour: number): string => {
  const minutes = Math.round(hour * 60)
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
}

/** The same few days and instants are asked for by every source at every look, and a zone's offset is dear to find. */
const KEEP = 2000
const keep = <T>(kept: Map<string, T>, key: string, make: () => T): T => {
  let value = kept.get(key)
  if (value === undefined) {
    value = make()
    if (kept.size >= KEEP) kept.clear()
    kept.set(key, value)
  }
  return value
}
const instants = new Map<string, Instant>()
const times = new Map<string, LocalTime>()

/** A wall-clock time of a day as an instant; times that the spring change skips have moved on, doubled ones are the first. */
export const clockOf = (day: Day, time: string, zone: string): Instant =>
  keep(instants, `${day} ${time} ${zone}`, () => instantOf(day, time, zone))

/** The wall clock when something was told. */
export const toldAt = (at: Instant, zone: string): LocalTime => keep(times, `${at} ${zone}`, () => localTime(at, zone))

export const hourOf = (day: Day, hour: number, zone: string): Instant => clockOf(day, clockText(hour), zone)

/** Equal hours mean that there are no quiet ones. */
export const isQuiet = (hour: number, h: Hours): boolean =>
  h.quietFrom === h.quietTo
    ? false
    : h.quietFrom > h.quietTo
      ? hour >= h.quietFrom || hour < h.quietTo
      : hour >= h.quietFrom && hour < h.quietTo

/** The first instant after `m` at which the wall clock shows `hour`. */
export const nextHour = (m: Moment, hour: number): Instant => {
  const today = hourOf(m.day, hour, m.zone)
  return today > m.at ? today : hourOf(addDays(m.day, 1), hour, m.zone)
}

/** The later, and the earlier, of two days or two instants. */
export const later = (a: string, b: string): string => [a, b].sort()[1]!
export const earlier = (a: string, b: string): string => [a, b].sort()[0]!
