import { z } from 'zod'
import { isDay } from '../units/calendar.ts'

/** The version written beside every stored event. A change of meaning raises it and adds an upgrade in `upgrade.ts`. */
export const EVENT_VERSION = 1

export const LISTED_CROPS = [
  'corn silage',
  'haylage',
  'grass silage',
  'small-grain silage',
  'sorghum silage',
  'earlage',
  'high-moisture corn',
] as const
export const MATERIALS = ['plastic', 'second plastic', 'barrier film', 'mesh', 'tarp', 'tires', 'gravel bags', 'gravel', 'dirt'] as const
export const CAUSES = ['hail', 'wind', 'animal', 'machine', 'ice', 'unknown'] as const
export const WHATS = ['hole', 'tear', 'loose edge', 'water', 'other'] as const
export const WEATHERS = ['hail', 'wind', 'rain', 'snow', 'freeze', 'thaw', 'heat'] as const

const day = z.string().refine(isDay, 'not a calendar day').describe('local date, YYYY-MM-DD')
const name = z.string().min(1).max(60)
const pile = name.describe("the pile's own name, lower case, without the word pile")
const crop = name.describe('a listed crop, or another feed as said')
const count = z.number().positive().finite().describe('how many')
const lb = z.number().positive().finite().describe('pounds')
const ft = z.number().nonnegative().finite().describe('feet')
const pct = z.number().gt(0).lt(100).describe('percent, 0 to 100')
const material = z.enum(MATERIALS)
const size = { widthFt: ft.optional(), lengthFt: ft.optional() }

/** Slots that every event has. */
const common = {
  on: day,
  by: name.describe('who said it').optional(),
  said: z.string().max(4096).describe('the words').optional(),
}

const some = <T extends z.ZodObject>(schema: T, keys: string[]) =>
  schema.refine(v => keys.some(k => (v as Record<string, unknown>)[k] !== undefined), `one of ${keys.join(', ')} is needed`)

const event = <T extends string, S extends z.ZodRawShape>(type: T, slots: S) =>
  z.strictObject({ type: z.literal(type), ...slots, ...common })

const haul = z.enum(['load', 'bucket']).describe('left out where it is load')
const ration = z.enum(['load', 'bucket', 'batch'])

/** One schema for each event type, by name. Units are in the slot names. */
export const EVENTS = {
  pile: event('pile', { name: pile, alsoCalled: z.array(name).max(8).optional(), ...size, heightFt: ft.optional(), wallFt: ft.optional() }),
  box: event('box', { name, lb, crop: crop.optional() }),
  load: some(
    event('load', {
      pile,
      crop,
      count: count.optional(),
      lb: lb.optional(),
      unit: haul.optional(),
      cut: z.int().positive().max(12).optional(),
      dmPct: pct.optional(),
      box: name.optional(),
      field: name.optional(),
    }),
    ['count', 'lb'],
  ),
  pack: event('pack', {
    pile,
    tractors: count.optional(),
    tractorLb: lb.optional(),
    hours: z.number().positive().finite().optional(),
    layerIn: z.number().positive().finite().optional(),
  }),
  size: event('size', { pile, ...size, heightFt: ft.optional(), topWidthFt: ft.optional() }),
  cover: event('cover', {
    pile,
    material,
    change: z.enum(['on', 'off', 'back']),
    ...size,
    count: count.optional(),
    ft: ft.describe('how far rolled back').optional(),
  }),
  damage: event('damage', {
    pile,
    cause: z.enum(CAUSES),
    animal: name.optional(),
    what: z.enum(WHATS).optional(),
    count: count.optional(),
    where: name.optional(),
  }),
  patch: event('patch', { pile, count: count.optional(), where: name.optional() }),
  check: event('check', { pile: pile.describe('a name or all'), finding: z.enum(['good', 'trouble']) }),
  weather: event('weather', {
    kind: z.enum(WEATHERS),
    inches: z.number().positive().finite().optional(),
    mph: z.number().positive().finite().optional(),
    degF: z.number().finite().optional(),
  }),
  open: event('open', { pile, why: z.enum(['feed', 'add']) }),
  feed: some(event('feed', { pile, lb: lb.optional(), count: count.optional(), ft: ft.optional(), unit: ration.optional() }), [
    'lb',
    'count',
    'ft',
  ]),
  face: some(event('face', { pile, atFt: ft.describe('from the end first opened').optional(), leftFt: ft.optional() }), ['atFt', 'leftFt']),
  spoil: some(event('spoil', { pile, lb: lb.optional(), count: count.optional(), ft: ft.optional(), unit: ration.optional() }), [
    'lb',
    'count',
    'ft',
  ]),
  shift: event('shift', { pile, toPile: pile, ft: ft.optional(), lb: lb.optional(), count: count.optional(), unit: ration.optional() }),
  empty: event('empty', { pile }),
  test: some(event('test', { pile: pile.optional(), crop: crop.optional(), dmPct: pct }), ['pile', 'crop']),
  ration: some(
    event('ration', {
      pile: pile.optional(),
      crop: crop.optional(),
      group: name.optional(),
      head: count.optional(),
      lbPerHead: lb.optional(),
      lbPerDay: lb.optional(),
      basis: z.enum(['as fed', 'dry']).optional(),
    }),
    ['head', 'lbPerHead', 'lbPerDay'],
  ),
  supply: event('supply', { item: name, change: z.enum(['add', 'use', 'have']), count: z.number().nonnegative().finite(), ...size }),
  harvest: event('harvest', { crop, cut: z.int().positive().max(12).optional(), acres: z.number().positive().finite().optional() }),
  remind: event('remind', {
    about: z.string().min(1).max(500),
    time: z
      .string()
      .regex(/^\d{2}:\d{2}$/)
      .optional(),
    who: name.optional(),
    every: z.enum(['day', 'week', 'month']).optional(),
    step: z.int().min(2).max(52).describe('every so many of them').optional(),
  }),
  note: event('note', { text: z.string().min(1).max(4096) }),
} as const

export type EventType = keyof typeof EVENTS
export const EVENT_TYPES = Object.keys(EVENTS) as EventType[]
export type EventOf<T extends EventType> = z.infer<(typeof EVENTS)[T]>
export type Event = { [T in EventType]: EventOf<T> }[EventType]

export type Checked = { ok: true; event: Event } | { ok: false; code: 'event-invalid'; data: { type: string; why: string } }

/** Checks one event against its schema. Unknown slots are refused: a slip in a slot's name must not vanish silently. */
export const checkEvent = (value: unknown): Checked => {
  const type = (value as { type?: string } | null)?.type ?? ''
  const schema = Object.hasOwn(EVENTS, type) ? (EVENTS as Record<string, z.ZodType>)[type] : undefined
  if (!schema) return { ok: false, code: 'event-invalid', data: { type, why: 'no such event type' } }
  const r = schema.safeParse(value)
  if (r.success) return { ok: true, event: r.data as Event }
  const issue = r.error.issues[0]
  return { ok: false, code: 'event-invalid', data: { type, why: `${issue?.path.join('.') || 'event'}: ${issue?.message ?? 'invalid'}` } }
}
