import { type Book, boxes, eventsOf, pileNames } from '../book/book.ts'
import { LISTED_CROPS } from '../book/events.ts'
import type { Core } from '../pipeline.ts'
import type { Incoming, Lang, Result } from '../ports.ts'
import { type Day, localDay } from '../units/calendar.ts'

type Act = Parameters<Core['offer']>[1][number]

/** Somebody who guesses at what the rules could not read. */
export interface Guesser {
  guess(
    text: string,
    farm: { piles: string[]; boxes: string[]; crops: string[]; today: Day; lang: Lang },
    signal?: AbortSignal,
  ): Promise<{ acts: Act[] } | undefined>
}

/**
 * Called after `core.handle` with its message and result: where the message was not understood, the guess that is now
 * asked about ("did you mean …?"). Undefined where there is none, and the result stands.
 *
 * Rejects only with what `core.offer` throws: the store's fault.
 */
export type Second = (message: Incoming, result: Result, signal?: AbortSignal) => Promise<Result | undefined>

/** Names and aliases, to the pile's own name. */
const ownNames = (acts: Act[], names: Map<string, string>): Act[] =>
  acts.map(a => {
    const slots = { ...a.slots }
    for (const k of ['pile', 'toPile']) if (typeof slots[k] === 'string') slots[k] = names.get(slots[k]) ?? slots[k]
    return { ...a, slots }
  })

const cropsOf = (book: Book): string[] => [...new Set<string>([...LISTED_CROPS, ...eventsOf(book, 'load').map(l => l.event.crop)])]

/** Only what somebody of the farm said to the assistant is offered: nothing overheard in a group, nothing of strangers. */
export const withSecond =
  (core: Pick<Core, 'book' | 'offer'>, reader: Guesser, zone: string): Second =>
  async (message, result, signal) => {
    if (result.outcome !== 'puzzled' || message.pick || !/\p{L}/u.test(message.text)) return undefined
    const book = core.book(message.farm)
    const member = book.members.get(message.from)
    const role = message.role ?? member?.role
    if (role !== 'owner' && role !== 'crew') return undefined
    const lang = member?.lang ?? 'en'
    const farm = {
      piles: [...pileNames(book).keys()],
      boxes: [...boxes(book).keys()],
      crops: cropsOf(book),
      today: localDay(message.at, zone),
      lang,
    }
    const got = await reader.guess(message.text, farm, signal)
    // the book may be closed by now
    if (!got || signal?.aborted) return undefined
    const offered = core.offer(message, ownNames(got.acts, pileNames(core.book(message.farm))), lang)
    return offered?.outcome === 'asked' ? offered : undefined
  }
