import type { Book } from '../book/book.ts'
import { landing } from './people.ts'
import { ofPerson } from './settings.ts'

export type SummaryName = 'morning' | 'evening' | 'weekly'

/** Somebody who gets a summary. */
export interface Reader {
  /** As a due item has it. */
  to: string
  /** The one who reads it alone, and so by whose hours it comes. */
  person?: string
  /** What sets this copy's key apart; empty for the common one. */
  mark: string
}

const wants = (book: Book, name: SummaryName, person: string): unknown => book.settings.get(ofPerson(person, name))

/** Where the common copy goes: mornings and evenings to the crew, the week to the owner. */
const COMMON: Record<SummaryName, string> = { morning: 'crew', evening: 'crew', weekly: 'owner' }

/**
 * Who gets a summary: the common copy unless the owner stopped it, and a copy for each person who asked for one. One whose
 * chat would get both gets their own.
 */
export const readersOf = (book: Book, name: SummaryName): Reader[] => {
  const list: Reader[] = []
  for (const m of book.members.values()) {
    if (m.role !== 'stranger' && m.address !== undefined && wants(book, name, m.person) === true)
      list.push({ to: m.person, person: m.person, mark: `@${m.person}` })
  }
  const { person } = landing(book, COMMON[name])
  const own = person === undefined ? undefined : wants(book, name, person)
  if (book.settings.get(name) !== false && own === undefined) list.unshift({ to: COMMON[name], ...(person && { person }), mark: '' })
  return list
}
