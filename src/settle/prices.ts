import type { Body } from '../book/entries.ts'
import type { Price } from '../reading/price.ts'
import type { Context } from './context.ts'
import { m, nothing, type Settled } from './settled.ts'

/** No feed and no sheet costs more; above it a digit slipped. */
const MOST = 20_000

/** A price told by the owner: from then on values and costs are worked out with it, and never without one. */
export const pricedAt = ({ of, amount }: Price, c: Context): Settled => {
  if (c.role !== 'owner') return nothing('refused', m('price-owner-only'))
  if (amount !== undefined && !(amount > 0 && amount <= MOST)) return nothing('refused', m('price-outside', { said: amount }))
  const entry: Body = { kind: 'setting', name: `price:${of}`, value: amount ?? 0 }
  const word =
    amount === undefined ? m('price-forgotten', { of }) : m(of === 'plastic' ? 'price-sheet' : 'price-feed', { of, price: amount })
  return { ...nothing('answered', word), entries: [entry] }
}
