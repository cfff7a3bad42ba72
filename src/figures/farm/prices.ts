import { type Book, setting } from '../../book/book.ts'
import type { Lb } from '../../units/measure.ts'

/** The price that the farm told: of a ton of a crop as fed, or of one sheet; undefined where none was. */
export const priceOf = (book: Book, of: string): number | undefined => {
  const price = setting(book, `price:${of}`, 0)
  return price > 0 ? price : undefined
}

/**
 * Price of a ton of what lies in a pile: its crops' prices, weighted by what went in of each. Undefined where one of them has
 * none: a part would pass for the whole.
 */
export const mixPrice = (book: Book, layers: readonly { crop: string; lb: Lb }[]): number | undefined => {
  const total = layers.reduce((t, l) => t + l.lb, 0)
  if (total <= 0) return undefined
  let sum = 0
  for (const { crop, lb } of layers) {
    const price = priceOf(book, crop)
    if (price === undefined) return undefined
    sum += price * lb
  }
  return sum / total
}
