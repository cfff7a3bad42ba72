import type { Ft, Lb, Share } from '../../units/measure.ts'
import { type Form, passed, passing } from './advance.ts'
import { type Belief, belief, blur, drift, learn, normalBelow, relax } from './gauss.ts'

/** One day of a pile's feeding as the fusion needs it. */
export interface FuseDay {
  /** What the book says is fed that day, lb. The use factor is told against it. */
  ref: Lb
  /** True on a day when the ration was said anew. */
  turned: boolean
  /** Logged weight, lb. */
  lb: Lb
  /** Logged whole: its weight tells of the use. */
  tells: boolean
  /** Part of the day that was eaten without a log. */
  silent: Share
  /** Feet taken off, where those were told instead of a weight. */
  ft?: Ft
  /** Where the face was thought to be that day, as a share of the length; only with `ft`. */
  around?: Share
  /** Thrown out or moved away, lb. */
  lostLb: Lb
}

/** A face that was read. */
export interface FuseFace {
  /** Day of the reading, as an index into `days`. */
  at: number
  /** From the end first opened, ft. */
  atFt: Ft
  /** Told as what is left: then the far end is where it was measured from. */
  fromFarEnd: boolean
  sdFt: Ft
}

export interface FuseIn {
  /** What can be fed of the pile in all, before any reading of it, lb. */
  whole: { mean: Lb; sd: Lb }
  /** Other opinions of the same, each with its own error: volume times density. */
  opinions: { mean: Lb; sd: Lb }[]
  /** What is really fed, as a multiple of `ref`. */
  use: { mean: number; sd: number }
  /** Error of one logged day, as a share of `ref`. */
  logSd: Share
  days: FuseDay[]
  /** The need told for tomorrow, lb a day. */
  refNext: Lb
  turnedNext: boolean
  faces: FuseFace[]
  length?: { ft: Ft; sd: Share }
  forms: Form[]
  /** Readings before this day are of a pile that has been added to since. */
  since?: { at: number; atFt: Ft }
}

/** The belief about one form, boiled down to what the answers need. */
export interface Part {
  weight: Share
  left: Lb
  leftVar: number
  use: Lb
  useVar: number
  covar: number
  whole: Lb
  wholeVar: number
  /** Where the face is by this belief, as a share of the length. */
  at: Share
}

const WHOLE = 0
const USE = 1
const SILENT = 2
const STRETCH = 3
const WAVES = 3
const N = 4 + WAVES

/** Use wanders: people, cows and scales change by little steps. Standard deviation of one day's step, a share; common practice, no source. */
const USE_STEP = 0.006
/** When a ration is said anew, how much of the old over- or underfeeding is carried on. Common practice, no source. */
const CARRIED = 0.7
/**
 * Density differs along a pile, by the day it was filled and how it was packed (single cores 61 to 470 kg/m3, whole bunkers 206 to
 * 354; D'Amours and Savoie 2005): error of the weight behind the face, as a share of the whole, at its widest twice this bridge's.
 */
const UNEVEN = 0.07
/** Error of one silent day beside the use in general, a share. */
const DAY_SD = 0.08

const bound = (x: number): number => Math.min(1, Math.max(0, x))

const uOf = (f: FuseFace, length: Ft, stretch: number): Share => {
  const long = length * (1 + stretch)
  return bound((f.fromFarEnd ? long - (length - f.atFt) : f.atFt) / long)
}

const run = (inp: FuseIn, form: Form): { b: Belief; logged: number; unit: number } => {
  const unit = inp.whole.mean
  const b = belief(
    [1, inp.use.mean, 0, 0, ...Array(WAVES).fill(0)],
    [inp.whole.sd / unit, inp.use.sd, 0, inp.length?.sd ?? 0, ...Array.from({ length: WAVES }, (_, k) => (UNEVEN * Math.SQRT2) / ((k + 1) * Math.PI))],
  )
  const h = new Float64Array(N)
  for (const o of inp.opinions) {
    h.fill(0)
    h[WHOLE] = 1
    learn(b, h, o.mean / unit, (o.sd / unit) ** 2)
  }
  let logged = 0
  let f = 0
  let remRef = 1
  let gRef = 0
  const length = inp.length?.ft
  const useVar = inp.use.sd ** 2
  for (const [i, d] of inp.days.entries()) {
    if (d.turned) relax(b, USE, CARRIED, inp.use.mean, (1 - CARRIED ** 2) * useVar * 0.5)
    else blur(b, USE, USE_STEP ** 2)
    const ref = d.ref / unit
    if (d.tells && ref > 0) {
      h.fill(0)
      h[USE] = 1
      learn(b, h, d.lb / d.ref, inp.logSd ** 2)
    }
    if (d.silent > 0) {
      drift(b, SILENT, USE, d.silent * ref)
      blur(b, SILENT, d.silent * (ref * DAY_SD) ** 2)
    }
    if (d.ft !== undefined && d.around !== undefined && length !== undefined && ref > 0) {
      // So many feet are so much of the whole, and that is a day's use.
      const share = (passing(form, d.around) * d.ft) / length
      h.fill(0)
      h[WHOLE] = share
      h[USE] = -ref
      learn(b, h, 0, ((share * FT_SD) / d.ft) ** 2 + (ref * DAY_SD) ** 2 + (0.15 * share) ** 2)
    }
    logged += (d.lb + d.lostLb) / unit
    if (inp.since?.at === i && length !== undefined) {
      gRef = passed(form, bound(inp.since.atFt / length))
      remRef = logged + b.mean[SILENT]!
    }
    while (f < inp.faces.length && inp.faces[f]!.at <= i) {
      const face = inp.faces[f++]!
      if (length === undefined) continue
      const u = uOf(face, length, 0)
      const all = passed(form, u)
      const late = inp.since !== undefined
      const g = late ? (all - gRef) / Math.max(0.05, 1 - gRef) : all
      if (late && (face.at < inp.since!.at || g <= 0)) continue
      h.fill(0)
      h[WHOLE] = g
      h[SILENT] = -1
      const stretched = (passed(form, uOf(face, length, 0.01)) - passed(form, uOf(face, length, -0.01))) / 0.02
      h[STRETCH] = late ? 0 : stretched
      for (let k = 0; k < WAVES; k++) h[4 + k] = Math.sin((k + 1) * Math.PI * g)
      const read = (passing(form, u) * face.sdFt) / length
      learn(b, h, late ? logged - remRef * (1 - g) : logged, read ** 2 + (0.4 * ref) ** 2)
    }
  }
  return { b, logged, unit }
}
/** Feet of a bite are told by eye, ft. */
const FT_SD = 0.6

