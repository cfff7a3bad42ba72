import { type Book, eventsOf, piles } from '../book/book.ts'
import { isCovered, type PileState } from '../book/pile.ts'
import { addDays, type Day, type Instant } from '../units/calendar.ts'
import { type Moment, toldAt } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'

/** What an alert feed says of the farm's place; it is only ever asked about, never recorded. */
export interface Alert {
  id: string
  kind: 'hail' | 'wind' | 'freeze' | 'rain'
  from: Instant
  to: Instant
}
type Past = Exclude<Alert['kind'], 'freeze'>

/** What hurts a cover most is what is asked about where one storm brought several. */
const RANK: Record<Past, number> = { hail: 3, wind: 2, rain: 1 }
/** Warnings that follow one another so closely are one storm, ms. Common practice, no source. */
const APART_MS = 2 * 3_600_000
/** Past this nobody needs to be asked: a walk is due by then anyway, ms. Common practice, no source. */
const STALE_MS = 36 * 3_600_000
/** A freeze is asked about before it comes: what lies on the ground must be up by then, ms. */
const AHEAD_MS = 36 * 3_600_000

/** Alerts that follow one another, as one storm. */
interface Storm {
  kind: Past
  from: number
  to: number
}

const storms = (alerts: readonly Alert[]): Storm[] => {
  const list: Storm[] = []
  const sorted = alerts.flatMap(a => (a.kind === 'freeze' ? [] : [{ kind: a.kind, from: Date.parse(a.from), to: Date.parse(a.to) }]))
  for (const a of sorted.sort((x, y) => x.from - y.from)) {
    const last = list.at(-1)
    if (!last || a.from > last.to + APART_MS) list.push(a)
    else {
      last.to = Math.max(last.to, a.to)
      if (RANK[a.kind] > RANK[last.kind]) last.kind = a.kind
    }
  }
  return list
}

const KEY = /^alert:(hail|wind|rain):([^/]+)\/(.+)$/
const iso = (ms: number): Instant => new Date(ms).toISOString()
const keyOf = (s: Storm): string => `alert:${s.kind}:${iso(s.from)}/${iso(s.to)}`

/** Asked about already, by this or a worse kind: an update that moves its end, or a warning more, is the same storm. */
const isAsked = (s: Storm, asked: readonly Storm[]): boolean =>
  asked.some(a => RANK[a.kind] >= RANK[s.kind] && s.from <= a.to + APART_MS && s.to >= a.from - APART_MS)

const askedIn = (book: Book): Storm[] =>
  [...book.said].flatMap(key => {
    const m = KEY.exec(key)
    return m ? [{ kind: m[1] as Past, from: Date.parse(m[2]!), to: Date.parse(m[3]!) }] : []
  })

/** What begins after midnight belongs to the night before it. */
const nightOf = (ms: number, zone: string): { night: Day; dark: boolean } => {
  const began = toldAt(iso(ms), zone)
  return { night: began.hour < 6 ? addDays(began.day, -1) : began.day, dark: began.hour < 6 || began.hour >= 17 }
}

/** Somebody told of the same weather already: nothing is left to ask. */
const isTold = (book: Book, kind: Alert['kind'], day: Day): boolean =>
  eventsOf(book, 'weather').some(t => t.event.kind === kind && t.event.on >= addDays(day, -1) && t.event.on <= addDays(day, 1))

const walkedSince = (p: PileState, ms: number): boolean => Date.parse(p.checks.at(-1)?.at ?? '') > ms

const past = (book: Book, m: Moment, alerts: readonly Alert[], covered: PileState[]): DueItem[] => {
  const now = Date.parse(m.at)
  const asked = askedIn(book)
  return storms(alerts).flatMap((s): DueItem[] => {
    if (now < s.to || now - s.to > STALE_MS || isAsked(s, asked)) return []
    const { night, dark } = nightOf(s.from, m.zone)
    const left = covered.filter(p => !walkedSince(p, s.to)).map(p => p.name)
    if (isTold(book, s.kind, night) || !left.length) return []
    const when = night === m.day ? 'today' : dark && night === addDays(m.day, -1) ? 'night' : 'day'
    const message = { code: 'alert-past', data: { kind: s.kind, piles: left, on: night, when } }
    return [{ key: keyOf(s), at: iso(s.to), to: 'crew', message, offer: { did: s.kind, piles: left } }]
  })
}

const ahead = (book: Book, m: Moment, alerts: readonly Alert[]): DueItem[] => {
  const now = Date.parse(m.at)
  const out = new Map<string, DueItem>()
  for (const a of alerts) {
    if (a.kind !== 'freeze' || now >= Date.parse(a.to) || Date.parse(a.from) - now > AHEAD_MS) continue
    const { night } = nightOf(Date.parse(a.from), m.zone)
    if (isTold(book, 'freeze', night)) continue
    const key = `alert:freeze:${night}`
    out.set(key, { key, at: m.at, to: 'crew', message: { code: 'alert-ahead', data: { on: night } } })
  }
  return [...out.values()]
}

/**
 * Hail, wind and heavy rain that were warned of near the farm are asked about once the storm is over; a freeze is told of before
 * it comes. Each storm once, however many alerts and updates it had; nothing where no pile is covered, or where somebody told
 * of it or walked the covers since.
 */
export const alertsDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const alerts = figures.alerts?.() ?? []
  const covered = alerts.length ? piles(book).filter(isCovered) : []
  return covered.length ? [...past(book, m, alerts, covered), ...ahead(book, m, alerts)] : []
}
