import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { type About, ASKS, type Ask } from '../book/asks.ts'
import { EVENT_TYPES, EVENT_VERSION, EVENTS, LISTED_CROPS } from '../book/events.ts'
import { promptsFolder } from './prompts.ts'

/** Where the page stands, from the sources as from the built files. */
export const referenceFile = (): string => join(promptsFolder(), '..', 'shared', 'REFERENCE.md')

/** The part of JSON Schema that the event schemas come out as. */
interface Slot {
  type?: string
  const?: string
  enum?: string[]
  items?: Slot
  description?: string
  pattern?: string
  minimum?: number
  maximum?: number
  exclusiveMinimum?: number
  exclusiveMaximum?: number
  maxLength?: number
  maxItems?: number
}
interface Shape {
  properties: Record<string, Slot>
  required: string[]
}

const shapeOf = (schema: z.ZodType): Shape => z.toJSONSchema(schema, { io: 'input' }) as unknown as Shape

/** What a slot's name says of its unit: the names end in it. */
const UNITS: [RegExp, string][] = [
  [/^lb|Lb$/, 'lb'],
  [/^ft$|Ft$/, 'ft'],
  [/In$|^inches$/, 'in'],
  [/Pct$/, '%'],
  [/^mph$/, 'mph'],
  [/^degF$/, '°F'],
  [/^hours$/, 'h'],
  [/^acres$/, 'acres'],
]
const unitOf = (name: string): string => UNITS.find(([like]) => like.test(name))?.[1] ?? ''

/** JSON Schema writes the widest whole number that a float holds where no bound was set. */
const bounded = (n: number | undefined): n is number => n !== undefined && Math.abs(n) < Number.MAX_SAFE_INTEGER

const boundsOf = (s: Slot): string[] => [
  ...(bounded(s.exclusiveMinimum) ? [`above ${s.exclusiveMinimum}`] : []),
  ...(bounded(s.minimum) ? [`${s.minimum} or more`] : []),
  ...(bounded(s.exclusiveMaximum) ? [`below ${s.exclusiveMaximum}`] : []),
  ...(bounded(s.maximum) ? [`at most ${s.maximum}`] : []),
]

const kindOf = (s: Slot): string => {
  if (s.enum) return s.enum.map(v => `\`${v}\``).join(', ')
  if (s.type === 'array') return `list of ${kindOf(s.items ?? {})}${s.maxItems ? `, at most ${s.maxItems}` : ''}`
  if (s.type === 'string')
    return s.pattern === '^\\d{2}:\\d{2}$' ? 'time HH:MM' : `text${s.maxLength ? ` up to ${s.maxLength} characters` : ''}`
  return [s.type === 'integer' ? 'whole number' : 'number', ...boundsOf(s)].join(', ')
}

