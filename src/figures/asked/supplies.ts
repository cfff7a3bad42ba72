import type { Answer, Ask } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { Now } from '../farm/now.ts'
import { stockOf } from '../farm/stock.ts'

/** What lies free, of one item or of all. What was never told is not in stock and is not listed. */
export const supplies = (book: Book, ask: Ask, now: Now): Answer => {
  const items = stockOf(book, now.day).filter(s => ask.item === undefined || s.item === ask.item)
  return { about: 'supplies', items: ask.item === undefined ? items.filter(s => s.count > 0) : items }
}
