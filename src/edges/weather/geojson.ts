import { z } from 'zod'
import type { FeedAlert, Polygon } from './alert.ts'

/**
 * Alerts as GeoJSON (RFC 7946): a FeatureCollection whose properties follow the fields of CAP, as public weather services publish
 * them. What is not there is left out; a feature without an event or a time only replaces others.
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
    event: words,
    certainty: words,
    severity: words,
    response: words,
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

/** RFC 7946, 3.1.6: the first ring is the outline, the others are holes; longitude first. */
const polygonsOf = (g: z.infer<typeof Geometry> | null | undefined): Polygon[] =>
  (!g ? [] : g.type === 'Polygon' ? [g.coordinates] : g.coordinates).map(rings => rings.map(ring => ring.map(([lon, lat]) => [lon, lat])))

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
    if (!id) return []
    const clear = p.response === 'AllClear' || !p.event || !from || !to
    return [
      {
        id,
        status: p.status ?? 'Actual',
        type: p.messageType ?? 'Alert',
        references: (p.references ?? []).flatMap(x => (typeof x === 'string' ? [x] : [x.identifier, x['@id']].filter(y => y != null))),
        event: clear ? '' : p.event!,
        text: [p.headline, p.description, JSON.stringify(p.parameters ?? {})].filter(Boolean).join(' '),
        certainty: p.certainty ?? '',
        severity: p.severity ?? '',
        from: from ?? '',
        to: to ?? '',
        polygons: polygonsOf(r.data.geometry),
        circles: [],
        areas: [...(p.areaDesc ?? '').split(';'), ...Object.values(p.geocode ?? {}).flat()].map(x => x.trim()).filter(Boolean),
      },
    ]
  })
}
