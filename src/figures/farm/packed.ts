import { type Book, setting } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import type { Lb, LbFt3 } from '../../units/measure.ts'
import { type Packing, packedDensity, tonsHourOf } from '../packing.ts'
import { outsideOf } from '../result.ts'
import { averageDepth } from '../shape.ts'
import { formOf } from './form.ts'
import type { Filling } from './layers.ts'
import { weigher } from './weights.ts'

/** Hours that feed comes in on a day of filling where nobody told. Common practice, no source. */
const FILL_HOURS = 9

export interface Packed {
  dryLbFt3: LbFt3
  /** The packing of the day that most of the pile was packed like. */
  as: Packing
  /** What was not told: tons an hour from the day's loads and the usual hours. */
  hoursAssumed: boolean
  outside?: string[]
}

/**
 * Density by the packing that was told, each day by its own and weighted by what came in on it; a day without a word is packed
 * like the last one told.
 * Undefined where no tractor's weight was ever told.
 */
export const packedOf = (book: Book, p: PileState, filling: Filling): Packed | undefined => {
  const told = p.packs.filter(t => t.event.tractorLb !== undefined)
  if (!told.length) return undefined
  const weigh = weigher(book)
  const byDay = new Map<string, Lb>()
  for (const { event } of p.loads) byDay.set(event.on, (byDay.get(event.on) ?? 0) + weigh(event).lb)
  const form = formOf(p)
  const usual = setting(book, 'fillHours', FILL_HOURS)
  const days = byDay.size ? [...byDay] : [[told[0]!.event.on, filling.lb] as [string, Lb]]
  let sum = 0
  let weight = 0
  let best: { lb: Lb; as: Packing } | undefined
  let hoursAssumed = false
  const outside: { outside?: string[] }[] = []
  for (const [on, lb] of days) {
    const e = (told.findLast(t => t.event.on <= on) ?? told[0]!).event
    const hours = e.on === on && e.hours !== undefined ? e.hours : usual
    if (e.hours === undefined) hoursAssumed = true
    const as: Packing = {
      tractorLb: e.tractorLb!,
      dmPct: filling.dmPct || 35,
      tonsHour: lb > 0 ? tonsHourOf(lb, hours) : 50,
      tractors: e.tractors ?? 1,
      ...(e.layerIn !== undefined && { layerIn: e.layerIn }),
      ...(form && { depthFt: averageDepth(form.shape) }),
    }
    const rho = packedDensity(as)
    outside.push(rho)
    const w = Math.max(1, lb)
    sum += w * rho.value
    weight += w
    if (!best || w > best.lb) best = { lb: w, as }
  }
  return { dryLbFt3: sum / weight, as: best!.as, hoursAssumed, ...outsideOf(...outside) }
}
