import type { Day, Instant } from '../../units/calendar.ts'

/** The moment a figure is worked out for. */
export interface Now {
  /** The farm's own calendar day. */
  day: Day
  at: Instant
  zone: string
}
