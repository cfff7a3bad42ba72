import type { Book, Member } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Instant } from '../../units/calendar.ts'
import { inviteState, isForViewer, spend, tidyCode } from './codes.ts'

/** As long as nobody owns the book, whoever tries is told what is missing, but not for ever. */
const OWNER_TRIES = 5

/** What becomes of somebody who is no member: in, by a code; or one line, and the entries that keep it from being said again. */
export interface Entrance {
  as: 'owner' | 'crew' | 'no-owner' | 'code-spent' | 'stranger'
  bodies: Body[]
  /** The code lets its holder ask, and not record. */
  viewer?: boolean
}

/** The member that a person is; undefined for a stranger, and for one who left. */
export const memberOf = (book: Book, person: string): Member | undefined => {
  const m = book.members.get(person)
  return m && m.role !== 'stranger' ? m : undefined
}

const ownersOf = (book: Book): Member[] => [...book.members.values()].filter(m => m.role === 'owner')
export const hasOwner = (book: Book): boolean => ownersOf(book).length > 0
/** A farm keeps an owner, by whichever door they came in. */
export const isLastOwner = (book: Book, member: Member): boolean => member.role === 'owner' && ownersOf(book).length < 2

/** The one line of a stranger, where it was not said yet. */
export const turnAway = (book: Book, from: string): Entrance | undefined => once(book, 'stranger', `stranger:${from}`)

const once = (book: Book, as: Entrance['as'], key: string): Entrance | undefined =>
  book.said.has(key) ? undefined : { as, bodies: [{ kind: 'said', key }] }

/** Whether a stranger's words open the door. `code` is what they sent, tidied; undefined means silence. */
export const admit = (book: Book, from: string, code: string, ownerCode: string, now: Instant): Entrance | undefined => {
  if (!hasOwner(book)) {
    if (code !== '' && code === tidyCode(ownerCode)) return { as: 'owner', bodies: [] }
    const tries = Array.from({ length: OWNER_TRIES }, (_, i) => `owner-try:${from}:${i + 1}`)
    const next = tries.find(key => !book.said.has(key))
    return next === undefined ? undefined : { as: 'no-owner', bodies: [{ kind: 'said', key: next }] }
  }
  const state = inviteState(book, code, now)
  if (state === 'open') return { as: 'crew', bodies: [spend(code)], ...(isForViewer(book, code) && { viewer: true }) }
  // Whoever holds a code of ours was invited by somebody; they learn why it does not open.
  return state === 'spent' ? once(book, 'code-spent', `spent:${code}:${from}`) : turnAway(book, from)
}
