import type { Ft, Lb, Share } from '../../units/measure.ts'
import { type Form, passed, passing } from './advance.ts'
import { type Belief, belief, blur, drift, learn, learnOne, relax } from './gauss.ts'
import { type FuseDay, type FuseFace, type Step, stepsOf } from './steps.ts'

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
  faces: FuseFace[]
  length?: { ft: Ft; sd: Share }
  forms: Form[]
  /** Readings before this day are of a pile that has been added to since. */
  since?: { at: number; atFt: Ft }
  /** Told to be all gone at the end of the days. */
  emptied: boolean
}

/** The belief under one set of guesses, boiled down to what the answers need. */
export interface Part {
  form: Form
  weight: Share
  left: Lb
  leftVar: number
  use: Lb
  useVar: number
  covar: number
  whole: Lb
  wholeVar: number
  /** Share of the weight that lies behind the face by this belief. */
  at: Share
}

const WHOLE = 0
const USE = 1
const SILENT = 2
const STRETCH = 3
const WAVES = 3
const FIRST_WAVE = 4
const N = FIRST_WAVE + WAVES

/**
 * Use wanders: people, cows and scales change by little steps. Standard deviation of one day's step, a share; common practice, no
 * source.
 */
export const USE_STEP = 0.0045
/** When a ration is said anew, how much of the old over- or underfeeding is carried on. Common practice, no source. */
const CARRIED = 0.7
/** Error of one silent day beside the use in general, a share. Common practice, no source. */
export const DAY_SD = 0.08
/** Feet of a bite are told by eye, ft. Common practice, no source. */
const FT_SD: Ft = 0.6
/** What is left when a pile is called empty, a share of the whole. Common practice, no source. */
const REST_SD: Share = 0.02

/**
 * Sets of guesses beside the form, each with how often it is so; the record shows which it is. `wide`: now and then something is far
 * off, a box that is not the one thought of, loads nobody told, a top that rotted; then the error of the whole is a multiple of the
 * usual. `uneven`: density differs along a pile by the day it was filled and how it was packed (single cores 61 to 470 kg/m3, bunker
 * means 206 to 354; D'Amours and Savoie 2005); error of the weight behind the face, twice what it is at its widest, as a share of the whole.
 * How often is common practice, no source.
 */
const GUESSES: { wide: number; uneven: Share; weight: Share }[] = [
  { wide: 0.85, uneven: 0.03, weight: 0.4 },
  { wide: 0.85, uneven: 0.09, weight: 0.4 },
  { wide: 2, uneven: 0.06, weight: 0.2 },
]

const bound = (x: number): number => Math.min(1, Math.max(0, x))

/** Where a face stands as a share of a length that may be longer than told. */
const placeOfFace = (f: FuseFace, length: Ft, stretch: number): Share => {
  const long = length * (1 + stretch)
  return bound((f.fromFarEnd ? long - (length - f.atFt) : f.atFt) / long)
}

interface Run {
  b: Belief
  /** Told as gone, in units of the whole. */
  gone: number
}

interface Since {
  left: number
  passed: Share
}

/** What a face read says: whole x (share behind it) = what is gone. Linear in the whole, the length's error and the waves of density. */
const readFace = (b: Belief, h: Float64Array, inp: FuseIn, form: Form, step: Step, gone: number, since: Since | undefined): void => {
  const face = step.face!
  const length = inp.length!.ft
  const u = placeOfFace(face, length, 0)
  const behind = passed(form, u)
  const g = since ? (behind - since.passed) / Math.max(0.05, 1 - since.passed) : behind
  if (since && g <= 0) return
  h.fill(0)
  h[WHOLE] = g
  h[SILENT] = -1
  if (!since) h[STRETCH] = (passed(form, placeOfFace(face, length, 0.01)) - passed(form, placeOfFace(face, length, -0.01))) / 0.02
  for (let k = 0; k < WAVES; k++) h[FIRST_WAVE + k] = Math.sin((k + 1) * Math.PI * g)
  const readSd = (passing(form, u) * face.sdFt) / length
  const daySd = (0.4 * step.ref) / inp.whole.mean
  learn(b, h, since ? gone - since.left * (1 - g) : gone, readSd ** 2 + daySd ** 2)
}

