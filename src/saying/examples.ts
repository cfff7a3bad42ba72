import type { Message } from '../book/questions.ts'
import { m } from './phrases.ts'

/** The piles that an example may name, each by the state that makes the example work now. */
export interface FarmNow {
  filling?: string
  feeding?: string
  covered?: string
  /** Any pile at all. */
  pile?: string
}

/** Sentences that would work now, the likeliest first: no example names a pile that the farm does not have. */
export const examples = ({ filling, feeding, covered, pile }: FarmNow): Message[] => {
  const at = (name: string | undefined, code: string): Message[] => (name === undefined ? [] : [m(code, { pile: name })])
  return [
    ...at(filling, 'example-load'),
    ...at(feeding, 'example-feed'),
    ...at(feeding, 'example-left'),
    ...at(covered ?? feeding, 'example-damage'),
    ...at(filling, 'example-status'),
    ...at(covered, 'example-check'),
    ...at(pile && !filling && !feeding ? pile : undefined, 'example-load'),
    m('example-pile'),
  ]
}
