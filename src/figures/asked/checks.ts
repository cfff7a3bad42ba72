import type { Answer } from '../../book/asks.ts'
import { type Book, setting } from '../../book/book.ts'
import { isCovered, type PileState } from '../../book/pile.ts'
import { addDays, type Day, daysBetween } from '../../units/calendar.ts'
import type { Now } from '../farm/now.ts'
import { by } from './by.ts'
import { slots, told } from './refusal.ts'

/** Days between walks of a covered pile. "Regularly" is all that handbooks say; a week is common practice, no source. */
const CHECK_DAYS = 7

/** When a pile's cover was last walked, when next, and what is not patched. Who plans the walks (`next`) may say better when. */
export const checks = (book: Book, p: PileState, now: Now, next?: Day): Answer => {
  const from = p.lastCheck ?? p.sealedOn
  const plain = isCovered(p) && from ? addDays(from, setting(book, 'checkDays', CHECK_DAYS)) : undefined
  const due = next ?? plain
  return slots({
    about: 'checks' as const,
    pile: p.name,
    last: p.lastCheck,
    next: due,
    late: due !== undefined && due < now.day ? daysBetween(due, now.day) : undefined,
    openDamage: p.open.reduce((n, o) => n + o.left, 0),
    how: due === undefined ? [] : [told('how-checks', { days: setting(book, 'checkDays', CHECK_DAYS) }), by('formula-walks')],
  })
}
