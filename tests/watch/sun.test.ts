import { describe, expect, it } from 'vitest'
import { sunHeight, sunHours } from '../../src/watch/sun.ts'

describe('the height of the sun', () => {
  it('at the pole is its declination: Meeus, Astronomical Algorithms, example 25.a (from memory)', () => {
    expect(sunHeight('1992-10-13T00:00:00.000Z', 90, 0)).toBeCloseTo(-7.785, 2)
  })
  it('at the pole is the obliquity at the June solstice of 2024, 20:51 UT (published instant)', () => {
    expect(sunHeight('2024-06-20T20:51:00.000Z', 90, 0)).toBeCloseTo(23.436, 2)
  })
  it('agrees with a truth fixture of an open sun library: 50.5 N 30.5 E, 5 March 2013 (from memory)', () => {
    // -0.7000406838781611 rad; that library is good to about a tenth of a degree.
    expect(sunHeight('2013-03-05T00:00:00.000Z', 50.5, 30.5)).toBeCloseTo((-0.7000406838781611 * 180) / Math.PI, 0)
    expect(Math.abs(sunHeight('2013-03-05T00:00:00.000Z', 50.5, 30.5) + 40.109)).toBeLessThan(0.2)
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
