import { readFileSync, renameSync, writeFileSync } from 'node:fs'
import { z } from 'zod'
import { concerns, type FeedAlert, isSerious, type Kind, kindsOf, type Place } from './alert.ts'

/** What is kept of an alert for this place, ready to be asked about. */
export interface NearAlert {
  id: string
  kind: Kind
  from: string
  to: string
}

/** What the last reading left: it outlives the process, so that a restart neither asks anew nor forgets a night. */
export interface Kept {
  etag?: string
  modified?: string
  alerts: NearAlert[]
  /** Ids that were taken back or replaced, and when that was last seen, ms: a cancellation leaves the feed before its alert is forgotten. */
  gone: Record<string, number>
}

/** Longer ones are climate, not weather; and nothing is remembered for longer, ms. */
const LONGEST_MS = 10 * 86_400_000

const isoOf = (text: string): string | undefined => {
  const t = Date.parse(text)
  return Number.isNaN(t) ? undefined : new Date(t).toISOString()
}

/** Ids that other messages of a feed replace or take back. A test takes nothing back. ("Error" rejects what it refers to: CAP 1.2, 3.2.1.) */
export const takenBack = (alerts: readonly FeedAlert[]): string[] =>
  alerts.filter(a => a.status === 'Actual' && ['Cancel', 'Update', 'Error'].includes(a.type)).flatMap(a => a.references)

/** The alerts of a feed that are real, in force, not taken back, of some weight, and for this place. */
export const near = (alerts: readonly FeedAlert[], place: Place): NearAlert[] => {
  const gone = new Set(takenBack(alerts))
  const seen = new Set<string>()
  return alerts.flatMap((a): NearAlert[] => {
    if (a.status !== 'Actual' || !['Alert', 'Update'].includes(a.type) || gone.has(a.id)) return []
    if (!isSerious(a) || !concerns(a, place)) return []
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

/**
 * What is kept after a reading. An alert that is over leaves the feed before anybody was asked, so it stays; one that leaves a
 * list before it is over was dropped by the service. A document of one alert (`list` false) says nothing of the others.
 */
export const afterReading = (was: Kept, found: readonly FeedAlert[], place: Place, list: boolean, nowMs: number): Kept => {
  const gone = { ...was.gone }
  for (const id of takenBack(found)) gone[id] = nowMs
  for (const [id, at] of Object.entries(gone)) if (nowMs - at > LONGEST_MS) delete gone[id]
  const fresh = near(found, place).filter(a => gone[a.id] === undefined)
  const known = new Set(found.map(a => a.id))
  const stays = (a: NearAlert): boolean =>
    !known.has(a.id) && gone[a.id] === undefined && (!list || Date.parse(a.to) < nowMs) && nowMs - Date.parse(a.to) < LONGEST_MS
  return { alerts: [...was.alerts.filter(stays), ...fresh], gone }
}

const File = z.object({
  of: z.string(),
  etag: z.string().optional(),
  modified: z.string().optional(),
  alerts: z.array(
    z.object({ id: z.string(), kind: z.enum(['hail', 'wind', 'freeze', 'rain']), from: z.iso.datetime(), to: z.iso.datetime() }),
  ),
  gone: z.record(z.string(), z.number()),
})

/** Whose memory a file is: another address or place makes it worthless. */
const ownerOf = (url: string, place: Place): string => JSON.stringify([url, place.lat, place.lon, place.area ?? ''])

/** The memory in a file; an empty one where there is none, or none of this feed, or it cannot be read: the feed tells again. */
export const readKept = (file: string, url: string, place: Place): Kept => {
  const none = { alerts: [], gone: {} }
  try {
    const { of, ...kept } = File.parse(JSON.parse(readFileSync(file, 'utf8')))
    return of === ownerOf(url, place) ? kept : none
  } catch {
    return none
  }
}

export const writeKept = (file: string, url: string, place: Place, kept: Kept): void => {
  writeFileSync(`${file}.new`, JSON.stringify({ of: ownerOf(url, place), ...kept }))
  renameSync(`${file}.new`, file)
}
