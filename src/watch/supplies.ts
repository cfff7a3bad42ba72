import { type Book, eventsOf, piles } from '../book/book.ts'
import { isCovered, type PileState } from '../book/pile.ts'
import { addDays, type Day, type Instant } from '../units/calendar.ts'
import { hourOf, later, type Moment } from './hours.ts'
import type { DueItem, Stock, WatchFigures } from './item.ts'
import { leastOf, uses, usualNeed } from './usual.ts'

export interface Short {
  item: string
  pile: string
  need: number
  have: number
  widthFt?: number
  lengthFt?: number
}

const free = (stock: Stock[], item: string): number => stock.filter(s => s.item === item).reduce((sum, s) => sum + s.count, 0)
const covers = (s: Stock, widthFt: number, lengthFt: number): boolean =>
  s.count >= 1 && s.item === 'plastic' && (s.widthFt ?? 0) >= widthFt && (s.lengthFt ?? 0) >= lengthFt

/** What the covering of one pile wants beyond what lies free, by what this farm uses. Without any word of an item's stock it is not called short. */
export const shortFor = (book: Book, p: PileState, figures: WatchFigures): Short[] => {
  const need = usualNeed(book, figures, p.name)
  const stock = figures.stock?.() ?? []
  if (!need || !stock.length) return []
  const list: Short[] = []
  const { widthFt, lengthFt } = need
  if (!(need.fromStock ?? stock.some(s => covers(s, widthFt, lengthFt) || covers(s, lengthFt, widthFt)))) {
    list.push({ item: 'plastic', pile: p.name, need: 1, have: 0, widthFt, lengthFt })
  }
  const tires = free(stock, 'tires') + p.tires
  if (need.tires !== undefined && uses(book, 'tires') && tires < leastOf(book, figures, 'tires', need.tires))
    list.push({ item: 'tires', pile: p.name, need: Math.ceil(need.tires), have: tires })
  const bags = free(stock, 'gravel bags') + p.bags
  if (need.bags !== undefined && need.bags > 0 && uses(book, 'gravel bags') && bags < leastOf(book, figures, 'gravel bags', need.bags))
    list.push({ item: 'gravel bags', pile: p.name, need: Math.ceil(need.bags), have: bags })
  return list
}

/** How long a sheet takes to come, days. Common practice, no source. */
export const ORDER_DAYS = 14
/** How long before that it is first spoken of. */
const WARN_DAYS = 7

/** The next covering of each pile and its day: one being filled needs it now, a planned one with the next harvest. */
const jobs = (book: Book, m: Moment): { pile: PileState; on: Day; told: Instant }[] =>
  piles(book).flatMap(pile => {
    if (pile.stage === 'filling') {
      const first = pile.loads[0]
      return first ? [{ pile, on: m.day, told: first.at }] : []
    }
    if (isCovered(pile) || (pile.stage !== 'planned' && pile.stage !== 'empty')) return []
    const harvest = eventsOf(book, 'harvest').find(t => t.event.on >= m.day)
    return harvest ? [{ pile, on: harvest.event.on, told: harvest.at }] : []
  })

/** Short for the next job, once a pile and year, in time to order. */
export const suppliesDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] =>
  jobs(book, m).flatMap(({ pile, on, told }) => {
    const key = `short:${pile.name}:${on.slice(0, 4)}:${pile.stage}`
    if (book.said.has(key)) return []
    const orderBy = addDays(on, -ORDER_DAYS)
    const planned = hourOf(addDays(orderBy, -WARN_DAYS), m.hours.morning, m.zone)
    const at = later(planned, told)
    if (at > m.at) return []
    const short = shortFor(book, pile, figures)
    if (!short.length) return []
    // A day already past is no day to order by.
    const now = orderBy <= m.day ? 'yes' : 'no'
    const lines = short.map(s => ({
      code: 'supply-short',
      data: { item: s.item, need: s.need, have: s.have, widthFt: s.widthFt ?? '', lengthFt: s.lengthFt ?? '' },
    }))
    return [
      {
        key,
        at,
        to: 'owner',
        message: [
          { code: 'supply-head', data: { pile: pile.name, by: orderBy, on, now, filling: pile.stage === 'filling' ? 'yes' : 'no' } },
          ...lines,
        ],
      },
    ]
  })
