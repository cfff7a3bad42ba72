import type { Ft, Share } from '../../units/measure.ts'
import { type Form, passed, passing } from './advance.ts'

/** Slow waves of the density along the pile that a belief holds. */
export const WAVES = 3

/** What a place along the pile means under one form. */
export interface Place {
  /** Share of the weight that lies behind it. */
  behind: Share
  /** Change of that share when the pile is longer than told, by a share of the length. */
  stretch: number
  /** Change of that share with the place, both as shares. */
  slope: number
  /** Height of each wave there: sin(k pi x behind), 0 at both ends of the pile. */
  waves: readonly number[]
}

/** Where a face stands as a share of a length that may be longer than told; read from the far end, only what is left is sure. */
const shareAlong = (atFt: Ft, fromFarEnd: boolean, length: Ft, stretch: number): Share => {
  const long = length * (1 + stretch)
  return Math.min(1, Math.max(0, (fromFarEnd ? long - (length - atFt) : atFt) / long))
}

/** Half of the step by which the change with the length is taken, a share. */
const STEP = 0.01

export const wavesAt = (behind: Share): number[] => {
  const waves: number[] = []
  for (let k = 1; k <= WAVES; k++) waves.push(Math.sin(k * Math.PI * behind))
  return waves
}

export const placeAt = (form: Form, length: Ft, atFt: Ft, fromFarEnd: boolean): Place => {
  const u = shareAlong(atFt, fromFarEnd, length, 0)
  const longer = passed(form, shareAlong(atFt, fromFarEnd, length, STEP))
  const shorter = passed(form, shareAlong(atFt, fromFarEnd, length, -STEP))
  const behind = passed(form, u)
  return { behind, stretch: (longer - shorter) / (2 * STEP), slope: passing(form, u), waves: wavesAt(behind) }
}
