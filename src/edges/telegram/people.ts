import type { User } from 'grammy/types'
import { type Book, type Member, setting } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Lang, Role } from '../../ports.ts'
import { ownLang } from '../joining/lang.ts'

/** Everybody of this farm that Telegram knows: a Telegram user is a number. */
export const membersOf = (book: Book): Member[] => [...book.members.values()].filter(m => m.role !== 'stranger' && /^\d+$/.test(m.person))

export const owners = (book: Book): Member[] => membersOf(book).filter(m => m.role === 'owner')

const fold = (name: string): string => name.normalize('NFD').replace(/\p{M}/gu, '').trim().toLowerCase()
/** The member whose name that is, or who goes by it alone. */
export const memberNamed = (book: Book, name: string): Member | undefined => {
  const all = membersOf(book)
  const like = all.filter(m => fold(m.name ?? '').startsWith(`${fold(name)} `))
  return all.find(m => fold(m.name ?? m.person) === fold(name) || m.person === name.trim()) ?? (like.length === 1 ? like[0] : undefined)
}

const phoneLang = (user: User): Lang => (user.language_code?.toLowerCase().startsWith('es') ? 'es' : 'en')
/** The language of the person's own Telegram, as long as nothing better is known. */
export const langOf = (book: Book, user: User): Lang => ownLang(book, String(user.id)) ?? phoneLang(user)

/** A first name, with the last where the farm has that first name already. */
const nameFor = (book: Book, user: User): string => {
  const first = user.first_name.trim() || user.username || String(user.id)
  const taken = [...book.members.values()].some(m => m.person !== String(user.id) && m.name?.toLowerCase() === first.toLowerCase())
  return (taken && user.last_name ? `${first} ${user.last_name}` : first).slice(0, 60)
}

/** The line that makes a user a member. A user's private chat has the user's own number (Bot API, "Chat"). */
export const joining = (book: Book, user: User, role: Role): Body & { kind: 'member'; name: string } => ({
  kind: 'member',
  person: String(user.id),
  role,
  name: nameFor(book, user),
  lang: phoneLang(user),
  address: String(user.id),
})

/** The setting that says that a group is the farm's own. */
const groupSetting = (chat: string): string => `group:${chat}`
export const isBound = (book: Book, chat: string): boolean => setting(book, groupSetting(chat), false)
const boundGroups = (book: Book): string[] =>
  [...book.settings].filter(([name, value]) => name.startsWith('group:') && value === true).map(([name]) => name.slice('group:'.length))

/** The lines that bind a group: it is the farm's, and the one where words for the whole crew go (the latest bound). */
export const binding = (chat: string): Body[] => [
  { kind: 'setting', name: groupSetting(chat), value: true },
  { kind: 'setting', name: 'crewChat', value: chat },
]
/** The lines that let a group go; words for the crew go to another that is bound, where there is one. */
export const unbinding = (book: Book, chat: string): Body[] => [
  { kind: 'setting', name: groupSetting(chat), value: false },
  ...boundGroups(book)
    .filter(g => g !== chat)
    .slice(-1)
    .map((g): Body => ({ kind: 'setting', name: 'crewChat', value: g })),
]

/** A group that outgrew its number, and the number it has now. */
const movedSetting = (chat: string): string => `moved:${chat}`
export const moving = (from: string, to: string): Body[] => [
  { kind: 'setting', name: groupSetting(from), value: false },
  { kind: 'setting', name: movedSetting(from), value: to },
  ...binding(to),
]
export const nowAt = (book: Book, chat: string): string => setting(book, movedSetting(chat), chat)

/** Said of a private chat that takes nothing from us: its owner stopped us. */
const stoppedSetting = (chat: string): string => `stopped:${chat}`
export const isStopped = (book: Book, chat: string): boolean => setting(book, stoppedSetting(chat), false)
export const stopping = (chat: string, stopped: boolean): Body => ({ kind: 'setting', name: stoppedSetting(chat), value: stopped })

/** Whether a word of the farm may go to a chat: a bound group, or a member who has not stopped us. */
export const isOurs = (book: Book, chat: string): boolean =>
  chat.startsWith('-')
    ? isBound(book, chat)
    : /^\d+$/.test(chat) &&
      !isStopped(book, chat) &&
      [...book.members.values()].some(m => m.role !== 'stranger' && (m.address ?? m.person) === chat)
