import { apply, type Book, boxes, foldBook, lessons, nameOf, personOf, pileNames } from './book/book.ts'
import { type Body, ENTRY_VERSION, type Entry } from './book/entries.ts'
import type { EventLog, Incoming, Lang } from './ports.ts'
import { indexNames, type NameIndex } from './reading/names.ts'
import { read } from './reading/read.ts'
import type { Reading } from './reading/reading.ts'
import { lastTold } from './settle/context.ts'
import { type Instant, localTime } from './units/calendar.ts'

/** What is kept at hand of one farm: its folded book, and the names in it as the reading wants them. */
export interface Desk {
  book: Book
  /** By chat and person: when, ms, they last said something of the work that was not understood, if that was their last message. */
  missed: Map<string, number>
  names?: { at: number; index: NameIndex }
}

export interface Desks {
  of(farm: string): Desk
  read(desk: Desk, text: string, at: Instant, lang: Lang, from?: string): Reading
  /** Numbered and dated entries of what a message came to. */
  entries(
    book: Book,
    bodies: Body[],
    message: Pick<Incoming, 'channel' | 'chat' | 'id' | 'edit' | 'edits' | 'at' | 'from'>,
    raised?: string,
  ): Entry[]
  /** Takes entries into the book and stores them, all or nothing: the book in memory must not run ahead of the log. */
  keep<T>(farm: string, entries: Entry[], store: () => T): T
}

export const makeDesks = (log: EventLog, zone: string): Desks => {
  const desks = new Map<string, Desk>()
  const of = (farm: string): Desk => {
    let d = desks.get(farm)
    if (!d) {
      d = { book: foldBook(log.entries(farm)), missed: new Map() }
      desks.set(farm, d)
    }
    return d
  }
  const namesOf = (d: Desk): NameIndex => {
    if (d.names?.at !== d.book.naming) {
      const people = [...d.book.members.keys()].map(p => nameOf(d.book, p))
      d.names = {
        at: d.book.naming,
        index: indexNames({ piles: pileNames(d.book), boxes: [...boxes(d.book).keys()], words: lessons(d.book), people }),
      }
    }
    return d.names.index
  }
  return {
    of,
    read: (d, text, at, lang, from) => {
      const now = localTime(at, zone)
      return read(text, {
        names: namesOf(d),
        now: { day: now.day, hour: now.hour },
        lang,
        last: from === undefined ? undefined : lastTold(d.book, from, at),
        explain: from === undefined,
      })
    },
    entries: (book, bodies, message, raised) =>
      bodies.map((body, k) => ({
        v: ENTRY_VERSION,
        n: book.last + 1 + k,
        at: message.at,
        by: body.kind === 'event' ? personOf(book, body.event.by, message.from) : message.from,
        source: {
          channel: message.channel,
          chat: message.chat,
          id: message.edits ?? message.id,
          edit: message.edit,
          ...(raised !== undefined && { raised }),
        },
        body,
      })),
    keep: (farm, entries, store) => {
      const { book } = of(farm)
      for (const e of entries) apply(book, e)
      try {
        return store()
      } catch (error) {
        desks.delete(farm)
        throw error
      }
    },
  }
}
