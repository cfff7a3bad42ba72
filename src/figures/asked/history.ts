import type { Answer, Ask } from '../../book/asks.ts'
import type { Book, Logged } from '../../book/book.ts'
import type { Event } from '../../book/events.ts'

const about = (e: Event, pile: string): boolean =>
  (e.type === 'pile' && e.name === pile) ||
  ('pile' in e && e.pile === pile) ||
  (e.type === 'shift' && e.toPile === pile) ||
  (e.type === 'check' && e.pile === 'all')

const asked =
  (ask: Ask) =>
  (l: Logged): boolean => {
    const e = l.event
    if (l.withdrawnBy !== undefined) return false
    if (ask.pile && !about(e, ask.pile)) return false
    if (ask.type && e.type !== ask.type) return false
    if (ask.by && l.by !== ask.by && e.by !== ask.by) return false
    if (ask.crop && !('crop' in e && e.crop === ask.crop)) return false
    if (ask.item && !('item' in e && e.item === ask.item) && !('material' in e && e.material === ask.item)) return false
    return (!ask.from || e.on >= ask.from) && (!ask.to || e.on <= ask.to)
  }

/** An event as the log knows it: who told it stands in `by` even where the event does not say so. */
const withTeller = (l: Logged): Event => (l.event.by === undefined && l.by ? { ...l.event, by: l.by } : l.event)

const found = (book: Book, ask: Ask): Logged[] =>
  book.logged.filter(asked(ask)).sort((a, b) => (a.event.on < b.event.on ? -1 : a.event.on > b.event.on ? 1 : a.n - b.n))

/** What happened, in the order it happened: of a pile, a kind, a person, between two days. */
export const history = (book: Book, ask: Ask): Answer => ({
  about: 'history',
  ...(ask.pile && { pile: ask.pile }),
  events: found(book, ask).map(withTeller),
})

/** Who did it: the last events of the kind asked about; of all kinds, the very last told. */
export const who = (book: Book, ask: Ask): Answer => {
  const all = found(book, ask)
  // "who covered north": what went on, not what was rolled back
  const on = ask.type === 'cover' ? all.filter(l => l.event.type === 'cover' && l.event.change === 'on') : []
  const list = on.length ? on : all
  const last = ask.type || ask.from || ask.to ? list.slice(-WHO_MOST) : [...list].sort((a, b) => a.n - b.n).slice(-1)
  return { about: 'who', ...(ask.pile && { pile: ask.pile }), events: last.map(withTeller) }
}
const WHO_MOST = 5
