import type { Lang, Role } from '../ports.ts'
import type { Instant } from '../units/calendar.ts'
import type { Event } from './events.ts'
import type { Question } from './questions.ts'

/** The version of the entry's envelope. */
export const ENTRY_VERSION = 1

/** The message an entry came from. */
export interface Source {
  channel: string
  chat: string
  id: string
  edit: string
  /** The message whose question it answers: what is recorded then belongs to both. */
  raised?: string
}

/** What one line of the log can say. Lines are never changed; a correction is a `withdraw` and a new `event`. */
export type Body =
  | { kind: 'event'; id: string; event: Event }
  | { kind: 'withdraw'; id: string; why: 'undo' | 'correction' | 'edit' }
  | { kind: 'ask'; question: Question }
  | { kind: 'close'; question: string; how: 'answered' | 'dropped' | 'lapsed' }
  | { kind: 'member'; person: string; role: Role; name?: string; lang?: Lang; address?: string }
  | { kind: 'setting'; name: string; value: string | number | boolean }
  | { kind: 'said'; key: string }

export interface Entry {
  v: number
  /** Position in the farm's log, from 1. */
  n: number
  at: Instant
  by: string
  source?: Source
  body: Body
}
