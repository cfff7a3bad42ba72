import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { densityLoss, savedByDensity } from '../../src/figures/densityLoss.ts'

describe('published: Ruppel (1992), alfalfa, 180 days', () => {
  it.each([
    [10, 20.2],
    [14, 16.8],
    [15, 15.9],
    [16, 15.1],
    [18, 13.4],
    [22, 10],
  ])('%s lb/ft3 loses %s %%', (rho, loss) => {
    expect(densityLoss(rho)).toEqual({ value: loss })
  })
})

it.each([
  [11.4, 19],
  [12, 18.5],
  [17, 14.25],
  [20, 11.7],
])('arithmetic: straight lines between, %s lb/ft3 loses %s %%', (rho, loss) => {
  expect(Math.abs(densityLoss(rho).value - loss)).toBeLessThanOrEqual(0.05)
})

it('two pounds more save about 1.5 points (agronomist, agproud); the table gives 1.7', () => {
  expect(savedByDensity(14, 16)).toBeCloseTo(1.7, 9)
})

it('past the table it says so, never gains, never NaN; denser never loses more', () => {
  expect(densityLoss(8).outside).toEqual(['density'])
  expect(densityLoss(24).outside).toEqual(['density'])
  fc.assert(
    fc.property(fc.double(), fc.double(), (a, b) => {
      const [x, y] = [densityLoss(a).value, densityLoss(b).value]
      expect(x).toBeGreaterThan(0)
      if (a < b) expect(x).toBeGreaterThanOrEqual(y - 1e-9)
    }),
  )
})
