import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import type { Message } from '../../book/questions.ts'
import { daysBetween } from '../../units/calendar.ts'
import { IN_PER_FT } from '../../units/measure.ts'
import { seasonRate } from '../faceRate.ts'
import { estimate } from '../farm/estimate.ts'
import type { Now } from '../farm/now.ts'
import { lengthKnown, readingsOf } from '../farm/position.ts'
import { faceToday, type Rate, rateOf } from '../farm/rate.ts'
import { by } from './by.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'
import { Z80 } from './z80.ts'

/** No farm takes more off a face, in/day. Common practice, no source. */
const FASTEST = 96

/**
 * What one more reading today would do: the rate is the way between two readings over the days between, so its error is that of two
 * readings over those days.
 */
const surer = (p: PileState, now: Now, rate: Rate): Message[] => {
  const readings = readingsOf(p, lengthKnown(p)).filter(r => r.on <= now.day)
  const last = readings.at(-1)
  if (rate.from === 'use' || !last) return [told('how-narrow-face', { half: 0, after: 0 })]
  const half = (days: number): number => (Z80 * Math.SQRT2 * last.sdFt * IN_PER_FT) / days
  const more = daysBetween(last.on, now.day)
  if (rate.from !== 'readings' || more < 1) return []
  return [told('how-narrow-face', { half: half(rate.days), after: half(rate.days + more) })]
}

/** How fast the face moves against the season's least, and what would mend it. */
export const face = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  if (p.stage === 'empty') return refuse('nothing-in-pile', { pile: p.name, stage: p.stage })
  if (!p.openedOn) return refuse('not-open', { pile: p.name })
  const e = estimate(book, p, now)
  const rate = rateOf(p, now.day, e)
  // Reckoned from the use where the record holds less than was fed: no face moves like that.
  if (!rate || rate.inPerDay > FASTEST) return refuse('no-face-known', { pile: p.name })
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
      by('formula-face-rate', 'formula-face-least'),
      ...surer(p, now, rate),
    ],
    notes: rate.from === 'use' ? [told('note-face-not-read')] : [],
  })
}
