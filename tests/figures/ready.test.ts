import { describe, expect, it } from 'vitest'
import { readyOn, siloGas, targetPh } from '../../src/figures/ready.ts'

it('arithmetic of the three weeks: filled 20 September 2025, the gas is gone 11 October (NASD, MSU, Penn State)', () => {
  expect(siloGas('2025-09-20', '2025-09-22')).toEqual({ clearOn: '2025-10-11', stage: 'worst' })
  expect(siloGas('2025-09-20', '2025-09-24').stage).toBe('danger')
  expect(siloGas('2025-09-20', '2025-10-10').stage).toBe('danger')
  expect(siloGas('2025-09-20', '2025-10-11').stage).toBe('clear')
})

it('ready three weeks after sealing, over the end of a year and a leap day', () => {
  expect(readyOn('2023-12-20', '2024-01-01')).toEqual({ readyOn: '2024-01-10', betterOn: '2024-02-18', daysToGo: 9, ready: false })
  expect(readyOn('2024-02-15', '2024-03-07')).toMatchObject({ readyOn: '2024-03-07', daysToGo: 0, ready: true })
  expect(readyOn('2024-02-15', '2024-06-01')).toMatchObject({ daysToGo: 0, ready: true })
})

describe('published: pH that holds clostridia down, Hay & Forage Grower 4430', () => {
  it.each([
    ['corn silage', 25, 4.25],
    ['corn silage', 35, 4.6],
    ['grass silage', 25, 4.25],
    ['haylage', 25, 4.4],
    ['haylage', 35, 5],
  ])('%s at %s %%: %s', (crop, dm, ph) => {
    expect(targetPh(crop, dm)).toEqual({ value: ph })
  })
  it('arithmetic: half way at 30 %, 4.43 and 4.70', () => {
    expect(targetPh('corn silage', 30).value).toBeCloseTo(4.425, 9)
    expect(targetPh('haylage', 30).value).toBeCloseTo(4.7, 9)
  })
  it('past the published points it says so', () => {
    expect(targetPh('corn silage', 45)).toEqual({ value: 4.6, outside: ['dry-matter'] })
  })
})
