import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { seasonRate } from '../faceRate.ts'
import { estimate } from '../farm/estimate.ts'
import type { Now } from '../farm/now.ts'
import { faceToday, rateOf } from '../farm/rate.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

/** How fast the face moves against the season's least, and what would mend it. */
export const face = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  if (p.stage === 'empty') return refuse('nothing-in-pile', { pile: p.name, stage: p.stage })
  if (!p.openedOn) return refuse('not-open', { pile: p.name })
  const e = estimate(book, p, now)
  const rate = rateOf(p, now.day, e)
  if (!rate) return refuse('no-face-known', { pile: p.name })
  const { least, goal, season } = seasonRate(now.day)
  const enough = rate.inPerDay >= least
  const width = p.measured?.widthFt ?? p.planned.widthFt
  const share = rate.inPerDay / least
  return slots({
    about: 'face' as const,
    pile: p.name,
    inPerDay: rate.inPerDay,
    minInPerDay: least,
    enough,
    goalInPerDay: goal,
    season,
    from: rate.from,
    days: rate.days || undefined,
    faceFt: faceToday(p, now.day, rate),
    // The rate goes with the feeding, and against the area of the face.
    mend: enough ? undefined : slots({ lbDayAsFed: e.use && e.use.lb / share, widthFt: width && width * share }),
    how: [
      told('how-face-rate', { inPerDay: rate.inPerDay, from: rate.from, days: rate.days || undefined }),
      told('how-face-least', { inPerDay: least, goal, season }),
    ],
    notes: rate.from === 'use' ? [told('note-face-not-read')] : [],
  })
}