/** So many feet are so much of the whole, and that is some days' use. */
const readFeet = (b: Belief, h: Float64Array, form: Form, step: Step, length: Ft, ref: number): void => {
  const a = passed(form, bound(step.around))
  const c = passed(form, bound(step.around + step.ft / length))
  const share = c - a
  if (share <= 0) return
  h.fill(0)
  h[WHOLE] = share
  h[USE] = -ref * step.ftDays
  h[STRETCH] = -share
  for (let k = 0; k < WAVES; k++) h[FIRST_WAVE + k] = Math.sin((k + 1) * Math.PI * c) - Math.sin((k + 1) * Math.PI * a)
  learn(b, h, 0, step.ftDays * (((share * FT_SD) / step.ft) ** 2 + (ref * DAY_SD) ** 2))
}

const run = (inp: FuseIn, steps: readonly Step[], form: Form, wide: number, uneven: Share): Run => {
  const unit = inp.whole.mean
  const waves = Array.from({ length: WAVES }, (_, k) => (uneven * Math.SQRT2) / ((k + 1) * Math.PI))
  const b = belief(
    [1, inp.use.mean, 0, 0, ...waves.map(() => 0)],
    [(wide * inp.whole.sd) / unit, inp.use.sd, 0, inp.length?.sd ?? 0, ...waves],
  )
  const h = new Float64Array(N)
  for (const o of inp.opinions) learnOne(b, WHOLE, o.mean / unit, (o.sd / unit) ** 2)
  const length = inp.length?.ft
  let gone = 0
  let since: Since | undefined
  for (const step of steps) {
    if (step.turned) relax(b, USE, CARRIED, inp.use.mean, (1 - CARRIED ** 2) * inp.use.sd ** 2 * 0.5)
    blur(b, USE, step.days * USE_STEP ** 2)
    const ref = step.ref / unit
    if (step.tells) learnOne(b, USE, step.ratio, inp.logSd ** 2 / step.tells)
    if (step.silent > 0) {
      drift(b, SILENT, USE, step.silent * ref)
      blur(b, SILENT, step.silent * (ref * DAY_SD) ** 2)
    }
    if (step.ftDays && length && ref > 0) readFeet(b, h, form, step, length, ref)
    gone += step.goneLb / unit
    if (step.addedAtFt !== undefined && length)
      since = { left: gone + b.mean[SILENT]!, passed: passed(form, bound(step.addedAtFt / length)) }
    else if (step.face && length) readFace(b, h, inp, form, step, gone, since)
  }
  if (inp.emptied) {
    h.fill(0)
    h[WHOLE] = 1
    h[SILENT] = -1
    learn(b, h, gone, REST_SD ** 2)
  }
  return { b, gone }
}

/** Works through the record once for each set of guesses, and weighs them by how well each foretold it. */
export const fuse = (inp: FuseIn): Part[] => {
  // After an addition only what was read of the new pile tells.
  const faces = inp.since ? inp.faces.filter(f => f.at >= inp.since!.at) : inp.faces
  const steps = stepsOf(inp.days, faces, inp.since)
  const told = inp.faces.length > 0 || steps.some(s => s.ftDays)
  const forms = told ? inp.forms : inp.forms.slice(0, 1).map(f => ({ ...f, weight: 1 }))
  const all = forms.flatMap(form => GUESSES.map(g => ({ ...g, form, weight: form.weight * g.weight })))
  const unit = inp.whole.mean
  const ref = inp.refNext
  const parts = all.map(({ form, wide, uneven, weight }): Part & { log: number } => {
    const { b, gone } = run(inp, steps, form, wide, uneven)
    const c = (i: number, j: number): number => b.cov[i * N + j]!
    const m = (i: number): number => b.mean[i]!
    return {
      log: b.evidence + Math.log(weight),
      form,
      weight: 0,
      left: (m(WHOLE) - m(SILENT) - gone) * unit,
      leftVar: (c(WHOLE, WHOLE) + c(SILENT, SILENT) - 2 * c(WHOLE, SILENT)) * unit ** 2,
      use: m(USE) * ref,
      useVar: c(USE, USE) * ref ** 2,
      covar: (c(WHOLE, USE) - c(SILENT, USE)) * unit * ref,
      whole: m(WHOLE) * unit,
      wholeVar: c(WHOLE, WHOLE) * unit ** 2,
      at: bound((gone + m(SILENT)) / Math.max(1e-9, m(WHOLE))),
    }
  })
  const top = Math.max(...parts.map(p => p.log))
  const total = parts.reduce((t, p) => t + Math.exp(p.log - top), 0)
  return parts.map(({ log, ...p }) => ({ ...p, weight: Math.exp(log - top) / total })).filter(p => p.weight > 1e-5)
}
