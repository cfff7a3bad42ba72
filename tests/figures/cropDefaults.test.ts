import { describe, expect, it } from 'vitest'
import { LISTED_CROPS } from '../../src/book/events.ts'
import { cropDefaults, usualBoxLb } from '../../src/figures/cropDefaults.ts'
import { porosity } from '../../src/figures/porosity.ts'

describe.each([...LISTED_CROPS, 'beet pulp'])('%s', crop => {
  const c = cropDefaults(crop)
  it('every default has its source, and the usual dry matter lies in the wanted range', () => {
    for (const k of [c.dmPct, c.ash, c.dryLbFt3, c.wagonLbFt3]) expect(k.source).not.toBe('')
    expect(c.dmPct.value).toBeGreaterThanOrEqual(c.dmRange[0])
    expect(c.dmPct.value).toBeLessThanOrEqual(c.dmRange[1])
  })
  it('the usual density leaves pores: wetter and denser than can be would not', () => {
    const phi = porosity(c.dryLbFt3.value / (c.dmPct.value / 100), c.dmPct.value, c.ash.value)
    expect(phi.outside).toBeUndefined()
    expect(phi.value).toBeGreaterThan(0.1)
    expect(phi.value).toBeLessThan(0.55)
  })
  it('a box holds 3 to 14 tons', () => {
    expect(usualBoxLb(crop)).toBeGreaterThan(6000)
    expect(usualBoxLb(crop)).toBeLessThan(28_000)
  })
})

it('published: 32 to 38 % dry matter for corn in piles (Purdue, SDSU), 60 to 70 % moisture for small grain (UNL)', () => {
  expect(cropDefaults('corn silage').dmPct.value).toBeGreaterThanOrEqual(32)
  expect(cropDefaults('corn silage').dmPct.value).toBeLessThanOrEqual(38)
  expect(100 - cropDefaults('small-grain silage').dmPct.value).toBeGreaterThanOrEqual(60)
  expect(100 - cropDefaults('small-grain silage').dmPct.value).toBeLessThanOrEqual(70)
})

it('a crop nobody listed is a forage with a wide spread', () => {
  expect(cropDefaults('triticale mix').dmSd).toBeGreaterThan(cropDefaults('haylage').dmSd)
  expect(cropDefaults('constructor').dmPct.value).toBe(36)
})
