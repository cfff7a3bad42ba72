import { apply, type Book } from '../../book/book.ts'
import { type Body, ENTRY_VERSION, type Entry } from '../../book/entries.ts'
import type { EventLog, Incoming, Outcome, Reply, Result } from '../../ports.ts'

/** What a message comes to that records nothing: words, or none. */
export const resultOf = (outcome: Outcome, replies: Reply[]): Result => ({
  outcome,
  recorded: [],
  withdrawn: [],
  asks: [],
  answers: [],
  replies,
})

/**
 * Settles a message that is the channel's own business (joining, a group) with these lines of the log. The same message again
 * changes nothing. Gives what it came to, then or now.
 */
export type Enter = (message: Incoming, bodies: Body[], result: Result) => Result

/** Writes to the log first, and takes the lines into the book only once they are stored. */
export const makeEnter =
  (log: EventLog, book: () => Book): Enter =>
  (message, bodies, result) => {
    const before = log.take(message).result
    if (before) return before
    const source = { channel: message.channel, chat: message.chat, id: message.id, edit: message.edit }
    const b = book()
    const entries: Entry[] = bodies.map((body, i) => ({
      v: ENTRY_VERSION,
      n: b.last + 1 + i,
      at: message.at,
      by: message.from,
      source,
      body,
    }))
    log.settle(message, entries, result)
    for (const e of entries) apply(b, e)
    return result
  }
