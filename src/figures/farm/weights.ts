import { type Book, boxes, eventsOf } from '../../book/book.ts'
import type { EventOf } from '../../book/events.ts'
import type { Lb, Share } from '../../units/measure.ts'
import { boxWeight, LOAD_SD, SAID_SD } from '../boxWeight.ts'
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

/** A truck scale, and a weight told in round tons. Common practice, no source. */
const SCALE_SD: Share = 0.01
const ROUND_SD: Share = 0.04
/** Several boxes, and nobody told which. Common practice, no source. */
const CROP_BOX_SD: Share = 0.12
/** Nobody told how much the bucket holds. Common practice, no source. */
const BUCKET_SD: Share = 0.25

/** Boxes are said to hold what they hold when heaped, and seldom go out heaped. Mean of true over said; common practice, no source. */
export const LIGHT: Record<WeightFrom, Share> = { scale: 1, tickets: 0.99, box: 0.97, 'crop box': 0.97, usual: 1 }

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
    const key = e.box ?? `*${e.crop}`
    const sofar = tickets.get(key) ?? { lb: 0, count: 0 }
    tickets.set(key, { lb: sofar.lb + e.lb, count: sofar.count + e.count })
  }
  const unit = unitWeights(book)

  return e => {
    const count = e.count ?? 1
    const sdOwn = LOAD_SD / Math.sqrt(Math.max(1, count))
    if (e.lb !== undefined) {
      const round = e.count === undefined && e.lb % 1000 === 0
      return {
        lb: e.lb,
        from: 'scale',
        ...(e.box && { box: e.box }),
        shared: 'scale',
        sdShared: SCALE_SD,
        sdOwn: round ? ROUND_SD : SCALE_SD,
      }
    }
    if (e.unit === 'bucket') {
      const each = unit('bucket')!
      return {
        lb: count * each.lb,
        from: each.from === 'default' ? 'usual' : 'box',
        shared: 'bucket',
        sdShared: each.from === 'default' ? BUCKET_SD : CROP_BOX_SD,
        sdOwn,
      }
    }
    const said = e.box === undefined ? undefined : named.get(e.box)?.lb
    const own = e.box === undefined ? undefined : tickets.get(e.box)
    if (e.box !== undefined && (said !== undefined || own)) {
      const w = boxWeight(e.crop, said, own)
      return { lb: count * w.lb, from: own ? 'tickets' : 'box', box: e.box, shared: e.box, sdShared: w.sd, sdOwn }
    }
    const ofCrop = [...named.values()].filter(b => b.crop === e.crop)
    const any = ofCrop.length ? ofCrop : [...named.values()].filter(b => b.crop === undefined && !/bucket|batch|mixer/i.test(b.name))
    const single = any.length === 1 ? any[0] : undefined
    const mean = any.length ? any.reduce((s, b) => s + b.lb, 0) / any.length : undefined
    const seen = [tickets.get(`*${e.crop}`), single && tickets.get(single.name)].filter(t => t !== undefined)
    const merged = seen.length ? { lb: seen.reduce((s, t) => s + t.lb, 0), count: seen.reduce((s, t) => s + t.count, 0) } : undefined
    const w = boxWeight(e.crop, mean, merged, single ? SAID_SD : CROP_BOX_SD)
    const from: WeightFrom = merged ? 'tickets' : mean !== undefined ? 'crop box' : 'usual'
    return { lb: count * w.lb, from, ...(single && { box: single.name }), shared: single?.name ?? `*${e.crop}`, sdShared: w.sd, sdOwn }
  }
}
