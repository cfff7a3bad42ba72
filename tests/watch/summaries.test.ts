import { describe, expect, it } from 'vitest'
import { compose, MAX_LINES } from '../../src/watch/lines.ts'
import { codes, Farm, FED, keys } from './farm.ts'

const line = (urgency: number, code: string) => ({ urgency, message: { code, data: {} } })

describe('a summary', () => {
  it('has at most twelve lines, the most urgent first, and counts the rest', () => {
    const many = Array.from({ length: 30 }, (_, i) => line(i, `c${i}`))
    const said = compose({ code: 'head', data: {} }, many).message
    expect(said).toHaveLength(MAX_LINES)
    expect(said.slice(0, 3).map(m => m.code)).toEqual(['head', 'c29', 'c28'])
    expect(said.at(-1)).toEqual({ code: 'summary-more', data: { count: 20 } })
    expect(compose({ code: 'head', data: {} }, many.slice(0, 11)).message.map(m => m.code)).not.toContain('summary-more')
  })
  it('puts holes before walks and a pile that runs out before one that lasts', () => {
    const f = new Farm()
    for (const name of ['long', 'short']) {
      f.told(
        '2026-10-01',
        'ada',
        { type: 'pile', name },
        { type: 'load', pile: name, crop: 'corn silage', count: 40 },
        { type: 'cover', pile: name, material: 'plastic', change: 'on' },
      )
      f.told('2026-10-30', 'ada', { type: 'feed', pile: name, lb: 5000 })
    }
    f.told('2026-10-30', 'ada', { type: 'check', pile: 'short', finding: 'good' }, { type: 'damage', pile: 'short', cause: 'unknown' })
    // all but the morning of that day, which would have named the walk
    f.sayAll(
      '2026-10-30 20:00',
      f.due('2026-10-30 20:00').filter(i => !i.key.startsWith('morning')),
    )
    const items = f.tick('2026-10-31 06:00', { ...FED, daysLeft: p => ({ days: p === 'long' ? 90 : 4 }) })
    const said = items[0]!.message as { code: string; data: { pile?: string } }[]
    expect(said.map(m => `${m.code} ${m.data.pile ?? ''}`)).toEqual([
      'morning-head ',
      'morning-damage short',
      'morning-check-due long',
      'morning-pile short',
      'morning-pile long',
    ])
  })
  it('is said although there is nothing to say, if the owner wants it so', () => {
    const f = new Farm().set('emptySummaries', true)
    expect(codes(f.tick('2026-10-31 06:00'))).toEqual(['morning-nothing'])
    expect(f.tick('2026-10-31 07:00')).toEqual([])
  })
  it('of the week goes to the owner on his day', () => {
    const f = new Farm()
    f.told(
      '2026-10-01',
      'ada',
      { type: 'pile', name: 'glen' },
      { type: 'load', pile: 'glen', crop: 'corn silage', count: 40 },
      { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' },
    )
    for (const day of [26, 28, 30]) f.told(`2026-10-${day}`, 'ada', { type: 'feed', pile: 'glen', lb: 5000 })
    f.told('2026-10-30', 'ada', { type: 'check', pile: 'glen', finding: 'good' })
    f.tick('2026-10-31 20:00')
    // 1 November 2026 is a Sunday.
    const [weekly] = f.tick('2026-11-01 19:00', FED).filter(i => i.key.startsWith('weekly'))
    expect(weekly).toMatchObject({ key: 'weekly:2026-11-01', to: 'owner' })
    expect(weekly?.message).toMatchObject([
      { code: 'weekly-head' },
      { code: 'weekly-fed', data: { pile: 'glen', lb: 15000, days: 42 } },
      { code: 'weekly-walks', data: { count: 1 } },
    ])
    expect(keys(f.tick('2026-11-01 20:00', FED))).toEqual([])
    expect(keys(f.set('weeklyDay', 3).due('2026-11-04 19:00', FED))).toContain('weekly:2026-11-04')
  })
})
