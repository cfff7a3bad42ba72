import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { edgePlan } from '../../src/watch/edge.ts'
import type { WatchFigures } from '../../src/watch/item.ts'
import { Farm } from './farm.ts'

const at = (ft: number, inPerDay = 12, days = 40): WatchFigures => ({
  faceAt: () => ft,
  faceRate: () => ({ inPerDay, minInPerDay: 4, enough: true }),
  daysLeft: () => ({ days }),
})
const lane = (): Farm => {
  const f = new Farm()
  f.told(
    '2026-09-01',
    'ada',
    { type: 'pile', name: 'lane', widthFt: 13, lengthFt: 110 },
    { type: 'load', pile: 'lane', crop: 'haylage', count: 90 },
  )
  f.told(
    '2026-09-02',
    'ada',
    { type: 'cover', pile: 'lane', material: 'plastic', change: 'on' },
    { type: 'cover', pile: 'lane', material: 'tires', change: 'on', count: 1000 },
  )
  f.told(
    '2026-10-20',
    'ada',
    { type: 'open', pile: 'lane', why: 'feed' },
    { type: 'cover', pile: 'lane', material: 'plastic', change: 'back', ft: 10 },
  )
  return f
}
const plan = (f: Farm, figures: WatchFigures) => edgePlan(pileState(f.book, 'lane')!, figures)

describe('the feeding edge', () => {
  it('is left alone while a day of feed lies bare', () => {
    expect(plan(lane(), at(8.5))).toMatchObject({ bareFt: 1.5, bareDays: 1.5, rollFt: 0, tires: 0 })
  })
  it('is rolled back so far that three days lie bare, with its share of the tires', () => {
    // 100 ft still covered by 1,000 tires: 2.5 ft are 25; a double row of 26-in tires across 13 ft takes 12.
    expect(plan(lane(), at(9.5))).toMatchObject({ bareFt: 0.5, rollFt: 2.5, tires: 25, edgeTires: 12 })
  })
  it('never leaves more than three days bare, at any rate and place', () => {
    for (const rate of [2, 6, 12, 18]) {
      for (let ft = 0; ft <= 110; ft += 2.5) {
        const p = plan(lane(), at(ft, rate))!
        if (p.rollFt > 0) expect((p.bareFt + p.rollFt) / (rate / 12)).toBeLessThanOrEqual(3 + 1e-9)
        expect(p.rollFt).toBeLessThanOrEqual(100)
      }
    }
  })
  it('is not guessed where a roll was told without its feet, or the face is not known', () => {
    const f = lane()
    expect(plan(f, {})).toBeUndefined()
    f.told('2026-10-25', 'ada', { type: 'cover', pile: 'lane', material: 'plastic', change: 'back' })
    expect(plan(f, at(8))).toBeUndefined()
  })
  const notices = (f: Farm, when: string, figures = {}) =>
    f
      .tick(when, figures)
      .filter(i => i.key.startsWith('edge') || i.key.startsWith('leftover'))
      .map(i => i.key)
  it('is weighted again in spring, once', () => {
    const f = lane()
    expect(notices(f, '2027-03-10 06:00')).toEqual([])
    f.told('2027-03-12 09:00', 'ada', { type: 'weather', kind: 'thaw' })
    expect(notices(f, '2027-03-12 09:00')).toEqual(['edge-spring:2027:lane'])
    expect(notices(f, '2027-04-01 06:00')).toEqual([])
    const g = lane()
    expect(notices(g, '2027-03-19 06:00')).toEqual([])
    expect(notices(g, '2027-03-20 06:00')).toEqual(['edge-spring:2027:lane'])
  })
  it('is asked about when feeding that was told daily is told no more', () => {
    const f = lane()
    for (const day of [21, 22, 23, 24]) f.told(`2026-10-${day}`, 'lenny', { type: 'feed', pile: 'lane', lb: 8000 })
    expect(notices(f, '2026-10-27 12:00')).toEqual([])
    expect(notices(f, '2026-10-28 12:00')).toEqual(['edge-idle:lane:2026-10'])
    expect(notices(f, '2026-10-30 12:00')).toEqual([])
  })
  it('is not asked about where feeding was never told daily, or goes by a ration', () => {
    const f = lane()
    f.told('2026-10-24', 'lenny', { type: 'feed', pile: 'lane', lb: 8000 })
    expect(notices(f, '2026-10-30 12:00')).toEqual([])
    const g = lane()
    g.told('2026-10-21', 'ada', { type: 'ration', pile: 'lane', lbPerDay: 8000 })
    for (const day of [21, 22, 23, 24]) g.told(`2026-10-${day}`, 'lenny', { type: 'feed', pile: 'lane', lb: 8000 })
    expect(notices(g, '2026-10-30 12:00')).toEqual([])
  })
  it('speaks of what is left when the new crop comes', () => {
    const f = lane()
    f.told(
      '2027-04-20',
      'ada',
      { type: 'harvest', crop: 'haylage', on: '2027-05-28' },
      { type: 'harvest', crop: 'corn silage', on: '2027-05-30' },
    )
    notices(f, '2027-04-20 06:00')
    expect(notices(f, '2027-05-13 12:00', at(60, 6, 40))).toEqual([])
    expect(notices(f, '2027-05-14 06:00', at(60, 6, 10))).toEqual([])
    expect(notices(f, '2027-05-14 06:00', at(60, 6, 40))).toHaveLength(1)
    expect(notices(f, '2027-05-15 06:00', at(60, 6, 40))).toEqual([])
  })
})
