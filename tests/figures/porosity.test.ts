import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { bulkFor, POROSITY_TARGET, porosity } from '../../src/figures/porosity.ts'
import { KGM3_PER_LBFT3 } from '../../src/units/measure.ts'

describe('arithmetic only: Richard et al. (2004), densities from memory', () => {
  it.each([
    [44, 30, 0.05, 0.377],
    [44, 35, 0.05, 0.39],
    [44, 40, 0.1, 0.407],
    [50, 35, 0.05, 0.307],
    [40, 35, 0.05, 0.446],
    [35, 45, 0.1, 0.54],
    [48, 33, 0.05, 0.329],
  ])('%s lb/ft3 at %s %%, ash %s: %s', (bulk, dm, ash, phi) => {
    expect(Math.abs(porosity(bulk, dm, ash).value - phi)).toBeLessThanOrEqual(0.005)
  })
  it('700 kg/m3 at 35 %: 0.395', () => {
    expect(Math.abs(porosity(700 / KGM3_PER_LBFT3, 35, 0.05).value - 0.395)).toBeLessThanOrEqual(0.005)
  })
  it.each([
    [30, 0.05, 42.4],
    [35, 0.05, 43.3],
    [40, 0.1, 44.5],
    [45, 0.1, 45.6],
    [50, 0.1, 46.8],
  ])('0.40 at %s %%, ash %s, takes %s lb/ft3', (dm, ash, bulk) => {
    expect(Math.abs(bulkFor(POROSITY_TARGET, dm, ash).value - bulk)).toBeLessThanOrEqual(0.1)
  })
  it.each([
    [30, 70.6, 21.2],
    [35, 72.2, 25.3],
  ])('no pores are left at %s %%: %s lb/ft3, %s dry', (dm, bulk, dry) => {
    expect(bulkFor(0, dm, 0.05).value).toBeCloseTo(bulk, 1)
    expect((bulkFor(0, dm, 0.05).value * dm) / 100).toBeCloseTo(dry, 1)
  })
})

it('published: 44 lb as fed is the least at 35 % (Bolsen), which keeps pores below 0.40 (Holmes & Muck)', () => {
  expect(porosity(44, 35, 0.05).value).toBeLessThan(POROSITY_TARGET)
  expect(porosity(40, 35, 0.05).value).toBeGreaterThan(POROSITY_TARGET)
})

describe('what always holds', () => {
  const dm = fc.double({ min: 20, max: 75, noNaN: true })
  const ash = fc.double({ min: 0.01, max: 0.2, noNaN: true })
  it('porosity of the density for a porosity is that porosity; denser has fewer pores', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 0.8, noNaN: true }), dm, ash, (phi, d, a) => {
        const bulk = bulkFor(phi, d, a).value
        expect(porosity(bulk, d, a).value).toBeCloseTo(phi, 9)
        expect(porosity(bulk * 1.01, d, a).value).toBeLessThan(phi)
      }),
    )
  })
  it('between 0 and 1 whatever is put in, and past saturation it says so', () => {
    expect(porosity(76, 35, 0.05)).toEqual({ value: 0, outside: ['past-saturation'] })
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), (b, d, a) => {
        const { value } = porosity(b, d, a)
        expect(value >= 0 && value <= 1).toBe(true)
        expect(Number.isFinite(bulkFor(b, d, a).value)).toBe(true)
      }),
    )
  })
})
