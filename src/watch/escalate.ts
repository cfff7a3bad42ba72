import { type Book, setting } from '../book/book.ts'
import type { Message } from '../book/questions.ts'
import { addDays, type Day } from '../units/calendar.ts'
import { hourOf, type Moment } from './hours.ts'
import type { DueItem, Offer } from './item.ts'

/** A thing left undone that is asked after: first the crew, once more, then the owner, and never again. */
export interface Task {
  /** Stable for as long as it is the same undone thing. */
  stem: string
  /** First day on which it is asked after. */
  since: Day
  /** Days until the next rung. */
  step: number
  urgency: number
  line: Message
  /** The piles it is about, where one tap can settle it. */
  piles?: string[]
}

export type Rung = 'ask' | 'again' | 'owner'

/** A due item that counts as a nudge; the more urgent go first where the owner allows few a day. */
export interface Nudge extends DueItem {
  urgency: number
}
export const isNudge = (i: DueItem): i is Nudge => 'urgency' in i

/**
 * A nudge's key is `kind:stem,stem#day`: one message may ask after several things, and the day on which it was said is
 * what the next rung and the day's limit are counted from.
 */
const keyOf = (kind: string, stems: string[], day: Day): string => `${kind}:${stems.map(encodeURIComponent).join(',')}#${day}`

interface Asked {
  size: number
  on: Map<string, Day>
  perDay: Map<Day, number>
}
/** What the keys in the book add up to; worked out again only when one was added. */
const known = new WeakMap<Book, Asked>()
const asked = (book: Book): Asked => {
  const before = known.get(book)
  if (before?.size === book.said.size) return before
  const now: Asked = { size: book.said.size, on: new Map(), perDay: new Map() }
  for (const key of book.said) {
    const m = /^([a-z-]+):(.*)#(\d{4}-\d{2}-\d{2})$/.exec(key)
    if (!m) continue
    const [, kind, stems, day] = m as unknown as [string, string, string, Day]
    for (const stem of stems.split(',')) now.on.set(`${kind}:${stem}`, day)
    now.perDay.set(day, (now.perDay.get(day) ?? 0) + 1)
  }
  known.set(book, now)
  return now
}

export const askedOn = (book: Book, kind: string, stem: string): Day | undefined =>
  asked(book).on.get(`${kind}:${encodeURIComponent(stem)}`)
export const nudgesOn = (book: Book, day: Day): number => asked(book).perDay.get(day) ?? 0

/** The next rung of a task and its day; undefined when all were said. A rung said counts from the day it was said on, not from its plan. */
const nextRung = (book: Book, name: string, task: Task, rungs: Rung[]): { rung: Rung; day: Day } | undefined => {
  let day = task.since
  for (const rung of rungs) {
    const done = askedOn(book, `${name}-${rung}`, task.stem)
    if (done === undefined) return { rung, day }
    day = addDays(done, task.step)
  }
  return undefined
}

/** What settles the tasks of a kind. */
const DID: Record<string, Offer['did']> = { repair: 'patched', check: 'walked', round: 'walked' }

/** Tasks of one kind as nudges: those on the same rung share one message, its head `<name>-<rung>` and a line each. */
export const climb = (book: Book, m: Moment, name: string, tasks: Task[], rungs: Rung[]): Nudge[] => {
  const at = hourOf(m.day, m.hours.ask, m.zone)
  if (at > m.at) return []
  const groups = new Map<Rung, Task[]>()
  for (const task of tasks) {
    const next = nextRung(book, name, task, rungs)
    if (next && next.day <= m.day) groups.set(next.rung, [...(groups.get(next.rung) ?? []), task])
  }
  return [...groups].map(([rung, list]) => {
    const sorted = list.sort((a, b) => b.urgency - a.urgency || (a.stem < b.stem ? -1 : 1))
    const stems = sorted.map(t => t.stem)
    const did = DID[name]
    const about = sorted.flatMap(t => t.piles ?? [])
    return {
      key: keyOf(`${name}-${rung}`, stems, m.day),
      at,
      to: rung === 'owner' ? 'owner' : 'crew',
      urgency: sorted[0]!.urgency,
      message: [{ code: `${name}-${rung}`, data: { count: sorted.length } }, ...sorted.map(t => t.line)],
      ...(did && about.length && { offer: { did, piles: about } }),
    }
  })
}

/** Default of the owner's setting `nudgesPerDay`. Common practice, no source. */
export const NUDGES_PER_DAY = 3

/** Keeps the most urgent nudges within what is left of the day's number; the rest come up again tomorrow. */
export const withinLimit = (book: Book, m: Moment, items: DueItem[]): DueItem[] => {
  const room = Math.max(0, setting(book, 'nudgesPerDay', NUDGES_PER_DAY) - nudgesOn(book, m.day))
  const kept = new Set(
    items
      .filter(isNudge)
      .sort((a, b) => b.urgency - a.urgency)
      .slice(0, room)
      .map(i => i.key),
  )
  return items.flatMap(i => {
    if (!isNudge(i)) return [i]
    const { urgency: _, ...item } = i
    return kept.has(i.key) ? [item] : []
  })
}
