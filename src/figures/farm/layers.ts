import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import type { Day } from '../../units/calendar.ts'
import type { Lb, Pct, Share } from '../../units/measure.ts'
import { type Dryness, drynessOf } from './dryness.ts'
import { LIGHT, type LoadWeight, type WeightFrom, weigher } from './weights.ts'

/** Feed of one crop (and cut) that went in together, the lowest first. */
export interface Layer {
  crop: string
  cut?: number
  from: Day
  to: Day
  /** Loads told by count; buckets apart. */
  count: number
  buckets: number
  lb: Lb
  lbDry: Lb
  dm: Dryness
}

/** Everything that went into a pile. */
export interface Filling {
  layers: Layer[]
  lb: Lb
  lbDry: Lb
  dmPct: Pct
  /** Expected error of the whole weight as a share of it; errors of one box go together, those of loads even out. */
  sd: Share
  /** Where the weights come from, the most by weight first. */
  weights: WeightFrom[]
  /** What the whole is expected to weigh truly, over what the boxes add up to. */
  light: Share
  /** Weights that are wrong together: the kind, its weight, and the error that all of it shares. */
  kinds: { shared: string; lb: Lb; sd: Share }[]
  /** Boxes without a word of their weight were taken at the crop's usual. */
  boxes: string[]
}

/** Feed that came over from another pile, in the order of its coming; its weight is for the caller to say. */
export interface Moved {
  on: Day
  lb: Lb
  crop: string
  dmPct: Pct
  sd: Share
}

/** What lies in a pile, by layers from the bottom, as it went in: losses are not taken off. */
export const fillingOf = (book: Book, p: PileState, moved: readonly Moved[] = []): Filling => {
  const weigh = weigher(book)
  const dry = drynessOf(book, p)
  const layers: Layer[] = []
  const byKind = new Map<string, { lb: number; w: LoadWeight; varLb: number }>()
  const take = (crop: string, cut: number | undefined, on: Day, lb: Lb, count: number, buckets: number, dm: Dryness): void => {
    const top = layers.at(-1)
    if (top && top.crop === crop && top.cut === cut) {
      top.to = on
      top.count += count
      top.buckets += buckets
      top.lb += lb
      top.lbDry += (lb * dm.pct) / 100
    } else layers.push({ crop, ...(cut !== undefined && { cut }), from: on, to: on, count, buckets, lb, lbDry: (lb * dm.pct) / 100, dm })
  }
  const all = [
    ...p.loads.map(t => ({ on: t.event.on, n: t.n, run: () => load(t.event) })),
    ...moved.map((m, i) => ({ on: m.on, n: i, run: () => shift(m) })),
  ].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.n - b.n))
  const load = (e: PileState['loads'][number]['event']): void => {
    const w = weigh(e)
    const counted = e.count ?? 0
    take(e.crop, e.cut, e.on, w.lb, e.unit === 'bucket' ? 0 : counted, e.unit === 'bucket' ? counted : 0, dry(e.crop, e.on))
    const key = w.shared
    const sofar = byKind.get(key)
    if (sofar) {
      sofar.lb += w.lb
      sofar.varLb += (w.lb * w.sdOwn) ** 2
    } else byKind.set(key, { lb: w.lb, w, varLb: (w.lb * w.sdOwn) ** 2 })
  }
  let movedVar = 0
  const shift = (m: Moved): void => {
    take(m.crop, undefined, m.on, m.lb, 0, 0, { pct: m.dmPct, from: 'moved', sd: 0 })
    movedVar += (m.lb * m.sd) ** 2
  }
  for (const s of all) s.run()
  const lb = layers.reduce((t, l) => t + l.lb, 0)
  const lbDry = layers.reduce((t, l) => t + l.lbDry, 0)
  const kinds = [...byKind.values()].sort((a, b) => b.lb - a.lb)
  const variance = kinds.reduce((t, k) => t + (k.lb * k.w.sdShared) ** 2 + k.varLb, movedVar)
  return {
    layers,
    lb,
    lbDry,
    dmPct: lb > 0 ? (100 * lbDry) / lb : 0,
    sd: lb > 0 ? Math.sqrt(variance) / lb : 0,
    light: lb > 0 ? (kinds.reduce((t, k) => t + k.lb * LIGHT[k.w.from], 0) + moved.reduce((t, m) => t + m.lb, 0)) / lb : 1,
    kinds: kinds.map(k => ({ shared: k.w.shared, lb: k.lb, sd: k.w.sdShared })),
    weights: [...new Set(kinds.map(k => k.w.from))],
    boxes: [...new Set(kinds.flatMap(k => (k.w.box ? [k.w.box] : [])))],
  }
}

/** Shares of a pile by crop and cut, by weight as fed. */
export const byCrop = (layers: readonly Layer[]): { crop: string; cut?: number; count: number; lb: Lb; lbDry: Lb; share: Share }[] => {
  const total = layers.reduce((t, l) => t + l.lb, 0)
  const rows: { crop: string; cut?: number; count: number; lb: Lb; lbDry: Lb; share: Share }[] = []
  for (const l of layers) {
    const row = rows.find(r => r.crop === l.crop && r.cut === l.cut)
    if (row) {
      row.count += l.count
      row.lb += l.lb
      row.lbDry += l.lbDry
    } else rows.push({ crop: l.crop, ...(l.cut !== undefined && { cut: l.cut }), count: l.count, lb: l.lb, lbDry: l.lbDry, share: 0 })
  }
  for (const r of rows) r.share = total > 0 ? r.lb / total : 0
  return rows
}
