import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { form, formsOf, passed, passing, placeOf } from '../../src/figures/farm/advance.ts'

const ramp = fc.double({ min: 0, max: 0.5, noNaN: true })
const share = fc.double({ min: 0, max: 1, noNaN: true })

describe('how a pile goes by as the face moves', () => {
  // An upright pile: length and weight go together.
  it('is even where the ends are upright', () => {
    for (const u of [0, 0.3, 1]) expect(passed(form(0, 0, 1), u)).toBeCloseTo(u, 12)
  })

  // By hand: the integral of (x / a)^0.85 over a ramp of a quarter is 0.25 / 1.85 of the full section's length; the half between is full.
  it('is slow in the ramps', () => {
    const f = form(0.25, 0.25, 1)
    expect(f.area).toBeCloseTo(0.5 + 0.5 / 1.85, 12)
    expect(passed(f, 0.25)).toBeCloseTo(0.25 / 1.85 / (0.5 + 0.5 / 1.85), 12)
    expect(passed(f, 0.5)).toBeCloseTo(0.5, 12)
  })

  // A crowned end that keeps its base holds half of a full one, a flat-topped one with sides of 3 to 1 (base 92, 12 high) 0.607 of it
  // (14,688 ft3 of 672 x 36): the guess lies between.
  it('has ramps that hold what a ramp can hold', () => {
    const share = (form(0.3, 0, 1).area - 0.7) / 0.3
    expect(share).toBeGreaterThan(0.5)
    expect(share).toBeLessThan(0.607)
  })

  it('agrees with its slope added up in small steps, and comes back', () => {
    fc.assert(
      fc.property(ramp, ramp, share, (front, back, u) => {
        const f = form(front, back, 1)
        const n = 4000
        let sum = 0
        for (let i = 0; i < n; i++) sum += (passing(f, ((i + 0.5) / n) * u) * u) / n
        expect(passed(f, u)).toBeCloseTo(sum, 3)
        expect(passed(f, placeOf(f, passed(f, u)))).toBeCloseTo(passed(f, u), 6)
      }),
      { numRuns: 60 },
    )
  })

  it('guesses forms that are likely together, whatever the size', () => {
    for (const [length, height] of [
      [40, 12],
      [120, 9],
      [300, undefined],
    ] as const) {
      const forms = formsOf(length, height)
      expect(forms.reduce((s, f) => s + f.weight, 0)).toBeCloseTo(1, 9)
      for (const f of forms) expect(f.front + f.back).toBeLessThanOrEqual(1)
    }
  })
})
