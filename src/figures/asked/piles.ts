import type { About, Ask } from '../../book/asks.ts'
import { type Book, pileNames, pileState, piles } from '../../book/book.ts'
import { hasFeed, isCovered, type PileState } from '../../book/pile.ts'
import { type Refusal, refuse } from './refusal.ts'

const feeding = (p: PileState): boolean => p.stage === 'feeding'
const filled = (p: PileState): boolean => hasFeed(p)

/** Piles that a question without a pile's name is about, by kind of question: the first rule that finds any. */
const MEANT: Partial<Record<About, ((p: PileState) => boolean)[]>> = {
  left: [feeding, filled],
  face: [feeding],
  mix: [feeding, filled],
  loss: [feeding, filled],
  status: [filled, () => true],
  density: [p => p.stage === 'filling', p => p.stage === 'sealed', filled],
  cover: [p => p.stage === 'filling', p => p.stage === 'planned', p => filled(p) && !isCovered(p), filled],
  ready: [p => p.stage === 'sealed', p => p.stage === 'filling', filled],
  checks: [p => isCovered(p) && filled(p), filled],
}

/** The piles a question is about, by name: the one it names, else those that fit its kind. Empty where it is about no pile or none fits. */
export const pilesFor = (book: Book, ask: Ask): string[] => {
  if (ask.pile) return [ask.pile]
  const all = piles(book)
  for (const fits of MEANT[ask.about] ?? []) {
    const found = all.filter(fits)
    if (found.length) return found.map(p => p.name)
  }
  return []
}

/** The one pile of a question, or why there is not one. */
export const onePile = (book: Book, ask: Ask): PileState | Refusal => {
  if (ask.pile) {
    const p = pileState(book, ask.pile) ?? pileState(book, pileNames(book).get(ask.pile.toLowerCase()) ?? '')
    return p ?? refuse('no-such-pile', { pile: ask.pile })
  }
  const names = pilesFor(book, ask)
  if (names.length > 1) return refuse('which-pile', { piles: names })
  const p = names[0] === undefined ? undefined : pileState(book, names[0])
  return p ?? refuse('no-pile-fits', { about: ask.about })
}

export const isPile = (x: PileState | Refusal): x is PileState => 'stage' in x
