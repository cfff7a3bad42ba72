import type { Ft2, Ft3, In, LbFt3, Pct } from '../units/measure.ts'
import { densityLoss } from './densityLoss.ts'
import { seepageLoss } from './effluent.ts'
import { faceLoss, type Season } from './faceRate.ts'
import { bounds, outsideOf, type Range } from './result.ts'
import { type CoverKind, type Top, topLoss } from './surfaceLoss.ts'

export type Cause = 'filling' | 'fermentation' | 'seepage' | 'top' | 'face'

export interface LossInputs {
  dmPct: Pct
  cover: CoverKind
  /** Days the filled top lay open before it was covered. */
  daysUncovered?: number
  /** Days since filling, for a top that was never covered. */
  days?: number
  /** Outer surface and volume of the pile; a middling pile where not known. */
  surfaceFt2?: Ft2
  volumeFt3?: Ft3
  dryLbFt3?: LbFt3
  /** How fast the face moves; what most experts ask for (6) where it is not open. */
  inPerDay?: In
  season?: Season
}

export interface Losses {
  /** Percent of what is left before each cause. */
  causes: Record<Cause, Range>
  /** Percent of the dry matter put in. */
  total: Range
  outside?: string[]
}

/** While the crop wilts, is hauled and packed it breathes: 1 to 3 %, from memory. */
export const FILLING: Range = { low: 1, mid: 2, high: 3 }
/** 1.5 to 6 % (Hay & Forage Grower 3112). */
export const FERMENTATION: Range = { low: 1.5, mid: 3.5, high: 6 }
/** The density that the published totals speak of, lb dry matter/ft3. */
const USUAL_DENSITY: LbFt3 = 15

/** Losses one after the other, percent: 100 (1 - Π (1 - l/100)). Mass balance. */
export const chained = (pcts: readonly Pct[]): Pct =>
  100 * (1 - pcts.reduce((left, l) => left * (1 - Math.min(100, Math.max(0, l)) / 100), 1))

/**
 * Dry matter lost of a covered pile by cause, and in all, percent with ranges. Air gets in by the top and the face, the more the
 * looser the pile: both are scaled by what the density table leaves after filling and fermentation, against that at 15 lb/ft3.
 * Causes are chained; their errors are taken as independent, so the total's range is narrower than the sum of theirs. Sources by
 * cause in their own files; the scaling is our own, no source. For check: a well-managed pile about 15 %, piles on average 18 %
 * (Muck), 15 to 25 % for a good pile and over 30 % for an unpacked one (Roach & Kammel, UW).
 */
export const losses = (i: LossInputs): Losses => {
  const b = bounds()
  const rho = i.dryLbFt3 ?? USUAL_DENSITY
  const body = FILLING.mid + FERMENTATION.mid
  const air = Math.max(0.3, (densityLoss(rho).value - body) / (densityLoss(USUAL_DENSITY).value - body))
  b.flag('density', !(rho >= 10 && rho <= 22))
  const seepage = seepageLoss(i.dmPct)
  const shape: Top = {
    ...(i.surfaceFt2 !== undefined && { surfaceFt2: i.surfaceFt2 }),
    ...(i.volumeFt3 !== undefined && { volumeFt3: i.volumeFt3 }),
  }
  const top = topLoss(shape, i.cover, i.daysUncovered ?? 0, body, i.days)
  const scaled = (r: Range): Range => ({ low: Math.min(80, r.low * air), mid: Math.min(80, r.mid * air), high: Math.min(80, r.high * air) })
  const causes: Record<Cause, Range> = {
    filling: FILLING,
    fermentation: FERMENTATION,
    seepage: seepage.range,
    top: scaled(top.range),
    face: scaled(faceLoss(i.inPerDay ?? 6, i.season)),
  }
  const all = Object.values(causes)
  const mid = chained(all.map(r => r.mid))
  const less = Math.hypot(...all.map(r => r.mid - r.low))
  const more = Math.hypot(...all.map(r => r.high - r.mid))
  return { causes, total: { low: Math.max(0, mid - less), mid, high: Math.min(100, mid + more) }, ...outsideOf(b.rest(), seepage, top) }
}
