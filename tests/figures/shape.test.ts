import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  arcLength,
  averageDepth,
  coverArea,
  crownLength,
  faceArea,
  heightAt,
  type PileShape,
  sectionArea,
  volume,
  volumeBetween,
} from '../../src/figures/shape.ts'
import { slopeDeg } from '../../src/figures/sizing.ts'
import { integral, math } from './shapeNumeric.ts'

const crowned = (widthFt: number, heightFt: number, lengthFt = 100): PileShape => ({ section: 'crowned', widthFt, heightFt, lengthFt })
const segment = (widthFt: number, heightFt: number, lengthFt = 100): PileShape => ({
  ...crowned(widthFt, heightFt, lengthFt),
  section: 'segment',
})
const flat = (topWidthFt: number, s: number, heightFt: number, topLengthFt: number): PileShape => ({
  section: 'trapezoid',
  topWidthFt,
  heightFt,
  widthFt: topWidthFt + 2 * s * heightFt,
  lengthFt: topLengthFt + 2 * s * heightFt,
  rampStartFt: s * heightFt,
  rampEndFt: s * heightFt,
})

// Closed forms of plane and solid geometry, worked by hand (CRC Standard Mathematical Tables, mensuration formulas).
describe('arithmetic of the closed forms', () => {
  it('trapezoid with a top of 20 ft, sides 3 to 1, 12 ft high: base 92, 672 ft2', () => {
    const s = flat(20, 3, 12, 100)
    expect(s.widthFt).toBe(92)
    expect(sectionArea(s)).toBe(672)
  })
  it('circular segment on a chord of 60 ft, 10 ft high: 408.75 ft2, arc 64.35 ft', () => {
    expect(sectionArea(segment(60, 10))).toBeCloseTo(408.75, 2)
    expect(arcLength(segment(60, 10))).toBeCloseTo(64.35, 2)
  })
  it('circular segment on a chord of 80 ft, 12 ft high: 651.38 ft2, arc 84.72 ft', () => {
    expect(sectionArea(segment(80, 12))).toBeCloseTo(651.38, 2)
    expect(arcLength(segment(80, 12))).toBeCloseTo(84.72, 2)
  })
  it('parabola on a base of 80 ft, 12 ft high: 640 ft2, arc 84.57 ft; of 60 and 10: 400, 64.19', () => {
    expect(sectionArea(crowned(80, 12))).toBeCloseTo(640, 9)
    expect(arcLength(crowned(80, 12))).toBeCloseTo(84.57, 2)
    expect(sectionArea(crowned(60, 10))).toBeCloseTo(400, 9)
    expect(arcLength(crowned(60, 10))).toBeCloseTo(64.19, 2)
  })
  it('a pile sloped on four sides is the frustum: 96,576 ft3 and 55,333.3 ft3, not base x height', () => {
    expect(volume(flat(20, 3, 12, 100))).toBeCloseTo(96_576, 6)
    expect(volume(flat(10, 4, 10, 60))).toBeCloseTo(55_333.33, 1)
    expect(volume(flat(20, 3, 12, 100))).not.toBeCloseTo(172 * 92 * 12, -4)
  })
  it('one ramp with ends and sides 3 to 1 is 14,688 ft3, the prismoid 36/6 (0 + 4 x 444 + 672)', () => {
    const s = flat(20, 3, 12, 100)
    expect(faceArea(s, 18)).toBeCloseTo(444, 9)
    expect(volumeBetween(s, 0, 36)).toBeCloseTo(14_688, 6)
    expect(volumeBetween(s, 136, 172)).toBeCloseTo(14_688, 6)
  })
  it('cover: slopes of 37.95 ft make the way across 95.9 ft, 103.9 with a skirt of 4 ft; surface 16,571.8 ft2', () => {
    const s = flat(20, 3, 12, 100)
    expect(arcLength(s) + 2 * 4).toBeCloseTo(103.9, 1)
    expect(coverArea(s)).toBeCloseTo(16_571.8, 1)
  })
  it('slopes of 3, 4 and 6 to 1 are 18.43, 14.04 and 9.46 degrees', () => {
    expect([3, 4, 6].map(slopeDeg).map(x => x.toFixed(2))).toEqual(['18.43', '14.04', '9.46'])
  })
  it('a ramp of a crowned pile holds half of what the same length at full height does', () => {
    expect(volumeBetween(crowned(40, 8), 0, 24)).toBeCloseTo((24 * (2 / 3) * 40 * 8) / 2, 8)
  })
  it('average depth is the section over the base: two thirds of the crown for a parabola', () => {
    expect(averageDepth(crowned(40, 9))).toBeCloseTo(6, 9)
  })
})

