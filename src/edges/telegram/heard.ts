import type { Message, MessageEntity, MessageOrigin, Update, User, UserFromGetMe } from 'grammy/types'
import type { Incoming, Lang } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { type Cargo, cargoOf } from './cargo.ts'
import { type CommandId, commandNamed, wordsOf } from './commands.ts'
import { CHANNEL, FARM, type Letter } from './options.ts'

/** A message as the house takes it, with what only this channel needs to know. */
export interface Heard {
  message: Incoming
  user: User
  /** A command that the channel itself carries out. */
  command?: CommandId
  /** The language of its name. */
  commandLang?: Lang
  /** What follows the command. */
  rest: string
  cargo: Cargo
  /** It has no words: a voice note, a picture without caption, a place. */
  wordless: boolean
  /** Pictures sent together share it; only one of them carries the caption. */
  album?: string
  /** Somebody's words passed on: who said them, where Telegram tells that. */
  forward?: { person?: string }
  /** A group: Telegram shows us all that is said there, not only what is meant for us. */
  hearsAll?: boolean
}

/** Finds the reply that one of our own messages was. */
export type Sent = (chat: string, messageId: string) => Letter | undefined

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

/** A forward is the word of the crew, or of nobody: what a channel, a group or a bot wrote (we ourselves too) is no report. */
const isReport = (origin: MessageOrigin): boolean => (origin.type === 'user' ? !origin.sender_user.is_bot : origin.type === 'hidden_user')

/**
 * A message or its edit as the house takes it; undefined for what is no business of ours: service notes, other bots,
 * commands for another bot, posts in the name of a channel, a live place that moves.
 */
export const hear = (
  update: Pick<Update, 'update_id' | 'message' | 'edited_message'>,
  me: UserFromGetMe,
  sent: Sent,
): Heard | undefined => {
  const msg = update.message ?? update.edited_message
  if (!msg?.from || msg.from.is_bot || msg.sender_chat) return undefined
  const origin = msg.forward_origin
  if (origin && !isReport(origin)) return undefined
  const edited = update.edited_message !== undefined
  const raw = msg.text ?? msg.caption ?? ''
  const entities = msg.entities ?? msg.caption_entities ?? []
  // A command that is passed on was meant elsewhere.
  const command = origin ? undefined : commandIn(raw, entities, me)
  if (command === 'other') return undefined
  const cargo = cargoOf(msg)
  const wordless = raw.trim() === ''
  if (wordless && (cargo.kind === undefined || edited)) return undefined
  const known = command && commandNamed(command.name)
  const says = known && wordsOf(known.id, known.lang, command.rest)
  const own = known !== undefined && says === undefined
  const { text, named } = withoutMention(raw, entities, me)
  const replyTo = referred(msg, me, sent)
  const addressed = named || command !== undefined || msg.reply_to_message?.from?.id === me.id
  const id = String(msg.message_id)
  return {
    user: msg.from,
    ...(own && { command: known.id, commandLang: known.lang }),
    rest: own ? command!.rest : '',
    cargo,
    wordless,
    ...(msg.media_group_id !== undefined && { album: msg.media_group_id }),
    ...(origin && { forward: origin.type === 'user' ? { person: String(origin.sender_user.id) } : {} }),
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
      // What was passed on was said when it was said.
      at: instant(origin?.date ?? msg.date),
      text: says ?? (command && !own ? `${command.name.replaceAll('_', ' ')} ${command.rest}`.trim() : text),
      ...(msg.photo && { photo: true }),
      ...(addressed && { addressed: true }),
    },
  }
}
