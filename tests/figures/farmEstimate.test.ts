import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { type Estimate, estimate } from '../../src/figures/farm/estimate.ts'
import { narrowing } from '../../src/figures/farm/narrowing.ts'
import { addDays } from '../../src/units/calendar.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

const ration = { type: 'ration', pile: 'upper', lbPerDay: 8000, on: '2025-11-01' }
const open = { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' }
const face = (on: string, atFt: number) => ({ type: 'face', pile: 'upper', atFt, on })
const feed = (on: string, lb: number) => ({ type: 'feed', pile: 'upper', lb, on })
const log = (n: number, lb: number) => Array.from({ length: n }, (_, i) => feed(addDays('2025-11-01', i), lb + ((i % 5) - 2) * 60))
const at = (more: Record<string, unknown>[], day: string, base = upper([open, ration])): Estimate => {
  const book = bookOf([...base, ...more])
  return estimate(book, pileState(book, 'upper')!, evening(day))
}
const half = (e: Estimate): number => (e.days!.high - e.days!.low) / 2

describe('what is left in a pile', () => {
  // Mass balance: what was there, less what was logged, thrown out and eaten in silence.
  it('is what came in and stays after the loss, less what left', () => {
    const e = at([...log(20, 8000), { type: 'spoil', pile: 'upper', lb: 3000, on: '2025-11-05' }], '2025-11-25')
    const v = e.evidence
    expect(v.silentDays).toBe(5)
    expect(e.left.lb).toBeCloseTo(e.whole.lb - v.loggedLb - 3000 - 5 * e.use!.lb, -3)
    expect(e.whole.lb).toBeCloseTo(960_000 * 0.97 * (1 - v.loss.mean), -4)
  })

  it('goes down by a day each day, whether logged or not', () => {
    const a = at(log(20, 8000), '2025-11-20')
    const b = at(log(20, 8000), '2025-11-30')
    expect(a.days!.mid - b.days!.mid).toBeCloseTo(10, 0)
  })

  it('learns that more is fed than the ration says', () => {
    const e = at(log(30, 9200), '2025-11-30')
    expect(e.use!.lb).toBeGreaterThan(9000)
    expect(e.use!.lb).toBeLessThan(9300)
  })

  it('does not take a copied ration for a reading of the scale', () => {
    const copied = at(
      Array.from({ length: 30 }, (_, i) => feed(addDays('2025-11-01', i), 8000)),
      '2025-11-30',
    )
    const read = at(log(30, 8000), '2025-11-30')
    expect(copied.evidence.copied).toBe(true)
    expect(copied.use!.sd).toBeGreaterThan(2 * read.use!.sd)
  })

  it('learns that the boxes ran light from a face that moves faster than the book says, and the other way round', () => {
    // At 8,000 lb a day a third of the pile should be gone in 34 days.
    const none = at(log(34, 8000), '2025-12-04')
    const fast = at([...log(34, 8000), face('2025-11-14', 18), face('2025-11-24', 33), face('2025-12-04', 47)], '2025-12-04')
    const slow = at([...log(34, 8000), face('2025-11-14', 9), face('2025-11-24', 18), face('2025-12-04', 27)], '2025-12-04')
    expect(fast.whole.lb).toBeLessThan(0.95 * none.whole.lb)
    expect(slow.whole.lb).toBeGreaterThan(1.03 * none.whole.lb)
    expect(fast.days!.mid).toBeLessThan(none.days!.mid - 5)
    expect(half(fast)).toBeLessThan(half(none))
  })

  it('shrugs off one reading that cannot be', () => {
    const faces = [face('2025-11-12', 12), face('2025-11-22', 24)]
    const good = at([...log(34, 8000), ...faces], '2025-12-04')
    const slip = at([...log(34, 8000), ...faces, face('2025-12-01', 82)], '2025-12-04')
    // Were the slip taken at its word, hardly 15 days would be left of over 60.
    expect(good.days!.mid).toBeGreaterThan(55)
    expect(slip.days!.mid).toBeGreaterThan(0.6 * good.days!.mid)
  })

  it('needs no loads where the size is known, and no size where the face is', () => {
    const bare = [{ type: 'pile', name: 'upper', on: '2025-11-01' }, open, ration]
    const sized = at([], '2025-11-10', [{ ...bare[0], widthFt: 36, lengthFt: 100, heightFt: 8 }, open, ration])
    // 36 by 100 by 8 ft crowned, ramps of 24 ft: 2/3 x 36 x 8 x 76 = 14,592 ft3; corn silage at 41 lb/ft3 less 15 %: about 510,000 lb.
    expect(sized.whole.lb / 510_000).toBeGreaterThan(0.85)
    expect(sized.whole.lb / 510_000).toBeLessThan(1.15)
    const faced = at([face('2025-11-21', 25)], '2025-11-21', [{ ...bare[0], lengthFt: 100 }, open, ration])
    // A quarter of the way in 21 days: some 50 to 90 more, by the ends.
    expect(faced.days!.mid).toBeGreaterThan(40)
    expect(faced.days!.mid).toBeLessThan(100)
    expect(at([], '2025-11-10', bare).days).toBeUndefined()
  })

  it('is little and never below nothing where more was fed than was there', () => {
    const e = at(log(140, 8000), '2026-03-20')
    expect(e.overfed).toBe(true)
    expect(e.left.lb).toBeGreaterThanOrEqual(0)
    expect(e.days!.low).toBeGreaterThanOrEqual(0)
    expect(e.days!.mid).toBeLessThan(20)
    expect(e.days!.high).toBeGreaterThan(e.days!.mid)
  })

  it('starts anew from the face where a pile was added to', () => {
    const added = [{ type: 'load', pile: 'upper', crop: 'corn silage', count: 20, box: 'red', on: '2025-12-05' }]
    const before = at([...log(34, 8000), face('2025-12-04', 34)], '2025-12-04')
    const after = at([...log(34, 8000), face('2025-12-04', 34), ...added, face('2025-12-20', 45)], '2025-12-20')
    // 20 loads of 12,000 lb are 25 more days, less the 16 that have gone by.
    expect(after.days!.mid - before.days!.mid).toBeGreaterThan(0)
    expect(after.days!.mid - before.days!.mid).toBeLessThan(20)
  })
})

describe('the range', () => {
  it('says what would make it narrower, and telling it does', () => {
    const e = at(log(30, 8000), '2025-11-30')
    const better = narrowing(e)!
    expect(better.after).toBeLessThan(better.half)
    expect(['face', 'tickets']).toContain(better.what)
    const told = at([...log(30, 8000), face('2025-11-30', Math.round(100 * 0.31))], '2025-11-30')
    expect(half(told)).toBeLessThan(half(e))
  })

  it('holds its middle, and is wider where less is known', () => {
    const much = at(
      [...log(60, 8000), ...[10, 20, 30, 40, 50, 59].map(i => face(addDays('2025-11-01', i), Math.round(i * 1.02)))],
      '2025-12-30',
    )
    const little = at([], '2025-12-30')
    for (const e of [much, little]) {
      expect(e.days!.low).toBeLessThan(e.days!.mid)
      expect(e.days!.high).toBeGreaterThan(e.days!.mid)
    }
    expect(half(little)).toBeGreaterThan(1.4 * half(much))
  })
})

describe('properties', () => {
  it('more fed leaves less, a larger ration lasts shorter, more loads last longer', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 4000, max: 12_000 }),
        fc.integer({ min: 3, max: 40 }),
        fc.integer({ min: 1, max: 40 }),
        (lb, n, more) => {
          const days = (events: Record<string, unknown>[], base: Record<string, unknown>[]) => at(events, '2025-12-20', base).days!.mid
          const r = { ...ration, lbPerDay: lb }
          const base = upper([open, r])
          const plain = days(log(n, lb), base)
          // Where nothing is logged the ration decides.
          expect(days([], upper([open, { ...r, lbPerDay: lb + 1000 }]))).toBeLessThan(days([], base))
          const loads = { type: 'load', pile: 'upper', crop: 'corn silage', count: more, box: 'red', on: '2025-09-13' }
          expect(days(log(n, lb), [...upper(), loads, open, r])).toBeGreaterThan(plain - 1e-6)
          expect(
            at([...log(n, lb), { type: 'spoil', pile: 'upper', lb: 20_000, on: '2025-12-01' }], '2025-12-20', base).left.lb,
          ).toBeLessThan(at(log(n, lb), '2025-12-20', base).left.lb + 1e-6)
        },
      ),
      { numRuns: 25 },
    )
  })
})
