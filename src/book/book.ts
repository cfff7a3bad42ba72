import type { Lang, Role } from '../ports.ts'
import type { Day } from '../units/calendar.ts'
import type { Entry, Source } from './entries.ts'
import type { Event, EventOf, EventType } from './events.ts'
import { addToPile, newPile, type PileState, type Told } from './pile.ts'
import type { Question } from './questions.ts'

export interface Member {
  person: string
  role: Role
  name?: string
  lang?: Lang
  /** Where a private word reaches them. */
  address?: string
}

/** One event as the log has it: in force, or withdrawn. */
export interface Logged extends Told {
  source?: Source
  /** Entry number of its withdrawal. */
  withdrawnBy?: number
}

/**
 * The book of one farm: the fold of its log. It is only ever changed by `apply`; views (a pile, the stock) are worked
 * out when asked for and kept until an event touches them.
 */
export interface Book {
  last: number
  logged: Logged[]
  byId: Map<string, Logged>
  bySource: Map<string, Logged[]>
  members: Map<string, Member>
  settings: Map<string, string | number | boolean>
  questions: Map<string, Question>
  said: Set<string>
  byPile: Map<string, Logged[]>
  byType: Map<EventType, Logged[]>
  views: Map<string, PileState>
  /** Counts every change of the farm's own names and words, so that an index of them knows when it is stale. */
  naming: number
  /** Pile names and aliases to the pile's own name. */
  names: Map<string, string> | undefined
}

export const newBook = (): Book => ({
  last: 0,
  logged: [],
  byId: new Map(),
  bySource: new Map(),
  members: new Map(),
  settings: new Map(),
  questions: new Map(),
  said: new Set(),
  byPile: new Map(),
  byType: new Map(),
  views: new Map(),
  naming: 0,
  names: undefined,
})

export const sourceKey = (s: Pick<Source, 'channel' | 'chat' | 'id'>): string => `${s.channel}\n${s.chat}\n${s.id}`

const push = <K>(map: Map<K, Logged[]>, key: K, value: Logged): void => {
  const list = map.get(key)
  if (list) list.push(value)
  else map.set(key, [value])
}

/** The piles that an event belongs to. `all` checks belong to every pile and are added when a view is built. */
const pilesOf = (e: Event): string[] => {
  if (e.type === 'pile') return [e.name]
  const list: string[] = []
  if ('pile' in e && e.pile) list.push(e.pile)
  if (e.type === 'shift') list.push(e.toPile)
  return list
}

/** The day of the last event in each kept view, so that a later one can be added without working the pile out anew. */
const lastDays = new WeakMap<PileState, Day>()

/** Takes a new event into the views that are kept: at the end where it is the latest, else they are worked out anew. */
const grow = (book: Book, l: Logged): void => {
  const e = l.event
  if (e.type === 'pile' || e.type === 'box' || pilesOf(e).includes('all')) {
    touch(book, e)
    return
  }
  for (const name of pilesOf(e)) {
    const view = book.views.get(name)
    if (!view) continue
    if (e.on >= (lastDays.get(view) ?? '9')) {
      addToPile(view, l, e.type === 'shift' && e.toPile === name ? 'to' : 'from')
      lastDays.set(view, e.on)
    } else book.views.delete(name)
  }
}

const touch = (book: Book, e: Event): void => {
  for (const p of pilesOf(e)) {
    if (p === 'all') book.views.clear()
    else book.views.delete(p)
  }
  if (e.type === 'pile') book.names = undefined
  if (e.type === 'pile' || e.type === 'box') book.naming++
}

/** Takes one entry into the book. Entries must come in the order of the log. */
export const apply = (book: Book, entry: Entry): void => {
  book.last = entry.n
  const b = entry.body
  switch (b.kind) {
    case 'event': {
      const l: Logged = { id: b.id, n: entry.n, at: entry.at, by: entry.by, source: entry.source, event: b.event }
      book.logged.push(l)
      book.byId.set(b.id, l)
      if (entry.source) push(book.bySource, sourceKey(entry.source), l)
      if (entry.source?.raised !== undefined) push(book.bySource, sourceKey({ ...entry.source, id: entry.source.raised }), l)
      for (const p of pilesOf(b.event)) push(book.byPile, p, l)
      push(book.byType, b.event.type, l)
      grow(book, l)
      break
    }
    case 'withdraw': {
      const l = book.byId.get(b.id)
      if (l && l.withdrawnBy === undefined) {
        l.withdrawnBy = entry.n
        touch(book, l.event)
      }
      break
    }
    case 'ask':
      book.questions.set(b.question.id, b.question)
      break
    case 'close':
      book.questions.delete(b.question)
      break
    case 'member': {
      const { kind: _, ...m } = b
      book.members.set(b.person, { ...book.members.get(b.person), ...m })
      book.naming++
      break
    }
    case 'setting':
      book.settings.set(b.name, b.value)
      if (b.name.startsWith('word:')) book.naming++
      break
    case 'said':
      book.said.add(b.key)
      break
  }
}

