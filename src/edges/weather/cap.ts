import { XMLParser, XMLValidator } from 'fast-xml-parser'
import { z } from 'zod'
import type { FeedAlert, Position } from './alert.ts'

/** Alerts as CAP 1.2 (OASIS Common Alerting Protocol): one `alert`, or several within any wrapper, an Atom feed for instance. */
const many = <T extends z.ZodType>(one: T) => z.preprocess(v => (v === undefined ? [] : Array.isArray(v) ? v : [v]), z.array(one))
const text = z.coerce.string()
const Value = z.object({ valueName: text.optional(), value: text.optional() })
const Area = z.object({ areaDesc: text.optional(), polygon: many(text), circle: many(text), geocode: many(Value) })
const Info = z.object({
  event: text,
  responseType: many(text),
  certainty: text.optional(),
  severity: text.optional(),
  headline: text.optional(),
  description: text.optional(),
  onset: text.optional(),
  effective: text.optional(),
  expires: text.optional(),
  parameter: many(Value),
  area: many(Area),
})
const CapAlert = z.object({
  identifier: text,
  status: text.optional(),
  msgType: text.optional(),
  sent: text.optional(),
  references: text.optional(),
  info: many(Info),
})

// No entity is ever worked out, so that none can unfold into a flood.
const parser = new XMLParser({
  ignoreAttributes: true,
  removeNSPrefix: true,
  parseTagValue: false,
  trimValues: true,
  processEntities: false,
})

/** Every `alert` element, however deep it stands. */
const alertsIn = (node: unknown, depth = 0): unknown[] => {
  if (node === null || typeof node !== 'object' || depth > 8) return []
  return Object.entries(node).flatMap(([name, value]): unknown[] => {
    if (name === 'alert') return Array.isArray(value) ? value : [value]
    return (Array.isArray(value) ? value : [value]).flatMap(v => alertsIn(v, depth + 1))
  })
}

/** CAP writes latitude first. */
const positionOf = (pair: string): Position | undefined => {
  const [lat, lon, ...rest] = pair.split(',').map(Number)
  return rest.length === 0 && Number.isFinite(lat) && Number.isFinite(lon) ? [lon!, lat!] : undefined
}
/** Points parted by spaces, the last the same as the first. */
const ringOf = (polygon: string): Position[] =>
  polygon
    .trim()
    .split(/\s+/)
    .flatMap(p => [positionOf(p)].filter(x => x !== undefined))
/** A point and a radius, km. */
const circleOf = (circle: string): FeedAlert['circles'] => {
  const [at, km] = circle.trim().split(/\s+/)
  const position = positionOf(at ?? '')
  return position && Number(km) >= 0 ? [{ at: position, km: Number(km) }] : []
}

/**
 * "If this item is not provided, each recipient is free to set its own policy as to when the message is no longer in effect"
 * (CAP 1.2, 3.2.2, expires): half a day, ms.
 */
const NO_END_MS = 12 * 3_600_000
const endOf = (from: string): string | undefined => {
  const ms = Date.parse(from)
  return Number.isNaN(ms) ? undefined : new Date(ms + NO_END_MS).toISOString()
}

/** Undefined where the body is no CAP; alerts that do not fit are passed over. One for each `info` block, and one for a message without. */
export const fromCap = (body: string): FeedAlert[] | undefined => {
  if (XMLValidator.validate(body) !== true) return undefined
  const found = alertsIn(parser.parse(body))
  if (!found.length && !/<(?:\w+:)?(?:feed|alerts?)\b/.test(body)) return undefined
  return found.flatMap((x): FeedAlert[] => {
    const r = CapAlert.safeParse(x)
    if (!r.success) return []
    const a = r.data
    const head = {
      id: a.identifier,
      status: a.status ?? 'Actual',
      type: a.msgType ?? 'Alert',
      // "sender,identifier,sent", parted by spaces
      references: (a.references ?? '').split(/\s+/).flatMap(ref => ref.split(',')[1] ?? []),
    }
    // a cancellation need not say again what it takes back
    const bare = { ...head, event: '', text: '', certainty: '', severity: '', from: '', to: '', polygons: [], circles: [], areas: [] }
    const infos = a.info.flatMap((i): FeedAlert[] => {
      const from = i.onset ?? i.effective ?? a.sent
      const to = i.expires ?? (from && endOf(from))
      // "AllClear": the event no longer poses a threat
      if (!from || !to || i.responseType.includes('AllClear')) return []
      return [
        {
          ...head,
          event: i.event,
          text: [i.headline, i.description, ...i.parameter.map(p => `${p.valueName} ${p.value}`)].filter(Boolean).join(' '),
          certainty: i.certainty ?? '',
          severity: i.severity ?? '',
          from,
          to,
          polygons: i.area.flatMap(area => area.polygon.map(p => [ringOf(p)])).filter(([ring]) => ring!.length > 3),
          circles: i.area.flatMap(area => area.circle.flatMap(circleOf)),
          areas: i.area.flatMap(area => [area.areaDesc ?? '', ...area.geocode.map(g => g.value ?? '')]).filter(Boolean),
        },
      ]
    })
    return infos.length ? infos : [bare]
  })
}
