import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { effluent, seepageLoss } from '../../src/figures/effluent.ts'

it.each([
  [16, 152.2],
  [18, 109.1],
  [20, 73.4],
  [25, 17.0],
  [28, 5.6],
])('arithmetic of Bastiman (1976), from memory: %s %% seeps %s L/t', (dm, litres) => {
  expect(Math.abs(effluent(dm).value - litres)).toBeLessThanOrEqual(0.1)
})

it('arithmetic: 17.0 L/t at 25 %, 6 % of it dry, are 1.02 kg of 250, 0.41 %', () => {
  expect(seepageLoss(25).range.mid).toBeCloseTo(0.408, 3)
})

describe('published', () => {
  it('none in bunkers below 71 % moisture: Purdue NCH-49', () => {
    expect(effluent(29).value).toBe(0)
    expect(effluent(35)).toEqual({ value: 0 })
  })
  it('at most 4.5 % of the dry matter: Agroscope (2004)', () => {
    expect(seepageLoss(15).range.mid).toBeLessThanOrEqual(4.5)
  })
})

it('wetter never seeps less; a dry matter that is none of silage says so; never NaN', () => {
  expect(effluent(5).outside).toEqual(['dry-matter'])
  fc.assert(
    fc.property(fc.double(), fc.double(), (a, b) => {
      const [x, y] = [effluent(a).value, effluent(b).value]
      expect(x).toBeGreaterThanOrEqual(0)
      if (a < b) expect(x).toBeGreaterThanOrEqual(y)
      const { low, mid, high } = seepageLoss(a).range
      expect(low).toBeLessThanOrEqual(mid)
      expect(mid).toBeLessThanOrEqual(high)
    }),
  )
})
