import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { endedPiles } from '../../src/figures/farm/earlier.ts'
import { estimate } from '../../src/figures/farm/estimate.ts'
import { addDays } from '../../src/units/calendar.ts'
import { bookOf, evening, upper } from './askedFarm.ts'

/**
 * A year on the upper pile: fed at so much a day, every day logged, for so many days, then all gone; and filled again by the same
 * boxes.
 */
const year = (lbDay: number, days: number): Record<string, unknown>[] => [
  ...upper([{ type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' }]),
  ...Array.from({ length: days }, (_, i) => ({
    type: 'feed',
    pile: 'upper',
    lb: lbDay + ((i % 5) - 2) * 50,
    on: addDays('2025-11-01', i),
  })),
  { type: 'empty', pile: 'upper', on: addDays('2025-11-01', days) },
  { type: 'load', pile: 'upper', crop: 'corn silage', count: 80, box: 'red', on: '2026-09-12' },
  { type: 'ration', pile: 'upper', lbPerDay: lbDay, on: '2026-11-01' },
  { type: 'open', pile: 'upper', why: 'feed', on: '2026-11-01' },
]
const next = (events: Record<string, unknown>[]) => {
  const book = bookOf(events)
  return estimate(book, pileState(book, 'upper')!, evening('2026-11-01'))
}

describe('what earlier piles of the same boxes showed', () => {
  const fresh = next(year(8000, 97).slice(-3).concat(upper().slice(0, 2)))

  it('carries boxes that ran light over to the next pile, not the whole of it', () => {
    // 85 days at 8,000 came out of what 97 were expected of.
    const e = next(year(8000, 85))
    expect(e.evidence.shown?.piles).toEqual(['upper'])
    expect(e.whole.lb).toBeLessThan(0.97 * fresh.whole.lb)
    expect(e.whole.lb).toBeGreaterThan((85 / 97) * fresh.whole.lb)
    expect(e.whole.sd).toBeLessThan(fresh.whole.sd)
  })

  it('carries over boxes that held more', () => {
    expect(next(year(8000, 112)).whole.lb).toBeGreaterThan(1.03 * fresh.whole.lb)
  })

  it('does not carry over what other boxes showed', () => {
    const other = year(8000, 85).map(e => (e.type === 'load' && e.on === '2026-09-12' ? { ...e, box: 'blue' } : e))
    expect(next([...other, { type: 'box', name: 'blue', lb: 12_000, on: '2026-09-01' }]).evidence.shown).toBeUndefined()
  })

  it('knows every life of a slab that came to its end', () => {
    const ended = endedPiles(bookOf(year(8000, 85)), '2026-11-01')
    expect(ended.map(p => [p.name, p.emptyOn, p.loads.length, p.feeds.length])).toEqual([['upper', '2026-01-25', 2, 85]])
  })
})
