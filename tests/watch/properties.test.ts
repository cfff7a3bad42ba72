import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { eventsOf, foldBook, pileState } from '../../src/book/book.ts'
import { localTime } from '../../src/units/calendar.ts'
import { due, nextDue } from '../../src/watch/due.ts'
import type { DueItem, WatchFigures } from '../../src/watch/item.ts'
import { type Act, Farm, FED, lines, play } from './farm.ts'

const HOUR = 3_600_000
const START = Date.parse('2026-10-20T10:00:00Z')
const iso = (ms: number) => new Date(ms).toISOString()
const acts = fc.array(fc.record({ wait: fc.integer({ min: 0, max: 40 }), what: fc.nat(200), pile: fc.nat(5) }), {
  minLength: 5,
  maxLength: 45,
})
const FIGURES: WatchFigures = {
  ...FED,
  faceAt: () => 10,
  need: () => ({ widthFt: 40, lengthFt: 100, tires: 400 }),
  stock: () => [{ item: 'tires', count: 20 }],
}

interface Said {
  at: number
  item: DueItem
}

/** Plays the acts, with a look at every instant of `clock` and after each act; what was said, with `look` at every saying. */
const run = (
  list: Act[],
  clock: (f: Farm, ms: number) => number,
  look: (f: Farm, said: Said) => void = () => {},
): { farm: Farm; said: Said[] } => {
  const f = new Farm()
  const said: Said[] = []
  const tick = (ms: number) => {
    for (const item of f.due(iso(ms), FIGURES)) {
      look(f, { at: ms, item })
      said.push({ at: ms, item })
      f.sayAll(iso(ms), [item])
    }
  }
  let now = START
  const until = (end: number) => {
    for (let t = clock(f, now); t <= end; t = clock(f, t)) tick(t)
    now = end
  }
  for (const act of list) {
    until(now + act.wait * HOUR)
    play(f, iso(now), act)
    tick(now)
  }
  until(now + 10 * 24 * HOUR)
  return { farm: f, said }
}
const hourly = (_: Farm, ms: number) => ms + HOUR
const byNextDue = (f: Farm, ms: number) => Date.parse(nextDue(f.book, { at: iso(ms), zone: f.zone }))

