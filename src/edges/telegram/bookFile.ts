import { createWriteStream, mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { pipeline } from 'node:stream/promises'
import { createGzip } from 'node:zlib'
import { type Book, nameOf } from '../../book/book.ts'
import type { Day } from '../../units/calendar.ts'

/** Bot API, "sendDocument": a bot sends files of up to 50 MB; with room for the rest of the request, bytes. */
const MOST = 45_000_000
/** Beyond so many records it takes long enough that a word beforehand is due. */
export const LONG_BOOK = 5000

/**
 * Writes the book's events as JSON Lines, in the order they were told: `at` when, `by` who, `withdrawn` where it was taken back, and the
 * `event`. Compressed where it would be too large to be sent.
 */
export const writeBook = async (book: Book, folder: string, day: Day): Promise<string> => {
  mkdirSync(folder, { recursive: true })
  const lines = function* (): Generator<string> {
    for (const l of [...book.logged])
      yield `${JSON.stringify({ at: l.at, by: nameOf(book, l.by), ...(l.withdrawnBy !== undefined && { withdrawn: true }), event: l.event })}\n`
  }
  const plain = join(folder, `book-${day}.jsonl`)
  await pipeline(Readable.from(lines()), createWriteStream(plain))
  if (statSync(plain).size <= MOST) return plain
  await pipeline(Readable.from(lines()), createGzip(), createWriteStream(`${plain}.gz`))
  return `${plain}.gz`
}
