import { TZDate, tzOffset } from '@date-fns/tz'
import { addMonths as monthsOn } from 'date-fns'

/** A calendar day in the farm's zone, `YYYY-MM-DD`. */
export type Day = string
/** An instant, ISO 8601 in UTC, `…Z`. */
export type Instant = string

const MS_DAY = 86_400_000
const two = (n: number) => String(n).padStart(2, '0')

export const dayOf = (year: number, month: number, day: number): Day => `${String(year).padStart(4, '0')}-${two(month)}-${two(day)}`

/** True for a real calendar day in `YYYY-MM-DD`. */
export const isDay = (text: string): boolean => {
  const m = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text)
  if (!m) return false
  const d = new Date(`${text}T00:00:00Z`)
  return !Number.isNaN(+d) && d.toISOString().slice(0, 10) === text
}

const utc = (day: Day): number => Date.parse(`${day}T00:00:00Z`)

/** The day `n` days after (before, if negative). */
export const addDays = (day: Day, n: number): Day => new Date(utc(day) + n * MS_DAY).toISOString().slice(0, 10)
/** Whole days from `a` to `b`; negative when `b` is earlier. */
export const daysBetween = (a: Day, b: Day): number => Math.round((utc(b) - utc(a)) / MS_DAY)
/** 0 Sunday to 6 Saturday. */
export const weekday = (day: Day): number => new Date(utc(day)).getUTCDay()
/** `n` months on, the day held back to the month's last. */
export const addMonths = (day: Day, n: number): Day => {
  const [y, m, d] = day.split('-').map(Number) as [number, number, number]
  // noon: no zone of the host moves it to another day
  const at = monthsOn(new Date(y, m - 1, d, 12), n)
  return dayOf(at.getFullYear(), at.getMonth() + 1, at.getDate())
}
/** 1 to 12. */
export const monthOf = (day: Day): number => Number(day.slice(5, 7))

export interface LocalTime {
  day: Day
  /** Hours since local midnight by the wall clock, 0 up to 24. */
  hour: number
}

/** Offsets from UTC change on quarter hours at the finest, so one look-up serves each quarter hour of a zone. */
const QUARTER = 900_000
const offsets = new Map<string, Map<number, number>>()

/** Local wall clock minus UTC at an instant, ms. */
const offsetAt = (ms: number, zone: string): number => {
  let known = offsets.get(zone)
  if (!known) {
    known = new Map()
    offsets.set(zone, known)
  }
  const quarter = Math.floor(ms / QUARTER)
  const kept = known.get(quarter)
  if (kept !== undefined) return kept
  const offset = tzOffset(zone, new Date(quarter * QUARTER)) * 60_000
  if (known.size > 50_000) known.clear()
  known.set(quarter, offset)
  return offset
}

/** The farm's wall clock at an instant. */
export const localTime = (at: Instant, zone: string): LocalTime => {
  const ms = Date.parse(at)
  const local = new Date(ms + offsetAt(ms, zone))
  return {
    day: dayOf(local.getUTCFullYear(), local.getUTCMonth() + 1, local.getUTCDate()),
    hour: local.getUTCHours() + local.getUTCMinutes() / 60 + (local.getUTCSeconds() + local.getUTCMilliseconds() / 1000) / 3600,
  }
}

export const localDay = (at: Instant, zone: string): Day => localTime(at, zone).day

/**
 * The instant of a wall-clock time on a day. In the spring gap the clock has moved on (02:30 is 03:30); in the autumn
 * overlap it is the first of the two.
 */
export const instantOf = (day: Day, time: string, zone: string): Instant => {
  const key = `${zone} ${day} ${time}`
  const kept = instants.get(key)
  if (kept !== undefined) return kept
  const [y, m, d] = day.split('-').map(Number) as [number, number, number]
  const [h, min] = time.split(':').map(Number) as [number, number]
  let ms = +new TZDate(y, m - 1, d, h, min, 0, zone)
  // TZDate takes the first of a doubled hour in some zones and the second in others; Lord Howe doubles half an hour
  for (const back of [3_600_000, 1_800_000]) {
    const first = localTime(new Date(ms - back).toISOString(), zone)
    if (first.day === day && Math.abs(first.hour - h - min / 60) < 1e-9) {
      ms -= back
      break
    }
  }
  const at = new Date(ms).toISOString()
  if (instants.size > 50_000) instants.clear()
  instants.set(key, at)
  return at
}

/** The watch asks for the same mornings again and again. */
const instants = new Map<string, Instant>()

/** True where the runtime knows the IANA zone. */
export const isZone = (zone: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone })
    return true
  } catch {
    return false
  }
}
