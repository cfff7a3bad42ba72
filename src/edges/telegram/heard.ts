import type { Message, MessageEntity, Update, User, UserFromGetMe } from 'grammy/types'
import type { Incoming } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { CHANNEL, FARM, type Letter } from './options.ts'

/** A message as the house takes it, with what only this channel needs to know. */
export interface Heard {
  message: Incoming
  user: User
  /** A command for us, without slash; empty where there is none. */
  command: string
  /** What follows the command. */
  rest: string
  /** Something that carries no words: a voice note, a picture without caption, a place. */
  wordless: boolean
  /** Pictures sent together share it; only the first carries the caption. */
  album?: string
}

/** Finds the reply that one of our own messages was. */
export type Sent = (chat: string, messageId: string) => Letter | undefined

const WORDLESS = [
  'voice',
  'audio',
  'video',
  'video_note',
  'sticker',
  'animation',
  'document',
  'photo',
  'location',
  'contact',
  'poll',
  'dice',
] as const

const instant = (seconds: number): Instant => new Date(seconds * 1000).toISOString()

/** Cuts the mentions of us out of a text. Entity offsets count UTF-16 units, as JavaScript does. */
const withoutMention = (text: string, entities: MessageEntity[], me: UserFromGetMe): { text: string; named: boolean } => {
  const ours = entities.filter(
    e =>
      (e.type === 'mention' && text.slice(e.offset, e.offset + e.length).toLowerCase() === `@${me.username.toLowerCase()}`) ||
      (e.type === 'text_mention' && e.user.id === me.id),
  )
  let rest = text
  for (const e of ours.toReversed()) rest = rest.slice(0, e.offset) + rest.slice(e.offset + e.length)
  const cut = ours.length ? rest.replace(/[^\S\n]{2,}/g, ' ').replace(/^[\s,;:]+/, '') : rest
  return { text: cut.trim(), named: ours.length > 0 }
}

/** A command at the start: `/left@ourname hill`. `other` where it is meant for another bot. */
const commandIn = (text: string, entities: MessageEntity[], me: UserFromGetMe): { name: string; rest: string } | 'other' | undefined => {
  const e = entities.find(x => x.type === 'bot_command' && x.offset === 0)
  if (!e) return undefined
  const [name = '', target] = text.slice(1, e.length).split('@')
  if (target !== undefined && target.toLowerCase() !== me.username.toLowerCase()) return 'other'
  return { name: name.toLowerCase(), rest: text.slice(e.length).trim() }
}

/** What a reply refers to: the crew's own message, or, where it is under one of ours, the message that ours belonged to. */
const referred = (msg: Message, me: UserFromGetMe, sent: Sent): string | undefined => {
  const target = msg.reply_to_message
  if (!target) return undefined
  if (target.from?.id !== me.id) return String(target.message_id)
  const letter = sent(String(msg.chat.id), String(target.message_id))
  return letter?.reply.under ?? letter?.cause
}

/** The commands that are the channel's own. Any other is a way to say words: `/days_left hill` is "days left hill". */
export const OWN_COMMANDS = ['start', 'invite', 'here']

/**
 * A message or its edit as the house takes it; undefined for what is no business of ours: service notes, other bots,
 * commands for another bot, posts in the name of a channel.
 */
export const hear = (
  update: Pick<Update, 'update_id' | 'message' | 'edited_message'>,
  me: UserFromGetMe,
  sent: Sent,
): Heard | undefined => {
  const msg = update.message ?? update.edited_message
  if (!msg?.from || msg.from.is_bot || msg.sender_chat) return undefined
  const edited = update.edited_message !== undefined
  const raw = msg.text ?? msg.caption ?? ''
  const entities = msg.entities ?? msg.caption_entities ?? []
  const command = commandIn(raw, entities, me)
  if (command === 'other') return undefined
  const wordless = raw.trim() === '' && WORDLESS.some(k => k in msg)
  if (raw.trim() === '' && !wordless) return undefined
  const own = command !== undefined && OWN_COMMANDS.includes(command.name)
  const { text, named } = withoutMention(raw, entities, me)
  const replyTo = referred(msg, me, sent)
  const addressed = named || command !== undefined || msg.reply_to_message?.from?.id === me.id
  const id = String(msg.message_id)
  return {
    user: msg.from,
    command: own ? command.name : '',
    rest: own ? command.rest : '',
    wordless,
    ...(msg.media_group_id !== undefined && { album: msg.media_group_id }),
    message: {
      channel: CHANNEL,
      farm: FARM,
      chat: String(msg.chat.id),
      private: msg.chat.type === 'private',
      from: String(msg.from.id),
      id,
      // An edit keeps the message's number; the update's own number tells two edits of one second apart.
      edit: edited ? `${msg.edit_date ?? 0}-${update.update_id}` : '',
      ...(edited && { edits: id }),
      ...(replyTo !== undefined && { replyTo }),
      at: instant(msg.date),
      text: command && !own ? `${command.name.replaceAll('_', ' ')} ${command.rest}`.trim() : text,
      ...(msg.photo && { photo: true }),
      ...(addressed && { addressed: true }),
    },
  }
}
