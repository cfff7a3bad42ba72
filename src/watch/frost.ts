/**
 * Depth of frost in bare ground, feet (Stefan; constant 48 for U.S. units as in UFC 3-130-06, after Aldrich & Paynter,
 * 1953): `x = sqrt(48 k n FI / L)`, `L = 144 w d`.
 * It leaves out the ground's own warmth and so gives too much; snow lowers `n`.
 * @param fi freezing index, Fahrenheit degree days below 32
 */
export const frostDepthFt = (fi: number, ground: Ground = WET_SAND): number =>
  fi <= 0 ? 0 : Math.sqrt((48 * ground.k * ground.n * fi) / (144 * ground.water * ground.dryLbFt3))

export interface Ground {
  /** Conductivity, Btu/(h ft F). */
  k: number
  /** Surface factor: 0.9 bare, less under snow. */
  n: number
  /** Water as a share of the dry mass. */
  water: number
  dryLbFt3: number
}

/** Wet sand as it lies along a cover's edge. */
export const WET_SAND: Ground = { k: 0.9, n: 0.9, water: 0.15, dryLbFt3: 100 }

/** Degree days after which a layer of `depthFt` is frozen: the same formula turned round. */
export const freezesAfter = (depthFt: number, ground: Ground = WET_SAND): number =>
  (depthFt ** 2 * 144 * ground.water * ground.dryLbFt3) / (48 * ground.k * ground.n)
