import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inPerDay } from '../../src/figures/faceRate.ts'
import { sectionArea, shapeProblems, volume } from '../../src/figures/shape.ts'
import {
  dailyVolume,
  daysOfFeed,
  LEAST_HEIGHT_FT,
  REACH_FT,
  type Sizing,
  type SizingInputs,
  sizePile,
  TRACTOR_TOP_FT,
  tonsDry,
  toStore,
  uprightWidth,
} from '../../src/figures/sizing.ts'

const sized = (i: SizingInputs): Sizing => {
  const s = sizePile(i)
  if (!('shape' in s)) throw new Error(s.outside.join())
  return s
}

it('published: 3,000 lb a day at 14 lb/ft3 are 214.3 ft3 (Holmes, UW)', () => {
  expect(Math.abs(dailyVolume(3000, 14) - 214.3)).toBeLessThanOrEqual(0.1)
})

describe('arithmetic', () => {
  it('3,000 lb, 10 ft high, 5 in/day at 14.8 lb/ft3: 48.65 ft wide (formula of Garcia, SDSU)', () => {
    expect(Math.abs(uprightWidth(3000, 10) - 48.65)).toBeLessThanOrEqual(0.01)
  })
  it('672 ft2 by 80 ft at 14 lb/ft3: 376.3 tons, 250.9 days of 3,000 lb, 213.2 with 15 % lost', () => {
    const tons = tonsDry(672, 80, 14)
    expect(tons).toBeCloseTo(376.3, 1)
    expect(daysOfFeed(tons * 2000, 3000)).toBeCloseTo(250.9, 1)
    expect(daysOfFeed(tons * 2000, 3000, 15)).toBeCloseTo(213.2, 1)
    expect(daysOfFeed(1000, 0)).toBeUndefined()
  })
  it('the frustum of 96,576 ft3 holds 676.0 tons dry at 14 lb and 2,124.7 as fed at 44', () => {
    const v = volume({ section: 'trapezoid', widthFt: 92, topWidthFt: 20, heightFt: 12, lengthFt: 172 })
    expect((v * 14) / 2000).toBeCloseTo(676, 1)
    expect((v * 44) / 2000).toBeCloseTo(2124.7, 1)
  })
  it('3,000 lb at a foot a day, 214 ft2, sides 3 to 1: 6 ft high leaves a top of 17.7 ft, 8 ft one of 2.8, too narrow', () => {
    const top = (area: number, h: number) => area / h - 3 * h
    expect(top(214.3, 6)).toBeCloseTo(17.7, 1)
    expect(top(214.3, 8)).toBeCloseTo(2.8, 1)
    const s = sized({ lbDry: 750_000, dryLbFt3: 14, lbDay: 3000, rate: 12 })
    expect(sectionArea(s.shape)).toBeCloseTo(214.3, 1)
    expect(s.heightFt).toBeGreaterThan(6)
    expect(s.heightFt).toBeLessThan(8)
    expect(s.topWidthFt).toBeCloseTo(TRACTOR_TOP_FT, 6)
  })
  it('at 6 in/day the top of a pile 8 ft high is 29.6 ft and its base 77.6', () => {
    const s = sized({ lbDry: 1_500_000, dryLbFt3: 14, lbDay: 3000, rate: 6, reachFt: 8 })
    expect(s.topWidthFt).toBeCloseTo(29.6, 1)
    expect(s.widthFt).toBeCloseTo(77.6, 1)
  })
})

it('published: size for 12 in/day where the herd allows it (Holmes, UW)', () => {
  const s = sized({ lbDry: 2_000_000, dryLbFt3: 14.5, lbDay: 8000 })
  expect(s.rate).toBe(12)
  expect(s.inPerDay).toBeCloseTo(12, 6)
  expect(s.advice).toEqual([])
})

describe('a herd too small for both', () => {
  it('gets a slower face before a pile too low', () => {
    const s = sized({ lbDry: 200_000, dryLbFt3: 14.5, lbDay: 800 })
    expect(s.advice).toContain('slower-face')
    expect(s.heightFt).toBeGreaterThanOrEqual(LEAST_HEIGHT_FT)
  })
  it('and where even the least rate is too much, is told to build lower and narrower', () => {
    const s = sized({ lbDry: 100_000, dryLbFt3: 14.5, lbDay: 300 })
    expect(s.advice).toEqual(expect.arrayContaining(['below-least', 'lower', 'narrower']))
    expect(s.inPerDay).toBeGreaterThanOrEqual(4 - 1e-6)
  })
})

describe('what always holds', () => {
  const inputs = fc.record(
    {
      lbDry: fc.double({ min: 20_000, max: 2e7, noNaN: true }),
      dryLbFt3: fc.double({ min: 10, max: 20, noNaN: true }),
      lbDay: fc.double({ min: 200, max: 40_000, noNaN: true }),
      season: fc.constantFrom('warm' as const, 'cool' as const),
      widestFt: fc.double({ min: 20, max: 150, noNaN: true }),
    },
    { requiredKeys: ['lbDry', 'dryLbFt3'] },
  )
  it('the pile can be built, holds what it is to hold, and its face moves as said', () => {
    fc.assert(
      fc.property(inputs, i => {
        const s = sized(i)
        expect(shapeProblems(s.shape)).toEqual([])
        expect(s.heightFt).toBeLessThanOrEqual(REACH_FT + 1e-9)
        expect(volume(s.shape) * i.dryLbFt3).toBeCloseTo(s.lbDry, 3)
        expect(s.lbDry).toBeGreaterThanOrEqual(i.lbDry * 0.999)
        if (i.lbDay !== undefined) expect(inPerDay(i.lbDay, i.dryLbFt3, sectionArea(s.shape)).value).toBeCloseTo(s.inPerDay!, 9)
        if (s.rate !== undefined && s.advice.length === 0) expect(s.inPerDay! / s.rate).toBeCloseTo(1, 6)
        if (i.widestFt !== undefined && i.widestFt > 30 && i.lbDry > 2e5) expect(s.widthFt).toBeLessThanOrEqual(i.widestFt + 1e-6)
      }),
    )
  })
  it('what cannot be is named', () => {
    expect(sizePile({ lbDry: 0, dryLbFt3: 14 })).toEqual({ outside: ['feed'] })
    expect(sizePile({ lbDry: Number.NaN, dryLbFt3: 0, lbDay: -5, rate: 0 })).toEqual({ outside: ['feed', 'density', 'feeding', 'rate'] })
  })
  it('stored and lost again is what was to be fed', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 1e5, noNaN: true }),
        fc.integer({ min: 1, max: 500 }),
        fc.double({ min: 0, max: 40, noNaN: true }),
        (lb, days, loss) => {
          expect(daysOfFeed(toStore(lb, days, loss), lb, loss)).toBeCloseTo(days, 6)
        },
      ),
    )
  })
})
