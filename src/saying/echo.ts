import type { Event } from '../book/events.ts'
import type { Message } from '../book/questions.ts'
import type { Day } from '../units/calendar.ts'
import { cropWord, joined, m, phrase, things, weight } from './phrases.ts'

export interface Extra {
  /** The day of the message; a date is said only where the event's is another. */
  day?: Day
  /** What it adds up to: `totalLoads`, `totalWeight`, … */
  total?: Message
  /** A `pile` event about a pile that is in the book already. */
  known?: boolean
}

export const totalLoads = (count: number): Message => m('total-loads', { count })
export const totalWeight = (lb: number): Message => m('total-weight', { lb })
export const totalOpenDamage = (count: number): Message => m('total-open-damage', { count })
export const totalLeft = (days: number): Message => m('total-left', { days })

/** Types whose own date is part of their phrase. */
const DATED = new Set(['harvest', 'remind'])

/** One short line that repeats what was understood: "7 loads corn silage on north. 42 so far." */
export const echo = (event: Event, extra: Extra = {}): Message =>
  m('echo-line', {
    what: phrase({ ...event, ...(extra.known && { known: true }) }),
    on: event.on !== extra.day && extra.day !== undefined && !DATED.has(event.type) ? event.on : undefined,
    total: extra.total,
  })

/** Sheets and weights put on one pile on one day are one breath: "50 by 130 ft plastic and 240 tires on north". */
const covers = (a: Event, b: Event): boolean =>
  a.type === 'cover' && b.type === 'cover' && a.change === b.change && a.change !== 'back' && a.pile === b.pile && a.on === b.on

/** All events of one message, in their order, each said once. `extraOf` gives the extra of the event at that place. */
export const echoAll = (events: Event[], extraOf: (event: Event, index: number) => Extra = () => ({})): Message => {
  const said: Message[] = []
  for (let i = 0; i < events.length; ) {
    const first = events[i]!
    let end = i + 1
    while (end < events.length && covers(first, events[end]!)) end++
    const extra = extraOf(events[end - 1]!, end - 1)
    if (end === i + 1) said.push(echo(first, extra))
    else {
      const list = events.slice(i, end).map(e => (e.type === 'cover' ? things(e.material, e) : phrase(e)))
      said.push(echo({ ...first, things: list } as unknown as Event, extra))
    }
    i = end
  }
  return said.length === 1 ? said[0]! : joined(said, 'space')
}

/** "Took back: 7 loads corn silage on north." */
/** More than this many are counted, not listed. */
const LISTED = 5
export const tookBack = (events: Event[]): Message =>
  events.length > LISTED ? m('took-back-many', { count: events.length }) : m('took-back', { what: events.map(e => phrase(e)) })

/** Slots whose old number alone says enough beside the new phrase. */
const BARE = new Set([
  'count',
  'head',
  'dmPct',
  'tractors',
  'hours',
  'layerIn',
  'inches',
  'mph',
  'degF',
  'acres',
  'lbPerHead',
  'lbPerDay',
  'ft',
  'atFt',
  'leftFt',
])

const slotWord = (event: Event, slot: string): Message | string | number | undefined => {
  const e = event as unknown as Record<string, unknown>
  const value = e[slot]
  if (value === undefined) return undefined
  if (BARE.has(slot) && typeof value === 'number') return value
  if (slot === 'pile' || slot === 'toPile' || slot === 'name' || slot === 'on' || slot === 'where') return String(value)
  if (slot === 'crop' || slot === 'cut') return cropWord(e.crop as string | undefined, e.cut as number | undefined)
  if (slot === 'lb') return weight(value as number, e.said as string | undefined, event.type === 'load' || event.type === 'box')
  return undefined
}

const differences = (a: Event, b: Event): string[] => {
  const [x, y] = [a, b] as unknown as Record<string, unknown>[]
  return [...new Set([...Object.keys(x!), ...Object.keys(y!)])].filter(
    k => k !== 'said' && k !== 'by' && JSON.stringify(x![k]) !== JSON.stringify(y![k]),
  )
}

/** "Now 6 loads corn silage on north (was 7)." Where more than one slot changed, the old one is said whole. */
export const corrected = (now: Event, was: Event, extra: Extra = {}): Message => {
  const changed = differences(now, was)
  const slot = changed.length === 1 ? changed[0] : undefined
  const old = (slot && slotWord(was, slot)) ?? phrase(was)
  const line = m('corrected', { now: withDay(now, extra, slot === 'on'), was: old })
  return extra.total ? joined([line, extra.total], 'space') : line
}

const withDay = (event: Event, extra: Extra, always: boolean): Message => {
  const what = phrase(event)
  const shown = !DATED.has(event.type) && (always || (extra.day !== undefined && event.on !== extra.day))
  return shown ? joined([what, m('day', { on: event.on })], 'comma') : what
}
