import type { Book } from '../book/book.ts'
import { nameOf } from '../book/book.ts'
import type { Message, Question } from '../book/questions.ts'
import type { Instant } from '../units/calendar.ts'
import { hourOf, type Moment } from './hours.ts'
import { type DueItem, TAPPED } from './item.ts'
import { CHAT, landing } from './people.ts'

/** A question nobody answered is let go after a day and a half, ms: by then nobody knows what "8" was an answer to. */
export const LAPSES_MS = 36 * 3_600_000
/** Longer than this a quote is no reminder of anything, characters. */
const QUOTED = 60

/** Told again since, in words that were understood: the old question needs no word. */
const toldAgain = (book: Book, q: Question): boolean => {
  const d = q.drafts[0]
  if (!d) return true
  return (book.byType.get(d.type) ?? []).some(
    l =>
      l.withdrawnBy === undefined &&
      l.at > q.at &&
      (l.by === q.to || l.event.by === nameOf(book, q.to)) &&
      (d.slots.pile === undefined || !('pile' in l.event) || l.event.pile === d.slots.pile),
  )
}

const quote = (q: Question): string => {
  const said = String(q.drafts[0]?.slots.said ?? '')
    .replace(/\s+/g, ' ')
    .trim()
  return said.length > QUOTED ? `${said.slice(0, QUOTED - 1)}…` : said
}

export interface Lapse {
  chat: string
  /** Ids of the questions that end. */
  ids: string[]
  /** One line, or none where nothing is lost. */
  message?: Message
}

/** Questions let go by a morning hour, by the chat they stood in; a reminder's buttons go without a word. */
export const lapsed = (book: Book, morning: Instant): Lapse[] => {
  const chats = new Map<string, Question[]>()
  for (const q of book.questions.values()) {
    if (Date.parse(morning) - Date.parse(q.at) >= LAPSES_MS) chats.set(q.chat, [...(chats.get(q.chat) ?? []), q])
  }
  return [...chats].map(([chat, list]) => {
    const lost = list.filter(q => q.slot !== TAPPED && !toldAgain(book, q) && quote(q) !== '')
    const ids = list.map(q => q.id)
    const first = lost[0]
    return first
      ? { chat, ids, message: { code: lost.length > 1 ? 'lapsed-many' : 'lapsed', data: { what: quote(first), count: lost.length } } }
      : { chat, ids }
  })
}

/** One line a chat, at the morning hour; none where the morning summary goes there and takes it along. */
export const lapsesDue = (book: Book, m: Moment, taken: ReadonlySet<string>): DueItem[] => {
  const at = hourOf(m.day, m.hours.morning, m.zone)
  if (at > m.at) return []
  return lapsed(book, at).flatMap(({ chat, ids, message }) => {
    const to = `${CHAT}${chat}`
    if (taken.has(chat) || !message || landing(book, to).chat === undefined) return []
    return [{ key: `lapsed:${ids.map(encodeURIComponent).join(',')}`, at, to, message, lapses: ids }]
  })
}
