import type { ChatMember, ChatMemberUpdated, User } from 'grammy/types'
import type { Body } from '../../book/entries.ts'
import type { Incoming, Reply } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { memberOf } from '../joining/admit.ts'
import { type Enter, resultOf } from '../joining/enter.ts'
import { ownLang } from '../joining/lang.ts'
import { CHANNEL, type Core, FARM } from './options.ts'
import { isBound, isStopped, langOf, moving, owners, stopping, unbinding } from './people.ts'

export interface UpkeepOptions extends Core {
  enter: Enter
  now(): Instant
  /** What waits for a chat is let go. */
  drop(chat: string, why: string): void
  /** Enters what no message caused. */
  note(bodies: Body[], replies: Reply[]): void
}

const isIn = (m: ChatMember): boolean => m.status === 'member' || m.status === 'administrator' || m.status === 'creator'

/** Chats that open and close to us: a group we are put into or out of, or that gets a new number; a person who stops us. */
export const makeUpkeep = (o: UpkeepOptions) => {
  const settle = (chat: string, id: string, from: string, bodies: Body[], texts: string[] = []): void => {
    const message: Incoming = { channel: CHANNEL, farm: FARM, chat, private: false, from, id, edit: '', at: o.now(), text: '' }
    const replies = texts.map(text => ({ to: chat, text }))
    o.enter(message, bodies, resultOf('answered', replies))
  }

  /** Telegram takes nothing for this chat any more. The owner hears of a person of the crew whom no word reaches. */
  const closed = (chat: string, why: string): void => {
    o.drop(chat, why)
    const book = o.book()
    if (chat.startsWith('-')) {
      if (isBound(book, chat)) o.note(unbinding(book, chat), [])
      return
    }
    if (isStopped(book, chat)) return
    const who = [...book.members.values()].find(m => m.address === chat && m.role !== 'stranger')
    const tell = owners(book).find(m => m.address !== undefined && m.address !== chat && !isStopped(book, m.address))
    const text =
      who && tell && o.say({ code: 'telegram-unreachable', data: { name: who.name ?? who.person } }, ownLang(book, tell.person) ?? 'en')
    o.note([stopping(chat, true)], text ? [{ to: tell.address!, text }] : [])
  }

  /** They write, so they hear us again. */
  const opened = (chat: string): void => {
    if (isStopped(o.book(), chat)) o.note([stopping(chat, false)], [])
  }

  /** We were put into a chat or out of it (Bot API, "my_chat_member"). Who is no member learns nothing by it. */
  const membership = (update: ChatMemberUpdated, updateId: number, name: string): void => {
    const chat = String(update.chat.id)
    const [before, now] = [isIn(update.old_chat_member), isIn(update.new_chat_member)]
    if (update.chat.type === 'private') {
      if (now) opened(chat)
      else closed(chat, 'stopped')
      return
    }
    if (before && !now) {
      closed(chat, 'put out of the group')
      return
    }
    const user: User = update.from
    const member = memberOf(o.book(), String(user.id))
    if (before || !now || !member || isBound(o.book(), chat)) return
    const code = member.role === 'owner' ? 'telegram-added' : 'telegram-added-crew'
    settle(chat, `joined-${updateId}`, member.person, [], [o.say({ code, data: { name } }, langOf(o.book(), user))])
  }

  /** A group that outgrew its number: what was bound stays bound under the new one (Bot API, "migrate_to_chat_id"). */
  const moved = (chat: string, to: string, messageId: string, from: string): void => {
    if (isBound(o.book(), chat)) settle(chat, messageId, from, moving(chat, to))
  }

  return { closed, opened, membership, moved }
}
