import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import { estimate } from '../farm/estimate.ts'
import { byCrop, fillingOf } from '../farm/layers.ts'
import type { Now } from '../farm/now.ts'
import { faceTold } from '../farm/position.ts'
import { mixPrice } from '../farm/prices.ts'
import { faceToday, rateOf } from '../farm/rate.ts'
import { feedValue } from '../money.ts'
import { howLeft } from './howLeft.ts'
import { howWeighed } from './howWeighed.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

/** How a pile stands: its stage, what went in, what is open on its cover, where the face was told last. */
export const status = (book: Book, p: PileState, now: Now, worth = false): Answer | Refusal => {
  if (worth && !hasFeed(p)) return refuse('nothing-in-pile', { pile: p.name, stage: p.stage, on: p.emptyOn })
  const filling = fillingOf(book, p)
  const crops = byCrop(p.stage === 'empty' ? [] : filling.layers).map(({ crop, cut, count, lb, lbDry }) =>
    slots({ crop, cut, count, lbAsFed: lb, lbDry }),
  )
  const price = p.stage === 'empty' ? undefined : mixPrice(book, filling.layers)
  const e = p.stage === 'feeding' ? estimate(book, p, now) : undefined
  const there = e ?? (price === undefined ? undefined : estimate(book, p, now))
  const face = p.stage === 'feeding' ? faceTold(p, now.day) : undefined
  const nowFt = e && faceToday(p, now.day, rateOf(p, now.day, e))
  return slots({
    about: 'status' as const,
    pile: p.name,
    stage: p.stage,
    crops,
    openDamage: p.open.reduce((n, o) => n + o.left, 0),
    sealedOn: p.sealedOn,
    faceFt: face?.atFt,
    faceOn: face?.on,
    faceTodayFt: nowFt,
    days: e?.days?.mid,
    daysLow: e?.days?.low,
    daysHigh: e?.days?.high,
    lbAsFed: e?.whole.lb ? e.left.lb : undefined,
    worthLb: worth && there ? there.left.lb : undefined,
    value: there && feedValue(there.left.lb, price),
    worth: worth || undefined,
    how: e ? howLeft(e) : filling.lb > 0 ? howWeighed(book, p.loads) : [],
    notes: worth && price === undefined ? [told('note-no-price')] : [],
  })
}
