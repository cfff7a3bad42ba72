import { describe, expect, it } from 'vitest'
import { heatFlags, stableHours } from '../../src/figures/temperature.ts'

describe('published flags', () => {
  it.each([
    [{ coreF: 95, harvestF: 70 }, ['core-hot']], // more than 20 F over the air at harvest (feed company)
    [{ coreF: 90, harvestF: 70 }, []],
    [{ coreF: 80, spotF: 90 }, ['spot-hot']], // about 10 F over the core (Borreani & Tabacco)
    [{ coreF: 80, spotF: 88 }, []],
    [{ spotF: 120 }, ['protein-bound']], // over 115 F
    [{ coreF: 118, spotF: 130, harvestF: 75 }, ['core-hot', 'spot-hot', 'protein-bound']],
    [{}, []],
    [{ coreF: Number.NaN, harvestF: 70 }, []],
  ])('%o: %o', (probe, codes) => {
    expect(heatFlags(probe)).toEqual(codes)
  })
})

it('a sample is stable until it is 2 C (3.6 F) over the air (Kung, from memory)', () => {
  const readings = [0, 24, 48, 72, 96].map((hour, i) => ({ hour, airF: 72, sampleF: [72, 73, 75.5, 75.7, 90][i]! }))
  expect(stableHours(readings)).toBe(72)
  expect(stableHours(readings.slice(0, 3))).toBeUndefined()
  expect(stableHours([])).toBeUndefined()
})
