import type { EventType } from '../../src/book/events.ts'

const on = '2026-08-20'

/** For each type one event as it is told, and some that must not get into a book, each for one reason. */
export const EXAMPLES: Record<EventType, { good: Record<string, unknown>; bad: [string, Record<string, unknown>][] }> = {
  pile: {
    good: { name: 'quarry', alsoCalled: ['cantera'], widthFt: 38, lengthFt: 110, heightFt: 9, on },
    bad: [
      ['no name', { widthFt: 38, on }],
      ['width below nothing', { name: 'quarry', widthFt: -1, on }],
    ],
  },
  box: { good: { name: 'blue wagon', lb: 11_000, crop: 'haylage', on }, bad: [['weighs nothing', { name: 'blue wagon', lb: 0, on }]] },
  load: {
    good: { pile: 'quarry', crop: 'corn silage', count: 7, cut: 2, dmPct: 34.5, box: 'blue wagon', field: 'creek bottom', on },
    bad: [
      ['neither count nor lb', { pile: 'quarry', crop: 'corn silage', on }],
      ['no crop', { pile: 'quarry', count: 7, on }],
      ['all water', { pile: 'quarry', crop: 'haylage', count: 7, dmPct: 0, on }],
      ['half a cutting', { pile: 'quarry', crop: 'haylage', count: 7, cut: 1.5, on }],
      ['a batch goes out, not in', { pile: 'quarry', crop: 'haylage', count: 7, unit: 'batch', on }],
    ],
  },
  pack: {
    good: { pile: 'quarry', tractors: 2, tractorLb: 31_000, hours: 7.5, layerIn: 6, on },
    bad: [['no hours', { pile: 'quarry', hours: 0, on }]],
  },
  size: {
    good: { pile: 'quarry', widthFt: 41, lengthFt: 112, heightFt: 10, topWidthFt: 18, on },
    bad: [['endless', { pile: 'quarry', lengthFt: Number.POSITIVE_INFINITY, on }]],
  },
  cover: {
    good: { pile: 'quarry', material: 'plastic', change: 'on', widthFt: 50, lengthFt: 130, count: 1, on },
    bad: [
      ['unknown material', { pile: 'quarry', material: 'hay', change: 'on', on }],
      ['no change', { pile: 'quarry', material: 'plastic', on }],
    ],
  },
  damage: {
    good: { pile: 'quarry', cause: 'animal', animal: 'raccoon', what: 'hole', count: 2, where: 'n end', on },
    bad: [['no cause', { pile: 'quarry', on }]],
  },
  patch: { good: { pile: 'quarry', count: 2, where: 'n end', on }, bad: [['no pile', { count: 2, on }]] },
  check: { good: { pile: 'all', finding: 'good', on }, bad: [['a finding of its own', { pile: 'all', finding: 'fine', on }]] },
  weather: { good: { kind: 'hail', inches: 1.75, on }, bad: [['not a weather', { kind: 'drought', on }]] },
  open: { good: { pile: 'quarry', why: 'feed', on }, bad: [['no reason', { pile: 'quarry', on }]] },
  feed: {
    good: { pile: 'quarry', lb: 11_000, ft: 2, on },
    bad: [
      ['no amount', { pile: 'quarry', on }],
      ['a unit alone', { pile: 'quarry', unit: 'bucket', on }],
    ],
  },
  face: {
    good: { pile: 'quarry', atFt: 40, on },
    bad: [
      ['nowhere', { pile: 'quarry', on }],
      ['before the start', { pile: 'quarry', atFt: -3, on }],
    ],
  },
  spoil: { good: { pile: 'quarry', count: 2, unit: 'bucket', on }, bad: [['no amount', { pile: 'quarry', on }]] },
  shift: { good: { pile: 'quarry', toPile: 'ridge', ft: 20, on }, bad: [['no goal', { pile: 'quarry', ft: 20, on }]] },
  empty: { good: { pile: 'quarry', on }, bad: [['no pile', { on }]] },
  test: {
    good: { crop: 'haylage', dmPct: 38, on },
    bad: [
      ['of nothing', { dmPct: 38, on }],
      ['drier than dry', { crop: 'haylage', dmPct: 100, on }],
    ],
  },
  ration: { good: { group: 'milking', head: 118, lbPerHead: 45, basis: 'as fed', on }, bad: [['no number', { group: 'milking', on }]] },
  supply: {
    good: { item: 'plastic', change: 'have', count: 0, widthFt: 50, lengthFt: 150, on },
    bad: [['less than none', { item: 'plastic', change: 'have', count: -1, on }]],
  },
  harvest: { good: { crop: 'haylage', cut: 1, acres: 60, on: '2027-05-28' }, bad: [['no crop', { cut: 1, on }]] },
  remind: {
    good: { about: 'order plastic', time: '07:00', who: 'lea', every: 'week', on },
    bad: [['not a time', { about: 'order plastic', time: '7am', on }]],
  },
  note: { good: { text: 'neighbour wants the blade', on }, bad: [['says nothing', { text: '', on }]] },
}
