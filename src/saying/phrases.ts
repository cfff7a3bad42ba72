import type { EventType } from '../book/events.ts'
import type { Datum, Message } from '../book/questions.ts'

type Slots = Record<string, unknown>
type Data = Message['data']

export const m = (code: string, data: Record<string, Datum | undefined> = {}): Message => ({
  code,
  data: Object.fromEntries(Object.entries(data).filter(e => e[1] !== undefined)) as Data,
})
export const joined = (list: (Message | undefined)[], by: 'comma' | 'space' | 'line' | 'semicolon' | 'and' | 'or'): Message =>
  m('join', { list: list.filter(x => x !== undefined), by })

const text = (s: Slots, key: string): string | undefined => (typeof s[key] === 'string' && s[key] !== '' ? (s[key] as string) : undefined)
const num = (s: Slots, key: string): number | undefined => (typeof s[key] === 'number' ? (s[key] as number) : undefined)
const given = <T>(value: T | undefined, then: (value: T) => Message): Message | undefined => (value === undefined ? undefined : then(value))
/** Spaces do not stand in a variant's key. */
const key = (word: string | undefined, none: string): string => word?.replace(/ /g, '-') ?? none

/** A note may be a whole story; its echo only shows that it is the right one. */
const MOST_LETTERS = 90
export const clip = (words: string | undefined): string | undefined => {
  const flat = words?.replace(/\s+/g, ' ').trim()
  if (!flat || flat.length <= MOST_LETTERS) return flat
  const cut = flat.slice(0, MOST_LETTERS)
  return `${cut.slice(0, Math.max(cut.lastIndexOf(' '), 40))} …`
}

/** A feed by name, with its cut where one was said. Works for a crop said alone too. */
export const cropWord = (crop: string | undefined, cut?: number): Message | undefined =>
  given(crop, c => (cut === undefined ? m('crop-said', { crop: c }) : m('crop-of-cut', { crop: c, cut })))

/** Materials and supplies with count and size. */
export const things = (item: string, s: Slots): Message =>
  m('things', { item, kind: key(item, 'other'), count: num(s, 'count'), widthFt: num(s, 'widthFt'), lengthFt: num(s, 'lengthFt') })

const TONS = /\bt(?:on|onne|onelada)s?\b/i
const POUNDS = /\b(?:lbs?|pounds?|libras?)\b|#/i
/** Pounds said back in the unit they were said in: a ton turned into pounds has to be reckoned back at the wheel. */
export const weight = (lb: number, said: string | undefined, inTons: boolean): Message => {
  const tons = said && TONS.test(said) ? true : said && POUNDS.test(said) ? false : inTons
  return m(tons ? 'weight' : 'weight-lb', { lb })
}

/** Loads, weight and feet, as many as were said; undefined where none was. */
export const amountOf = (s: Slots, inTons = false): Message | undefined => {
  const parts = [
    given(num(s, 'ft'), ft => m('feet', { ft })),
    given(num(s, 'count'), count => m(`n-${text(s, 'unit') ?? 'load'}`, { count })),
    given(num(s, 'lb'), lb => weight(lb, text(s, 'said'), inTons)),
  ].filter(x => x !== undefined)
  return parts.length > 1 ? joined(parts, 'comma') : parts[0]
}

const some = m('some-feed')
const isSingle = (s: Slots): string =>
  num(s, 'lb') === undefined && num(s, 'ft') === undefined && (num(s, 'count') ?? 2) <= 1 ? 'yes' : ''
const details = (parts: (Message | undefined)[]): Message | undefined => (parts.some(Boolean) ? joined(parts, 'comma') : undefined)

const measures = (s: Slots): (Message | undefined)[] => {
  const width = num(s, 'widthFt')
  const length = num(s, 'lengthFt')
  return [
    ...(width !== undefined && length !== undefined
      ? [m('by-feet', { widthFt: width, lengthFt: length })]
      : [given(width, ft => m('pile-feet-wide', { ft })), given(length, ft => m('pile-feet-long', { ft }))]),
    given(num(s, 'heightFt'), ft => m('pile-feet-high', { ft })),
    given(num(s, 'topWidthFt'), ft => m('pile-feet-top', { ft })),
  ]
}

const coverThings = (s: Slots): Message =>
  Array.isArray(s.things) ? m('join', { list: s.things as Message[], by: 'and' }) : things(text(s, 'material') ?? 'plastic', s)

