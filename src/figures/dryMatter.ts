import type { Lb, Pct } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/** Silage stands between these; anything else is a slip, percent dry matter. Common practice, no source. */
export const DM_VALID = [15, 80] as const
const DM_CAN = [1, 99] as const

/** Dry matter from moisture, percent: 100 - M. Definition. */
export const dmFromMoisture = (moisturePct: Pct): Figure<Pct> => dmHeld(100 - moisturePct)
/** Moisture from dry matter, percent. Definition. */
export const moistureFromDm = (dmPct: Pct): Figure<Pct> => {
  const { value, ...rest } = dmHeld(dmPct)
  return { value: 100 - value, ...rest }
}

/** A dry matter held between 1 and 99 %, with `dry-matter` where it is none of silage (15 to 80 %). */
export const dmHeld = (dmPct: Pct): Figure<Pct> => {
  const b = bounds()
  return b.figure(b.hold('dry-matter', dmPct, DM_VALID, DM_CAN))
}

/**
 * Dry matter of a weighed sample, percent: (dry - plate) / (wet - plate) x 100; weights in any one unit, with the plate in both.
 * Definition; ASABE S358 (103 C, 24 h, from memory), or microwave. Beware the handout that prints (wet - dry)/100, right only for
 * 100 g.
 */
export const dmOfSample = (wet: number, dry: number, plate = 0): Figure<Pct> => {
  const b = bounds()
  const net = wet - plate
  const left = dry - plate
  b.flag('sample-weights', !(net > 0 && left > 0 && left <= net))
  if (!(net > 0) || !Number.isFinite(left)) return b.figure(DM_CAN[0])
  return b.figure(b.hold('dry-matter', (left / net) * 100, [0, 100], DM_CAN))
}

/** Done drying when two weighings 30 s apart differ by less than this, g (microwave handouts of five universities). */
export const DRY_WITHIN_G = 1

/**
 * Weight of a sample dried in a microwave, g, from the weighings in their order: the last, or the last before it charred
 * (`charredAt`, index of the first weighing after it did). `not-dry-yet` where the last two still differ by 1 g or more.
 */
export const microwaveDry = (weighings: readonly number[], charredAt?: number): Figure => {
  const b = bounds()
  const good = weighings.slice(0, charredAt).filter(w => Number.isFinite(w) && w > 0)
  const last = good.at(-1)
  const before = good.at(-2)
  b.flag('no-weighing', last === undefined)
  b.flag('not-dry-yet', charredAt === undefined && last !== undefined && (before === undefined || before - last >= DRY_WITHIN_G))
  return b.figure(last ?? 0)
}

/** Dry pounds in pounds as fed. Definition. */
export const dryLb = (asFedLb: Lb, dmPct: Pct): Lb => asFedLb * (dmPct / 100)
/** Pounds as fed that hold so many dry pounds; dry matter held between 1 and 99 %. Definition. */
export const asFedLb = (dry: Lb, dmPct: Pct): Lb => dry / (dmHeld(dmPct).value / 100)

/** Dry matter of a blend, percent: Σ m DM / Σ m over weights as fed. Mass balance. Undefined where nothing is in it. */
export const blendDm = (parts: readonly { lb: Lb; dmPct: Pct }[]): Pct | undefined => {
  const lb = parts.reduce((s, p) => s + p.lb, 0)
  return lb > 0 ? parts.reduce((s, p) => s + p.lb * p.dmPct, 0) / lb : undefined
}

/**
 * Density of a face band made of several feeds, lb/ft3: Σ m / Σ (m / rho), the harmonic mean by mass. Mass and volume balance; no
 * interaction published.
 */
export const blendDensity = (parts: readonly { lb: Lb; lbFt3: number }[]): number | undefined => {
  const lb = parts.reduce((s, p) => s + p.lb, 0)
  const ft3 = parts.reduce((s, p) => s + (p.lbFt3 > 0 ? p.lb / p.lbFt3 : 0), 0)
  return lb > 0 && ft3 > 0 ? lb / ft3 : undefined
}
