import type { EventType } from '../book/events.ts'
import type { Datum, Message } from '../book/questions.ts'
import { m, phrase } from './phrases.ts'

type Draft = { type: EventType } & Record<string, unknown>

/** Names or sentences side by side: "north or hill". */
export const either = (list: Datum[]): Message => m('join', { list, by: 'or' })

/** Questions. Each is one sentence or two; the choices stand on the buttons. */
export const askPile = (draft: Draft): Message =>
  draft.type === 'shift' && draft.pile !== undefined && draft.toPile === undefined
    ? m('ask-onto', { what: phrase(draft) })
    : m('ask-pile', { what: phrase({ ...draft, pile: undefined }) })
export const askCrop = (pile?: string): Message => m('ask-crop', { pile })
export const askCount = (crop?: string, pile?: string): Message => m('ask-count', { crop, pile })
export const askAmount = (type: EventType, pile?: string): Message => m('ask-amount', { type, pile })
/** `near`: known names that are close to what was said. */
export const askUnknownPile = (name: string, near: string[] = []): Message =>
  m('ask-unknown-pile', { name, near: near.length ? either(near) : undefined })
/** `pile` and `most` (its length, ft) where that is what the value does not fit. */
export const askImplausible = (
  slot: string,
  value: Datum,
  { unit, pile, most }: { unit?: string; pile?: string; most?: number } = {},
): Message => m('ask-implausible', { slot, value, unit: unit ?? (slot === 'count' ? 'load' : ''), pile: pile ?? '', most })
export const askSame = (who: string, draft: Draft): Message => m('ask-same', { who, what: phrase(draft) })
/** Positions of the face, ft from the end first opened. */
export const askFaceBack = (was: number, now: number): Message => m('ask-face-back', { was, now })
export const askOthers = (who: string, drafts: Draft[]): Message => m('ask-others', { who, what: drafts.map(phrase) })
/** `said` in all, where `logged` are in the book. */
export const askInAll = (logged: number, said: number): Message => m('ask-in-all', { logged, said })
/** All that is told of a pile or a box, before it is taken out of the book. */
export const askRemove = (name: string, entries: number): Message => m('ask-remove', { name, entries })
export const askMeant = (what: Datum): Message => m('ask-meant', { what })
export const askSlot = (slot: string): Message => m('ask-slot-generic', { slot })

/** Words on the buttons. */
export const choice = {
  yes: m('choice-yes'),
  no: m('choice-no'),
  same: m('choice-same'),
  more: m('choice-more'),
  neverMind: m('choice-never-mind'),
  newPile: (name: string): Message => m('choice-new-pile', { name }),
  asSaid: (value: Datum): Message => m('choice-as-said', { value }),
  moreOf: (n: number): Message => m('choice-more-of', { n }),
  inAll: (n: number): Message => m('choice-in-all', { n }),
}

/** Statements. */
export const undone = (events: Draft[]): Message => m('undone', { what: events.map(phrase) })
/** `examples`: two sentences that would work now, as messages or as said. */
export const puzzled = (examples: Datum[]): Message => m('puzzled', { examples: either(examples.map(text => m('quoted', { text }))) })
/** The first words to a newcomer, with three things to type. */
export const hello = (): Message => m('hello', { one: m('hello-one'), two: m('hello-two'), three: m('hello-three') })
export const notYours = (who?: string): Message => m('not-yours', { who })
