import type { Book } from '../book/book.ts'
import { addDays, type Day, type Instant, instantOf, type LocalTime, localTime } from '../units/calendar.ts'
import type { Now } from './item.ts'
import { ofPerson, settingOf } from './settings.ts'

/** The farm's hours of the day, by its own wall clock, 0 up to 24. All are settings. */
export interface Hours {
  morning: number
  /** When a thing left undone is asked after. */
  ask: number
  evening: number
  /** Of the weekly summary. */
  weekly: number
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
const hourSetting = (book: Book, name: string, fallback: number, person?: string): number => {
  const value = settingOf<string | number>(book, name, fallback, person)
  if (typeof value === 'number') return value >= 0 && value < 24 ? value : fallback
  const m = /^(\d{1,2})(?::(\d{2}))?$/.exec(value)
  const hour = m ? Number(m[1]) + Number(m[2] ?? 0) / 60 : Number.NaN
  return hour >= 0 && hour < 24 ? hour : fallback
}

/**
 * The hours of the farm, or of one person who may have their own. Hours that contradict one another give way to the
 * summaries: who sets one wants it said.
 */
export const hoursOf = (book: Book, person?: string): Hours => {
  const hour = (name: string, fallback: number): number => hourSetting(book, name, fallback, person)
  const morning = hour('morningHour', 6)
  const evening = hour('eveningHour', 19)
  const weekly = hour('weeklyHour', evening)
  const from = hour('quietFrom', 21)
  const to = hour('quietTo', 5)
  const none = from === to
  const gets = (name: string): boolean =>
    person === undefined || book.members.get(person)?.role === 'owner' || book.settings.get(ofPerson(person, name)) === true
  const quietTo = none || !gets('morning') ? to : Math.min(to, morning)
  const late = Math.max(gets('evening') ? evening : 0, gets('weekly') ? weekly : 0)
  const quietFrom = none || from <= quietTo ? from : gets('morning') && morning >= from ? quietTo : late >= from ? (late + 1) % 24 : from
  const ask = hour('askHour', 12)
  const hours = { morning, ask, evening, weekly, quietFrom, quietTo }
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
