import type { Lang } from '../ports.ts'
import type { Instant } from '../units/calendar.ts'
import type { Source } from './entries.ts'
import type { EventType } from './events.ts'

/** What is to be said, without its words. The words stand in `prompts/`. */
export interface Message {
  code: string
  data: Record<string, Datum>
}
export type Datum = string | number | boolean | Message | Datum[]

/** An event that is not certain yet: what was said, and what was settled so far. */
export interface Draft {
  type: EventType
  /** Slots as in the event; any may still be missing. */
  slots: Record<string, unknown>
  /** Doubts that a person has already put to rest, by code. */
  sure: string[]
  /** Events that this one takes the place of, once it is certain. */
  replaces: string[]
}

export interface Choice {
  label: string | Message
  /**
   * `fill` puts `value` into the slot asked for; `sure` records the draft as it is; `drop` lets it go; `pile` makes a new pile first;
   * `take` records the drafts in `value` instead of the question's own.
   */
  act: 'fill' | 'sure' | 'drop' | 'pile' | 'undo' | 'take'
  value?: unknown
}

/** One open question. It lives in the log, so a restart forgets nothing. */
export interface Question {
  id: string
  chat: string
  /** Whom it was put to. */
  to: string
  lang: Lang
  at: Instant
  source: Source
  /** The message that began it, where this question followed from the answer to another. */
  raised?: string
  ask: Message
  /** The slot that the answer fills, where it fills one. */
  slot?: string
  choices: Choice[]
  drafts: Draft[]
  /** Events to take back when the answer is yes. */
  undo?: string[]
  /** Only the owner (or the one named) may say yes. */
  needs?: 'owner'
}
