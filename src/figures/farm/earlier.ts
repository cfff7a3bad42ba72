import type { Book } from '../../book/book.ts'
import { addToPile, newPile, type PileState } from '../../book/pile.ts'
import type { Day } from '../../units/calendar.ts'
import type { Share } from '../../units/measure.ts'
import type { Filling } from './layers.ts'

/**
 * What piles of the same boxes showed once they were fed out: true weight over expected, and by how much the doubt of the shared
 * error shrinks.
 */
export interface Shown {
  factor: number
  /** Variance taken off the error of what went in, a share squared. */
  less: number
  /** Variance taken off the error of the loss, a share of what is kept, squared. */
  lessLoss: number
  piles: string[]
}

/** What one pile showed by its end: what came out over what was expected of its loads, with its error. */
export interface Outcome {
  pile: string
  on: Day
  ratio: number
  sd: Share
  kinds: Filling['kinds']
}

/** Most that is looked back on, piles: older ones are of other boxes and other drivers. */
const MOST = 2
/** Losses of a farm's piles are alike too: so much of the variance of the loss is common to them. Common practice, no source. */
const FARMS_OWN: Share = 0.6
/** What differs from one pile of a farm to the next all the same. Common practice, no source. */
const OWN_SD: Share = 0.04

/** Lives of all piles that came to their end: a slab that was filled again has had one before. */
export const endedPiles = (book: Book, now: Day): PileState[] => {
  const ended: PileState[] = []
  for (const name of new Set(
    (book.byType.get('empty') ?? []).flatMap(l => (l.withdrawnBy === undefined && 'pile' in l.event && l.event.pile ? [l.event.pile] : [])),
  )) {
    const p = newPile(name)
    const told = (book.byPile.get(name) ?? [])
      .filter(l => l.withdrawnBy === undefined)
      .sort((a, b) => (a.event.on < b.event.on ? -1 : a.event.on > b.event.on ? 1 : a.n - b.n))
    for (const l of told) {
      addToPile(p, l, l.event.type === 'shift' && l.event.toPile === name ? 'to' : 'from')
      // The next load would start the pile anew on fresh lists; these stay as they are.
      if (l.event.type === 'empty' && l.event.on <= now) ended.push({ ...p })
    }
  }
  return ended.sort((a, b) => (a.emptyOn! < b.emptyOn! ? 1 : -1))
}

/** Ended piles that share a box with a filling, the latest first. */
export const relatives = (
  book: Book,
  p: PileState,
  filling: Filling,
  kindsOf: (q: PileState) => Filling['kinds'],
  now: Day,
): PileState[] => {
  const mine = new Set(filling.kinds.map(k => k.shared))
  const first = p.loads[0]?.event.on
  return endedPiles(book, now)
    .filter(
      q =>
        !(q.name === p.name && q.loads[0]?.event.on === first) &&
        (q.feeds.length >= 5 || q.faces.length >= 3) &&
        kindsOf(q).some(k => mine.has(k.shared)),
    )
    .slice(0, MOST)
}

/**
 * What the outcomes say of a new filling of the same boxes. What its boxes and the farm's loss make of it is taken as normal, 1 give or
 * take the root of both variances; each outcome is a reading of it with its own error and with what is a pile's own. Weighted by the
 * inverse of the variances; what is learned is shared out between boxes and loss as their variances are. `lossSd` is a share of what
 * is kept.
 */
export const shownBy = (filling: Filling, outcomes: readonly Outcome[], lossSd: Share): Shown | undefined => {
  const total = filling.lb
  if (!outcomes.length || total <= 0) return undefined
  const lbOf = (o: Outcome): Share => {
    const mine = filling.kinds.filter(k => o.kinds.some(x => x.shared === k.shared)).reduce((s, k) => s + k.lb, 0)
    const theirs = o.kinds.filter(k => filling.kinds.some(x => x.shared === k.shared)).reduce((s, k) => s + k.lb, 0)
    const all = o.kinds.reduce((s, k) => s + k.lb, 0)
    return Math.min(mine / total, all > 0 ? theirs / all : 0)
  }
  const shared = filling.kinds.reduce((s, k) => s + (k.lb / total) * k.sd, 0)
  const prior = shared ** 2 + FARMS_OWN * lossSd ** 2
  if (prior <= 0) return undefined
  let precision = 1 / prior
  let sum = 1 / prior
  for (const o of outcomes) {
    const w = lbOf(o) / (o.sd ** 2 + OWN_SD ** 2)
    precision += w
    sum += w * o.ratio
  }
  const learned = prior - 1 / precision
  const boxes = shared ** 2 / prior
  return { factor: sum / precision, less: learned * boxes, lessLoss: learned * (1 - boxes), piles: outcomes.map(o => o.pile) }
}