describe('over any order of events', () => {
  it('nothing is said twice, at night, before its time or above the number of a day; and no asking of one thing comes back', () => {
    fc.assert(
      fc.property(acts, list => {
        const { farm, said } = run(list, hourly)
        expect(new Set(said.map(s => s.item.key)).size).toBe(said.length)
        const rungs = new Set<string>()
        const perDay = new Map<string, number>()
        for (const { at, item } of said) {
          expect(lines(item).length).toBeGreaterThan(0)
          expect(lines(item).length).toBeLessThanOrEqual(12)
          expect(Date.parse(item.at)).toBeLessThanOrEqual(at)
          const { hour, day } = localTime(iso(at), farm.zone)
          expect(hour >= 5 && hour < 21).toBe(true)
          const nudge = /^([a-z-]+):(.*)#/.exec(item.key)
          if (!nudge) continue
          perDay.set(day, (perDay.get(day) ?? 0) + 1)
          for (const stem of nudge[2]!.split(',')) {
            expect(rungs.has(`${nudge[1]}:${stem}`)).toBe(false)
            rungs.add(`${nudge[1]}:${stem}`)
          }
        }
        for (const n of perDay.values()) expect(n).toBeLessThanOrEqual(3)
      }),
      { numRuns: 60, seed: 5 },
    )
  })
  it('nothing is asked after that was settled', () => {
    fc.assert(
      fc.property(acts, list => {
        run(list, hourly, (f, { item }) => {
          for (const { code, data } of lines(item)) {
            const p = typeof data.pile === 'string' ? pileState(f.book, data.pile) : undefined
            if (code === 'repair-line' || code === 'morning-damage') expect(p?.open.length).toBeGreaterThan(0)
            if (code === 'check-line' || code === 'morning-check-due') {
              expect(p?.sheets.length).toBeGreaterThan(0)
              // A walk of today settles whatever the walk was for, unless weather came after it.
              const walked = p?.checks.at(-1)
              const weather = eventsOf(f.book, 'weather').some(w => w.n > (walked?.n ?? 0) || w.event.on >= (walked?.event.on ?? ''))
              const sealed = p?.covers.some(c => c.n > (walked?.n ?? 0))
              if (walked && !weather && !sealed && data.why === 'plain') expect(String(data.last) >= walked.event.on).toBe(true)
            }
            if (code === 'round-start' || code === 'round-line') {
              for (const name of data.piles as string[]) {
                const on = String(data.on)
                const hail = eventsOf(f.book, 'weather').find(w => w.event.kind === 'hail' && w.event.on === on)!
                expect(pileState(f.book, name)!.checks.some(c => c.event.on > on || (c.event.on === on && c.n > hail.n))).toBe(false)
              }
            }
            if (code === 'reminder') expect(f.book.byId.get(item.key.split(':')[1]!)?.withdrawnBy).toBeUndefined()
            if (code.startsWith('morning-pile')) expect(p?.stage).toBe('feeding')
            if (code === 'morning-uncovered' || code.startsWith('cover-tonight')) expect(p?.stage).toBe('filling')
          }
        })
      }),
      { numRuns: 60, seed: 7 },
    )
  })
  it('a clock that sleeps until the next instant says what one that looks every hour says', () => {
    fc.assert(
      fc.property(acts, list => {
        const keys = (s: Said[]) => s.map(x => x.item.key)
        // A reminder at half past comes half an hour later to the one that looks by the hour; its key is the same.
        expect(keys(run(list, byNextDue).said).sort()).toEqual(keys(run(list, hourly).said).sort())
      }),
      { numRuns: 40, seed: 11 },
    )
  })
  it('a restart changes nothing: the same log gives the same answer', () => {
    fc.assert(
      fc.property(acts, fc.integer({ min: 0, max: 200 }), (list, hours) => {
        const { farm } = run(list, hourly)
        const now = { at: iso(Date.parse(farm.entries.at(-1)!.at) + hours * HOUR), zone: farm.zone }
        expect(due(foldBook(farm.entries), now, FIGURES)).toEqual(due(farm.book, now, FIGURES))
      }),
      { numRuns: 40, seed: 13 },
    )
  })
  it('a machine that slept says one morning, one of each reminder, and no more nudges than a day may have', () => {
    fc.assert(
      fc.property(acts, fc.integer({ min: 2, max: 60 }), (list, days) => {
        const { farm } = run(list, hourly)
        const woken = farm.due(iso(Date.parse(farm.entries.at(-1)!.at) + days * 24 * HOUR), FIGURES)
        const kinds = woken.map(i => i.key.split(':')[0]!)
        expect(kinds.filter(k => k === 'morning').length).toBeLessThanOrEqual(1)
        expect(woken.filter(i => i.key.includes('#')).length).toBeLessThanOrEqual(3)
        const reminders = woken.filter(i => i.key.startsWith('remind:')).map(i => i.key.split(':')[1])
        expect(new Set(reminders).size).toBe(reminders.length)
      }),
      { numRuns: 40, seed: 17 },
    )
  })
  it('looks again within a day, and later than now', () => {
    fc.assert(
      fc.property(acts, fc.integer({ min: 0, max: 400 * 24 * 60 }), (list, minutes) => {
        const f = new Farm()
        for (const [i, act] of list.entries()) play(f, iso(START + i * HOUR), act)
        const now = START + minutes * 60_000
        const next = Date.parse(nextDue(f.book, { at: iso(now), zone: f.zone }))
        expect(next).toBeGreaterThan(now)
        expect(next - now).toBeLessThanOrEqual(25 * HOUR)
      }),
      { numRuns: 60, seed: 19 },
    )
  })
})