const row = (cells: string[]): string => `| ${cells.map(c => c.replaceAll('|', '\\|')).join(' | ')} |`
const table = (head: string[], rows: string[][]): string => [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n')

const slotRows = (shape: Shape, names: string[]): string[][] =>
  names.map(name => {
    const s = shape.properties[name]!
    return [`\`${name}\``, shape.required.includes(name) ? 'needed' : 'optional', unitOf(name), kindOf(s), s.description ?? '']
  })

/** What a schema asks for beyond its single slots, in the words of its own refusals. */
const demandsOf = (schema: z.ZodType): string[] =>
  (schema.def.checks ?? []).flatMap(check => {
    const { def } = (check as { _zod: { def: { check: string; error?: (issue: object) => unknown } } })._zod
    const said = def.check === 'custom' ? def.error?.({}) : undefined
    return typeof said === 'string' ? [said] : []
  })

const HEAD = ['slot', '', 'unit', 'values', '']
/** Slots that every event has; they are told once. */
const COMMON = ['on', 'by', 'said']

const eventText = (type: (typeof EVENT_TYPES)[number]): string => {
  const shape = shapeOf(EVENTS[type])
  const own = Object.keys(shape.properties).filter(n => n !== 'type' && !COMMON.includes(n))
  const demands = demandsOf(EVENTS[type]).map(d =>
    d.replace(/^one of (.*) is needed$/, (_, list: string) => `At least one of ${list.replace(/\w+/g, '`$&`')} is needed.`),
  )
  return [`### ${type}`, `Version ${EVENT_VERSION}.`, table(HEAD, slotRows(shape, own)), ...demands].join('\n\n')
}

interface AskPage {
  /** Slots of the question that this kind heeds. */
  takes: (keyof Ask)[]
  /** Slots of its answer; those that the book does not give are missing. */
  gives: string[]
}

/** The kinds of question. The asks are types, not schemas, so what belongs to which kind stands here; a new kind without a line does not compile. */
const ASK_PAGES: Record<About, AskPage> = {
  left: { takes: ['pile'], gives: ['pile', 'days', 'daysLow', 'daysHigh', 'runsOut', 'lbDry', 'lbAsFed', 'lbDayAsFed', 'lbLow', 'lbHigh'] },
  reach: {
    takes: [
      'pile',
      'until',
      'crop',
      'head',
      'headMore',
      'group',
      'lbPerDay',
      'lbPerHead',
      'perHeadMore',
      'perDayMore',
      'pctMore',
      'delayDays',
      'addLb',
      'together',
    ],
    gives: [
      'until',
      'days',
      'spareLbDry',
      'ranOutOn',
      'runsOut',
      'spareDays',
      'spareDaysLow',
      'spareDaysHigh',
      'spareLbAsFed',
      'spareLow',
      'spareHigh',
      'lbDayAsFed',
      'lbDry',
      'crop',
      'cut',
      'piles',
      'gap',
      'whatIf',
    ],
  },
  status: {
    takes: ['pile', 'worth'],
    gives: [
      'pile',
      'stage',
      'crops',
      'openDamage',
      'sealedOn',
      'faceFt',
      'faceOn',
      'faceTodayFt',
      'days',
      'daysLow',
      'daysHigh',
      'lbAsFed',
      'value',
      'worthLb',
    ],
  },
  loads: { takes: ['pile', 'crop', 'from', 'to', 'by'], gives: ['pile', 'crop', 'from', 'to', 'count', 'lbAsFed', 'buckets'] },
  density: {
    takes: ['pile'],
    gives: [
      'pile',
      'dryLbFt3',
      'dryLow',
      'dryHigh',
      'bulkLbFt3',
      'porosity',
      'basis',
      'dmPct',
      'enough',
      'targetDryLbFt3',
      'lossPct',
      'overPct',
      'overLbDry',
      'cost',
      'ruleOf800',
      'packingDryLbFt3',
      'mend',
    ],
  },
  face: {
    takes: ['pile'],
    gives: ['pile', 'inPerDay', 'minInPerDay', 'enough', 'goalInPerDay', 'season', 'from', 'days', 'faceFt', 'mend'],
  },
  cover: {
    takes: ['pile'],
    gives: [
      'pile',
      'widthFt',
      'lengthFt',
      'tires',
      'bags',
      'edgeFt',
      'gravelTons',
      'fromStock',
      'sheets',
      'waste',
      'needWidthFt',
      'needLengthFt',
      'areaFt2',
      'spacedTires',
      'tiresShort',
      'second',
      'cost',
      'costPerTon',
    ],
  },
  plan: {
    takes: ['lb', 'crop', 'days', 'head', 'group', 'lbPerHead', 'lbPerDay'],
    gives: [
      'widthFt',
      'heightFt',
      'lengthFt',
      'lbDry',
      'inPerDay',
      'crop',
      'topWidthFt',
      'sideDeg',
      'ratePlanned',
      'lbAsFed',
      'lbDayAsFed',
      'days',
      'advice',
      'piles',
      'cover',
    ],
  },
  ready: { takes: ['pile'], gives: ['pile', 'sealedOn', 'readyOn', 'ready', 'betterOn', 'daysToGo', 'openedOn', 'gasClearOn'] },
  mix: { takes: ['pile'], gives: ['pile', 'shares', 'dmPct', 'faceFt', 'ratio', 'face', 'faceRatio', 'faceDmPct', 'turn'] },
  checks: { takes: ['pile'], gives: ['pile', 'last', 'next', 'late', 'openDamage'] },
  loss: { takes: ['pile'], gives: ['pile', 'pct', 'lbDry', 'pctLow', 'pctHigh', 'causes', 'thrownLb', 'record', 'cost'] },
  supplies: { takes: ['item'], gives: ['items'] },
  who: { takes: ['pile', 'type', 'crop', 'item', 'by', 'from', 'to'], gives: ['pile', 'events'] },
  history: { takes: ['pile', 'type', 'crop', 'item', 'by', 'from', 'to'], gives: ['pile', 'events'] },
  picture: { takes: ['pile', 'type', 'from', 'to'], gives: ['pile', 'events', 'pictures'] },
  help: { takes: [], gives: [] },
  why: { takes: [], gives: [] },
}

/** The slots that an answer of a kind may carry, beside `about`, `how` (how it was worked out) and `notes` (what to beware of). */
export const answerSlots = (about: About): string[] => ASK_PAGES[about].gives

const code = (names: string[]): string => names.map(n => `\`${n}\``).join(', ')

/** The whole page, as Markdown. */
export const referenceText = (): string => {
  const any = shapeOf(EVENTS.note)
  return `${[
    '# Reference',
    'Written by `npm run reference` from the schemas in `src/book`; do not edit it by hand.',
    '## Events',
    "An event is what the book keeps of a message. It has a `type`, the slots of its type and these. Slots that are not listed are refused. Units are in the slots' names: pounds (`lb`), feet (`Ft`), inches (`In`), percent from 0 to 100 (`Pct`).",
    table(HEAD, slotRows(any, COMMON)),
    `\`crop\` is one of ${code([...LISTED_CROPS])}, or another feed's name as it was said.`,
    ...EVENT_TYPES.map(eventText),
    '## Asks',
    'A question and its answer share `about`. Every answer may also carry `how`, the steps by which it was worked out, and `notes`, what to beware of: both lists of codes with data. Figures that the book does not give are left out; where nothing can be answered a refusal says what is missing.',
    table(
      ['about', 'the question may name', 'the answer carries'],
      ASKS.map(a => [`\`${a}\``, code(ASK_PAGES[a].takes), code(ASK_PAGES[a].gives)]),
    ),
  ].join('\n\n')}\n`
}

/** Writes the page over what stands there. */
export const writeReference = (): void => writeFileSync(referenceFile(), referenceText())
