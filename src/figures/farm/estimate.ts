import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import type { Lb, Share } from '../../units/measure.ts'
import { type Evidence, evidenceOf } from './evidence.ts'
import { fuse, type Part } from './fuse.ts'
import { daysAt, overall } from './horizon.ts'
import type { Now } from './now.ts'

/** What is in a pile today and how long it lasts, each with its error. */
export interface Estimate {
  evidence: Evidence
  parts: Part[]
  /** Left to feed, lb as fed. */
  left: { lb: Lb; sd: Lb }
  /** What comes out of the pile in all, lb as fed. */
  whole: { lb: Lb; sd: Lb }
  /** Really used a day from now on, lb as fed; undefined where nothing tells. */
  use?: { lb: Lb; sd: Lb }
  /** Days left: the middle, and the ends of the 80 % interval. */
  days?: { mid: number; low: number; high: number }
  /** Where the face is, as a share of the length, as the record has it. */
  at: Share
  /** By the record more went out than was there. */
  overfed: boolean
}

/** The chances below the ends of the interval. */
const LOW = 0.1
const HIGH = 0.9

export const estimateFrom = (evidence: Evidence): Estimate => {
  // Neither loads nor size nor face: there is nothing to reckon from.
  if (!(evidence.input.whole.mean > 0))
    return { evidence, parts: [], left: { lb: 0, sd: 0 }, whole: { lb: 0, sd: 0 }, at: 0, overfed: false }
  const parts = fuse(evidence.input)
  const left = overall(parts, 'left', 'leftVar')
  const whole = overall(parts, 'whole', 'wholeVar')
  const use = overall(parts, 'use', 'useVar')
  const known = evidence.refFrom !== 'none' && use.mean > 0
  const mid = known ? daysAt(parts, 0.5) : undefined
  const low = known ? daysAt(parts, LOW) : undefined
  const high = known ? daysAt(parts, HIGH) : undefined
  const overfed = left.mean < 0
  // A pile that is still being fed holds something: what is left is then what the days say.
  const lb = mid !== undefined && left.mean < 0.5 * mid * use.mean ? mid * use.mean : Math.max(0, left.mean)
  return {
    evidence,
    parts,
    overfed,
    left: { lb, sd: left.sd },
    whole: { lb: whole.mean, sd: whole.sd },
    ...(known && { use: { lb: use.mean, sd: use.sd } }),
    ...(mid !== undefined && low !== undefined && { days: { mid, low, high: high ?? mid * 3 } }),
    at: parts.reduce((t, p) => t + p.weight * p.at, 0),
  }
}

/** Estimates of one book at one moment: a message or a look around asks for the same pile more than once. */
interface Kept {
  last: number
  at: string
  day: string
  piles: Map<PileState, Estimate>
}
const kept = new WeakMap<Book, Kept>()

/** The estimate of one pile. Kept until the book grows or time goes on, so that asking twice costs nothing. */
export const estimate = (book: Book, p: PileState, now: Now): Estimate => {
  let k = kept.get(book)
  if (!k || k.last !== book.last || k.at !== now.at || k.day !== now.day) {
    k = { last: book.last, at: now.at, day: now.day, piles: new Map() }
    kept.set(book, k)
  }
  const before = k.piles.get(p)
  if (before) return before
  const e = estimateFrom(evidenceOf(book, p, now))
  k.piles.set(p, e)
  return e
}
