import type { Ft, Ft2 } from '../units/measure.ts'

/** `crowned` is a parabola, `segment` a part of a circle, `trapezoid` has a flat top. */
export type SectionKind = 'crowned' | 'trapezoid' | 'segment'

/** A symmetric cross-section without a wall. `h` is how high it is filled here, `full` how high it stands where it is complete. */
export interface Section {
  kind: SectionKind
  base: Ft
  top: Ft
}

/** Below this height over width the segment's formula loses digits and its series is exact to 1e-11. */
const FLAT = 1e-3

/**
 * Area filled to `h`, ft2.
 *
 * - parabola of base B: 2/3 B h
 * - circular segment of chord c: R^2 (t - sin t cos t), R = c / (2 sin t), t = 2 atan(2h/c), half the central angle
 * - trapezoid of base B, top T and full height H, cut level at h: B h - (B - T) h^2 / (2H); at h = H it is (B + T)/2 H
 *
 * A crowned end keeps its base and is lower; a flat-topped end is the full section cut by the plane of the ramp, so its sides keep
 * their slope. Source: plane geometry. Valid for 0 <= h <= full.
 */
export const areaOf = ({ kind, base, top }: Section, h: Ft, full: Ft): Ft2 => {
  if (h <= 0 || base <= 0) return 0
  if (kind === 'crowned') return (2 / 3) * base * h
  if (kind === 'trapezoid') return base * h - ((base - top) * h * h) / (2 * Math.max(full, h))
  const u = (2 * h) / base
  if (h < FLAT * base) return (2 / 3) * base * h * (1 + u ** 2 / 5)
  const t = 2 * Math.atan(u)
  return ((base * base) / 4) * ((t - Math.sin(t) * Math.cos(t)) / Math.sin(t) ** 2)
}

/**
 * Length over the top from toe to toe, ft.
 *
 * - parabola: 1/2 sqrt(B^2 + 16 h^2) + B^2/(8h) ln[(4h + sqrt(B^2 + 16 h^2))/B]
 * - circular segment: 2 R t
 * - trapezoid filled to h: what is left of the top, and both slopes
 *
 * Source: plane geometry.
 */
export const arcOf = ({ kind, base, top }: Section, h: Ft, full: Ft): Ft => {
  if (base <= 0) return 0
  if (h <= 0) return base
  if (kind === 'trapezoid') {
    const run = ((base - top) / 2) * (h / Math.max(full, h))
    return base - 2 * run + 2 * Math.hypot(run, h)
  }
  if (h < FLAT * base) return base * (1 + (8 / 3) * (h / base) ** 2)
  if (kind === 'crowned') {
    const s = Math.hypot(base, 4 * h)
    return s / 2 + ((base * base) / (8 * h)) * Math.log((4 * h + s) / base)
  }
  const t = 2 * Math.atan((2 * h) / base)
  return (base * t) / Math.sin(t)
}

/** Slope across and change with the crown's height, of the surface at `u` ft from the middle: dy/du and dy/dh. Crowned and segment. */
export const gradientOf = (kind: 'crowned' | 'segment', base: Ft, h: Ft, u: Ft): { across: number; lift: number } => {
  const v = (2 * u) / base
  if (kind === 'crowned' || h < FLAT * base) return { across: (-4 * h * v) / base, lift: 1 - v * v }
  const r = (base * base) / (8 * h) + h / 2
  const dr = 0.5 - (base * base) / (8 * h * h)
  const y = Math.sqrt(Math.max(r * r - u * u, Number.EPSILON))
  return { across: -u / y, lift: dr * (r / y - 1) + 1 }
}
