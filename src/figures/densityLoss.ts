import type { LbFt3, Pct } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/**
 * Dry matter lost in 180 days by packed density: lb dry matter per ft3, percent of dry matter put in. Alfalfa in bunkers. Ruppel
 * (1992); Ruppel, Pitt, Chase & Galton (1995) J. Dairy Sci. 78:141-153.
 */
export const RUPPEL: readonly (readonly [LbFt3, Pct])[] = [
  [10, 20.2],
  [14, 16.8],
  [15, 15.9],
  [16, 15.1],
  [18, 13.4],
  [22, 10],
]

/**
 * Loss by density, percent of dry matter at 180 days: the table, straight lines between. Valid 10 to 22 lb/ft3. Past its ends the
 * last slope goes on as far as 5 and 28 lb/ft3, with the code `density`.
 */
export const densityLoss = (dryLbFt3: LbFt3): Figure<Pct> => {
  const b = bounds()
  const rho = b.hold('density', dryLbFt3, [10, 22], [5, 28])
  let i = RUPPEL.findIndex(([d]) => d >= rho)
  if (i < 0) i = RUPPEL.length - 1
  if (i === 0) i = 1
  const [d0, l0] = RUPPEL[i - 1]!
  const [d1, l1] = RUPPEL[i]!
  return b.figure(l0 + ((l1 - l0) * (rho - d0)) / (d1 - d0))
}

/** Points of dry matter that packing from one density to another would save; negative where it would lose. */
export const savedByDensity = (now: LbFt3, then: LbFt3): Pct => densityLoss(now).value - densityLoss(then).value
