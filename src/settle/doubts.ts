import { eventsOf, pileState } from '../book/book.ts'
import { lengthOf, type PileState } from '../book/pile.ts'
import type { Draft } from '../book/questions.ts'
import type { Context } from './context.ts'

/** A value that this farm and this trade do not see, and what may have been meant. */
export interface Doubt {
  code: string
  slot: string
  value: number
  unit: string
  /** Likely slips of the thumb, best first. */
  instead: number[]
  /** The length that the value does not fit, ft. */
  most?: number
  /** Last known position of the face, ft. */
  was?: number
}

const num = (d: Draft, slot: string): number | undefined => (typeof d.slots[slot] === 'number' ? (d.slots[slot] as number) : undefined)

/** A digit too many, or a nought too many, brought back into range. */
const slipsOf = (value: number, low: number, high: number): number[] => {
  const out = new Set<number>()
  const text = String(value)
  for (let k = 0; k < text.length; k++) {
    const cut = Number(text.slice(0, k) + text.slice(k + 1))
    if (Number.isFinite(cut) && cut >= low && cut <= high) out.add(cut)
  }
  for (const f of [0.1, 0.01, 10, 100, 1000]) {
    const v = Math.round(value * f * 100) / 100
    if (v >= low && v <= high && (v >= 1 || value < 1)) out.add(v)
  }
  return [...out].sort((a, b) => Math.abs(Math.log(a / value)) - Math.abs(Math.log(b / value))).slice(0, 2)
}

type Range = [slot: string, unit: string, low: number, high: number]

/**
 * What the trade sees in one message. Common practice, no source, except where said: wind 231 mph and hail 8 in are the
 * highest ever measured in the United States (from memory), so the limits below ask well before that.
 */
const RANGES: Record<string, Range[]> = {
  load: [
    ['count', 'load', 0.01, 60],
    ['lb', 'lb', 500, 2_500_000],
    ['dmPct', 'pct', 15, 88],
  ],
  feed: [
    ['lb', 'lb', 100, 100_000],
    ['count', 'load', 0.1, 40],
    ['ft', 'ft', 0.05, 20],
  ],
  spoil: [
    ['lb', 'lb', 5, 100_000],
    ['count', 'load', 0.1, 60],
    ['ft', 'ft', 0.05, 40],
  ],
  shift: [
    ['ft', 'ft', 0.5, 200],
    ['lb', 'lb', 100, 2_000_000],
    ['count', 'load', 0.1, 200],
  ],
  face: [
    ['atFt', 'ft', 0, 1000],
    ['leftFt', 'ft', 0, 1000],
  ],
  size: [
    ['widthFt', 'ft', 6, 250],
    ['lengthFt', 'ft', 10, 1200],
    ['heightFt', 'ft', 1, 30],
    ['topWidthFt', 'ft', 1, 200],
  ],
  pile: [
    ['widthFt', 'ft', 6, 250],
    ['lengthFt', 'ft', 10, 1200],
    ['heightFt', 'ft', 1, 30],
    ['wallFt', 'ft', 0.5, 20],
  ],
  cover: [
    ['count', 'tires', 1, 6000],
    ['ft', 'ft', 0.5, 120],
    ['widthFt', 'ft', 6, 250],
    ['lengthFt', 'ft', 10, 1200],
  ],
  damage: [['count', 'hole', 0.5, 150]],
  patch: [['count', 'hole', 0.5, 150]],
  weather: [
    ['mph', 'mph', 3, 130],
    ['degF', 'degF', -60, 130],
  ],
  test: [['dmPct', 'pct', 15, 75]],
  ration: [
    ['head', 'head', 1, 5000],
    ['lbPerHead', 'lb', 0.5, 150],
    ['lbPerDay', 'lb', 50, 1_500_000],
  ],
  box: [['lb', 'lb', 800, 80_000]],
  pack: [
    ['tractors', 'tractor', 0.5, 12],
    ['tractorLb', 'lb', 4000, 130_000],
    ['hours', 'hour', 0.1, 30],
    ['layerIn', 'in', 1, 36],
  ],
  supply: [
    ['count', 'item', 0, 20_000],
    ['widthFt', 'ft', 6, 250],
    ['lengthFt', 'ft', 10, 1200],
  ],
  harvest: [['acres', 'acre', 0.5, 20_000]],
}

/** Dry matter a crop is put up at, percent; outside this it is asked about. Common practice, no source. */
const DRY: Record<string, [number, number]> = { 'high-moisture corn': [55, 88], earlage: [45, 80] }

