import type { Day } from '../units/calendar.ts'
import type { Token } from './token.ts'

export type Unit =
  | 'load'
  | 'bucket'
  | 'batch'
  | 'lb'
  | 'ton'
  | 'tonne'
  | 'ft'
  | 'in'
  | 'pct'
  | 'mph'
  | 'degF'
  | 'head'
  | 'hour'
  | 'acre'
  | 'tractor'
  | 'day'
  | 'month'
  | 'kg'
  | 'm'

export interface DateItem {
  from: number
  to: number
  /** As a log means it: looking back. */
  past: Day
  /** As a plan or a reminder means it. */
  future: Day
  explicit: boolean
  time?: string
  part?: 'morning' | 'noon' | 'afternoon' | 'evening' | 'night'
  span?: { from: Day; to: Day }
  /** Only a day to come can be meant. */
  ahead?: true
}

/** A run of tokens with what it can mean. Several senses may stand until a frame settles which one is meant. */
export interface Item {
  from: number
  to: number
  /** `category:value`, e.g. `crop:haylage`, `v:put`, `on`; empty for a word nobody knows. */
  senses: string[]
  /** A number: bare, with a unit, or the sides of a sheet or pile. */
  num?: number
  unit?: Unit
  /** Rounding or guessing words stood beside the number. */
  sides?: number[]
  ordinal?: boolean
  /** The unit was said in feet and inches, or the like. */
  date?: DateItem
  /** A name taken in spite of a slip of the thumb. */
  slip?: boolean
  /** Carried over from the clause before: it was not said here. */
  ghost?: boolean
  text: string
  tokens: Token[]
  /** Kept by `valueOf` and `weightOf`. */
  cats?: { of: string[]; map: Map<string, string> }
  weight?: number
}

export const has = (i: Item | undefined, sense: string): boolean => i?.senses.includes(sense) ?? false

// most items share their senses with a phrase of the word tables, so with every message that has the word
const known = new WeakMap<string[], Map<string, string>>()
const catsIn = (senses: string[]): Map<string, string> => {
  let map = known.get(senses)
  if (map) return map
  map = new Map<string, string>()
  for (const s of senses) {
    const at = s.indexOf(':')
    if (at > 0 && !map.has(s.slice(0, at))) map.set(s.slice(0, at), s.slice(at + 1))
  }
  known.set(senses, map)
  return map
}

/** First value of each category, worked out once for an item: the frames ask for it many times. */
const catsOf = (i: Item): Map<string, string> => {
  if (i.cats && i.cats.of === i.senses) return i.cats.map
  const map = catsIn(i.senses)
  i.cats = { of: i.senses, map }
  return map
}

export const hasCat = (i: Item | undefined, cat: string): boolean => i !== undefined && catsOf(i).has(cat)
/** The value of a category's first sense: `valueOf(i, 'crop')`. */
export const valueOf = (i: Item | undefined, cat: string): string | undefined => (i === undefined ? undefined : catsOf(i).get(cat))
