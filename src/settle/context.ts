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

/** How long "4 more" goes on with the sender's own last load or cover, and anything else with the last record of all, in ms. */
const OWN_GOES_ON = 2 * HOUR
const GOES_ON = HOUR / 4

/** What somebody told last that a message may go on with: their own last load or cover of two hours, or the last record of a quarter of an hour. */
export const lastTold = (book: Book, from: string, at: Instant): EventType | undefined => {
  for (let k = book.logged.length - 1; k >= 0; k--) {
    const l = book.logged[k]!
    const age = Date.parse(at) - Date.parse(l.at)
    if (age > OWN_GOES_ON) return undefined
    if (l.by !== from || l.withdrawnBy !== undefined) continue
    // loads come one after another, and a cover is laid in pieces
    if (l.event.type === 'load' || l.event.type === 'cover') return l.event.type
    return age <= GOES_ON && k === book.logged.length - 1 ? l.event.type : undefined
  }
  return undefined
}
