import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { fedOut } from '../../src/figures/farm/fedOut.ts'
import { addDays } from '../../src/units/calendar.ts'
import { bookOf, evening, upper, ZONE } from './askedFarm.ts'

const open = { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' }
const feed = (on: string, lb: number) => ({ type: 'feed', pile: 'upper', lb, on })
const days = (events: Record<string, unknown>[], now = evening('2025-11-10')) => {
  const book = bookOf(upper([open, ...events]))
  return fedOut(book, pileState(book, 'upper')!, now)
}
const silent = (list: { silent: number }[]) => list.reduce((s, d) => s + d.silent, 0)

describe('what left a pile, day by day', () => {
  it('counts days without a log as days when cows ate', () => {
    const list = days([feed('2025-11-02', 8000), feed('2025-11-05', 8000)])
    expect(list).toHaveLength(10)
    expect(silent(list)).toBe(8)
    expect(list.filter(d => d.lb !== undefined).map(d => d.on)).toEqual(['2025-11-02', '2025-11-05'])
  })
  it('adds up the logs of one day', () => {
    expect(days([feed('2025-11-02', 5000), feed('2025-11-02', 3000)])[1]).toMatchObject({ lb: 8000, silent: 0, whole: true })
  })
  it('takes a log far under the usual for a part, and one far over it after silence for several days', () => {
    const usual = ['01', '02', '03', '04', '05'].map(d => feed(`2025-11-${d}`, 8000))
    const part = days([...usual, feed('2025-11-06', 4000)]).find(d => d.on === '2025-11-06')!
    expect(part.silent).toBeCloseTo(0.5, 9)
    expect(part.whole).toBe(false)
    const three = days([...usual, feed('2025-11-08', 24_000)])
    expect(three.filter(d => d.on > '2025-11-05' && d.on < '2025-11-09').map(d => d.silent)).toEqual([0, 0, 0])
  })
  it('takes a lasting change of the ration for what it is', () => {
    const list = Array.from({ length: 40 }, (_, i) => feed(addDays('2025-11-01', i), i < 15 ? 8000 : 4000))
    const late = days(list, evening('2025-12-10')).slice(25)
    expect(silent(late)).toBe(0)
  })
  it('lets the cows eat today by the clock', () => {
    const at = (hour: number) =>
      days([], {
        day: '2025-11-03',
        at: new Date(Date.parse('2025-11-03T00:00:00-06:00') + hour * 3_600_000).toISOString(),
        zone: ZONE,
      }).at(-1)!.silent
    expect(at(5)).toBe(0)
    expect(at(12)).toBeCloseTo(0.5, 9)
    expect(at(20)).toBe(1)
  })
  it('keeps apart what was thrown out, and weighs buckets and batches as the crew did', () => {
    const list = days([
      { type: 'feed', pile: 'upper', count: 2, unit: 'batch', lb: 9000, on: '2025-11-02' },
      { type: 'feed', pile: 'upper', count: 3, unit: 'batch', on: '2025-11-03' },
      { type: 'box', name: 'bucket', lb: 2000, on: '2025-11-01' },
      { type: 'spoil', pile: 'upper', count: 2, unit: 'bucket', on: '2025-11-04' },
    ])
    expect(list[2]?.lb).toBe(13_500)
    expect(list[3]).toMatchObject({ lostLb: 4000, silent: 1 })
  })
  it('does not feed from a pile that was filled up and shut again', () => {
    const list = days(
      [
        feed('2025-11-01', 8000),
        { type: 'load', pile: 'upper', crop: 'corn silage', count: 20, on: '2025-11-03' },
        { type: 'cover', pile: 'upper', material: 'plastic', change: 'on', on: '2025-11-04' },
        feed('2025-11-20', 8000),
      ],
      evening('2025-11-21'),
    )
    expect(list.filter(d => d.silent > 0).map(d => d.on)).toEqual(['2025-11-02', '2025-11-03', '2025-11-21'])
  })
  it('does not feed from a pile while another of its crop is logged', () => {
    const other = [
      { type: 'pile', name: 'well', on: '2025-09-10' },
      { type: 'load', pile: 'well', crop: 'corn silage', count: 20, on: '2025-09-12' },
    ]
    const list = days(
      [
        feed('2025-11-01', 8000),
        feed('2025-11-02', 8000),
        ...other,
        ...Array.from({ length: 12 }, (_, i) => ({ ...feed(addDays('2025-11-03', i), 8000), pile: 'well' })),
      ],
      evening('2025-11-14'),
    )
    expect(silent(list.slice(5))).toBe(0)
  })
})
