import type { Book } from '../book/book.ts'
import type { Day } from '../units/calendar.ts'

const KEY = /^named:(\d{4}-\d{2}-\d{2}):(.*)$/

/** What a summary names only once, and the day on which it did. */
export const namedKey = (stem: string, day: Day): string => `named:${day}:${stem}`

const known = new WeakMap<Book, { size: number; on: Map<string, Day> }>()

/** The day on which a summary first named a thing; worked out again only when something was said. */
export const namedOn = (book: Book, stem: string): Day | undefined => {
  let now = known.get(book)
  if (now?.size !== book.said.size) {
    now = { size: book.said.size, on: new Map() }
    for (const key of book.said) {
      const m = KEY.exec(key)
      if (m && !now.on.has(m[2]!)) now.on.set(m[2]!, m[1]!)
    }
    known.set(book, now)
  }
  return now.on.get(stem)
}

/** Not named yet, or on this very day: all who get a summary that day get the line. */
export const isNew = (book: Book, stem: string, day: Day): boolean => (namedOn(book, stem) ?? day) === day
