import { describe, expect, it } from 'vitest'
import { codes, Farm, FED, keys } from './farm.ts'

const feeding = (zone?: string): Farm => {
  const f = new Farm(zone)
  f.told('2026-10-01 10:00', 'ada', { type: 'pile', name: 'creek', widthFt: 36, lengthFt: 100 })
  f.told('2026-10-01 11:00', 'ada', { type: 'load', pile: 'creek', crop: 'corn silage', count: 80 })
  f.told('2026-10-02 18:00', 'ada', { type: 'cover', pile: 'creek', material: 'plastic', change: 'on' })
  f.told('2026-11-01 07:00', 'ada', { type: 'check', pile: 'creek', finding: 'good' })
  f.told('2026-11-02 09:00', 'ada', { type: 'open', pile: 'creek', why: 'feed' }, { type: 'feed', pile: 'creek', lb: 9000 })
  f.told('2026-11-02 09:05', 'ada', { type: 'ration', pile: 'creek', lbPerDay: 9000 })
  // The cautions of the first feeding are said at once; these tests are not about them.
  f.tick('2026-11-02 09:30')
  return f
}

describe('the morning summary', () => {
  it('says nothing where there is nothing to say', () => {
    const f = new Farm()
    f.told('2026-10-01 10:00', 'ada', { type: 'pile', name: 'creek' })
    expect(f.due('2026-10-02 06:00')).toEqual([])
  })
  it('comes at six, once, with every pile being fed', () => {
    const f = feeding()
    expect(keys(f.due('2026-11-03 05:59', FED))).toEqual([])
    const [item, ...more] = f.tick('2026-11-03 06:00', FED)
    expect(more).toEqual([])
    expect(item).toMatchObject({ key: 'morning:2026-11-03', to: 'crew', at: '2026-11-03T11:00:00.000Z' })
    expect(item?.message).toEqual([
      { code: 'morning-head', data: { day: '2026-11-03' } },
      {
        code: 'morning-pile',
        data: { pile: 'creek', days: 42, low: 36, high: 49, runsOut: '2026-12-20', inPerDay: 7, minInPerDay: 3, enough: 'yes' },
      },
    ])
    expect(f.due('2026-11-03 06:00', FED)).toEqual([])
    expect(f.due('2026-11-03 20:00', FED)).toEqual([])
  })
  it('comes at the hour that the farm chose', () => {
    const f = feeding().set('morningHour', '04:30')
    expect(keys(f.due('2026-11-03 04:29', FED))).toEqual([])
    expect(keys(f.due('2026-11-03 04:30', FED))).toEqual(['morning:2026-11-03'])
  })
  it('is caught up once after a week of sleep', () => {
    const f = feeding()
    f.tick('2026-11-03 06:00', FED)
    f.told('2026-11-03 08:00', 'ada', { type: 'check', pile: 'creek', finding: 'good' })
    expect(keys(f.tick('2026-11-10 15:20', FED)).filter(k => k.startsWith('morning'))).toEqual(['morning:2026-11-10'])
    expect(f.due('2026-11-10 16:00', FED)).toEqual([])
  })
  it('is not caught up at night', () => {
    const f = feeding()
    expect(f.due('2026-11-03 22:00', FED)).toEqual([])
    expect(f.due('2026-11-04 03:00', FED)).toEqual([])
    expect(keys(f.due('2026-11-04 06:00', FED))).toEqual(['morning:2026-11-04'])
  })
  it('does not repeat in the forenoon what was only told since', () => {
    const f = new Farm()
    f.told('2026-11-02 09:00', 'ada', { type: 'pile', name: 'creek' }, { type: 'load', pile: 'creek', crop: 'haylage', count: 9 })
    f.told('2026-11-02 09:05', 'ada', { type: 'feed', pile: 'creek', lb: 9000 }, { type: 'damage', pile: 'creek', cause: 'hail' })
    expect(keys(f.due('2026-11-02 09:10', FED)).filter(k => k.startsWith('morning'))).toEqual([])
    expect(codes(f.due('2026-11-03 06:00', FED)).filter(c => c.startsWith('morning'))).toEqual([
      'morning-head',
      'morning-damage',
      'morning-pile',
    ])
  })
  it('drops what was settled before it is said', () => {
    const f = feeding()
    f.told('2026-11-02 17:00', 'lenny', { type: 'damage', pile: 'creek', cause: 'animal', animal: 'raccoon', count: 2, where: 'n end' })
    expect(codes(f.due('2026-11-03 06:00', FED))).toContain('morning-damage')
    f.told('2026-11-03 06:30', 'lenny', { type: 'patch', pile: 'creek' })
    expect(codes(f.due('2026-11-03 07:00', FED))).not.toContain('morning-damage')
  })
})

describe('clock changes', () => {
  // In 2026 the U.S. clocks change on 8 March and 1 November at 2:00 local time: 15 U.S.C. 260a.
  it('has one morning on each day of both changes, at six by the wall clock', () => {
    const f = feeding()
    expect(f.due('2026-11-03 06:00', FED)[0]?.at).toBe('2026-11-03T11:00:00.000Z')
    const mornings = (day: string) => {
      const said: string[] = []
      for (let h = 0; h < 26; h++) {
        const at = new Date(Date.parse(`${day}T03:00:00Z`) + h * 3_600_000).toISOString()
        for (const i of f.tick(at, FED)) if (i.key === `morning:${day}`) said.push(i.at)
      }
      return said
    }
    expect(mornings('2027-03-13')).toEqual(['2027-03-13T11:00:00.000Z'])
    expect(mornings('2027-03-14')).toEqual(['2027-03-14T10:00:00.000Z'])
    expect(mornings('2027-11-06')).toEqual(['2027-11-06T10:00:00.000Z'])
    expect(mornings('2027-11-07')).toEqual(['2027-11-07T11:00:00.000Z'])
  })
  it('says an hour that is skipped later, and one that comes twice once', () => {
    const f = feeding().set('morningHour', 1.5)
    const said: string[] = []
    for (let h = 0; h < 30; h++) {
      const at = new Date(Date.parse('2027-11-07T04:00:00Z') + h * 1_800_000).toISOString()
      said.push(
        ...f
          .tick(at, FED)
          .filter(i => i.key.startsWith('morning'))
          .map(i => i.at),
      )
    }
    expect(said).toEqual(['2027-11-07T05:30:00.000Z'])
    f.set('morningHour', 2.5)
    expect(f.due('2028-03-12T07:29:00Z', FED).filter(i => i.key.startsWith('morning'))).toEqual([])
    expect(f.due('2028-03-12T07:30:00Z', FED).map(i => i.at)).toContain('2028-03-12T07:30:00.000Z')
  })
  it('keeps the farm in its own zone', () => {
    const f = feeding('Australia/Adelaide')
    expect(f.due('2026-11-03 06:00', FED)[0]?.at).toBe('2026-11-02T19:30:00.000Z')
  })
})
