import { readdirSync } from 'node:fs'
import { FluentParser } from '@fluent/syntax'
import { describe, expect, it } from 'vitest'
import type { Datum } from '../../src/book/questions.ts'
import { loadPrompts, promptsFolder } from '../../src/edges/prompts.ts'
import type { Lang } from '../../src/ports.ts'
import { makeSayer } from '../../src/saying/say.ts'

// The grammar checked here is that of Project Fluent's own reference parser (@fluent/syntax), which keeps what it cannot
// read as Junk; the runtime drops such a message without a word.

const LANGS: Lang[] = ['en', 'es']
const ftl = loadPrompts()
const say = makeSayer(ftl, { strict: true })

interface Code {
  own: Set<string>
  refs: Set<string>
  /** Variables that HAS asks about. */
  optional: Set<string>
  /** Plain selectors: the variable and one of its keys. */
  keys: [string, string][]
}
const variables = (node: unknown, into: Code): void => {
  if (!node || typeof node !== 'object') return
  const n = node as { type?: string; id?: { name: string } } & Record<string, unknown>
  if (n.type === 'VariableReference') into.own.add(n.id!.name)
  if (n.type === 'MessageReference') into.refs.add(n.id!.name)
  if (n.type === 'FunctionReference' && n.id!.name === 'HAS') {
    for (const a of (n.arguments as { positional: { id: { name: string } }[] }).positional) into.optional.add(a.id.name)
  }
  const selector = n.selector as { type: string; id: { name: string } } | undefined
  if (n.type === 'SelectExpression' && selector?.type === 'VariableReference') {
    for (const v of n.variants as { key: { name?: string; value?: string } }[])
      into.keys.push([selector.id.name, v.key.name ?? v.key.value ?? ''])
  }
  for (const child of Object.values(n)) variables(child, into)
}
const codesOf = (lang: Lang): Map<string, Code> => {
  const codes = new Map<string, Code>()
  for (const text of ftl[lang]) {
    for (const entry of new FluentParser({ withSpans: false }).parse(text).body) {
      if (entry.type === 'Junk') throw new Error(`${lang}: ${(entry as unknown as { content: string }).content.slice(0, 200)}`)
      if (entry.type !== 'Message') continue
      const message = entry as unknown as { id: { name: string }; value: unknown }
      if (codes.has(message.id.name)) throw new Error(`${lang}: ${message.id.name} stands twice`)
      const code: Code = { own: new Set(), refs: new Set(), optional: new Set(), keys: [] }
      variables(message.value, code)
      codes.set(message.id.name, code)
    }
  }
  return codes
}
const codes: Record<Lang, Map<string, Code>> = { en: codesOf('en'), es: codesOf('es') }
/** A message and those that it refers to. */
const family = (lang: Lang, code: string, seen = new Set<string>()): Code[] => {
  const c = codes[lang].get(code)
  if (!c || seen.has(code)) return []
  seen.add(code)
  return [c, ...[...c.refs].flatMap(r => family(lang, r, seen))]
}
const allVariables = (lang: Lang, code: string): Set<string> => new Set(family(lang, code).flatMap(c => [...c.own]))
const optionalOf = (lang: Lang, code: string): Set<string> => new Set(family(lang, code).flatMap(c => [...c.optional]))
/** Words of Fluent itself, for numbers. */
const PLURALS = ['zero', 'one', 'two', 'few', 'many', 'other']

/** Verbs agree with their number in Spanish only. */
const GRAMMAR_ONLY = new Set(['single'])

