import type { Message } from '../../book/questions.ts'
import { joined, m } from '../phrases.ts'
import { given, type Lines, num, pileOf, rows, type Slots, text } from './slots.ts'

export const left = (s: Slots): Lines => [
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
  const feed = text(w, 'feed')
  const parts = [
    given(num(w, 'head'), head => m('with-head', { head })),
    given(num(w, 'lbPerDay'), lb => m(feed ? 'with-day-of' : 'with-day', { lb, crop: feed })),
    given(num(w, 'lbPerHead'), lb => m('with-per-head', { lb, crop: feed })),
    given(num(w, 'perHeadMore'), lb => m(lb < 0 ? 'with-head-less' : 'with-head-more', { lb: Math.abs(lb) })),
    given(num(w, 'perDayMore'), lb => m(lb < 0 ? 'with-day-less' : 'with-day-more', { lb: Math.abs(lb) })),
    given(num(w, 'pctMore'), pct => m(pct < 0 ? 'with-pct-less' : 'with-pct-more', { pct: Math.abs(pct) })),
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

/** Days over, or short, with the ends of their range; an end on the other side says so. */
const spareRange = (s: Slots, short: boolean): Message | undefined => {
  const [low, high] = [num(s, 'spareDaysLow'), num(s, 'spareDaysHigh')]
  if (low === undefined || high === undefined || high - low < 1.5) return undefined
  const end = (days: number): Message => {
    const n = Math.round(Math.abs(days))
    return m(n === 0 || days < 0 === short ? 'answer-range-plain' : days < 0 ? 'answer-range-short' : 'answer-range-spare', { n })
  }
  return m('answer-range', short ? { low: end(high), high: end(low) } : { low: end(low), high: end(high) })
}

export const reach = (s: Slots): Lines => {
  if (text(s, 'until') === undefined)
    return [m('answer-reach-days', { with: whatIf(s), days: num(s, 'days') ?? 0, runsOut: text(s, 'runsOut') }), legs(s)]
  const spare = num(s, 'spareLbDry') ?? 0
  const days = num(s, 'spareDays')
  return [
    m(spare < 0 ? 'answer-reach-no' : 'answer-reach-yes', {
      with: whatIf(s),
      until: text(s, 'until') ?? '',
      days: days === undefined ? undefined : Math.abs(days),
      range: spareRange(s, spare < 0),
      spare: Math.abs(spare),
      feed: num(s, 'spareLbAsFed') === undefined ? undefined : Math.abs(num(s, 'spareLbAsFed')!),
      ...(spare < 0 && { ranOutOn: text(s, 'ranOutOn') }),
    }),
    gap(s),
    legs(s),
  ]
}
