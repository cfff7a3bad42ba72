import type { Book } from './book/book.ts'
import { ENTRY_VERSION } from './book/entries.ts'
import type { Desks } from './desk.ts'
import type { CoreParts } from './pipeline.ts'
import type { Due, Lang, Reply } from './ports.ts'
import { type Instant, localTime } from './units/calendar.ts'
import { due } from './watch/due.ts'
import { figuresFrom } from './watch/figures.ts'
import type { DueItem } from './watch/item.ts'

/** The chat that an item of the watch goes to, and the language it is said in. */
const addressOf = (book: Book, item: DueItem): { to?: string; lang: Lang } => {
  const owner = [...book.members.values()].find(x => x.role === 'owner')
  const member = item.to === 'owner' ? owner : book.members.get(item.to)
  const crew = book.settings.get('crewChat')
  const to =
    item.to === 'crew' && typeof crew === 'string'
      ? crew
      : (member?.address ?? (typeof crew === 'string' ? crew : (owner?.address ?? owner?.person)))
  return { to, lang: (item.to === 'crew' ? owner?.lang : member?.lang) ?? 'en' }
}

/** The clock's way through the house: due, append, say. What was said is an entry, so that nothing is said twice. */
export const makeTick =
  ({ log, zone, say, answer }: CoreParts, desks: Desks) =>
  (farm: string, channel: string, at: Instant): Due[] => {
    const { book } = desks.of(farm)
    const { day } = localTime(at, zone)
    const out: Due[] = []
    for (const item of due(book, { at, zone }, figuresFrom(book, { day, at, zone }, answer))) {
      const { to, lang } = addressOf(book, item)
      const text = [item.message].flat().map(x => say(x, lang))
      const replies: Reply[] = to === undefined ? [] : [{ to, text: text.join('\n') }]
      const entries = [{ v: ENTRY_VERSION, n: book.last + 1, at, by: 'clock', body: { kind: 'said' as const, key: item.key } }]
      desks.keep(farm, entries, () => log.append(farm, channel, entries, replies))
      if (replies.length) out.push({ due: item.at, farm, replies })
    }
    return out
  }
