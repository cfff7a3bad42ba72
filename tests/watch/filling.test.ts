import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { bestSun, coverJob, paceOf, RULE_OF_800, tally } from '../../src/watch/filling.ts'
import type { WatchFigures } from '../../src/watch/item.ts'
import { shortFor } from '../../src/watch/supplies.ts'
import { codes, Farm, keys } from './farm.ts'

const filling = (): Farm => {
  const f = new Farm()
  f.told('2026-09-10 07:00', 'ada', { type: 'pile', name: 'ridge', widthFt: 40, lengthFt: 120 }, { type: 'box', name: 'red', lb: 12000 })
  f.told('2026-09-10 07:30', 'ada', { type: 'pack', pile: 'ridge', tractors: 1, tractorLb: 40000 })
  return f
}
const load = (f: Farm, when: string, by: string, count: number, more = {}) =>
  f.told(when, by, { type: 'load', pile: 'ridge', crop: 'corn silage', count, box: 'red', ...more })

describe('the tally', () => {
  it('is kept by pile, crop and driver, with weights where they were told', () => {
    const f = filling()
    load(f, '2026-09-10 08:00', 'lenny', 3)
    load(f, '2026-09-10 09:00', 'lenny', 2)
    load(f, '2026-09-10 09:00', 'ada', 4, { by: 'gus' })
    f.told(
      '2026-09-10 10:00',
      'ada',
      { type: 'load', pile: 'ridge', crop: 'haylage', lb: 30000 },
      { type: 'load', pile: 'ridge', crop: 'earlage', count: 1 },
    )
    f.told('2026-09-11 10:00', 'ada', { type: 'load', pile: 'ridge', crop: 'haylage', count: 1 })
    expect(tally(f.book, '2026-09-10', '2026-09-10')).toEqual([
      { pile: 'ridge', crop: 'corn silage', by: 'lenny', count: 5, lb: 60000 },
      { pile: 'ridge', crop: 'corn silage', by: 'gus', count: 4, lb: 48000 },
      { pile: 'ridge', crop: 'haylage', by: 'ada', count: 0, lb: 30000 },
      { pile: 'ridge', crop: 'earlage', by: 'ada', count: 1 },
    ])
  })
})

describe('the pace against the packing', () => {
  it('follows the rule of 800', () => {
    // 50 tons an hour want 40,000 lb (Kaatz, Michigan State); 26,000 lb pack 32.5 tons an hour (Garcia, South Dakota State).
    expect(50 * RULE_OF_800).toBe(40000)
    expect(26000 / RULE_OF_800).toBe(32.5)
  })
  it('is seen after an hour of hauling, and said once a day when it runs ahead', () => {
    const f = filling()
    load(f, '2026-09-10 08:00', 'lenny', 1)
    load(f, '2026-09-10 08:40', 'lenny', 4)
    expect(paceOf(f.book, pileState(f.book, 'ridge')!, '2026-09-10', {})).toBeUndefined()
    load(f, '2026-09-10 10:00', 'lenny', 16)
    // 20 loads of 6 tons in two hours, the first one not counted: 60 tons an hour against 50.
    expect(paceOf(f.book, pileState(f.book, 'ridge')!, '2026-09-10', {})).toEqual({
      pile: 'ridge',
      tonsHour: 60,
      lb: 40000,
      okTonsHour: 50,
      needLb: 48000,
    })
    expect(keys(f.tick('2026-09-10 10:00')).filter(k => k.startsWith('pace'))).toEqual(['pace:ridge:2026-09-10'])
    load(f, '2026-09-10 10:30', 'lenny', 9)
    expect(keys(f.tick('2026-09-10 10:30')).filter(k => k.startsWith('pace'))).toEqual([])
  })
  it('is quiet where the tractors keep up, or are not known', () => {
    const f = filling()
    load(f, '2026-09-10 08:00', 'lenny', 1)
    load(f, '2026-09-10 10:00', 'lenny', 16)
    expect(keys(f.tick('2026-09-10 10:00')).filter(k => k.startsWith('pace'))).toEqual([])
    const g = new Farm()
    g.told('2026-09-10 07:00', 'ada', { type: 'pile', name: 'ridge' }, { type: 'box', name: 'red', lb: 12000 })
    load(g, '2026-09-10 08:00', 'lenny', 1)
    load(g, '2026-09-10 10:00', 'lenny', 90)
    expect(keys(g.tick('2026-09-10 10:00')).filter(k => k.startsWith('pace'))).toEqual([])
  })
})

