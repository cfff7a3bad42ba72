import type { Estimate } from './estimate.ts'
import { type Part, type Told, toldMore } from './fuse.ts'
import { daysAt } from './horizon.ts'

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

const width = (parts: readonly Part[]): number | undefined => {
  const low = daysAt(parts, 0.1)
  const high = daysAt(parts, 0.9)
  return low === undefined || high === undefined ? undefined : (high - low) / 2
}

/** What the crew could still tell of a pile. */
export const triesOf = ({ evidence: v }: Estimate): Told[] => {
  const { input, length } = v
  const tries: Told[] = []
  if (length && input.days.length) {
    tries.push({ what: 'face', sdFt: FACE_SD })
    if (length.sd > LENGTH_SD && input.faces.length) tries.push({ what: 'length', sd: LENGTH_SD })
  }
  if (v.whole.basis === 'loads' && v.filling.sd > TICKET_SD)
    tries.push({ what: 'tickets', sd: v.whole.inLb * Math.hypot((1 - v.loss.mean) * TICKET_SD, v.loss.sd) })
  if ((v.loggedDays < 5 || v.copied) && input.use.sd > RATION_SD) tries.push({ what: 'ration', sd: RATION_SD })
  return tries
}

/** The one of some tries that leaves the narrowest range; undefined where none is worth a walk. */
export const best = <T extends { half: number; after: number }>(tries: readonly T[]): T | undefined =>
  tries.filter(t => t.after < t.half * (1 - WORTH)).reduce<T | undefined>((a, b) => (a && a.after <= b.after ? a : b), undefined)

/** Tries each thing that could be told, and gives the one that helps most; undefined where nothing helps much. */
export const narrowing = (e: Estimate): Narrowing | undefined => {
  const half = e.days && (e.days.high - e.days.low) / 2
  if (half === undefined || half < 1) return undefined
  return best(
    triesOf(e).flatMap((told): Narrowing[] => {
      const after = width(toldMore(e.evidence.input, e.parts, told))
      return after === undefined ? [] : [{ what: told.what, half, after }]
    }),
  )
}
