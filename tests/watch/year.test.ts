import { describe, expect, it } from 'vitest'
import { pileState, piles } from '../../src/book/book.ts'
import { addDays, daysBetween, localTime, monthOf, weekday } from '../../src/units/calendar.ts'
import { checkPlan } from '../../src/watch/checks.ts'
import type { DueItem, WatchFigures } from '../../src/watch/item.ts'
import { Farm, lines } from './farm.ts'

/** Chance without chance: the same year every time. */
const dice = (seed: number) => () => {
  seed = (seed * 1_103_515_245 + 12_345) % 2 ** 31
  return seed / 2 ** 31
}

interface Heard {
  day: string
  hour: number
  item: DueItem
}

/** A year from May to May on a farm with two piles, hour by hour; the crew does what it is asked, mostly. */
const year = (diligence: number): { f: Farm; heard: Heard[]; days: number } => {
  const f = new Farm()
  const chance = dice(42)
  const heard: Heard[] = []
  const opened = '2026-10-25'
  const figures: WatchFigures = {
    daysLeft: p => (p === 'west' ? { days: 400 - daysBetween('2026-05-30', today), low: 20, high: 60 } : undefined),
    faceRate: () => ({ inPerDay: 5, minInPerDay: 3, enough: true }),
    faceAt: () => Math.max(0, (daysBetween(opened, today) * 5) / 12),
    need: () => ({ widthFt: 45, lengthFt: 140, tires: 1200 }),
    stock: () => [{ item: 'tires', count: 600 }],
  }
  let today = '2026-05-20'
  const start = Date.parse('2026-05-20T04:00:00Z')
  const say = (at: string, ...slots: Parameters<Farm['told']>[2][]) => f.told(at, 'lenny', ...slots)
  for (let h = 0; h < 365 * 24; h++) {
    const at = new Date(start + h * 3_600_000).toISOString()
    const { day, hour } = localTime(at, f.zone)
    today = day
    if (hour === 8 && day === '2026-05-21')
      say(at, { type: 'pile', name: 'west', widthFt: 40, lengthFt: 120 }, { type: 'pile', name: 'east', widthFt: 40, lengthFt: 120 })
    if (hour === 9 && day >= '2026-05-28' && day <= '2026-05-30') say(at, { type: 'load', pile: 'west', crop: 'haylage', count: 30 })
    if (hour === 18 && day === '2026-05-30')
      say(
        at,
        { type: 'cover', pile: 'west', material: 'plastic', change: 'on' },
        { type: 'cover', pile: 'west', material: 'tires', change: 'on', count: 900 },
      )
    if (hour === 9 && day >= '2026-09-10' && day <= '2026-09-14') say(at, { type: 'load', pile: 'east', crop: 'corn silage', count: 40 })
    if (hour === 17 && day === '2026-09-15') say(at, { type: 'cover', pile: 'east', material: 'plastic', change: 'on' })
    if (hour === 7 && day >= opened) say(at, { type: 'feed', pile: 'west', lb: 9000 })
    if (hour === 10 && day === '2026-06-01')
      say(
        at,
        { type: 'remind', about: 'check the tires', on: '2026-06-02', every: 'week' },
        { type: 'remind', about: 'pay the custom crew', on: '2026-07-01', every: 'month', time: '16:30' },
      )
    if (hour === 20 && chance() < 0.02) say(at, { type: 'weather', kind: monthOf(day) > 4 && monthOf(day) < 10 ? 'hail' : 'wind' })
    if (hour === 14 && chance() < 0.03) {
      const p = chance() < 0.5 ? 'west' : 'east'
      if (pileState(f.book, p)?.sheets.length) say(at, { type: 'damage', pile: p, cause: 'animal', animal: 'raccoon', count: 1 })
    }
    for (const item of f.due(at, figures)) {
      heard.push({ day, hour, item })
      f.sayAll(at, [item])
    }
    // What is asked for is done in the afternoon, by a crew that is this diligent.
    if (hour === 15 && chance() < diligence) {
      for (const p of piles(f.book)) {
        const plan = checkPlan(f.book, p.name)
        if (plan && plan.due <= day) say(at, { type: 'check', pile: p.name, finding: 'good' })
        if (p.open.length) say(at, { type: 'patch', pile: p.name })
      }
    }
  }
  return { f, heard, days: 365 }
}

describe('a year, hour by hour', () => {
  const { heard, f } = year(0.6)
  it('says nothing twice and nothing at night', () => {
    expect(new Set(heard.map(x => x.item.key)).size).toBe(heard.length)
    for (const { hour } of heard) expect(hour >= 5 && hour < 21).toBe(true)
  })
  it('has every morning at six from the first thing due on, over both clock changes', () => {
    const mornings = heard.filter(x => x.item.key.startsWith('morning'))
    for (const x of mornings) expect(x.hour).toBe(6)
    const fed = mornings.filter(x => x.day > '2026-10-25').map(x => x.day)
    const all: string[] = []
    for (let day = '2026-10-26'; day <= '2027-05-19'; day = addDays(day, 1)) all.push(day)
    expect(fed).toEqual(all)
  })
  it('misses no reminder', () => {
    const weekly = heard.filter(x => lines(x.item)[0]?.data.about === 'check the tires').map(x => x.day)
    expect(weekly).toHaveLength(51)
    for (const day of weekly) expect(weekday(day)).toBe(2)
    const monthly = heard.filter(x => lines(x.item)[0]?.data.about === 'pay the custom crew').map(x => x.day)
    expect(monthly).toEqual(
      ['07', '08', '09', '10', '11', '12'].map(m => `2026-${m}-01`).concat(['01', '02', '03', '04', '05'].map(m => `2027-${m}-01`)),
    )
  })
  it('has an evening on the filling days only', () => {
    expect(heard.filter(x => x.item.key.startsWith('evening')).map(x => x.day)).toEqual([
      '2026-05-28',
      '2026-05-29',
      '2026-05-30',
      '2026-09-10',
      '2026-09-11',
      '2026-09-12',
      '2026-09-13',
      '2026-09-14',
    ])
  })
  it('stays quiet where the crew is diligent: few nudges, and the owner hardly at all', () => {
    const nudges = heard.filter(x => x.item.key.includes('#'))
    expect(nudges.length).toBeLessThan(60)
    const owner = nudges.filter(x => x.item.to === 'owner').length
    const lazy = year(0.02).heard.filter(x => x.item.key.includes('#'))
    expect(lazy.filter(x => x.item.to === 'owner').length).toBeGreaterThan(owner)
    for (const list of [nudges, lazy]) {
      const perDay = new Map<string, number>()
      for (const x of list) perDay.set(x.day, (perDay.get(x.day) ?? 0) + 1)
      expect(Math.max(...perDay.values())).toBeLessThanOrEqual(3)
    }
  })
  it('says each kind of thing that such a year calls for', () => {
    const kinds = new Set(heard.map(x => x.item.key.split(/[:#]/)[0]))
    for (const kind of [
      'morning',
      'evening',
      'weekly',
      'remind',
      'round',
      'round-closed',
      'repair-advice',
      'freeze-ask',
      'edge-spring',
      'caution-face',
      'caution-gas',
      'short',
    ])
      expect(kinds).toContain(kind)
    expect(f.book.said.size).toBe(heard.flatMap(x => [x.item.key, ...(x.item.also ?? [])]).length)
  })
})
