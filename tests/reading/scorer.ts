/** One line of a case: what somebody writes, and when, where that matters. */
export interface Said {
  from: string
  text: string
  at?: string
  chat?: string
  id?: number | string
  replyTo?: number | string
  edits?: number | string
  role?: 'owner' | 'crew' | 'viewer' | 'stranger'
}
type Slots = Record<string, unknown>
export interface Expected {
  outcome: string
  recorded?: Slots[]
  withdrawn?: Slots[]
  asks?: Slots[]
}
export interface Case {
  id: string
  lines: Said[]
  expect: Expected & { alternatives?: Expected[] }
  tags?: string[]
}
export interface Got {
  outcome: string
  recorded: Slots[]
  withdrawn: Slots[]
  asks: Slots[]
}

/** `wrong` is a record that should not be: the worst that can happen. `asked` is a needless question, `missed` no record where one was due. */
export type Verdict = 'right' | 'wrong' | 'asked' | 'missed' | 'other'

const TOLERANCE = 0.005
/** Slots that stay as said: the words must be there, in any order and with any small words between them. */
const FREE = new Set(['where', 'field', 'text', 'about'])
const SMALL = new Set('a al at by cerca de del el en end in junto la lado near of on por side the'.split(' '))
/** Slots that hang on the words more than on the meaning; they may be there though nobody asked for them. */
const LIGHT = new Set([
  'type',
  'on',
  'by',
  'said',
  'where',
  'field',
  'what',
  'animal',
  'time',
  'box',
  'group',
  'basis',
  'alsoCalled',
  'about',
  'text',
  'every',
  'who',
  'cause',
])

const norm = (v: unknown): string => String(v).toLowerCase().trim()
const words = (v: unknown): string[] =>
  norm(v)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .split(' ')
    .filter(w => w && !SMALL.has(w))
const single = (v: unknown): string => norm(v).replace(/s$/, '')

const sameValue = (slot: string, want: unknown, have: unknown, ask: boolean): boolean => {
  if (have === undefined) return slot === 'cause' && want === 'unknown'
  if (typeof want === 'number') return typeof have === 'number' && Math.abs(have - want) <= TOLERANCE * Math.abs(want)
  if (Array.isArray(want)) return Array.isArray(have) && want.every(w => have.some(h => norm(h) === norm(w)))
  if (FREE.has(slot) && !(ask && slot === 'about')) return words(want).every(w => words(have).includes(w))
  if (slot === 'item' || slot === 'animal') return single(want) === single(have)
  return norm(want) === norm(have)
}
const holds = (want: Slots, have: Slots, ask = false): boolean =>
  Object.entries(want).every(([slot, v]) => sameValue(slot, v, have[slot], ask))

/** A slot that nobody told and that changes what the event means. */
const extra = (want: Slots, have: Slots): boolean =>
  Object.entries(have).some(
    ([slot, v]) =>
      v !== undefined &&
      !(slot in want) &&
      !LIGHT.has(slot) &&
      !(slot === 'unit' && v === 'load') &&
      !(slot === 'count' && v === 1 && ['damage', 'patch'].includes(String(want.type))),
  )
/** Where no day is expected it is the day it was sent, but for what tells its own day. */
const onItsDay = (want: Slots, have: Slots, day: string): boolean =>
  'on' in want || have.on === undefined || have.on === day || ['harvest', 'remind'].includes(String(want.type))

/** Each expected event has one of its own among those recorded, and none is left over. */
const matches = (wants: Slots[], haves: Slots[], day: string): boolean => {
  if (wants.length !== haves.length) return false
  const [want, ...rest] = wants
  if (!want) return true
  return haves.some((h, k) => holds(want, h) && !extra(want, h) && onItsDay(want, h, day) && matches(rest, haves.toSpliced(k, 1), day))
}

const meets = (e: Expected, got: Got, day: string): boolean =>
  e.outcome === got.outcome &&
  matches(e.recorded ?? [], got.recorded, day) &&
  (e.withdrawn === undefined ||
    (e.withdrawn.length === got.withdrawn.length && e.withdrawn.every(w => got.withdrawn.some(h => holds(w, h))))) &&
  (e.asks === undefined || e.asks.every(a => got.asks.some(h => holds(a, h, true))))

/** How the answer to a case's last line stands against what was expected. `day` is the local day it was sent. */
export const judge = (c: Case, got: Got, day: string): Verdict => {
  if ([c.expect, ...(c.expect.alternatives ?? [])].some(e => meets(e, got, day))) return 'right'
  if (got.recorded.length || got.withdrawn.length) return 'wrong'
  if (got.outcome === 'asked') return 'asked'
  return c.expect.outcome === 'recorded' ? 'missed' : 'other'
}