/** The surface above the slab, straight from the words of the docstring: half a section on each side, one of them on the wall. */
const surface = (s: PileShape) => {
  const ramp = (r: number | undefined) => Math.min(r ?? 3 * s.heightFt, s.lengthFt / 2)
  const wall = s.wallFt ?? 0
  const top = s.topWidthFt ?? Math.max(s.widthFt - 6 * s.heightFt, s.widthFt / 3)
  const full = (x: number) => s.heightFt + (s.slope ?? 0) * (x - s.lengthFt / 2)
  const crown = (x: number) => full(x) * Math.min(1, x / ramp(s.rampStartFt), (s.lengthFt - x) / ramp(s.rampEndFt))
  const half = s.widthFt / 2
  return (u: number, x: number): number => {
    const low = u < 0 ? Math.min(wall, crown(x)) : 0
    const h = crown(x) - low
    const d = Math.abs(u)
    if (h <= 0) return low
    if (s.section === 'crowned') return low + h * (1 - (d / half) ** 2)
    if (s.section === 'segment') {
      const r = (half ** 2 + h ** 2) / (2 * h)
      return low + Math.sqrt(r ** 2 - d ** 2) - (r - h)
    }
    // The full side's plane, cut level at the crown of this station.
    const side = low + ((full(x) - low) * (half - d)) / (half - top / 2)
    return Math.min(crown(x), side)
  }
}

const SHAPES: [string, PileShape][] = [
  ['crowned', { section: 'crowned', widthFt: 42, heightFt: 9, lengthFt: 110 }],
  ['crowned by a wall', { section: 'crowned', widthFt: 42, heightFt: 9, lengthFt: 110, wallFt: 4 }],
  ['crowned on a falling slab', { section: 'crowned', widthFt: 36, heightFt: 8, lengthFt: 120, slope: 0.02, rampStartFt: 10 }],
  ['segment', { section: 'segment', widthFt: 50, heightFt: 11, lengthFt: 90, rampStartFt: 20, rampEndFt: 40 }],
  ['segment by a wall, slab falling', { section: 'segment', widthFt: 50, heightFt: 11, lengthFt: 90, wallFt: 5, slope: 0.03 }],
  ['flat top', { section: 'trapezoid', widthFt: 64, heightFt: 8, lengthFt: 130, topWidthFt: 16 }],
  ['flat top by a wall', { section: 'trapezoid', widthFt: 64, heightFt: 8, lengthFt: 130, topWidthFt: 16, wallFt: 3 }],
  [
    'flat top by a wall, slab rising',
    { section: 'trapezoid', widthFt: 64, heightFt: 8, lengthFt: 130, topWidthFt: 16, wallFt: 3, slope: -0.015 },
  ],
  ['flat top as usual', { section: 'trapezoid', widthFt: 40, heightFt: 8, lengthFt: 60 }],
]

