import type { Lb, Share } from '../../units/measure.ts'
import type { Shown } from './earlier.ts'
import type { Filling } from './layers.ts'
import type { LossPrior } from './lossPrior.ts'
import type { Volume } from './volume.ts'

export interface Whole {
  basis: 'loads' | 'size' | 'face'
  /** Weight in, by the book and as it is expected to be, lb as fed. */
  inLb: Lb
  /** What can be fed of it in all. */
  usable: { mean: Lb; sd: Lb }
  /** Other opinions of the same. */
  opinions: { mean: Lb; sd: Lb }[]
}

/** With the usual lightness taken off, so much is left of the error of what boxes are said to hold. Common practice, no source. */
const KNOWN_LIGHT = 0.82

/**
 * What can be fed of a pile in all, before its own feeding has shown anything: the loads by their boxes (what earlier piles of the
 * same boxes showed goes in),
 * else its size at the usual density; both less the loss. A measured size stands beside the loads as a second opinion.
 */
export const wholeOf = (filling: Filling, volume: Volume | undefined, loss: LossPrior, shown: Shown | undefined): Whole => {
  const keep = 1 - loss.mean
  if (filling.lb > 0) {
    const factor = shown?.factor ?? 1
    const inLb = filling.lb * filling.light * factor
    const sdIn = KNOWN_LIGHT * Math.sqrt(Math.max(0, filling.sd ** 2 - (shown?.less ?? 0)))
    const sdLoss = Math.sqrt(Math.max(0, (loss.sd / keep) ** 2 - (shown?.lessLoss ?? 0)))
    const opinions = volume?.form.measured ? [{ mean: volume.lb * keep, sd: volume.lb * volume.sd }] : []
    return { basis: 'loads', inLb, usable: { mean: inLb * keep, sd: inLb * keep * Math.hypot(sdIn, sdLoss) }, opinions }
  }
  const inLb = volume?.lb ?? 0
  return {
    basis: 'size',
    inLb,
    usable: { mean: inLb * keep, sd: inLb * Math.hypot(keep * (volume?.sd ?? UNKNOWN_SD), loss.sd) },
    opinions: [],
  }
}

/** Neither loads nor size are known: what the face has passed at the ration's weight, and then some. Common practice, no source. */
const UNKNOWN_SD: Share = 0.5

/** The whole by the face alone: so much fed, and so far gone. */
export const wholeByFace = (fedLb: Lb, gone: Share, loss: LossPrior): Whole => {
  const mean = fedLb / Math.max(0.02, gone)
  return { basis: 'face', inLb: mean / (1 - loss.mean), usable: { mean, sd: UNKNOWN_SD * mean }, opinions: [] }
}
