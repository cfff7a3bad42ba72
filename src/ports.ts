import type { Answer, Ask } from './book/asks.ts'
import type { Entry } from './book/entries.ts'
import type { Event } from './book/events.ts'
import type { Instant } from './units/calendar.ts'

export type Role = 'owner' | 'crew' | 'viewer' | 'stranger'
export type Lang = 'en' | 'es'
export type Outcome = 'recorded' | 'answered' | 'asked' | 'ignored' | 'puzzled' | 'refused'

/** One message as a channel hands it over. `(channel, farm, chat, id, edit)` is its identity: the same one twice is one message. */
export interface Incoming {
  channel: string
  farm: string
  chat: string
  /** A chat of one person with the assistant; there silence would be rude. */
  private: boolean
  from: string
  /** Only where the channel decides roles (the line channel); otherwise the book knows. */
  role?: Role
  id: string
  /** The id of the message that this one replaces. */
  edits?: string
  /** Which edit of it; empty for a first sending. */
  edit: string
  replyTo?: string
  at: Instant
  text: string
  photo?: boolean
  /** In a group: the assistant was addressed by name. */
  addressed?: boolean
  /** A choice tapped: the question's id and the choice's place in it, from 0. `text` is then its label, `replyTo` the message that showed it. */
  pick?: { question: string; choice: number }
}

export interface Reply {
  /** The chat it goes to. */
  to: string
  text: string
  choices?: string[]
  /** The open question these choices answer. */
  question?: string
  /** The message it belongs under. */
  under?: string
  picture?: string
  file?: string
}

export interface Result {
  outcome: Outcome
  recorded: Event[]
  withdrawn: Event[]
  asks: Ask[]
  answers: Answer[]
  replies: Reply[]
}

/** What came due by itself. */
export interface Due {
  /** When it should have been said. */
  due: Instant
  farm: string
  replies: Reply[]
}

/** The append-only store. Each method is one transaction; nothing in it awaits. */
export interface EventLog {
  farms(): string[]
  /** All entries of a farm, in order. */
  entries(farm: string): Entry[]
  /**
   * Stores a message raw, before anything is done with it. A message seen before is not stored again; where it was
   * settled already its result comes back.
   */
  take(message: Incoming): { fresh: boolean; result?: Result }
  /** Appends a message's entries, its result and its outgoing replies, all or nothing. */
  settle(message: Incoming, entries: Entry[], result: Result): void
  /** Appends entries that no message caused (the clock), with their replies. */
  append(farm: string, channel: string, entries: Entry[], replies: Reply[]): void
  /** Messages stored but not settled: a process died between the two. */
  unsettled(): Incoming[]
  close(): void
}

export interface Clock {
  now(): Instant
}
