import type { FeedAlert, Place } from './weather/alert.ts'
import { fromCap } from './weather/cap.ts'
import { fromGeoJson } from './weather/geojson.ts'
import { afterReading, type Kept, type NearAlert, readKept, writeKept } from './weather/kept.ts'

export interface WeatherOptions {
  url: string
  place: Place
  /** Where what was read is kept; left out, it is forgotten with the process. */
  file?: string
  /** Something new came in. */
  onNews?: () => void
  /** Why the feed could not be read, for the log; nobody in the chat hears of it. */
  trouble?: (why: string) => void
  fetch?: typeof fetch
  now?: () => number
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
/** A service that asks for longer gets it, up to a day, ms. */
const ASKED_MOST_MS = 24 * 3_600_000
const MOST_BYTES = 8 * 1024 * 1024

/** The alerts in a body, by what it looks like; undefined where it is neither format. */
export const parseFeed = (body: string): FeedAlert[] | undefined => {
  if (body.trimStart().startsWith('<')) return fromCap(body)
  try {
    return fromGeoJson(JSON.parse(body))
  } catch {
    return undefined
  }
}

/** Whether a body lists all that is in force: all but a document of CAP whose root is an alert. */
export const isList = (body: string): boolean => !/^\s*(?:<\?[^>]*\?>\s*|<!--[\s\S]*?-->\s*)*<(?:\w+:)?alert\b/.test(body)

/** How long to wait after so many failures in a row, ms; `askedSeconds` is the service's own wish (Retry-After, RFC 9110, 10.2.3). */
export const waitAfter = (failures: number, everyMs: number, askedSeconds = 0): number =>
  Math.max(Math.min(MOST_MS, everyMs * 2 ** Math.min(failures, 30)), everyMs, Math.min(ASKED_MOST_MS, askedSeconds * 1000))

class Unread extends Error {
  readonly askedSeconds: number
  constructor(status: number, after: string | null) {
    super(`the feed answered ${status}`)
    this.askedSeconds = after !== null && /^\d{1,7}$/.test(after) ? Number(after) : 0
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

const keyOf = (a: NearAlert): string => `${a.id} ${a.kind}`

/**
 * Reads an alert feed every few minutes, politely: unchanged feeds are not sent again (ETag, Last-Modified), failures make
 * the wait longer, and what was read last stays in force until it is over. It never fails aloud.
 */
export const startWeather = (o: WeatherOptions): Weather => {
  const every = o.everyMs ?? EVERY_MS
  const get = o.fetch ?? fetch
  const now = o.now ?? Date.now
  let kept: Kept = o.file === undefined ? { alerts: [], gone: {} } : readKept(o.file, o.url, o.place)
  let failures = 0
  let wait = every
  let timer: NodeJS.Timeout | undefined
  let stopped = false

  const take = (body: string, headers: Headers): void => {
    const found = parseFeed(body)
    if (!found) throw new Error('the feed is neither CAP nor GeoJSON')
    const known = new Set(kept.alerts.map(keyOf))
    const etag = headers.get('ETag')
    const modified = headers.get('Last-Modified')
    kept = { ...afterReading(kept, found, o.place, isList(body), now()), ...(etag && { etag }), ...(modified && { modified }) }
    if (o.file !== undefined) writeKept(o.file, o.url, o.place, kept)
    if (kept.alerts.some(a => !known.has(keyOf(a)))) o.onNews?.()
  }

  const once = async (): Promise<void> => {
    try {
      const response = await get(o.url, {
        headers: {
          accept: 'application/geo+json, application/cap+xml, application/json;q=0.8, application/xml;q=0.8',
          'User-Agent': 'pilehand',
          ...(kept.etag && { 'If-None-Match': kept.etag }),
          ...(kept.modified && { 'If-Modified-Since': kept.modified }),
        },
        signal: AbortSignal.timeout(o.timeoutMs ?? TIMEOUT_MS),
      })
      if (response.status === 304) await response.body?.cancel()
      else if (response.ok) take(await textOf(response), response.headers)
      else {
        await response.body?.cancel()
        throw new Unread(response.status, response.headers.get('Retry-After'))
      }
      failures = 0
      wait = every
    } catch (error) {
      o.trouble?.(error instanceof Error ? error.message : String(error))
      wait = waitAfter(++failures, every, error instanceof Unread ? error.askedSeconds : 0)
    }
  }
  let running: Promise<void> | undefined
  /** Never twice at the same time. */
  const read = (): Promise<void> => {
    running ??= once().finally(() => {
      running = undefined
    })
    return running
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
    alerts: () => kept.alerts,
    read,
    stop: () => {
      stopped = true
      clearTimeout(timer)
    },
  }
}