/** Works through the record once for each form, and weighs the forms by how well each foretold it. */
export const fuse = (inp: FuseIn): Part[] => {
  const parts: (Part & { log: number })[] = inp.forms.map(form => {
    const { b, logged, unit } = run(inp, form)
    if (inp.turnedNext) relax(b, USE, CARRIED, inp.use.mean, (1 - CARRIED ** 2) * inp.use.sd ** 2 * 0.5)
    const c = (i: number, j: number): number => b.cov[i * N + j]!
    const m = (i: number): number => b.mean[i]!
    const left = m(WHOLE) - m(SILENT) - logged
    const leftVar = c(WHOLE, WHOLE) + c(SILENT, SILENT) - 2 * c(WHOLE, SILENT)
    const ref = inp.refNext
    return {
      log: b.evidence + Math.log(form.weight),
      weight: 0,
      left: left * unit,
      leftVar: leftVar * unit ** 2,
      use: m(USE) * ref,
      useVar: c(USE, USE) * ref ** 2,
      covar: (c(WHOLE, USE) - c(SILENT, USE)) * unit * ref,
      whole: m(WHOLE) * unit,
      wholeVar: c(WHOLE, WHOLE) * unit ** 2,
      at: bound((logged + m(SILENT)) / Math.max(1e-9, m(WHOLE))),
    }
  })
  const top = Math.max(...parts.map(p => p.log))
  const total = parts.reduce((t, p) => t + Math.exp(p.log - top), 0)
  return parts.map(({ log, ...p }) => ({ ...p, weight: Math.exp(log - top) / total }))
}

/** The day's own ups and downs and the last wedge that nobody feeds, days. */
const END_DAYS = 0.7

/** Chance that the pile is gone within `d` days: what is left less `d` days of use falls below nothing. */
const goneBy = (parts: readonly Part[], d: number): Share => {
  let t = 0
  for (const p of parts) {
    const wander = (USE_STEP * p.use) ** 2 * d
    const v = p.leftVar + d * d * (p.useVar + wander / 3) - 2 * d * p.covar + d * (DAY_SD * p.use) ** 2 + (END_DAYS * p.use) ** 2
    t += p.weight * normalBelow((d * p.use - p.left) / Math.sqrt(Math.max(1e-9, v)))
  }
  return t
}

/** The number of days within which the pile is gone with chance `q`. Never below 0; undefined where nothing is fed. */
export const daysAt = (parts: readonly Part[], q: Share): number | undefined => {
  if (!parts.some(p => p.use > 0)) return undefined
  if (goneBy(parts, 0) >= q) return 0
  let low = 0
  let high = 8
  while (goneBy(parts, high) < q && high < 4096) high *= 2
  if (high >= 4096) return undefined
  for (let i = 0; i < 40; i++) {
    const mid = (low + high) / 2
    if (goneBy(parts, mid) < q) low = mid
    else high = mid
  }
  return (low + high) / 2
}

/** Mean and standard deviation of one of the numbers over all forms. */
export const overall = (parts: readonly Part[], mean: 'left' | 'use' | 'whole', variance: 'leftVar' | 'useVar' | 'wholeVar'): { mean: number; sd: number } => {
  const m = parts.reduce((t, p) => t + p.weight * p[mean], 0)
  const v = parts.reduce((t, p) => t + p.weight * (p[variance] + (p[mean] - m) ** 2), 0)
  return { mean: m, sd: Math.sqrt(Math.max(0, v)) }
}
