import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import type { Message } from '../../book/questions.ts'
import { estimate } from '../farm/estimate.ts'
import type { Now } from '../farm/now.ts'
import { mixPrice } from '../farm/prices.ts'
import type { Cause } from '../losses.ts'
import { lossCost } from '../money.ts'
import type { Range } from '../result.ts'
import { by } from './by.ts'
import { nothingIn } from './left.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'
import { Z80 } from './z80.ts'

/** Less of the pile than this gone, and its record says little of the loss yet. */
const TELLING = 0.35

/** What would narrow the loss most: the cause that most of its range comes from. Ranges add up as errors do, by their squares. */
const widest = (causes: Record<Cause, Range>): Message => {
  const parts = Object.entries(causes).map(([cause, r]) => ({ cause, square: (r.high - r.low) ** 2 }))
  const all = parts.reduce((t, p) => t + p.square, 0)
  const most = parts.reduce((a, b) => (b.square > a.square ? b : a))
  return told('how-loss-widest', { cause: most.cause, share: all > 0 ? most.square / all : 0 })
}

/** What is lost of what went in: expected by its causes, with its range, and what the pile's own record shows so far. */
export const loss = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  const nothing = nothingIn(p)
  if (nothing) return nothing
  const e = estimate(book, p, now)
  const v = e.evidence
  if (v.whole.inLb <= 0) return refuse('nothing-in-pile', { pile: p.name, stage: p.stage })
  const { mean, sd, byCause } = v.loss
  const lbDry = (v.whole.inLb * v.dmPct * mean) / 100
  const gone = 1 - e.left.lb / Math.max(1, e.whole.lb)
  // What went in and will come out by the record: boxes that ran light look the same as feed that was lost.
  const record =
    gone >= TELLING
      ? { inLb: v.whole.inLb, outLb: e.whole.lb, pct: 100 * (1 - e.whole.lb / v.whole.inLb), sd: (100 * e.whole.sd) / v.whole.inLb }
      : undefined
  return slots({
    about: 'loss' as const,
    pile: p.name,
    pct: 100 * mean,
    lbDry,
    pctLow: Math.max(0, 100 * (mean - Z80 * sd)),
    pctHigh: 100 * (mean + Z80 * sd),
    causes: Object.entries(byCause.causes).map(([cause, r]) => ({ cause, ...r })),
    thrownLb: v.lostLb || undefined,
    record,
    cost: lossCost(v.whole.inLb, 100 * mean, mixPrice(book, v.filling.layers)),
    how: [
      ...Object.entries(byCause.causes).map(([cause, r]) => told('how-loss-cause', { cause, pct: r.mid, low: r.low, high: r.high })),
      told('how-loss-total', { pct: byCause.total.mid, low: byCause.total.low, high: byCause.total.high }),
      ...(record ? [told('how-loss-record', { pct: record.pct })] : []),
      by('formula-chained', 'formula-top', 'formula-bastiman', 'formula-ruppel'),
      widest(byCause.causes),
    ],
    notes: byCause.outside ? [told('note-outside', { what: byCause.outside })] : [],
  })
}
