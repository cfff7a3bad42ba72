import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boxLbFromVolume, boxVolume, boxWeight, LOAD_SD, wagonDensity } from '../../src/figures/boxWeight.ts'
import { cropDefaults, USUAL_BOX_FT3 } from '../../src/figures/cropDefaults.ts'
import { dryLb } from '../../src/figures/dryMatter.ts'
import { KGM3_PER_LBFT3 } from '../../src/units/measure.ts'

describe('published examples: Wiersma & Holmes, UW Focus on Forage 3:3', () => {
  it('a box of 8 by 16 by 6 ft is 768 ft3', () => {
    expect(boxVolume(16, 8, 6)).toBe(768)
  })
  it('768 ft3 at 5 lb/ft3 hold 3,840 lb dry, 1.92 tons (prints 1.9); at 40 % 9,600 lb, 4.8 tons', () => {
    const { value, outside } = boxLbFromVolume(768, 'haylage', 40)
    expect(outside).toBeUndefined()
    expect(value).toBeCloseTo(9600, 9)
    expect(value / 2000).toBeCloseTo(4.8, 9)
    expect(dryLb(value, 40)).toBeCloseTo(3840, 9)
    expect(dryLb(value, 40) / 2000).toBeCloseTo(1.92, 9)
  })
})

describe('arithmetic from published densities', () => {
  it('first cutting, 5.7 lb dry at 45.6 %, is 12.5 lb as fed a cubic foot: Wiersma & Holmes', () => {
    expect(boxLbFromVolume(100, 'haylage', 45.6, 1).value / 100).toBeCloseTo(12.5, 2)
  })
  it.each([
    [1, 45.6, 12.5],
    [2, 47.0, 10.6],
    [3, 51.7, 9.9],
    [4, 56.7, 8.8],
  ])('cutting %s at %s %%: %s lb as fed', (cut, dm, asFed) => {
    expect(boxLbFromVolume(100, 'haylage', dm, cut).value / 100).toBeCloseTo(asFed, 1)
  })
  it('112 kg of dry maize in a cubic metre of trailer is 6.99 lb/ft3 and at 35 % 320 kg/m3: maize trailer study, 423 loads', () => {
    expect(112 / KGM3_PER_LBFT3).toBeCloseTo(6.99, 2)
    expect(wagonDensity('corn silage').value).toBeCloseTo(112 / KGM3_PER_LBFT3, 2)
    expect((boxLbFromVolume(100, 'corn silage', 35).value / 100) * KGM3_PER_LBFT3).toBeCloseTo(320, 0)
  })
  it('ten loads come within 3.3 % of the mean: same study', () => {
    expect((1.96 * LOAD_SD) / Math.sqrt(10)).toBeCloseTo(0.033, 3)
  })
})

describe('tickets against what a box is said to hold', () => {
  it('the surest known is taken: tickets and said, tickets, said, the usual box', () => {
    expect(boxWeight('haylage', 12_000, { lb: 33_000, count: 3 }).from).toBe('tickets and said')
    expect(boxWeight('haylage', undefined, { lb: 33_000, count: 3 })).toMatchObject({ from: 'tickets', lb: 11_000 })
    expect(boxWeight('haylage', 12_000)).toMatchObject({ from: 'said', lb: 12_000 })
    expect(boxWeight('corn silage', undefined)).toMatchObject({
      from: 'usual',
      lb: (USUAL_BOX_FT3 * cropDefaults('corn silage').wagonLbFt3.value) / 0.35,
    })
    expect(boxWeight('haylage', 12_000, { lb: 0, count: 0 })).toMatchObject({ from: 'said', lb: 12_000 })
  })
  it('one ticket, by hand: 0.08^2/(0.08^2 + 0.053^2) = 0.695 of the way to it', () => {
    expect(boxWeight('haylage', 12_000, { lb: 11_000, count: 1 }).lb).toBeCloseTo(12_000 - 695, 0)
  })
  it('lies between the two, nearer the tickets and surer with each one more', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 4000, max: 30_000, noNaN: true }),
        fc.double({ min: 0.7, max: 1.3, noNaN: true }),
        fc.integer({ min: 1, max: 40 }),
        (said, light, count) => {
          const mean = said * light
          const few = boxWeight('haylage', said, { lb: mean * count, count })
          const more = boxWeight('haylage', said, { lb: mean * (count + 1), count: count + 1 })
          expect(few.lb).toBeGreaterThanOrEqual(Math.min(said, mean) - 1e-6)
          expect(few.lb).toBeLessThanOrEqual(Math.max(said, mean) + 1e-6)
          expect(Math.abs(more.lb - mean)).toBeLessThanOrEqual(Math.abs(few.lb - mean) + 1e-6)
          expect(more.sd).toBeLessThan(few.sd)
        },
      ),
    )
  })
})

it('a box or a dry matter that cannot be says so and stays a number', () => {
  expect(boxLbFromVolume(Number.NaN, 'haylage', 40)).toEqual({ value: 0, outside: ['box-volume'] })
  expect(boxLbFromVolume(700, 'haylage', 0).outside).toEqual(['dry-matter'])
  fc.assert(
    fc.property(fc.double(), fc.double(), fc.constantFrom('haylage', 'corn silage', 'beet pulp'), (v, dm, crop) => {
      expect(boxLbFromVolume(v, crop, dm).value).not.toBeNaN()
    }),
  )
})
