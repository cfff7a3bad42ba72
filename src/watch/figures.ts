import type { Ask } from '../book/asks.ts'
import type { Book } from '../book/book.ts'
import { isDay } from '../units/calendar.ts'
import type { CoverNeed, DaysLeft, FaceRate, Stock, WatchFigures } from './item.ts'

const isRecord = (v: unknown): v is Record<string, unknown> => typeof v === 'object' && v !== null
const number = (v: unknown): number | undefined => (typeof v === 'number' && Number.isFinite(v) ? v : undefined)
const day = (v: unknown): string | undefined => (typeof v === 'string' && isDay(v) ? v : undefined)
/** Slots that are there; what is missing must not stand in a figure as `undefined`. */
const there = <T extends object>(slots: T): T => Object.fromEntries(Object.entries(slots).filter(([, v]) => v !== undefined)) as T

/**
 * The figures as the watch wants them, out of the one place that answers questions about the book. `answer` may give an
 * answer, a list of them, one wrapped as `{answer}`, or a failure: only slots that are really there are taken.
 */
export const figuresFrom = <N>(book: Book, now: N, answer: (book: Book, ask: Ask, now: N) => unknown): WatchFigures => {
  const known = new Map<string, Record<string, unknown>>()
  const slots = (ask: Ask): Record<string, unknown> => {
    const key = JSON.stringify(ask)
    let found = known.get(key)
    if (!found) {
      const given = answer(book, ask, now)
      const one = Array.isArray(given) ? given.find(a => isRecord(a) && (ask.pile === undefined || a.pile === ask.pile)) : given
      const inner = isRecord(one) && isRecord(one.answer) ? one.answer : one
      found = isRecord(inner) && inner.about === ask.about ? inner : {}
      known.set(key, found)
    }
    return found
  }
  return {
    daysLeft: pile => {
      const a = slots({ about: 'left', pile })
      const days = number(a.days)
      return days === undefined
        ? undefined
        : there<DaysLeft>({ days, low: number(a.daysLow), high: number(a.daysHigh), runsOut: day(a.runsOut) })
    },
    faceRate: pile => {
      const a = slots({ about: 'face', pile })
      const inPerDay = number(a.inPerDay)
      const minInPerDay = number(a.minInPerDay)
      if (inPerDay === undefined || minInPerDay === undefined) return undefined
      return { inPerDay, minInPerDay, enough: a.enough === true } satisfies FaceRate
    },
    faceAt: pile => number(slots({ about: 'status', pile }).faceFt),
    need: pile => {
      const a = slots({ about: 'cover', pile })
      const widthFt = number(a.widthFt)
      const lengthFt = number(a.lengthFt)
      if (widthFt === undefined || lengthFt === undefined) return undefined
      return there<CoverNeed>({
        widthFt,
        lengthFt,
        tires: number(a.tires),
        bags: number(a.bags),
        fromStock: typeof a.fromStock === 'boolean' ? a.fromStock : undefined,
      })
    },
    readyOn: pile => day(slots({ about: 'ready', pile }).readyOn),
    stock: () => {
      const { items } = slots({ about: 'supplies' })
      if (!Array.isArray(items)) return []
      return items.flatMap(i => {
        const count = isRecord(i) ? number(i.count) : undefined
        if (!isRecord(i) || typeof i.item !== 'string' || count === undefined) return []
        return [there<Stock>({ item: i.item, count, widthFt: number(i.widthFt), lengthFt: number(i.lengthFt) })]
      })
    },
    hauledLb: (pile, from, to) => number(slots({ about: 'loads', pile, from, to }).lbAsFed),
  }
}
