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
  /** A voice note. Its `text` is empty until it was heard; the words then stand in `text`. */
  voice?: Voice
  /** Set where the words come from a recogniser. */
  heard?: HeardNote
  /** A choice tapped: the question's id and the choice's place in it, from 0. `text` is then its label, `replyTo` the message that showed it. */
  pick?: { question: string; choice: number }
}

/** A voice note before it is heard: where its channel finds the sound again, and what it says of it. */
export interface Voice {
  /** The channel's own name for the sound: a path, a file's id. */
  ref: string
  seconds?: number
  bytes?: number
}

/** What an ear made of a voice note, as it comes with the message: `text` is the first wording. */
export interface HeardNote {
  /** What may have been said, likeliest first, with weights that add up to 1 at most; the rest was nothing that makes sense. */
  wordings: { text: string; weight: number }[]
  /** Why there are no words. */
  trouble?: { code: string; data: Record<string, string | number | boolean> }
}

/** One word heard: where it stands in the note, in seconds, and how sure the recogniser is of it, 0 to 1. */
export interface HeardWord {
  word: string
  from: number
  to: number
  sure: number
}

/** A whole wording, with the recogniser's weight of it, 0 to 1. */
export interface Wording {
  words: HeardWord[]
  weight: number
}

/** What an ear made of a note: its wordings, best first (none: nothing was understood), and which language it listened for. */
export interface Heard {
  wordings: Wording[]
  lang: Lang
}

/** A farm's own words, which a recogniser should know. */
export interface FarmWords {
  piles: string[]
  boxes: string[]
  people: string[]
  words: string[]
}

/**
 * A recogniser: 16 kHz mono sound to wordings. It is asked about one note at a time for each farm. Rejects with an `EarFault`
 * ({code, data}) where it cannot listen: a program or model that is missing, an endpoint that does not answer.
 */
export interface Ear {
  name: string
  /** The languages that it can hear. */
  langs: Lang[]
  hear(sound: Float32Array, farm: FarmWords, lang: Lang, signal?: AbortSignal): Promise<Heard>
  close(): void
}

/**
 * What a channel does with a voice note: `hear(message, fetch)`.
 *
 * `message` has `text: ''` and `voice` ({ref, seconds?, bytes?} as the channel knows them); it is stored raw before anything else is done.
 * `fetch` brings the note's bytes (OGG/Opus, as recorded); it is called at most once, and not at all where the note is too long or too
 * large by `voice`, or was settled before. Notes of one farm are heard one after another, in the order of the calls.
 *
 * Resolves with the settled result, whose replies repeat the words heard (for a channel of the outbox they are queued by then: wake the
 * post). What goes wrong with a note (no recogniser, unreadable sound, a failed `fetch`) is a result with a reply too. Rejects only with
 * the store's fault, and with an AbortError where `close` came first: the note then waits in the store for the next start.
 */
export interface Listener {
  hear(message: Incoming, fetch: () => Promise<Uint8Array>): Promise<Result>
  /** Notes that an earlier process had stored and not settled, of one channel: heard now. `fetch` as above, for each of them. */
  resume(channel: string, fetch: (message: Incoming) => Promise<Uint8Array>): Promise<Result[]>
  close(): Promise<void>
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
  /** Path of an OGG/Opus file that says the text, where spoken answers are on. */
  voice?: string
  /** Says back what a message said in full, and nothing more: a channel may show that by a sign of its own. */
  plain?: boolean
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
