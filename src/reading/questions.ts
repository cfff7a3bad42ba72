import { readAsk } from './asks.ts'
import { isQuestion } from './isQuestion.ts'
import { has, hasCat, type Item } from './item.ts'
import type { AskSaid } from './reading.ts'

const ASKS_FOR = ['q:howmany', 'q:howlong', 'q:how', 'q:what', 'q:when', 'q:who', 'q:where', 'q:yesno']

/** Where a second question begins behind "and" or a comma; -1 where none does. */
const secondAt = (run: Item[]): number => {
  for (let k = 2; k < run.length - 1; k++) {
    const joined = has(run[k - 1], 'and') || has(run[k - 1], 'comma')
    if (joined && ASKS_FOR.some(s => has(run[k], s)) && isQuestion(run.slice(k), false)) return k
  }
  return -1
}

const isSame = (a: AskSaid, b: AskSaid): boolean => a.about === b.about && JSON.stringify(a.slots) === JSON.stringify(b.slots)

/**
 * What a sentence asks: one thing, or two of different kinds, "how's barn and how long will shop last". The second is about the pile of
 * the first where it names none. Empty where nothing is asked that can be answered.
 */
export const asksIn = (run: Item[]): AskSaid[] => {
  const whole = readAsk(run)
  const at = secondAt(run)
  if (at < 0) return whole ? [whole] : []
  const one = readAsk(run.slice(0, at - 1))
  const two = readAsk(run.slice(at))
  // "how much corn and how much haylage is on creek" is one question of two feeds
  if (!one || !two || one.about === two.about || isSame(one, two)) return whole ? [whole] : []
  if (one.slots.pile !== undefined && !run.slice(at).some(i => hasCat(i, 'pile'))) two.slots.pile ??= one.slots.pile
  return [one, two]
}
