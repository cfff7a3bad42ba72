import type { About, Answer } from '../book/asks.ts'
import type { Event } from '../book/events.ts'
import type { Datum, Message } from '../book/questions.ts'
import { cover, plan } from './answers/cover.ts'
import { left, reach } from './answers/reach.ts'
import { cropOf, given, type Lines, notesOf, num, pileOf, rows, type Slots, sharesOf, text } from './answers/slots.ts'
import { density, face } from './answers/tight.ts'
import { either } from './ask.ts'
import { amountOf, joined, m, phrase, things } from './phrases.ts'

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
  if (s.worth === true)
    return [given(num(s, 'value'), value => m('answer-worth-of', { pile: pileOf(s), value, lb: num(s, 'worthLb') ?? 0 }))]
  return [
    m('answer-status', { pile: pileOf(s), stage: text(s, 'stage') ?? '', crops: crops.length ? joined(crops, 'semicolon') : undefined }),
    sealed || face ? joined([sealed, face], 'space') : undefined,
    days !== undefined
      ? m('answer-status-left', { days, low: num(s, 'daysLow'), high: num(s, 'daysHigh'), lb })
      : feeding && lb !== undefined
        ? m('answer-status-there', { lb })
        : undefined,
    worth,
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

const ready = (s: Slots): Lines => {
  const openedOn = text(s, 'openedOn')
  if (openedOn) return [m('answer-ready-open', { pile: pileOf(s), openedOn })]
  return [
    m('answer-ready', { pile: pileOf(s), ready: s.ready === true, sealedOn: text(s, 'sealedOn') ?? '', readyOn: text(s, 'readyOn') ?? '' }),
  ]
}

const mix = (s: Slots): Lines => [
  m('answer-mix', { pile: pileOf(s), pct: num(s, 'dmPct'), shares: sharesOf(rows(s, 'shares')) }),
  given(num(s, 'faceFt'), ft =>
    rows(s, 'face').length ? m('answer-mix-face', { ft, shares: sharesOf(rows(s, 'face')), ratio: ratioOf(s) }) : undefined,
  ),
]

/** "Two to one" at the face. */
const ratioOf = (s: Slots): Message | undefined => {
  const r = (s.faceRatio ?? {}) as Slots
  return given(num(r, 'to'), times => m('answer-mix-ratio', { times, more: text(r, 'more') ?? '', less: text(r, 'less') ?? '' }))
}

const checks = (s: Slots): Lines => [
  m('answer-checks', { pile: pileOf(s), last: text(s, 'last'), next: text(s, 'next'), late: num(s, 'late') }),
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

const picture = (s: Slots): Lines => {
  const shown = ((s.events as Event[] | undefined) ?? []).map(e => m('answer-event', { on: e.on, who: e.by, what: phrase(e) }))
  return shown.length ? shown : [m('answer-no-picture', { pile: text(s, 'pile') })]
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
  picture,
  help,
  why,
}

/** The lines of an answer, the figure first, then the one thing to beware of. At most four, but for lists of events and for "why?". */
export const tell = (answer: Answer): Message[] => {
  const said = TELL[answer.about](answer).filter(x => x !== undefined)
  return said.length < MOST_LINES ? [...said, ...notesOf(answer).slice(0, 1)] : said
}
const MOST_LINES = 4
