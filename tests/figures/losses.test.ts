import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chained, FERMENTATION, FILLING, type LossInputs, losses } from '../../src/figures/losses.ts'

it('arithmetic: 3, 2, 5 and 5 % one after the other are 14.21 %, not 15', () => {
  expect(chained([3, 2, 5, 5])).toBeCloseTo(14.21, 2)
})

it('never more than all of it, never less than nothing', () => {
  expect(chained([120, 10])).toBe(100)
  expect(chained([-5])).toBe(0)
})

it('published: fermentation takes 1.5 to 6 % (Hay & Forage Grower 3112); filling 1 to 3, from memory', () => {
  expect(FERMENTATION).toMatchObject({ low: 1.5, high: 6 })
  expect(FILLING).toMatchObject({ low: 1, high: 3 })
})

const good: LossInputs = { dmPct: 35, cover: 'plastic', dryLbFt3: 15, inPerDay: 6 }

describe('against published totals; what a day of air costs at the face was set by the first, the others were not used', () => {
  it('a well-managed pile loses about 15 % (Hay & Forage Grower 3112), a good one 15 to 25 (Roach & Kammel, UW)', () => {
    const { total } = losses(good)
    expect(total.mid).toBeGreaterThan(12)
    expect(total.mid).toBeLessThan(18)
    expect(total.low).toBeLessThan(15)
    expect(total.high).toBeGreaterThan(18)
  })
  it('an unpacked pile that lay open loses over 30 % (Roach & Kammel)', () => {
    expect(losses({ ...good, cover: 'none', dryLbFt3: 10, inPerDay: 4, season: 'warm' }).total.mid).toBeGreaterThan(30)
  })
  it('thin packing, 11.4 lb/ft3, is a case of 20 to 25 % (Bolsen): within the range', () => {
    const { total } = losses({ ...good, dryLbFt3: 11.4, season: 'warm' })
    expect(total.low).toBeLessThan(25)
    expect(total.high).toBeGreaterThan(20)
  })
  it('plastic at once lost 12.0 % in all and no cover 34.2 (six methods of covering): both within the ranges', () => {
    const covered = losses({ ...good, season: 'cool' }).total
    expect(covered.low).toBeLessThan(12)
    expect(covered.high).toBeGreaterThan(12)
    const open = losses({ ...good, cover: 'none' }).total
    expect(open.low).toBeLessThan(34.2)
    expect(open.high).toBeGreaterThan(34.2)
  })
})

const inputs: fc.Arbitrary<LossInputs> = fc.record(
  {
    dmPct: fc.double({ min: 15, max: 75, noNaN: true }),
    cover: fc.constantFrom('none' as const, 'plastic' as const, 'two sheets' as const, 'barrier film' as const),
    daysUncovered: fc.double({ min: 0, max: 60, noNaN: true }),
    dryLbFt3: fc.double({ min: 6, max: 26, noNaN: true }),
    inPerDay: fc.double({ min: 0, max: 30, noNaN: true }),
    season: fc.constantFrom('warm' as const, 'cool' as const),
    surfaceFt2: fc.double({ min: 500, max: 40_000, noNaN: true }),
    volumeFt3: fc.double({ min: 2000, max: 400_000, noNaN: true }),
  },
  { requiredKeys: ['dmPct', 'cover'] },
)

describe('what always holds', () => {
  it('never bare: low, middle and high in order, between 0 and 100; the total is the causes chained', () => {
    fc.assert(
      fc.property(inputs, i => {
        const { causes, total } = losses(i)
        for (const r of [total, ...Object.values(causes)]) {
          expect(0 <= r.low && r.low <= r.mid && r.mid <= r.high && r.high <= 100).toBe(true)
        }
        expect(total.low).toBeLessThan(total.high)
        // Mass balance: what is left is what each cause leaves of what the one before left.
        expect(100 - total.mid).toBeCloseTo(
          Object.values(causes).reduce((left, c) => left - (left * c.mid) / 100, 100),
          9,
        )
      }),
    )
  })
  it('denser, drier up to 29 %, covered sooner and fed faster never lose more', () => {
    fc.assert(
      fc.property(inputs, i => {
        const full = { daysUncovered: 5, dryLbFt3: 14, inPerDay: 6, ...i }
        const mid = losses(full).total.mid + 1e-9
        expect(losses({ ...full, dryLbFt3: full.dryLbFt3 + 1 }).total.mid).toBeLessThanOrEqual(mid)
        expect(losses({ ...full, dmPct: full.dmPct + 1 }).total.mid).toBeLessThanOrEqual(mid)
        expect(losses({ ...full, inPerDay: full.inPerDay + 1 }).total.mid).toBeLessThanOrEqual(mid)
        expect(losses({ ...full, daysUncovered: 0 }).total.mid).toBeLessThanOrEqual(mid)
        expect(losses({ ...full, cover: 'barrier film', daysUncovered: 0 }).total.mid).toBeLessThanOrEqual(mid)
      }),
    )
  })
  it('input that cannot be is named and leaves numbers', () => {
    const { total, outside } = losses({ dmPct: 95, cover: 'plastic', dryLbFt3: Number.NaN, inPerDay: Number.NaN, daysUncovered: -1 })
    expect(outside).toEqual(['density', 'dry-matter', 'days-uncovered'])
    expect(Number.isFinite(total.low + total.mid + total.high)).toBe(true)
  })
})
