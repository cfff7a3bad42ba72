import type { About, Answer } from '../book/asks.ts'
import type { Event } from '../book/events.ts'
import type { Datum, Message } from '../book/questions.ts'
import { either } from './ask.ts'
import { amountOf, cropWord, joined, m, phrase, things } from './phrases.ts'

type Slots = Record<string, unknown>
type Lines = (Message | undefined)[]

const num = (s: Slots, key: string): number | undefined =>
  typeof s[key] === 'number' && Number.isFinite(s[key]) ? (s[key] as number) : undefined
const text = (s: Slots, key: string): string | undefined => (typeof s[key] === 'string' && s[key] !== '' ? (s[key] as string) : undefined)
const rows = (s: Slots, key: string): Slots[] => (Array.isArray(s[key]) ? (s[key] as Slots[]) : [])
const notesOf = (s: Slots): Message[] => (Array.isArray(s.notes) ? (s.notes as Message[]) : [])
const given = <T>(value: T | undefined, then: (value: T) => Message | undefined): Message | undefined =>
  value === undefined ? undefined : then(value)
const pileOf = (s: Slots): string => text(s, 'pile') ?? ''

const left = (s: Slots): Lines => [
  m('answer-left', {
    pile: pileOf(s),
    days: num(s, 'days') ?? 0,
    low: num(s, 'daysLow'),
    high: num(s, 'daysHigh'),
    runsOut: text(s, 'runsOut'),
  }),
  given(num(s, 'lbAsFed'), lb => m('answer-left-stock', { lb, perDay: num(s, 'lbDayAsFed') })),
]

/** What the question changed against the book: "130 head". */
const whatIf = (s: Slots): Message | undefined => {
  const w = (s.whatIf ?? {}) as Slots
  const add = num(w, 'addLb')
  const later = num(w, 'delayDays')
  const parts = [
    given(num(w, 'head'), head => m('with-head', { head })),
    given(num(w, 'lbPerDay'), lb => m('with-day', { lb })),
    Array.isArray(w.together) ? m('with-both', { piles: w.together as string[] }) : undefined,
    given(add, lb => m(lb < 0 ? 'with-less' : 'with-more', { lb: Math.abs(lb) })),
    given(later, days => m(days < 0 ? 'with-sooner' : 'with-later', { days: Math.abs(days) })),
  ]
  return parts.some(Boolean) ? joined(parts, 'comma') : undefined
}

/** What would close the gap, any one of it. */
const gap = (s: Slots): Message | undefined => {
  const g = (s.gap ?? {}) as Slots
  const ways = [
    given(num(g, 'lbDayAsFed'), lb => m('answer-gap-day', { lb })),
    given(num(g, 'head'), head => m('answer-gap-head', { head })),
    given(num(g, 'lbAsFed'), lb => m('answer-gap-add', { lb })),
  ]
  return ways.some(Boolean) ? m('answer-gap', { ways: joined(ways, 'or') }) : undefined
}

/** Which pile runs out when, in the order they are fed; one alone is told by the answer itself. */
const MOST_LEGS = 4
const legs = (s: Slots): Message | undefined => {
  const list = rows(s, 'piles').slice(0, MOST_LEGS)
  if (list.length < 2) return undefined
  return m('answer-legs', { list: list.map(l => m('answer-leg', { pile: text(l, 'pile') ?? '', until: text(l, 'runsOut') ?? '' })) })
}

const reach = (s: Slots): Lines => {
  if (text(s, 'until') === undefined)
    return [m('answer-reach-days', { with: whatIf(s), days: num(s, 'days') ?? 0, runsOut: text(s, 'runsOut') }), legs(s)]
  const spare = num(s, 'spareLbDry') ?? 0
  const days = num(s, 'spareDays')
  return [
    m(spare < 0 ? 'answer-reach-no' : 'answer-reach-yes', {
      with: whatIf(s),
      until: text(s, 'until') ?? '',
      days: days === undefined ? undefined : Math.abs(days),
      spare: Math.abs(spare),
      ...(spare < 0 && { ranOutOn: text(s, 'ranOutOn') }),
    }),
    gap(s),
    legs(s),
  ]
}

const cropOf = (s: Slots): Message | string => cropWord(text(s, 'crop'), num(s, 'cut')) ?? ''
const sharesOf = (list: Slots[]): Message =>
  joined(
    list.map(r => m('answer-share', { crop: cropOf(r), pct: (num(r, 'share') ?? 0) * 100, ft: num(r, 'atFt') || undefined })),
    'comma',
  )

/** A face told days ago has moved since; less than this is not worth two numbers, ft. */
const MOVED_FT = 1
const faceNow = (s: Slots): Message | undefined =>
  given(num(s, 'faceFt'), ft => {
    const today = num(s, 'faceTodayFt')
    const on = text(s, 'faceOn')
    return m('answer-status-face', today !== undefined && on && today - ft >= MOVED_FT ? { ft, on, today } : { ft })
  })

