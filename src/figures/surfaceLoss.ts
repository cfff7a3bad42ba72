import type { Ft, Ft2, Ft3, Lb, LbFt3, Pct, Share } from '../units/measure.ts'
import { bounds, type Range } from './result.ts'

/** `two sheets` is a film under a sheet that is not itself a barrier. */
export type CoverKind = 'none' | 'plastic' | 'two sheets' | 'barrier film'

export interface Top {
  surfaceFt2?: Ft2
  volumeFt3?: Ft3
}

/** Middling pile, 40 by 100 ft and 10 ft high: outer surface over volume, per ft. */
const USUAL_RATIO = 0.23
/** The layer that the loss below is of, 10 to 60 cm under the sheet, ft. */
const LAYER_FT: Ft = 0.5 / 0.3048
/**
 * Dry matter lost in that layer, share: Wilkinson & Fenlon (2014) Grass Forage Sci., 41 pairs. Two sheets lie between them, no
 * source.
 */
export const LAYER_LOSS: Record<Exclude<CoverKind, 'none'>, Share> = { plastic: 0.195, 'two sheets': 0.155, 'barrier film': 0.114 }
/** The top is looser than the pile: 13.7 lb/ft3 (film maker's note, 2017) against about 15 in the whole. */
const TOP_DENSITY: Share = 0.9
/** Never covered: 75 % of the dry matter in the top 10 in and 25 % of that in the next 10 in (U. Kentucky). */
export const OPEN_LOSS: readonly { depthFt: Ft; share: Share }[] = [
  { depthFt: 10 / 12, share: 0.75 },
  { depthFt: 10 / 12, share: 0.25 },
]
/** Dry matter gone from an open top foot in two weeks, share; alfalfa (Kansas State, Progress Report 623, 1991). */
const TWO_WEEKS: Share = 1 - 0.856
/** Depth clock of an open top: the second foot goes after week 4, the third after week 7 (same). Not of a single hole. */
export const OPEN_FOOT_WEEKS = [2, 4, 7] as const

/**
 * Feet of feed, as if it were lost whole, from a top open for so many days: a straight line through the two-week figure up to the
 * never-covered one.
 */
export const openDepthFt = (days: number): Ft => {
  const most = OPEN_LOSS.reduce((s, l) => s + l.depthFt * l.share, 0)
  return Math.min(most, (TWO_WEEKS * Math.max(0, Number.isFinite(days) ? days : 0)) / 14)
}

/** Pounds lost from an uncovered top, at density `lbFt3` on either basis: Σ area x depth x share x density. */
export const uncoveredLossLb = (areaFt2: Ft2, lbFt3: LbFt3): Lb => OPEN_LOSS.reduce((s, l) => s + areaFt2 * l.depthFt * l.share * lbFt3, 0)

/**
 * Dry matter lost from the top of a pile, percent of the whole: surface x layer x (loss of the layer less `bodyPct`, what any of
 * the pile loses by filling and fermentation) / volume, and what the days before covering took. Range: two thirds to 1.6 times, our
 * own, no source. Valid for surface / volume of 0.08 to 0.6 per ft.
 */
export const topLoss = (
  top: Top,
  cover: CoverKind,
  daysUncovered: number,
  bodyPct: Pct,
  days?: number,
): { range: Range; outside?: string[] } => {
  const b = bounds()
  const known = top.surfaceFt2 !== undefined && top.volumeFt3 !== undefined && top.volumeFt3 > 0
  const ratio = b.hold('surface', known ? top.surfaceFt2! / top.volumeFt3! : USUAL_RATIO, [0.08, 0.6], [0.02, 1])
  b.flag('days-uncovered', !(daysUncovered >= 0 && daysUncovered <= 365))
  const open = cover === 'none' ? openDepthFt(days ?? Number.MAX_SAFE_INTEGER) : openDepthFt(daysUncovered)
  const under = cover === 'none' ? 0 : LAYER_FT * Math.max(0, LAYER_LOSS[cover] - bodyPct / 100)
  const mid = Math.min(60, 100 * ratio * TOP_DENSITY * (open + under))
  return { range: { low: mid / 1.5, mid, high: Math.min(80, mid * 1.6) }, ...b.rest() }
}

export interface Saved {
  /** Dry pounds that the better cover keeps. */
  lbDry: Lb
  /** Of the layer, share. */
  share: Share
}

/**
 * What a better cover keeps: surface x layer x density x difference of the layer's losses. A plain sheet and one with barrier film
 * differ by 41.5 % of the loss.
 */
export const savedByCover = (
  surfaceFt2: Ft2,
  dryLbFt3: LbFt3,
  now: Exclude<CoverKind, 'none'>,
  then: Exclude<CoverKind, 'none'>,
): Saved => {
  const share = LAYER_LOSS[now] - LAYER_LOSS[then]
  return { lbDry: Math.max(0, surfaceFt2) * LAYER_FT * Math.max(0, dryLbFt3) * TOP_DENSITY * share, share }
}

/**
 * Organic matter gone from the top by its ash, share: 1 - [r/(1-r)]/[t/(1-t)], r ash of good silage from below, t ash of the top,
 * shares of dry matter. Assumes no ash lost and no soil added. Mass balance; used in Kansas State's survey of 127 silos. Valid 0 <
 * r <= t < 1.
 */
export const lossByAsh = (reference: Share, top: Share): { value: Share; outside?: string[] } => {
  const b = bounds()
  const r = b.hold('ash', reference, [0.01, 0.3], [1e-3, 0.9])
  const t = b.hold('ash', top, [0.01, 0.5], [1e-3, 0.95])
  b.flag('ash-below-reference', t < r)
  return b.figure(Math.max(0, 1 - r / (1 - r) / (t / (1 - t))))
}

/**
 * Points of organic matter that sealing saved in the top 18 in and the second 18 in, each of four years: Kansas State, 127 silos
 * 1990 to 1993.
 */
export const SEALING_SAVED = { top: [16, 37, 19, 36], second: [4, 13, 3, 7] } as const

/** Mean of the years, points. */
export const sealingSaves = (layer: keyof typeof SEALING_SAVED): Pct =>
  SEALING_SAVED[layer].reduce((s, x) => s + x, 0) / SEALING_SAVED[layer].length

/**
 * Dry matter lost in all by what lay over it, percent; bunkers of 25 tons: "The efficiency of six methods of covering silage",
 * abstract.
 */
export const COVER_TRIAL = { none: 34.2, roof: 32.6, sawdust: 30, soil: 25, limestone: 23.6, plastic: 12 } as const