describe.each(SHAPES)('%s against numeric integration (mathjs solveODE)', (_, s) => {
  const y = surface(s)
  const half = s.widthFt / 2
  const acrossAt = (x: number) => integral(u => y(u, x), -half, 0) + integral(u => y(u, x), 0, half)

  it('section at stations on the ramps and between', () => {
    for (const x of [2, 15, s.lengthFt / 2, s.lengthFt - 6]) {
      expect(faceArea(s, x) / acrossAt(x)).toBeCloseTo(1, 5)
    }
  })
  it('height at stations', () => {
    for (const x of [1, 20, 50, s.lengthFt - 3]) expect(heightAt(s, x)).toBeCloseTo(y(0, x), 9)
  })
  it('volume, whole and between stations', () => {
    for (const [a, z] of [
      [0, s.lengthFt],
      [3, 17],
      [12, 71],
      [s.lengthFt - 30, s.lengthFt],
    ] as const) {
      expect(volumeBetween(s, a, z) / integral(x => faceArea(s, x), a, z)).toBeCloseTo(1, 6)
    }
  })
})

describe('lengths and surfaces against numeric integration', () => {
  const arcOfExpression = (expression: string, scope: Record<string, number>, b: number) => {
    const slope = math.derivative(expression, 'x').compile()
    return integral(x => Math.hypot(1, slope.evaluate({ ...scope, x }) as number), -b / 2, b / 2)
  }
  it.each([
    [60, 10],
    [32, 7],
    [41, 3],
    [80, 20],
  ])('parabola on %s ft, %s ft high', (b, h) => {
    expect(arcLength(crowned(b, h))).toBeCloseTo(arcOfExpression('h*(1-(2*x/b)^2)', { b, h }, b), 5)
  })
  it.each([
    [60, 10],
    [32, 7],
    [41, 3],
  ])('segment on %s ft, %s ft high', (b, h) => {
    const r = (b * b) / 8 / h + h / 2
    expect(arcLength(segment(b, h))).toBeCloseTo(arcOfExpression('sqrt(r^2-x^2)-(r-h)', { r, h }, b), 5)
  })
  it('a wall takes its height off the arc on its side', () => {
    const with4 = arcLength({ ...crowned(42, 9), wallFt: 4 })
    expect(with4).toBeCloseTo((arcLength(crowned(42, 9)) + arcLength(crowned(42, 5))) / 2, 9)
  })
  it.each(SHAPES)('surface: %s', (_, s) => {
    const y = surface(s)
    // The middle-point rule on a fine grid, slopes by differences.
    const [nu, nx, step] = [300, 300, 1e-5]
    let sum = 0
    for (let i = 0; i < nu; i++) {
      for (let j = 0; j < nx; j++) {
        const u = s.widthFt * ((i + 0.5) / nu - 0.5)
        const x = (s.lengthFt * (j + 0.5)) / nx
        sum += Math.hypot(1, (y(u + step, x) - y(u - step, x)) / (2 * step), (y(u, x + step) - y(u, x - step)) / (2 * step))
      }
    }
    expect((sum * s.widthFt * s.lengthFt) / nu / nx / coverArea(s)).toBeCloseTo(1, 3)
  })
  it('an end that stands upright adds its face', () => {
    const s: PileShape = { section: 'trapezoid', widthFt: 30, topWidthFt: 30, heightFt: 6, lengthFt: 50, rampStartFt: 0, rampEndFt: 0 }
    expect(volume(s)).toBeCloseTo(30 * 6 * 50, 6)
    expect(coverArea(s)).toBeCloseTo(30 * 50 + 2 * 6 * 50 + 2 * 30 * 6, 6)
  })
  it('along the crown is longer than along the ground by what the ramps climb', () => {
    expect(crownLength(crowned(32, 7, 65))).toBeCloseTo(23 + 2 * Math.hypot(21, 7), 9)
  })
})

const shapes = fc.record(
  {
    section: fc.constantFrom('crowned' as const, 'trapezoid' as const, 'segment' as const),
    widthFt: fc.double({ min: 8, max: 150, noNaN: true }),
    lengthFt: fc.double({ min: 10, max: 500, noNaN: true }),
    heightFt: fc.double({ min: 0.5, max: 4, noNaN: true }),
    wallFt: fc.double({ min: 0, max: 4, noNaN: true }),
    rampStartFt: fc.double({ min: 0, max: 80, noNaN: true }),
    rampEndFt: fc.double({ min: 0, max: 80, noNaN: true }),
  },
  { requiredKeys: ['section', 'widthFt', 'lengthFt', 'heightFt'] },
)
const share = fc.double({ min: 0, max: 1, noNaN: true })