const status = (s: Slots): Lines => {
  const feeding = s.stage === 'feeding'
  const crops = rows(s, 'crops').map(c =>
    m('answer-status-crop', {
      crop: cropOf(c),
      amount: amountOf({ count: num(c, 'count') || undefined }),
      lb: num(c, 'lbAsFed') || undefined,
    }),
  )
  const sealed = given(text(s, 'sealedOn'), on => m('answer-status-sealed', { on }))
  const face = faceNow(s)
  const lb = num(s, 'lbAsFed')
  const days = num(s, 'days')
  const worth = given(num(s, 'value'), value => m('answer-worth', { value }))
  return [
    s.worth === true ? worth : undefined,
    m('answer-status', { pile: pileOf(s), stage: text(s, 'stage') ?? '', crops: crops.length ? joined(crops, 'semicolon') : undefined }),
    sealed || face ? joined([sealed, face], 'space') : undefined,
    days !== undefined
      ? m('answer-status-left', { days, low: num(s, 'daysLow'), high: num(s, 'daysHigh'), lb })
      : feeding && lb !== undefined
        ? m('answer-status-there', { lb })
        : undefined,
    s.worth === true ? undefined : worth,
    given(num(s, 'openDamage') || undefined, count => m('answer-open-damage', { count })),
  ]
}

const loads = (s: Slots): Lines => {
  const from = text(s, 'from')
  const to = text(s, 'to')
  const where = { crop: text(s, 'crop'), pile: text(s, 'pile'), from, to: from === undefined || to === from ? undefined : to }
  const lb = num(s, 'lbAsFed') || undefined
  const counted = [
    given(num(s, 'count') || undefined, count => m('n-load', { count })),
    given(num(s, 'buckets') || undefined, count => m('n-bucket', { count })),
  ].filter(x => x !== undefined)
  if (counted.length) return [m('answer-loads', { amount: joined(counted, 'comma'), ...where, lb })]
  return [lb === undefined ? m('answer-no-loads', where) : m('answer-loads', { amount: m('about', { lb }), ...where })]
}

/** Nobody hauls slower than this, tons/h: as advice it would be a joke. Common practice, no source. */
const SLOWEST_HAULING = 10

/** Share of a well-packed pile that is gas at the least (Holmes and Muck want no more than 0.4; Richard: 0.2 at 60 lb/ft3), from memory. */
const LEAST_AIR = 0.15

const density = (s: Slots): Lines => {
  const air = num(s, 'porosity')
  const mend = (s.mend ?? {}) as Slots
  const ways = [
    given(num(mend, 'tractorLb'), lb => m('answer-mend-tractor', { lb })),
    given(num(mend, 'tonsHour'), tons => (tons < SLOWEST_HAULING ? undefined : m('answer-mend-hauling', { tons }))),
  ]
  return [
    m('answer-density', {
      pile: pileOf(s),
      dry: num(s, 'dryLbFt3') ?? 0,
      bulk: num(s, 'bulkLbFt3'),
      // less air than this is no silage, but a formula past its range
      air: air === undefined || air < LEAST_AIR ? undefined : air * 100,
    }),
    typeof s.enough === 'boolean'
      ? m('answer-density-verdict', {
          enough: s.enough,
          target: num(s, 'targetDryLbFt3') ?? '',
          ways: ways.some(Boolean) ? joined(ways, 'or') : undefined,
        })
      : undefined,
    // A note says what the figure rests on, where it rests on little.
    notesOf(s).length ? undefined : m('answer-density-basis', { basis: text(s, 'basis') ?? 'assumed' }),
  ]
}

const face = (s: Slots): Lines => {
  const mend = (s.mend ?? {}) as Slots
  const ways = [
    given(num(mend, 'lbDayAsFed'), lb => m('answer-mend-day', { lb })),
    given(num(mend, 'widthFt'), ft => m('answer-mend-width', { ft })),
  ]
  const enough = s.enough === true
  return [
    m('answer-face', { pile: pileOf(s), inPerDay: num(s, 'inPerDay') ?? 0, min: num(s, 'minInPerDay') ?? 0, enough }),
    !enough && ways.some(Boolean) ? m('answer-face-mend', { ways: joined(ways, 'or') }) : undefined,
  ]
}

