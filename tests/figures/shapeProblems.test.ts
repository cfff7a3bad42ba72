import { describe, expect, it } from 'vitest'
import { type PileShape, shapeProblems } from '../../src/figures/shape.ts'

describe('shapes that cannot be', () => {
  const good: PileShape = { section: 'crowned', widthFt: 40, heightFt: 8, lengthFt: 100 }
  it.each([
    [good, []],
    [{ ...good, heightFt: 21 }, ['height-above-half-width']],
    [{ ...good, heightFt: -1 }, ['height-impossible']],
    [{ ...good, widthFt: Number.NaN }, ['width-impossible']],
    [{ ...good, lengthFt: 0 }, ['length-impossible']],
    [{ ...good, topWidthFt: 44 }, ['top-wider-than-base']],
    [{ ...good, wallFt: 9 }, ['wall-above-crown']],
    [{ ...good, rampStartFt: 60, rampEndFt: 60 }, ['ramps-longer-than-pile']],
    [{ ...good, rampStartFt: -2 }, ['ramp-impossible']],
    [{ ...good, heightFt: 4, slope: 0.1 }, ['slope-runs-out']],
    [{ ...good, slope: 0.5 }, ['slope-impossible', 'slope-runs-out']],
  ] as [PileShape, string[]][])('%o', (s, codes) => {
    expect(shapeProblems(s)).toEqual(codes)
  })
})
