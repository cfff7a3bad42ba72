import type Database from 'better-sqlite3'
import type { Reply } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { guarded } from './fault.ts'

/** A reply that waits for its channel, or that has gone out. */
export interface Queued {
  id: number
  farm: string
  chat: string
  reply: Reply
  queuedAt: Instant
  tries: number
  /** The message that it came of; none where the clock caused it. */
  cause?: string
  /** The question's message, tapped, whose place it takes. */
  instead?: string
}

/** Where replies come from. */
export type Cause = Pick<Queued, 'cause' | 'instead'>

export interface Outbox {
  /** What a channel still has to send, oldest first. */
  queued(channel: string): Queued[]
  /** The channel's server has taken it, as that message of the chat. */
  sent(id: number, messageId: string): void
  /** A try failed; it stays queued. With `forGood` (the chat is gone, the assistant was blocked) it is kept, but not tried again. */
  failed(id: number, why: string, forGood?: boolean): void
  /** The reply that went out as that message of the chat. */
  sentMessage(channel: string, chat: string, messageId: string): Queued | undefined
  /** Where a question stands: the message that put it last. Looked for among the latest letters only: an older question has lapsed. */
  sentQuestion(channel: string, question: string): { chat: string; messageId: string } | undefined
}

interface Row {
  id: number
  farm: string
  chat: string
  reply: string
  queued_at: string
  tries: number
  cause: string | null
  instead: string | null
}

/** Letters of a day and a half, generously: then a question lapses. */
const LATEST = 5000

const asQueued = (r: Row): Queued => ({
  id: r.id,
  farm: r.farm,
  chat: r.chat,
  reply: JSON.parse(r.reply) as Reply,
  queuedAt: r.queued_at,
  tries: r.tries,
  ...(r.cause !== null && { cause: r.cause }),
  ...(r.instead !== null && { instead: r.instead }),
})

/** The outbox of an open store, and `post`, which belongs inside the transaction that caused the replies. */
export const outboxOf = (
  db: Database.Database,
  file: string,
  now: () => Instant,
): { outbox: Outbox; post: (channel: string, farm: string, replies: Reply[], from?: Cause & { chat: string }) => void } => {
  const insert = db.prepare('insert into outbox (channel, farm, chat, reply, queued_at, cause, instead) values (?, ?, ?, ?, ?, ?, ?)')
  const waiting = db.prepare('select * from outbox where channel = ? and sent_at is null and dropped_at is null order by id')
  const mark = db.prepare('update outbox set sent_at = ?, message_id = ?, tries = tries + 1 where id = ? and sent_at is null')
  const miss = db.prepare('update outbox set tries = tries + 1, last_why = ?, dropped_at = ? where id = ? and sent_at is null')
  const byMessage = db.prepare('select * from outbox where channel = ? and chat = ? and message_id = ? order by id desc limit 1')
  const byQuestion = db.prepare(
    `select chat, message_id as messageId from outbox where channel = ? and id > (select coalesce(max(id), 0) - ${LATEST} from outbox)
     and message_id is not null and json_extract(reply, '$.question') = ? order by id desc limit 1`,
  )
  return {
    post: (channel, farm, replies, from) => {
      // Of several replies in the question's chat the first takes its place.
      const heir = from?.instead === undefined ? undefined : replies.find(r => r.to === from.chat)
      for (const r of replies) {
        insert.run(channel, farm, r.to, JSON.stringify(r), now(), from?.cause ?? null, r === heir ? (from?.instead ?? null) : null)
      }
    },
    outbox: {
      queued: channel => guarded(file, () => (waiting.all(channel) as Row[]).map(asQueued)),
      sent: (id, messageId) => guarded(file, () => void mark.run(now(), messageId, id)),
      failed: (id, why, forGood = false) => guarded(file, () => void miss.run(why, forGood ? now() : null, id)),
      sentMessage: (channel, chat, messageId) =>
        guarded(file, () => {
          const row = byMessage.get(channel, chat, messageId) as Row | undefined
          return row && asQueued(row)
        }),
      sentQuestion: (channel, question) =>
        guarded(file, () => byQuestion.get(channel, question) as { chat: string; messageId: string } | undefined),
    },
  }
}