describe('the last load of a day', () => {
  const need: WatchFigures = { need: () => ({ widthFt: 50, lengthFt: 130, tires: 1300, fromStock: false }) }
  it('is counted in hands and minutes', () => {
    // 65 + 650 person-minutes over five people, and 20 to set up.
    expect(coverJob('ridge', { widthFt: 50, lengthFt: 130, tires: 1300 })).toMatchObject({
      people: 5,
      minutes: 20 + 715 / 5,
      fromStock: '',
    })
    expect(coverJob('ridge', { widthFt: 20, lengthFt: 30 }).people).toBe(4)
  })
  it('has an evening with the tally and the covering; none on other days, none once it is covered', () => {
    const f = filling().set('lat', 42.9).set('lon', -75.6)
    load(f, '2026-09-10 08:00', 'lenny', 10)
    load(f, '2026-09-10 15:00', 'ada', 2)
    f.tick('2026-09-10 15:00')
    expect(f.tick('2026-09-10 18:59', need)).toEqual([])
    const evening = f.tick('2026-09-10 19:00', need)
    expect(keys(evening)).toEqual(['evening:2026-09-10'])
    expect(codes(evening)).toEqual([
      'evening-head',
      'evening-load',
      'cover-tonight',
      'cover-sun',
      'caution-sheet-wind',
      'evening-driver',
      'evening-driver',
    ])
    expect(f.tick('2026-09-10 20:00', need)).toEqual([])
    expect(codes(f.tick('2026-09-11 06:00'))).toEqual(['morning-head', 'morning-uncovered'])
    expect(f.tick('2026-09-11 19:00', need)).toEqual([])
    const g = filling()
    load(g, '2026-09-10 08:00', 'lenny', 10)
    g.told('2026-09-10 17:00', 'ada', { type: 'cover', pile: 'ridge', material: 'plastic', change: 'on' })
    g.tick('2026-09-10 17:00')
    expect(codes(g.tick('2026-09-10 19:00', need))).toEqual(['evening-head', 'evening-load'])
  })
  it('names tomorrow’s sun by the wall clock', () => {
    const f = filling()
    expect(bestSun(f.book, '2026-09-11', f.zone)).toBeUndefined()
    const sun = bestSun(f.set('lat', 42.9).set('lon', -75.6).book, '2026-09-11', f.zone)!
    // Solar noon there is 12:00 EDT + 1 h + 0.6 deg east of the 75 W meridian's 2.4 min, less 3.5 min of the equation of time: near 12:59.
    expect(sun.from < '12:00' && sun.from > '09:00').toBe(true)
    expect(sun.to > '14:00' && sun.to < '17:00').toBe(true)
  })
})

describe('supplies', () => {
  const figures = (stock: WatchFigures['stock']): WatchFigures => ({
    need: () => ({ widthFt: 50, lengthFt: 130, tires: 300 }),
    ...(stock && { stock }),
  })
  const short = (stock: WatchFigures['stock']) => {
    const f = filling()
    f.told('2026-09-09', 'ada', { type: 'supply', item: 'tires', change: 'have', count: 1 })
    // What the farm laid on an earlier pile of the same size.
    f.told('2026-05-09', 'ada', { type: 'pile', name: 'old' }, { type: 'cover', pile: 'old', material: 'tires', change: 'on', count: 300 })
    return shortFor(f.book, pileState(f.book, 'ridge')!, figures(stock)).map(s => `${s.item} ${s.need}/${s.have}`)
  }
  it('are short by what the covering wants and nothing that lies free gives', () => {
    expect(
      short(() => [
        { item: 'tires', count: 340 },
        { item: 'plastic', count: 1, widthFt: 50, lengthFt: 150 },
      ]),
    ).toEqual([])
    expect(
      short(() => [
        { item: 'tires', count: 240 },
        { item: 'plastic', count: 1, widthFt: 40, lengthFt: 150 },
      ]),
    ).toEqual(['plastic 1/0', 'tires 300/240'])
  })
  it('count what lies on the pile itself already', () => {
    const f = filling()
    load(f, '2026-09-10 08:00', 'lenny', 2)
    f.told('2026-09-10 09:00', 'ada', { type: 'cover', pile: 'ridge', material: 'tires', change: 'on', count: 100 })
    const stock = figures(() => [
      { item: 'tires', count: 240 },
      { item: 'plastic', count: 1, widthFt: 60, lengthFt: 150 },
    ])
    expect(shortFor(f.book, pileState(f.book, 'ridge')!, stock)).toEqual([])
  })
  it('of which nobody told anything are not called short', () => {
    expect(short(() => [])).toEqual([])
    expect(short(undefined)).toEqual([])
  })
  it('are spoken of once, in time to order, to the owner', () => {
    const f = new Farm()
    f.told('2026-07-01', 'ada', { type: 'pile', name: 'ridge' }, { type: 'harvest', crop: 'corn silage', on: '2026-09-10' })
    f.told('2026-07-01', 'ada', { type: 'supply', item: 'tires', change: 'have', count: 10 })
    const stock = figures(() => [{ item: 'tires', count: 10 }])
    expect(f.tick('2026-08-19 12:00', stock)).toEqual([])
    const said = f.tick('2026-08-20 06:00', stock)
    expect(said).toMatchObject([{ key: 'short:ridge:2026:planned', to: 'owner' }])
    expect(said[0]?.message).toMatchObject([
      { code: 'supply-head', data: { by: '2026-08-27', now: 'no' } },
      { code: 'supply-short' },
      { code: 'supply-short' },
    ])
    expect(f.tick('2026-08-21 06:00', stock)).toEqual([])
  })
})