/** Data for a variable by its name; a variable that stands here under no name has no test. */
const SAMPLES: Record<string, Datum> = {
  list: ['corn', 'hay'],
  word: 'the bunk',
  means: 'north',
  about: 'order plastic',
  acres: 80,
  air: 38,
  amount: { code: 'n-load', data: { count: 7 } },
  animal: 'raccoon',
  awayFt: 36,
  bags: 60,
  basis: 'dry',
  box: 'red wagon',
  bulk: 44.2,
  by: '2026-09-20',
  cause: 'animal',
  count: 7,
  crop: 'corn silage',
  crops: 'corn silage',
  cut: 2,
  date: 'Sep 14',
  day: '2026-09-14',
  days: 34.2,
  daysOver: 12,
  degF: 24,
  depthFt: 2,
  depthIn: 9.4,
  details: { code: 'pile-walls', data: { ft: 8 } },
  dry: 15.2,
  edgeTires: 20,
  enough: 'no',
  every: 'week',
  examples: 'x',
  field: 'knoll',
  finding: 'good',
  folder: '/srv/book',
  found: 3,
  from: '2026-09-01',
  fromFt: 30.2,
  fromStock: 'no',
  ft: 6,
  group: 'milking',
  half: 'am',
  have: 120,
  head: 118,
  high: 41,
  hour: 6,
  hours: 3,
  inPerDay: 8.25,
  inches: 1.75,
  item: 'tires',
  items: 'x',
  kind: 'tires',
  known: 2,
  last: '2026-09-07',
  late: 2,
  layerIn: 6,
  lb: 12_000,
  leftFt: 60,
  length: 120,
  lengthFt: 130,
  logged: 9,
  low: 28,
  mesh: 'yes',
  min: 6,
  minInPerDay: 6,
  minute: '30',
  minutes: 47,
  month: 9,
  most: 120,
  mph: 60,
  next: '2026-09-21',
  n: 3,
  name: 'north',
  names: ['norte', 'la grande'],
  near: 'north',
  need: 240,
  needLb: 64_000,
  now: 40,
  okTonsHour: 80,
  on: '2026-09-14',
  one: 'a',
  two: 'b',
  three: 'c',
  pct: 34,
  people: 5,
  perDay: 12_010,
  perTon: 2.24,
  price: 55,
  of: 'corn silage',
  pile: 'north',
  piles: ['north', 'hill'],
  ranOutOn: '2026-05-01',
  ready: 'no',
  readyOn: '2026-10-04',
  runsOut: '2026-10-18',
  said: 12,
  sealedOn: '2026-09-13',
  shares: 'x',
  sheet: 'x',
  single: 'yes',
  slot: 'count',
  spare: 80_000,
  stage: 'feeding',
  text: 'the blade is out',
  things: { code: 'things', data: { item: 'tires', kind: 'tires', count: 240 } },
  time: '06:30',
  tires: 240,
  to: '2026-09-14',
  toFt: 44,
  toPile: 'north',
  tons: 5,
  tonsHour: 110,
  total: { code: 'total-loads', data: { count: 42 } },
  type: 'load',
  unit: 'load',
  until: '2027-05-28',
  value: 700,
  was: 46,
  weekday: 'mon',
  weights: 'x',
  what: { code: 'did-empty', data: { pile: 'lane' } },
  where: 'by the wall',
  who: 'bo',
  why: 'hail',
  width: 40,
  widthFt: 50,
  height: 10,
  zone: 'Mars/Olympus',
  assumed: 'height',
  areaFt2: 6_240,
  tractors: 2,
  tractorLb: 31_000,
  dmPct: 34,
  target: 0.4,
  goal: 10,
  season: 'cool',
  lbDay: 9_000,
  loss: 15,
  density: 15,
  run: 3,
  edgeFt: 332.4,
  clearOn: '2026-10-05',
  sheets: '46 by 120 ft',
  cost: 4_210,
  after: 3.2,
  with: { code: 'with-head', data: { head: 130 } },
  ways: 'x',
  openedOn: '2026-09-20',
  readings: 4,
  layers: 3,
  loads: 42,
  boxes: 'red wagon, green wagon',
  ft3: 31_420,
  lbAsFed: 408_000,
  lbDry: 140_000,
  atFt: 132,
  heightFt: 22,
  fed: 900_000,
  in: 800_000,
  missing: 'ration',
  farm: 'home',
  wanted: 4,
  link: 'https://example.org/x',
  code: 'ABCD2345',
  today: 44.2,
  copied: 'yes',
  entries: 12,
  west: 'yes',
  south: 'no',
  stackTires: 6,
  filling: 'no',
  end: 'no',
  step: 1,
  you: 'no',
  lon: 89.4,
  role: 'crew',
  lat: 43.1,
  lang: 'es',
  always: 'no',
  when: 'night',
  phone: '+16085550142',
  host: '127.0.0.1',
  port: '8475',
  path: '/sms',
  seconds: 6,
  range: { code: 'answer-range', data: { low: 4, high: 21 } },
  feed: 168_000,
  over: 2.5,
  want: 32_000,
  packing: 16.2,
  waste: 15,
  stock: 'In stock: 50 by 130 ft.',
  ratio: { code: 'answer-mix-ratio', data: { times: 2, more: 'haylage', less: 'corn silage' } },
  times: 2,
  more: 'haylage',
  less: 'corn silage',
  formulas: { code: 'formula-arc', data: {} },
  share: 0.4,
  spaced: 535,
  least: 4,
  lbLow: 90_000,
  lbHigh: 110_000,
  wasFt: 30,
}

