import { type Book, pileState } from '../../book/book.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import type { Message } from '../../book/questions.ts'
import type { Day } from '../../units/calendar.ts'
import type { Lb } from '../../units/measure.ts'
import { type Estimate, estimate } from '../farm/estimate.ts'
import { toldMore } from '../farm/fuse.ts'
import { overall } from '../farm/horizon.ts'
import { best, type Narrowing, triesOf } from '../farm/narrowing.ts'
import type { Now } from '../farm/now.ts'
import type { Reach } from '../farm/reach.ts'
import { by } from './by.ts'
import { told } from './refusal.ts'
import { Z80 } from './z80.ts'

/** The days to go, and the standard error of what is over at their end, lb dry. */
interface Way {
  until: Day
  ahead: number
  sd: Lb
}

/** Of all that could be told of any pile, what makes the farm's range narrowest: its error with that pile's new one in the old one's place. */
const improved = (held: { p: PileState; e: Estimate }[], r: Reach, { ahead, sd }: Way): (Narrowing & { pile: string }) | undefined => {
  const half = (Z80 * sd) / r.dayDry
  if (!(half >= 1)) return undefined
  return best(
    held.flatMap(({ p, e }) =>
      triesOf(e).map(t => {
        const parts = toldMore(e.evidence.input, e.parts, t)
        const dry = e.evidence.dmPct / 100
        const less = (e.left.sd * dry) ** 2 - (overall(parts, 'left', 'leftVar').sd * dry) ** 2
        // The use of all open piles, of which this one's error is a part.
        const used = e.use ? (e.use.sd ** 2 - overall(parts, 'use', 'useVar').sd ** 2) / r.dayAsFed ** 2 : 0
        const variance = r.haveSd ** 2 - less + (r.dayDry * ahead) ** 2 * Math.max(0, r.daySd ** 2 - used)
        return { what: t.what, pile: p.name, half, after: (Z80 * Math.sqrt(Math.max(0, variance))) / r.dayDry }
      }),
    ),
  )
}

/** How far the feed goes: what there is of it, what a day takes, the way to go, and what would narrow the answer. */
export const howReach = (book: Book, now: Now, r: Reach, way?: Way): Message[] => {
  const held = r.legs.flatMap(l => {
    const p = pileState(book, l.pile)
    return p && hasFeed(p) ? [{ p, e: estimate(book, p, now) }] : []
  })
  const better = way && r.dayDry > 0 ? improved(held, r, way) : undefined
  return [
    told('how-have', { lbDry: r.haveDry, piles: r.legs.map(l => l.pile) }),
    told('how-day', { lb: r.dayAsFed, lbDry: r.dayDry }),
    ...(way ? [told('how-until', { until: way.until, days: way.ahead })] : []),
    by('formula-balance', 'formula-fused', 'formula-chained'),
    ...(better
      ? [told('how-narrow', { what: better.what, half: better.half, after: better.after, pile: better.pile })]
      : way && (Z80 * way.sd) / r.dayDry >= 1
        ? [told('how-narrow-none', { half: (Z80 * way.sd) / r.dayDry })]
        : []),
  ]
}
