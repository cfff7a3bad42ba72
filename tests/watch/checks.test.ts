import { describe, expect, it } from 'vitest'
import { checkPlan } from '../../src/watch/checks.ts'
import { codes, Farm, keys } from './farm.ts'

/** Hill, put up in autumn and covered on the first of November. */
const hill = (): Farm => {
  const f = new Farm()
  f.told('2026-10-30', 'ada', { type: 'pile', name: 'hill' }, { type: 'load', pile: 'hill', crop: 'corn silage', count: 60 })
  f.told('2026-11-01', 'ada', { type: 'cover', pile: 'hill', material: 'plastic', change: 'on' })
  return f
}
const walk = (f: Farm, day: string, pile = 'hill') => f.told(`${day} 15:00`, 'lenny', { type: 'check', pile, finding: 'good' })
const plan = (f: Farm) => {
  const p = checkPlan(f.book, 'hill')
  return p && [p.due, p.why]
}

describe('the plan of walks', () => {
  it('is none for a pile without a sheet, without feed, being filled, or empty', () => {
    const f = new Farm()
    f.told('2026-10-30', 'ada', { type: 'pile', name: 'hill' })
    expect(plan(f)).toBeUndefined()
    f.told('2026-10-30', 'ada', { type: 'load', pile: 'hill', crop: 'corn silage', count: 60 })
    expect(plan(f)).toBeUndefined()
    const g = hill()
    g.told('2026-11-02', 'ada', { type: 'open', pile: 'hill', why: 'add' })
    expect(plan(g)).toBeUndefined()
    const h = hill()
    h.told('2026-12-02', 'ada', { type: 'empty', pile: 'hill' })
    expect(plan(h)).toBeUndefined()
  })
  it('begins in the days after sealing, then weekly', () => {
    const f = hill()
    expect(plan(f)).toEqual(['2026-11-02', 'sealed'])
    walk(f, '2026-11-02')
    expect(plan(f)).toEqual(['2026-11-04', 'sealed'])
    walk(f, '2026-11-05')
    expect(plan(f)).toEqual(['2026-11-12', 'plain'])
    walk(f, '2026-11-12', 'all')
    expect(plan(f)).toEqual(['2026-11-19', 'plain'])
  })
  it('takes the interval that the farm chose', () => {
    const f = hill().set('checkDays', 10)
    walk(f, '2026-11-05')
    expect(plan(f)).toEqual(['2026-11-15', 'plain'])
  })
  it.each([
    ['hail', { kind: 'hail' }, ['2026-11-11', 'hail']],
    ['big wind', { kind: 'wind', mph: 55 }, ['2026-11-11', 'wind']],
    ['wind, how much was not told', { kind: 'wind' }, ['2026-11-11', 'wind']],
    ['a breeze', { kind: 'wind', mph: 15 }, ['2026-11-19', 'plain']],
    ['heavy rain', { kind: 'rain', inches: 2 }, ['2026-11-11', 'rain']],
    ['a shower', { kind: 'rain', inches: 0.2 }, ['2026-11-19', 'plain']],
    ['thaw', { kind: 'thaw' }, ['2026-11-11', 'thaw']],
    ['snow', { kind: 'snow', inches: 5 }, ['2026-11-19', 'plain']],
  ])('follows %s', (_, weather, expected) => {
    const f = hill()
    walk(f, '2026-11-12')
    f.told('2026-11-10', 'ada', { type: 'weather', ...weather })
    // Weather of before the walk is settled by it.
    expect(plan(f)).toEqual(['2026-11-19', 'plain'])
    const g = hill()
    walk(g, '2026-11-05')
    walk(g, '2026-11-09')
    g.told('2026-11-10', 'ada', { type: 'weather', ...weather })
    expect(plan(g)).toEqual(expected[1] === 'plain' ? ['2026-11-16', 'plain'] : expected)
  })
  it('counts a walk of the same day only when it came after the weather', () => {
    const f = hill()
    walk(f, '2026-11-10')
    f.told('2026-11-10 18:00', 'ada', { type: 'weather', kind: 'hail' })
    expect(plan(f)).toEqual(['2026-11-11', 'hail'])
    walk(f, '2026-11-10')
    expect(plan(f)).toEqual(['2026-11-17', 'plain'])
  })
  it('takes a hole that somebody told as a walk, and looks again for animals', () => {
    const f = hill()
    f.told('2026-11-05', 'lenny', { type: 'damage', pile: 'hill', cause: 'unknown', count: 1 })
    expect(plan(f)).toEqual(['2026-11-12', 'plain'])
    f.told('2026-11-06', 'lenny', { type: 'damage', pile: 'hill', cause: 'animal', animal: 'raccoon' })
    expect(plan(f)).toEqual(['2026-11-09', 'animal'])
    walk(f, '2026-11-08')
    expect(plan(f)).toEqual(['2026-11-15', 'plain'])
  })
  it('does not let a withdrawn walk or storm count', () => {
    const f = hill()
    walk(f, '2026-11-05')
    const storm = f.told('2026-11-06', 'ada', { type: 'weather', kind: 'hail' })
    f.back('2026-11-06', storm)
    expect(plan(f)).toEqual(['2026-11-12', 'plain'])
  })
  it.each([
    ['warm months', (f: Farm) => walk(f, '2027-06-01'), 5],
    ['cold months', (f: Farm) => walk(f, '2027-01-04'), 7],
    ['an open edge', (f: Farm) => [f.told('2026-12-20', 'ada', { type: 'feed', pile: 'hill', lb: 9000 }), walk(f, '2027-01-04')], 5],
    [
      'mesh',
      (f: Farm) => [f.told('2026-11-02', 'ada', { type: 'cover', pile: 'hill', material: 'mesh', change: 'on' }), walk(f, '2027-01-04')],
      9,
    ],
    ['an old sheet', (f: Farm) => walk(f, '2027-12-04'), 5],
  ])('weighs %s', (_, make, days) => {
    const f = hill()
    make(f)
    expect(checkPlan(f.book, 'hill')?.everyDays).toBe(days)
  })
})

