import { dateBack, finished, parted, small, withWeather } from './join.ts'
import { lend } from './lend.ts'
import { covered, merge, toldTwice } from './merge.ts'
import { contrasted, ended, inParts, inTons, patchedBoth, shared, summed, uncovered, usedOn } from './overlap.ts'
import type { Act } from './reading.ts'

/** What the clauses of a message are to each other. The order tells: sums go before piles are lent, and what is one deed is merged last. */
const PASSES: ((acts: { act: Act; sentence: number }[]) => void)[] = [
  summed,
  dateBack,
  finished,
  ended,
  contrasted,
  shared,
  lend,
  patchedBoth,
  inTons,
  uncovered,
  usedOn,
  parted,
  inParts,
  small,
  withWeather,
  covered,
  toldTwice,
  merge,
]

/** Settles what the clauses of one message say together; changes the list and its acts in place. */
export const together = (acts: { act: Act; sentence: number }[]): void => {
  for (const pass of PASSES) pass(acts)
}
