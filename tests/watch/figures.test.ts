import { describe, expect, it } from 'vitest'
import type { Ask } from '../../src/book/asks.ts'
import { figuresFrom } from '../../src/watch/figures.ts'
import { Farm } from './farm.ts'

/** What the one place that answers gives, slot by slot. */
const ANSWERS: Record<string, object> = {
  left: { pile: 'glen', days: 42, daysLow: 36, daysHigh: 49, runsOut: '2026-12-20', lbDry: 1 },
  face: { pile: 'glen', inPerDay: 6, minInPerDay: 3, enough: true },
  status: { pile: 'glen', faceFt: 12 },
  cover: { pile: 'glen', widthFt: 50, lengthFt: 130, tires: 1300, fromStock: false },
  ready: { pile: 'glen', readyOn: '2026-10-11' },
  supplies: { items: [{ item: 'tires', count: 340 }, { item: 'plastic' }, 'rubbish'] },
  loads: { pile: 'glen', count: 4, lbAsFed: 48000 },
}
const wrap: [string, (about: string) => unknown][] = [
  ['an answer', about => ({ about, ...ANSWERS[about] })],
  [
    'a list of answers',
    about =>
      [
        { about, pile: 'other' },
        { about, ...ANSWERS[about], pile: about === 'supplies' ? undefined : 'glen' },
      ].slice(about === 'supplies' ? 1 : 0),
  ],
  ['a wrapped answer', about => ({ ok: true, answer: { about, ...ANSWERS[about] } })],
]

describe('the figures of the watch', () => {
  it.each(wrap)('are taken out of %s', (_, give) => {
    const f = figuresFrom(new Farm().book, 0, (_book, ask: Ask) => give(ask.about))
    expect(f.daysLeft!('glen')).toEqual({ days: 42, low: 36, high: 49, runsOut: '2026-12-20' })
    expect(f.faceRate!('glen')).toEqual({ inPerDay: 6, minInPerDay: 3, enough: true })
    expect(f.faceAt!('glen')).toBe(12)
    expect(f.need!('glen')).toEqual({ widthFt: 50, lengthFt: 130, tires: 1300, fromStock: false })
    expect(f.readyOn!('glen')).toBe('2026-10-11')
    expect(f.stock!()).toEqual([{ item: 'tires', count: 340 }])
    expect(f.hauledLb!('glen', '2026-09-10', '2026-09-10')).toBe(48000)
  })
  it.each([[undefined], [null], [{ code: 'no-size', data: {} }], [{ about: 'left', days: Number.NaN }], [[]], ['what']])(
    'are not known where the answer is %j',
    bad => {
      const f = figuresFrom(new Farm().book, 0, () => bad)
      expect([f.daysLeft!('x'), f.faceRate!('x'), f.faceAt!('x'), f.need!('x'), f.readyOn!('x'), f.hauledLb!('x', 'a', 'b')]).toEqual(
        Array(6).fill(undefined),
      )
      expect(f.stock!()).toEqual([])
    },
  )
  it('are worked out once for one look', () => {
    let asked = 0
    const f = figuresFrom(new Farm().book, 0, (_book, ask: Ask) => {
      asked++
      return { about: ask.about, days: 3 }
    })
    f.daysLeft!('glen')
    f.daysLeft!('glen')
    f.daysLeft!('hill')
    expect(asked).toBe(2)
  })
})
