import { describe, expect, it } from 'vitest'
import type { Answer, Ask } from '../../src/book/asks.ts'
import { answer, isRefusal, pilesFor } from '../../src/figures/asked/answer.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

const ask = (events: Record<string, unknown>[], a: Ask, day: string): Answer => {
  const r = answer(bookOf(events), a, evening(day))
  if (isRefusal(r)) throw new Error(`${r.code} ${JSON.stringify(r.data)}`)
  return r
}
const refused = (events: Record<string, unknown>[], a: Ask, day: string) => {
  const r = answer(bookOf(events), a, evening(day))
  if (!isRefusal(r)) throw new Error(`answered: ${JSON.stringify(r)}`)
  return r
}
const n = (a: Answer, slot: string): number => a[slot] as number

const opened = [
  { type: 'ration', pile: 'upper', lbPerDay: 8000, on: '2025-11-01' },
  { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' },
]

describe('days left', () => {
  // Mass balance by hand: 960,000 lb in by the boxes; less 10 to 25 % (range of good piles: 15 to 25 %, Roach and Kammel; 15 %,
  // Muck) and boxes
  // that run light leave 700,000 to 870,000 lb, so 85 to 110 days at 8,000.
  it('starts from loads, loss and ration', () => {
    const a = ask(upper(opened), { about: 'left', pile: 'upper' }, '2025-11-01')
    expect(n(a, 'days')).toBeGreaterThan(85)
    expect(n(a, 'days')).toBeLessThan(110)
    expect(n(a, 'daysLow')).toBeLessThan(n(a, 'days'))
    expect(n(a, 'daysHigh')).toBeGreaterThan(n(a, 'days'))
    expect(n(a, 'lbDry') / n(a, 'lbAsFed')).toBeCloseTo(0.35, 1)
  })

  it('counts a day without a log as a day when cows ate', () => {
    const start = ask(upper(opened), { about: 'left', pile: 'upper' }, '2025-11-01')
    const later = ask(upper(opened), { about: 'left', pile: 'upper' }, '2025-12-01')
    expect(n(start, 'days') - n(later, 'days')).toBeGreaterThan(28)
    expect(n(start, 'days') - n(later, 'days')).toBeLessThan(32)
  })

  it('says the day it runs out', () => {
    const a = ask(upper(opened), { about: 'left', pile: 'upper' }, '2025-11-01')
    const days = Math.round((Date.parse(a.runsOut as string) - Date.parse('2025-11-01')) / 86_400_000)
    expect(days).toBe(Math.floor(n(a, 'days')))
  })

  it('refuses a pile without feed, an unknown one, and one without a ration, and says what is missing', () => {
    expect(refused([{ type: 'pile', name: 'sand', on: '2025-09-01' }], { about: 'left', pile: 'sand' }, '2025-09-02').code).toBe(
      'nothing-in-pile',
    )
    expect(refused(upper(), { about: 'left', pile: 'nowhere' }, '2025-09-20').code).toBe('no-such-pile')
    const r = refused(upper(), { about: 'left', pile: 'upper' }, '2025-09-20')
    expect(r.code).toBe('no-ration-known')
    expect(r.data.lbAsFed).toBeGreaterThan(700_000)
    expect(refused(upper([{ type: 'empty', pile: 'upper', on: '2026-02-01' }]), { about: 'left', pile: 'upper' }, '2026-02-02').code).toBe(
      'nothing-in-pile',
    )
  })
})

describe('reach', () => {
  const farm = upper([...opened, { type: 'harvest', crop: 'haylage', cut: 1, on: '2026-05-28' }])
  it('is short where the feed ends before the harvest, and says by how much', () => {
    const a = ask(farm, { about: 'reach' }, '2025-11-01')
    expect(a.until).toBe('2026-05-28')
    expect(n(a, 'spareLbDry')).toBeLessThan(0)
    expect((a.ranOutOn as string) < '2026-05-28').toBe(true)
    // By hand: 208 days at 8,000 lb and over, against what is there.
    const need = n(a, 'lbDayAsFed') * 208
    expect(
      -n(a, 'spareLbDry') / (n(a, 'lbDry') / (n(a, 'days') * n(a, 'lbDayAsFed'))) / (need - n(a, 'days') * n(a, 'lbDayAsFed')),
    ).toBeCloseTo(1, 6)
  })
  it('takes another day, another ration and bought feed as what-ifs', () => {
    const days = (a: Ask) => n(ask(farm, a, '2025-11-01'), 'days')
    expect(ask(farm, { about: 'reach', until: '2025-12-01' }, '2025-11-01').ranOutOn).toBeUndefined()
    expect(days({ about: 'reach', lbPerDay: 4000 })).toBeGreaterThan(1.9 * days({ about: 'reach' }))
    expect(days({ about: 'reach', addLb: 200_000 })).toBeGreaterThan(days({ about: 'reach' }) + 15)
    expect(ask(farm, { about: 'reach', delayDays: 14 }, '2025-11-01').until).toBe('2026-06-11')
  })
  it('says which figure is missing', () => {
    const open = ask(upper(opened), { about: 'reach' }, '2025-11-01')
    expect(open.until).toBeUndefined()
    expect(open.days).toBeGreaterThan(0)
    expect(open.notes).toContainEqual({ code: 'note-no-harvest', data: {} })
    expect(refused(farm, { about: 'reach', head: 130 }, '2025-11-01').code).toBe('no-head-known')
  })
})

describe('plain facts', () => {
  it('adds up the loads', () => {
    const a = ask(upper(), { about: 'loads', pile: 'upper' }, '2025-09-20')
    expect(a).toMatchObject({ count: 80, lbAsFed: 960_000, pile: 'upper' })
    expect(ask(upper(), { about: 'loads', from: '2025-09-13', to: '2025-09-13' }, '2025-09-20')).toMatchObject({
      count: 35,
      lbAsFed: 420_000,
    })
    expect(ask(upper(), { about: 'loads', crop: 'haylage', pile: 'upper' }, '2025-09-20')).toMatchObject({ count: 0, lbAsFed: 0 })
  })
  it('gives the state of a pile', () => {
    const a = ask(
      upper([
        ...opened,
        { type: 'face', pile: 'upper', atFt: 22, on: '2025-11-20' },
        { type: 'damage', pile: 'upper', cause: 'animal', count: 2, on: '2025-11-20' },
      ]),
      { about: 'status', pile: 'upper' },
      '2025-11-21',
    )
    expect(a).toMatchObject({ stage: 'feeding', sealedOn: '2025-09-14', faceFt: 22, openDamage: 2 })
    expect((a.crops as Answer[])[0]).toMatchObject({ crop: 'corn silage', count: 80, lbAsFed: 960_000 })
  })
  // Danger of silo gas up to three weeks after filling (Penn State, Michigan State): 2025-09-14 and 21 days.
  it('keeps a covered pile shut for three weeks', () => {
    expect(ask(upper(), { about: 'ready', pile: 'upper' }, '2025-09-20')).toMatchObject({
      sealedOn: '2025-09-14',
      readyOn: '2025-10-05',
      ready: false,
    })
    expect(ask(upper(), { about: 'ready', pile: 'upper' }, '2025-10-05')).toMatchObject({ ready: true })
  })
  it('shares a pile by weight', () => {
    const a = ask(
      [
        { type: 'pile', name: 'well', on: '2025-06-01', widthFt: 30, lengthFt: 80 },
        { type: 'load', pile: 'well', crop: 'haylage', cut: 1, lb: 200_000, on: '2025-06-02' },
        { type: 'load', pile: 'well', crop: 'corn silage', lb: 300_000, on: '2025-09-12' },
      ],
      { about: 'mix', pile: 'well' },
      '2025-09-20',
    )
    const shares = a.shares as { crop: string; share: number }[]
    expect(shares.map(s => [s.crop, s.share])).toEqual([
      ['haylage', 0.4],
      ['corn silage', 0.6],
    ])
  })
  it('counts the stock through the coverings', () => {
    const events = upper([
      { type: 'supply', item: 'tires', change: 'have', count: 400, on: '2025-09-01' },
      { type: 'supply', item: 'plastic', change: 'add', count: 2, widthFt: 50, lengthFt: 150, on: '2025-09-20' },
      { type: 'cover', pile: 'upper', material: 'tires', change: 'on', count: 150, on: '2025-09-14' },
      { type: 'cover', pile: 'upper', material: 'tires', change: 'off', count: 20, on: '2025-11-14' },
    ])
    expect(ask(events, { about: 'supplies' }, '2025-11-20').items).toEqual([
      { item: 'tires', count: 270 },
      { item: 'plastic', count: 2, widthFt: 50, lengthFt: 150 },
    ])
    expect(
      ask([...events, { type: 'empty', pile: 'upper', on: '2026-02-01' }], { about: 'supplies', item: 'tires' }, '2026-02-02').items,
    ).toEqual([{ item: 'tires', count: 400 }])
  })
  it('tells who and what happened', () => {
    const cover = ask(upper(), { about: 'who', type: 'cover', pile: 'upper' }, '2025-09-20')
    expect(cover.events?.map(e => [e.type, e.by])).toEqual([['cover', 'ada']])
    expect(ask(upper(), { about: 'history', pile: 'upper', from: '2025-09-12', to: '2025-09-13' }, '2025-09-20').events).toHaveLength(2)
  })
})

describe('which pile is meant', () => {
  const two = upper([
    { type: 'pile', name: 'well', on: '2025-06-01' },
    { type: 'load', pile: 'well', crop: 'haylage', count: 10, on: '2025-06-02' },
    ...opened,
  ])
  it('is the one being fed for days left and the face', () => {
    expect(pilesFor(bookOf(two), { about: 'left' })).toEqual(['upper'])
    expect(pilesFor(bookOf(two), { about: 'face' })).toEqual(['upper'])
  })
  it('is asked where several fit', () => {
    expect(refused(two, { about: 'status' }, '2025-11-02')).toMatchObject({ code: 'which-pile', data: { piles: ['well', 'upper'] } })
  })
})
