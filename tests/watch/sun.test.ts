import { describe, expect, it } from 'vitest'
import { sunHeight, sunHours } from '../../src/watch/sun.ts'

/** Saemundsson's refraction, degrees, at a true height, degrees: Meeus, equation 16.4 (from memory). */
const refraction = (h: number): number => 1.02 / Math.tan(((h + 10.3 / (h + 5.11)) * Math.PI) / 180) / 60

describe('the height of the sun', () => {
  it('at the pole is its declination, here south of the line: Meeus, Astronomical Algorithms, example 25.a (from memory)', () => {
    expect(sunHeight('1992-10-13T00:00:00.000Z', -90, 0) - refraction(7.785)).toBeCloseTo(7.785, 2)
  })
  it('at the pole is the obliquity at the June solstice of 2024, 20:51 UT (published instant)', () => {
    expect(sunHeight('2024-06-20T20:51:00.000Z', 90, 0) - refraction(23.436)).toBeCloseTo(23.436, 2)
  })
  it('is below the horizon at midnight: 50.5 N 30.5 E, 5 March 2013', () => {
    // Declination about -6 degrees, an hour and a half of right ascension past midnight: some 40 degrees below (reckoned by hand).
    expect(Math.abs(sunHeight('2013-03-05T00:00:00.000Z', 50.5, 30.5) + 40.1)).toBeLessThan(0.8)
  })
  it('is highest at noon less the equation of time: 13 October 1992, +13 min 42.6 s at 0 h (Meeus, example 28.b, from memory)', () => {
    // Greenwich lies at longitude 0. Half a day before and after, the equation moves by some seven seconds.
    const noon = Date.parse('1992-10-13T12:00:00Z') - 13 * 60_000 - 49_000
    const height = (ms: number) => sunHeight(new Date(ms).toISOString(), 51.5, 0)
    expect(Math.abs(height(noon - 7_200_000) - height(noon + 7_200_000))).toBeLessThan(0.12)
    expect(height(noon)).toBeGreaterThan(height(noon - 1_800_000))
    expect(height(noon)).toBeGreaterThan(height(noon + 1_800_000))
    expect(height(noon)).toBeCloseTo(90 - 51.5 - 7.97, 1)
  })
  it('gives the hours around noon, and none where it does not rise', () => {
    const hours = sunHours('2026-09-15T05:00:00.000Z', 43, -89.4)!
    const mid = (Date.parse(hours.from) + Date.parse(hours.to)) / 2
    // Solar noon at 89.4 W is 17:57:36 UT less an equation of time of about +5 min in mid-September.
    expect(Math.abs(mid - Date.parse('2026-09-15T17:53:00Z'))).toBeLessThan(10 * 60_000)
    expect(hours.top).toBeCloseTo(90 - 43 + 2.9, 0)
    expect(sunHours('2026-12-21T00:00:00.000Z', 80, 0)).toBeUndefined()
  })
})
