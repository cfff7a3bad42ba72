import { describe, expect, it } from 'vitest'
import type { Answer, Ask } from '../../src/book/asks.ts'
import { apply } from '../../src/book/book.ts'
import { answer, isRefusal } from '../../src/figures/asked/answer.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

const DAY = '2025-11-01'
/** Two piles alike, one of them open, a herd of 100, a harvest ahead. */
const EVENTS = [
  ...upper(),
  { type: 'pile', name: 'lower', on: '2025-09-10', widthFt: 36, lengthFt: 100, heightFt: 8 },
  { type: 'load', pile: 'lower', crop: 'corn silage', count: 80, box: 'red', on: '2025-09-20' },
  { type: 'cover', pile: 'lower', material: 'plastic', change: 'on', on: '2025-09-21' },
  { type: 'ration', group: 'milking', head: 100, on: '2025-10-30' },
  { type: 'ration', crop: 'corn silage', lbPerHead: 80, on: '2025-10-30' },
  { type: 'open', pile: 'upper', why: 'feed', on: DAY },
  { type: 'harvest', crop: 'haylage', cut: 1, on: '2026-05-28' },
]
const asked = (ask: Partial<Ask>, price?: [string, number][]): Answer => {
  const book = bookOf(EVENTS)
  for (const [name, value] of price ?? [])
    apply(book, { v: 1, n: book.last + 1, at: `${DAY}T12:00:00.000Z`, by: 'ada', body: { kind: 'setting', name: `price:${name}`, value } })
  const a = answer(book, { about: 'reach', ...ask }, evening(DAY))
  if (isRefusal(a)) throw new Error(a.code)
  return a
}
const n = (a: Answer, slot: string): number => a[slot] as number

describe('what-ifs', () => {
  const days = n(asked({}), 'days')
  it('a quarter more cows eat the same feed in four fifths of the days', () => {
    expect(n(asked({ head: 125 }), 'days')).toBeCloseTo(days * 0.8, 6)
    expect(n(asked({ headMore: 25 }), 'days')).toBeCloseTo(days * 0.8, 6)
    expect(n(asked({ headMore: -20 }), 'days')).toBeCloseTo(days / 0.8, 6)
  })
  it('a late harvest is a longer way, a sale less to go on', () => {
    const late = asked({ delayDays: 14 })
    expect(late.until).toBe('2026-06-11')
    expect(n(late, 'spareDays')).toBeCloseTo(n(asked({}), 'spareDays') - 14, 6)
    // 40 short tons at what the herd eats a day
    const sold = asked({ addLb: -80_000 })
    expect(days - n(sold, 'days')).toBeCloseTo(80_000 / n(sold, 'lbDayAsFed'), 6)
  })
  it('two piles fed at once last as long together, and each twice as long as alone', () => {
    const both = asked({ together: ['upper', 'lower'] })
    expect(n(both, 'days')).toBeCloseTo(days, 6)
    const leg = (a: Answer, pile: string) => (a.piles as { pile: string; days: number; opens: string }[]).find(l => l.pile === pile)!
    expect(leg(both, 'upper').days).toBeCloseTo(2 * leg(asked({}), 'upper').days, 6)
    expect(leg(both, 'lower').opens).toBe(DAY)
    expect(leg(asked({}), 'lower').opens > DAY).toBe(true)
  })
})

describe('money', () => {
  it('is silent without a price, and is price times tons with one', () => {
    expect(asked({ about: 'status', pile: 'upper' }).value).toBeUndefined()
    expect(asked({ about: 'loss', pile: 'upper' }).cost).toBeUndefined()
    expect(asked({ about: 'cover', pile: 'upper' }).costPerTon).toBeUndefined()
    const priced: [string, number][] = [
      ['corn silage', 55],
      ['plastic', 300],
    ]
    const left = asked({ about: 'left', pile: 'upper' })
    expect(asked({ about: 'status', pile: 'upper' }, priced).value).toBeCloseTo((n(left, 'lbAsFed') / 2000) * 55, 4)
    // 80 loads of 12,000 lb are 480 tons
    expect(asked({ about: 'cover', pile: 'upper' }, priced).costPerTon).toBeCloseTo(300 / 480, 6)
    const loss = asked({ about: 'loss', pile: 'upper' }, priced)
    expect(n(loss, 'cost')).toBeGreaterThan(0.1 * 480 * 55)
    expect(n(loss, 'cost')).toBeLessThan(0.3 * 480 * 55)
  })
  it('stays silent where only a part of the feed has a price', () => {
    expect(asked({ about: 'status', pile: 'upper' }, [['haylage', 70]]).value).toBeUndefined()
  })
})
