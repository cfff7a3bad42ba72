import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exposureDays, faceFor, faceLoss, feedingFor, inPerDay, rollBackFt, seasonRate, standOffFt } from '../../src/figures/faceRate.ts'
import { sectionArea } from '../../src/figures/shape.ts'

describe('published: Holmes, UW', () => {
  it('a face of 8 ft that moves 6 in/day moves 3 when the pile is raised to 16 ft and fed as before', () => {
    const fed = feedingFor(6, 14, 8 * 40)
    expect(inPerDay(fed, 14, 16 * 40).value).toBeCloseTo(3, 9)
  })
  it('air reaches 3 ft: at 1 ft a day feed has 3 days of it, at half a foot 6', () => {
    expect(exposureDays(12)).toBe(3)
    expect(exposureDays(6)).toBe(6)
  })
})

it('arithmetic: a face of 672 ft2 at 14 lb/ft3 moves 3.83 in/day under 3,000 lb, less than the 4 of summer (UW)', () => {
  const area = sectionArea({ section: 'trapezoid', widthFt: 92, topWidthFt: 20, heightFt: 12, lengthFt: 152 })
  const rate = inPerDay(3000, 14, area).value
  expect(rate).toBeCloseTo(3.83, 2)
  expect(rate).toBeLessThan(seasonRate('2025-07-01').least)
  expect(rate).toBeGreaterThan(seasonRate('2025-01-15').least)
})

it('arithmetic: nobody within 36 ft of a face of 12 ft (Bolsen & Bolsen, three times its height)', () => {
  expect(standOffFt(12)).toBe(36)
})

it('seasons turn round south of the equator', () => {
  expect(seasonRate('2025-07-01', true)).toEqual({ season: 'cool', least: 3, goal: 6 })
  expect(seasonRate('2025-12-31', true)).toEqual({ season: 'warm', least: 4, goal: 10 })
  expect(seasonRate('2025-05-01').season).toBe('warm')
  expect(seasonRate('2025-09-30').season).toBe('warm')
  expect(seasonRate('2025-10-01').season).toBe('cool')
})

it('three days of feed uncovered at most (Holmes): 8 in/day is 2 ft', () => {
  expect(rollBackFt(8)).toBe(2)
})

it('loss at the face stays within the published 1 to 15 % (Hay & Forage Grower 3112), slow to fast up to 10 points (Garcia)', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 60, noNaN: true }),
      fc.double({ min: 0, max: 60, noNaN: true }),
      fc.constantFrom('warm' as const, 'cool' as const, undefined),
      (a, b, season) => {
        const slow = faceLoss(Math.min(a, b), season)
        const fast = faceLoss(Math.max(a, b), season)
        expect(slow.mid).toBeGreaterThanOrEqual(fast.mid)
        for (const l of [slow, fast]) {
          expect(l.low).toBeGreaterThanOrEqual(1)
          expect(l.low).toBeLessThanOrEqual(l.mid)
          expect(l.mid).toBeLessThanOrEqual(l.high)
          expect(l.high).toBeLessThanOrEqual(15)
        }
      },
    ),
  )
  expect(faceLoss(3, 'warm').mid - faceLoss(6, 'warm').mid).toBeLessThanOrEqual(10)
})

describe('what always holds', () => {
  const positive = fc.double({ min: 0.5, max: 1e5, noNaN: true })
  it('face, feeding and rate come back from one another', () => {
    fc.assert(
      fc.property(positive, positive, positive, (lb, rho, area) => {
        const rate = inPerDay(lb, rho, area).value
        expect(feedingFor(rate, rho, area) / lb).toBeCloseTo(1, 9)
        expect(faceFor(lb, rho, rate).value / area).toBeCloseTo(1, 9)
      }),
    )
  })
  it('without a face or a density it says so, with 0 and not NaN', () => {
    expect(inPerDay(3000, 0, 600)).toEqual({ value: 0, outside: ['density'] })
    expect(inPerDay(3000, 14, 0)).toEqual({ value: 0, outside: ['face-area'] })
    expect(inPerDay(Number.NaN, 14, 500)).toEqual({ value: 0, outside: ['feeding'] })
    expect(exposureDays(0)).toBe(90)
  })
})
