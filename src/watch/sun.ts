import { getPosition } from 'suncalc'
import type { Instant } from '../units/calendar.ts'

/**
 * Apparent height of the sun's centre over the horizon, degrees, refraction and all; below it negative, and there good to half a degree only,
 * as refraction has no meaning then. The open library `suncalc` reckons it, after Meeus, Astronomical Algorithms.
 * @param lat degrees north @param lon degrees east
 */
export const sunHeight = (at: Instant, lat: number, lon: number): number => getPosition(new Date(at), lat, lon).altitude

export interface SunHours {
  from: Instant
  to: Instant
  /** Height at its best, degrees. */
  top: number
}

/** Share of the noon height from which a sheet lies warm enough to draw tight. Common practice, no source. */
const WARM_SHARE = 0.75
const STEP_MS = 10 * 60_000

/**
 * The hours around noon in which the sun stands high; undefined where it does not rise. `dayStart` is the instant of the
 * local midnight before.
 */
export const sunHours = (dayStart: Instant, lat: number, lon: number): SunHours | undefined => {
  const start = Date.parse(dayStart)
  const heights = Array.from({ length: 144 }, (_, i) => ({
    ms: start + i * STEP_MS,
    h: sunHeight(new Date(start + i * STEP_MS).toISOString(), lat, lon),
  }))
  const top = Math.max(...heights.map(x => x.h))
  if (top <= 0) return undefined
  const warm = heights.filter(x => x.h >= top * WARM_SHARE)
  return { from: new Date(warm[0]!.ms).toISOString(), to: new Date(warm.at(-1)!.ms).toISOString(), top }
}
