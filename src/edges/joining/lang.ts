import type { Book } from '../../book/book.ts'
import type { Lang } from '../../ports.ts'
import { memberOf } from './admit.ts'

const isLang = (value: unknown): value is Lang => value === 'en' || value === 'es'

/** The language that a member set for themself, or came in with; undefined where the book knows of neither. */
export const ownLang = (book: Book, person: string): Lang | undefined => {
  const set = book.settings.get(`of:${person}:lang`)
  return isLang(set) ? set : memberOf(book, person)?.lang
}

/** The farm's language: as it was set, or else its owner's. */
export const farmLang = (book: Book): Lang => {
  const set = book.settings.get('lang')
  const owner = [...book.members.values()].find(m => m.role === 'owner')
  return isLang(set) ? set : ((owner && ownLang(book, owner.person)) ?? 'en')
}
