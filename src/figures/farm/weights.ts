import { type Book, boxes, eventsOf } from '../../book/book.ts'
import type { EventOf } from '../../book/events.ts'
import type { Lb, Share } from '../../units/measure.ts'
import { cropUsual } from './crops.ts'
import { unitWeights } from './units.ts'

/** Where the weight of a load comes from, the surest first. */
export type WeightFrom = 'scale' | 'tickets' | 'box' | 'crop box' | 'usual'

export interface LoadWeight {
  /** Of all the loads of the event together. */
  lb: Lb
  from: WeightFrom
  box?: string
  /** Weights of one kind are wrong together; this names the kind. */
  shared: string
  /** Error that all of the kind have in common, a share. */
  sdShared: Share
  /** Error of this event alone, a share. */
  sdOwn: Share
}

/** Loads of one box differ by so much: ten of them come within 3.3 % of the mean 95 times in 100 (maize trailers), 5.3 % each. */
export const LOAD_SD: Share = 0.053
/** What a box is said to hold and what it holds; no published figure, common practice. */
export const SAID_SD: Share = 0.08
/** A truck scale, and a weight told in round tons. Common practice, no source. */
const SCALE_SD: Share = 0.01
const ROUND_SD: Share = 0.04
/** The usual box of a crop where none was told. Common practice, no source. */
const USUAL_SD: Share = 0.25
const CROP_BOX_SD: Share = 0.12

/** Boxes are said to hold what they hold when heaped, and seldom go out heaped. Mean of true over said; common practice, no source. */
export const LIGHT: Record<WeightFrom, Share> = { scale: 1, tickets: 0.99, box: 0.965, 'crop box': 0.965, usual: 1 }

interface Tickets {
  lb: number
  count: number
}

/**
 * Weighs the loads of events, each by the best that the book has: its own scale weight; what the tickets of its box have shown,
 * drawn toward what the box is said to hold; the box as said; a box of that crop; the crop's usual box.
 */
export const weigher = (book: Book): ((e: EventOf<'load'>) => LoadWeight) => {
  const named = boxes(book)
  const tickets = new Map<string, Tickets>()
  for (const { event: e } of eventsOf(book, 'load')) {
    if (e.lb === undefined || e.count === undefined || e.unit === 'bucket') continue
    for (const key of e.box ? [e.box] : [`*${e.crop}`]) {
      const sofar = tickets.get(key) ?? { lb: 0, count: 0 }
      tickets.set(key, { lb: sofar.lb + e.lb, count: sofar.count + e.count })
    }
  }
  const unit = unitWeights(book)

  /** The tickets of a box against what it is said to hold: each by the inverse of its variance. */
  const learned = (said: Lb | undefined, sd: Share, t: Tickets | undefined): { lb: Lb; sd: Share } | undefined => {
    if (!t) return said === undefined ? undefined : { lb: said, sd }
    const mean = t.lb / t.count
    const own = LOAD_SD / Math.sqrt(t.count)
    if (said === undefined) return { lb: mean, sd: own }
    const w = sd ** 2 / (sd ** 2 + own ** 2)
    return { lb: w * mean + (1 - w) * said, sd: Math.sqrt(1 - w) * sd }
  }

  return e => {
    const count = e.count ?? 1
    const sdOwn = LOAD_SD / Math.sqrt(Math.max(1, count))
    if (e.lb !== undefined) {
      const round = e.count === undefined && e.lb % 1000 === 0
      return { lb: e.lb, from: 'scale', ...(e.box && { box: e.box }), shared: 'scale', sdShared: SCALE_SD, sdOwn: round ? ROUND_SD : SCALE_SD }
    }
    if (e.unit === 'bucket') {
      const each = unit('bucket')!
      return { lb: count * each.lb, from: each.from === 'default' ? 'usual' : 'box', shared: 'bucket', sdShared: each.from === 'default' ? USUAL_SD : CROP_BOX_SD, sdOwn }
    }
    const box = e.box === undefined ? undefined : named.get(e.box)
    if (e.box !== undefined) {
      const t = tickets.get(e.box)
      const w = learned(box?.lb, SAID_SD, t)
      if (w) return { lb: count * w.lb, from: t ? 'tickets' : 'box', box: e.box, shared: e.box, sdShared: w.sd, sdOwn }
    }
    const ofCrop = [...named.values()].filter(b => b.crop === e.crop)
    const any = ofCrop.length ? ofCrop : [...named.values()].filter(b => b.crop === undefined && !/bucket|batch|mixer/i.test(b.name))
    const t = tickets.get(`*${e.crop}`)
    const mean = any.length ? any.reduce((s, b) => s + b.lb, 0) / any.length : undefined
    const single = any.length === 1 ? any[0] : undefined
    const boxT = single && tickets.get(single.name)
    const merged = t && boxT ? { lb: t.lb + boxT.lb, count: t.count + boxT.count } : (t ?? boxT)
    const w = learned(mean, single ? SAID_SD : CROP_BOX_SD, merged)
    if (w) return { lb: count * w.lb, from: merged ? 'tickets' : 'crop box', ...(single && { box: single.name }), shared: single?.name ?? `*${e.crop}`, sdShared: w.sd, sdOwn }
    return { lb: count * cropUsual(e.crop).boxLb, from: 'usual', shared: `?${e.crop}`, sdShared: USUAL_SD, sdOwn }
  }
}
