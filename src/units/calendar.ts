import { TZDate } from '@date-fns/tz'

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
  const last = new Date(Date.UTC(y, m - 1 + n + 1, 0)).getUTCDate()
  return new Date(Date.UTC(y, m - 1 + n, Math.min(d, last))).toISOString().slice(0, 10)
}
/** 1 to 12. */
export const monthOf = (day: Day): number => Number(day.slice(5, 7))

export interface LocalTime {
  day: Day
  /** Hours since local midnight by the wall clock, 0 up to 24. */
  hour: number
}

const formats = new Map<string, Intl.DateTimeFormat>()
const formatOf = (zone: string): Intl.DateTimeFormat => {
  let f = formats.get(zone)
  if (!f) {
    f = new Intl.DateTimeFormat('en-CA', {
      timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit', hour: '2-digit', minute: '2-digit', second: '2-digit',
    })
    formats.set(zone, f)
  }
  return f
}

/** The farm's wall clock at an instant. */
export const localTime = (at: Instant, zone: string): LocalTime => {
  const p: Record<string, number> = {}
  for (const { type, value } of formatOf(zone).formatToParts(Date.parse(at))) p[type] = Number(value)
  return { day: dayOf(p.year!, p.month!, p.day!), hour: p.hour! + p.minute! / 60 + p.second! / 3600 }
}

export const localDay = (at: Instant, zone: string): Day => localTime(at, zone).day

/**
 * The instant of a wall-clock time on a day. In the spring gap the clock has moved on (02:30 is 03:30); in the autumn
 * overlap it is the first of the two.
 */
export const instantOf = (day: Day, time: string, zone: string): Instant => {
  const [y, m, d] = day.split('-').map(Number) as [number, number, number]
  const [h, min] = time.split(':').map(Number) as [number, number]
  return new Date(+new TZDate(y, m - 1, d, h, min, 0, zone)).toISOString()
}

/** True where the runtime knows the IANA zone. */
export const isZone = (zone: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: zone })
    return true
  } catch {
    return false
  }
}
