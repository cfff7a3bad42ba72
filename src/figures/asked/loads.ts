import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, eventsOf, pileState, piles } from '../../book/book.ts'
import type { Told } from '../../book/pile.ts'
import type { Now } from '../farm/now.ts'
import { weigher } from '../farm/weights.ts'
import { howWeighed } from './howWeighed.ts'
import { slots, told } from './refusal.ts'

/**
 * How many loads went where, and their weight as fed. Of a pile or a crop without days: what went in since each pile was last
 * empty. With neither pile, crop nor days: today's.
 */
export const loads = (book: Book, ask: Ask, now: Now): Answer => {
  const dated = ask.from !== undefined || ask.to !== undefined
  const today = !dated && !ask.pile && !ask.crop
  const from = ask.from ?? (today ? now.day : undefined)
  const to = ask.to ?? (dated || today ? now.day : undefined)
  const standing = (): Told<'load'>[] =>
    ask.pile ? (pileState(book, ask.pile)?.loads ?? []) : piles(book).flatMap(p => (p.stage === 'empty' ? [] : p.loads))
  const list = (dated || today ? eventsOf(book, 'load') : standing()).filter(
    ({ event: e, by }) =>
      (!ask.pile || e.pile === ask.pile) &&
      (!ask.crop || e.crop === ask.crop) &&
      (!from || e.on >= from) &&
      (!to || e.on <= to) &&
      (!ask.by || by === ask.by || e.by === ask.by),
  )
  const weigh = weigher(book)
  const weights = list.map(t => weigh(t.event))
  const sum = (unit: 'load' | 'bucket'): number =>
    list.reduce((s, t) => s + ((t.event.unit ?? 'load') === unit ? (t.event.count ?? 0) : 0), 0)
  const lbAsFed = weights.reduce((s, w) => s + w.lb, 0)
  return slots({
    about: 'loads' as const,
    pile: ask.pile,
    crop: ask.crop,
    from,
    to,
    count: sum('load'),
    lbAsFed,
    buckets: sum('bucket') || undefined,
    how: howWeighed(book, list),
    notes: weights.some(w => w.from === 'usual') ? [told('note-usual-box')] : [],
  })
}
