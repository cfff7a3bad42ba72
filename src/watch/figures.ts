import type { Ask } from '../book/asks.ts'
import type { Book } from '../book/book.ts'
import { isDay } from '../units/calendar.ts'
import type { CoverNeed, DaysLeft, FaceRate, Stock, WatchFigures } from './item.ts'

const isRecord = (v: unknown): v is Record<string, unknown> => typeof v === 'object' && v !== null
const number = (v: unknown): number | undefined => (typeof v === 'number' && Number.isFinite(v) ? v : undefined)
const day = (v: unknown): string | undefined => (typeof v === 'string' && isDay(v) ? v : undefined)
/** The crop of which there is more then than now, by the greatest rise. */
const risingCrop = (now: unknown, then: unknown): string | undefined => {
  const shares = (list: unknown): Map<string, number> => {
    const of = new Map<string, number>()
    for (const s of Array.isArray(list) ? list.filter(isRecord) : [])
      if (typeof s.crop === 'string') of.set(s.crop, (of.get(s.crop) ?? 0) + (number(s.share) ?? 0))
    return of
  }
  const before = shares(now)
  const rises = [...shares(then)].map(([crop, share]) => ({ crop, rise: share - (before.get(crop) ?? 0) }))
  return rises.filter(r => r.rise > 0).sort((a, b) => b.rise - a.rise)[0]?.crop
}

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
      // Worked out from the use alone, before anybody read the face, it is too wild to be said unasked.
      if (inPerDay === undefined || minInPerDay === undefined || a.from === 'use') return undefined
      return { inPerDay, minInPerDay, enough: a.enough === true } satisfies FaceRate
    },
    faceAt: pile => {
      const a = slots({ about: 'status', pile })
      return number(a.faceTodayFt) ?? number(a.faceFt)
    },
    mixTurn: pile => {
      const a = slots({ about: 'mix', pile })
      const { turn } = a
      const atFt = isRecord(turn) ? number(turn.atFt) : undefined
      if (!isRecord(turn) || atFt === undefined) return undefined
      return there({ atFt, on: day(turn.on), crop: risingCrop(a.face, turn.shares) })
    },
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
