import { pileNames } from '../book/book.ts'
import type { Event } from '../book/events.ts'
import type { Alias } from '../reading/alias.ts'
import type { Context } from './context.ts'
import { m, nothing, record, type Settled } from './settled.ts'

/** A second name for a pile: it belongs to the farm, so nobody else's pile or word may have it. */
export const renamed = ({ pile, alias, tradeWord }: Alias, c: Context): Settled => {
  if (tradeWord) return nothing('refused', m('name-trade-word', { name: alias }))
  const other = pileNames(c.book).get(alias)
  if (other !== undefined) return nothing('refused', m('name-taken', { name: alias, pile: other }))
  const event: Event = { type: 'pile', name: pile, alsoCalled: [alias], on: c.day, by: c.name, said: c.message.text.slice(0, 4096) }
  const out = nothing('recorded')
  record(out, event, { type: 'pile', slots: {}, sure: [], replaces: [] }, c)
  return out
}
