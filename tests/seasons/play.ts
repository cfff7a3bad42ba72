import { apply, type Book, newBook, pileState } from '../../src/book/book.ts'
import type { Entry } from '../../src/book/entries.ts'
import { estimate } from '../../src/figures/farm/estimate.ts'
import type { Farm } from './farms.ts'
import { notebookDays } from './season.ts'

export interface Guess {
  world: string
  seed: number
  truth: number
  /** Days left as answered, with the ends of the interval; undefined where no answer was given. */
  mid: number | undefined
  low: number | undefined
  high: number | undefined
  notebook: number
}

const ZONE = 'America/Chicago'

/** Plays a season into a book, event by event, and asks on each of its days of asking. */
export const play = (farm: Farm, seed: number): Guess[] => {
  const s = farm.season(seed)
  const book: Book = newBook()
  const told = [...s.told].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.hour - b.hour))
  let n = 0
  let next = 0
  return s.questions
    .toSorted((a, b) => (a.on < b.on ? -1 : 1))
    .map(q => {
      while (next < told.length && told[next]!.on <= q.on) {
        const t = told[next++]!
        n++
        const entry: Entry = { v: 1, n, at: `${t.on}T20:00:00.000Z`, by: 'crew', body: { kind: 'event', id: `e${n}`, event: t.event } }
        apply(book, entry)
      }
      const p = pileState(book, s.pile)!
      const now = { day: q.on, at: `${q.on}T23:59:00.000Z`, zone: ZONE }
      const e = estimate(book, p, now)
      return {
        world: farm.name,
        seed,
        truth: q.truth,
        mid: e.days?.mid,
        low: e.days?.low,
        high: e.days?.high,
        notebook: notebookDays(s, q.on),
      }
    })
}
