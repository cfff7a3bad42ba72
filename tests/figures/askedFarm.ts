import { type Book, foldBook } from '../../src/book/book.ts'
import type { Entry } from '../../src/book/entries.ts'
import { EVENTS, type Event } from '../../src/book/events.ts'
import type { Now } from '../../src/figures/farm/now.ts'

/** A book from bare events; each is checked against its schema, so that a test cannot tell what nobody could. */
export const bookOf = (events: readonly Record<string, unknown>[]): Book =>
  foldBook(
    events.map((e, i): Entry => {
      const event = EVENTS[e.type as Event['type']].parse(e) as Event
      return { v: 1, n: i + 1, at: `${event.on}T13:00:00.000Z`, by: 'ada', body: { kind: 'event', id: `e${i + 1}`, event } }
    }),
  )

export const ZONE = 'America/Chicago'
/** An evening: the day's feeding is done. */
export const evening = (day: string): Now => ({
  day,
  at: new Date(Date.parse(`${day}T00:00:00Z`) + 25 * 3_600_000).toISOString(),
  zone: ZONE,
})

/** Corn silage on a pile of 36 by 100 ft, 8 ft high: 80 loads of 12,000 lb said. Opened on the first of November. */
export const upper = (more: readonly Record<string, unknown>[] = []): Record<string, unknown>[] => [
  { type: 'pile', name: 'upper', on: '2025-09-10', widthFt: 36, lengthFt: 100, heightFt: 8 },
  { type: 'box', name: 'red', lb: 12_000, on: '2025-09-10' },
  { type: 'load', pile: 'upper', crop: 'corn silage', count: 45, box: 'red', on: '2025-09-12' },
  { type: 'load', pile: 'upper', crop: 'corn silage', count: 35, box: 'red', on: '2025-09-13' },
  { type: 'cover', pile: 'upper', material: 'plastic', change: 'on', widthFt: 50, lengthFt: 120, on: '2025-09-14' },
  ...more,
]
