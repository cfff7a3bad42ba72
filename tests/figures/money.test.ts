import { expect, it } from 'vitest'
import { coverCostPerTon, feedValue, lossCost, payback } from '../../src/figures/money.ts'

it('without a price there is no money', () => {
  expect(feedValue(100_000, undefined)).toBeUndefined()
  expect(lossCost(100_000, 15, undefined)).toBeUndefined()
  expect(coverCostPerTon(undefined, 100_000)).toBeUndefined()
  expect(payback(100_000, undefined, 500)).toBeUndefined()
  expect(payback(100_000, 60, undefined)).toBeUndefined()
  expect(feedValue(100_000, Number.NaN)).toBeUndefined()
  expect(coverCostPerTon(900, 0)).toBeUndefined()
})

it('arithmetic by hand: 500 tons at 60, 15 % of it, 900 of cover over it', () => {
  expect(feedValue(1_000_000, 60)).toBe(30_000)
  expect(lossCost(1_000_000, 15, 60)).toBe(4500)
  expect(coverCostPerTon(900, 1_000_000)).toBe(1.8)
})

it('arithmetic by hand: 240 of sheet that keeps 32 tons at 60 brings back 8 for 1 (about what Kansas State and Hoard’s print)', () => {
  expect(payback(64_000, 60, 240)).toBe(8)
})
