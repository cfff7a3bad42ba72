import { type Book, boxes, eventsOf } from '../../book/book.ts'
import type { EventOf } from '../../book/events.ts'
import type { Lb } from '../../units/measure.ts'

/**
 * A payloader bucket heaped with feed, lb: 3 cubic yards (81 ft3) of loose corn silage at about 21 lb/ft3, the middle of
 * what a litre pan holds (14.7 to 26.9; University of Idaho). The size of the bucket is common practice, no source.
 */
export const BUCKET_LB: Lb = 1700

export interface UnitWeight {
  lb: Lb
  from: 'told' | 'box' | 'default'
}

type Counted = EventOf<'feed'> | EventOf<'spoil'> | EventOf<'shift'>

const WORDS: Record<string, RegExp> = {
  bucket: /bucket|scoop|cubeta|pala|cucharon/i,
  batch: /batch|mix|tmr|mezcla/i,
  load: /feed|wagon|carro/i,
}

/**
 * Pounds in one bucket, batch or load of feed taken from a pile: as the crew's own weighed ones, else as a box of that name
 * is said to hold, else the usual bucket. Undefined where nothing is known (a batch may be anything).
 */
export const unitWeights = (book: Book): ((unit: 'load' | 'bucket' | 'batch') => UnitWeight | undefined) => {
  let told: Map<string, { lb: number; count: number }> | undefined
  // Most books never ask: a log with its weight needs no unit.
  const weighed = (): Map<string, { lb: number; count: number }> => {
    if (told) return told
    told = new Map()
    const counted: Counted[] = [...eventsOf(book, 'feed'), ...eventsOf(book, 'spoil'), ...eventsOf(book, 'shift')].map(t => t.event)
    for (const e of counted) {
      if (e.lb === undefined || e.count === undefined) continue
      const unit = e.unit ?? 'load'
      const sofar = told.get(unit) ?? { lb: 0, count: 0 }
      told.set(unit, { lb: sofar.lb + e.lb, count: sofar.count + e.count })
    }
    return told
  }
  const named = [...boxes(book).values()]
  return unit => {
    const t = weighed().get(unit)
    if (t) return { lb: t.lb / t.count, from: 'told' }
    const box =
      named.find(b => b.name === unit) ??
      named.find(b => WORDS[unit]?.test(b.name)) ??
      (unit === 'load' && named.length === 1 ? named[0] : undefined)
    if (box) return { lb: box.lb, from: 'box' }
    return unit === 'bucket' ? { lb: BUCKET_LB, from: 'default' } : undefined
  }
}
