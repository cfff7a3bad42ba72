import { type Book, eventsOf } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { type Day, daysBetween } from '../../units/calendar.ts'
import type { Pct } from '../../units/measure.ts'
import { cropDefaults } from '../cropDefaults.ts'

export interface Dryness {
  pct: Pct
  /**
   * `tests`: of the pile or the crop; `loads`: told with the loads; `usual`: the crop's usual figure; `moved`: came with feed from
   * another pile.
   */
  from: 'tests' | 'loads' | 'usual' | 'moved'
  /** Standard error, points. */
  sd: Pct
}

interface Reading {
  pct: Pct
  on: Day
  weight: number
  from: 'tests' | 'loads'
}

/** A test speaks for feed that went in about then: half as much a month off. Common practice, no source. */
const HALF_DAYS = 30
/** Past this a test of the crop is of another field or year, days. */
const OTHER_DAYS = 150
/** A test of the very pile counts more than one of the crop anywhere, and that more than none. Common practice, no source. */
const WEIGHTS = { pile: 1, crop: 0.6, loads: 0.8, usual: 0.12 }
/** Spread of single tests of one pile, points; a swing of 3 matters to the cows (Penn State). */
const TEST_SD: Pct = 2

/**
 * Dry matter of a crop in a pile, percent: tests of the pile, tests of the crop and what was told with its loads, each weighted
 * by how near in time it is; the crop's usual figure counts a little always, and alone where nothing else is known.
 */
export const drynessOf = (book: Book, p: PileState): ((crop: string, on: Day) => Dryness) => {
  const tests = eventsOf(book, 'test')
  const crops = new Set(p.loads.map(t => t.event.crop))
  const first = p.loads[0]?.event.on
  const one = crops.size <= 1
  const gather = (crop: string): Reading[] => [
    ...tests.flatMap(({ event: e }): Reading[] => {
      if (e.pile !== undefined && e.pile !== p.name) return []
      // A pile that was emptied and filled anew is another pile.
      if (e.pile === p.name && first !== undefined && e.on < first && daysBetween(e.on, first) > HALF_DAYS) return []
      if (e.crop !== undefined ? e.crop !== crop : !one && e.pile === undefined) return []
      if (e.crop === undefined && !one) return []
      return [{ pct: e.dmPct, on: e.on, weight: e.pile === p.name ? WEIGHTS.pile : WEIGHTS.crop, from: 'tests' }]
    }),
    ...p.loads.flatMap(({ event: e }): Reading[] =>
      e.crop === crop && e.dmPct !== undefined ? [{ pct: e.dmPct, on: e.on, weight: WEIGHTS.loads, from: 'loads' }] : [],
    ),
  ]
  const gathered = new Map<string, Reading[]>()
  const readings = (crop: string): Reading[] => {
    const before = gathered.get(crop)
    if (before) return before
    const list = gather(crop)
    gathered.set(crop, list)
    return list
  }
  const known = new Map<string, Dryness>()
  return (crop, on) => {
    const key = `${crop}\n${on}`
    const before = known.get(key)
    if (before) return before
    const { dmPct: usual, dmSd } = cropDefaults(crop)
    let sum = WEIGHTS.usual * usual.value
    let weight = WEIGHTS.usual
    let best: Reading['from'] | undefined
    for (const r of readings(crop)) {
      const off = Math.abs(daysBetween(r.on, on))
      // Silage keeps the dry matter it went in with, so a test of this very pile holds while it lies there.
      const ofPile = r.weight === WEIGHTS.pile
      if (!ofPile && off > OTHER_DAYS) continue
      const w = r.weight * 0.5 ** (Math.min(off, ofPile ? 2 * HALF_DAYS : off) / HALF_DAYS)
      sum += w * r.pct
      weight += w
      if (best !== 'tests') best = r.from
    }
    const sd = best ? Math.hypot(TEST_SD / Math.sqrt(Math.max(1, weight)), (dmSd * WEIGHTS.usual) / weight) : dmSd
    const dryness: Dryness = { pct: sum / weight, from: best ?? 'usual', sd }
    known.set(key, dryness)
    return dryness
  }
}
