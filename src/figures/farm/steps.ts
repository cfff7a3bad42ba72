import type { Ft, Lb, Share } from '../../units/measure.ts'

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
  /** Day of the reading, as an index into the days. */
  at: number
  /** From the end first opened, ft. */
  atFt: Ft
  /** Told as what is left: then the far end is where it was measured from. */
  fromFarEnd: boolean
  sdFt: Ft
}

/** Some days on end in which nothing changes, taken as one; a face read ends them. */
export interface Step {
  days: number
  turned: boolean
  ref: Lb
  /** Logged days that tell of the use, and their weight over `ref`. */
  tells: number
  ratio: number
  silent: number
  /** Logged, thrown out or moved away, lb. */
  goneLb: Lb
  ft: Ft
  ftDays: number
  around: Share
  face?: FuseFace
  /** The pile was added to at the end of these days, with the face standing here. */
  addedAtFt?: Ft
}

/** Longer than this use may have wandered, days. */
const LONGEST = 8
/** More faces than this add work and no knowledge. */
const MOST_FACES = 32

/** Of many readings those spread evenly over the days; the last one always. */
const thinned = (faces: readonly FuseFace[]): FuseFace[] => {
  if (faces.length <= MOST_FACES) return [...faces]
  const every = faces.length / MOST_FACES
  return Array.from({ length: MOST_FACES }, (_, i) => faces[Math.ceil((i + 1) * every) - 1]!)
}

/** Puts days together, so that the fusion has tens of steps and not hundreds. */
export const stepsOf = (days: readonly FuseDay[], faces: readonly FuseFace[], since?: { at: number; atFt: Ft }): Step[] => {
  const steps: Step[] = []
  const read = thinned(faces)
  let f = 0
  let open: Step | undefined
  for (const [i, d] of days.entries()) {
    if (!open || open.days >= LONGEST || d.turned || d.ref !== open.ref) {
      open = { days: 0, turned: d.turned, ref: d.ref, tells: 0, ratio: 0, silent: 0, goneLb: 0, ft: 0, ftDays: 0, around: d.around ?? 0 }
      steps.push(open)
    }
    open.days++
    open.silent += d.silent
    open.goneLb += d.lb + d.lostLb
    if (d.tells && d.ref > 0) {
      open.ratio += (d.lb / d.ref - open.ratio) / (open.tells + 1)
      open.tells++
    }
    if (d.ft !== undefined && d.around !== undefined) {
      if (!open.ftDays) open.around = d.around
      open.ft += d.ft
      open.ftDays++
    }
    // Of one day the last reading counts.
    while (f < read.length && read[f]!.at <= i) open.face = read[f++]!
    if (since?.at === i) open.addedAtFt = since.atFt
    if (open.face || open.addedAtFt !== undefined) open = undefined
  }
  return steps
}
