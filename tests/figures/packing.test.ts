import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  DENSEST_SEEN,
  deliveryFor,
  depthOf,
  measuredDensity,
  type Packing,
  packedDensity,
  packingFactor,
  packingLbFor,
  tonsHourFor,
  tonsHourOf,
  tractorFor,
  tractorMix,
} from '../../src/figures/packing.ts'
import { porosity } from '../../src/figures/porosity.ts'
import { KG_PER_LB, KGM3_PER_LBFT3, M_PER_FT } from '../../src/units/measure.ts'

const of = (tractorLb: number, layerIn: number, tractors: number, dmPct: number, tonsHour: number, depthFt: number): Packing => ({
  tractorLb,
  layerIn,
  tractors,
  dmPct,
  tonsHour,
  depthFt,
})

describe('published', () => {
  it('50 tons an hour ask for 40,000 lb of tractor: Kaatz, MSU, Hay & Forage Grower', () => {
    expect(packingLbFor(50)).toBe(40_000)
  })
  it('26,000 lb pack 32.5 tons an hour: Garcia, SDSU', () => {
    expect(tonsHourFor(26_000)).toBe(32.5)
  })
  it('the densest of 175 bunkers was 434 kg/m3: Muck & Holmes (2000), abstract', () => {
    expect(Math.abs(DENSEST_SEEN * KGM3_PER_LBFT3 - 434)).toBeLessThan(1)
  })
})

it('what was printed wrong: 40,000 lb pack 50 tons an hour, not 150', () => {
  expect(tonsHourFor(40_000)).toBe(50)
  expect(tonsHourFor(40_000)).not.toBe(150)
})

describe('arithmetic only: Muck & Holmes (2000) with constants from memory', () => {
  it.each([
    [of(30_000, 6, 1, 35, 50, 10), 418.33, 14.3],
    [of(40_000, 6, 1, 35, 50, 10), 557.77, 16.36],
    [of(40_000, 12, 1, 35, 50, 10), 278.89, 12.23],
    [of(32_000, 6, 2, 40, 60, 8), 615.84, 16.73],
    [of(20_000, 8, 1, 38, 40, 9), 243.67, 11.55],
    [of(45_000, 6, 2, 33, 100, 12), 609.3, 17.61],
    [of(25_000, 4, 1, 45, 30, 7), 765.47, 18.6],
  ])('%o: factor %s, %s lb/ft3', (p, factor, rho) => {
    expect(packingFactor(p).value).toBeCloseTo(factor, 2)
    expect(packedDensity(p).outside).toBeUndefined()
    expect(Math.abs(packedDensity(p).value - rho)).toBeLessThanOrEqual(0.01)
  })
  it('40,000 lb in layers of 6 in: 46.73 lb as fed', () => {
    expect(packedDensity(of(40_000, 6, 1, 35, 50, 10)).value / 0.35).toBeCloseTo(46.73, 2)
  })
  it('the metric form, rho = (136.3 + 0.042 PF)(0.818 + 0.0446 D) with dry matter in g/kg, comes within 0.3 %: 229.4 kg/m3', () => {
    const pf = ((30_000 * KG_PER_LB) / (6 * 2.54)) * Math.sqrt(350 / ((50 * 2000 * KG_PER_LB) / 1000))
    const metric = (136.3 + 0.042 * pf) * (0.818 + 0.0446 * 10 * M_PER_FT)
    expect(metric).toBeCloseTo(229.4, 0)
    expect(Math.abs((packedDensity(of(30_000, 6, 1, 35, 50, 10)).value * KGM3_PER_LBFT3) / metric - 1)).toBeLessThan(0.003)
  })
  it('for 15 lb/ft3 one tractor of 33,420 lb; for 16 two of 27,061', () => {
    const p = of(0, 6, 1, 35, 50, 10)
    expect(Math.abs(tractorFor(15, p).value - 33_420)).toBeLessThanOrEqual(1)
    expect(Math.abs(tractorFor(16, { ...p, tractors: 2 }).value - 27_061)).toBeLessThanOrEqual(1)
  })
})

