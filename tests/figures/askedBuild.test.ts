import { describe, expect, it } from 'vitest'
import type { Answer, Ask } from '../../src/book/asks.ts'
import { apply } from '../../src/book/book.ts'
import type { Message } from '../../src/book/questions.ts'
import { answer, isRefusal } from '../../src/figures/asked/answer.ts'
import { fitFromStock, sheetNeed } from '../../src/figures/coverFit.ts'
import { coverArea } from '../../src/figures/shape.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

type Events = Record<string, unknown>[]
const asked = (events: Events, ask: Ask, day: string, prices: [string, number][] = []): Answer => {
  const book = bookOf(events)
  for (const [name, value] of prices)
    apply(book, { v: 1, n: book.last + 1, at: `${day}T12:00:00.000Z`, by: 'ada', body: { kind: 'setting', name: `price:${name}`, value } })
  const a = answer(book, ask, evening(day))
  if (isRefusal(a)) throw new Error(a.code)
  return a
}
const refused = (events: Events, ask: Ask, day: string): string => {
  const a = answer(bookOf(events), ask, evening(day))
  return isRefusal(a) ? a.code : ''
}
const n = (a: Answer, slot: string): number => a[slot] as number
const notes = (a: Answer): Message[] => (a.notes as Message[]) ?? []
const codes = (a: Answer): string[] => notes(a).map(x => x.code)
const DAY = '2025-11-20'
const covering = (material: string, change: string, on: string, more: object = {}) => ({
  type: 'cover',
  pile: 'upper',
  material,
  change,
  on,
  ...more,
})

describe('covering', () => {
  it('tires come off with the sheet: put on twice they lie there once', () => {
    const events: Events = [
      { type: 'supply', item: 'tires', change: 'have', count: 100, on: '2025-09-01' },
      ...upper([
        covering('tires', 'on', '2025-09-14', { count: 50 }),
        covering('plastic', 'off', '2025-09-20'),
        covering('plastic', 'on', '2025-09-21'),
        covering('tires', 'on', '2025-09-21', { count: 50 }),
      ]),
    ]
    const a = asked(events, { about: 'cover', pile: 'upper' }, DAY)
    const free = (asked(events, { about: 'supplies', item: 'tires' }, DAY).items as { count: number }[])[0]!.count
    expect(n(a, 'tiresShort')).toBe(n(a, 'tires') - free - 50)
  })
  it('barrier film under the plastic saves 0.195 - 0.114 of the layer half a meter deep (Wilkinson & Fenlon 2014), at its price', () => {
    const a = asked(upper(), { about: 'cover', pile: 'upper' }, DAY, [['corn silage', 50]])
    const second = a.second as { lbDry: number; value: number }
    const area = coverArea({ section: 'crowned', widthFt: 36, lengthFt: 100, heightFt: 8 })
    // 1.64 ft of it, at nine tenths of the 14.5 lb that corn silage usually packs to
    expect(second.lbDry).toBeCloseTo(area * (0.5 / 0.3048) * 0.9 * 14.5 * (0.195 - 0.114), 0)
    expect(second.value).toBeCloseTo((second.lbDry / 0.345 / 2000) * 50, -2)
    expect(asked(upper(), { about: 'cover', pile: 'upper' }, DAY).second).not.toHaveProperty('value')
  })
  it('and none where it lies there already', () => {
    expect(asked(upper([covering('barrier film', 'on', '2025-09-14')]), { about: 'cover', pile: 'upper' }, DAY)).not.toHaveProperty(
      'second',
    )
  })
  it('two narrow sheets lie side by side where neither is wide enough alone', () => {
    const need = sheetNeed({ section: 'crowned', widthFt: 70, lengthFt: 90, heightFt: 10 })
    const fit = fitFromStock(need, [{ widthFt: 42, lengthFt: 130, count: 2 }])!
    expect(fit.sheets).toHaveLength(2)
    expect(42 + 42 - 4).toBeGreaterThanOrEqual(need.widthFt - 2)
    expect(fitFromStock(need, [{ widthFt: 42, lengthFt: 130, count: 1 }])).toBeUndefined()
  })
  it('of a pile whose size nobody told, as such a pile is usually built, and said so', () => {
    const bare = [
      { type: 'pile', name: 'upper', on: '2025-09-10' },
      { type: 'load', pile: 'upper', crop: 'corn silage', lb: 960_000, on: '2025-09-12' },
    ]
    const a = asked(bare, { about: 'cover', pile: 'upper' }, DAY)
    expect(codes(a)).toContain('note-size-assumed')
    expect(n(a, 'widthFt')).toBeGreaterThan(20)
    expect(refused(bare.slice(0, 1), { about: 'cover', pile: 'upper' }, DAY)).toBe('no-size-told')
  })
})

