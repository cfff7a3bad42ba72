import type { Logger } from 'pino'
import type { Book } from '../../book/book.ts'
import type { Message } from '../../book/questions.ts'
import type { EventLog, Incoming, Lang, Reply, Result } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'

export const CHANNEL = 'sms'
export const FARM = 'home'

/** A reply that waits to be carried, as the store keeps it. */
export interface Letter {
  id: number
  chat: string
  reply: Reply
  queuedAt: Instant
  /** The message that it came of; none where the clock caused it. */
  cause?: string
}

/** The log, and the replies that wait in it. */
export interface SmsStore extends EventLog {
  queued(channel: string): Letter[]
  sent(id: number, messageId: string): void
  failed(id: number, why: string, forGood?: boolean): void
}

export interface SmsOptions {
  /** Stores a message, settles it, and puts its replies in the outbox. The same message again changes nothing. */
  handle(message: Incoming): Result
  /** The farm's book, live: what the door enters in the log it also applies here. */
  book(): Book
  say(message: Message, lang: Lang): string
  /** Asked after `handle`, where a second reader is set up; what it asks goes by the outbox. */
  second?: (message: Incoming, result: Result, signal: AbortSignal) => Promise<Result | undefined>
  log: SmsStore
  /** The folder of the book; the used signatures are kept beside it. */
  folder: string
  secret: string
  host: string
  /** 0 for any that is free. */
  port: number
  /** Where messages that answer none are sent; without it they wait for the next response. */
  sendUrl?: string
  ownerCode: string
  /** The farm's IANA zone. */
  zone: string
  logger: Logger
  now?: () => Instant
  /** How long the first wait after a failed sending is, ms; each further one doubles. */
  retryMs?: number
  /** For one sending, ms. */
  timeoutMs?: number
}
