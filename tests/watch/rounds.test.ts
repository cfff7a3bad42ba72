import { describe, expect, it } from 'vitest'
import { codes, Farm, keys } from './farm.ts'

const two = (): Farm => {
  const f = new Farm()
  for (const name of ['knoll', 'ditch']) {
    f.told(
      '2026-10-01',
      'ada',
      { type: 'pile', name },
      { type: 'load', pile: name, crop: 'corn silage', count: 60 },
      { type: 'cover', pile: name, material: 'plastic', change: 'on' },
    )
  }
  f.told('2026-10-01', 'ada', { type: 'pile', name: 'bare' }, { type: 'load', pile: 'bare', crop: 'haylage', count: 6 })
  f.told('2026-11-09', 'ada', { type: 'check', pile: 'all', finding: 'good' })
  f.tick('2026-11-09 20:00')
  return f
}
const hail = (f: Farm, when = '2026-11-10 07:00', on = '2026-11-09', by = 'lenny') =>
  f.told(when, by, { type: 'weather', kind: 'hail', on, inches: 1.75 })
const rounds = (f: Farm, when: string) => f.tick(when).filter(i => i.key.startsWith('round'))

describe('a hail report', () => {
  it('starts one round for all covered piles, whoever else tells of it', () => {
    const f = two()
    hail(f)
    const [start] = rounds(f, '2026-11-10 07:00')
    expect(start).toMatchObject({
      key: 'round:2026-11-09',
      to: 'crew',
      message: { code: 'round-start', data: { piles: ['knoll', 'ditch'], inches: 1.75, on: '2026-11-09' } },
    })
    hail(f, '2026-11-10 08:00', '2026-11-09', 'ada')
    expect(rounds(f, '2026-11-10 08:00')).toEqual([])
  })
  it('asks for what is missing, and closes when all have answered', () => {
    const f = two()
    hail(f)
    rounds(f, '2026-11-10 07:00')
    f.told('2026-11-10 09:00', 'lenny', { type: 'check', pile: 'knoll', finding: 'good' })
    expect(rounds(f, '2026-11-10 12:00')).toEqual([])
    const [again] = rounds(f, '2026-11-11 12:00')
    expect(codes([again!])).toEqual(['round-again', 'round-line'])
    expect(again?.message).toMatchObject([{}, { data: { piles: ['ditch'] } }])
    f.told('2026-11-11 15:00', 'lenny', { type: 'damage', pile: 'ditch', cause: 'hail', count: 2 })
    expect(rounds(f, '2026-11-11 15:00').map(i => i.message)).toEqual([{ code: 'round-trouble', data: { count: 2, piles: ['ditch'] } }])
    expect(rounds(f, '2026-11-12 12:00')).toEqual([])
  })
  it('closes with one word for all', () => {
    const f = two()
    hail(f)
    rounds(f, '2026-11-10 07:00')
    f.told('2026-11-10 09:00', 'lenny', { type: 'check', pile: 'all', finding: 'good' })
    expect(codes(rounds(f, '2026-11-10 09:00'))).toEqual(['round-good'])
  })
  it('goes to the owner, and then rests', () => {
    const f = two()
    hail(f)
    const said: string[] = []
    for (let day = 10; day < 25; day++)
      for (const h of ['07:00', '12:00']) said.push(...rounds(f, `2026-11-${day} ${h}`).map(i => `${day} ${i.to} ${codes([i])[0]}`))
    expect(said).toEqual(['10 crew round-start', '11 crew round-again', '12 owner round-owner'])
  })
  it('told in the night waits for the quiet to end', () => {
    const f = two()
    hail(f, '2026-11-10 22:30', '2026-11-10')
    expect(f.due('2026-11-10 22:30')).toEqual([])
    expect(f.due('2026-11-11 04:59')).toEqual([])
    expect(keys(rounds(f, '2026-11-11 05:00'))).toEqual(['round:2026-11-10'])
    // The morning an hour later does not say it again.
    expect(codes(f.tick('2026-11-11 06:00'))).not.toContain('morning-round')
    expect(rounds(f, '2026-11-11 12:00')).toEqual([])
    expect(codes(rounds(f, '2026-11-12 12:00'))).toEqual(['round-again', 'round-line'])
  })
  it('that was answered before it could be begun aloud is not spoken of', () => {
    const f = two()
    hail(f, '2026-11-10 22:30', '2026-11-10')
    f.told('2026-11-10 23:30', 'lenny', { type: 'check', pile: 'all', finding: 'good' })
    expect(rounds(f, '2026-11-11 05:00')).toEqual([])
    expect(rounds(f, '2026-11-11 12:00')).toEqual([])
  })
  it('of long ago starts none', () => {
    const f = two()
    hail(f, '2026-11-30 07:00', '2026-11-09')
    expect(rounds(f, '2026-11-30 07:00')).toEqual([])
  })
  it('taken back starts none, and asks no more', () => {
    const f = two()
    const id = hail(f)
    rounds(f, '2026-11-10 07:00')
    f.back('2026-11-10 08:00', id)
    expect(rounds(f, '2026-11-11 12:00')).toEqual([])
  })
  it('told after its holes in one breath has its answer', () => {
    const f = two()
    f.told('2026-11-10 07:00', 'lenny', { type: 'damage', pile: 'ditch', cause: 'hail', on: '2026-11-09' })
    hail(f)
    expect(rounds(f, '2026-11-10 07:00').map(i => i.message)).toMatchObject([{ data: { piles: ['knoll'] } }])
  })
  it('takes over what an earlier round had open', () => {
    const f = two()
    hail(f)
    rounds(f, '2026-11-10 07:00')
    hail(f, '2026-11-11 07:00', '2026-11-11')
    expect(keys(rounds(f, '2026-11-11 07:00'))).toEqual(['round:2026-11-11'])
    expect(rounds(f, '2026-11-11 12:00')).toEqual([])
    expect(codes(rounds(f, '2026-11-12 12:00'))).toEqual(['round-again', 'round-line'])
  })
})
