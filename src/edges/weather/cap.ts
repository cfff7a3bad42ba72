import { XMLParser, XMLValidator } from 'fast-xml-parser'
import { z } from 'zod'
import type { FeedAlert } from './alert.ts'

/** Alerts as CAP 1.2 (OASIS Common Alerting Protocol): one `alert`, or several within any wrapper, an Atom feed for instance. */
const many = <T extends z.ZodType>(one: T) => z.preprocess(v => (v === undefined ? [] : Array.isArray(v) ? v : [v]), z.array(one))
const text = z.coerce.string()
const Value = z.object({ valueName: text.optional(), value: text.optional() })
const Area = z.object({ areaDesc: text.optional(), polygon: many(text), geocode: many(Value) })
const Info = z.object({
  event: text,
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

/** CAP writes latitude first, points parted by spaces. */
const ringOf = (polygon: string): [number, number][] =>
  polygon
    .trim()
    .split(/\s+/)
    .map(p => p.split(',').map(Number))
    .filter(p => p.length === 2 && p.every(Number.isFinite))
    .map(([lat, lon]): [number, number] => [lon!, lat!])

/** Undefined where the body is no CAP; alerts that do not fit are passed over. One for each `info` block. */
export const fromCap = (body: string): FeedAlert[] | undefined => {
  if (XMLValidator.validate(body) !== true) return undefined
  const found = alertsIn(parser.parse(body))
  if (!found.length && !/<(?:\w+:)?(?:feed|alerts?)\b/.test(body)) return undefined
  return found.flatMap((x): FeedAlert[] => {
    const r = CapAlert.safeParse(x)
    if (!r.success) return []
    const a = r.data
    return a.info.flatMap((i): FeedAlert[] => {
      const from = i.onset ?? i.effective ?? a.sent
      if (!from || !i.expires) return []
      return [
        {
          id: a.identifier,
          status: a.status ?? 'Actual',
          type: a.msgType ?? 'Alert',
          // "sender,identifier,sent", parted by spaces
          references: (a.references ?? '').split(/\s+/).flatMap(ref => ref.split(',')[1] ?? []),
          event: i.event,
          text: [i.headline, i.description, ...i.parameter.map(p => `${p.valueName} ${p.value}`)].filter(Boolean).join(' '),
          from,
          to: i.expires,
          rings: i.area.flatMap(area => area.polygon.map(ringOf)).filter(ring => ring.length > 2),
          areas: i.area.flatMap(area => [area.areaDesc ?? '', ...area.geocode.map(g => g.value ?? '')]).filter(Boolean),
        },
      ]
    })
  })
}
