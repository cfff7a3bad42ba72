import type { PileState } from '../../book/pile.ts'
import type { Ft3, Lb, LbFt3, Share } from '../../units/measure.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { blendDensity } from '../dryMatter.ts'
import { volume } from '../shape.ts'
import { formOf, type PileForm } from './form.ts'
import type { Filling } from './layers.ts'
import type { Length } from './position.ts'

export interface Volume {
  ft3: Ft3
  /** Weight at the usual density of its crops, lb as fed. */
  lb: Lb
  /** Dry matter, lb/ft3, as usual. */
  dryLbFt3: LbFt3
  form: PileForm
  /** Standard error of `lb`, a share. */
  sd: Share
}

/**
 * A crown is seldom quite a parabola, and ends may be 3 to 1 or stand against something, which alone is a fifth of many piles: error of
 * the volume, a share. Common practice, no source.
 */
const SHAPE_SD: Share = 0.2
/** Height guessed from the width. Common practice, no source. */
const GUESSED_SD: Share = 0.3

/** Usual dry density of what lies in a pile, lb/ft3; of corn silage where nothing is known of it. */
export const usualDensity = (filling: Filling): { lbFt3: LbFt3; sd: Share } => {
  const parts = filling.layers.map(l => ({ lb: l.lbDry, lbFt3: cropDefaults(l.crop).dryLbFt3.value }))
  const first = cropDefaults(filling.layers[0]?.crop ?? 'corn silage')
  return { lbFt3: blendDensity(parts) ?? first.dryLbFt3.value, sd: first.densitySd }
}

/** What the size says is in a pile; undefined where the size is not known. */
export const volumeOf = (p: PileState, length: Length | undefined, filling: Filling): Volume | undefined => {
  const form = formOf(p, length)
  if (!form) return undefined
  const ft3 = volume(form.shape)
  const { lbFt3, sd } = usualDensity(filling)
  const dm = filling.dmPct || cropDefaults('corn silage').dmPct.value
  return {
    ft3,
    lb: (ft3 * lbFt3 * 100) / dm,
    dryLbFt3: lbFt3,
    form,
    sd: Math.hypot(SHAPE_SD, sd, length?.sd ?? 0, form.assumed.length ? GUESSED_SD : 0),
  }
}
