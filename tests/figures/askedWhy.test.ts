import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Answer, Ask } from '../../src/book/asks.ts'
import type { Message } from '../../src/book/questions.ts'
import { answer, isRefusal } from '../../src/figures/asked/answer.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

type Events = Record<string, unknown>[]
const asked = (events: Events, ask: Ask, day: string): Answer => {
  const a = answer(bookOf(events), ask, evening(day))
  if (isRefusal(a)) throw new Error(a.code)
  return a
}
const n = (a: Answer, slot: string): number => a[slot] as number
const lines = (a: Answer, slot: 'how' | 'notes'): Message[] => (a[slot] as Message[]) ?? []
const codes = (a: Answer, slot: 'how' | 'notes'): string[] => lines(a, slot).map(x => x.code)
const line = (a: Answer, code: string): Record<string, unknown> => lines(a, 'how').find(x => x.code === code)?.data ?? {}

const DAY = '2025-11-20'
const HERD: Events = [
  { type: 'ration', group: 'milking', head: 100, on: '2025-10-30' },
  { type: 'ration', crop: 'corn silage', lbPerHead: 80, on: '2025-10-30' },
  { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' },
  { type: 'harvest', crop: 'haylage', cut: 1, on: '2026-05-28' },
]
const TWO: Events = [
  ...upper(),
  { type: 'pile', name: 'lower', on: '2025-09-10', widthFt: 36, lengthFt: 100, heightFt: 8 },
  { type: 'load', pile: 'lower', crop: 'corn silage', count: 80, box: 'red', on: '2025-09-20' },
  { type: 'cover', pile: 'lower', material: 'plastic', change: 'on', on: '2025-09-21' },
  ...HERD,
]

describe('what-ifs keep the books', () => {
  type Leg = { pile: string; lbDry: number; days: number; opens: string; runsOut: string }
  it('whatever is bought or sold, the piles add up to what there is, and none holds less than nothing', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1_200_000, max: 900_000 }), fc.constantFrom(undefined, 'upper', 'lower'), (addLb, pile) => {
        const a = asked(TWO, { about: 'reach', addLb, ...(pile && { pile }) }, DAY)
        const legs = a.piles as Leg[]
        expect(legs.reduce((t, l) => t + l.lbDry, 0)).toBeCloseTo(n(a, 'lbDry'), 3)
        for (const l of legs) {
          expect(l.lbDry).toBeGreaterThanOrEqual(-1e-6)
          expect(l.runsOut >= l.opens).toBe(true)
        }
      }),
      { numRuns: 25 },
    )
  })
  it('a sale off one pile comes out of that pile', () => {
    const leg = (a: Answer, pile: string) => (a.piles as Leg[]).find(l => l.pile === pile)!
    const before = asked(TWO, { about: 'reach' }, DAY)
    const after = asked(TWO, { about: 'reach', addLb: -100_000, pile: 'lower' }, DAY)
    expect(leg(after, 'upper').lbDry).toBeCloseTo(leg(before, 'upper').lbDry, 6)
    expect(leg(before, 'lower').lbDry - leg(after, 'lower').lbDry).toBeCloseTo(n(before, 'lbDry') - n(after, 'lbDry'), 3)
  })
  it('days go against what is fed: a tenth less lasts a ninth longer, 8 lb more of 80 a head an eleventh shorter', () => {
    const days = n(asked(TWO, { about: 'reach' }, DAY), 'days')
    expect(n(asked(TWO, { about: 'reach', pctMore: -10 }, DAY), 'days')).toBeCloseTo(days / 0.9, 6)
    const use = n(asked(TWO, { about: 'reach' }, DAY), 'lbDayAsFed')
    expect(n(asked(TWO, { about: 'reach', perHeadMore: 8 }, DAY), 'days')).toBeCloseTo((days * use) / (use + 800), 6)
    expect(n(asked(TWO, { about: 'reach', perDayMore: 800 }, DAY), 'days')).toBeCloseTo((days * use) / (use + 800), 6)
  })
  it('a ration of one feed leaves the other as it is', () => {
    const both: Events = [
      ...upper(),
      { type: 'load', pile: 'upper', crop: 'haylage', count: 20, box: 'red', on: '2025-09-13' },
      { type: 'ration', crop: 'haylage', lbPerHead: 20, on: '2025-10-30' },
      ...HERD,
    ]
    const use = n(asked(both, { about: 'reach' }, DAY), 'lbDayAsFed')
    // 100 lb a head by the ration, 90 of it left
    const less = asked(both, { about: 'reach', crop: 'corn silage', lbPerHead: 70 }, DAY)
    expect(n(less, 'lbDayAsFed') / use).toBeCloseTo(0.9, 6)
    // The feed of the ration is not the harvest that is waited for.
    expect(less.until).toBe('2026-05-28')
  })
  it('a feed nobody has is not fed', () => {
    const a = answer(bookOf(TWO), { about: 'reach', crop: 'earlage', lbPerHead: 20 }, evening(DAY))
    expect(a).toMatchObject({ code: 'no-such-feed' })
  })
  it('what is over has a range around it', () => {
    const a = asked(TWO, { about: 'reach' }, DAY)
    expect(n(a, 'spareDaysLow')).toBeLessThan(n(a, 'spareDays'))
    expect(n(a, 'spareDaysHigh')).toBeGreaterThan(n(a, 'spareDays'))
    expect(n(a, 'spareLbAsFed') / n(a, 'spareLbDry')).toBeCloseTo(n(a, 'lbDayAsFed') / Number(line(a, 'how-day').lbDry), 6)
  })
})

