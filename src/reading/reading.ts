import type { Alias } from './alias.ts'
import type { DateItem, Item } from './item.ts'
import type { Price } from './price.ts'
import type { Lang } from './scan.ts'
import type { Chore } from './wish/chore.ts'
import type { Wish } from './wish/wish.ts'

/** How a clause was meant. Only a `fact` may become a record. */
export type Mood = 'fact' | 'question' | 'plan' | 'hope' | 'denial' | 'if' | 'order' | 'hearsay'

export type FrameName =
  | 'pile'
  | 'box'
  | 'load'
  | 'pack'
  | 'size'
  | 'cover'
  | 'damage'
  | 'patch'
  | 'check'
  | 'weather'
  | 'open'
  | 'feed'
  | 'face'
  | 'spoil'
  | 'shift'
  | 'empty'
  | 'test'
  | 'ration'
  | 'supply'
  | 'harvest'
  | 'remind'
  | 'note'
  | 'word'

/** One thing that was said: slots hold only what the words gave. */
export interface Act {
  frame: FrameName
  mood: Mood
  slots: Record<string, unknown>
  date?: DateItem
  /** Its verb was taken over from the clause before. */
  leans?: boolean
  /** An amount was said without a number ("some", "10 to 12"). */
  vague?: boolean
  /** Nothing but tape was named for a patch: it may have been laid on to measure. */
  tape?: boolean
  there?: boolean
  /** A share that was told as moisture; its slot holds the dry matter. */
  wet?: boolean
  /** A pile was named that the farm does not have. */
  strange?: string
  /** A pile name taken in spite of a slip. */
  slip?: boolean
  /** "in all", "so far". */
  total?: boolean
  /** "more", "another". */
  more?: boolean
  /** Weight of what was explained, and of what was left over. */
  used: number
  left: number
  leftWords: string[]
  /** Number items nobody claimed. */
  leftNumbers: number
  /** True where the clause has its own trigger and enough slots to stand alone. */
  full: boolean
  /** What was broken, or that a sheet was lifted, follows from the verb alone. */
  implied?: boolean
  /** No verb of its own tells of the harm. */
  noVerb?: boolean
  /** Loads were counted without saying that they are loads. */
  noUnit?: boolean
  /** Nothing but what a load weighed is told. */
  weighed?: boolean
}

export interface AskSaid {
  about: string
  slots: Record<string, unknown>
  used: number
  left: number
}

/** Something that changes an earlier record. */
export interface Fix {
  /** One of several records of one message. */
  among?: boolean
  /** What was told as one deed was another: the kind it becomes. */
  becomes?: 'spoil'
  /** It names the record that it sets right ("those 9 loads …"): where no such record is, it tells nothing. */
  named?: boolean
  kind: 'undo' | 'change'
  slots: Record<string, unknown>
  /** Names a wrong value that is replaced, where said ("not corn"). */
  wrong: Record<string, unknown>
  /** "both", "all of them". */
  many?: boolean
  /** Which frame was named ("no, the feed was 11k"). */
  frame?: FrameName
  date?: DateItem
  strength: number
}

/** What a message could mean as an answer to a question that is open. */
export interface Bare {
  /** Values by kind: numbers, piles, crops …, in the order said. */
  numbers: Item[]
  /** Where on a pile, as said: "west end". */
  where?: string
  /** A number that is denied: "8 not 7". */
  denied?: number
  piles: string[]
  crops: { crop: string; cut?: number }[]
  yes: boolean
  no: boolean
  drop: boolean
  /** The word of answer that it begins with: what follows says only why. */
  leads?: 'drop' | 'same' | 'yes'
  same: boolean
  more: boolean
  all: boolean
  pick?: number | 'last'
  good: boolean
  trouble: boolean
  why?: 'feed' | 'add'
  strange?: string
  vague: boolean
  /** Words that none of these explains. */
  rest: number
  /** Meaningful words altogether. */
  size: number
}

export interface Reading {
  lang: Lang
  acts: Act[]
  asks: AskSaid[]
  fix?: Fix
  /** Values alone: a correction only where the message replies to a record. */
  plain?: Fix
  bare: Bare
  /** A link, a telephone number, or mostly talk. */
  chatter: boolean
  /** A word of hope or wish is in it. */
  hoped: boolean
  /** A word of the farm's own that is being taught, taken back, or asked for. */
  lesson?: { word: string; means: string }
  forget?: string
  /** What a ton or a sheet costs, as told. */
  price?: Price
  /** A second name for a known pile. */
  alias?: Alias
  asksLessons: boolean
  /** How the assistant is to behave from now on, or a question about that. */
  wish?: Wish
  /** A word about the reminders themselves. */
  chore?: Chore
  /** Trade words met, known words, all words. */
  trade: number
  words: number
  questionMark: boolean
  /** It was longer than is read: only its beginning was. */
  cut: boolean
  trace: string[]
}
