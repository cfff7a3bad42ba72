import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { addDays } from '../../src/units/calendar.ts'
import type { WatchFigures } from '../../src/watch/item.ts'
import { shortFor } from '../../src/watch/supplies.ts'
import { usualNeed } from '../../src/watch/usual.ts'
import { codes, Farm, FED, keys, lines } from './farm.ts'

/** A pile covered long enough for its plain walks, and fed or not. */
const covered = (): Farm => {
  const f = new Farm()
  f.told('2026-06-01', 'ada', { type: 'pile', name: 'glen', widthFt: 40, lengthFt: 120, heightFt: 10 })
  f.told('2026-06-01', 'ada', { type: 'load', pile: 'glen', crop: 'haylage', count: 40 })
  f.told('2026-06-02', 'ada', { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' })
  f.told('2026-06-10', 'lenny', { type: 'check', pile: 'glen', finding: 'good' })
  return f
}
/** Codes of every morning from one day to another, said. */
const mornings = (f: Farm, from: string, to: string, figures: WatchFigures = {}): string[][] => {
  const out: string[][] = []
  for (let day = from; day <= to; day = addDays(day, 1)) {
    out.push(codes(f.tick(`${day} 06:00`, figures).filter(i => i.key.startsWith('morning'))))
    f.tick(`${day} 12:00`, figures)
    f.tick(`${day} 19:00`, figures)
  }
  return out
}

describe('a walk nobody takes', () => {
  it('is named by one morning, asked for once more, told to the owner once, and then only by the week', () => {
    const f = covered()
    const seen = mornings(f, '2026-06-11', '2026-07-31').flat()
    expect(seen.filter(c => c === 'morning-check-due')).toHaveLength(1)
    const said = [...f.book.said]
    expect(said.filter(k => k.startsWith('check-again'))).toHaveLength(1)
    expect(said.filter(k => k.startsWith('check-owner'))).toHaveLength(1)
    // Seven Sundays: 14 June to 26 July 2026.
    expect(said.filter(k => k.startsWith('weekly:2026-0'))).toHaveLength(7)
  })
  it('is spoken of anew after a storm, however late it is', () => {
    const f = covered()
    mornings(f, '2026-06-11', '2026-07-10')
    f.told('2026-07-10 20:00', 'lenny', { type: 'weather', kind: 'wind', mph: 55 })
    const [first, ...rest] = mornings(f, '2026-07-11', '2026-07-20')
    expect(first).toContain('morning-check-due')
    expect(rest.flat()).not.toContain('morning-check-due')
  })
  it('is asked after from its day on where nobody gets a morning', () => {
    const f = covered().set('morning', false)
    mornings(f, '2026-06-11', '2026-07-10')
    expect([...f.book.said].filter(k => k.startsWith('check-again'))).toHaveLength(1)
  })
})

describe('a pile that is fed', () => {
  it('is told of every morning while it is spoken of, and then as its end comes near', () => {
    const f = covered()
    f.told('2026-07-01', 'lenny', { type: 'open', pile: 'glen', why: 'feed' }, { type: 'feed', pile: 'glen', lb: 9000 })
    let left = 40
    const figures: WatchFigures = { daysLeft: () => ({ days: left }) }
    const days: number[] = []
    for (let day = '2026-07-02'; day <= '2026-08-20'; day = addDays(day, 1)) {
      left = Math.max(0, left - 1)
      const said = f.tick(`${day} 06:00`, figures).filter(i => i.key.startsWith('morning'))
      if (codes(said).includes('morning-pile-days')) days.push(left)
      if (codes(said).includes('morning-pile-out')) days.push(-1)
    }
    expect(days).toEqual([39, 38, 37, 36, 35, 34, 33, 32, 31, 30, 14, 7, 3, -1])
  })
  it('asks for what is fed once, not every morning', () => {
    const f = covered()
    f.told('2026-07-01', 'lenny', { type: 'open', pile: 'glen', why: 'feed' })
    expect(
      mornings(f, '2026-07-02', '2026-07-12')
        .flat()
        .filter(c => c === 'morning-pile-bare'),
    ).toHaveLength(1)
  })
  it('is told of by a ration as by a log', () => {
    const f = covered()
    f.told('2026-07-01', 'lenny', { type: 'open', pile: 'glen', why: 'feed' }, { type: 'ration', crop: 'haylage', lbPerDay: 9000 })
    const said = mornings(f, '2026-07-20', '2026-07-25', FED)
    for (const morning of said) expect(morning).toContain('morning-pile')
  })
  it('has its roll said once for each place of the edge, and not where rolls are not told', () => {
    const f = covered()
    f.told('2026-07-01', 'lenny', { type: 'feed', pile: 'glen', lb: 9000 }, { type: 'ration', pile: 'glen', lbPerDay: 9000 })
    f.told('2026-07-01', 'lenny', { type: 'cover', pile: 'glen', material: 'plastic', change: 'back', ft: 10 })
    let face = 9.9
    const figures: WatchFigures = { faceAt: () => face, faceRate: () => ({ inPerDay: 12, minInPerDay: 4, enough: true }) }
    const rolls = (from: string, to: string) =>
      mornings(f, from, to, figures)
        .flat()
        .filter(c => c === 'morning-roll').length
    expect(rolls('2026-07-10', '2026-07-14')).toBe(1)
    f.told('2026-07-14 13:00', 'lenny', { type: 'cover', pile: 'glen', material: 'plastic', change: 'back', ft: 3 })
    face = 12.8
    expect(rolls('2026-07-15', '2026-07-18')).toBe(1)
    f.told('2026-07-18 13:00', 'lenny', { type: 'cover', pile: 'glen', material: 'plastic', change: 'back', ft: 3 })
    // More than three days of feed past the last roll that was told.
    face = 25
    expect(rolls('2026-07-19', '2026-07-25')).toBe(0)
  })
  it('has a turn of the mix said once', () => {
    const f = covered()
    f.told('2026-07-01', 'lenny', { type: 'feed', pile: 'glen', lb: 9000 }, { type: 'face', pile: 'glen', atFt: 10 })
    const figures: WatchFigures = { mixTurn: () => ({ atFt: 24, on: '2026-07-20', crop: 'corn silage' }) }
    const said = mornings(f, '2026-07-02', '2026-07-08', figures).flat()
    expect(said.filter(c => c === 'morning-mix')).toHaveLength(1)
  })
})

describe('what a farm uses', () => {
  // A 50 by 130 ft sheet: 6,500 square feet.
  const need = () => ({ widthFt: 50, lengthFt: 130, tires: 1139, bags: 80 })
  it('is learned from its own covers, and the handbook’s count is for farms that never told', () => {
    const f = covered()
    expect(usualNeed(f.book, { need }, 'glen')).toMatchObject({ tires: 1139 })
    expect(usualNeed(f.book, { need }, 'glen')).not.toHaveProperty('bags')
    f.told('2026-06-02', 'ada', { type: 'cover', pile: 'glen', material: 'tires', change: 'on', count: 325 })
    expect(usualNeed(f.book, { need }, 'glen')?.tires).toBe(325)
    // Half the sheet, half the tires.
    const small = { need: (p: string) => (p === 'glen' ? need() : { widthFt: 50, lengthFt: 65, tires: 570 }) }
    expect(usualNeed(f.book, small, 'ridge')?.tires).toBe(163)
  })
  it('told in two parts is one covering', () => {
    const f = covered()
    for (const [day, count] of [
      ['2026-06-02', 200],
      ['2026-06-04', 125],
    ] as const)
      f.told(day, 'ada', { type: 'cover', pile: 'glen', material: 'tires', change: 'on', count })
    expect(usualNeed(f.book, { need }, 'glen')?.tires).toBe(325)
  })
  it('is all that can be short', () => {
    const f = covered()
    const figures: WatchFigures = { need, stock: () => [{ item: 'plastic', count: 1, widthFt: 60, lengthFt: 150 }] }
    expect(shortFor(f.book, pileState(f.book, 'glen')!, figures)).toEqual([])
    f.told('2026-06-03', 'ada', { type: 'supply', item: 'tires', change: 'have', count: 300 })
    // The handbook's 1,139 touch; with far fewer a sheet is held, but not with a handful.
    const some: WatchFigures = { ...figures, stock: () => [...figures.stock!(), { item: 'tires', count: 500 }] }
    expect(shortFor(f.book, pileState(f.book, 'glen')!, some)).toEqual([])
    expect(shortFor(f.book, pileState(f.book, 'glen')!, figures).map(s => s.item)).toEqual(['tires'])
  })
  it('is wanted now where the day to order by is past', () => {
    const f = new Farm()
    f.told('2026-09-01', 'ada', { type: 'pile', name: 'ridge' }, { type: 'supply', item: 'tires', change: 'have', count: 10 })
    f.told('2026-09-01', 'ada', { type: 'harvest', crop: 'corn silage', on: '2026-09-08' })
    const [item] = f.tick('2026-09-01 12:00', { need, stock: () => [{ item: 'tires', count: 10 }] }).filter(i => i.key.startsWith('short'))
    expect(lines(item!)[0]).toMatchObject({ code: 'supply-head', data: { now: 'yes', filling: 'no' } })
    expect(keys(f.tick('2026-09-02 12:00', { need }))).not.toContain(item!.key)
  })
})

describe('cautions', () => {
  it('name local rules and licensed people once a season, not each time', () => {
    const f = new Farm()
    f.told('2026-06-01', 'ada', { type: 'pile', name: 'glen', heightFt: 10 })
    let deferred = 0
    const acts = [
      { type: 'load', pile: 'glen', crop: 'haylage', count: 4 },
      { type: 'pack', pile: 'glen', tractors: 1, tractorLb: 30000 },
      { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' },
      { type: 'feed', pile: 'glen', lb: 4000 },
      { type: 'cover', pile: 'glen', material: 'plastic', change: 'back', ft: 4 },
    ]
    for (const [n, act] of acts.entries()) {
      f.told(`2026-07-${10 + n} 09:00`, 'ada', act)
      deferred += codes(f.tick(`2026-07-${10 + n} 09:00`)).filter(c => c === 'caution-defer').length
    }
    expect(deferred).toBe(1)
    f.told('2027-06-01 09:00', 'ada', { type: 'feed', pile: 'glen', lb: 4000 })
    expect(codes(f.tick('2027-06-01 09:00'))).toContain('caution-defer')
  })
})
