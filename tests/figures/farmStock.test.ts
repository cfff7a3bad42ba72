import { describe, expect, it } from 'vitest'
import { stockOf } from '../../src/figures/farm/stock.ts'
import { bookOf } from './askedFarm.ts'

const stock = (events: Record<string, unknown>[], day = '2026-06-01') =>
  stockOf(bookOf([{ type: 'pile', name: 'upper', on: '2025-01-01' }, ...events]), day)
const have = (item: string, count: number, more = {}) => ({ type: 'supply', item, change: 'have', count, on: '2025-09-01', ...more })
const cover = (material: string, change: string, on: string, more = {}) => ({ type: 'cover', pile: 'upper', material, change, on, ...more })

describe('what lies free', () => {
  it('is what was told, bought and used, and never below nothing', () => {
    const events = [
      have('tires', 100),
      { type: 'supply', item: 'tires', change: 'add', count: 40, on: '2025-09-02' },
      { type: 'supply', item: 'tires', change: 'use', count: 500, on: '2025-09-03' },
    ]
    expect(stock(events, '2025-09-02')).toEqual([{ item: 'tires', count: 140 }])
    expect(stock(events)).toEqual([{ item: 'tires', count: 0 }])
  })
  it('is put right by a new count', () => {
    expect(stock([have('tires', 100), cover('tires', 'on', '2025-09-10', { count: 60 }), have('tires', 75, { on: '2025-10-01' })])).toEqual(
      [{ item: 'tires', count: 75 }],
    )
  })
  it('loses a sheet of its size to a cover, and gets no plastic back', () => {
    const sheets = [have('plastic', 2, { widthFt: 50, lengthFt: 150 }), have('plastic', 1, { widthFt: 40, lengthFt: 100 })]
    const on = cover('plastic', 'on', '2025-09-10', { widthFt: 40, lengthFt: 100 })
    expect(stock([...sheets, on]).map(s => s.count)).toEqual([2, 0])
    expect(stock([...sheets, on, cover('plastic', 'off', '2026-02-01')]).map(s => s.count)).toEqual([2, 0])
    expect(stock([...sheets, cover('second plastic', 'on', '2025-09-10', { widthFt: 50, lengthFt: 150 })]).map(s => s.count)).toEqual([
      1, 1,
    ])
  })
  it('gets mesh, tires and bags back, at the latest when the pile is all gone', () => {
    const events = [
      have('tires', 300),
      have('mesh', 1),
      cover('tires', 'on', '2025-09-10', { count: 200 }),
      cover('mesh', 'on', '2025-09-10'),
    ]
    expect(stock(events).map(s => [s.item, s.count])).toEqual([
      ['tires', 100],
      ['mesh', 0],
    ])
    expect(stock([...events, cover('tires', 'off', '2025-12-01', { count: 50 })]).map(s => s.count)).toEqual([150, 0])
    expect(
      stock([...events, cover('tires', 'off', '2025-12-01', { count: 50 }), { type: 'empty', pile: 'upper', on: '2026-03-01' }]).map(
        s => s.count,
      ),
    ).toEqual([300, 1])
  })
  it('does not know what was never told', () => {
    expect(stock([cover('tires', 'on', '2025-09-10', { count: 200 }), cover('tires', 'off', '2025-12-10')])).toEqual([])
  })
})
