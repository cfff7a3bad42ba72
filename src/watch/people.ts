import type { Book } from '../book/book.ts'

const fold = (name: string): string => name.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
const SELF = new Set(['', 'me', 'mi', 'yo'])
const ALL = new Set(['us', 'all', 'crew', 'everyone', 'everybody', 'nosotros', 'todos'])

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
