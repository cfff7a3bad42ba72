import { passed } from './advance.ts'
import { type Estimate, estimateFrom } from './estimate.ts'
import type { FuseIn } from './fuse.ts'

/** What the crew could tell to make the range narrower, the range now and then, each as half its width in days. */
export interface Narrowing {
  what: 'face' | 'tickets' | 'length' | 'ration'
  half: number
  then: number
}

/** A careful reading of the face, ft; a box whose loads were weighed; a length taped; a ration read off the scale. */
const FACE_SD = 1.3
const TICKET_SD = 0.03
const LENGTH_SD = 0.015
const RATION_SD = 0.04
/** Less than this part of the range is not worth a walk. */
const WORTH = 0.12

const half = (e: Estimate): number | undefined => (e.days ? (e.days.high - e.days.low) / 2 : undefined)

/** Tries each thing that could be told, and gives the one that helps most; undefined where nothing helps much. */
export const narrowing = (e: Estimate): Narrowing | undefined => {
  const v = e.evidence
  const now = half(e)
  if (now === undefined || now < 1) return undefined
  const { input, length } = v
  const last = input.days.length - 1
  const tries: [Narrowing['what'], Partial<FuseIn>][] = []
  if (length && last >= 0) {
    const at = e.parts.reduce((s, p, i) => s + p.weight * inverse(e, i, p.at), 0) * length.ft
    tries.push(['face', { faces: [...input.faces, { at: last, atFt: at, fromFarEnd: false, sdFt: FACE_SD }] }])
    if (length.sd > LENGTH_SD) tries.push(['length', { length: { ft: length.ft, sd: LENGTH_SD } }])
  }
  if (v.basis === 'loads' && v.filling.sd > TICKET_SD) {
    const keep = 1 - v.loss.mean
    tries.push(['tickets', { whole: { mean: input.whole.mean, sd: v.inLb * Math.hypot(keep * TICKET_SD, v.loss.sd) } }])
  }
  if (v.loggedDays < 5 || v.copied) tries.push(['ration', { use: { ...input.use, sd: Math.min(input.use.sd, RATION_SD) } }])
  let best: Narrowing | undefined
  for (const [what, change] of tries) {
    const then = half(estimateFrom({ ...v, input: { ...input, ...change } }))
    if (then !== undefined && then < now * (1 - WORTH) && (!best || then < best.then)) best = { what, half: now, then }
  }
  return best
}

/** Where along the length the face stands when so much of the weight is gone. */
const inverse = (e: Estimate, form: number, gone: number): number => {
  const f = e.evidence.input.forms[form]!
  let a = 0
  let b = 1
  for (let i = 0; i < 25; i++) {
    const m = (a + b) / 2
    if (passed(f, m) < gone) a = m
    else b = m
  }
  return (a + b) / 2
}
