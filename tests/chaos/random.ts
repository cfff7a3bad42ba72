/** Numbers from 0 to 1, the same ones again for the same seed. */
export type Random = () => number

/** Mulberry32, by Tommy Ettinger, in the public domain. */
export const makeRandom = (seed: number): Random => {
  let a = seed >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = Math.imul(a ^ (a >>> 15), 1 | a)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4_294_967_296
  }
}
