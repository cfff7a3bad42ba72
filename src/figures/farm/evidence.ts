import { type Book, pileState } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { addDays, daysBetween } from '../../units/calendar.ts'
import type { Lb, Pct, Share } from '../../units/measure.ts'
import { form, formsOf } from './advance.ts'
import { type FedDay, fedOut, median } from './fedOut.ts'
import type { FuseIn } from './fuse.ts'
import { type Filling, fillingOf, type Moved } from './layers.ts'
import { type LossPrior, lossPrior } from './lossPrior.ts'
import { type Need, needOf, needsOn } from './need.ts'
import type { Now } from './now.ts'
import { type Length, lengthKnown, readingsOf } from './position.ts'
import type { FuseDay, FuseFace } from './steps.ts'
import { unitWeights } from './units.ts'
import { type Volume, volumeOf } from './volume.ts'

/** Everything the book says of a pile, put in numbers, before it is fused. */
export interface Evidence {
  pile: PileState
  filling: Filling
  loss: LossPrior
  /** Weight in, by the book and as it is expected to be, lb as fed. */
  inLb: Lb
  dmPct: Pct
  basis: 'loads' | 'size'
  volume?: Volume
  length?: Length
  days: FedDay[]
  need?: Need
  /** The use was worked out from the logs or the face because no ration is known. */
  refFrom: 'ration' | 'logs' | 'face' | 'none'
  /** The crew tells the ration, not the scale. */
  copied: boolean
  silentDays: number
  loggedDays: number
  loggedLb: Lb
  lostLb: Lb
  input: FuseIn
}

/** Really fed over the ration: refusals and what falls beside, 5 to 10 % at least (Cornell, South Central New York 2020); a part of it is in what is told. */
const OVER: Share = 1.03
const USE_SD = { pile: 0.07, crop: 0.1, herd: 0.13, intake: 0.3, logs: 0.1, face: 0.5 }
const SHARED_SD: Share = 0.25
/** Nothing at all is known of the weight: only the face tells. */
const UNKNOWN_SD: Share = 0.5

const movedInto = (book: Book, p: PileState): Moved[] => {
  const unit = unitWeights(book)
  return p.shiftsIn.flatMap(({ event: e }): Moved[] => {
    const from = pileState(book, e.pile)
    const crop = from?.loads.at(-1)?.event.crop ?? p.loads[0]?.event.crop ?? 'feed'
    const fill = from ? fillingOf(book, from) : undefined
    const long = from ? lengthKnown(from)?.ft : undefined
    const each = e.count === undefined ? undefined : unit(e.unit ?? 'load')?.lb
    const byFeet = e.ft !== undefined && long && fill ? fill.lb * 0.84 * Math.min(1, e.ft / long) : undefined
    const lb = e.lb ?? (each === undefined ? undefined : each * e.count!) ?? byFeet
    if (!lb) return []
    return [{ on: e.on, lb, crop, dmPct: fill?.dmPct || 38, sd: e.lb !== undefined ? 0.03 : 0.25 }]
  })
}

const NOMINAL: Share = 0.004

/** Most of the logs are the ration to the pound: the figure was copied, the scale was not read. */
const isCopied = (days: readonly FedDay[], refs: readonly (Lb | undefined)[]): boolean => {
  const logged = days.flatMap((d, i) => (d.lb !== undefined && refs[i] ? [Math.abs(d.lb / refs[i]! - 1)] : []))
  return logged.length >= 4 && logged.filter(x => x < NOMINAL).length >= 0.7 * logged.length
}

/** Error of one day's log, from how the logs differ from one to the next. */
const logError = (ratios: readonly number[]): Share => {
  if (ratios.length < 4) return 0.1
  const steps = ratios.slice(1).map((r, i) => Math.abs(r - ratios[i]!))
  return Math.min(0.3, Math.max(0.025, (1.4826 * median(steps)!) / Math.SQRT2))
}

