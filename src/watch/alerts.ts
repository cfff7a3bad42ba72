import { type Book, eventsOf, piles } from '../book/book.ts'
import { isCovered } from '../book/pile.ts'
import { addDays, type Day, type Instant, localTime } from '../units/calendar.ts'
import type { Moment } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'

/** What an alert feed says of the farm's place; it is only ever asked about, never recorded. */
export interface Alert {
  id: string
  kind: 'hail' | 'wind' | 'freeze' | 'rain'
  from: Instant
  to: Instant
}

/** Past this nobody needs to be asked: a walk is due by then anyway, ms. Common practice, no source. */
const STALE_MS = 36 * 3_600_000
/** A freeze is asked about before it comes: what lies on the ground must be up by then, ms. */
const AHEAD_MS = 36 * 3_600_000

/** Somebody told of the same weather already: nothing is left to ask. */
const isTold = (book: Book, kind: Alert['kind'], day: Day): boolean =>
  eventsOf(book, 'weather').some(t => t.event.kind === kind && t.event.on >= addDays(day, -1) && t.event.on <= addDays(day, 1))

/**
 * Hail, wind and heavy rain that were warned of near the farm are asked about once they are over; a freeze before it comes. One
 * question for each kind and night, however many alerts there were; none where no pile is covered.
 */
export const alertsDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const alerts = figures.alerts?.() ?? []
  if (!alerts.length) return []
  const covered = piles(book)
    .filter(isCovered)
    .map(p => p.name)
  if (!covered.length) return []
  const now = Date.parse(m.at)
  const out = new Map<string, DueItem>()
  for (const a of alerts) {
    const from = Date.parse(a.from)
    const to = Date.parse(a.to)
    const ahead = a.kind === 'freeze'
    if (ahead ? now >= to || from - now > AHEAD_MS : now < to || now - to > STALE_MS) continue
    const began = localTime(a.from, m.zone)
    // what begins after midnight belongs to the night before it
    const night = began.hour < 6 ? addDays(began.day, -1) : began.day
    if (isTold(book, a.kind, night)) continue
    const key = `alert:${a.kind}:${night}`
    if (out.has(key)) continue
    const data = { ...(!ahead && { kind: a.kind, piles: covered }), on: night }
    out.set(key, {
      key,
      at: ahead ? m.at : a.to,
      to: 'crew',
      message: { code: ahead ? 'alert-ahead' : 'alert-past', data },
      ...(!ahead && { offer: { did: 'walked' as const, piles: covered } }),
    })
  }
  return [...out.values()]
}
