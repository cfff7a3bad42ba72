import { type Book, nameOf } from '../book/book.ts'
import type { Body } from '../book/entries.ts'
import type { Message } from '../book/questions.ts'
import type { Reading } from '../reading/reading.ts'
import type { Wish } from '../reading/wish/wish.ts'
import { memberNamed } from '../watch/people.ts'
import { farmLines, personLines, wishLines } from '../watch/settingLines.ts'
import { ofPerson, PERSONAL, RANGES } from '../watch/settings.ts'
import { type Context, ownRecent } from './context.ts'
import { m, nothing, type Settled } from './settled.ts'

type Set = Extract<Wish, { kind: 'set' }>

/** Several lines of one reply. */
const lines = (list: Message[]): Message => (list.length === 1 ? list[0]! : m('join', { list, by: 'line' }))

/** What cannot be set so: a number that no farm means. */
const outside = ({ sets }: Set): Message | undefined => {
  for (const { name, value } of sets) {
    const range = RANGES[name]
    if (range && typeof value === 'number' && !(value >= range[0] && value <= range[1]))
      return m('setting-outside', { said: value, min: range[0], most: range[1] })
  }
  return undefined
}

/** Whose setting it becomes: a person's, or the farm's (undefined); a refusal where the sender may not, or nobody has that name. */
const whose = (wish: Set, c: Context): { person?: string } | { refused: Message } => {
  const personal = wish.sets.every(s => PERSONAL.includes(s.name))
  const owner = c.role === 'owner'
  if (wish.who === undefined || wish.who === 'crew') {
    if (owner) return {}
    // In one's own chat "no messages after 9" can only mean oneself; "the crew's" is the crew's wherever it is said.
    const own = personal && wish.who === undefined && c.message.private
    return own ? { person: c.message.from } : { refused: m('settings-owner-only') }
  }
  if (!personal) return owner ? {} : { refused: m('settings-owner-only') }
  if (wish.who === 'me') return { person: c.message.from }
  const person = memberNamed(c.book, wish.who)
  if (person === undefined) return { refused: m('settings-nobody', { name: wish.who }) }
  return owner || person === c.message.from ? { person } : { refused: m('settings-owner-only') }
}

/** A person who never wrote in private cannot be written to there. */
const unreachable = (book: Book, wish: Set, person: string | undefined, c: Context): Message[] => {
  const gets = wish.sets.some(s => s.value === true && PERSONAL.includes(s.name))
  if (!gets || person === undefined || book.members.get(person)?.address !== undefined) return []
  if (person === c.message.from && c.message.private) return []
  return [m('settings-no-chat', { name: nameOf(book, person) })]
}

/** Under this name stands when a person last set something. */
const wishedAt = (person: string): string => `wished:${person}`
const JUST_NOW_MS = 600_000

/** "undo" right after a setting means the setting, and must not take back the load before it. */
const takenBack = (r: Reading, c: Context): Settled | undefined => {
  const at = c.book.settings.get(wishedAt(c.message.from))
  if (r.fix?.kind !== 'undo' || Object.keys(r.fix.slots).length || typeof at !== 'string') return undefined
  const own = ownRecent(c, 1)[0]
  const fresh = Date.parse(c.message.at) - Date.parse(at) <= JUST_NOW_MS && (!own || own.at <= at)
  return fresh ? nothing('answered', m('settings-say-anew')) : undefined
}

/** Settings told in a message: the owner's for the farm, everybody's own for themselves; listed for whoever asks. */
export const wished = (r: Reading, c: Context): Settled | undefined => {
  const wish = r.wish
  if (!wish) return takenBack(r, c)
  const { book } = c
  if (wish.kind === 'list') return nothing('answered', lines([...farmLines(book), ...personLines(book, c.message.from, c.message.from)]))
  const whom = whose(wish, c)
  if ('refused' in whom) return nothing('refused', whom.refused)
  const wrong = outside(wish)
  if (wrong) return nothing('refused', wrong)
  const { person } = whom
  const entries = wish.sets.map(
    ({ name, value }): Body => ({ kind: 'setting', name: person === undefined ? name : ofPerson(person, name), value }),
  )
  const after: Book = { ...book, settings: new Map(book.settings) }
  for (const e of entries) if (e.kind === 'setting') after.settings.set(e.name, e.value)
  entries.push({ kind: 'setting', name: wishedAt(c.message.from), value: c.message.at })
  const names = wish.sets.map(s => s.name)
  return {
    ...nothing('answered', lines([...wishLines(after, names, person, c.message.from), ...unreachable(book, wish, person, c)])),
    entries,
  }
}
