import type { PileState } from '../../book/pile.ts'
import { daysBetween } from '../../units/calendar.ts'
import type { Share } from '../../units/measure.ts'
import { seasonOf } from '../faceRate.ts'
import { type Losses, losses } from '../losses.ts'
import { coverArea } from '../shape.ts'
import type { CoverKind } from '../surfaceLoss.ts'
import type { Filling } from './layers.ts'
import type { Now } from './now.ts'
import type { Volume } from './volume.ts'

export interface LossPrior {
  /** Of what went in, a share. */
  mean: Share
  sd: Share
  byCause: Losses
}

/** Piles in all: about 15 % well managed (Hay & Forage Grower 3112), 18 % on average (Muck). */
const PUBLISHED: Share = 0.165
/** Between farms; a good pile 15 to 25 %, an unpacked one over 30 (Roach & Kammel, UW). */
const LEAST_SD: Share = 0.05

/** What covers a pile now, or did until it was opened. */
export const coverKind = (p: PileState): CoverKind => {
  const on = new Set(p.covers.filter(t => t.event.change === 'on').map(t => t.event.material))
  if (on.has('barrier film')) return 'barrier film'
  if (on.has('second plastic')) return 'two sheets'
  return on.has('plastic') || on.has('tarp') || p.sheets.length ? 'plastic' : 'none'
}

/** Days the full top lay open: from the last load to the sheet, or to today. */
export const daysOpen = (p: PileState, now: Now): number => {
  const last = p.loads.at(-1)?.event.on
  if (!last) return 0
  const sheet = p.covers.find(t => t.event.change === 'on' && t.event.on >= last)?.event.on
  return Math.max(0, daysBetween(last, sheet ?? (p.sealedOn && p.sealedOn >= last ? p.sealedOn : now.day)) - 1)
}

/**
 * Loss to be expected, before the pile's own record has shown any: half by its causes, half as published for piles in all, because neither
 * knows the other's part. That they count alike is our own, no source.
 */
export const lossPrior = (p: PileState, filling: Filling, volume: Volume | undefined, now: Now): LossPrior => {
  const kind = coverKind(p)
  // Nobody tells of a cover on a pile that was old when the book began, or that is being filled.
  const cover: CoverKind = kind === 'none' && (p.stage !== 'feeding' || !p.loads.length) ? 'plastic' : kind
  const byCause = losses({
    dmPct: filling.dmPct || 35,
    cover,
    daysUncovered: cover === 'none' ? 0 : daysOpen(p, now),
    season: seasonOf(p.openedOn ?? now.day),
    ...(volume && { surfaceFt2: coverArea(volume.form.shape), volumeFt3: volume.ft3 }),
  })
  const { low, mid, high } = byCause.total
  const mean = cover === 'none' ? mid / 100 : (mid / 100 + PUBLISHED) / 2
  return { mean, sd: Math.max(LEAST_SD, (high - low) / 100 / 2.56), byCause }
}
