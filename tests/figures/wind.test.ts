import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { tiresPer100 } from '../../src/figures/coverFit.ts'
import { holdDown, windHeld, windPressure } from '../../src/figures/wind.ts'

it('published: 115 mph with Kz and Kd of 0.85 is 24.46 psf (secondary page on ASCE 7)', () => {
  expect(windPressure(115, { kz: 0.85, kd: 0.85 }).value).toBeCloseTo(24.46, 2)
})

it('what was printed wrong: with Kz 1.16 it is 33.38, not 37.55', () => {
  expect(windPressure(115, { kz: 1.16, kd: 0.85 }).value).toBeCloseTo(33.38, 2)
  expect(windPressure(115, { kz: 1.16, kd: 0.85 }).value).not.toBeCloseTo(37.55, 0)
})

describe('arithmetic of ASCE 7', () => {
  it.each([
    [30, 2.3],
    [40, 4.1],
    [50, 6.4],
    [60, 9.22],
    [90, 20.74],
  ])('%s mph: %s psf', (mph, psf) => {
    expect(windPressure(mph).value).toBeCloseTo(psf, 2)
  })
  it('0.00256 is half the density of air at sea level, in lb/ft2 of mph: 1/2 x 1.225 x 0.44704^2 x 0.0208854', () => {
    expect(windPressure(1).value).toBeCloseTo(0.5 * 1.225 * 0.44704 ** 2 * 0.0208854, 5)
  })
  it('tires that touch, 22 lb each, weigh 4.7 psf, what 42.8 mph press with', () => {
    expect(holdDown(tiresPer100())).toBeCloseTo(4.7, 1)
    expect(windHeld(holdDown(21.3))).toBeCloseTo(42.8, 1)
  })
})

it('pressure to speed and back; a wind that cannot be says so; never NaN', () => {
  fc.assert(
    fc.property(fc.double({ min: 0.1, max: 200, noNaN: true }), mph => {
      expect(windHeld(windPressure(mph).value)).toBeCloseTo(mph, 9)
    }),
  )
  expect(windPressure(-5)).toEqual({ value: 0, outside: ['wind'] })
  expect(windPressure(Number.NaN)).toEqual({ value: 0, outside: ['wind'] })
})
