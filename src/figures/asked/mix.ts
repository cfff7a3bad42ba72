import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import { estimate } from '../farm/estimate.ts'
import { formOf } from '../farm/form.ts'
import { byCrop, fillingOf } from '../farm/layers.ts'
import { mixAlong } from '../farm/mix.ts'
import type { Now } from '../farm/now.ts'
import { lengthKnown } from '../farm/position.ts'
import { faceToday, rateOf, reachesOn } from '../farm/rate.ts'
import { by } from './by.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

/** A turn of the mix this near is told before it comes, ft and points of share. Common practice, no source. */
const AHEAD_FT = 10
const USUAL_RAMP_FT = 24
const TURN = 0.1

interface Part {
  crop: string
  share: number
}
const byName = (parts: readonly Part[]): Map<string, number> => {
  const of = new Map<string, number>()
  for (const { crop, share } of parts) of.set(crop, (of.get(crop) ?? 0) + share)
  return of
}

/** "Two to one": how much of the one feed there is for one of the other, by weight as fed; where there are two, and neither is a trace. */
const ratioOf = (parts: readonly Part[]): { more: string; less: string; to: number } | undefined => {
  const [more, less, third] = [...byName(parts)].sort((a, b) => b[1] - a[1])
  return more && less && !third && less[1] >= TRACE ? { more: more[0], less: less[0], to: more[1] / less[1] } : undefined
}
const TRACE = 0.05

/** The feed that there is more of then. */
const rising = (now: readonly Part[], then: readonly Part[]): string | undefined => {
  const before = byName(now)
  return [...byName(then)].map(([crop, share]) => ({ crop, by: share - (before.get(crop) ?? 0) })).sort((a, b) => b.by - a.by)[0]?.crop
}

/** What lies in a pile by crop: of the whole, and where the face stands, with a word before it changes. */
export const mix = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  const filling = fillingOf(book, p)
  if (!hasFeed(p) || filling.lb <= 0) return refuse('nothing-in-pile', { pile: p.name, stage: p.stage })
  const length = lengthKnown(p)
  // Without a width the ends are as steep as those of a pile of usual height.
  const ramp = Math.min(0.5, (formOf(p, length)?.shape.rampStartFt ?? USUAL_RAMP_FT) / (length?.ft ?? 1))
  const along = length ? mixAlong(filling.layers, length.ft, ramp, ramp) : undefined
  const shares = byCrop(filling.layers).map(({ crop, cut, share }) => slots({ crop, cut, share, atFt: along?.startsFt(crop, cut) }))
  const how = [told('how-mix', { lb: filling.lb, layers: filling.layers.length }), by('formula-layers')]
  const base = { about: 'mix' as const, pile: p.name, shares, dmPct: filling.dmPct, ...(ratioOf(shares) && { ratio: ratioOf(shares) }) }
  if (!along || !length || p.stage !== 'feeding')
    return slots({ ...base, how, notes: shares.length > 1 ? [told('note-level-layers')] : [] })
  const rate = rateOf(p, now.day, estimate(book, p, now))
  const at = faceToday(p, now.day, rate)
  if (at === undefined) return slots({ ...base, how, notes: [told('note-no-face', { pile: p.name })] })
  const here = along.at(at)
  const lead = here.shares[0]
  const turnsAt =
    lead &&
    Array.from({ length: AHEAD_FT }, (_, i) => at + i + 1).find(
      ft =>
        ft < length.ft &&
        along
          .at(ft)
          .shares.some(s => Math.abs(s.share - (here.shares.find(h => h.crop === s.crop && h.cut === s.cut)?.share ?? 0)) >= TURN),
    )
  const turn =
    turnsAt === undefined
      ? undefined
      : {
          atFt: turnsAt,
          on: rate && rate.inPerDay > 0 ? reachesOn(now.day, at, turnsAt, rate.inPerDay) : undefined,
          shares: along.at(turnsAt).shares,
          crop: rising(here.shares, along.at(turnsAt).shares),
        }
  return slots({
    ...base,
    faceFt: at,
    face: here.shares,
    faceRatio: ratioOf(here.shares),
    faceDmPct: here.dmPct,
    turn: turn && slots(turn),
    how,
    notes: [
      ...(turn ? [told('note-mix-turns', { atFt: turn.atFt, on: turn.on, crop: turn.crop })] : []),
      ...(shares.length > 1 ? [told('note-level-layers')] : []),
    ],
  })
}
