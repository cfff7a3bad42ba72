import { type Book, piles } from '../book/book.ts'
import type { PileState } from '../book/pile.ts'
import { addDays, type Day } from '../units/calendar.ts'
import { bestSun, coverJob } from './filling.ts'
import { clockText, type Moment } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'
import { type Line, line } from './lines.ts'
import { isNew, namedKey } from './named.ts'
import { seasonOf } from './recent.ts'
import { usualNeed } from './usual.ts'

/** Somebody said that the last load of a pile is in: the settling of that message writes this key. */
export const filledKey = (pile: string, day: Day): string => `filled:${pile}:${day}`
/** What the covering takes was said. */
export const coverKey = (pile: string, day: Day): string => `cover:${pile}:${day}`

/** The best sun that is still to come: today's until it is over, else tomorrow's. */
const sunLine = (book: Book, m: Moment): Line[] => {
  const today = bestSun(book, m.day, m.zone)
  if (today && clockText(m.hour) < today.to) return [line(60, 'cover-sun-today', { ...today })]
  const tomorrow = bestSun(book, addDays(m.day, 1), m.zone)
  return tomorrow ? [line(60, 'cover-sun', { ...tomorrow })] : []
}

/** What covering a pile takes: sheet, weights, people, minutes and sun; `ask` where nobody said that the last load is in. */
export const coverLines = (book: Book, pile: PileState, m: Moment, figures: WatchFigures, ask: boolean): Line[] => {
  const need = usualNeed(book, figures, pile.name)
  const job = need && { ...coverJob(pile.name, need) }
  const wind = `caution-sheet-wind:${seasonOf(m.day)}`
  const caution = !book.said.has(wind) && isNew(book, wind, m.day)
  return [
    job
      ? line(70, ask ? 'cover-tonight' : 'cover-now', { ...job })
      : line(70, ask ? 'cover-tonight-bare' : 'cover-now-bare', { pile: pile.name }),
    ...sunLine(book, m),
    ...(caution ? [{ ...line(55, 'caution-sheet-wind', { pile: pile.name }), named: wind }] : []),
  ]
}

/** At the last load, as soon as it is said: once a pile and day. */
export const coverDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] =>
  piles(book).flatMap(pile => {
    const key = coverKey(pile.name, m.day)
    const last = pile.loads.at(-1)
    if (!last || pile.stage !== 'filling' || !book.said.has(filledKey(pile.name, m.day)) || book.said.has(key)) return []
    const lines = coverLines(book, pile, m, figures, false)
    const also = lines.flatMap(l => (l.named ? [namedKey(l.named, m.day)] : []))
    return [{ key, at: m.at, to: 'crew', message: lines.map(l => l.message), ...(also.length && { also }) }]
  })
