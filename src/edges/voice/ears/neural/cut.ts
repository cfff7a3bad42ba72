/** How long the stretch of quiet is that a note is cut in, seconds. */
const QUIET_S = 0.2
const STEP_S = 0.05

/**
 * A note in parts of `most` seconds at most, cut where it is quietest in the last third of each. Some models hear no more than thirty seconds
 * and drop the rest without a word.
 */
export const cutAtQuiet = (sound: Float32Array, rate: number, most: number): Float32Array[] => {
  const limit = Math.floor(most * rate)
  const window = Math.round(QUIET_S * rate)
  const step = Math.max(1, Math.round(STEP_S * rate))
  const parts: Float32Array[] = []
  let from = 0
  while (sound.length - from > limit) {
    let cut = from + limit
    let least = Number.POSITIVE_INFINITY
    for (let at = from + Math.floor((limit * 2) / 3); at + window <= from + limit; at += step) {
      let energy = 0
      for (let k = at; k < at + window; k++) energy += sound[k]! ** 2
      if (energy < least) {
        least = energy
        cut = at + Math.floor(window / 2)
      }
    }
    parts.push(sound.subarray(from, cut))
    from = cut
  }
  parts.push(sound.subarray(from))
  return parts
}
