import type { Book, Member } from '../book/book.ts'
import { settingOf } from './settings.ts'

export type Lang = NonNullable<Member['lang']>

const fold = (name: string): string => name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
const SELF = new Set(['', 'me', 'mi', 'yo'])
const ALL = new Set(['us', 'all', 'crew', 'the crew', 'everyone', 'everybody', 'nosotros', 'todos', 'la cuadrilla'])

/** The person of that name who still belongs to the farm. */
export const memberNamed = (book: Book, name: string): string | undefined => {
  for (const m of book.members.values()) {
    if (m.role !== 'stranger' && (fold(m.person) === fold(name) || (m.name && fold(m.name) === fold(name)))) return m.person
  }
  return undefined
}

/** Whom a word meant for `who` reaches; one who is not, or no longer, of the farm is stood in for by who asked, else by the owner. */
export const reach = (book: Book, who: string | undefined, by: string): string => {
  const name = fold(who ?? '')
  if (ALL.has(name)) return 'crew'
  const meant = SELF.has(name) ? undefined : memberNamed(book, name)
  return meant ?? (book.members.get(by)?.role === 'stranger' ? 'owner' : by)
}

export const ownerOf = (book: Book): Member | undefined => [...book.members.values()].find(x => x.role === 'owner')
export const crewChat = (book: Book): string | undefined => {
  const chat = book.settings.get('crewChat')
  return typeof chat === 'string' ? chat : undefined
}

/** Where a word lands. */
export interface Landing {
  /** The chat; undefined where the farm has neither a common chat nor anybody to write to. */
  chat?: string
  /** The one who reads it there, where it is a chat of one person. */
  person?: string
  lang: Lang
}

const langOf = (book: Book, m: Member | undefined): Lang =>
  settingOf<string>(book, 'lang', m?.lang ?? 'en', m?.person ?? '') === 'es' ? 'es' : 'en'

/** The mark of a word that goes back to a chat, whoever is in it. */
export const CHAT = 'chat:'

/** The chat that `to` (`owner`, `crew`, a person, `chat:…`) means, who reads it there, and the language it is said in. */
export const landing = (book: Book, to: string): Landing => {
  const owner = ownerOf(book)
  const crew = crewChat(book)
  if (to.startsWith(CHAT)) {
    const chat = to.slice(CHAT.length)
    const person = [...book.members.values()].find(m => m.address === chat)
    return { chat, ...(person && { person: person.person }), lang: person ? langOf(book, person) : groupLang(book, owner) }
  }
  if (to === 'crew' && crew !== undefined) return { chat: crew, lang: groupLang(book, owner) }
  const member = to === 'owner' || to === 'crew' ? owner : book.members.get(to)
  if (member?.address !== undefined) return { chat: member.address, person: member.person, lang: langOf(book, member) }
  if (crew !== undefined) return { chat: crew, lang: groupLang(book, owner) }
  const last = owner?.address ?? owner?.person
  return { ...(last !== undefined && { chat: last }), ...(owner && { person: owner.person }), lang: langOf(book, owner) }
}

const groupLang = (book: Book, owner: Member | undefined): Lang => {
  const set = book.settings.get('lang')
  return set === 'es' || set === 'en' ? set : langOf(book, owner)
}
