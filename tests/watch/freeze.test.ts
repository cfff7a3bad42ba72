import { describe, expect, it } from 'vitest'
import { pileState } from '../../src/book/book.ts'
import { liftOf, winterOf } from '../../src/watch/freeze.ts'
import { freezesAfter, frostDepthFt } from '../../src/watch/frost.ts'
import type { WatchFigures } from '../../src/watch/item.ts'
import { codes, Farm, keys } from './farm.ts'

/** Six inches a day at 20 ft on 1 November. */
const figures: WatchFigures = { faceAt: () => 20, faceRate: () => ({ inPerDay: 6, minInPerDay: 3, enough: true }) }
const lane = (): Farm => {
  const f = new Farm()
  f.told(
    '2026-09-01',
    'ada',
    { type: 'pile', name: 'lane', widthFt: 40, lengthFt: 120 },
    { type: 'load', pile: 'lane', crop: 'corn silage', count: 90 },
  )
  f.told(
    '2026-09-02',
    'ada',
    { type: 'cover', pile: 'lane', material: 'plastic', change: 'on' },
    { type: 'cover', pile: 'lane', material: 'tires', change: 'on', count: 500 },
    { type: 'cover', pile: 'lane', material: 'mesh', change: 'on' },
  )
  f.told('2026-10-20', 'ada', { type: 'feed', pile: 'lane', lb: 9000 }, { type: 'check', pile: 'lane', finding: 'good' })
  f.tick('2026-10-20 20:00')
  return f
}

describe('frost', () => {
  it('goes as deep as Stefan’s equation says', () => {
    // sqrt(48 k n FI / L) worked by hand for three grounds; UFC 3-130-06 gives the constant 48.
    expect(frostDepthFt(500, { k: 1, n: 1, water: 0.15, dryLbFt3: 100 })).toBeCloseTo(3.333, 3)
    expect(frostDepthFt(1000, { k: 0.78, n: 0.75, water: 0.15, dryLbFt3: 100 })).toBeCloseTo(3.606, 3)
    expect(frostDepthFt(1500, { k: 0.9, n: 0.9, water: 0.12, dryLbFt3: 110 })).toBeCloseTo(5.539, 3)
    expect(frostDepthFt(0)).toBe(0)
    expect(frostDepthFt(-5)).toBe(0)
  })
  it('takes two inches of wet sand in a day or two: edges freeze in with the first hard freeze', () => {
    expect(freezesAfter(2 / 12)).toBeCloseTo(1.54, 2)
    expect(freezesAfter(6 / 12)).toBeCloseTo(13.9, 1)
    expect(frostDepthFt(freezesAfter(0.5))).toBeCloseTo(0.5, 10)
  })
})

describe('before the freeze', () => {
  it('knows the winter by the farm’s days, or by a hard freeze that came sooner', () => {
    const f = lane()
    expect(winterOf(f.book, '2026-11-01')).toEqual({ season: 2026, freezeOn: '2026-11-20', thawOn: '2027-03-20' })
    expect(winterOf(f.book, '2027-01-15').season).toBe(2026)
    f.told('2026-10-28', 'ada', { type: 'weather', kind: 'freeze', degF: 30 })
    expect(winterOf(f.book, '2026-11-01').freezeOn).toBe('2026-11-20')
    f.told('2026-11-02', 'ada', { type: 'weather', kind: 'freeze', degF: 25 })
    expect(winterOf(f.book, '2026-11-03').freezeOn).toBe('2026-11-02')
    f.set('freezeDay', '12-15').set('thawDay', '04-01')
    expect(winterOf(new Farm().set('freezeDay', '12-15').book, '2026-11-03').freezeOn).toBe('2026-12-15')
  })
  it('knows what lies on the stretch that will be fed while it is frozen', () => {
    const f = lane()
    // 19 days at half a foot to the freeze, then 120 days: 29.5 ft to 89.5 ft, of the 100 ft still covered 60 %.
    expect(liftOf(pileState(f.book, 'lane')!, winterOf(f.book, '2026-11-01'), '2026-11-01', figures)).toEqual({
      pile: 'lane',
      fromFt: 29.5,
      toFt: 89.5,
      mesh: true,
      tires: 300,
      bags: 0,
      by: '2026-11-20',
    })
  })
  it('asks two weeks before, once more, and then the owner', () => {
    const f = lane()
    const said: string[] = []
    for (let d = 1; d <= 30; d++) {
      const day = `2026-11-${String(d).padStart(2, '0')}`
      for (const i of f.tick(`${day} 12:00`, figures)) if (i.key.startsWith('freeze')) said.push(`${day} ${i.to} ${codes([i])[0]}`)
    }
    expect(said).toEqual(['2026-11-06 crew freeze-ask', '2026-11-13 crew freeze-again', '2026-11-20 owner freeze-owner'])
  })
  it('is settled when the mesh came off', () => {
    const f = lane()
    f.tick('2026-11-06 12:00', figures)
    f.told('2026-11-08', 'lenny', { type: 'cover', pile: 'lane', material: 'mesh', change: 'off' })
    for (let d = 9; d <= 30; d++)
      expect(keys(f.tick(`2026-11-${String(d).padStart(2, '0')} 12:00`, figures)).filter(k => k.startsWith('freeze'))).toEqual([])
  })
  it('speaks up at the first hard freeze, once', () => {
    const f = lane()
    f.told('2026-11-07 07:00', 'ada', { type: 'weather', kind: 'freeze', degF: 20 })
    const first = f.tick('2026-11-07 07:00', figures).filter(i => i.key.startsWith('freeze-first'))
    expect(first).toMatchObject([{ key: 'freeze-first:2026', message: { code: 'freeze-first', data: { piles: ['lane'], degF: 20 } } }])
    f.told('2026-11-08 07:00', 'ada', { type: 'weather', kind: 'freeze', degF: 15 })
    expect(f.tick('2026-11-08 07:00', figures).filter(i => i.key.startsWith('freeze-first'))).toEqual([])
  })
  it('says nothing where the face is not known', () => {
    const f = lane()
    expect(keys(f.tick('2026-11-10 12:00')).filter(k => k.startsWith('freeze'))).toEqual([])
  })
})
