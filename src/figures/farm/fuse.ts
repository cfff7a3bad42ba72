import type { Ft, Lb, Share } from '../../units/measure.ts'
import { type Form, placeOf } from './advance.ts'
import { type Belief, belief, blur, drift, learn, learnOne, relax } from './gauss.ts'
import { type Guess, guessesOf } from './guesses.ts'
import { type Place, placeAt, WAVES, wavesAt } from './place.ts'
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
  belief: Belief
  /** Told as gone, as a share of the whole expected. */
  gone: Share
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
const FIRST_WAVE = 4
const N = FIRST_WAVE + WAVES

/**
 * Use wanders: people, cows and scales change by little steps. Standard deviation of one day's step, a share; common practice, no
 * source.
 */
const USE_STEP = 0.004
/** When a ration is said anew, how much of the old over- or underfeeding is carried on. Common practice, no source. */
const CARRIED = 0.7
/** Error of one silent day beside the use in general, a share. Common practice, no source. */
export const DAY_SD = 0.065
/** Feet of a bite are told by eye, ft. Common practice, no source. */
const FT_SD: Ft = 0.6
/** The mixer's scale weighs all days alike wrong: against the loads, a share. Common practice, no source. */
const SCALE_SD: Share = 0.02
/** What is left when a pile is called empty, a share of the whole. Common practice, no source. */
const REST_SD: Share = 0.02

const bound = (x: number): number => Math.min(1, Math.max(0, x))

/** Steps with what their places mean under one form. */
interface Placed {
  step: Step
  face?: Place
  feet?: [Place, Place]
  added?: Place
}

const placed = (steps: readonly Step[], form: Form, length: Ft | undefined): Placed[] =>
  steps.map(step => {
    if (!length) return { step }
    const { face, ftDays, around, ft, addedAtFt } = step
    return {
      step,
      ...(face && { face: placeAt(form, length, face.atFt, face.fromFarEnd) }),
      ...(ftDays && {
        feet: [placeAt(form, length, around * length, false), placeAt(form, length, around * length + ft, false)] as [Place, Place],
      }),
      ...(addedAtFt !== undefined && { added: placeAt(form, length, addedAtFt, false) }),
    }
  })

interface Since {
  left: number
  passed: Share
}

const h = new Float64Array(N)

/** At the very toe a foot is nothing by the form; in the yard it is still something. Common practice, no source. */
const TOE_SLOPE = 0.1

/** What a face read says: whole x (share behind it) = what is gone. Linear in the whole, the length's error and the waves of density. */
export const readFace = (b: Belief, place: Place, sdFt: Ft, length: Ft, daySd: Share, gone: Share, since?: Since): void => {
  const g = since ? (place.behind - since.passed) / Math.max(0.05, 1 - since.passed) : place.behind
  if (since && g <= 0) return
  h.fill(0)
  h[WHOLE] = g
  h[SILENT] = -1
  if (!since) h[STRETCH] = place.stretch
  const waves = since ? wavesAt(g) : place.waves
  for (let k = 0; k < WAVES; k++) h[FIRST_WAVE + k] = waves[k]!
  learn(b, h, since ? gone - since.left * (1 - g) : gone, ((Math.max(place.slope, TOE_SLOPE) * sdFt) / length) ** 2 + daySd ** 2)
}

/** So many feet are so much of the whole, and that is some days' use. */
const readFeet = (b: Belief, from: Place, to: Place, ft: Ft, days: number, ref: Share): void => {
  const share = to.behind - from.behind
  if (share <= 0) return
  h.fill(0)
  h[WHOLE] = share
  h[USE] = -ref * days
  h[STRETCH] = -share
  for (let k = 0; k < WAVES; k++) h[FIRST_WAVE + k] = to.waves[k]! - from.waves[k]!
  learn(b, h, 0, days * (((share * FT_SD) / ft) ** 2 + (ref * DAY_SD) ** 2))
}

const run = (inp: FuseIn, steps: readonly Placed[], { wide, uneven, long }: Guess): { b: Belief; gone: Share } => {
  const unit = inp.whole.mean
  const sd = Math.hypot(wide * inp.whole.sd, SCALE_SD * unit)
  const waves = Array.from({ length: WAVES }, (_, k) => (uneven * Math.SQRT2) / ((k + 1) * Math.PI))
  const b = belief([1, inp.use.mean, 0, 0, ...waves.map(() => 0)], [sd / unit, inp.use.sd, 0, long * (inp.length?.sd ?? 0), ...waves])
  for (const o of inp.opinions) learnOne(b, WHOLE, o.mean / unit, (o.sd / unit) ** 2)
  let gone = 0
  let since: Since | undefined
  for (const { step, face, feet, added } of steps) {
    if (step.turned) relax(b, USE, CARRIED, inp.use.mean, (1 - CARRIED ** 2) * inp.use.sd ** 2 * 0.5)
    blur(b, USE, step.days * USE_STEP ** 2)
    const ref = step.ref / unit
    if (step.tells) learnOne(b, USE, step.ratio, inp.logSd ** 2 / step.tells)
    if (step.silent > 0) {
      drift(b, SILENT, USE, step.silent * ref)
      blur(b, SILENT, step.silent * (ref * DAY_SD) ** 2)
    }
    if (feet && ref > 0) readFeet(b, feet[0], feet[1], step.ft, step.ftDays, ref)
    gone += step.goneLb / unit
    if (added) since = { left: gone + b.mean[SILENT]!, passed: added.behind }
    else if (face) readFace(b, face, step.face!.sdFt, inp.length!.ft, 0.4 * ref, gone, since)
  }
  if (inp.emptied) {
    h.fill(0)
    h[WHOLE] = 1
    h[SILENT] = -1
    learn(b, h, gone, REST_SD ** 2)
  }
  return { b, gone }
}

