import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { askEvery, openTopFt } from '../../src/watch/repairs.ts'
import { codes, Farm, keys } from './farm.ts'

const barn = (month = '2026-11'): Farm => {
  const f = new Farm()
  f.told('2026-04-30', 'ada', { type: 'pile', name: 'barn' }, { type: 'load', pile: 'barn', crop: 'haylage', count: 60 })
  f.told('2026-05-01', 'ada', { type: 'cover', pile: 'barn', material: 'plastic', change: 'on' })
  f.told(`${month}-01`, 'ada', { type: 'check', pile: 'barn', finding: 'good' })
  return f
}
const nudges = (f: Farm, from: string, days: number): string[] => {
  const said: string[] = []
  for (let d = 0; d < days; d++) {
    const day = new Date(Date.parse(`${from}T00:00:00Z`) + d * 86_400_000).toISOString().slice(0, 10)
    for (const hour of ['06:00', '12:00', '19:00'])
      for (const i of f.tick(`${day} ${hour}`)) if (i.key.startsWith('repair-')) said.push(`${day} ${i.to} ${codes([i])[0]}`)
  }
  return said
}

describe('a hole that nobody patched', () => {
  it('is asked after, once more, and given to the owner; sooner when it is warm', () => {
    const f = barn('2026-07')
    f.told('2026-07-02 15:00', 'lenny', { type: 'damage', pile: 'barn', cause: 'unknown', what: 'hole', count: 1 })
    expect(nudges(f, '2026-07-02', 12)).toEqual([
      '2026-07-02 crew repair-advice',
      '2026-07-03 crew repair-ask',
      '2026-07-04 crew repair-again',
      '2026-07-05 owner repair-owner',
    ])
    const g = barn('2027-01')
    g.told('2027-01-02 15:00', 'lenny', { type: 'damage', pile: 'barn', cause: 'unknown', what: 'hole', count: 1 })
    expect(nudges(g, '2027-01-02', 12)).toEqual([
      '2027-01-02 crew repair-advice',
      '2027-01-05 crew repair-ask',
      '2027-01-08 crew repair-again',
      '2027-01-11 owner repair-owner',
    ])
  })
  it('is asked after sooner when it is big', () => {
    const f = barn('2026-11')
    f.told('2026-11-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'unknown', what: 'hole', count: 1 })
    expect(askEvery(pileState(f.book, 'barn')!.open, '2026-11-02')).toBe(2)
    f.told('2026-11-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'wind', what: 'tear' })
    expect(askEvery(pileState(f.book, 'barn')!.open, '2026-11-02')).toBe(1)
  })
  it('is dropped when it is patched, for all of it only', () => {
    const f = barn()
    f.told('2026-11-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'hail', count: 3 })
    expect(nudges(f, '2026-11-02', 2)).toHaveLength(2)
    f.told('2026-11-03 13:00', 'lenny', { type: 'patch', pile: 'barn', count: 2 })
    // One small hole of the three is left: it may wait a day longer.
    expect(nudges(f, '2026-11-04', 2)).toEqual(['2026-11-05 crew repair-again'])
    f.told('2026-11-05 13:00', 'lenny', { type: 'patch', pile: 'barn' })
    expect(nudges(f, '2026-11-06', 20)).toEqual([])
  })
  it('has its advice once a season', () => {
    const f = barn()
    f.told('2026-11-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'hail' })
    expect(keys(f.tick('2026-11-02 12:00'))).toEqual(['repair-advice:2026'])
    f.told('2026-11-02 13:00', 'lenny', { type: 'patch', pile: 'barn' })
    f.told('2027-02-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'hail' })
    expect(keys(f.tick('2027-02-02 12:00'))).not.toContain('repair-advice:2026')
    f.told('2027-06-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'hail' })
    expect(keys(f.tick('2027-06-02 12:00'))).toContain('repair-advice:2027')
  })
  it('knows the published depths of an open top', () => {
    // Kansas State University 1991, alfalfa left uncovered: first foot by week 2, second after week 4, third after week 7.
    expect([0, 13, 14, 28, 29, 49, 50].map(openTopFt)).toEqual([0, 0, 1, 1, 2, 2, 3])
  })
})

describe('the number of nudges a day', () => {
  const busy = (limit?: number): Farm => {
    const f = limit === undefined ? barn() : barn().set('nudgesPerDay', limit)
    f.told('2026-11-02', 'lenny', { type: 'damage', pile: 'barn', cause: 'hail', count: 3 })
    f.told('2026-11-02', 'lenny', { type: 'weather', kind: 'hail' })
    f.told('2026-04-30', 'ada', { type: 'pile', name: 'lot' }, { type: 'load', pile: 'lot', crop: 'haylage', count: 60 })
    f.told('2026-05-01', 'ada', { type: 'cover', pile: 'lot', material: 'plastic', change: 'on' })
    f.tick('2026-11-02 13:00')
    return f
  }
  it('is the owner’s', () => {
    const nudge = (f: Farm, when: string) =>
      f
        .tick(when)
        .filter(i => i.key.includes('#'))
        .map(i => codes([i])[0])
    expect(nudge(busy(), '2026-11-03 12:00')).toEqual(['round-again', 'repair-ask'])
    const f = busy(1)
    expect(nudge(f, '2026-11-03 12:00')).toEqual(['round-again'])
    expect(nudge(f, '2026-11-03 13:00')).toEqual([])
    // The next day's first is the more urgent again, and nothing is made up for before its hour.
    expect(nudge(f, '2026-11-04 06:00')).toEqual([])
    expect(nudge(f, '2026-11-04 12:00')).toEqual(['round-owner'])
    expect(nudge(f, '2026-11-05 12:00')).toEqual(['repair-ask'])
    expect(nudge(busy(0), '2026-11-03 12:00')).toEqual([])
  })
})
