import type { Instant } from '../units/calendar.ts'

const RAD = Math.PI / 180
const sin = (deg: number): number => Math.sin(deg * RAD)
const cos = (deg: number): number => Math.cos(deg * RAD)
const tan = (deg: number): number => Math.tan(deg * RAD)

/** Sun's declination, degrees, and the equation of time, minutes, at an instant. */
const sunAt = (at: Instant): { declination: number; equation: number } => {
  // Julian centuries from 2000 January 1, noon.
  const c = (Date.parse(at) / 86_400_000 + 2_440_587.5 - 2_451_545) / 36_525
  const meanLongitude = (280.46646 + c * (36_000.76983 + c * 0.0003032)) % 360
  const anomaly = 357.52911 + c * (35_999.05029 - 0.0001537 * c)
  const eccentricity = 0.016708634 - c * (0.000042037 + 0.0000001267 * c)
  const centre =
    sin(anomaly) * (1.914602 - c * (0.004817 + 0.000014 * c)) + sin(2 * anomaly) * (0.019993 - 0.000101 * c) + sin(3 * anomaly) * 0.000289
  const node = 125.04 - 1934.136 * c
  const longitude = meanLongitude + centre - 0.00569 - 0.00478 * sin(node)
  const obliquity = 23 + (26 + (21.448 - c * (46.815 + c * (0.00059 - c * 0.001813))) / 60) / 60 + 0.00256 * cos(node)
  const declination = Math.asin(sin(obliquity) * sin(longitude)) / RAD
  const y = tan(obliquity / 2) ** 2
  const equation =
    (4 *
      (y * sin(2 * meanLongitude) -
        2 * eccentricity * sin(anomaly) +
        4 * eccentricity * y * sin(anomaly) * cos(2 * meanLongitude) -
        0.5 * y * y * sin(4 * meanLongitude) -
        1.25 * eccentricity * eccentricity * sin(2 * anomaly))) /
    RAD
  return { declination, equation }
}

/**
 * Height of the sun's centre over the horizon, degrees, without refraction; below it negative. The equations are those
 * of the U.S. weather service's solar calculator (NOAA Global Monitoring Laboratory), after Meeus, Astronomical
 * Algorithms; good to a hundredth of a degree between 1950 and 2050.
 * @param lat degrees north @param lon degrees east
 */
export const sunHeight = (at: Instant, lat: number, lon: number): number => {
  const { declination, equation } = sunAt(at)
  const minutes = (Date.parse(at) % 86_400_000) / 60_000
  const hourAngle = (((((minutes + equation + 4 * lon) / 4 - 180) % 360) + 540) % 360) - 180
  return Math.asin(Math.min(1, Math.max(-1, sin(lat) * sin(declination) + cos(lat) * cos(declination) * cos(hourAngle)))) / RAD
}

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
