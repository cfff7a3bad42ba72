import type { Api } from 'grammy'
import type { CallbackQuery } from 'grammy/types'
import type { Logger } from 'pino'
import type { Book, Member } from '../../book/book.ts'
import type { Incoming, Result } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { readTap } from './keyboard.ts'
import { CHANNEL, FARM, type Letter } from './options.ts'

/** A tap on a choice, and what its message said. */
export interface Tapped {
  message: Incoming
  question: string
}

/**
 * A tapped choice as a message of the person who tapped; undefined for a button that is not ours or not known any more.
 * `replyTo` is the message with the buttons. Telegram doesn't say when the tap was made, so it is dated as it comes in.
 */
export const tapOf = (query: CallbackQuery, letter: Letter | undefined, now: Instant): Tapped | undefined => {
  const tap = readTap(query.data ?? '')
  const shown = query.message
  if (!tap || !shown) return undefined
  const buttons = 'reply_markup' in shown ? (shown.reply_markup?.inline_keyboard.flat() ?? []) : []
  const text = letter?.reply.choices?.[tap.choice] ?? buttons.find(b => 'callback_data' in b && b.callback_data === query.data)?.text
  if (text === undefined) return undefined
  const question = tap.question ?? letter?.reply.question
  return {
    question: letter?.reply.text ?? ('text' in shown ? (shown.text ?? '') : ''),
    message: {
      channel: CHANNEL,
      farm: FARM,
      chat: String(shown.chat.id),
      private: shown.chat.type === 'private',
      from: String(query.from.id),
      id: `tap-${query.id}`,
      edit: '',
      replyTo: String(shown.message_id),
      at: now,
      text,
      addressed: true,
      ...(question !== undefined && { pick: { question, choice: tap.choice } }),
    },
  }
}

/** Why a tap is not for the house: its question is over, or it is another's to answer. */
export type TapRefused = 'telegram-settled' | 'not-yours' | 'refused-viewer'

/** Whether this person's tap answers an open question. Anybody of the crew may tap in a group; what changes another's record is theirs, or the owner's. */
export const tapRefused = (book: Book, { message }: Tapped, member: Member): TapRefused | undefined => {
  const q = message.pick && book.questions.get(message.pick.question)
  if (message.pick && !q) return 'telegram-settled'
  if (member.role === 'viewer') return 'refused-viewer'
  if (q?.needs !== 'owner' || member.role === 'owner') return undefined
  return q.undo?.some(id => book.byId.get(id)?.by === member.person) ? undefined : 'not-yours'
}

const quietly = async (logger: Logger, work: Promise<unknown>): Promise<void> => {
  try {
    await work
  } catch (error) {
    // Only the look of an old question is at stake. (The message of a network error names no address; the error inside it does.)
    logger.debug({ why: (error as Error).message }, 'a question could not be closed')
  }
}

/** The question is settled: its buttons go, unless the message has become another question meanwhile. */
export const dropButtons = async (api: Api, { message }: Tapped, letter: Letter | undefined, logger: Logger): Promise<void> => {
  if (letter?.reply.question !== undefined && letter.reply.question !== message.pick?.question) return
  await quietly(logger, api.editMessageReplyMarkup(message.chat, Number(message.replyTo)))
}

/** The house took the tap, and no reply of its own takes the question's place: the label then stands below the question, and the buttons go. */
export const closeQuietly = async (api: Api, { message, question }: Tapped, result: Result, logger: Logger): Promise<void> => {
  const taken = message.pick !== undefined && ['recorded', 'answered', 'asked'].includes(result.outcome)
  if (!taken || result.replies.some(r => r.to === message.chat)) return
  await quietly(logger, api.editMessageText(message.chat, Number(message.replyTo), `${question}\n${message.text}`.trim()))
}
