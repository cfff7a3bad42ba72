import type { Ft, Ft3, Lb, LbFt3, Pct, Share } from '../units/measure.ts'
import { cropDefaults, type Known, usualBoxLb } from './cropDefaults.ts'
import { dmHeld } from './dryMatter.ts'
import { type Figure, outsideOf } from './result.ts'

/** Dry matter of alfalfa in a wagon by cutting, lb/ft3: Wiersma & Holmes, UW Focus on Forage 3:3. */
const CUTS: readonly LbFt3[] = [5.7, 5, 5.1, 5]

/** Dry matter in a wagon as blown in and settled, lb/ft3. Haylage differs by cutting, 1 to 4; later ones are as the fourth. */
export const wagonDensity = (crop: string, cut?: number): Known<LbFt3> => {
  const c = cropDefaults(crop).wagonLbFt3
  return crop === 'haylage' && cut !== undefined ? { ...c, value: CUTS[Math.min(cut, CUTS.length) - 1] ?? c.value } : c
}

/** Volume of a box, ft3: inside length, width and the average height of settled feed. */
export const boxVolume = (lengthFt: Ft, widthFt: Ft, heightFt: Ft): Ft3 => lengthFt * widthFt * heightFt

/**
 * Pounds as fed in a box: V rho / DM. `ft3` volume of settled feed, `dmPct` percent. Source: Wiersma & Holmes, UW Focus on Forage
 * 3:3 (768 ft3 at 5 lb and 40 % is 9,600 lb); corn: maize in trailers, where neither dry matter nor height foretold the density.
 * Valid at 20 to 70 % dry matter; a box of 50 to 2,500 ft3.
 */
export const boxLbFromVolume = (ft3: Ft3, crop: string, dmPct: Pct, cut?: number): Figure<Lb> => {
  const dm = dmHeld(dmPct)
  const value = (Math.max(0, Number.isFinite(ft3) ? ft3 : 0) * wagonDensity(crop, cut).value) / (dm.value / 100)
  return { value, ...outsideOf(dm, ft3 >= 50 && ft3 <= 2500 ? {} : { outside: ['box-volume'] }) }
}

/**
 * Spread of loads of one box, a share: the mean of ten comes within 3.3 % nineteen times in twenty (maize in trailers), so one load
 * has 3.3 % / 1.96 x sqrt(10) = 5.3 %.
 */
export const LOAD_SD: Share = 0.053
/** How far what a box is said to hold lies from what it holds. Common practice, no source. */
export const SAID_SD: Share = 0.08

export interface BoxWeight {
  lb: Lb
  /** Standard error, a share of `lb`. */
  sd: Share
  from: 'tickets' | 'tickets and said' | 'said' | 'usual'
}

/**
 * Pounds in one load of a box, from its scale tickets drawn toward what it was said to hold: each weighted by the inverse of its
 * variance. w = s^2 / (s^2 + v^2/n), lb = w mean + (1 - w) said, s the error of the saying, v that of one load, n the loads
 * weighed. With neither, the crop's usual box, within a quarter. Source: normal-normal shrinkage (Gelman et al., Bayesian Data
 * Analysis, section 2.5).
 */
export const boxWeight = (crop: string, said: Lb | undefined, tickets?: { lb: Lb; count: number }, saidSd: Share = SAID_SD): BoxWeight => {
  const t = tickets && tickets.count > 0 && tickets.lb > 0 ? tickets : undefined
  const told = said !== undefined && said > 0 ? said : undefined
  if (!t) return told === undefined ? { lb: usualBoxLb(crop), sd: 0.25, from: 'usual' } : { lb: told, sd: saidSd, from: 'said' }
  const mean = t.lb / t.count
  const own = LOAD_SD / Math.sqrt(t.count)
  if (told === undefined) return { lb: mean, sd: own, from: 'tickets' }
  const w = saidSd ** 2 / (saidSd ** 2 + own ** 2)
  return { lb: w * mean + (1 - w) * told, sd: Math.sqrt(w) * own, from: 'tickets and said' }
}