const partOf = (inp: FuseIn, form: Form, weight: Share, b: Belief, gone: Share): Part => {
  const unit = inp.whole.mean
  const ref = inp.refNext
  const { mean, cov } = b
  const left = mean[WHOLE]! - mean[SILENT]! - gone
  return {
    form,
    weight,
    belief: b,
    gone,
    left: left * unit,
    leftVar: (cov[WHOLE * N + WHOLE]! + cov[SILENT * N + SILENT]! - 2 * cov[WHOLE * N + SILENT]!) * unit ** 2,
    use: mean[USE]! * ref,
    useVar: cov[USE * N + USE]! * ref ** 2,
    covar: (cov[WHOLE * N + USE]! - cov[SILENT * N + USE]!) * unit * ref,
    whole: mean[WHOLE]! * unit,
    wholeVar: cov[WHOLE * N + WHOLE]! * unit ** 2,
    at: bound((gone + mean[SILENT]!) / Math.max(1e-9, mean[WHOLE]!)),
  }
}

/** Works through the record once for each set of guesses, and weighs them by how well each foretold it. */
export const fuse = (inp: FuseIn): Part[] => {
  // After an addition only what was read of the new pile tells.
  const faces = inp.since ? inp.faces.filter(f => f.at >= inp.since!.at) : inp.faces
  const steps = stepsOf(inp.days, faces, inp.since)
  const told = inp.faces.length > 0 || steps.some(s => s.ftDays)
  const forms = told ? inp.forms : inp.forms.slice(0, 1).map(f => ({ ...f, weight: 1 }))
  const runs = forms.flatMap(form => {
    const here = placed(steps, form, inp.length?.ft)
    return guessesOf(form).map(g => ({ form, weight: form.weight * g.weight, ...run(inp, here, g) }))
  })
  const logs = runs.map(r => r.b.evidence + Math.log(r.weight))
  const top = Math.max(...logs)
  const total = logs.reduce((t, l) => t + Math.exp(l - top), 0)
  return runs.map((r, i) => partOf(inp, r.form, Math.exp(logs[i]! - top) / total, r.b, r.gone)).filter(p => p.weight > LEAST_WEIGHT)
}

/** Guesses less likely than this move nothing. */
const LEAST_WEIGHT = 1e-3

/** One more thing told about a pile: where its face stands, or how sure its weight, its length or its ration is. */
export type Told = { what: 'face'; sdFt: Ft } | { what: 'tickets'; sd: Lb } | { what: 'length'; sd: Share } | { what: 'ration'; sd: Share }

/** Precision that has to come on top of one error to make it another: readings of one number add up by the inverse of their variances. */
const added = (before: number, after: number): number => 1 / Math.max(1e-12, 1 / after ** 2 - 1 / before ** 2)

/** The parts as they would be had the crew told one more thing, and told just what is believed: only the errors change. */
export const toldMore = (inp: FuseIn, parts: readonly Part[], told: Told): Part[] =>
  parts.map(p => {
    const b: Belief = { ...p.belief, mean: p.belief.mean.slice(), cov: p.belief.cov.slice() }
    const { length, whole, use } = inp
    if (told.what === 'face' && length) {
      const place = placeAt(p.form, length.ft, placeOf(p.form, p.at) * length.ft, false)
      readFace(b, place, told.sdFt, length.ft, (0.4 * inp.refNext) / whole.mean, p.gone)
    } else if (told.what === 'tickets') learnOne(b, WHOLE, b.mean[WHOLE]!, added(whole.sd, told.sd) / whole.mean ** 2)
    else if (told.what === 'length' && length) learnOne(b, STRETCH, b.mean[STRETCH]!, added(length.sd, told.sd))
    else if (told.what === 'ration') learnOne(b, USE, b.mean[USE]!, added(use.sd, told.sd))
    const after = partOf(inp, p.form, p.weight, b, p.gone)
    // What was believed stays; only how sure it is changes.
    return { ...after, left: p.left, use: p.use, whole: p.whole, at: p.at }
  })
