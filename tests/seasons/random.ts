/** Repeatable randomness for the seasons: mulberry32, and what is made of it. */
export interface Dice {
  next(): number
  between(a: number, b: number): number
  normal(mean: number, sd: number): number
  chance(p: number): boolean
  pick<T>(list: readonly T[]): T
}

export const dice = (seed: number): Dice => {
  let a = seed >>> 0
  const next = (): number => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = a
    t = Math.imul(t ^ (t >>> 15), t | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
  const normal = (mean: number, sd: number): number => mean + sd * Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next())
  return {
    next,
    normal,
    between: (x, y) => x + (y - x) * next(),
    chance: p => next() < p,
    pick: list => list[Math.floor(next() * list.length)]!,
  }
}
