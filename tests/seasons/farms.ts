import { OTHERS } from './others/others.ts'
import { type Season, season } from './season.ts'
import { WORLDS } from './worlds.ts'

/** A farm life that seasons are drawn from; a seed makes one season. */
export interface Farm {
  name: string
  /** Never looked at while the priors of the estimate were set. */
  heldOut: boolean
  season: (seed: number) => Season
}

export const FARMS: Farm[] = [...WORLDS.map(w => ({ name: w.name, heldOut: false, season: (seed: number) => season(w, seed) })), ...OTHERS]