describe('what holds for every shape', () => {
  it('volumes of the parts make the whole', () => {
    fc.assert(
      fc.property(shapes, share, share, (s, p, q) => {
        const [a, b] = [Math.min(p, q) * s.lengthFt, Math.max(p, q) * s.lengthFt]
        const parts = volumeBetween(s, 0, a) + volumeBetween(s, a, b) + volumeBetween(s, b, s.lengthFt)
        expect(parts).toBeCloseTo(volume(s), 3 - Math.ceil(Math.log10(volume(s) + 1)) + 3)
      }),
    )
  })
  it('never below nothing, never over the box round it, the same whichever end is named first', () => {
    fc.assert(
      fc.property(shapes, share, share, (s, p, q) => {
        const v = volumeBetween(s, p * s.lengthFt, q * s.lengthFt)
        expect(v).toBeGreaterThanOrEqual(0)
        expect(v).toBeLessThanOrEqual(s.widthFt * s.heightFt * Math.abs(p - q) * s.lengthFt * (1 + 1e-9) + 1e-9)
        expect(volumeBetween(s, q * s.lengthFt, p * s.lengthFt)).toBe(v)
      }),
    )
  })
  it('higher, wider and longer each hold more; so does a wall', () => {
    fc.assert(
      fc.property(shapes, s => {
        const fixed = { ...s, rampStartFt: s.rampStartFt ?? 12, rampEndFt: s.rampEndFt ?? 12 }
        const v = volume(fixed)
        expect(volume({ ...fixed, heightFt: s.heightFt * 1.1 })).toBeGreaterThan(v)
        expect(volume({ ...fixed, widthFt: s.widthFt * 1.1 })).toBeGreaterThan(v)
        expect(volume({ ...fixed, lengthFt: s.lengthFt * 1.1 })).toBeGreaterThan(v)
        expect(volume({ ...fixed, wallFt: (s.wallFt ?? 0) + 0.2 })).toBeGreaterThanOrEqual(v * (1 - 1e-9))
      }),
    )
  })
  it('the cover is no smaller than the ground it is over, and its arc no shorter than the base', () => {
    fc.assert(
      fc.property(shapes, s => {
        expect(coverArea(s)).toBeGreaterThanOrEqual(s.widthFt * s.lengthFt * (1 - 1e-9))
        expect(arcLength(s)).toBeGreaterThanOrEqual(s.widthFt)
        expect(crownLength(s)).toBeGreaterThanOrEqual(s.lengthFt * (1 - 1e-12))
      }),
    )
  })
  it('never NaN, whatever is put in', () => {
    const any = fc.oneof(fc.double(), fc.constant(0), fc.constant(-5))
    fc.assert(
      fc.property(
        fc.record({
          section: fc.constantFrom('crowned' as const, 'trapezoid' as const, 'segment' as const),
          widthFt: any,
          lengthFt: any,
          heightFt: any,
          wallFt: any,
          topWidthFt: any,
          slope: any,
        }),
        any,
        any,
        (s, x, z) => {
          const small = (n: number) => !Number.isFinite(n) || Math.abs(n) < 1e60
          fc.pre([s.widthFt, s.lengthFt, s.heightFt, s.wallFt, s.topWidthFt, s.slope].every(small))
          for (const v of [
            sectionArea(s),
            heightAt(s, x),
            volumeBetween(s, x, z),
            volume(s),
            faceArea(s, x),
            arcLength(s),
            crownLength(s),
            coverArea(s),
          ]) {
            expect(v).not.toBeNaN()
          }
        },
      ),
    )
  })
})
