import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  edgesFrozen,
  freezingIndex,
  frostDepth,
  frostDepthBerggren,
  iceOnWater,
  indexToFreeze,
  WET_SAND,
} from '../../src/figures/freeze.ts'
import { M_PER_FT } from '../../src/units/measure.ts'

describe('arithmetic of Stefan (UW/WSDOT guide; UFC 3-130-06)', () => {
  it.each([
    [500, { k: 1, n: 1, dry: 100, water: 0.15 }, 3.333],
    [1500, { k: 0.9, n: 0.9, dry: 110, water: 0.12 }, 5.539],
    [1000, { k: 1, n: 1, dry: 100, water: 0.15 }, 4.714],
  ])('FI %s, %o: %s ft', (fi, ground, ft) => {
    expect(frostDepth(fi, ground).value).toBeCloseTo(ft, 3)
  })
  it('in metric units, x = sqrt(2 k 86400 n FI / L), it is the same: 1.0160 m', () => {
    const k = 1 * 1.730735
    const fi = 500 / 1.8
    const latent = 144 * 0.15 * 100 * 37_258.95
    expect(Math.sqrt((2 * k * 86_400 * fi) / latent)).toBeCloseTo(1.016, 2)
    expect(frostDepth(500, { k: 1, n: 1, dry: 100, water: 0.15 }).value * M_PER_FT).toBeCloseTo(1.016, 3)
  })
  it('2 in of wet sand freeze through in 1.54 F-days, 6 in in 13.9', () => {
    expect(indexToFreeze(2)).toBeCloseTo(1.54, 2)
    expect(indexToFreeze(6)).toBeCloseTo(13.9, 1)
  })
})

it('arithmetic of the modified Berggren, Aldrich & Paynter (1953): FI 1000 in 100 days, mean of the year 45 F: 4.241 ft', () => {
  expect(Math.abs(frostDepthBerggren(1000, { k: 1, n: 1, dry: 100, water: 0.15 }, 100, 45).value - 4.241)).toBeLessThanOrEqual(0.005)
})

it('arithmetic: 50 F-days make 3.5 to 4.9 in of ice on an average lake (0.5 to 0.7 root, USACE, from memory)', () => {
  const { low, mid, high } = iceOnWater(50)
  expect(mid).toBeGreaterThan(3.5)
  expect(mid).toBeLessThan(4.9)
  expect(low).toBeLessThan(3.5)
  expect(high).toBeGreaterThan(4.9)
})

it('the index counts only what is below 32 F', () => {
  expect(freezingIndex([40, 32, 30, 20, 35])).toBe(14)
  expect(edgesFrozen([33, 31])).toBe(false)
  expect(edgesFrozen([31, 31])).toBe(true)
})

describe('what always holds', () => {
  it('the index that freezes a depth freezes it', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 60, noNaN: true }), depth => {
        expect(frostDepth(indexToFreeze(depth), WET_SAND).value * 12).toBeCloseTo(depth, 6)
      }),
    )
  })
  it('colder is never shallower, Berggren never deeper than Stefan, none ever NaN', () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), fc.double(), (a, b, days, year) => {
        const [x, y] = [frostDepth(a, WET_SAND).value, frostDepth(b, WET_SAND).value]
        if (a < b) expect(x).toBeLessThanOrEqual(y)
        expect(frostDepthBerggren(a, WET_SAND, days, year).value).toBeLessThanOrEqual(x)
      }),
    )
  })
})