/** The first thing about a draft that is hard to believe; undefined where nothing is. */
export const doubtOf = (c: Context, d: Draft): Doubt | undefined => {
  for (const [slot, unit, low, high] of RANGES[d.type] ?? []) {
    const value = num(d, slot)
    if (value === undefined) continue
    let [lo, hi] = [low, high]
    if (slot === 'dmPct') [lo, hi] = DRY[d.slots.crop as string] ?? [lo, Math.min(hi, 75)]
    const u = slot === 'count' && typeof d.slots.unit === 'string' ? (d.slots.unit as string) : unit
    if ((value < lo || value > hi) && !d.sure.includes(codeOf(slot)))
      return { code: codeOf(slot), slot, value, unit: u, instead: slipsOf(value, lo, Math.min(hi, habit(c, d, slot) ?? hi)) }
  }
  const fed = d.type === 'feed' ? num(d, 'lb') : undefined
  const usual = fed !== undefined && fed > 20_000 ? daily(c) : undefined
  const overfed = codeOf('lb')
  if (fed !== undefined && usual !== undefined && fed > 4 * usual && !d.sure.includes(overfed))
    return { code: overfed, slot: 'lb', value: fed, unit: 'lb', instead: slipsOf(fed, 100, usual * 2) }
  const inches = num(d, 'inches')
  if (d.type === 'weather' && inches !== undefined && !d.sure.includes('range-inches')) {
    const hi = d.slots.kind === 'hail' ? 5 : d.slots.kind === 'snow' ? 48 : 12
    if (inches > hi) return { code: 'range-inches', slot: 'inches', value: inches, unit: 'in', instead: slipsOf(inches, 0.1, hi) }
  }
  if (d.type === 'load') {
    const count = num(d, 'count')
    const lb = num(d, 'lb')
    if (count && lb && !d.sure.includes('each') && (lb / count < 800 || lb / count > 90_000))
      return { code: 'each', slot: 'lb', value: lb, unit: 'lb', instead: [] }
  }
  const pile = typeof d.slots.pile === 'string' ? pileState(c.book, d.slots.pile) : undefined
  const length = pile && lengthOf(pile)
  if (pile && (d.type === 'face' || d.type === 'feed' || d.type === 'shift' || d.type === 'cover')) {
    for (const slot of ['atFt', 'leftFt', 'ft']) {
      const value = num(d, slot)
      if (value !== undefined && length !== undefined && value > length * 1.05 && !d.sure.includes(`long-${slot}`))
        return { code: `long-${slot}`, slot, value, unit: 'ft', instead: slipsOf(value, pile.face?.atFt ?? 1, length), most: length }
    }
  }
  const known = pile && d.type === 'face' ? faceBut(pile, d.replaces) : undefined
  if (pile && known && d.type === 'face' && !d.sure.includes('face-back')) {
    const at = num(d, 'atFt') ?? (length !== undefined && num(d, 'leftFt') !== undefined ? length - num(d, 'leftFt')! : undefined)
    // a foot of play: faces are paced, not surveyed
    if (at !== undefined && at < known.atFt - 1 && (d.slots.on as string) >= known.on)
      return {
        code: 'face-back',
        slot: num(d, 'atFt') !== undefined ? 'atFt' : 'leftFt',
        value: at,
        unit: 'ft',
        instead: [],
        was: known.atFt,
      }
  }
  if ((d.type === 'size' || d.type === 'pile') && !d.sure.includes('steep')) {
    const w = num(d, 'widthFt')
    const h = num(d, 'heightFt')
    if (w !== undefined && h !== undefined && h > w / 2)
      return { code: 'steep', slot: 'heightFt', value: h, unit: 'ft', instead: slipsOf(h, 2, w / 2) }
  }
  return undefined
}

/** Name of the doubt about one slot; a person's yes puts it to rest by this name. */
const codeOf = (slot: string): string => `range-${slot}`

/** What this farm feeds in a day at the most, lb: by its ration, its head or its own log. */
const daily = (c: Context): number | undefined => {
  let most = 0
  for (const t of eventsOf(c.book, 'ration').slice(-20)) most = Math.max(most, t.event.lbPerDay ?? 0, (t.event.head ?? 0) * 100)
  for (const t of eventsOf(c.book, 'feed').slice(-60)) most = Math.max(most, t.event.lb ?? 0)
  return most > 0 ? most : undefined
}

/** Where the face stood, without the records that a correction replaces. */
const faceBut = (pile: PileState, replaced: string[]): { atFt: number; on: string } | undefined => {
  const last = pile.faces.at(-1)
  if (!last || !replaced.includes(last.id)) return pile.face
  const before = pile.faces.findLast(t => !replaced.includes(t.id))?.event
  const length = lengthOf(pile)
  const atFt = before?.atFt ?? (length === undefined || before?.leftFt === undefined ? undefined : length - before.leftFt)
  return before && atFt !== undefined ? { atFt, on: before.on } : undefined
}

/** The most this farm has had in one message, doubled: a better guide to a slip than the trade's limit. */
const habit = (c: Context, d: Draft, slot: string): number | undefined => {
  let most = 0
  for (const t of eventsOf(c.book, d.type).slice(-60)) {
    const v = (t.event as unknown as Record<string, unknown>)[slot]
    if (typeof v === 'number' && v > most) most = v
  }
  return most > 0 ? most * 2 : undefined
}
