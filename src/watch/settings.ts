import { type Book, setting } from '../book/book.ts'

type Value = string | number | boolean

/** The name under which the book keeps a setting of one person. */
export const ofPerson = (person: string, name: string): string => `of:${person}:${name}`

/** A person's own setting, else the farm's, else the usual. */
export const settingOf = <T extends Value>(book: Book, name: string, usual: T, person?: string): T =>
  (person === undefined ? undefined : (book.settings.get(ofPerson(person, name)) as T | undefined)) ?? setting(book, name, usual)

/** So many loads lie between two running totals told unasked, unless the owner says otherwise; 0 is never. Common practice, no source. */
export const TOTAL_EVERY = 10

/** Ranges within which a number may be set: beyond them it is a slip. */
export const RANGES: Record<string, [min: number, max: number]> = {
  checkDays: [1, 60],
  nudgesPerDay: [0, 20],
  waitDays: [0, 365],
  totalEvery: [0, 500],
  lat: [-90, 90],
  lon: [-180, 180],
}

/** Settings that everybody may have their own of; all others are the farm's and the owner's to set. */
export const PERSONAL = [
  'morningHour',
  'eveningHour',
  'weeklyHour',
  'weeklyDay',
  'quietFrom',
  'quietTo',
  'morning',
  'evening',
  'weekly',
  'lang',
]
