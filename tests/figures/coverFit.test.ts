import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  bagsFor,
  edgeFt,
  fitFromStock,
  gravelTons,
  LAP_FT,
  SPACED_PER_100,
  sheetNeed,
  tiresFor,
  tiresPer100,
} from '../../src/figures/coverFit.ts'
import { arcLength, crownLength, type PileShape } from '../../src/figures/shape.ts'

const pile = (widthFt: number, lengthFt: number, heightFt: number): PileShape => ({ section: 'crowned', widthFt, lengthFt, heightFt })

describe('tires', () => {
  it('published: 500 on a sheet of 50 by 100 ft are 10 in 100 ft2 (Lancaster Farming)', () => {
    expect((500 * 100) / (50 * 100)).toBe(SPACED_PER_100)
    expect(tiresFor(50 * 100, 'spaced')).toBe(500)
  })
  it.each([
    [24, 25.0, 28.9],
    [26, 21.3, 24.6],
    [28, 18.4, 21.2],
  ])('arithmetic: %s in tires that touch, %s in rows and %s in the gaps, in 100 ft2', (od, rows, gaps) => {
    expect(Math.abs(tiresPer100(od) - rows)).toBeLessThanOrEqual(0.1)
    expect(Math.abs(tiresPer100(od, 'gaps') - gaps)).toBeLessThanOrEqual(0.1)
  })
})

describe('sheet', () => {
  it('common practice, no source: 32 ft wide, 65 long, about 7 high takes a 40 by 70', () => {
    const need = sheetNeed(pile(32, 65, 7))
    expect([need.buyWidthFt, need.buyLengthFt]).toEqual([40, 70])
    const fit = fitFromStock(need, [
      { widthFt: 50, lengthFt: 100 },
      { widthFt: 40, lengthFt: 70 },
      { widthFt: 32, lengthFt: 65 },
    ])
    expect(fit?.sheets).toEqual([{ widthFt: 40, lengthFt: 70 }])
    expect(fit?.lapFt).toBeGreaterThanOrEqual(1)
  })
  it('arithmetic: flat top of 20 ft, sides 3 to 1, 12 ft high, skirt of 4 ft: 103.9 ft across', () => {
    const s: PileShape = { section: 'trapezoid', widthFt: 92, topWidthFt: 20, heightFt: 12, lengthFt: 172 }
    expect(sheetNeed(s, 4).widthFt).toBeCloseTo(103.9, 1)
    expect(sheetNeed(s, 4).lengthFt).toBeCloseTo(100 + 2 * 37.95 + 8, 1)
  })
  it('is turned where it fits only so', () => {
    const fit = fitFromStock(sheetNeed(pile(40, 90, 8)), [{ widthFt: 100, lengthFt: 50 }])
    expect(fit?.sheets).toEqual([{ widthFt: 100, lengthFt: 50 }])
  })
  it('two with a seam where none is long enough, and only as many as there are', () => {
    const need = sheetNeed(pile(40, 130, 8))
    expect(fitFromStock(need, [{ widthFt: 50, lengthFt: 100, count: 1 }])).toBeUndefined()
    expect(fitFromStock(need, [{ widthFt: 50, lengthFt: 100, count: 2 }])?.sheets).toHaveLength(2)
    expect(
      fitFromStock(need, [
        { widthFt: 50, lengthFt: 100 },
        { widthFt: 60, lengthFt: 60 },
      ])?.sheets,
    ).toHaveLength(2)
    expect(fitFromStock(need, [])).toBeUndefined()
  })
  it('what fits covers the pile, with the least sheet and the waste that is left', () => {
    const size = fc.integer({ min: 4, max: 40 }).map(n => n * 5)
    const sheets = fc.array(fc.record({ widthFt: size, lengthFt: size }), { maxLength: 6 })
    const piles = fc
      .tuple(fc.integer({ min: 20, max: 60 }), fc.integer({ min: 40, max: 150 }), fc.integer({ min: 3, max: 10 }))
      .map(([w, l, h]) => pile(w, l, h))
    fc.assert(
      fc.property(piles, sheets, (s, stock) => {
        const need = sheetNeed(s)
        const covers = (a: number, b: number) => Math.min(a - arcLength(s), b - crownLength(s)) >= 2 - 1e-9
        const single = stock.filter(t => covers(t.widthFt, t.lengthFt) || covers(t.lengthFt, t.widthFt))
        const fit = fitFromStock(need, stock)
        if (single.length) expect(fit?.sheets).toHaveLength(1)
        if (fit?.sheets.length === 1) {
          const { widthFt, lengthFt } = fit.sheets[0]!
          expect(widthFt * lengthFt).toBe(Math.min(...single.map(t => t.widthFt * t.lengthFt)))
        }
        if (fit) {
          expect(fit.lapFt).toBeGreaterThanOrEqual(1 - 1e-9)
          expect(fit.waste).toBeGreaterThanOrEqual(0)
          expect(fit.waste).toBeLessThan(1)
        }
      }),
    )
  })
  it('the size to ask for leaves between a foot and three and a half of lap', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 15, max: 80, noNaN: true }),
        fc.double({ min: 30, max: 300, noNaN: true }),
        fc.double({ min: 2, max: 7, noNaN: true }),
        (w, l, h) => {
          const need = sheetNeed(pile(w, l, h))
          for (const [buy, exact] of [
            [need.buyWidthFt, need.widthFt],
            [need.buyLengthFt, need.lengthFt],
          ] as const) {
            const lap = LAP_FT + (buy - exact) / 2
            expect(lap).toBeGreaterThanOrEqual(1 - 1e-6)
            expect(lap).toBeLessThanOrEqual(3.5 + 1e-6)
          }
        },
      ),
    )
  })
})

it('edge, bags and gravel by hand: 40 by 110 ft is 300 ft round, 75 bags of 4 ft, 7.5 tons of a strip of 50 lb a foot', () => {
  const s = pile(40, 110, 8)
  expect(edgeFt(s)).toBe(300)
  expect(bagsFor(s)).toBe(75)
  expect(gravelTons(edgeFt(s))).toBe(7.5)
  // Rows of bags over a mesh, every 15 ft: 7 inner rows.
  expect(bagsFor(s, true)).toBe(Math.ceil((300 + 7 * arcLength(s)) / 4))
})
