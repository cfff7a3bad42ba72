import type { Message } from '../../book/questions.ts'
import { joined, m } from '../phrases.ts'
import { given, type Lines, notesOf, num, pileOf, type Slots, text } from './slots.ts'

/** Nobody hauls slower than this, tons/h: as advice it would be a joke. Common practice, no source. */
const SLOWEST_HAULING = 10

/** Share of a well-packed pile that is gas at the least (Holmes and Muck want no more than 0.4; Richard: 0.2 at 60 lb/ft3), from memory. */
const LEAST_AIR = 0.15

/** The quick check, where it is not met. */
const ruleOf800 = (s: Slots): Message | undefined => {
  const rule = (s.ruleOf800 ?? {}) as Slots
  const [want, have, tons] = [num(rule, 'wantLb'), num(rule, 'haveLb'), num(rule, 'tonsHour')]
  return want === undefined || have === undefined || tons === undefined || have >= want
    ? undefined
    : m('answer-density-rule', { want, have, tons })
}

export const density = (s: Slots): Lines => {
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
      low: num(s, 'dryLow'),
      high: num(s, 'dryHigh'),
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
    given(num(s, 'overPct') || undefined, over =>
      m('answer-density-cost', {
        pct: num(s, 'lossPct') ?? 0,
        over,
        target: num(s, 'targetDryLbFt3') ?? 0,
        lb: num(s, 'overLbDry'),
        cost: num(s, 'cost'),
      }),
    ),
    s.enough === false ? ruleOf800(s) : undefined,
    // A note says what the figure rests on, where it rests on little.
    notesOf(s).length ? undefined : m('answer-density-basis', { basis: text(s, 'basis') ?? 'assumed', packing: num(s, 'packingDryLbFt3') }),
  ]
}

export const face = (s: Slots): Lines => {
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
