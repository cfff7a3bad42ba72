import { type Book, piles } from '../book/book.ts'
import type { OpenDamage, PileState } from '../book/pile.ts'
import type { Message } from '../book/questions.ts'
import { addDays, type Day, daysBetween, monthOf } from '../units/calendar.ts'
import { climb, type Task } from './escalate.ts'
import { type Moment, toldAt } from './hours.ts'
import type { DueItem } from './item.ts'
import { isType, recent, seasonOf } from './recent.ts'

/** Holes of one pile that nobody has patched yet. */
export interface Unpatched {
  pile: string
  count: number
  /** Days since the oldest was told. */
  days: number
  where: string
  /** What they are where they are all the same, else empty. */
  what: 'hole' | 'tear' | ''
}

export const unpatched = (p: PileState, open: OpenDamage[], day: Day): Unpatched | undefined => {
  const first = oldest(open)
  if (!first) return undefined
  return {
    pile: p.name,
    count: open.reduce((sum, o) => sum + o.left, 0),
    days: Math.max(0, daysBetween(first.told.event.on, day)),
    where: open.length === 1 ? (first.told.event.where ?? '') : '',
    what: (['hole', 'tear'] as const).find(w => open.every(o => o.told.event.what === w)) ?? '',
  }
}

const oldest = (open: OpenDamage[]): OpenDamage | undefined =>
  open.reduce<OpenDamage | undefined>((a, b) => (!a || b.told.event.on < a.told.event.on ? b : a), undefined)

/**
 * How deep an open top had gone to waste, feet, after so many days: the only published depth clock is alfalfa that lay
 * wholly uncovered (Kansas State University, 1991, Progress Report 623): the first foot by week 2, the second after
 * week 4, the third after week 7. A single hole goes slower at first; no published figure was found for one in a pile.
 */
export const openTopFt = (days: number): 0 | 1 | 2 | 3 => (days > 49 ? 3 : days > 28 ? 2 : days >= 14 ? 1 : 0)

/** Where no month's mean is known: when feed under a hole heats, and when it stands still. Common practice, no source. */
const COLD_MONTHS = [12, 1, 2]
const WARM_MONTHS = [5, 6, 7, 8, 9]
/** Holes from which a report is a big one. Common practice, no source. */
const MANY = 3

/** Days between two askings: "losses grow with hole size and warmer weather" (Mickan, Victoria DPI, 2005); the days are common practice, no source. */
export const askEvery = (open: OpenDamage[], day: Day): number => {
  const month = monthOf(day)
  const big =
    open.some(o => o.told.event.what === 'tear' || o.told.event.what === 'loose edge') || open.reduce((sum, o) => sum + o.left, 0) >= MANY
  const plain = WARM_MONTHS.includes(month) ? 1 : COLD_MONTHS.includes(month) ? 3 : 2
  return big ? Math.max(1, plain - 1) : plain
}

const line = (u: Unpatched): Message => ({ code: 'repair-line', data: { ...u, depthFt: openTopFt(u.days) } })

/** One task a pile, and its oldest hole's: three reports of one night are not asked after three times. */
const tasks = (book: Book, m: Moment): Task[] =>
  piles(book).flatMap(p => {
    const first = oldest(p.open)
    const state = unpatched(p, p.open, m.day)
    if (!first || !state) return []
    const known = toldAt(first.told.at, m.zone).day
    const step = askEvery(p.open, first.told.event.on)
    return [
      {
        stem: first.told.id,
        since: addDays(known, step),
        step,
        urgency: 80 + Math.min(19, state.days),
        line: line(state),
        piles: [p.name],
      },
    ]
  })

/**
 * How to mend, once a season, with the first hole: purpose-made silage tape, clean and dry; never duct tape (Mickan, Victoria DPI,
 * 2005). And what it risks: a hole of 1 mm cost a wrapped bale 5 % of its feed, one of 3 mm 20 % (Teagasc, as reported in Farmers
 * Weekly); the sentence says that this is of bales, for no such figure of piles was found.
 */
const advice = (book: Book, m: Moment): DueItem[] => {
  const first = recent(book, m).find(t => isType(t, 'damage'))
  if (!first || !isType(first, 'damage')) return []
  const key = `repair-advice:${seasonOf(first.event.on)}`
  const message: Message[] = [
    { code: 'repair-advice', data: { pile: first.event.pile } },
    { code: 'repair-risk', data: {} },
  ]
  return book.said.has(key) ? [] : [{ key, at: first.at, to: 'crew', message }]
}

export const repairsDue = (book: Book, m: Moment): DueItem[] => [
  ...advice(book, m),
  ...climb(book, m, 'repair', tasks(book, m), ['ask', 'again', 'owner']),
]
