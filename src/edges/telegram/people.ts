import type { Chat, User } from 'grammy/types'
import { type Book, type Member, setting } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Lang, Role } from '../../ports.ts'

/** The member that a Telegram user is; undefined for a stranger. */
export const memberOf = (book: Book, person: string): Member | undefined => {
  const m = book.members.get(person)
  return m && m.role !== 'stranger' ? m : undefined
}

export const hasOwner = (book: Book): boolean => [...book.members.values()].some(m => m.role === 'owner')

/** The language of the person's own Telegram, as long as nothing better is known. */
export const langOf = (user: User, member?: Member): Lang =>
  member?.lang ?? (user.language_code?.toLowerCase().startsWith('es') ? 'es' : 'en')

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
  lang: langOf(user),
  address: String(user.id),
})

/** The setting that says that a group is the farm's own. */
const groupSetting = (chat: string): string => `group:${chat}`
export const isBound = (book: Book, chat: string): boolean => setting(book, groupSetting(chat), false)

/** The lines that bind a group: it is the farm's, and the one where words for the whole crew go (the latest bound). */
export const binding = (chat: string): Body[] => [
  { kind: 'setting', name: groupSetting(chat), value: true },
  { kind: 'setting', name: 'crewChat', value: chat },
]
export const unbinding = (chat: string): Body => ({ kind: 'setting', name: groupSetting(chat), value: false })

export const isPrivate = (chat: Chat): boolean => chat.type === 'private'
