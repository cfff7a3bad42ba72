import type { Message } from '../../book/questions.ts'
import { joined, m } from '../phrases.ts'
import { given, type Lines, num, pileOf, rows, type Slots, text } from './slots.ts'

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
/** Less of a sheet over than this goes under the weights anyway, a share. */
const LEAST_WASTE = 0.05
const stockLine = (s: Slots): Message | undefined => {
  const sheets = rows(s, 'sheets').map(x => m('by-feet', { widthFt: num(x, 'widthFt') ?? 0, lengthFt: num(x, 'lengthFt') ?? 0 }))
  const waste = num(s, 'waste') ?? 0
  return typeof s.fromStock === 'boolean'
    ? m('answer-cover-stock', {
        fromStock: s.fromStock,
        sheets: sheets.length ? joined(sheets, 'and') : undefined,
        waste: waste >= LEAST_WASTE ? waste * 100 : undefined,
        tires: num(s, 'tiresShort'),
      })
    : undefined
}

export const cover = (s: Slots): Lines => {
  const second = (s.second ?? {}) as Slots
  return [
    m('answer-cover', { pile: pileOf(s), sheet: sheetOf(s), weights: weightsOf(s) }),
    stockLine(s),
    given(num(second, 'lbDry'), lb => m('answer-cover-second', { lb, value: num(second, 'value') })),
    given(num(s, 'costPerTon'), perTon => m('answer-cover-cost', { perTon, cost: num(s, 'cost') ?? 0 })),
  ]
}

export const plan = (s: Slots): Lines => {
  const over = s.cover as Slots | undefined
  return [
    m('answer-plan', {
      crop: text(s, 'crop'),
      width: num(s, 'widthFt') ?? 0,
      height: num(s, 'heightFt') ?? 0,
      length: num(s, 'lengthFt') ?? 0,
    }),
    given(num(s, 'lbDry'), lb =>
      m('answer-plan-holds', {
        lb,
        feed: num(s, 'lbAsFed'),
        days: num(s, 'days'),
        perDay: num(s, 'days') === undefined ? undefined : num(s, 'lbDayAsFed'),
        inPerDay: num(s, 'inPerDay'),
      }),
    ),
    // What is not in stock is not worth a word before the pile stands.
    over &&
      m('answer-plan-cover', {
        sheet: sheetOf(over),
        weights: weightsOf(over),
        stock: over.fromStock === true ? stockLine(over) : undefined,
      }),
  ]
}
