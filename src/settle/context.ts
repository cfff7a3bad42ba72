import type { Book, Logged } from '../book/book.ts'
import type { EventType } from '../book/events.ts'
import type { Choice, Draft, Message } from '../book/questions.ts'
import type { Incoming, Lang, Role } from '../ports.ts'
import type { Day, Instant } from '../units/calendar.ts'

/** What settling one message needs to know. */
export interface Context {
  book: Book
  message: Incoming
  /** The message's day and hour by the farm's wall clock. */
  day: Day
  hour: number
  zone: string
  lang: Lang
  role: Role
  /** The sender's name as the crew knows it. */
  name: string
  /** The sender's message before this one said something of the work that was not understood. */
  missed: boolean
  /** Fresh ids for events and questions, the same ones again for the same message. */
  id: () => string
}

/** A draft that cannot be recorded yet, and the question that would settle it. */
export interface Need {
  slot?: string
  ask: Message
  choices: Choice[]
  /** The doubt that a "yes" puts to rest. */
  doubt?: string
  draft: Draft
}

export const HOUR = 3_600_000

/** True where a logged event was told within `hours` before the message. */
export const within = (c: Context, l: Logged, hours: number): boolean => {
  const gap = Date.parse(c.message.at) - Date.parse(l.at)
  return gap >= 0 && gap <= hours * HOUR
}

/** The sender's events in force, newest first, told within `hours`. */
export const ownRecent = (c: Context, hours: number): Logged[] => {
  const out: Logged[] = []
  for (let k = c.book.logged.length - 1; k >= 0; k--) {
    const l = c.book.logged[k]!
    if (Date.parse(c.message.at) - Date.parse(l.at) > hours * HOUR) break
    if (l.withdrawnBy === undefined && l.by === c.message.from) out.push(l)
  }
  return out
}

/** What somebody told in the last quarter of an hour, if anything. */
export const lastTold = (book: Book, from: string, at: Instant): EventType | undefined => {
  const l = book.logged.at(-1)
  return l && l.by === from && l.withdrawnBy === undefined && Date.parse(at) - Date.parse(l.at) <= 900_000 ? l.event.type : undefined
}
