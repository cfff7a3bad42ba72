import type { Dice } from './random.ts'
import type { World } from './world.ts'

/** Pieces that a pile is cut into along its length. */
const CUTS = 400

/** Weight behind the face at `u` of the length, a share of the whole: ramps at both ends, and a density that wanders. */
export const behind = (d: Dice, world: World, length: number, height: number): ((u: number) => number) => {
  const ramp = Math.min(0.45, (world.slope * height) / length)
  const waves = [1, 2, 3, 4].map(k => (d.normal(0, 1) * world.uneven * 2 * Math.SQRT2) / (k * Math.PI))
  const sums = [0]
  for (let i = 0; i < CUTS; i++) {
    const u = (i + 0.5) / CUTS
    const h = Math.min(1, ramp > 0 ? u / ramp : 1, ramp > 0 ? (1 - u) / ramp : 1)
    // Side slopes stay, so the section falls a little faster than the height.
    const area = h ** 1.4
    const density = Math.max(0.3, 1 + waves.reduce((t, w, k) => t + w * (k + 1) * Math.PI * Math.cos((k + 1) * Math.PI * u), 0))
    sums.push(sums[i]! + area * density)
  }
  const all = sums[CUTS]!
  return u => {
    const x = Math.min(1, Math.max(0, u)) * CUTS
    const i = Math.min(CUTS - 1, Math.floor(x))
    return (sums[i]! + (sums[i + 1]! - sums[i]!) * (x - i)) / all
  }
}

/** Where the face stands when such a share is gone, ft: the other way round, by halving. */
export const faceAt = (share: (u: number) => number, gone: number, length: number): number => {
  let a = 0
  let b = 1
  for (let i = 0; i < 30; i++) {
    const m = (a + b) / 2
    if (share(m) < gone) a = m
    else b = m
  }
  return ((a + b) / 2) * length
}
