/** An alert as a feed tells it, whatever its format. */
export interface FeedAlert {
  id: string
  status: string
  /** `Alert`, `Update` or `Cancel`. */
  type: string
  /** Earlier alerts that this one replaces or takes back. */
  references: string[]
  event: string
  /** Headline, description and parameters, to look for hail in. */
  text: string
  from: string
  to: string
  /** Rings of longitude and latitude; empty where the feed gives none. */
  rings: [number, number][][]
  /** Names and codes of the areas it is for. */
  areas: string[]
}

export interface Place {
  lat: number
  lon: number
  /** A name or code that an alert without an outline is matched by. */
  area?: string
}

/** Whether a point lies in a ring: how often a ray to the east crosses its edges (Jordan curve theorem; any textbook). */
export const inRing = (lon: number, lat: number, ring: readonly [number, number][]): boolean => {
  let inside = false
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [xi, yi] = ring[i]!
    const [xj, yj] = ring[j]!
    if (yi > lat !== yj > lat && lon < ((xj - xi) * (lat - yi)) / (yj - yi) + xi) inside = !inside
  }
  return inside
}

export const concerns = (a: FeedAlert, place: Place): boolean => {
  if (a.rings.length) return a.rings.some(r => inRing(place.lon, place.lat, r))
  const area = place.area?.trim().toLowerCase()
  return (
    !!area &&
    a.areas.some(x =>
      x
        .toLowerCase()
        .split(/[;,]/)
        .some(part => part.trim() === area || part.trim().startsWith(`${area} `)),
    )
  )
}

export type Kind = 'hail' | 'wind' | 'freeze' | 'rain'

/** What matters for a cover in an alert's own words. A severe thunderstorm is hail where hail is spoken of, else wind. */
export const kindsOf = (a: FeedAlert): Kind[] => {
  const event = a.event.toLowerCase()
  const all = `${event} ${a.text.toLowerCase()}`
  if (/\b(?:freeze|frost|hard freeze)\b/.test(event)) return ['freeze']
  if (/\b(?:severe thunderstorm|hail|tornado)\b/.test(event))
    return /\bno hail\b/.test(all) || !/hail/.test(all) ? ['wind'] : ['hail', 'wind']
  if (/\b(?:wind|gale|hurricane|blizzard)\b/.test(event) && !/wind chill/.test(event)) return ['wind']
  if (/\b(?:flood|heavy rain|rainfall)\b/.test(event)) return ['rain']
  return []
}