const sheetOf = (s: Slots): Message => m('answer-cover-sheet', { widthFt: num(s, 'widthFt') ?? 0, lengthFt: num(s, 'lengthFt') ?? 0 })
const weightsOf = (s: Slots): Message | undefined => {
  const weights = [
    given(num(s, 'tires') || undefined, count => m('answer-cover-tires', { count })),
    given(num(s, 'bags') || undefined, count => m('answer-cover-bags', { count })),
    given(num(s, 'edgeFt'), ft => m('answer-cover-edge', { ft })),
    given(num(s, 'gravelTons') || undefined, tons => m('answer-cover-gravel', { tons })),
  ]
  return weights.some(Boolean) ? joined(weights, 'comma') : undefined
}
const cover = (s: Slots): Lines => {
  const sheets = rows(s, 'sheets').map(x => m('by-feet', { widthFt: num(x, 'widthFt') ?? 0, lengthFt: num(x, 'lengthFt') ?? 0 }))
  return [
    m('answer-cover', { pile: pileOf(s), sheet: sheetOf(s), weights: weightsOf(s) }),
    typeof s.fromStock === 'boolean'
      ? m('answer-cover-stock', {
          fromStock: s.fromStock,
          sheets: sheets.length ? joined(sheets, 'and') : undefined,
          tires: num(s, 'tiresShort'),
        })
      : undefined,
    given(num(s, 'costPerTon'), perTon => m('answer-cover-cost', { perTon, cost: num(s, 'cost') ?? 0 })),
  ]
}

const plan = (s: Slots): Lines => {
  const over = s.cover as Slots | undefined
  return [
    m('answer-plan', { width: num(s, 'widthFt') ?? 0, height: num(s, 'heightFt') ?? 0, length: num(s, 'lengthFt') ?? 0 }),
    given(num(s, 'lbDry'), lb => m('answer-plan-holds', { lb, inPerDay: num(s, 'inPerDay') })),
    over && m('answer-plan-cover', { sheet: sheetOf(over), weights: weightsOf({ tires: over.tires }) }),
  ]
}

const ready = (s: Slots): Lines => {
  const openedOn = text(s, 'openedOn')
  if (openedOn) return [m('answer-ready-open', { pile: pileOf(s), openedOn })]
  return [
    m('answer-ready', { pile: pileOf(s), ready: s.ready === true, sealedOn: text(s, 'sealedOn') ?? '', readyOn: text(s, 'readyOn') ?? '' }),
  ]
}

const mix = (s: Slots): Lines => [
  m('answer-mix', { pile: pileOf(s), pct: num(s, 'dmPct'), shares: sharesOf(rows(s, 'shares')) }),
  given(num(s, 'faceFt'), ft => (rows(s, 'face').length ? m('answer-mix-face', { ft, shares: sharesOf(rows(s, 'face')) }) : undefined)),
]

const checks = (s: Slots): Lines => [
  m('answer-checks', { pile: pileOf(s), last: text(s, 'last'), next: text(s, 'next') }),
  given(num(s, 'openDamage') || undefined, count => m('answer-open-damage', { count })),
]

const loss = (s: Slots): Lines => [
  m('answer-loss', { pile: pileOf(s), pct: num(s, 'pct') ?? 0, low: num(s, 'pctLow'), high: num(s, 'pctHigh'), lb: num(s, 'lbDry') }),
  given(num(s, 'cost'), cost => m('answer-loss-cost', { cost })),
]

const supplies = (s: Slots): Lines => {
  const items = rows(s, 'items').map(i => things(text(i, 'item') ?? '', i))
  return [items.length ? m('answer-supplies', { items: joined(items, 'comma') }) : m('answer-no-supplies')]
}

/** The latest of more than fit on a phone's screen. */
const MOST_EVENTS = 8
const events = (s: Slots): Lines => {
  const all = (s.events as Event[] | undefined) ?? []
  if (!all.length) return [m('answer-no-events')]
  const shown = all.slice(-MOST_EVENTS).map(e => m('answer-event', { on: e.on, who: e.by, what: phrase(e) }))
  return all.length > shown.length ? [...shown, m('answer-more', { count: all.length - shown.length })] : shown
}

const help = (s: Slots): Lines => {
  const examples =
    Array.isArray(s.examples) && s.examples.length ? (s.examples as Datum[]) : [m('hello-one'), m('hello-two'), m('hello-three')]
  return [m('answer-help', { examples: either(examples.map(words => m('quoted', { text: words }))) })]
}

const why = (s: Slots): Lines => {
  const how = Array.isArray(s.how) ? (s.how as Message[]) : []
  return how.length ? how : [m('answer-no-how')]
}

const TELL: Record<About, (s: Slots) => Lines> = {
  left,
  reach,
  status,
  loads,
  density,
  face,
  cover,
  plan,
  ready,
  mix,
  checks,
  loss,
  supplies,
  who: events,
  history: events,
  help,
  why,
}

/** The lines of an answer, the figure first, then the one thing to beware of. At most four, but for lists of events and for "why?". */
export const tell = (answer: Answer): Message[] => {
  const said = TELL[answer.about](answer).filter(x => x !== undefined)
  return said.length < MOST_LINES ? [...said, ...notesOf(answer).slice(0, 1)] : said
}
const MOST_LINES = 4
