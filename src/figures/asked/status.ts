import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { estimate } from '../farm/estimate.ts'
import { byCrop, fillingOf } from '../farm/layers.ts'
import type { Now } from '../farm/now.ts'
import { faceTold } from '../farm/position.ts'
import { faceToday, rateOf } from '../farm/rate.ts'
import { slots } from './refusal.ts'

/** How a pile stands: its stage, what went in, what is open on its cover, where the face was told last. */
export const status = (book: Book, p: PileState, now: Now): Answer => {
  const crops = byCrop(p.stage === 'empty' ? [] : fillingOf(book, p).layers).map(({ crop, cut, count, lb, lbDry }) =>
    slots({ crop, cut, count, lbAsFed: lb, lbDry }),
  )
  const e = p.stage === 'feeding' ? estimate(book, p, now) : undefined
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
  })
}
