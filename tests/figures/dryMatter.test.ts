import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  asFedLb,
  blendDensity,
  blendDm,
  dmFromMoisture,
  dmHeld,
  dmOfSample,
  dryLb,
  microwaveDry,
  moistureFromDm,
} from '../../src/figures/dryMatter.ts'

describe('published examples', () => {
  it('100 g that dry to 35 g are 35 % dry matter: Jacobsen, microwave handout', () => {
    expect(dmOfSample(100, 35)).toEqual({ value: 35 })
  })
  it('101 g that dry to 85 g held 15.84 % moisture (prints 16): straw microwave sheet', () => {
    expect(moistureFromDm(dmOfSample(101, 85).value).value).toBeCloseTo(15.84, 2)
  })
  it('16.8 lb of dry corn silage at 28.5 % is 58.9 lb as fed: Penn State', () => {
    expect(Math.abs(asFedLb(16.8, 28.5) - 58.9)).toBeLessThan(0.1)
  })
  it('68 lb of corn silage at 27 % and not 37: 18.36 lb dry for 25.16, 1.46 lb of protein for 2.0 (Dairy Herd)', () => {
    expect(dryLb(68, 37)).toBeCloseTo(25.16, 2)
    expect(dryLb(68, 27)).toBeCloseTo(18.36, 2)
    expect((2.0 * dryLb(68, 27)) / dryLb(68, 37)).toBeCloseTo(1.46, 2)
  })
})

describe('arithmetic of the definitions', () => {
  it('a plate of 20 g, 120 g wet with it, 55 dry: 35 %', () => {
    expect(dmOfSample(120, 55, 20).value).toBe(35)
  })
  it('100 tons at 38 % and 150 at 33 % make 35.0 %', () => {
    expect(
      blendDm([
        { lb: 200_000, dmPct: 38 },
        { lb: 300_000, dmPct: 33 },
      ]),
    ).toBeCloseTo(35, 9)
  })
  it('a band half 14.8 and half 14.5 lb/ft3 by weight is 14.65', () => {
    expect(
      blendDensity([
        { lb: 1, lbFt3: 14.8 },
        { lb: 1, lbFt3: 14.5 },
      ]),
    ).toBeCloseTo(14.65, 2)
  })
})

it('the handout that prints (wet - dry)/100 is not followed: 200 g that dry to 70 are 65 % moisture, not 130', () => {
  expect(moistureFromDm(dmOfSample(200, 70).value).value).toBe(65)
})

describe('drying in a microwave: until under 1 g changes, and the last good weight where it charred', () => {
  it.each([
    [[60, 42, 37, 35.4, 35], undefined, { value: 35 }],
    [[60, 42, 35.9, 35], undefined, { value: 35 }],
    [[60, 42, 36, 35], undefined, { value: 35, outside: ['not-dry-yet'] }],
    [[60, 42, 38], undefined, { value: 38, outside: ['not-dry-yet'] }],
    [[60, 42, 36, 29], 3, { value: 36 }],
    [[], undefined, { value: 0, outside: ['no-weighing', 'not-dry-yet'] }],
  ] as const)('%o', (weighings, charredAt, expected) => {
    const { outside, ...rest } = microwaveDry(weighings, charredAt)
    expect(rest.value).toBe(expected.value)
    expect(outside?.[0]).toBe('outside' in expected ? expected.outside[0] : undefined)
  })
})

describe('a dry matter that cannot be', () => {
  it.each([5, 95, 140, -3, Number.NaN, Number.POSITIVE_INFINITY])('%s %%', pct => {
    const f = dmHeld(pct)
    expect(f.outside).toEqual(['dry-matter'])
    expect(f.value).toBeGreaterThan(0)
    expect(f.value).toBeLessThan(100)
  })
  it('weights that do not fit one another', () => {
    expect(dmOfSample(100, 120).outside).toContain('sample-weights')
    expect(dmOfSample(20, 10, 20).outside).toContain('sample-weights')
  })
})

const pct = fc.double({ min: 15, max: 80, noNaN: true })
const lb = fc.double({ min: 1, max: 1e7, noNaN: true })

describe('what always holds', () => {
  it('dry to as fed and back; moisture to dry matter and back', () => {
    fc.assert(
      fc.property(lb, pct, (w, p) => {
        expect(dryLb(asFedLb(w, p), p) / w).toBeCloseTo(1, 12)
        expect(dmFromMoisture(moistureFromDm(p).value).value).toBeCloseTo(p, 9)
      }),
    )
  })
  it('a blend keeps the dry matter of its parts and lies between them', () => {
    fc.assert(
      fc.property(fc.array(fc.record({ lb, dmPct: pct }), { minLength: 1, maxLength: 8 }), parts => {
        const whole = parts.reduce((s, p) => s + p.lb, 0)
        const blend = blendDm(parts)!
        expect(dryLb(whole, blend) / parts.reduce((s, p) => s + dryLb(p.lb, p.dmPct), 0)).toBeCloseTo(1, 9)
        expect(blend).toBeGreaterThanOrEqual(Math.min(...parts.map(p => p.dmPct)) - 1e-9)
        expect(blend).toBeLessThanOrEqual(Math.max(...parts.map(p => p.dmPct)) + 1e-9)
      }),
    )
  })
  it('nothing blended is nothing, not NaN', () => {
    expect(blendDm([])).toBeUndefined()
    expect(blendDensity([{ lb: 0, lbFt3: 0 }])).toBeUndefined()
  })
})
