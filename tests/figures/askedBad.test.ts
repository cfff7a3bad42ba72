import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { ASKS, type Ask } from '../../src/book/asks.ts'
import { answer, isRefusal, pilesFor } from '../../src/figures/asked/answer.ts'
import { addDays } from '../../src/units/calendar.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

const open = { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' }
const ration = { type: 'ration', pile: 'upper', lbPerDay: 8000, on: '2025-11-01' }
const notes = (events: Record<string, unknown>[], a: Ask, day: string): unknown[] => {
  const r = answer(bookOf(events), a, evening(day))
  if (isRefusal(r)) throw new Error(r.code)
  return (r.notes as { code: string }[]).map(x => x.code)
}

describe('what does not fit is named, and a figure still given', () => {
  it('more fed than was there', () => {
    const fed = Array.from({ length: 150 }, (_, i) => ({ type: 'feed', pile: 'upper', lb: 8100, on: addDays('2025-11-01', i) }))
    expect(notes(upper([open, ration, ...fed]), { about: 'left', pile: 'upper' }, '2026-03-30')).toContain('note-overfed')
  })
  it('a face past the end, and one that moves back', () => {
    const face = (on: string, atFt: number) => ({ type: 'face', pile: 'upper', atFt, on })
    expect(notes(upper([open, ration, face('2025-11-20', 140)]), { about: 'left', pile: 'upper' }, '2025-11-21')).toContain(
      'note-face-past-end',
    )
    const back = answer(
      bookOf(upper([open, ration, face('2025-11-20', 20), face('2025-11-25', 8)])),
      { about: 'left', pile: 'upper' },
      evening('2025-11-26'),
    )
    expect(isRefusal(back)).toBe(false)
  })
  it('a height above half the width', () => {
    const odd = [...upper([open, ration]), { type: 'size', pile: 'upper', widthFt: 20, heightFt: 14, on: '2025-09-15' }]
    expect(notes(odd, { about: 'left', pile: 'upper' }, '2025-11-21')).toContain('note-size-odd')
    expect(notes(odd, { about: 'cover', pile: 'upper' }, '2025-11-21')).toContain('note-height-above-half-width')
  })
  it('no ration but the head: worked out, and said so', () => {
    expect(
      notes(
        upper([open, { type: 'ration', group: 'milking', head: 120, on: '2025-11-01' }]),
        { about: 'left', pile: 'upper' },
        '2025-11-21',
      ),
    ).toContain('note-intake')
  })
  it('no ration, but the face tells', () => {
    const faces = [{ type: 'face', pile: 'upper', atFt: 20, on: '2025-11-21' }]
    expect(notes(upper([open, ...faces]), { about: 'left', pile: 'upper' }, '2025-11-21')).toContain('note-no-ration')
  })
})

const day = fc.integer({ min: 0, max: 200 }).map(i => addDays('2025-09-10', i))
const lb = fc.integer({ min: 1, max: 3_000_000 })
const ft = fc.double({ min: 0, max: 400, noNaN: true })
const pile = fc.constantFrom('upper', 'well')
const one = (type: string, slots: Record<string, fc.Arbitrary<unknown>>) => fc.record({ type: fc.constant(type), on: day, ...slots })
const event = fc.oneof(
  one('load', { pile, crop: fc.constantFrom('haylage', 'corn silage', 'weeds'), count: fc.integer({ min: 1, max: 90 }) }),
  one('load', { pile, crop: fc.constant('haylage'), lb, dmPct: fc.integer({ min: 5, max: 95 }) }),
  one('feed', { pile, lb }),
  one('feed', { pile, count: fc.integer({ min: 1, max: 9 }), unit: fc.constantFrom('load', 'bucket', 'batch') }),
  one('feed', { pile, ft }),
  one('face', { pile, atFt: ft }),
  one('face', { pile, leftFt: ft }),
  one('spoil', { pile, lb }),
  one('shift', { pile: fc.constant('well'), toPile: fc.constant('upper'), ft }),
  one('size', { pile, widthFt: ft, lengthFt: ft, heightFt: ft }),
  one('pack', {
    pile,
    tractorLb: lb,
    layerIn: fc.double({ min: 0.1, max: 80, noNaN: true }),
    hours: fc.double({ min: 0.01, max: 90, noNaN: true }),
  }),
  one('test', { pile, dmPct: fc.integer({ min: 5, max: 95 }) }),
  one('ration', { pile, lbPerDay: lb, basis: fc.constantFrom('as fed', 'dry') }),
  one('ration', { crop: fc.constant('haylage'), lbPerHead: fc.integer({ min: 1, max: 200 }), head: fc.integer({ min: 1, max: 5000 }) }),
  one('cover', {
    pile,
    material: fc.constantFrom('plastic', 'tires', 'mesh', 'barrier film'),
    change: fc.constantFrom('on', 'off', 'back'),
    count: fc.integer({ min: 1, max: 400 }),
  }),
  one('open', { pile, why: fc.constantFrom('feed', 'add') }),
  one('empty', { pile }),
  one('harvest', { crop: fc.constant('haylage') }),
  one('supply', {
    item: fc.constantFrom('tires', 'plastic'),
    change: fc.constantFrom('add', 'use', 'have'),
    count: fc.integer({ min: 0, max: 500 }),
  }),
)

const finite = (x: unknown): boolean =>
  typeof x === 'number' ? Number.isFinite(x) : x !== null && typeof x === 'object' ? Object.values(x).every(finite) : x !== undefined

describe('any book at all', () => {
  it('is answered or refused, with no figure that is none, and no interval that does not hold its middle', () => {
    fc.assert(
      fc.property(fc.array(event, { minLength: 1, maxLength: 25 }), day, fc.boolean(), (events, today, named) => {
        const sorted = [...events].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
        const book = bookOf([
          { type: 'pile', name: 'upper', on: '2025-09-01', ...(named && { widthFt: 40, lengthFt: 120 }) },
          { type: 'pile', name: 'well', on: '2025-09-01' },
          ...sorted,
        ])
        const now = evening(today)
        for (const about of ASKS) {
          for (const p of [undefined, 'upper', 'well']) {
            const a: Ask = {
              about,
              ...(p && { pile: p }),
              ...(about === 'plan' && { days: 100 }),
              ...(about === 'reach' && { until: '2026-05-01' }),
            }
            pilesFor(book, a)
            const r = answer(book, a, now)
            if (isRefusal(r)) {
              expect(r.code).not.toBe('figures-do-not-fit')
              expect(finite(r.data)).toBe(true)
              continue
            }
            expect([about, finite(r)]).toEqual([about, true])
            if (about === 'left') {
              expect(r.daysLow as number).toBeLessThanOrEqual(r.days as number)
              expect(r.daysHigh as number).toBeGreaterThanOrEqual(r.days as number)
              expect(r.daysLow as number).toBeGreaterThanOrEqual(0)
            }
          }
        }
      }),
      { numRuns: 80 },
    )
  })
})
