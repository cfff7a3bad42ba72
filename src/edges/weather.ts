import type { Instant } from '../units/calendar.ts'
import { concerns, type FeedAlert, type Kind, kindsOf, type Place } from './weather/alert.ts'
import { fromCap } from './weather/cap.ts'
import { fromGeoJson } from './weather/geojson.ts'

/** What is kept of a feed: the alerts for this place, ready to be asked about. */
export interface NearAlert {
  id: string
  kind: Kind
  from: Instant
  to: Instant
}

export interface WeatherOptions {
  url: string
  place: Place
  /** Something new came in. */
  onNews?: () => void
  /** Why the feed could not be read, for the log; nobody in the chat hears of it. */
  trouble?: (why: string) => void
  fetch?: typeof fetch
  /** Between two readings of the feed, ms. */
  everyMs?: number
  timeoutMs?: number
}

export interface Weather {
  alerts(): NearAlert[]
  /** Reads the feed once, now. */
  read(): Promise<void>
  stop(): void
}

/** Public services ask not to be read more than every few minutes. */
const EVERY_MS = 10 * 60_000
const TIMEOUT_MS = 15_000
/** After a failure twice as long as before, up to this, ms. */
const MOST_MS = 2 * 3_600_000
const MOST_BYTES = 8 * 1024 * 1024
/** Longer ones are climate, not weather, ms. */
const LONGEST_MS = 10 * 86_400_000

const isoOf = (text: string): Instant | undefined => {
  const t = Date.parse(text)
  return Number.isNaN(t) ? undefined : new Date(t).toISOString()
}

/** The alerts of a feed that are real, in force, not taken back, and for this place. */
export const near = (alerts: readonly FeedAlert[], place: Place): NearAlert[] => {
  const gone = new Set(alerts.filter(a => a.type === 'Cancel' || a.type === 'Update').flatMap(a => a.references))
  const seen = new Set<string>()
  return alerts.flatMap((a): NearAlert[] => {
    if (a.status !== 'Actual' || a.type === 'Cancel' || gone.has(a.id) || !concerns(a, place)) return []
    const from = isoOf(a.from)
    const to = isoOf(a.to)
    if (!from || !to || to <= from || Date.parse(to) - Date.parse(from) > LONGEST_MS) return []
    return kindsOf(a).flatMap(kind => {
      const key = `${a.id} ${kind}`
      if (seen.has(key)) return []
      seen.add(key)
      return [{ id: a.id, kind, from, to }]
    })
  })
}

/** The alerts in a body, by what it looks like; undefined where it is neither format. */
export const parseFeed = (body: string): FeedAlert[] | undefined => {
  if (body.trimStart().startsWith('<')) return fromCap(body)
  try {
    return fromGeoJson(JSON.parse(body))
  } catch {
    return undefined
  }
}

/** A body up to a size; a longer one is no alert feed. */
const textOf = async (response: Response): Promise<string> => {
  const parts: Uint8Array[] = []
  let size = 0
  if (response.body)
    for await (const part of response.body as unknown as AsyncIterable<Uint8Array>) {
      size += part.byteLength
      if (size > MOST_BYTES) throw new Error('the feed is too long')
      parts.push(part)
    }
  return Buffer.concat(parts).toString('utf8')
}

/**
 * Reads an alert feed every few minutes, politely: unchanged feeds are not sent again (ETag, Last-Modified), failures make
 * the wait longer, and what was read last stays in force until it is over. It never fails aloud.
 */
export const startWeather = (o: WeatherOptions): Weather => {
  const every = o.everyMs ?? EVERY_MS
  const get = o.fetch ?? fetch
  let kept: NearAlert[] = []
  let etag: string | undefined
  let modified: string | undefined
  let wait = every
  let timer: NodeJS.Timeout | undefined
  let stopped = false
  const read = async (): Promise<void> => {
    try {
      const response = await get(o.url, {
        headers: {
          accept: 'application/geo+json, application/cap+xml, application/json;q=0.8, application/xml;q=0.8',
          'User-Agent': 'pilehand',
          ...(etag && { 'If-None-Match': etag }),
          ...(modified && { 'If-Modified-Since': modified }),
        },
        signal: AbortSignal.timeout(o.timeoutMs ?? TIMEOUT_MS),
      })
      if (response.status !== 304) {
        if (!response.ok) throw new Error(`the feed answered ${response.status}`)
        const found = parseFeed(await textOf(response))
        if (!found) throw new Error('the feed is neither CAP nor GeoJSON')
        etag = response.headers.get('etag') ?? undefined
        modified = response.headers.get('Last-Modified') ?? undefined
        const was = new Set(kept.map(a => `${a.id} ${a.kind}`))
        // an alert that is over leaves the feed before anybody was asked
        const over = kept.filter(a => Date.parse(a.to) < Date.now() && !found.some(f => f.id === a.id || f.references.includes(a.id)))
        kept = [...over.filter(a => Date.now() - Date.parse(a.to) < LONGEST_MS), ...near(found, o.place)]
        if (kept.some(a => !was.has(`${a.id} ${a.kind}`))) o.onNews?.()
      } else await response.body?.cancel()
      wait = every
    } catch (error) {
      o.trouble?.(error instanceof Error ? error.message : String(error))
      wait = Math.min(MOST_MS, wait * 2)
    }
  }
  const beat = async (): Promise<void> => {
    await read()
    if (!stopped) {
      timer = setTimeout(() => void beat(), wait)
      timer.unref()
    }
  }
  timer = setTimeout(() => void beat(), 0)
  timer.unref()
  return {
    alerts: () => kept,
    read,
    stop: () => {
      stopped = true
      clearTimeout(timer)
    },
  }
}
