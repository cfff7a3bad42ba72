import * as chrono from 'chrono-node/en'
import fc from 'fast-check'
import { DateTime } from 'luxon'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { findDates } from '../../src/reading/dates.ts'
import { tokenise } from '../../src/reading/tokens.ts'
import { resolve } from '../../src/reading/when.ts'

const one = (text: string, day: string, hour = 12) => {
  const list = findDates(tokenise(text), () => false, { day, hour })
  expect(list, `${text} on ${day}`).toHaveLength(1)
  return list[0]!
}
const at = (day: string) => DateTime.fromISO(day, { zone: 'UTC' })
/** By the machine's own clock: chrono-node told another zone is a day off in some. */
const noon = (day: string) => new Date(at(day).year, at(day).month - 1, at(day).day, 12)
const WEEKDAYS: [string, string][] = [
  ['monday', 'lunes'],
  ['tuesday', 'martes'],
  ['wednesday', 'miercoles'],
  ['thursday', 'jueves'],
  ['friday', 'viernes'],
  ['saturday', 'sabado'],
  ['sunday', 'domingo'],
]
const WEEK = Array.from({ length: 7 }, (_, i) => at('2026-12-28').plus({ days: i }).toISODate()!)

describe.each(['America/Chicago', 'Pacific/Auckland'])('on a machine in %s', host => {
  const before = process.env.TZ
  beforeAll(() => {
    process.env.TZ = host
  })
  afterAll(() => {
    if (before === undefined) delete process.env.TZ
    else process.env.TZ = before
  })

  test('every weekday from every weekday, over a turn of the year (luxon)', () => {
    for (const day of WEEK) {
      for (const [k, [en, es]] of WEEKDAYS.entries()) {
        let past = at(day)
        while (past.weekday !== k + 1) past = past.minus({ days: 1 })
        let next = at(day).plus({ days: 1 })
        while (next.weekday !== k + 1) next = next.plus({ days: 1 })
        const strictly = past.toISODate() === day ? past.minus({ weeks: 1 }) : past
        for (const text of [en, `el ${es}`]) expect(one(text, day)).toMatchObject({ past: past.toISODate(), future: next.toISODate() })
        for (const text of [`last ${en}`, `el ${es} pasado`]) expect(one(text, day).past).toBe(strictly.toISODate())
        for (const text of [`this coming ${en}`, `el ${es} que viene`, `proximo ${es}`])
          expect(one(text, day).future).toBe(next.toISODate())
      }
    }
  })

  test('"next" and "last" weekdays agree with chrono-node', () => {
    for (const day of WEEK) {
      for (const [en] of WEEKDAYS) {
        const chronos = (text: string) => {
          const c = chrono.parse(text, noon(day))[0]!.start
          return DateTime.utc(c.get('year')!, c.get('month')!, c.get('day')!).toISODate()
        }
        expect(one(`next ${en}`, day).future, `next ${en} on ${day}`).toBe(chronos(`next ${en}`))
        expect(one(`last ${en}`, day).past, `last ${en} on ${day}`).toBe(chronos(`last ${en}`))
      }
    }
  })

  test('spans of days, weeks and months before and after (luxon)', () => {
    for (const day of ['2026-07-15', '2026-12-31', '2027-01-01', '2028-02-29', '2028-03-31']) {
      for (const n of [1, 2, 3, 6, 10, 30, 45]) {
        const back = (unit: 'days' | 'weeks' | 'months') =>
          at(day)
            .minus({ [unit]: n })
            .toISODate()
        const on = (unit: 'days' | 'weeks' | 'months') =>
          at(day)
            .plus({ [unit]: n })
            .toISODate()
        expect(one(`${n} days ago`, day).past).toBe(back('days'))
        expect(one(`hace ${n} dias`, day).past).toBe(back('days'))
        expect(one(`${n} weeks ago`, day).past).toBe(back('weeks'))
        expect(one(`hace ${n} semanas`, day).past).toBe(back('weeks'))
        expect(one(`${n} months ago`, day).past).toBe(back('months'))
        expect(one(`in ${n} days`, day).future).toBe(on('days'))
        expect(one(`dentro de ${n} semanas`, day).future).toBe(on('weeks'))
        expect(one(`in ${n} months`, day).future).toBe(on('months'))
      }
    }
  })

  test('what chrono-node has right in English is the same here', () => {
    const day = '2026-09-16'
    const reference = noon(day)
    const back = [
      'yesterday',
      'two days ago',
      'a couple of days ago',
      'a few days ago',
      'the day before yesterday',
      'today',
      'last tuesday',
      'sept 3',
      '3 sept',
      '9/3',
      '2 weeks and 3 days ago',
    ]
    const on = ['in 3 weeks', 'in 45 days', '45 days after sept 3', 'tomorrow', 'first of october', 'end of the month']
    for (const text of [...back, ...on]) {
      const c = chrono.parse(text, reference)[0]?.start
      const theirs = c && DateTime.utc(c.get('year')!, c.get('month')!, c.get('day')!).toISODate()
      const ours = one(text, day, 14)
      expect(back.includes(text) ? ours.past : ours.future, text).toBe(theirs)
    }
  })

  test('days do not move with the clock changes', () => {
    for (const day of ['2027-03-14', '2027-03-15', '2027-11-07', '2027-11-08']) {
      for (const hour of [0, 1.5, 2.5, 12, 23.99]) {
        expect(one('last night', day, hour).past).toBe(at(day).minus({ days: 1 }).toISODate())
        expect(one('2 weeks and 3 days ago', day, hour).past).toBe(at(day).minus({ days: 17 }).toISODate())
      }
    }
  })
})