const PHRASES: Record<EventType, (s: Slots) => Message> = {
  pile: s =>
    m('did-pile', {
      name: text(s, 'name') ?? '',
      known: s.known ? 'yes' : '',
      details: details([
        ...measures(s),
        given(num(s, 'wallFt'), ft => m('pile-walls', { ft })),
        given((s.alsoCalled as string[] | undefined)?.length ? (s.alsoCalled as string[]) : undefined, names => m('pile-also', { names })),
      ]),
    }),
  box: s =>
    m('did-box', {
      name: text(s, 'name') ?? '',
      amount: amountOf({ ...s, count: undefined }, true) ?? some,
      crop: cropWord(text(s, 'crop')),
    }),
  load: s =>
    m('did-load', {
      amount: amountOf(s, true) ?? some,
      crop: cropWord(text(s, 'crop'), num(s, 'cut')),
      pile: text(s, 'pile'),
      details: details([
        given(num(s, 'dmPct'), pct => m('load-dry', { pct })),
        given(text(s, 'box'), box => m('load-box', { box })),
        given(text(s, 'field'), field => m('load-field', { field })),
      ]),
    }),
  pack: s =>
    m('did-pack', {
      pile: text(s, 'pile'),
      details: details([
        num(s, 'tractors') === undefined
          ? given(num(s, 'tractorLb'), lb => m('pack-weight', { lb }))
          : m('pack-tractors', { count: num(s, 'tractors'), lb: num(s, 'tractorLb') }),
        given(num(s, 'layerIn'), inches => m('pack-layers', { inches })),
        given(num(s, 'hours'), hours => m('pack-hours', { hours })),
      ]),
    }),
  size: s => m('did-size', { pile: text(s, 'pile'), details: joined(measures(s), 'comma') }),
  cover: s =>
    m(`did-cover-${text(s, 'change') ?? 'on'}`, {
      things: coverThings(s),
      pile: text(s, 'pile'),
      ...(s.change === 'back' && { ft: num(s, 'ft') }),
    }),
  damage: s =>
    m('did-damage', {
      kind: key(text(s, 'what'), 'any'),
      count: num(s, 'count'),
      pile: text(s, 'pile'),
      where: text(s, 'where'),
      animal: text(s, 'animal'),
      cause: text(s, 'cause'),
    }),
  patch: s => m('did-patch', { pile: text(s, 'pile'), count: num(s, 'count'), where: text(s, 'where') }),
  check: s => m('did-check', { pile: text(s, 'pile'), finding: text(s, 'finding') ?? '' }),
  weather: s =>
    m('did-weather', {
      kind: text(s, 'kind') ?? '',
      details: details([
        given(num(s, 'inches'), inches => m('weather-inches', { inches })),
        given(num(s, 'mph'), mph => m('weather-mph', { mph })),
        given(num(s, 'degF'), degF => m('weather-degrees', { degF })),
      ]),
    }),
  open: s => m(s.why === 'add' ? 'did-open-add' : 'did-open-feed', { pile: text(s, 'pile') }),
  feed: s => {
    const fed = num(s, 'count') !== undefined || num(s, 'lb') !== undefined
    return m(num(s, 'ft') !== undefined || !fed ? 'did-take' : 'did-feed', {
      amount: amountOf(s) ?? some,
      single: isSingle(s),
      pile: text(s, 'pile'),
    })
  },
  face: s =>
    num(s, 'atFt') === undefined && num(s, 'leftFt') !== undefined
      ? m('did-face-left', { ft: num(s, 'leftFt'), pile: text(s, 'pile') })
      : m('did-face-at', { ft: num(s, 'atFt') ?? '', pile: text(s, 'pile') }),
  spoil: s => m('did-spoil', { amount: amountOf(s) ?? some, single: isSingle(s), pile: text(s, 'pile') }),
  shift: s => m('did-shift', { amount: amountOf(s, true), single: isSingle(s), pile: text(s, 'pile'), toPile: text(s, 'toPile') }),
  empty: s => m('did-empty', { pile: text(s, 'pile') }),
  test: s => m('did-test', { crop: cropWord(text(s, 'crop')), pile: text(s, 'pile'), pct: num(s, 'dmPct') ?? '' }),
  ration: s => {
    const crop = cropWord(text(s, 'crop'))
    const basis = text(s, 'basis') ?? ''
    const perHead = num(s, 'lbPerHead')
    const group = text(s, 'group')
    return m('did-ration', {
      details: joined(
        [
          num(s, 'head') === undefined
            ? given(group, g => m('ration-group', { group: g }))
            : m('ration-head', { head: num(s, 'head'), group }),
          given(perHead, lb => m('ration-per-head', { lb, crop, basis })),
          given(num(s, 'lbPerDay'), lb =>
            m('ration-per-day', { lb, crop: perHead === undefined ? crop : undefined, basis: perHead === undefined ? basis : '' }),
          ),
          given(text(s, 'pile'), pile => m('ration-from', { pile })),
        ],
        'comma',
      ),
    })
  },
  supply: s => m(`did-supply-${text(s, 'change') ?? 'have'}`, { things: things(text(s, 'item') ?? '', s) }),
  harvest: s => m('did-harvest', { crop: cropWord(text(s, 'crop'), num(s, 'cut')), on: text(s, 'on'), acres: num(s, 'acres') }),
  remind: s =>
    m('did-remind', {
      who: text(s, 'who'),
      on: text(s, 'on'),
      every: text(s, 'every') ?? '',
      step: num(s, 'step') ?? 1,
      time: text(s, 'time'),
      about: clip(text(s, 'about')),
    }),
  note: s => m('did-note', { text: clip(text(s, 'text')) }),
}

/**
 * What an event says, as a phrase without capital, date or stop: "7 loads corn silage on north". Also for a draft whose
 * slots are not all known yet: `phrase({ type, ...draft.slots })`.
 */
export const phrase = (event: { type: EventType } & Record<string, unknown>): Message => PHRASES[event.type](event)