export const foldBook = (entries: Iterable<Entry>): Book => {
  const book = newBook()
  for (const e of entries) apply(book, e)
  return book
}

const inForce = (l: Logged): boolean => l.withdrawnBy === undefined
/** Order of happening: by day, then as told. */
const byDay = (a: Logged, b: Logged): number => (a.event.on < b.event.on ? -1 : a.event.on > b.event.on ? 1 : a.n - b.n)

/** Events of one type in force, in the order they happened. */
export const eventsOf = <T extends EventType>(book: Book, type: T): Told<T>[] =>
  (book.byType.get(type) ?? []).filter(inForce).sort(byDay) as unknown as Told<T>[]

/** The state of one pile by its own name; undefined where no such pile is in the book. */
export const pileState = (book: Book, name: string): PileState | undefined => {
  const known = book.views.get(name)
  if (known) return known
  if (![...pileNames(book).values()].includes(name)) return undefined
  const p = newPile(name)
  const events = (book.byPile.get(name) ?? []).filter(inForce)
  const walks = (book.byPile.get('all') ?? []).filter(inForce)
  const all = [...events, ...walks].sort(byDay)
  for (const l of all) addToPile(p, l, l.event.type === 'shift' && l.event.toPile === name ? 'to' : 'from')
  lastDays.set(p, all.at(-1)?.event.on ?? '')
  book.views.set(name, p)
  return p
}

/** All piles, in the order they were begun. */
export const piles = (book: Book): PileState[] => [...new Set(pileNames(book).values())].map(n => pileState(book, n)!)

/** Every name and alias in use, lower case, to the pile's own name. */
export const pileNames = (book: Book): Map<string, string> => {
  if (!book.names) {
    const names = new Map<string, string>()
    for (const t of eventsOf(book, 'pile')) {
      names.set(t.event.name, t.event.name)
      for (const a of t.event.alsoCalled ?? []) names.set(a.toLowerCase(), t.event.name)
    }
    book.names = names
  }
  return book.names
}

/** Boxes by name, as last said. */
export const boxes = (book: Book): Map<string, EventOf<'box'>> => new Map(eventsOf(book, 'box').map(t => [t.event.name, t.event]))

/** Events in force that one message recorded. */
export const eventsFrom = (book: Book, source: Pick<Source, 'channel' | 'chat' | 'id'>): Logged[] =>
  (book.bySource.get(sourceKey(source)) ?? []).filter(inForce)

/** Events in force between two days, inclusive. */
export const eventsBetween = (book: Book, from: Day, to: Day): Logged[] =>
  book.logged.filter(l => inForce(l) && l.event.on >= from && l.event.on <= to)

export const setting = <T extends string | number | boolean>(book: Book, name: string, fallback: T): T =>
  (book.settings.get(name) as T | undefined) ?? fallback

/** What the crew calls a person; the channel's own mark where no name is known. */
export const nameOf = (book: Book, person: string): string => book.members.get(person)?.name ?? person

/** The farm's own words, to what they mean, in the order they were taught. */
export const lessons = (book: Book): Map<string, string> => {
  const out = new Map<string, string>()
  for (const [name, value] of book.settings)
    if (name.startsWith('word:') && typeof value === 'string' && value !== '') out.set(name.slice(5), value)
  return out
}

/** Whose record it is: an answer given by another still belongs to the one who was asked. */
export const personOf = (book: Book, by: string | undefined, from: string): string => {
  if (by === undefined || by === from || by === nameOf(book, from)) return from
  return [...book.members.values()].find(m => m.name === by)?.person ?? by
}
