import { addDays, type Day } from '../../units/calendar.ts'
import type { Share } from '../../units/measure.ts'
import { DAY_SD, type Part } from './fuse.ts'
import { normalBelow } from './gauss.ts'

/** The day's own ups and downs and the last wedge that nobody feeds, days. Common practice, no source. */
const END_DAYS = 0.55
/**
 * What is to come wanders more than what was: herds grow and rations turn. One day's step of the use, a share; common practice, no
 * source.
 */
const AHEAD_STEP = 0.0035

/**
 * Chance that the pile is gone within `d` days: that what is left, less `d` days of use, falls below nothing. Both are Gaussian
 * and go together under each
 * set of guesses, so the chance is one of the normal distribution (Fieller's argument for a quotient); over all, the weighted mean.
 */
const goneBy = (parts: readonly Part[], d: number): Share => {
  let t = 0
  for (const p of parts) {
    const wander = (AHEAD_STEP * p.use) ** 2 * d
    const v = p.leftVar + d * d * (p.useVar + wander / 3) - 2 * d * p.covar + d * (DAY_SD * p.use) ** 2 + (END_DAYS * p.use) ** 2
    t += p.weight * normalBelow((d * p.use - p.left) / Math.sqrt(Math.max(1e-9, v)))
  }
  return t
}

/** Past this many days a pile lasts for good. */
export const FOREVER = 4096

/** By the record so surely gone, it is the record that is off, and only the tail of it tells anything. */
const OVERFED: Share = 0.995
/** The least that a pile somebody still feeds from is taken to last on, days. Common practice, no source. */
const LEAST_DAYS = 1.5

/**
 * Days left of a pile that should be gone: the tail of a normal above 0 falls like an exponential of the scale sd / z (z standard errors
 * below 0), the first term of its asymptotic series (Abramowitz and Stegun 26.2.12).
 */
const overfedDays = (parts: readonly Part[], q: Share): number => {
  const left = overall(parts, 'left', 'leftVar')
  const use = overall(parts, 'use', 'useVar').mean
  const scale = left.mean < 0 ? left.sd ** 2 / -left.mean : left.sd
  return -Math.log(1 - q) * Math.max(LEAST_DAYS, scale / Math.max(1e-9, use))
}

/**
 * The number of days within which the pile is gone with chance `q`, given that it is not gone yet: somebody still asks for it.
 * Never below 0 nor above `FOREVER`;
 * undefined where nothing is fed.
 */
export const daysAt = (parts: readonly Part[], q: Share): number | undefined => {
  if (!parts.some(p => p.use > 0)) return undefined
  const before = goneBy(parts, 0)
  if (before > OVERFED) return overfedDays(parts, q)
  const chance = before + q * (1 - before)
  let low = 0
  let high = 8
  while (goneBy(parts, high) < chance && high < FOREVER) high *= 2
  if (high >= FOREVER) return FOREVER
  while (high - low > 0.005) {
    const mid = (low + high) / 2
    if (goneBy(parts, mid) < chance) low = mid
    else high = mid
  }
  return (low + high) / 2
}

/** The last whole day that so many days cover. */
export const dayIn = (from: Day, days: number): Day => addDays(from, Math.floor(Math.min(FOREVER, Math.max(0, days))))

/** Mean and standard deviation of one of the numbers over all sets of guesses. */
export const overall = (
  parts: readonly Part[],
  mean: 'left' | 'use' | 'whole',
  variance: 'leftVar' | 'useVar' | 'wholeVar',
): { mean: number; sd: number } => {
  const weight = parts.reduce((t, p) => t + p.weight, 0)
  const m = parts.reduce((t, p) => t + p.weight * p[mean], 0) / weight
  const v = parts.reduce((t, p) => t + p.weight * (p[variance] + (p[mean] - m) ** 2), 0) / weight
  return { mean: m, sd: Math.sqrt(Math.max(0, v)) }
}
