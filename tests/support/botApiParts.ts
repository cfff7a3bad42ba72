import type { IncomingMessage } from 'node:http'
import type { BotCommand, Chat, InlineKeyboardMarkup, Message, MessageEntity, Update, User } from 'grammy/types'

// What the Bot API stand-in is asked by, and how its requests are read.

export type Fault =
  /** Answers with an error; `code` 429 with `retryAfter` seconds. */
  | { code: number; description: string; retryAfter?: number; migrateTo?: number }
  /** A proxy's error page. */
  | { html: number }
  /** The line breaks before the call is carried out, or after it: then the answer is lost. */
  | { drop: 'before' | 'after' }
  | { delayMs: number }

export type Payload = Record<string, unknown>
export interface Call {
  method: string
  payload: Payload
}
export type Shown = Message.TextMessage & { reply_markup?: InlineKeyboardMarkup; file?: Buffer; filename?: string }

/** How the line to the bot behaves; each is asked for every batch, or every delivery. */
export interface Line {
  /** What of a batch arrives, and in which order. */
  batch?(updates: Update[]): Update[]
  /** What befalls a call. */
  fault?(method: string): Fault | undefined
}

export class ApiError {
  readonly code: number
  readonly description: string
  readonly parameters?: Payload
  constructor(code: number, description: string, parameters?: Payload) {
    this.code = code
    this.description = description
    this.parameters = parameters
  }
}
export const bad = (description: string): ApiError => new ApiError(400, `Bad Request: ${description}`)

export interface BotApi {
  root: string
  /** Every call that arrived, faults and all. */
  calls: Call[]
  /** The bot's own messages of a chat as they stand now, in order. */
  shown(chat: number): Shown[]
  /** Something a person sends. */
  say(chat: Chat, from: User, text: string, more?: Partial<Message>): Message
  edit(chat: Chat, from: User, messageId: number, text: string): void
  /** A tap on the button with that label. */
  press(chat: Chat, from: User, messageId: number, label: string): void
  /** Any other update. */
  push(update: Omit<Update, 'update_id'>): void
  /** Texts of toasts shown for taps. */
  toasts: string[]
  /** Updates that were not confirmed yet. */
  pending(): Update[]
  /** The next call of `method` meets this; faults of a method queue up. */
  fault(method: string, ...faults: Fault[]): void
  block(chat: number): void
  unblock(chat: number): void
  /** Emoji that the bot put under a message. */
  reactions(chat: number, messageId: number): string[]
  /** Groups that allow no reactions. */
  noReactions: Set<number>
  /** Menus of commands, by scope and language: `default`, `default es`, `chat 501 es`. */
  menus: Map<string, BotCommand[]>
  /** What the bot was shown as doing: `501 upload_photo`. */
  actions: string[]
  /** A file that can be fetched; the size told may be another than the true one. */
  file(bytes: Uint8Array, told?: { size?: number; path?: string }): { file_id: string; file_unique_id: string; file_size: number }
  /** Groups where the bot is an administrator. */
  admin: Set<number>
  line: Line
  /** Takes the token back. */
  revoke(): void
  /** Resolves when `test` is true; it is looked at whenever a call was answered. Rejects after `ms`. */
  until(what: string, test: () => boolean, ms?: number): Promise<void>
  close(): Promise<void>
}

/** Commands and mentions, as Telegram marks them. */
export const entitiesIn = (text: string): MessageEntity[] =>
  [...text.matchAll(/(?<![\w@/])(?:\/\w+(?:@\w+)?|@\w{4,})/g)].map(m => ({
    type: m[0].startsWith('/') ? ('bot_command' as const) : ('mention' as const),
    offset: m.index,
    length: m[0].length,
  }))

/** Multipart by hand: the client sends file names without quotes, which stricter readers refuse. */
const multipart = (body: Buffer, boundary: string): Payload => {
  const fields: Payload = {}
  for (const part of body.toString('latin1').split(`--${boundary}`).slice(1, -1)) {
    const cut = part.indexOf('\r\n\r\n')
    const name = /name="([^"]+)"/.exec(part.slice(0, cut))?.[1]
    const value = Buffer.from(part.slice(cut + 4, -2), 'latin1')
    const filename = /filename="?([^"\r\n;]+)/.exec(part.slice(0, cut))?.[1]
    if (name) fields[name] = filename === undefined ? value.toString('utf8') : Object.assign(value, { filename })
  }
  for (const key of ['reply_markup', 'reply_parameters']) if (typeof fields[key] === 'string') fields[key] = JSON.parse(fields[key])
  return fields
}

export const bodyOf = async (req: IncomingMessage): Promise<Payload> => {
  const chunks: Buffer[] = []
  for await (const c of req) chunks.push(c as Buffer)
  const body = Buffer.concat(chunks)
  const boundary = /boundary=(.+)$/.exec(req.headers['content-type'] ?? '')?.[1]
  if (boundary) return multipart(body, boundary)
  return body.length ? (JSON.parse(body.toString('utf8')) as Payload) : {}
}
