import { z } from 'zod'
import type { FeedAlert } from './alert.ts'

/**
 * Alerts as GeoJSON (RFC 7946): a FeatureCollection whose properties follow the fields of CAP, as public weather services publish
 * them. What is not there is left out; a feature without an event or a time is no alert.
 */
const Position = z.tuple([z.number(), z.number()]).rest(z.number())
const Geometry = z.union([
  z.object({ type: z.literal('Polygon'), coordinates: z.array(z.array(Position)) }),
  z.object({ type: z.literal('MultiPolygon'), coordinates: z.array(z.array(z.array(Position))) }),
])
const words = z.string().nullish()
const Feature = z.object({
  id: z.string().optional(),
  geometry: Geometry.nullish().catch(null),
  properties: z.object({
    id: words,
    status: words,
    messageType: words,
    references: z
      .array(z.union([z.string(), z.object({ identifier: words, '@id': words })]))
      .nullish()
      .catch([]),
    event: z.string(),
    headline: words,
    description: words,
    onset: words,
    effective: words,
    sent: words,
    ends: words,
    expires: words,
    areaDesc: words,
    geocode: z.record(z.string(), z.array(z.string())).nullish().catch({}),
    parameters: z.record(z.string(), z.unknown()).nullish().catch({}),
  }),
})
const Collection = z.object({ type: z.literal('FeatureCollection'), features: z.array(z.unknown()) })

const ringsOf = (g: z.infer<typeof Geometry> | null | undefined): [number, number][][] => {
  const outer = !g ? [] : g.type === 'Polygon' ? [g.coordinates[0] ?? []] : g.coordinates.map(p => p[0] ?? [])
  return outer.map(ring => ring.map(([lon, lat]): [number, number] => [lon, lat]))
}

/** Undefined where the body is no feed of this kind; features that do not fit are passed over. */
export const fromGeoJson = (body: unknown): FeedAlert[] | undefined => {
  const c = Collection.safeParse(body)
  if (!c.success) return undefined
  return c.data.features.flatMap((f): FeedAlert[] => {
    const r = Feature.safeParse(f)
    if (!r.success) return []
    const p = r.data.properties
    const id = p.id ?? r.data.id
    const from = p.onset ?? p.effective ?? p.sent
    const to = p.ends ?? p.expires
    if (!id || !from || !to) return []
    return [
      {
        id,
        status: p.status ?? 'Actual',
        type: p.messageType ?? 'Alert',
        references: (p.references ?? []).flatMap(x => (typeof x === 'string' ? [x] : [x.identifier, x['@id']].filter(y => y != null))),
        event: p.event,
        text: [p.headline, p.description, JSON.stringify(p.parameters ?? {})].filter(Boolean).join(' '),
        from,
        to,
        rings: ringsOf(r.data.geometry),
        areas: [...(p.areaDesc ?? '').split(';'), ...Object.values(p.geocode ?? {}).flat()].map(x => x.trim()).filter(Boolean),
      },
    ]
  })
}
