import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, eventsOf, pileState } from '../../book/book.ts'
import type { Now } from '../farm/now.ts'
import { weigher } from '../farm/weights.ts'
import { slots, told } from './refusal.ts'

/**
 * How many loads went where, and their weight as fed. With a pile and no days: what went in since it was last empty. With
 * neither pile nor days: everything since the first load of the running year's filling is too much, so today's.
 */
export const loads = (book: Book, ask: Ask, now: Now): Answer => {
  const dated = ask.from !== undefined || ask.to !== undefined
  const from = ask.from ?? (ask.pile || ask.crop || ask.to ? undefined : now.day)
  const to = ask.to ?? (dated || from ? now.day : undefined)
  const whole = ask.pile && !dated ? pileState(book, ask.pile)?.loads : undefined
  const list = (whole ?? eventsOf(book, 'load')).filter(
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
  const kinds = new Map<string, { lb: number; from: string }>()
  for (const w of weights) {
    const key = `${w.from} ${w.box ?? ''}`.trim()
    kinds.set(key, { lb: (kinds.get(key)?.lb ?? 0) + w.lb, from: w.from })
  }
  return slots({
    about: 'loads' as const,
    pile: ask.pile,
    crop: ask.crop,
    from,
    to,
    count: sum('load'),
    lbAsFed,
    buckets: sum('bucket') || undefined,
    how: [...kinds].map(([key, k]) => told('how-weighed', { lb: k.lb, from: k.from, box: key.slice(k.from.length + 1) || undefined })),
    notes: weights.some(w => w.from === 'usual') ? [told('note-usual-box')] : [],
  })
}
