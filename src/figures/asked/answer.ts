import type { Answer, Ask } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { Source } from '../../book/entries.ts'
import type { PileState } from '../../book/pile.ts'
import type { Day } from '../../units/calendar.ts'
import type { Now } from '../farm/now.ts'
import { checks } from './checks.ts'
import { cover } from './cover.ts'
import { density } from './density.ts'
import { face } from './face.ts'
import { history, who } from './history.ts'
import { left } from './left.ts'
import { loads } from './loads.ts'
import { loss } from './loss.ts'
import { mix } from './mix.ts'
import { picture } from './picture.ts'
import { isPile, onePile } from './piles.ts'
import { plan } from './plan.ts'
import { reach } from './reach.ts'
import { ready } from './ready.ts'
import { isRefusal, type Refusal, refuse } from './refusal.ts'
import { status } from './status.ts'
import { supplies } from './supplies.ts'

export { pilesFor } from './piles.ts'
export { isRefusal, type Refusal } from './refusal.ts'

/** What others plan and an answer passes on. */
export interface Given {
  /** The day of the next walk of a pile's cover, as the watch has planned it. */
  nextCheck?: (pile: string) => Day | undefined
  /** Paths of the pictures that came with a message. */
  pictures?: (source: Pick<Source, 'channel' | 'chat' | 'id'>) => string[]
}

const ofPile = (book: Book, ask: Ask, then: (p: PileState) => Answer | Refusal): Answer | Refusal => {
  const p = onePile(book, ask)
  return isPile(p) ? then(p) : p
}

const ofFarm = (book: Book, ask: Ask, then: (p?: PileState) => Answer | Refusal): Answer | Refusal =>
  ask.pile ? ofPile(book, ask, then) : then()

const work = (book: Book, ask: Ask, now: Now, given: Given): Answer | Refusal => {
  switch (ask.about) {
    case 'left':
      return ofPile(book, ask, p => left(book, p, now))
    case 'reach':
      return ofFarm(book, ask, p => reach(book, ask, now, p))
    case 'status':
      return ofPile(book, ask, p => status(book, p, now, ask.worth))
    case 'loads':
      return ofFarm(book, ask, p => loads(book, p ? { ...ask, pile: p.name } : ask, now))
    case 'density':
      return ofPile(book, ask, p => density(book, p))
    case 'face':
      return ofPile(book, ask, p => face(book, p, now))
    case 'cover':
      return ofPile(book, ask, p => cover(book, p, now))
    case 'plan':
      return plan(book, ask, now)
    case 'ready':
      return ofPile(book, ask, p => ready(book, p, now))
    case 'mix':
      return ofPile(book, ask, p => mix(book, p, now))
    case 'checks':
      return ofPile(book, ask, p => checks(book, p, now, given.nextCheck?.(p.name)))
    case 'loss':
      return ofPile(book, ask, p => loss(book, p, now))
    case 'supplies':
      return supplies(book, ask, now)
    case 'who':
      return ofFarm(book, ask, p => who(book, p ? { ...ask, pile: p.name } : ask))
    case 'history':
      return ofFarm(book, ask, p => history(book, p ? { ...ask, pile: p.name } : ask))
    case 'picture':
      return ofFarm(book, ask, p => picture(book, p ? { ...ask, pile: p.name } : ask, given))
    case 'help':
      return { about: 'help' }
    case 'why':
      // How the last answer was worked out is kept by whoever gave it: each answer carries it in `how`.
      return refuse('no-answer-yet')
  }
}

/** True where no slot is a number that is none. */
const sound = (value: unknown): boolean =>
  typeof value === 'number'
    ? Number.isFinite(value)
    : value !== null && typeof value === 'object'
      ? Object.values(value).every(sound)
      : true

/**
 * Answers a question from the book: the figures that its words are made of, in the units of the slots' names, unrounded. `how`
 * lists how they
 * were worked out and `notes` what to beware of, each as a code with data. A refusal says what is missing, with the best figures there are.
 */
export const answer = (book: Book, ask: Ask, now: Now, given: Given = {}): Answer | Refusal => {
  const a = work(book, ask, now, given)
  return isRefusal(a) || sound(a) ? a : refuse('figures-do-not-fit', { about: ask.about, pile: ask.pile })
}