describe('planning', () => {
  const herd = [{ type: 'ration', crop: 'corn silage', lbPerDay: 9000, on: '2025-09-01' }]
  it('what is too long for one is several that hold as much', () => {
    const a = asked(herd, { about: 'plan', crop: 'corn silage', lb: 6_000_000 }, DAY)
    expect(n(a, 'lengthFt')).toBeGreaterThan(300)
    const piles = a.piles as { n: number; lengthFt: number }
    expect(piles.n).toBe(Math.ceil(n(a, 'lengthFt') / 300))
    const one = asked(herd, { about: 'plan', crop: 'corn silage', lb: 6_000_000 / piles.n }, DAY)
    expect(one.lengthFt).toBeCloseTo(piles.lengthFt, 6)
    expect(n(one, 'lbAsFed') * piles.n).toBeCloseTo(6_000_000, -3)
  })
  it('a herd too small hears it in one breath, with the height and the rate it comes to', () => {
    const a = asked([{ type: 'ration', crop: 'corn silage', lbPerDay: 900, on: '2025-09-01' }], { about: 'plan', days: 120 }, DAY)
    expect(codes(a)[0]).toBe('note-plan-below-least')
    expect(notes(a)[0]!.data.heightFt).toBe(a.heightFt)
    expect(n(a, 'heightFt')).toBeLessThan(5)
  })
  it('takes a sheet from stock where one fits', () => {
    const stock = [...herd, { type: 'supply', item: 'plastic', change: 'have', count: 1, widthFt: 80, lengthFt: 250, on: '2025-09-01' }]
    const cover = asked(stock, { about: 'plan', crop: 'corn silage', lb: 800_000 }, DAY).cover as { fromStock: boolean; waste: number }
    expect(cover.fromStock).toBe(true)
    expect(cover.waste).toBeGreaterThan(0)
    expect((asked(herd, { about: 'plan', crop: 'corn silage', lb: 800_000 }, DAY).cover as { fromStock: boolean }).fromStock).toBe(false)
  })
})

describe('the mix', () => {
  const layered: Events = [
    { type: 'pile', name: 'upper', on: '2025-06-01', widthFt: 36, lengthFt: 100, heightFt: 8 },
    { type: 'load', pile: 'upper', crop: 'haylage', lb: 400_000, on: '2025-06-02' },
    { type: 'load', pile: 'upper', crop: 'corn silage', lb: 800_000, on: '2025-09-12' },
  ]
  const feeding = (atFt: number): Events => [
    ...layered,
    { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' },
    { type: 'ration', pile: 'upper', lbPerDay: 9000, on: '2025-11-01' },
    { type: 'face', pile: 'upper', atFt, on: DAY },
  ]
  it('two to one in the whole, and at the face behind the ramp', () => {
    const a = asked(feeding(50), { about: 'mix', pile: 'upper' }, DAY)
    expect(a.ratio).toMatchObject({ more: 'corn silage', less: 'haylage' })
    expect((a.ratio as { to: number }).to).toBeCloseTo(2, 6)
    expect((a.faceRatio as { more: string; to: number }).more).toBe('corn silage')
    expect((a.faceRatio as { to: number }).to).toBeCloseTo(2, 0)
  })
  it('warns of the turn before anything else', () => {
    const a = asked(feeding(12), { about: 'mix', pile: 'upper' }, DAY)
    expect(codes(a)[0]).toBe('note-mix-turns')
    expect(notes(a)[0]!.data.crop).toBe('corn silage')
  })
})

describe('what does not fit', () => {
  const open = { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' }
  const ration = { type: 'ration', pile: 'upper', lbPerDay: 8000, on: '2025-11-01' }
  it('a face that went back is named with both readings', () => {
    const back = [
      open,
      ration,
      { type: 'face', pile: 'upper', atFt: 20, on: '2025-11-20' },
      { type: 'face', pile: 'upper', atFt: 8, on: '2025-11-25' },
    ]
    const a = asked(upper(back), { about: 'left', pile: 'upper' }, '2025-11-26')
    expect(notes(a).find(x => x.code === 'note-face-back')?.data).toMatchObject({ wasFt: 20, atFt: 8 })
  })
  it('fed many times over, no face is said to race', () => {
    const gone = [open, ration, { type: 'feed', pile: 'upper', lb: 3_000_000, on: '2025-11-10' }]
    const a = answer(bookOf(upper(gone)), { about: 'face', pile: 'upper' }, evening('2025-11-20'))
    if (isRefusal(a)) expect(a.code).toBe('no-face-known')
    else expect(a.inPerDay as number).toBeLessThanOrEqual(96)
  })
  it('what is not there is worth nothing, and no price is asked for it', () => {
    expect(refused([{ type: 'pile', name: 'upper', on: '2025-09-10' }], { about: 'status', pile: 'upper', worth: true }, DAY)).toBe(
      'nothing-in-pile',
    )
  })
  it('a walk that is over its day is late by so many', () => {
    const a = asked(upper(), { about: 'checks', pile: 'upper' }, DAY)
    // covered on 14 September, a week on
    expect(a).toMatchObject({ next: '2025-09-21', late: 60 })
    expect(asked(upper(), { about: 'checks', pile: 'upper' }, '2025-09-20')).not.toHaveProperty('late')
  })
})
