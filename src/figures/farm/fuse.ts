import type { Ft, Lb, Share } from '../../units/measure.ts'
import { type Form, passed, passing, placeOf as placeOfShare } from './advance.ts'
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
const WAVES = 3
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
export const DAY_SD = 0.08
/** Feet of a bite are told by eye, ft. Common practice, no source. */
const FT_SD: Ft = 0.6
/** What is left when a pile is called empty, a share of the whole. Common practice, no source. */
const REST_SD: Share = 0.02

/**
 * Sets of guesses beside the form, each with how often it is so; the record shows which it is. `wide`: now and then something is far
 * off, a box that is not the one thought of, loads nobody told, a top that rotted; then the error of the whole is a multiple of the
 * usual. `uneven`: density differs along a pile by the day it was filled and how it was packed (single cores 61 to 470 kg/m3, bunker
 * means 206 to 354; D'Amours and Savoie 2005); error of the weight behind the face, twice what it is at its widest, as a share of
 * the whole.
 * How often is common practice, no source.
 */
const GUESSES: { wide: number; uneven: Share; weight: Share }[] = [
  { wide: 0.75, uneven: 0.012, weight: 0.42 },
  { wide: 0.75, uneven: 0.055, weight: 0.38 },
  { wide: 2, uneven: 0.04, weight: 0.2 },
]

const bound = (x: number): number => Math.min(1, Math.max(0, x))

/** Where a face stands as a share of a length that may be longer than told. */
const placeOfFace = (atFt: Ft, fromFarEnd: boolean, length: Ft, stretch: number): Share => {
  const long = length * (1 + stretch)
  return bound((fromFarEnd ? long - (length - atFt) : atFt) / long)
}

/** What a place along the pile means under one form: the share behind it, its change with the length and with the place. */
interface Place {
  behind: Share
  stretch: number
  slope: number
}

const placeOf = (form: Form, length: Ft, atFt: Ft, fromFarEnd: boolean): Place => {
  const u = placeOfFace(atFt, fromFarEnd, length, 0)
  const at = (stretch: number): Share => passed(form, placeOfFace(atFt, fromFarEnd, length, stretch))
  return { behind: passed(form, u), stretch: (at(0.01) - at(-0.01)) / 0.02, slope: passing(form, u) }
}

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
      ...(face && { face: placeOf(form, length, face.atFt, face.fromFarEnd) }),
      ...(ftDays && {
        feet: [placeOf(form, length, around * length, false), placeOf(form, length, around * length + ft, false)] as [Place, Place],
      }),
      ...(addedAtFt !== undefined && { added: placeOf(form, length, addedAtFt, false) }),
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
  for (let k = 0; k < WAVES; k++) h[FIRST_WAVE + k] = Math.sin((k + 1) * Math.PI * g)
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
  for (let k = 0; k < WAVES; k++) h[FIRST_WAVE + k] = Math.sin((k + 1) * Math.PI * to.behind) - Math.sin((k + 1) * Math.PI * from.behind)
  learn(b, h, 0, days * (((share * FT_SD) / ft) ** 2 + (ref * DAY_SD) ** 2))
}

const run = (inp: FuseIn, steps: readonly Placed[], wide: number, uneven: Share): { b: Belief; gone: Share } => {
  const unit = inp.whole.mean
  const waves = Array.from({ length: WAVES }, (_, k) => (uneven * Math.SQRT2) / ((k + 1) * Math.PI))
  const b = belief(
    [1, inp.use.mean, 0, 0, ...waves.map(() => 0)],
    [(wide * inp.whole.sd) / unit, inp.use.sd, 0, inp.length?.sd ?? 0, ...waves],
  )
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
  const c = (i: number, j: number): number => b.cov[i * N + j]!
  const m = (i: number): number => b.mean[i]!
  return {
    form,
    weight,
    belief: b,
    gone,
    left: (m(WHOLE) - m(SILENT) - gone) * unit,
    leftVar: (c(WHOLE, WHOLE) + c(SILENT, SILENT) - 2 * c(WHOLE, SILENT)) * unit ** 2,
    use: m(USE) * ref,
    useVar: c(USE, USE) * ref ** 2,
    covar: (c(WHOLE, USE) - c(SILENT, USE)) * unit * ref,
    whole: m(WHOLE) * unit,
    wholeVar: c(WHOLE, WHOLE) * unit ** 2,
    at: bound((gone + m(SILENT)) / Math.max(1e-9, m(WHOLE))),
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
    return GUESSES.map(({ wide, uneven, weight }) => ({ form, weight: form.weight * weight, ...run(inp, here, wide, uneven) }))
  })
  const logs = runs.map(r => r.b.evidence + Math.log(r.weight))
  const top = Math.max(...logs)
  const total = logs.reduce((t, l) => t + Math.exp(l - top), 0)
  return runs.map((r, i) => partOf(inp, r.form, Math.exp(logs[i]! - top) / total, r.b, r.gone)).filter(p => p.weight > LEAST_WEIGHT)
}

/** Guesses less likely than this move nothing. */
const LEAST_WEIGHT = 1e-4

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
      const place = placeOf(p.form, length.ft, placeOfShare(p.form, p.at) * length.ft, false)
      readFace(b, place, told.sdFt, length.ft, (0.4 * inp.refNext) / whole.mean, p.gone)
    } else if (told.what === 'tickets') learnOne(b, WHOLE, b.mean[WHOLE]!, added(whole.sd, told.sd) / whole.mean ** 2)
    else if (told.what === 'length' && length) learnOne(b, STRETCH, b.mean[STRETCH]!, added(length.sd, told.sd))
    else if (told.what === 'ration') learnOne(b, USE, b.mean[USE]!, added(use.sd, told.sd))
    const after = partOf(inp, p.form, p.weight, b, p.gone)
    // What was believed stays; only how sure it is changes.
    return { ...after, left: p.left, use: p.use, whole: p.whole, at: p.at }
  })
