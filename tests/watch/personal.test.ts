import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { localTime } from '../../src/units/calendar.ts'
import { nextDue } from '../../src/watch/due.ts'
import { hoursOf, isQuiet } from '../../src/watch/hours.ts'
import { landing } from '../../src/watch/people.ts'
import { askedFor } from '../../src/watch/reminders.ts'
import { type Act, Farm, FED, keys, play } from './farm.ts'

const HOUR = 3_600_000
const START = Date.parse('2026-10-20T10:00:00Z')
const iso = (ms: number) => new Date(ms).toISOString()
const two = (n: number) => String(n).padStart(2, '0')

const acts = fc.array(fc.record({ wait: fc.integer({ min: 0, max: 30 }), what: fc.nat(200), pile: fc.nat(5) }), {
  minLength: 5,
  maxLength: 30,
})
const hour = fc.integer({ min: 0, max: 23 })
const wishes = fc.array(
  fc.record({
    who: fc.constantFrom('', 'ada', 'lenny'),
    name: fc.constantFrom(
      'morningHour',
      'eveningHour',
      'weeklyHour',
      'quietFrom',
      'quietTo',
      'morning',
      'evening',
      'weekly',
      'askHour',
      'crewChat',
    ),
    hour,
    on: fc.boolean(),
  }),
  { maxLength: 10 },
)
type Wish = { who: string; name: string; hour: number; on: boolean }

const setAll = (f: Farm, list: Wish[]): void => {
  for (const { who, name, hour, on } of list) {
    if (name === 'crewChat') f.set('crewChat', 'yard')
    else f.set(who ? `of:${who}:${name}` : name, /Hour|quiet/.test(name) ? `${two(hour)}:00` : on)
  }
}

/** Plays the acts with a look every hour, or whenever the farm itself wants one. */
const run = (
  list: Act[],
  set: Wish[],
  look: (f: Farm, ms: number) => void,
  step: (f: Farm, ms: number) => number = (_, ms) => ms + HOUR,
): void => {
  const f = new Farm()
  setAll(f, set)
  let now = START
  const until = (end: number) => {
    for (let t = step(f, now); t <= end; t = step(f, t)) look(f, t)
    now = end
  }
  for (const act of list) {
    until(now + act.wait * HOUR)
    play(f, iso(now), act)
    look(f, now)
  }
  until(now + 8 * 24 * HOUR)
}

describe('over any settings of the farm and its people', () => {
  it('nothing reaches anybody in their quiet hours but a reminder set to an hour, and nothing is said twice', () => {
    fc.assert(
      fc.property(acts, wishes, (list, set) => {
        const said = new Set<string>()
        run(list, set, (f, ms) => {
          const items = f.due(iso(ms), FED)
          for (const item of items) {
            expect(said.has(item.key)).toBe(false)
            said.add(item.key)
            const { person } = landing(f.book, item.to)
            const hours = hoursOf(f.book, person)
            if (!askedFor(f.book, item.key))
              expect(isQuiet(localTime(iso(ms), f.zone).hour, hours), `${item.key} to ${item.to}`).toBe(false)
          }
          f.sayAll(iso(ms), items)
        })
      }),
      { numRuns: 50, seed: 23 },
    )
  })
  it('each of a day’s summaries reaches a chat at most once, and a person who stopped it never', () => {
    fc.assert(
      fc.property(acts, wishes, (list, set) => {
        const got = new Set<string>()
        run(list, set, (f, ms) => {
          const items = f.due(iso(ms), FED)
          for (const item of items) {
            const m = /^(morning|evening|weekly):(\d{4}-\d{2}-\d{2})/.exec(item.key)
            if (!m) continue
            const { chat, person } = landing(f.book, item.to)
            const one = `${m[1]} ${m[2]} ${chat}`
            expect(got.has(one), one).toBe(false)
            got.add(one)
            if (person) expect(f.book.settings.get(`of:${person}:${m[1]}`)).not.toBe(false)
          }
          f.sayAll(iso(ms), items)
        })
      }),
      { numRuns: 50, seed: 29 },
    )
  })
  it('a clock that sleeps until the next instant says what one that looks every hour says', () => {
    fc.assert(
      fc.property(acts, wishes, (list, set) => {
        const heard = (step?: (f: Farm, ms: number) => number) => {
          const all: string[] = []
          run(
            list,
            set,
            (f, ms) => {
              const items = f.due(iso(ms), FED)
              all.push(...keys(items))
              f.sayAll(iso(ms), items)
            },
            step,
          )
          return all.sort()
        }
        expect(heard((f, ms) => Date.parse(nextDue(f.book, { at: iso(ms), zone: f.zone })))).toEqual(heard())
      }),
      { numRuns: 30, seed: 31 },
    )
  })
})