describe('a walk that nobody takes', () => {
  const late = (): Farm => {
    const f = hill()
    walk(f, '2026-11-05')
    return f
  }
  it('stands in the morning, is asked once more, then goes to the owner, then only stands', () => {
    const f = late()
    const said: string[] = []
    for (let day = 12; day < 26; day++) {
      for (const hour of ['06:00', '12:00', '19:00']) {
        for (const i of f.tick(`2026-11-${day} ${hour}`))
          if (!i.key.startsWith('morning') && !i.key.startsWith('weekly')) said.push(`${day} ${hour} ${i.to} ${codes([i])[0]}`)
      }
    }
    expect(said).toEqual(['14 12:00 crew check-again', '16 12:00 owner check-owner'])
  })
  it('is not asked any more once it is walked', () => {
    const f = late()
    f.tick('2026-11-12 06:00')
    expect(codes(f.tick('2026-11-14 12:00'))).toContain('check-again')
    walk(f, '2026-11-14')
    for (const day of [15, 16, 17]) expect(f.tick(`2026-11-${day} 12:00`)).toEqual([])
  })
  it('is not asked again before a morning has named it: a machine that slept does not press twice in a day', () => {
    const f = late()
    expect(keys(f.tick('2026-11-20 14:00'))).toEqual(['morning:2026-11-20'])
    expect(codes(f.tick('2026-11-22 12:00').filter(i => !i.key.startsWith('morning')))).toEqual(['check-again', 'check-line'])
  })
  it('shares one asking with other piles', () => {
    const f = late()
    f.told('2026-10-30', 'ada', { type: 'pile', name: 'barn, south' }, { type: 'load', pile: 'barn, south', crop: 'haylage', count: 9 })
    f.told('2026-11-01', 'ada', { type: 'cover', pile: 'barn, south', material: 'plastic', change: 'on' })
    walk(f, '2026-11-05', 'barn, south')
    f.tick('2026-11-12 06:00')
    const [asked, ...more] = f.tick('2026-11-14 12:00').filter(i => i.key.startsWith('check'))
    expect(more).toEqual([])
    expect(asked?.message).toHaveLength(3)
    expect(codes(f.tick('2026-11-16 12:00').filter(i => i.key.startsWith('check')))).toEqual(['check-owner', 'check-line', 'check-line'])
  })
})
