import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { cropNeed, headOf, needOf, needsOn } from '../../src/figures/farm/need.ts'
import { bookOf } from './askedFarm.ts'

const base = [
  { type: 'pile', name: 'upper', on: '2025-09-01' },
  { type: 'pile', name: 'well', on: '2025-09-01' },
  { type: 'load', pile: 'upper', crop: 'corn silage', count: 40, on: '2025-09-10' },
  { type: 'load', pile: 'well', crop: 'haylage', count: 40, on: '2025-09-10' },
  { type: 'open', pile: 'upper', why: 'feed', on: '2025-10-10' },
  { type: 'open', pile: 'well', why: 'feed', on: '2025-10-10' },
]
const need = (events: Record<string, unknown>[], day: string, pile = 'upper', dm = 35, whatIf = {}) => {
  const book = bookOf([...base, ...events])
  return needOf(book, pileState(book, pile)!, day, dm, whatIf)
}

describe('what a pile gives a day', () => {
  it('is the ration said for it', () => {
    expect(need([{ type: 'ration', pile: 'upper', lbPerDay: 9000, on: '2025-10-10' }], '2025-10-20')).toMatchObject({
      lbDay: 9000,
      from: 'pile',
    })
  })
  it('is pounds a head times the head, and grows with the herd', () => {
    const events = [
      { type: 'ration', group: 'milking', head: 100, on: '2025-10-01' },
      { type: 'ration', crop: 'corn silage', lbPerHead: 45, on: '2025-10-02' },
      { type: 'ration', group: 'milking', head: 120, on: '2025-11-02' },
    ]
    expect(need(events, '2025-10-20')).toMatchObject({ lbDay: 4500, from: 'crop', head: 100 })
    expect(need(events, '2025-11-20')?.lbDay).toBe(5400)
    expect(need(events, '2025-11-20', 'upper', 35, { head: 130 })?.lbDay).toBe(5850)
  })
  it('grows with the herd also where it was said by the day', () => {
    const events = [
      { type: 'ration', group: 'milking', head: 100, on: '2025-10-01' },
      { type: 'ration', pile: 'upper', lbPerDay: 8000, on: '2025-10-02' },
      { type: 'ration', group: 'milking', head: 110, on: '2025-11-02' },
    ]
    expect(need(events, '2025-11-20')?.lbDay).toBeCloseTo(8800, 9)
  })
  // Penn State: 16.8 lb of dry matter at 28.5 % is 58.9 lb as fed.
  it('turns a dry ration into an as-fed one', () => {
    const events = [
      { type: 'ration', group: 'milking', head: 1, on: '2025-10-01' },
      { type: 'ration', crop: 'corn silage', lbPerHead: 16.8, basis: 'dry', on: '2025-10-02' },
    ]
    expect(need(events, '2025-10-20', 'upper', 28.5)?.lbDay).toBeCloseTo(58.9, 1)
  })
  it('is a share where one ration goes for several open piles, and whole where the other has its own', () => {
    expect(need([{ type: 'ration', lbPerDay: 10_000, on: '2025-10-11' }], '2025-10-20')).toMatchObject({
      lbDay: 5000,
      from: 'herd',
      sharedBy: 2,
    })
    expect(
      need(
        [
          { type: 'ration', lbPerDay: 10_000, on: '2025-10-11' },
          { type: 'ration', pile: 'well', lbPerDay: 4000, on: '2025-10-11' },
        ],
        '2025-10-20',
      ),
    ).toMatchObject({ lbDay: 10_000, sharedBy: 1 })
  })
  it('adds up groups, and the last said counts', () => {
    const events = [
      { type: 'ration', group: 'milking', head: 100, lbPerHead: 40, crop: 'corn silage', on: '2025-10-01' },
      { type: 'ration', group: 'heifers', head: 50, lbPerHead: 15, crop: 'corn silage', on: '2025-10-01' },
    ]
    expect(need(events, '2025-10-20')?.lbDay).toBe(4750)
    expect(need([...events, { type: 'ration', pile: 'upper', lbPerDay: 6000, on: '2025-10-15' }], '2025-10-20')?.lbDay).toBe(6000)
    expect(need([{ type: 'ration', pile: 'upper', lbPerDay: 6000, on: '2025-09-15' }, ...events], '2025-10-20')?.lbDay).toBe(4750)
  })
  // Cornell (South Central New York 2020): milking cows eat 1.5 to 2.5 % of their weight as forage: 100 cows of 1,433 lb 2,150 to
  // 3,580 lb, and 5 % over.
  it('is worked out from the head alone where nothing else was said', () => {
    const n = need([{ type: 'ration', group: 'milking', head: 100, on: '2025-10-01' }], '2025-10-20', 'upper', 100)!
    expect(n.from).toBe('intake')
    expect(n.lbDay * n.sharedBy).toBeGreaterThan(2150)
    expect(n.lbDay * n.sharedBy).toBeLessThan(3760)
  })
  it('is not known where nothing was said', () => {
    expect(need([], '2025-10-20')).toBeUndefined()
    expect(headOf(bookOf(base), '2025-10-20')).toBeUndefined()
    expect(cropNeed(bookOf(base), '2025-10-20', 'haylage', 40)).toBeUndefined()
  })
  it('is the same day by day as all at once', () => {
    const events = [
      { type: 'ration', lbPerDay: 10_000, on: '2025-10-11' },
      { type: 'ration', pile: 'upper', lbPerDay: 7000, on: '2025-10-20' },
      { type: 'empty', pile: 'well', on: '2025-10-15' },
    ]
    const book = bookOf([...base, ...events])
    const p = pileState(book, 'upper')!
    const days = ['2025-10-10', '2025-10-12', '2025-10-15', '2025-10-16', '2025-10-19', '2025-10-20', '2025-10-25']
    expect(needsOn(book, p, days, 35).map(x => x?.lbDay)).toEqual(days.map(day => needOf(book, p, day, 35)?.lbDay))
  })
})
