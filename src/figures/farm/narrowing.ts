import { placeOf } from './advance.ts'
import { type Estimate, estimateFrom } from './estimate.ts'
import type { FuseIn } from './fuse.ts'

/** What the crew could tell to make the range narrower, the range now and then, each as half its width in days. */
export interface Narrowing {
  what: 'face' | 'tickets' | 'length' | 'ration'
  half: number
  after: number
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
    const at = e.parts.reduce((s, p) => s + p.weight * placeOf(p.form, p.at), 0) * length.ft
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
    const after = half(estimateFrom({ ...v, input: { ...input, ...change } }))
    if (after !== undefined && after < now * (1 - WORTH) && (!best || after < best.after)) best = { what, half: now, after }
  }
  return best
}
