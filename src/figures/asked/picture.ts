import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, type Logged, piles } from '../../book/book.ts'
import type { Given } from './answer.ts'

/** A phone's screen holds no more at once. */
const MOST_EVENTS = 3
const MOST_PICTURES = 6

/**
 * The records with a picture: harm that is not patched yet first, else the latest. `events` go with `pictures`, a list of paths for each.
 * `type` narrows it to one kind of record.
 */
export const picture = (book: Book, ask: Ask, given: Given): Answer => {
  const open = new Set(piles(book).flatMap(p => p.open.map(o => o.told.id)))
  const shown: { l: Logged; paths: string[] }[] = []
  const kept = (l: Logged): string[] => {
    const ids = [l.source?.raised, l.source?.id].filter(id => id !== undefined)
    return [...new Set(ids.flatMap(id => given.pictures?.({ ...l.source!, id }) ?? []))]
  }
  for (const l of book.logged) {
    const e = l.event
    if (l.withdrawnBy !== undefined || !l.source) continue
    if (ask.pile && !('pile' in e && (e.pile === ask.pile || e.pile === 'all'))) continue
    if (ask.type && e.type !== ask.type) continue
    if ((ask.from && e.on < ask.from) || (ask.to && e.on > ask.to)) continue
    const paths = kept(l)
    if (paths.length) shown.push({ l, paths })
  }
  const current = shown.filter(s => open.has(s.l.id))
  const list = (current.length ? current : shown).slice(-MOST_EVENTS).reverse()
  let room = MOST_PICTURES
  const pictures = list.map(s => {
    const some = s.paths.slice(0, room)
    room -= some.length
    return some
  })
  return { about: 'picture', ...(ask.pile && { pile: ask.pile }), events: list.map(s => s.l.event), pictures }
}
