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
  /** Kept by `meaningOf` and `weightOf`. */
  meaning?: Meaning
  weight?: number
}

/** What is worked out from a list of senses. */
export interface Meaning {
  of: string[]
  /** First value of each category. */
  cats: Map<string, string>
  /** Says a deed: one of its senses is `v:`. */
  verb: boolean
  /** Nothing to hold on to: articles, fillers and marks. */
  thin: boolean
}

/** What of an item its neighbours may change. */
export type Change = Partial<Pick<Item, 'senses' | 'num' | 'unit' | 'text'>>

/** An item changed. Like all others it has every field, in one order: the frames look at them so often that it tells. */
export const altered = (i: Item, more: Change): Item => ({
  from: i.from,
  to: i.to,
  senses: more.senses ?? i.senses,
  text: more.text ?? i.text,
  tokens: i.tokens,
  num: 'num' in more ? more.num : i.num,
  unit: 'unit' in more ? more.unit : i.unit,
  sides: i.sides,
  ordinal: i.ordinal,
  date: i.date,
  slip: i.slip,
  ghost: i.ghost,
  meaning: undefined,
  weight: undefined,
})

export const has = (i: Item | undefined, sense: string): boolean => i?.senses.includes(sense) ?? false

const THIN = new Set(['filler', 'mark', 'comma', 'also', 'approx', 'on', 'off', 'ans:yes'])

// most items share their senses with a phrase of the word tables, so with every message that has the word
const known = new WeakMap<string[], Meaning>()
const meaningIn = (senses: string[]): Meaning => {
  const before = known.get(senses)
  if (before) return before
  const cats = new Map<string, string>()
  for (const s of senses) {
    const at = s.indexOf(':')
    if (at > 0 && !cats.has(s.slice(0, at))) cats.set(s.slice(0, at), s.slice(at + 1))
  }
  const meaning = { of: senses, cats, verb: cats.has('v'), thin: senses.length > 0 && senses.every(s => THIN.has(s)) }
  known.set(senses, meaning)
  return meaning
}

/** What an item's senses come to, worked out once: the frames ask for it many times. */
export const meaningOf = (i: Item): Meaning => {
  if (i.meaning?.of === i.senses) return i.meaning
  i.meaning = meaningIn(i.senses)
  return i.meaning
}

/** True where the item says a deed. */
export const isVerb = (i: Item): boolean => meaningOf(i).verb

export const hasCat = (i: Item | undefined, cat: string): boolean => i !== undefined && meaningOf(i).cats.has(cat)
/** The value of a category's first sense: `valueOf(i, 'crop')`. */
export const valueOf = (i: Item | undefined, cat: string): string | undefined => (i === undefined ? undefined : meaningOf(i).cats.get(cat))
