import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { type Estimate, estimate } from '../farm/estimate.ts'
import { dayIn } from '../farm/horizon.ts'
import type { Now } from '../farm/now.ts'
import { howLeft, notesLeft } from './howLeft.ts'
import { type Refusal, refuse, slots } from './refusal.ts'
import { Z80 } from './z80.ts'

/** Why nothing can be said of what is in a pile; undefined where something can. */
export const nothingIn = (p: PileState): Refusal | undefined =>
  // A sheet on a pile without a load in the book: it was there before the book was begun.
  p.stage === 'empty' || p.stage === 'planned' ? refuse('nothing-in-pile', { pile: p.name, stage: p.stage, on: p.emptyOn }) : undefined

/** How many days a pile lasts, with the 80 % interval. Needs feed in it, and something that tells what is used a day. */
export const left = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  const nothing = nothingIn(p)
  if (nothing) return nothing
  const e = estimate(book, p, now)
  if (e.whole.lb <= 0) return refuse('no-size-known', { pile: p.name })
  const lbAsFed = e.left.lb
  const lbDry = (lbAsFed * e.evidence.dmPct) / 100
  if (!e.days || !e.use)
    return refuse('no-ration-known', {
      pile: p.name,
      lbAsFed,
      lbDry,
      lbLow: Math.max(0, lbAsFed - Z80 * e.left.sd),
      lbHigh: lbAsFed + Z80 * e.left.sd,
    })
  return slots({
    about: 'left' as const,
    pile: p.name,
    days: e.days.mid,
    daysLow: e.days.low,
    daysHigh: e.days.high,
    runsOut: runsOut(e, now),
    lbDry,
    lbAsFed,
    lbDayAsFed: e.use.lb,
    lbLow: Math.max(0, lbAsFed - Z80 * e.left.sd),
    lbHigh: lbAsFed + Z80 * e.left.sd,
    how: howLeft(e),
    notes: notesLeft(e),
  })
}

const runsOut = (e: Estimate, now: Now): string | undefined => (e.days ? dayIn(now.day, e.days.mid) : undefined)