/** A variable that means another thing in one message. */
const OWN: Record<string, Record<string, Datum>> = {
  'how-in': { from: 'scale, crop box' },
  'how-weighed': { from: 'usual' },
  'how-use': { from: 'pile', said: 12_000 },
  'how-face-rate': { from: 'readings' },
  'note-no-ration': { from: 'logs' },
  'how-narrow': { half: 6.4 },
  'answer-density-rule': { have: 28_000 },
  'answer-density-cost': { target: 15 },
  'how-narrow-face': { half: 1.2 },
  'how-narrow-density': { half: 2.3 },
  'how-narrow-none': { half: 13 },
  'how-loss-cause': { cause: 'seepage' },
  'note-outside': { what: ['dry-matter', 'ash'] },
  'plan-impossible': { what: ['density'] },
  'answer-density-verdict': { target: 15 },
  'note-gas': { stage: 'danger' },
  'how-cover': { widthFt: 40, heightFt: 9 },
  'entry-order': { n: 7 },
  'evening-driver': { by: 'bo' },
  reminder: { by: 'bo' },
  'supply-head': { now: 'no' },
  lapsed: { what: 'the pile by the silo' },
  'lapsed-many': { what: 'the pile by the silo' },
  'cover-sun': { from: '10:20', to: '15:40' },
  'bad-json': { why: 'line 1' },
}

const check = (name: string, text: string): void => {
  expect(text, name).not.toMatch(/[{}]|undefined|NaN|null/)
  expect(text.length, name).toBeLessThanOrEqual(300)
  expect(text, name).not.toMatch(/[!¡]|\p{Extended_Pictographic}/u)
  // A part of a line may be nothing, or begin with its own space.
  if (name.startsWith('watch-')) return
  expect(text, name).not.toBe('')
  expect(text, name).not.toMatch(/ {2}|^ | $| [,.;:]/)
}

describe('prompts', () => {
  it('are there for both languages, file by file', () => {
    const names = readdirSync(promptsFolder()).filter(n => n.endsWith('.ftl'))
    expect(names.length).toBeGreaterThan(0)
    for (const n of names) expect(names).toContain(n.includes('.en.') ? n.replace('.en.', '.es.') : n.replace('.es.', '.en.'))
  })

  it('have the same codes in English and Spanish', () => {
    expect([...codes.es.keys()].sort()).toEqual([...codes.en.keys()].sort())
  })

  it('use the same variables in both', () => {
    for (const code of codes.en.keys()) {
      const [en, es] = LANGS.map(l => [...allVariables(l, code)].filter(v => !GRAMMAR_ONLY.has(v)).sort())
      expect(es, code).toEqual(en)
    }
  })

  for (const lang of LANGS) {
    it(`say every code in ${lang}: whole, short and quiet`, () => {
      for (const code of codes[lang].keys()) {
        const names = [...allVariables(lang, code)]
        for (const name of names) expect(SAMPLES, `${code} asks for ${name}`).toHaveProperty(name)
        const data = { ...Object.fromEntries(names.map(n => [n, SAMPLES[n]!])), ...OWN[code] }
        check(code, say({ code, data }, lang))
        const optional = optionalOf(lang, code)
        check(code, say({ code, data: Object.fromEntries(Object.entries(data).filter(([n]) => !optional.has(n))) }, lang))
        for (const [name, key] of family(lang, code).flatMap(c => c.keys)) {
          if (PLURALS.includes(key)) continue
          check(`${code} with ${name} ${key}`, say({ code, data: { ...data, [name]: /^\d+$/.test(key) ? Number(key) : key } }, lang))
        }
      }
    })
  }
})
