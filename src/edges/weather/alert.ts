/** Longitude and latitude, degrees (WGS 84). */
export type Position = [lon: number, lat: number]
/** An outline, and the holes in it. */
export type Polygon = Position[][]

/** An alert as a feed tells it, whatever its format. */
export interface FeedAlert {
  id: string
  status: string
  /** `Alert`, `Update`, `Cancel`; or `Ack`, `Error`. */
  type: string
  /** Earlier alerts that this one replaces or takes back. */
  references: string[]
  event: string
  /** Headline, description and parameters, to look for hail in. */
  text: string
  /** `Observed`, `Likely`, `Possible`, `Unlikely`, `Unknown`; empty where it is not told. */
  certainty: string
  /** `Extreme`, `Severe`, `Moderate`, `Minor`, `Unknown`; empty where it is not told. */
  severity: string
  from: string
  to: string
  /** Empty where the feed gives none. */
  polygons: Polygon[]
  /** Around a position, km. */
  circles: { at: Position; km: number }[]
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
export const inRing = (lon: number, lat: number, ring: readonly Position[]): boolean => {
  let inside = false
  for (let i = 0, j = ring.length - 1; i < ring.length; j = i++) {
    const [xi, yi] = ring[i]!
    const [xj, yj] = ring[j]!
    if (yi > lat !== yj > lat && lon < ((xj - xi) * (lat - yi)) / (yj - yi) + xi) inside = !inside
  }
  return inside
}

const inPolygon = ({ lon, lat }: Place, [outline = [], ...holes]: Polygon): boolean =>
  inRing(lon, lat, outline) && !holes.some(h => inRing(lon, lat, h))

/** Mean radius of the earth, km (IUGG). */
const EARTH_KM = 6371.0088
const rad = (deg: number): number => (deg * Math.PI) / 180
/** Along the great circle, by the haversine formula; km. */
export const kmBetween = ([lon1, lat1]: Position, [lon2, lat2]: Position): number => {
  const a = Math.sin(rad(lat2 - lat1) / 2) ** 2 + Math.cos(rad(lat1)) * Math.cos(rad(lat2)) * Math.sin(rad(lon2 - lon1) / 2) ** 2
  return 2 * EARTH_KM * Math.asin(Math.min(1, Math.sqrt(a)))
}

/** By its outline where it has one; else by the name or code of its area. */
export const concerns = (a: FeedAlert, place: Place): boolean => {
  if (a.polygons.length || a.circles.length)
    return a.polygons.some(p => inPolygon(place, p)) || a.circles.some(c => kmBetween([place.lon, place.lat], c.at) <= c.km)
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

/**
 * A warning of what was seen or is more likely than not, and of some weight (CAP 1.2, 3.2.2: "Likely" is p > 50 %, "Minor" is
 * "minimal to no known threat"): a watch that only says what might come is nothing to ask about.
 */
export const isSerious = ({ certainty, severity }: Pick<FeedAlert, 'certainty' | 'severity'>): boolean =>
  ['', 'Observed', 'Likely', 'Very Likely'].includes(certainty) && severity !== 'Minor'

export type Kind = 'hail' | 'wind' | 'freeze' | 'rain'

/** Says outright that there is none: in words, or by the size of the largest stone. */
const isHailDenied = (text: string): boolean => {
  const stone = /\bmaxhailsize\W+(\d*\.?\d+)/.exec(text)
  return /\bno hail\b/.test(text) || (stone !== null && Number(stone[1]) === 0)
}

/** What matters for a cover in an alert's own words. A severe thunderstorm is hail where hail is spoken of, else wind. */
export const kindsOf = (a: Pick<FeedAlert, 'event' | 'text'>): Kind[] => {
  const event = a.event.toLowerCase()
  const all = `${event} ${a.text.toLowerCase()}`
  if (/\b(?:freeze|frost|hard freeze|heladas?)\b/.test(event)) return ['freeze']
  if (/\b(?:severe thunderstorm|thunderstorm|hail|tornado|tormentas?|granizo)\b/.test(event))
    return isHailDenied(all) || !/hail|granizo/.test(all) ? ['wind'] : ['hail', 'wind']
  if (/\b(?:winds?|gale|hurricane|tropical storm|blizzard|vientos?|hurac[aá]n)\b/.test(event) && !/wind chill/.test(event)) return ['wind']
  if (/\b(?:flood|heavy rain|rainfall|lluvias?|inundaci[oó]n(?:es)?)\b/.test(event)) return ['rain']
  return []
}
