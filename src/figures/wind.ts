import { bounds, type Figure } from './result.ts'

export interface Exposure {
  /** Height and ground. */
  kz?: number
  /** Hills. */
  kzt?: number
  /** Direction. */
  kd?: number
}

/**
 * Wind pressure, lb/ft2: q = 0.00256 Kz Kzt Kd V^2, V mph. ASCE 7. Valid 0 to 200 mph. Beware the page that prints 37.55 for Kz
 * 1.16 at 115 mph: it is 33.38.
 */
export const windPressure = (mph: number, { kz = 1, kzt = 1, kd = 1 }: Exposure = {}): Figure => {
  const b = bounds()
  const v = b.hold('wind', mph, [0, 200], [0, 400])
  return b.figure(0.00256 * kz * kzt * kd * v * v)
}

/** A car tire's casing, lb. Common practice, no source. */
export const TIRE_LB = 22

/** Weight that lies on a cover, lb/ft2: count in 100 ft2 x weight of one. */
export const holdDown = (per100: number, eachLb: number = TIRE_LB): number => (Math.max(0, per100) * Math.max(0, eachLb)) / 100

/**
 * Wind whose pressure equals the weight on a cover, mph: sqrt(w / (0.00256 Cp)). Only to set one cover beside another: no standard
 * for covers is published, a sealed film lifts little, and what gives first is a loose edge (Holmes, UW). Never a promise.
 */
export const windHeld = (psf: number, cp = 1): number => Math.sqrt(Math.max(0, psf) / (0.00256 * (cp > 0 ? cp : 1)))