export const evidenceOf = (book: Book, p: PileState, now: Now): Evidence => {
  const moved = movedInto(book, p)
  const filling = fillingOf(book, p, moved)
  const length = lengthKnown(p)
  const volume = volumeOf(p, length, filling)
  const dmPct = filling.dmPct || 38
  const loss = lossPrior(p, filling, volume, now)
  const keep = 1 - loss.mean
  const days = fedOut(book, p, now)

  const byBox = filling.lb * filling.light
  const bySize = volume ? volume.lb : undefined
  const basis = filling.lb > 0 ? 'loads' : 'size'
  const inLb = basis === 'loads' ? byBox : (bySize ?? 0)
  const sdIn = basis === 'loads' ? filling.sd : volume ? volume.sd : UNKNOWN_SD
  const whole = { mean: inLb * keep, sd: inLb * Math.hypot(keep * sdIn, loss.sd) }
  const opinions = basis === 'loads' && volume?.form.measured ? [{ mean: volume.lb * keep, sd: volume.lb * volume.sd }] : []

  const needs = needsOn(
    book,
    p,
    days.map(d => d.on),
    dmPct,
  )
  const firstNeed = needs.find(n => n !== undefined)
  const need = needOf(book, p, now.day, dmPct)
  const logs = days.flatMap(d => (d.lb !== undefined && d.whole ? [d.lb] : []))
  const fromLogs = logs.length >= 3 && (!firstNeed || firstNeed.from === 'intake')
  const readings = readingsOf(p, length)
  let refs: (Lb | undefined)[] = days.map((_, i) => (fromLogs ? median(logs) : (needs[i] ?? firstNeed)?.lbDay))
  let refFrom: Evidence['refFrom'] = fromLogs ? 'logs' : (firstNeed ?? need) ? 'ration' : 'none'
  let refNext = fromLogs ? median(logs)! : (need ?? firstNeed)?.lbDay
  if (refFrom === 'none' && logs.length) {
    refFrom = 'logs'
    refs = days.map(() => median(logs))
    refNext = median(logs)
  }
  const lastReading = readings.at(-1)
  if (refFrom === 'none' && lastReading && length && p.openedOn && inLb > 0) {
    const since = daysBetween(p.openedOn, lastReading.on)
    if (since >= 3 && lastReading.atFt > 0) {
      refFrom = 'face'
      const lb = (whole.mean * lastReading.atFt) / length.ft / since
      refs = days.map(() => lb)
      refNext = lb
    }
  }
  const copied = refFrom === 'ration' && isCopied(days, refs)
  const from = refFrom === 'ration' ? (firstNeed ?? need)!.from : refFrom
  const shared = refFrom === 'ration' && (need ?? firstNeed)!.sharedBy > 1
  const use =
    refFrom === 'ration' && from !== 'intake'
      ? { mean: OVER, sd: Math.hypot(USE_SD[from as 'pile'], shared ? SHARED_SD : 0) }
      : { mean: 1, sd: USE_SD[from as 'pile'] ?? 0.5 }

  const feet = days.flatMap(d => d.ft ?? [])
  const typicalFt = feet.length ? feet.reduce((a, b) => a + b, 0) / feet.length : 0
  let around = 0
  let r = 0
  const fused = days.map((d, i): FuseDay => {
    const ref = refs[i] ?? refNext ?? 0
    const whole1 = copied && d.lb !== undefined
    while (length && r < readings.length && readings[r]!.on <= d.on) around = readings[r++]!.atFt / length.ft
    const here = around
    if (length) around = Math.min(1, around + (d.ft ?? d.silent * typicalFt) / length.ft)
    const turned = i > 0 && refFrom === 'ration' && refs[i] !== refs[i - 1]
    return {
      ref,
      turned,
      lb: whole1 ? 0 : (d.lb ?? 0),
      tells: !copied && d.lb !== undefined && d.whole && !(d.on === now.day && refFrom !== 'logs' && d.lb < 0.7 * ref),
      silent: whole1 ? 1 : d.silent,
      lostLb: d.lostLb,
      ...(d.ft !== undefined && d.lb === undefined && { ft: d.ft, around: here }),
    }
  })
  const ratios = fused.flatMap(d => (d.tells && d.ref > 0 ? [d.lb / d.ref] : []))
  const first = days[0]?.on
  const faces: FuseFace[] = first
    ? readings.flatMap(f => {
        const at = daysBetween(first, f.on)
        return at >= 0 && at < days.length ? [{ at, atFt: f.atFt, fromFarEnd: f.fromFarEnd, sdFt: f.sdFt }] : []
      })
    : []
  const added = first ? p.loads.findLast(t => t.event.on > first)?.event.on : undefined
  const sinceAt = added && first ? Math.min(days.length - 1, daysBetween(first, added)) : undefined
  const sinceFt = sinceAt === undefined ? undefined : (readings.findLast(x => x.on <= added!)?.atFt ?? 0)

  return {
    pile: p,
    filling,
    loss,
    inLb,
    dmPct,
    basis,
    days,
    refFrom,
    copied,
    ...(volume && { volume }),
    ...(length && { length }),
    ...(need && { need }),
    silentDays: fused.reduce((s, d) => s + d.silent, 0),
    loggedDays: logs.length,
    loggedLb: fused.reduce((s, d) => s + d.lb, 0),
    lostLb: fused.reduce((s, d) => s + d.lostLb, 0),
    input: {
      whole,
      opinions,
      use,
      logSd: logError(ratios),
      days: fused,
      refNext: refNext ?? 0,
      emptied: p.stage === 'empty',
      faces,
      ...(length && { length: { ft: length.ft, sd: length.sd } }),
      forms: length ? formsOf(length.ft, p.measured?.heightFt ?? p.planned.heightFt) : [form(0, 0, 1)],
      ...(sinceAt !== undefined && sinceFt !== undefined && { since: { at: sinceAt, atFt: sinceFt } }),
    },
  }
}

/** Used only to name the day a pile runs out. */
export const runsOutOn = (now: Now, days: number): string => addDays(now.day, Math.floor(days))