test('moving feasts', () => {
  // Federal holidays as published by the Office of Personnel Management; Easter by the table of the U.S. Naval Observatory (both from memory)
  const table: [text: string, days: string[]][] = [
    ['thanksgiving', ['2024-11-28', '2025-11-27', '2026-11-26', '2027-11-25']],
    ['labor day', ['2024-09-02', '2025-09-01', '2026-09-07', '2027-09-06']],
    ['memorial day', ['2024-05-27', '2025-05-26', '2026-05-25', '2027-05-31']],
    ['easter', ['2024-03-31', '2025-04-20', '2026-04-05', '2027-03-28', '2028-04-16', '2029-04-01', '2030-04-21']],
    ['mothers day', ['2025-05-11', '2026-05-10', '2027-05-09']],
    ['fathers day', ['2025-06-15', '2026-06-21', '2027-06-20']],
  ]
  for (const [text, days] of table) {
    for (const day of days) {
      expect(one(text, day)).toMatchObject({ past: day, future: day })
      expect(one(text, at(day).plus({ days: 40 }).toISODate()!).past).toBe(day)
      expect(one(text, at(day).minus({ days: 40 }).toISODate()!).future).toBe(day)
    }
  }
})

describe('whatever is written', () => {
  const WORDS =
    'on the of in last next this since from to a couple few two 3 12 12th 31 2026 9/12 7:30 6am days weeks ago friday sat sun may sept march morning night at - , . el la de del hace dos dias semana pasada lunes viernes ayer hoy manana noche a las y media mayo que viene fin mes and half past ahora loads may be end early week'.split(
      ' ',
    )
  const message = fc.oneof(
    fc.string({ maxLength: 200 }),
    fc.array(fc.constantFrom(...WORDS), { maxLength: 30 }).map(w => w.join(' ')),
  )
  const day = fc
    .date({ min: new Date('2020-01-01T00:00:00Z'), max: new Date('2040-12-31T00:00:00Z'), noInvalidDate: true })
    .map(d => d.toISOString().slice(0, 10))

  test('dates stay in their bounds and in their tokens', () => {
    fc.assert(
      fc.property(
        message,
        day,
        fc.double({ min: 0, max: 23.99, noNaN: true }),
        fc.integer({ min: 0, max: 8 }),
        (text, today, hour, skip) => {
          const tokens = tokenise(text)
          const taken = (i: number) => skip > 0 && i % 9 === skip
          let last = 0
          for (const d of findDates(tokens, taken, { day: today, hour })) {
            expect(d.from).toBeGreaterThanOrEqual(last)
            expect(d.to).toBeGreaterThan(d.from)
            expect(d.to).toBeLessThanOrEqual(tokens.length)
            for (let i = d.from; i < d.to; i++) expect(taken(i)).toBe(false)
            last = d.to
            expect(d.past <= today).toBe(true)
            expect(at(d.past).isValid && at(d.future).isValid).toBe(true)
            if (d.future < today)
              expect(
                /20\d\d|\/\d{2}\b/.test(
                  tokens
                    .slice(d.from, d.to)
                    .map(t => t.text)
                    .join(' '),
                ),
              ).toBe(true)
            if (d.span) expect(d.span.from <= d.span.to).toBe(true)
            if (d.time) expect(d.time).toMatch(/^([01]\d|2[0-3]):[0-5]\d$/)
            if (d.ahead) expect(d.past).toBe(today)
          }
        },
      ),
      { numRuns: 3000 },
    )
  })

  test('a month and a day come back on that month and day', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 31 }), (today, month, date) => {
        fc.pre(DateTime.utc(2024, month, date).isValid)
        const when = resolve({ as: 'date', month, day: date }, { day: today, hour: 12 })
        const tail = `-${String(month).padStart(2, '0')}-${String(date).padStart(2, '0')}`
        expect(when.past.endsWith(tail) && when.future.endsWith(tail)).toBe(true)
        expect(when.past <= today && when.future >= today).toBe(true)
      }),
    )
  })

  test('long repetitive text is read without winding up', () => {
    for (const unit of [
      'on the ',
      'el el ',
      '2 weeks after ',
      'a week from ',
      'the night of ',
      'ago ',
      '3 and 2 days ago ',
      'sept 3-9 ',
      'last this next ',
      'from monday to ',
    ]) {
      const tokens = tokenise(unit.repeat(Math.ceil(4096 / unit.length)).slice(0, 4096))
      expect(Array.isArray(findDates(tokens, () => false, { day: '2026-07-15', hour: 12 }))).toBe(true)
    }
  })
})
