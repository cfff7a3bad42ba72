import type { About, Answer } from '../book/asks.ts'
import type { Event } from '../book/events.ts'
import type { Datum, Message } from '../book/questions.ts'
import { either } from './ask.ts'
import { amountOf, joined, m, phrase, things } from './phrases.ts'

type Slots = Record<string, unknown>
type Lines = (Message | undefined)[]

const num = (s: Slots, key: string): number | undefined =>
  typeof s[key] === 'number' && Number.isFinite(s[key]) ? (s[key] as number) : undefined
const text = (s: Slots, key: string): string | undefined => (typeof s[key] === 'string' && s[key] !== '' ? (s[key] as string) : undefined)
const rows = (s: Slots, key: string): Slots[] => (Array.isArray(s[key]) ? (s[key] as Slots[]) : [])
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

const reach = (s: Slots): Lines => {
  const spare = num(s, 'spareLbDry') ?? 0
  return [
    m(spare < 0 ? 'answer-reach-no' : 'answer-reach-yes', {
      until: text(s, 'until') ?? '',
      spare: Math.abs(spare),
      ranOutOn: spare < 0 ? text(s, 'ranOutOn') : undefined,
    }),
  ]
}

const status = (s: Slots): Lines => {
  const crops = rows(s, 'crops').map(c =>
    m('answer-status-crop', { crop: text(c, 'crop') ?? '', amount: amountOf({ count: c.count }), lb: num(c, 'lbAsFed') }),
  )
  const sealed = given(text(s, 'sealedOn'), on => m('answer-status-sealed', { on }))
  const face = given(num(s, 'faceFt'), ft => m('answer-status-face', { ft }))
  return [
    m('answer-status', { pile: pileOf(s), stage: text(s, 'stage') ?? '', crops: crops.length ? joined(crops, 'semicolon') : undefined }),
    sealed || face ? joined([sealed, face], 'space') : undefined,
    given(num(s, 'openDamage') || undefined, count => m('answer-open-damage', { count })),
  ]
}

const loads = (s: Slots): Lines => {
  const from = text(s, 'from')
  const to = text(s, 'to')
  const where = { crop: text(s, 'crop'), pile: text(s, 'pile'), from, to: to === from ? undefined : to }
  const lb = num(s, 'lbAsFed') || undefined
  const amount = amountOf({ count: num(s, 'count') || undefined, lb: num(s, 'count') ? undefined : lb }, true)
  return [amount ? m('answer-loads', { amount, ...where, lb: num(s, 'count') ? lb : undefined }) : m('answer-no-loads', where)]
}

const density = (s: Slots): Lines => [
  m('answer-density', {
    pile: pileOf(s),
    dry: num(s, 'dryLbFt3') ?? 0,
    bulk: num(s, 'bulkLbFt3'),
    air: given2(num(s, 'porosity'), share => (share <= 1 ? share * 100 : share)),
  }),
  m('answer-density-basis', { basis: text(s, 'basis') ?? 'assumed' }),
]
const given2 = <T, R>(value: T | undefined, then: (value: T) => R): R | undefined => (value === undefined ? undefined : then(value))

const face = (s: Slots): Lines => [
  m('answer-face', { pile: pileOf(s), inPerDay: num(s, 'inPerDay') ?? 0, min: num(s, 'minInPerDay') ?? 0, enough: s.enough === true }),
]

const cover = (s: Slots): Lines => {
  const weights = [
    given(num(s, 'tires') || undefined, count => m('answer-cover-tires', { count })),
    given(num(s, 'bags') || undefined, count => m('answer-cover-bags', { count })),
    given(num(s, 'edgeFt'), ft => m('answer-cover-edge', { ft })),
    given(num(s, 'gravelTons') || undefined, tons => m('answer-cover-gravel', { tons })),
  ]
  return [
    m('answer-cover', {
      pile: pileOf(s),
      sheet: m('answer-cover-sheet', { widthFt: num(s, 'widthFt') ?? 0, lengthFt: num(s, 'lengthFt') ?? 0 }),
      weights: weights.some(Boolean) ? joined(weights, 'comma') : undefined,
    }),
    typeof s.fromStock === 'boolean' ? m('answer-cover-stock', { fromStock: s.fromStock }) : undefined,
  ]
}

const plan = (s: Slots): Lines => [
  m('answer-plan', { width: num(s, 'widthFt') ?? 0, height: num(s, 'heightFt') ?? 0, length: num(s, 'lengthFt') ?? 0 }),
  given(num(s, 'lbDry'), lb => m('answer-plan-holds', { lb, inPerDay: num(s, 'inPerDay') })),
]

const ready = (s: Slots): Lines => [
  text(s, 'sealedOn')
    ? m('answer-ready', {
        pile: pileOf(s),
        ready: s.ready === true,
        sealedOn: text(s, 'sealedOn') ?? '',
        readyOn: text(s, 'readyOn') ?? '',
      })
    : m('answer-ready-unsealed', { pile: pileOf(s) }),
]

const mix = (s: Slots): Lines => [
  m('answer-mix', {
    pile: pileOf(s),
    pct: num(s, 'dmPct'),
    shares: joined(
      rows(s, 'shares').map(r => m('answer-share', { crop: text(r, 'crop') ?? '', pct: (num(r, 'share') ?? 0) * 100, ft: num(r, 'atFt') })),
      'comma',
    ),
  }),
]

const checks = (s: Slots): Lines => [
  m('answer-checks', { pile: pileOf(s), last: text(s, 'last'), next: text(s, 'next') }),
  given(num(s, 'openDamage') || undefined, count => m('answer-open-damage', { count })),
]

const loss = (s: Slots): Lines => [m('answer-loss', { pile: pileOf(s), pct: num(s, 'pct') ?? 0, lb: num(s, 'lbDry') })]

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

/** The lines of an answer, the figure first. At most four, but for lists of events and for how something was worked out. */
export const tell = (answer: Answer): Message[] => TELL[answer.about](answer).filter(x => x !== undefined)
