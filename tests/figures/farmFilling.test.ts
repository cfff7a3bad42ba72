import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { drynessOf } from '../../src/figures/farm/dryness.ts'
import { byCrop, fillingOf } from '../../src/figures/farm/layers.ts'
import { mixAlong } from '../../src/figures/farm/mix.ts'
import { bookOf } from './askedFarm.ts'

const pile = { type: 'pile', name: 'well', on: '2025-06-01' }
const load = (slots: Record<string, unknown>) => ({ type: 'load', pile: 'well', crop: 'corn silage', on: '2025-09-10', ...slots })
const filling = (events: Record<string, unknown>[]) => {
  const book = bookOf([pile, ...events])
  return fillingOf(book, pileState(book, 'well')!)
}

describe('weights of loads', () => {
  const box = { type: 'box', name: 'red', lb: 12_000, on: '2025-06-01' }
  it('are the scale, else the box, else a box of that crop', () => {
    expect(filling([box, load({ count: 5, lb: 71_000 })])).toMatchObject({ lb: 71_000, weights: ['scale'] })
    expect(filling([box, load({ count: 5, box: 'red' })])).toMatchObject({ lb: 60_000, weights: ['box'], boxes: ['red'] })
    expect(filling([{ ...box, crop: 'corn silage' }, load({ count: 5 })])).toMatchObject({ lb: 60_000, weights: ['crop box'] })
    const usual = filling([load({ count: 5 })])
    expect(usual.weights).toEqual(['usual'])
    // Maize in trailers, 423 loads: 112 kg dry matter in a cubic metre, 20 lb as fed a cubic foot at 35 %; 640 cubic feet.
    expect(usual.lb / 5).toBeCloseTo(640 * 20, -2)
    expect(usual.sd).toBeGreaterThan(0.2)
  })
  // Ten loads come within 3.3 % of the mean 19 times in 20 (maize trailers), so ten tickets outweigh what was said: by hand,
  // (0.08/0.0168)^2 to 1.
  it('learn from the tickets of a box, drawn toward what it is said to hold', () => {
    const f = filling([box, load({ count: 10, lb: 110_000, box: 'red' }), load({ count: 10, box: 'red', on: '2025-09-11' })])
    const w = 0.08 ** 2 / (0.08 ** 2 + 0.053 ** 2 / 10)
    expect(f.lb).toBeCloseTo(110_000 + 10 * (w * 11_000 + (1 - w) * 12_000), 6)
    expect(f.lb - 110_000).toBeLessThan(111_000)
  })
  it('are wrong together where they come from one box, and even out load by load', () => {
    expect(filling([box, load({ count: 80, box: 'red' })]).sd).toBeCloseTo(Math.hypot(0.08, 0.053 / Math.sqrt(80)), 9)
    const two = filling([box, { ...box, name: 'blue' }, load({ count: 40, box: 'red' }), load({ count: 40, box: 'blue' })])
    expect(two.sd).toBeLessThan(0.062)
  })
})

describe('dry matter', () => {
  const at = (events: Record<string, unknown>[], crop = 'corn silage', on = '2025-09-12') => {
    const book = bookOf([pile, load({ count: 5 }), ...events])
    return drynessOf(book, pileState(book, 'well')!)(crop, on)
  }
  it('is the usual one of the crop where none was tested: 32 to 38 % for corn (Purdue, South Dakota State)', () => {
    expect(at([])).toMatchObject({ pct: 35, from: 'usual' })
  })
  it('follows the tests, the near ones more', () => {
    const one = at([{ type: 'test', pile: 'well', dmPct: 31, on: '2025-09-12' }])
    expect(one.from).toBe('tests')
    expect(one.pct).toBeGreaterThan(31)
    expect(one.pct).toBeLessThan(31.6)
    const two = at([
      { type: 'test', crop: 'corn silage', dmPct: 30, on: '2025-09-12' },
      { type: 'test', crop: 'corn silage', dmPct: 36, on: '2025-07-12' },
    ])
    expect(two.pct).toBeLessThan(32.5)
  })
  it('does not take a test of another pile, crop or year', () => {
    expect(at([{ type: 'test', pile: 'upper', dmPct: 25, on: '2025-09-12' }]).from).toBe('usual')
    expect(at([{ type: 'test', crop: 'haylage', dmPct: 25, on: '2025-09-12' }]).from).toBe('usual')
    expect(at([{ type: 'test', crop: 'corn silage', dmPct: 25, on: '2024-09-12' }]).from).toBe('usual')
  })
  // Mass balance: 100 t at 38 % and 150 t at 33 % make 35.0 %.
  it('of a pile is that of its layers by weight', () => {
    const f = filling([load({ lb: 200_000, dmPct: 38, crop: 'haylage' }), load({ lb: 300_000, dmPct: 33, on: '2025-09-12' })])
    // The crop's usual figure counts a little: 38 is that of haylage, 35 of corn.
    expect(f.dmPct).toBeGreaterThan(34.9)
    expect(f.dmPct).toBeLessThan(35.3)
  })
})

describe('the mix along a pile', () => {
  const f = filling([load({ lb: 200_000, crop: 'haylage', cut: 1, on: '2025-06-02' }), load({ lb: 300_000 })])
  it('adds up to what went in', () => {
    const along = mixAlong(f.layers, 100, 0.24, 0.24)
    let haylage = 0
    let all = 0
    const n = 2000
    for (let i = 0; i < n; i++) {
      const u = (i + 0.5) / n
      const area = Math.min(1, u / 0.24, (1 - u) / 0.24) ** 1.5
      haylage += area * (along.at(100 * u).shares.find(s => s.crop === 'haylage')?.share ?? 0)
      all += area
    }
    expect(haylage / all).toBeCloseTo(0.4, 2)
  })
  it('has the lower layer alone at the toe and an even mix between the ramps', () => {
    const along = mixAlong(f.layers, 100, 0.24, 0.24)
    expect(along.at(1).shares.map(s => s.crop)).toEqual(['haylage'])
    expect(along.at(40).shares).toEqual(along.at(60).shares)
    expect(along.startsFt('haylage', 1)).toBe(0)
    const corn = along.startsFt('corn silage')!
    expect(corn).toBeGreaterThan(2)
    expect(corn).toBeLessThan(24)
    expect(along.at(corn - 0.5).shares).toHaveLength(1)
    expect(along.at(corn + 1).shares).toHaveLength(2)
  })
  it('is one and the same all along where the ends are upright', () => {
    const along = mixAlong(f.layers, 100, 0, 0)
    for (const ft of [0, 50, 99]) expect(along.at(ft).shares[0]?.share).toBeCloseTo(0.4, 3)
    expect(byCrop(f.layers).map(r => r.share)).toEqual([0.4, 0.6])
  })
})
