import type { Logger } from 'pino'
import type { Book } from '../../book/book.ts'
import type { Message } from '../../book/questions.ts'
import type { EventLog, Incoming, Lang, Listener, Reply, Result } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'

export const CHANNEL = 'telegram'
/** One bot keeps one farm's book in this version. */
export const FARM = 'home'

/** A reply that waits to be sent, as the store keeps it. */
export interface Letter {
  id: number
  farm: string
  chat: string
  reply: Reply
  tries: number
  /** The message that it came of. */
  cause?: string
  /** The tapped question's message, whose place it takes. */
  instead?: string
}

/** The log, and the replies that wait in it. */
export interface ChannelStore extends EventLog {
  queued(channel: string): Letter[]
  sent(id: number, messageId: string): void
  failed(id: number, why: string, forGood?: boolean): void
  sentMessage(channel: string, chat: string, messageId: string): Letter | undefined
  /** Where a question stands: the message that last put it. */
  sentQuestion(channel: string, question: string): { chat: string; messageId: string } | undefined
}

/** Keeps pictures beside the book; undefined for what is none. */
export interface PictureKeeper {
  keep(message: { channel: string; chat: string; id: string }, name: string, bytes: Uint8Array): string | undefined
}

/** Telegram calls us, instead of our asking it. */
export interface Webhook {
  /** The address that Telegram calls, as the world sees it: https. */
  url: string
  /** What Telegram says with each call, so that nobody else can call: 1 to 256 letters, digits, `_` and `-`. Without it one is made. */
  secret?: string
  /** Where the program itself listens, behind whatever carries the address there. */
  host: string
  port: number
}

/** What the channel asks of the rest of the house. All of it is synchronous. */
export interface Core {
  /** Stores a message, settles it, and puts its replies in the outbox. The same message again changes nothing. */
  handle(message: Incoming): Result
  /** The farm's book, live: what the channel enters in the log it also applies here. */
  book(): Book
  say(message: Message, lang: Lang): string
}

export interface TelegramOptions extends Core {
  /**
   * Asked after `handle` with its message and result, where a second reader is set up: what was not understood may then be
   * asked about, by the outbox. After `signal` nothing may be written any more.
   */
  second?: (message: Incoming, result: Result, signal: AbortSignal) => Promise<Result | undefined>
  token: string
  /** Another Bot API server than Telegram's own. */
  apiRoot?: string
  log: ChannelStore
  ownerCode: string
  /** The farm's IANA zone. */
  zone: string
  logger: Logger
  now?: () => Instant
  /** The book's folder; pictures on their way and the book as a file lie in `telegram` there. */
  folder: string
  /** Without it pictures are not kept. */
  pictures?: PictureKeeper
  /** Closed with the channel. Without it voice notes are not heard, and their senders are told so. */
  listener?: Listener
  /** Without it the updates are asked for by long polling. */
  webhook?: Webhook
  /** How long one long poll waits, seconds. */
  pollSeconds?: number
  /** How long the first wait after a failed sending is, ms; each further one doubles. */
  retryMs?: number
}