describe('why: inputs, formulas, and what would help', () => {
  const KINDS: Ask[] = [
    { about: 'left', pile: 'upper' },
    { about: 'reach' },
    { about: 'density', pile: 'upper' },
    { about: 'face', pile: 'upper' },
    { about: 'cover', pile: 'upper' },
    { about: 'plan', lb: 800_000 },
    { about: 'ready', pile: 'lower' },
    { about: 'mix', pile: 'upper' },
    { about: 'checks', pile: 'lower' },
    { about: 'loss', pile: 'upper' },
    { about: 'loads', pile: 'upper' },
    { about: 'status', pile: 'upper' },
  ]
  it.each(KINDS.map(k => [k.about, k] as const))('%s names its formulas', (_, ask) => {
    const a = asked(TWO, ask, DAY)
    const by = lines(a, 'how').find(x => x.code === 'how-by')!
    const list = (by.data.formulas as Message).data.list as Message[]
    expect(list.length).toBeGreaterThan(0)
    for (const f of list) expect(f.code).toMatch(/^formula-/)
  })
  it('the farm: the one thing that narrows most really narrows, and what it leaves comes of it', () => {
    const a = asked(TWO, { about: 'reach' }, DAY)
    const half = (n(a, 'spareDaysHigh') - n(a, 'spareDaysLow')) / 2
    const better = line(a, 'how-narrow')
    expect(better.half).toBeCloseTo(half, 6)
    expect(better.after as number).toBeLessThan(0.9 * half)
    expect(['upper', 'lower']).toContain(better.pile)
  })
  it('density: between the packing and the tape, the surer is told of', () => {
    const packed: Events = [...TWO, { type: 'pack', pile: 'upper', tractors: 1, tractorLb: 30_000, layerIn: 6, on: '2025-09-12' }]
    for (const events of [TWO, packed]) {
      const d = line(asked(events, { about: 'density', pile: 'upper' }, DAY), 'how-narrow-density')
      expect(d.after as number).toBeLessThanOrEqual(d.half as number)
    }
  })
  it('face: the error of a rate is that of two readings over the days between, so more days make it less', () => {
    const events: Events = [
      ...TWO,
      { type: 'face', pile: 'upper', atFt: 8, on: '2025-11-11' },
      { type: 'face', pile: 'upper', atFt: 15, on: '2025-11-21' },
    ]
    const d = line(asked(events, { about: 'face', pile: 'upper' }, '2025-12-01'), 'how-narrow-face')
    // 20 days from the opening to the last reading, 30 with one today
    expect((d.after as number) / (d.half as number)).toBeCloseTo(20 / 30, 6)
  })
  it('loss: the widest cause is named with its part', () => {
    const d = line(asked(TWO, { about: 'loss', pile: 'upper' }, DAY), 'how-loss-widest')
    const causes = asked(TWO, { about: 'loss', pile: 'upper' }, DAY).causes as { cause: string; low: number; high: number }[]
    const widest = causes.reduce((x, y) => (y.high - y.low > x.high - x.low ? y : x))
    expect(d.cause).toBe(widest.cause)
    expect(d.share as number).toBeGreaterThan(1 / causes.length)
  })
})

describe('density', () => {
  const thin: Events = [...TWO, { type: 'pack', pile: 'upper', tractors: 1, tractorLb: 20_000, layerIn: 10, on: '2025-09-12' }]
  it('what thinness costs is what the table has over its loss at 15 lb (Ruppel 1992: 20.2 % at 10, 16.8 at 14, 15.9 at 15)', () => {
    const a = asked(thin, { about: 'density', pile: 'upper' }, DAY)
    const rho = n(a, 'dryLbFt3')
    expect(rho).toBeGreaterThan(10)
    expect(rho).toBeLessThan(14)
    expect(n(a, 'overPct')).toBeCloseTo(20.2 - ((rho - 10) / 4) * (20.2 - 16.8) - 15.9, 6)
    // 960,000 lb at the crop's usual dry matter
    expect(n(a, 'overLbDry')).toBeCloseTo((n(a, 'overPct') / 100) * 960_000 * (rho / n(a, 'bulkLbFt3')), 1)
    expect(n(a, 'dryLow')).toBeLessThan(rho)
  })
  it('the rule of 800 (Kaatz; Garcia) stands beside it', () => {
    const rule = asked(thin, { about: 'density', pile: 'upper' }, DAY).ruleOf800 as { wantLb: number; haveLb: number; tonsHour: number }
    expect(rule.haveLb).toBe(20_000)
    expect(rule.wantLb).toBeCloseTo(800 * rule.tonsHour, 6)
  })
  it('of the usual alone no verdict is given', () => {
    expect(asked(TWO, { about: 'density', pile: 'upper' }, DAY)).not.toHaveProperty('enough')
  })
  it('a weight that no such size can hold is said not to fit, and the packing is taken', () => {
    // 480 tons in 20 by 60 by 6 ft
    const tight: Events = [...thin, { type: 'size', pile: 'upper', widthFt: 20, lengthFt: 60, heightFt: 6, on: '2025-09-15' }]
    const a = asked(tight, { about: 'density', pile: 'upper' }, DAY)
    expect(a.basis).toBe('packing')
    expect(a).not.toHaveProperty('enough')
    expect(codes(a, 'notes')[0]).toBe('note-density-misfit')
  })
})
