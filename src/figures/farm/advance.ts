import type { Ft, Share } from '../../units/measure.ts'

/**
 * One guess at how a pile's section grows and shrinks along its length. The section stands full between the ramps; within a ramp it
 * grows as (x / ramp)^0.85, x from the toe. A crown that keeps its base and is lower grows as x; a flat-topped end with sides that keep
 * their slope as h (W - s h), which is faster (height h, base W, slope s); 0.85 lies between. Both are exact geometry.
 */
export interface Form {
  /** Area under the outline over the whole length, the full section being 1. */
  area: number
  /** Ramp at the end first opened, as a share of the length. */
  front: Share
  /** Ramp at the far end. */
  back: Share
  /** How likely before any reading; the sum over all forms is 1. */
  weight: Share
}

const GROWTH = 0.85

/** Area under a ramp of width `a`, `x` along it: the full section being 1. */
const rampUp = (x: number, a: number): number => (a <= 0 ? 0 : (a * (Math.min(x, a) / a) ** (GROWTH + 1)) / (GROWTH + 1))

/** Area under the section's outline up to `u` of the length, the full section being 1. */
const under = (front: Share, back: Share, u: number): number => {
  const flat = Math.max(0, Math.min(u, 1 - back) - front)
  const end = back > 0 && u > 1 - back ? back / (GROWTH + 1) - rampUp(1 - u, back) : 0
  return rampUp(u, front) + flat + end
}

export const form = (front: Share, back: Share, weight: Share): Form => ({ front, back, weight, area: under(front, back, 1) })

/** Share of the pile that lies behind a face at `u` of the length (0 where it was opened, 1 at the far end). */
export const passed = (f: Form, u: number): Share => under(f.front, f.back, Math.min(1, Math.max(0, u))) / f.area

/** How fast that share grows with `u`. */
export const passing = (f: Form, u: number): number => {
  const x = Math.min(1, Math.max(0, u))
  if (x < f.front) return (x / f.front) ** GROWTH / f.area
  if (x > 1 - f.back) return ((1 - x) / f.back) ** GROWTH / f.area
  return 1 / f.area
}

/** Where along the length the face stands when such a share lies behind it: the other way round, by halving. */
export const placeOf = (f: Form, share: Share): Share => {
  let a = 0
  let b = 1
  for (let i = 0; i < 25; i++) {
    const mid = (a + b) / 2
    if (passed(f, mid) < share) a = mid
    else b = mid
  }
  return (a + b) / 2
}

/**
 * Ends a pile may have, run to rise, 0 being upright, and how often each. Not steeper than 3 to 1 (Muck; film makers), 4 to 1 for a
 * wedge pushed up (trade), and both are told to people who build them steeper. How often is assumed.
 */
const ENDS = [
  { run: 0, often: 0 },
  { run: 2, often: 0.35 },
  { run: 3.5, often: 0.42 },
  { run: 5.5, often: 0.23 },
]
/** The end first opened stands upright, a share of the piles; assumed. */
const UPRIGHT: Share = 0.33
/** The far end: like the near one, against something upright though the near one is a ramp, upright as the near one. Assumed. */
const FAR = { like: 0.58, wall: 0.27, upright: 0.91 }
/** A pair less likely than this moves nothing. */
const LEAST: Share = 0.01
/** Where nobody told the height, ft. Common practice, no source. */
const USUAL_HEIGHT: Ft = 9

/**
 * The forms a pile may have. Nobody tells how steep its ends are, or against what they stand; the feed-out soon shows it of the near
 * end, and the far end is likely like it.
 */
export const formsOf = (lengthFt: Ft, heightFt: Ft | undefined): Form[] => {
  const ramps = ENDS.map(({ run }) => Math.min(0.45, ((heightFt ?? USUAL_HEIGHT) * run) / lengthFt))
  const list: Form[] = []
  for (const [i, front] of ENDS.entries()) {
    for (const [j, back] of ENDS.entries()) {
      const near = i ? (1 - UPRIGHT) * front.often : UPRIGHT
      const otherwise = back.often * (i ? 1 - FAR.like - FAR.wall : 1 - FAR.upright)
      const far = otherwise + (i && i === j ? FAR.like : 0) + (j ? 0 : i ? FAR.wall : FAR.upright)
      if (near * far >= LEAST) list.push(form(ramps[i]!, ramps[j]!, near * far))
    }
  }
  const total = list.reduce((t, f) => t + f.weight, 0)
  return list.map(f => ({ ...f, weight: f.weight / total }))
}
