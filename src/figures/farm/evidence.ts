import { type Book, pileState } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { daysBetween } from '../../units/calendar.ts'
import type { Lb, Pct, Share } from '../../units/measure.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { form, formsOf } from './advance.ts'
import { type Outcome, relatives, type Shown, shownBy } from './earlier.ts'
import { type FedDay, fedOut } from './fedOut.ts'
import { type FuseIn, fuse } from './fuse.ts'
import { overall } from './horizon.ts'
import { type Filling, fillingOf, type Moved } from './layers.ts'
import { type LossPrior, lossPrior } from './lossPrior.ts'
import { type Need, needOf, needsOn } from './need.ts'
import type { Now } from './now.ts'
import { type FaceReading, type Length, lengthKnown, readingsOf } from './position.ts'
import { isCopied, logError, type Reference, referenceOf } from './reference.ts'
import type { FuseDay, FuseFace } from './steps.ts'
import { unitWeights } from './units.ts'
import { type Volume, volumeOf } from './volume.ts'
import { type Whole, wholeByFace, wholeOf } from './whole.ts'

/** Everything the book says of a pile, put in numbers, before it is fused. */
export interface Evidence {
  pile: PileState
  filling: Filling
  loss: LossPrior
  whole: Whole
  dmPct: Pct
  /** What earlier piles of the same boxes showed. */
  shown?: Shown
  volume?: Volume
  length?: Length
  days: FedDay[]
  need?: Need
  refFrom: Reference['from']
  /** Loads, feeding and face cannot all be right. */
  odd: boolean
  /** The crew tells the ration, not the scale. */
  copied: boolean
  silentDays: number
  loggedDays: number
  loggedLb: Lb
  lostLb: Lb
  input: FuseIn
}

/** A pile that was only pushed over keeps this much of itself. Common practice, no source. */
const MOVED = { keep: 0.84, toldSd: 0.03, sd: 0.25 }

const movedInto = (book: Book, p: PileState): Moved[] => {
  const unit = unitWeights(book)
  return p.shiftsIn.flatMap(({ event: e }): Moved[] => {
    const from = pileState(book, e.pile)
    const fill = from && fillingOf(book, from)
    const long = from && lengthKnown(from)?.ft
    const each = e.count === undefined ? undefined : unit(e.unit ?? 'load')?.lb
    const byFeet = e.ft !== undefined && long && fill ? fill.lb * MOVED.keep * Math.min(1, e.ft / long) : undefined
    const lb = e.lb ?? (each === undefined ? undefined : each * e.count!) ?? byFeet
    if (!lb) return []
    const crop = fill?.layers.at(-1)?.crop ?? p.loads[0]?.event.crop ?? 'feed'
    return [{ on: e.on, lb, crop, dmPct: fill?.dmPct || cropDefaults(crop).dmPct.value, sd: e.lb !== undefined ? MOVED.toldSd : MOVED.sd }]
  })
}

/** What ended piles of the same boxes came to, each by its own record alone. */
const outcomes = (book: Book, p: PileState, filling: Filling, now: Now): Outcome[] =>
  relatives(book, p, filling, q => fillingOf(book, q).kinds, now.day).flatMap((q): Outcome[] => {
    const v = evidenceOf(book, q, { ...now, day: q.emptyOn ?? now.day }, true)
    if (v.whole.basis !== 'loads' || v.refFrom === 'none') return []
    const { mean, sd } = overall(fuse(v.input), 'whole', 'wholeVar')
    const expected = v.whole.usable.mean
    return [{ pile: q.name, on: q.emptyOn!, ratio: mean / expected, sd: sd / expected, kinds: v.filling.kinds }]
  })

/** Days as the fusion takes them; the way of the face along the pile goes with them where only feet are told. */
const fuseDays = (
  days: readonly FedDay[],
  ref: Reference,
  copied: boolean,
  readings: readonly FaceReading[],
  length: Length | undefined,
  today: string,
): FuseDay[] => {
  const feet = days.flatMap(d => d.ft ?? [])
  const typicalFt = feet.length ? feet.reduce((a, b) => a + b, 0) / feet.length : 0
  let around = 0
  let r = 0
  return days.map((d, i): FuseDay => {
    const lb = ref.days[i]!
    // A copied ration tells that the cows ate, not how much.
    const copy = copied && d.lb !== undefined
    while (length && r < readings.length && readings[r]!.on <= d.on) around = readings[r++]!.atFt / length.ft
    const here = around
    if (length) around = Math.min(1, around + (d.ft ?? d.silent * typicalFt) / length.ft)
    const early = d.on === today && d.lb !== undefined && d.lb < 0.7 * lb
    return {
      ref: lb,
      turned: i > 0 && lb !== ref.days[i - 1],
      lb: copy ? 0 : (d.lb ?? 0),
      tells: !copy && d.whole && !early,
      silent: copy ? 1 : d.silent,
      lostLb: d.lostLb,
      ...(d.ft !== undefined && d.lb === undefined && { ft: d.ft, around: here }),
    }
  })
}

