import type { Ft, Share } from '../../units/measure.ts'

/**
 * One guess at how a pile's section grows and shrinks along its length. The section stands full between the ramps; within a
 * ramp it grows as (x / ramp)^1.5: the height grows straight, and with the height the crown narrows.
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

const GROWTH = 1.5

/** Area under the section's outline up to `u` of the length, the full section being 1. */
const under = (f: Pick<Form, 'front' | 'back'>, u: number): number => {
  const rampUp = (x: number, a: number): number => (a <= 0 ? 0 : (a * (Math.min(x, a) / a) ** (GROWTH + 1)) / (GROWTH + 1))
  const front = rampUp(u, f.front)
  const flat = Math.max(0, Math.min(u, 1 - f.back) - f.front)
  const back = f.back > 0 && u > 1 - f.back ? f.back / (GROWTH + 1) - rampUp(1 - u, f.back) : 0
  return front + flat + back
}

export const form = (front: Share, back: Share, weight: Share): Form => ({ front, back, weight, area: under({ front, back }, 1) })

/** Share of the pile that lies behind a face at `u` of the length (0 where it was opened, 1 at the far end). */
export const passed = (f: Form, u: number): Share => under(f, Math.min(1, Math.max(0, u))) / f.area

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

/** Slope of the ends, run to rise: not steeper than 3 to 1 (Muck; film makers), 4 to 1 for a wedge pushed up (trade). */
const END_SLOPE = 3.5

/**
 * The forms a pile may have. Nobody tells how steep its ends are, or against what they stand; the ramps that its height would
 * ask for are likeliest, and the feed-out itself soon shows which it is.
 */
export const formsOf = (lengthFt: Ft, heightFt: Ft | undefined): Form[] => {
  const typical = Math.min(0.4, ((heightFt ?? 9) * END_SLOPE) / lengthFt)
  const list: [number, number, number][] = [
    [0, 0, 0.36],
    [0, typical, 0.05],
    [typical, 0, 0.05],
    [typical / 2, typical / 2, 0.26],
    [typical, typical, 0.19],
    [Math.min(0.45, typical * 1.5), Math.min(0.45, typical * 1.5), 0.09],
  ]
  return list.map(([front, back, weight]) => form(front, back, weight))
}
