import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  COVER_TRIAL,
  LAYER_LOSS,
  lossByAsh,
  openDepthFt,
  savedByCover,
  sealingSaves,
  topLoss,
  uncoveredLossLb,
} from '../../src/figures/surfaceLoss.ts'

describe('published', () => {
  it('30 by 100 ft uncovered at 40 lb/ft3 loses 50 tons: University of Kentucky', () => {
    expect(uncoveredLossLb(30 * 100, 40) / 2000).toBeCloseTo(50, 9)
  })
  it('sealing saved 27.0 points in the top 18 in and 6.75 in the next, mean of four years: Kansas State, 127 silos', () => {
    expect(sealingSaves('top')).toBe(27)
    expect(sealingSaves('second')).toBe(6.75)
  })
  it('no cover lost 34.2 % and plastic 12.0: 22.2 points, 64.9 % of the loss: six methods of covering silage', () => {
    expect(COVER_TRIAL.none - COVER_TRIAL.plastic).toBeCloseTo(22.2, 9)
    expect((100 * (COVER_TRIAL.none - COVER_TRIAL.plastic)) / COVER_TRIAL.none).toBeCloseTo(64.9, 1)
  })
  it('barrier film lost 114 g/kg of the top where plastic lost 195, 41.5 % less: Wilkinson & Fenlon (2014)', () => {
    expect(100 * (LAYER_LOSS['barrier film'] / LAYER_LOSS.plastic - 1)).toBeCloseTo(-41.5, 1)
    expect(savedByCover(1000, 14, 'plastic', 'barrier film').share / LAYER_LOSS.plastic).toBeCloseTo(0.415, 3)
  })
  it('two weeks open cost the top foot 14.4 %: Kansas State, Progress Report 623', () => {
    expect(openDepthFt(14)).toBeCloseTo(0.144, 9)
    expect(openDepthFt(0)).toBe(0)
  })
})

it('arithmetic: ash of 5 % below and 8 % on top means 39.5 % gone, 10 % on top 52.6 % (mass balance, Kansas State survey)', () => {
  expect(lossByAsh(0.05, 0.08).value).toBeCloseTo(0.395, 3)
  expect(lossByAsh(0.05, 0.1).value).toBeCloseTo(0.526, 3)
  expect(lossByAsh(0.08, 0.05)).toEqual({ value: 0, outside: ['ash-below-reference'] })
})

it('never covered: the whole of 10 in comes to be lost (75 % of the first, 25 % of the second), no more', () => {
  expect(openDepthFt(400)).toBeCloseTo(10 / 12, 9)
})

describe('what always holds', () => {
  const top = fc.record({
    surfaceFt2: fc.double({ min: 500, max: 50_000, noNaN: true }),
    volumeFt3: fc.double({ min: 1000, max: 500_000, noNaN: true }),
  })
  const days = fc.double({ min: 0, max: 300, noNaN: true })
  it('better covered never loses more, nor covered sooner', () => {
    fc.assert(
      fc.property(top, days, days, (t, a, b) => {
        const of = (cover: 'none' | 'plastic' | 'two sheets' | 'barrier film', open: number) => topLoss(t, cover, open, 5.5).range.mid
        expect(of('barrier film', a)).toBeLessThanOrEqual(of('two sheets', a))
        expect(of('two sheets', a)).toBeLessThanOrEqual(of('plastic', a))
        expect(of('plastic', 0)).toBeLessThanOrEqual(of('none', 0))
        expect(of('plastic', Math.min(a, b))).toBeLessThanOrEqual(of('plastic', Math.max(a, b)))
      }),
    )
  })
  it('low, middle and high stay in order and are numbers', () => {
    fc.assert(
      fc.property(fc.double(), fc.double(), fc.double(), fc.constantFrom('none' as const, 'plastic' as const), (s, v, d, cover) => {
        const { low, mid, high } = topLoss({ surfaceFt2: s, volumeFt3: v }, cover, d, 5.5).range
        expect(low).toBeLessThanOrEqual(mid)
        expect(mid).toBeLessThanOrEqual(high)
        expect(high).toBeLessThanOrEqual(80)
      }),
    )
  })
})
