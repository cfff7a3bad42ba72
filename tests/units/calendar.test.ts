import { DateTime } from 'luxon'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import {
  addDays,
  addMonths,
  daysBetween,
  instantOf,
  isDay,
  isZone,
  localDay,
  localTime,
  monthOf,
  weekday,
} from '../../src/units/calendar.ts'

// Reference: luxon 3, an independent calendar over the same tz database. Every zone below but Phoenix, Kolkata, Mexico City and UTC
// changes its clock twice a year; Lord Howe by half an hour.
const ZONES = [
  'America/Chicago',
  'America/New_York',
  'America/Los_Angeles',
  'America/Phoenix',
  'America/Mexico_City',
  'Europe/Madrid',
  'Australia/Lord_Howe',
  'Asia/Kolkata',
  'UTC',
]
const DAYS = Array.from({ length: 731 }, (_, i) => DateTime.fromISO('2026-12-01', { zone: 'UTC' }).plus({ days: i }).toISODate()!)
const HOST_ZONES = ['America/Chicago', 'Asia/Tokyo']

describe.each(HOST_ZONES)('on a machine whose clock is set to %s', host => {
  const before = process.env.TZ
  beforeAll(() => {
    process.env.TZ = host
  })
  afterAll(() => {
    if (before === undefined) delete process.env.TZ
    else process.env.TZ = before
  })

  test('the machine really is there', () => {
    const january = new Date(2027, 0, 1)
    expect(-january.getTimezoneOffset()).toBe(DateTime.fromObject({ year: 2027, month: 1, day: 1 }, { zone: host }).offset)
  })

  test('days, weekdays and months agree with luxon over two years', () => {
    for (const [i, day] of DAYS.entries()) {
      const at = DateTime.fromISO(day, { zone: 'UTC' })
      expect(isDay(day)).toBe(true)
      expect(weekday(day)).toBe(at.weekday % 7)
      expect(monthOf(day)).toBe(at.month)
      expect(daysBetween(DAYS[0]!, day)).toBe(i)
      for (const n of [-400, -31, -1, 0, 1, 28, 366]) expect(addDays(day, n)).toBe(at.plus({ days: n }).toISODate())
      for (const n of [-13, -1, 0, 1, 2, 11, 24]) expect(addMonths(day, n)).toBe(at.plus({ months: n }).toISODate())
    }
  })

  test.each(ZONES)('wall clock of %s at every sixth hour of two years', zone => {
    for (const day of DAYS) {
      for (const hour of [0, 6, 12, 18]) {
        const at = DateTime.fromISO(day, { zone: 'UTC' }).plus({ hours: hour, minutes: 59, seconds: 30 })
        const there = at.setZone(zone)
        const got = localTime(at.toISO()!, zone)
        expect(got.day).toBe(there.toISODate())
        expect(got.hour).toBeCloseTo(there.hour + there.minute / 60 + there.second / 3600, 6)
        expect(localDay(at.toISO()!, zone)).toBe(there.toISODate())
      }
    }
  })

  test.each(ZONES)('instants of wall clock times in %s', zone => {
    for (const day of DAYS) {
      const [year, month, date] = day.split('-').map(Number) as [number, number, number]
      for (const time of ['00:00', '01:30', '02:30', '07:00', '23:59']) {
        const [hour, minute] = time.split(':').map(Number) as [number, number]
        const luxon = DateTime.fromObject({ year, month, day: date, hour, minute }, { zone })
        // where the hour comes twice, the first one
        const first = luxon.getPossibleOffsets().sort((a, b) => a.toMillis() - b.toMillis())[0]!
        expect(`${day} ${time} ${instantOf(day, time, zone)}`).toBe(`${day} ${time} ${first.toUTC().toISO()}`)
      }
    }
  })

  test('both clock changes of 2027, by the dates of the Energy Policy Act of 2005', () => {
    // second Sunday in March, first Sunday in November, at two in the morning
    expect(instantOf('2027-03-14', '01:59', 'America/Chicago')).toBe('2027-03-14T07:59:00.000Z')
    expect(instantOf('2027-03-14', '02:30', 'America/Chicago')).toBe('2027-03-14T08:30:00.000Z')
    expect(localTime('2027-03-14T08:30:00Z', 'America/Chicago')).toEqual({ day: '2027-03-14', hour: 3.5 })
    expect(instantOf('2027-11-07', '01:30', 'America/Chicago')).toBe('2027-11-07T06:30:00.000Z')
    expect(localTime('2027-11-07T06:30:00Z', 'America/Chicago')).toEqual({ day: '2027-11-07', hour: 1.5 })
    expect(localTime('2027-11-07T07:30:00Z', 'America/Chicago')).toEqual({ day: '2027-11-07', hour: 1.5 })
    expect(instantOf('2027-11-07', '07:00', 'America/Chicago')).toBe('2027-11-07T13:00:00.000Z')
  })
})

test('what is no day, what is no zone', () => {
  for (const bad of ['2026-02-29', '2026-13-01', '2026-00-10', '2026-9-1', '2026-04-31', '', 'today', '2026-09-01T00:00'])
    expect(isDay(bad)).toBe(false)
  expect(isDay('2028-02-29')).toBe(true)
  expect(isZone('America/Chicago')).toBe(true)
  expect(isZone('Mars/Olympus')).toBe(false)
})