describe('arithmetic of definitions', () => {
  it('40,000 lb all the time and 25,000 half of it are 1.5 tractors of 35,000', () => {
    expect(
      tractorMix([
        { lb: 40_000, share: 1 },
        { lb: 25_000, share: 0.5 },
      ]),
    ).toEqual({ tractorLb: 35_000, tractors: 1.5 })
    expect(tractorMix([])).toEqual({ tractorLb: 0, tractors: 0 })
  })
  it('1,000 tons in 40 by 12 by 100 ft are 41.67 lb/ft3: Berger & Bolsen (2006)', () => {
    expect(measuredDensity(1000 * 2000, 40 * 12 * 100)).toBeCloseTo(41.67, 2)
    expect(measuredDensity(1000, 0)).toBeUndefined()
  })
  it('depth is the section over the base; tons an hour over the hours', () => {
    expect(depthOf(672, 92)).toBeCloseTo(7.304, 3)
    expect(tonsHourOf(800_000, 8)).toBe(50)
    expect(tonsHourOf(800_000, 0)).toBe(0)
  })
})

const packings: fc.Arbitrary<Packing> = fc.record({
  tractorLb: fc.double({ min: 10_000, max: 60_000, noNaN: true }),
  layerIn: fc.double({ min: 4, max: 12, noNaN: true }),
  tractors: fc.double({ min: 0.5, max: 4, noNaN: true }),
  dmPct: fc.double({ min: 25, max: 55, noNaN: true }),
  tonsHour: fc.double({ min: 10, max: 250, noNaN: true }),
  depthFt: fc.double({ min: 5, max: 20, noNaN: true }),
})

describe('what always holds', () => {
  it('heavier, more tractors and deeper never loosen; thicker layers and faster delivery never pack', () => {
    fc.assert(
      fc.property(packings, p => {
        const rho = packedDensity(p).value
        const more = (change: Partial<Packing>) => packedDensity({ ...p, ...change }).value
        expect(more({ tractorLb: p.tractorLb * 1.1 })).toBeGreaterThanOrEqual(rho)
        expect(more({ tractors: p.tractors! * 1.1 })).toBeGreaterThanOrEqual(rho)
        expect(more({ depthFt: p.depthFt! * 1.1 })).toBeGreaterThanOrEqual(rho)
        expect(more({ layerIn: p.layerIn! * 1.1 })).toBeLessThanOrEqual(rho)
        expect(more({ tonsHour: p.tonsHour * 1.1 })).toBeLessThanOrEqual(rho)
      }),
    )
  })
  it('the tractor, or the delivery, that a density asks for gives that density', () => {
    fc.assert(
      fc.property(packings, p => {
        const { value: rho, outside } = packedDensity(p)
        fc.pre(!outside)
        expect(tractorFor(rho, p).value / p.tractorLb).toBeCloseTo(1, 6)
        expect(deliveryFor(rho, p).value / p.tonsHour).toBeCloseTo(1, 6)
      }),
    )
  })
  it('never denser than without pores, and says when it is past what was seen', () => {
    fc.assert(
      fc.property(packings, p => {
        const { value, outside = [] } = packedDensity(p)
        expect(porosity(value / (p.dmPct / 100), p.dmPct, 0.05).value).toBeGreaterThanOrEqual(0)
        if (value > DENSEST_SEEN) expect(outside).toContain('above-seen')
      }),
    )
  })
  it('never NaN; input that cannot be is named', () => {
    expect(packedDensity(of(30_000, 30, 1, 95, 50, 10)).outside).toEqual(expect.arrayContaining(['layer', 'dry-matter']))
    const any = fc.double()
    fc.assert(
      fc.property(any, any, any, any, any, any, (a, b, c, d, e, f) => {
        expect(packedDensity(of(a, b, c, d, e, f)).value).not.toBeNaN()
        expect(tractorFor(a, of(0, b, c, d, e, f)).value).not.toBeNaN()
        expect(deliveryFor(a, of(b, c, d, e, 0, f)).value).not.toBeNaN()
      }),
    )
  })
})
