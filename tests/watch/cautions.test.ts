import { describe, expect, it } from 'vitest'
import { codes, Farm, keys } from './farm.ts'

const said = (f: Farm, when: string) => keys(f.tick(when)).filter(k => k.startsWith('caution'))

describe('cautions', () => {
  it('come the first time they matter in a season, and not again', () => {
    const f = new Farm()
    f.told(
      '2026-05-28 09:00',
      'ada',
      { type: 'pile', name: 'glen', heightFt: 9 },
      { type: 'load', pile: 'glen', crop: 'haylage', count: 4 },
      { type: 'pack', pile: 'glen', tractors: 1, tractorLb: 30000 },
    )
    // That local codes go before it is said with the first of the season only.
    expect(codes(f.due('2026-05-28 09:00')).filter(c => c.startsWith('caution'))).toEqual(['caution-gas', 'caution-defer', 'caution-slope'])
    expect(said(f, '2026-05-28 09:00')).toEqual(['caution-gas:2026:haylage', 'caution-slope:2026'])
    f.told('2026-05-28 10:00', 'ada', { type: 'load', pile: 'glen', crop: 'haylage', count: 4 }, { type: 'pack', pile: 'glen', hours: 2 })
    expect(said(f, '2026-05-28 10:00')).toEqual([])
    f.told('2026-05-28 18:00', 'ada', { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' })
    expect(said(f, '2026-05-28 18:00')).toEqual(['caution-sheet-wind:2026'])
    f.told('2026-08-28 18:00', 'ada', { type: 'open', pile: 'glen', why: 'feed' }, { type: 'feed', pile: 'glen', lb: 3000 })
    const face = f.tick('2026-08-28 18:00').find(i => i.key === 'caution-face:2026')
    // Three times its height: Bolsen & Bolsen.
    expect(face?.message).toEqual([{ code: 'caution-face', data: { pile: 'glen', heightFt: 9, awayFt: 27 } }])
    f.told(
      '2026-12-28 18:00',
      'ada',
      { type: 'cover', pile: 'glen', material: 'plastic', change: 'back', ft: 6 },
      { type: 'feed', pile: 'glen', lb: 3000 },
    )
    expect(said(f, '2026-12-28 18:00')).toEqual(['caution-knife:2026', 'caution-ice:2026'])
    f.told('2027-03-02 18:00', 'ada', { type: 'feed', pile: 'glen', lb: 3000 })
    expect(said(f, '2027-03-02 18:00')).toEqual(['caution-face:2027'])
  })
  it('do not come for what happened long ago, nor for what was taken back', () => {
    const f = new Farm()
    f.told(
      '2026-05-28 09:00',
      'ada',
      { type: 'pile', name: 'glen' },
      { type: 'load', pile: 'glen', crop: 'haylage', count: 4, on: '2026-04-01' },
    )
    const id = f.told('2026-05-28 09:00', 'ada', { type: 'load', pile: 'glen', crop: 'haylage', count: 4 })
    f.back('2026-05-28 09:01', id)
    expect(said(f, '2026-05-28 09:02')).toEqual([])
  })
})

describe('a pile opened too early', () => {
  const sealed = () => {
    const f = new Farm()
    f.told(
      '2026-09-20',
      'ada',
      { type: 'pile', name: 'glen' },
      { type: 'load', pile: 'glen', crop: 'corn silage', count: 40 },
      { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' },
    )
    return f
  }
  const early = (f: Farm, when: string) => f.tick(when).filter(i => i.key.startsWith('early'))
  it('is told the date, once', () => {
    const f = sealed()
    f.told('2026-10-01', 'lenny', { type: 'open', pile: 'glen', why: 'feed' })
    // Mostly done in three weeks: 20 September and 21 days.
    expect(early(f, '2026-10-01 12:00')).toMatchObject([
      { message: { code: 'early-open', data: { pile: 'glen', sealedOn: '2026-09-20', readyOn: '2026-10-11', days: 10 } } },
    ])
    f.told('2026-10-01 13:00', 'lenny', { type: 'feed', pile: 'glen', lb: 4000 })
    expect(early(f, '2026-10-01 13:00')).toEqual([])
  })
  it('is told by the sealing before it, not by a sheet that went on since', () => {
    const f = sealed()
    f.told('2026-10-01 08:00', 'lenny', { type: 'open', pile: 'glen', why: 'feed' })
    f.told('2026-10-02 08:00', 'lenny', { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' })
    expect(early(f, '2026-10-02 09:00')).toMatchObject([{ message: { data: { sealedOn: '2026-09-20' } } }])
  })
  it('is not, when it is time', () => {
    const f = sealed()
    f.told('2026-10-11', 'lenny', { type: 'open', pile: 'glen', why: 'feed' })
    expect(early(f, '2026-10-11 12:00')).toEqual([])
  })
  it('counts anew where it was opened to add a crop and sealed again', () => {
    const f = sealed()
    f.told('2026-10-05', 'lenny', { type: 'open', pile: 'glen', why: 'add' }, { type: 'load', pile: 'glen', crop: 'haylage', count: 4 })
    expect(early(f, '2026-10-05 12:00')).toEqual([])
    f.told('2026-10-05 15:00', 'lenny', { type: 'cover', pile: 'glen', material: 'plastic', change: 'on' })
    f.told('2026-10-15', 'lenny', { type: 'feed', pile: 'glen', lb: 4000 })
    expect(early(f, '2026-10-15 12:00')).toMatchObject([{ message: { data: { sealedOn: '2026-10-05', readyOn: '2026-10-26' } } }])
  })
})
