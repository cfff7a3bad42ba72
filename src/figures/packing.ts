import { type Ft, type Ft2, type Ft3, type In, LB_PER_TON, type Lb, type LbFt3, type Pct, type Share } from '../units/measure.ts'
import { bulkFor } from './porosity.ts'
import { type Bounds, bounds, type Figure, outsideOf } from './result.ts'

/**
 * Muck & Holmes (2000) Applied Engineering in Agriculture 16(6):613-619. The form and the 18.2 % of the variation that it explains
 * were read in the abstract; the four constants are from memory (their US and metric forms agree to 0.2 %).
 */
const A = 8.5
const B = 0.0155
const C = 0.818
const D = 0.0136

export interface Packing {
  /** Weight of the packing tractors, mean by packing time, lb. */
  tractorLb: Lb
  /** As spread, before packing, in. */
  layerIn?: In
  /** Tractors, each counted by the share of the filling time that it packs. */
  tractors?: number
  dmPct: Pct
  /** Delivery, tons as fed an hour. */
  tonsHour: number
  /** Average depth of the pile, its section over its base, ft. */
  depthFt?: Ft
}

export const USUAL_LAYER_IN: In = 6
export const USUAL_DEPTH_FT: Ft = 8
/** Least and desirable dry matter density, lb/ft3: 14 to 16, 18 (Lawrence, Cornell PRO-DAIRY). */
export const DENSITY_TARGET: LbFt3 = 15
export const DENSITY_GOOD: LbFt3 = 18
/** Least and desirable density as fed, lb/ft3 (same). */
export const BULK_TARGET: LbFt3 = 45
export const BULK_GOOD: LbFt3 = 50
/** Densest of 175 bunkers, lb dry matter/ft3: 434 kg/m3 (abstract). A prediction above it is an extrapolation. */
export const DENSEST_SEEN: LbFt3 = 27.1
/**
 * How far a pile's density may lie from the prediction, a share of it: it explains under a fifth of the variation. Our own figure,
 * no source.
 */
export const PREDICTION_SD: Share = 0.15

const read = (b: Bounds, p: Packing) => ({
  w: b.hold('tractor-weight', p.tractorLb, [10_000, 60_000], [1000, 150_000]),
  l: b.hold('layer', p.layerIn ?? USUAL_LAYER_IN, [4, 12], [1, 48]),
  n: b.hold('tractors', p.tractors ?? 1, [0.25, 6], [0.05, 20]),
  dm: b.hold('dry-matter', p.dmPct, [25, 55], [10, 90]) / 100,
  c: b.hold('delivery', p.tonsHour, [10, 300], [0.5, 2000]),
  d: b.hold('depth', p.depthFt ?? USUAL_DEPTH_FT, [5, 20], [1, 60]),
})

/** PF = W / L sqrt(N DM / C). Muck & Holmes (2000). Larger is denser. */
export const packingFactor = (p: Packing): Figure => {
  const b = bounds()
  const { w, l, n, dm, c } = read(b, p)
  return b.figure((w / l) * Math.sqrt((n * dm) / c))
}

/**
 * Dry matter density, lb/ft3: rho = (8.5 + 0.0155 PF) (0.818 + 0.0136 D). Valid: layers of 4 to 12 in, 25 to 55 % dry matter, 5 to
 * 20 ft deep, tractors of 10,000 to 60,000 lb; of bunkers, as no equation for piles without walls is published. `above-seen` past
 * the densest bunker; held to saturation, with `past-saturation`.
 */
export const packedDensity = (p: Packing, ash: Share = 0.05): Figure<LbFt3> => {
  const b = bounds()
  const pf = packingFactor(p)
  const { d, dm } = read(b, p)
  const rho = (A + B * pf.value) * (C + D * d)
  b.flag('above-seen', rho > DENSEST_SEEN)
  const full = bulkFor(0, 100 * dm, ash).value * dm
  b.flag('past-saturation', rho > full)
  return { value: Math.min(rho, full), ...outsideOf(pf, b.rest()) }
}

/** Packing factor that a density needs; may be negative where the depth alone would do. */
const factorFor = (target: LbFt3, depth: Ft): number => (target / (C + D * depth) - A) / B

/** Weight each tractor needs for a density, lb: [(target/(0.818 + 0.0136 D)) - 8.5]/0.0155 L / sqrt(N DM/C). 0 where any would do. */
export const tractorFor = (target: LbFt3, p: Omit<Packing, 'tractorLb'>): Figure<Lb> => {
  const b = bounds()
  const { l, n, dm, c, d } = read(b, { ...p, tractorLb: 30_000 })
  const w = Math.max(0, (factorFor(target, d) * l) / Math.sqrt((n * dm) / c))
  b.flag('target', !(target >= 8 && target <= DENSEST_SEEN))
  b.flag('tractor-weight', w > 60_000)
  return b.figure(Number.isFinite(w) ? w : 0)
}

/** Fastest delivery at which the tractors reach a density, tons as fed an hour: N DM (W / (L PF))^2. Held to 300 where any would do. */
export const deliveryFor = (target: LbFt3, p: Omit<Packing, 'tonsHour'>): Figure => {
  const b = bounds()
  const { w, l, n, dm, d } = read(b, { ...p, tonsHour: 50 })
  const pf = factorFor(target, d)
  b.flag('target', !(target >= 8 && target <= DENSEST_SEEN))
  return b.figure(pf > 0 ? Math.min(300, n * dm * (w / (l * pf)) ** 2) : 300)
}

/** Several tractors as one: W = Σ w t / Σ t, N = Σ t; `share` of the filling time that each packs. Definition. */
export const tractorMix = (tractors: readonly { lb: Lb; share: Share }[]): { tractorLb: Lb; tractors: number } => {
  const n = tractors.reduce((s, t) => s + t.share, 0)
  return { tractorLb: n > 0 ? tractors.reduce((s, t) => s + t.lb * t.share, 0) / n : 0, tractors: n }
}

/** Packing weight over delivery, lb in a ton as fed an hour (Kaatz, MSU; Garcia, SDSU). A quick check. */
export const RULE_OF_800 = 800
export const packingLbFor = (tonsHour: number): Lb => RULE_OF_800 * tonsHour
export const tonsHourFor = (packingLb: Lb): number => packingLb / RULE_OF_800

/** Weight in over volume, lb/ft3. Definition; undefined without a volume. */
export const measuredDensity = (lb: Lb, ft3: Ft3): LbFt3 | undefined => (ft3 > 0 && lb >= 0 ? lb / ft3 : undefined)

/** Average depth of a pile without walls, ft: its section over its base. From memory; nothing better is published. */
export const depthOf = (sectionFt2: Ft2, baseFt: Ft): Ft => (baseFt > 0 ? sectionFt2 / baseFt : 0)

/** Tons an hour from what came in and how long. */
export const tonsHourOf = (lb: Lb, hours: number): number => (hours > 0 ? lb / LB_PER_TON / hours : 0)