/** Use by the face alone, lb a day: so far along, so much of the whole gone, in so many days. */
const useByFace = (p: PileState, readings: readonly FaceReading[], length: Length | undefined, whole: Whole): Lb | undefined => {
  const last = readings.at(-1)
  if (!last || !length || !p.openedOn || whole.inLb <= 0 || last.atFt < 1) return undefined
  const since = daysBetween(p.openedOn, last.on)
  return since >= 3 ? (whole.usable.mean * last.atFt) / length.ft / since : undefined
}

/** What went out of a pile until a day, lb; a day without a log at what it is told against. */
const fedTill = (days: readonly FedDay[], ref: Reference, until: string): Lb =>
  days.reduce((s, d, i) => s + (d.on <= until ? (d.lb ?? 0) + d.lostLb + d.silent * ref.days[i]! : 0), 0)

/** So many times off it is the loads that were told wrong or not at all; by one reading alone more. Common practice, no source. */
const OFF = 1.7
const OFF_ONE = 2.5

/**
 * A reading of the face and what was fed till then cannot be of a pile of this weight: a slip in the loads, as one load's weight told
 * as that of all. Near the toe of a ramp little is behind the face, so only a pile too small for what was fed is surely wrong.
 */
const contradicts = (whole: Whole, fed: Lb, along: Share, readings: number): boolean =>
  fed / Math.max(0.05, along) > (readings > 1 ? OFF : OFF_ONE) * whole.usable.mean

/** Share of the days that must have been weighed to stand against the loads, and how wrong a ration may be that nobody logged. Common practice, no source. */
const LOGGED: Share = 0.3
const UNSURE_USE = 0.5

/** Puts the book's word on a pile in numbers. `alone` leaves out what other piles showed. */
export const evidenceOf = (book: Book, p: PileState, now: Now, alone = false): Evidence => {
  const filling = fillingOf(book, p, movedInto(book, p))
  const length = lengthKnown(p)
  const volume = volumeOf(p, length, filling)
  const dmPct = filling.dmPct || cropDefaults(filling.layers[0]?.crop ?? 'corn silage').dmPct.value
  const loss = lossPrior(p, filling, volume, now)
  const shown =
    alone || !book.byType.has('empty') ? undefined : shownBy(filling, outcomes(book, p, filling, now), loss.sd / (1 - loss.mean))
  const days = fedOut(book, p, now)
  const readings = readingsOf(p, length)
  const needs = needsOn(
    book,
    p,
    days.map(d => d.on),
    dmPct,
  )
  const need = needOf(book, p, now.day, dmPct)
  let whole = wholeOf(filling, volume, loss, shown)
  let odd = false
  const ref = referenceOf(days, needs, need, useByFace(p, readings, length, whole))
  let { use } = ref
  const last = readings.at(-1)
  if (whole.inLb <= 0 && length && last && last.atFt >= 1 && ref.next > 0 && p.openedOn) {
    whole = wholeByFace(ref.next * Math.max(1, daysBetween(p.openedOn, last.on)), last.atFt / length.ft, loss)
  }
  if (
    length &&
    last &&
    whole.inLb > 0 &&
    readings.every(r => contradicts(whole, fedTill(days, ref, r.on), r.atFt / length.ft, readings.length))
  ) {
    odd = true
    // Weighed feed stands against the loads; days that were only taken as fed do not.
    const logged = days.filter(d => d.lb !== undefined).length
    if (logged >= LOGGED * days.length) whole = wholeByFace(fedTill(days, ref, last.on), last.atFt / length.ft, loss)
    else use = { mean: ref.use.mean, sd: Math.max(ref.use.sd, UNSURE_USE) }
  }
  const copied = ref.from === 'ration' && isCopied(days, ref.days)
  const fused = fuseDays(days, ref, copied, readings, length, now.day)
  const first = days[0]?.on
  const faces = readings.flatMap((f): FuseFace[] => {
    const at = first ? daysBetween(first, f.on) : -1
    return at >= 0 && at < days.length ? [{ at, atFt: f.atFt, fromFarEnd: f.fromFarEnd, sdFt: f.sdFt }] : []
  })
  const added = first ? p.loads.findLast(t => t.event.on > first)?.event.on : undefined
  const since =
    added && first
      ? { at: Math.min(days.length - 1, daysBetween(first, added)), atFt: readings.findLast(x => x.on <= added)?.atFt ?? 0 }
      : undefined
  return {
    pile: p,
    filling,
    loss,
    whole,
    dmPct,
    days,
    refFrom: ref.from,
    odd,
    copied,
    ...(shown && { shown }),
    ...(volume && { volume }),
    ...(length && { length }),
    ...(need && { need }),
    silentDays: fused.reduce((s, d) => s + d.silent, 0),
    loggedDays: days.filter(d => d.lb !== undefined).length,
    loggedLb: fused.reduce((s, d) => s + d.lb, 0),
    lostLb: fused.reduce((s, d) => s + d.lostLb, 0),
    input: {
      whole: whole.usable,
      opinions: whole.opinions,
      use,
      logSd: logError(fused.flatMap(d => (d.tells && d.ref > 0 ? [d.lb / d.ref] : []))),
      days: fused,
      refNext: ref.next,
      emptied: p.stage === 'empty',
      faces,
      ...(length && { length: { ft: length.ft, sd: length.sd } }),
      forms: length ? formsOf(length.ft, p.measured?.heightFt ?? p.planned.heightFt) : [form(0, 0, 1)],
      ...(since && { since }),
    },
  }
}
