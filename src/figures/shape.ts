import type { Ft, Ft2, Ft3 } from '../units/measure.ts'
import { integrate } from './quadrature.ts'
import { arcOf, areaOf, gradientOf, type Section, type SectionKind } from './section.ts'

/**
 * A pile on its slab. Stations run along the pile from 0, the toe of the end first opened, to `lengthFt`, the other toe.
 *
 * - `widthFt`: base across, from toe to toe, or from the wall to the other toe.
 * - `heightFt`: crown above the slab, at mid-length.
 * - `topWidthFt`: flat top of a trapezoid; left out, sides of 3 to 1 but a top of at least a third of the base.
 * - `rampStartFt`, `rampEndFt`: length of the sloped ends on the ground; left out, 3 x the height; never over half the length each.
 *   0 is an end that stands upright.
 * - `wallFt`: a low wall along one side. That side of the section stands on the wall's top: half a section of the same kind, that
 *   much lower. So the wall adds the rectangle it holds and takes the strip off the other's height.
 * - `slope`: how far the slab falls from station 0 on, ft in a ft (0.02 is 2 %). The crown is taken as level, so the height at a
 *   station is `heightFt + slope (x - length/2)`: deeper at the low end, the same volume but for the ramps, and more of it at the
 *   low end. Lengths along the slab and its plan differ by 0.02 % at 2 % and are taken as the same.
 */
export interface PileShape {
  section: SectionKind
  widthFt: Ft
  lengthFt: Ft
  heightFt: Ft
  topWidthFt?: Ft
  rampStartFt?: Ft
  rampEndFt?: Ft
  wallFt?: Ft
  slope?: number
}

/** Ends and sides not steeper than 1 in 3 (Muck, Hay & Forage Grower): run over rise where nothing was measured. */
export const USUAL_RUN = 3

/** A ramp shorter than this stands upright, ft. */
const UPRIGHT_FT = 1e-3

const real = (x: number | undefined, otherwise: number): number => (x !== undefined && Number.isFinite(x) && x >= 0 ? x : otherwise)

interface Built extends Section {
  length: Ft
  height: Ft
  start: Ft
  end: Ft
  wall: Ft
  slope: number
}

const built = (s: PileShape): Built => {
  // below a hair there is no pile, and quotients of such numbers are none
  const solid = (ft: Ft): Ft => (ft < 1e-6 ? 0 : ft)
  const base = solid(real(s.widthFt, 0))
  const length = solid(real(s.lengthFt, 0))
  const height = solid(real(s.heightFt, 0))
  const ramp = (told: Ft | undefined): Ft => {
    const r = Math.min(real(told, USUAL_RUN * height), length / 2)
    return r < UPRIGHT_FT ? 0 : r
  }
  const usualTop = Math.max(base - 2 * USUAL_RUN * height, base / 3)
  return {
    kind: s.section,
    base,
    length,
    height,
    top: Math.min(real(s.topWidthFt, usualTop), base),
    start: ramp(s.rampStartFt),
    end: ramp(s.rampEndFt),
    wall: Math.min(real(s.wallFt, 0), height),
    slope: s.slope !== undefined && Number.isFinite(s.slope) ? s.slope : 0,
  }
}

const fullAt = (b: Built, x: Ft): Ft => Math.max(0, b.height + (b.slope === 0 ? 0 : b.slope * (x - b.length / 2)))
/** Share of the full height that stands at a station. */
const rise = (b: Built, x: Ft): number => {
  if (!(x >= 0 && x <= b.length)) return 0
  if (x < b.start) return x / b.start
  return b.length - x < b.end ? (b.length - x) / b.end : 1
}

const areaAt = (b: Built, h: Ft, full: Ft): Ft2 => {
  const wall = Math.min(b.wall, h)
  const open = areaOf(b, h, full)
  return wall > 0 ? (open + b.base * wall + areaOf(b, h - wall, full - wall)) / 2 : open
}

const stationArea = (b: Built, x: Ft): Ft2 => {
  if (!(x >= 0 && x <= b.length)) return 0
  const full = fullAt(b, x)
  return areaAt(b, full * rise(b, x), full)
}

/** Stations where the formula of the section changes: the ramps' heads, and where the pile rises above the wall. */
const breaks = (b: Built): Ft[] => {
  const at = [0, b.start, b.length - b.end, b.length]
  if (b.wall > 0) {
    const low = b.height - (b.slope * b.length) / 2
    const high = b.height + (b.slope * b.length) / 2
    // Near each end the height is rise x (end's height ± slope x distance): a quadratic in the distance.
    for (const [ramp, full, slope, place] of [
      [b.start, low, b.slope, (d: Ft) => d],
      [b.end, high, -b.slope, (d: Ft) => b.length - d],
    ] as const) {
      const root = full * full + 4 * slope * ramp * b.wall
      const d = root < 0 || ramp === 0 ? Number.NaN : (2 * ramp * b.wall) / (full + Math.sqrt(root))
      if (d > 0 && d < ramp) at.push(place(d))
    }
    if (b.slope !== 0) at.push(b.length / 2 + (b.wall - b.height) / b.slope)
  }
  return at.filter(x => x >= 0 && x <= b.length).sort((p, q) => p - q)
}

const overPieces = (b: Built, from: Ft, to: Ft, piece: (a: Ft, z: Ft) => number): number => {
  const lo = Math.max(0, Math.min(from, to))
  const hi = Math.min(b.length, Math.max(from, to))
  if (!(hi > lo)) return 0
  let sum = 0
  let a = lo
  for (const x of [...breaks(b), hi]) {
    const z = Math.min(x, hi)
    if (z <= a) continue
    sum += piece(a, z)
    a = z
  }
  return sum
}

/** Area of the section where the crown stands `heightFt` high (the pile's full height where left out), ft2. */
export const sectionArea = (shape: PileShape, heightFt?: Ft): Ft2 => {
  const b = built(shape)
  const h = heightFt === undefined ? b.height : real(heightFt, 0)
  return areaAt(b, h, Math.max(b.height, h))
}

/** Height of the crown above the slab at a station, ft; 0 past the toes. */
export const heightAt = (shape: PileShape, x: Ft): Ft => {
  const b = built(shape)
  const share = rise(b, x)
  return share > 0 ? fullAt(b, x) * share : 0
}

/** Area of an upright cut at a station, ft2. */
export const faceArea = (shape: PileShape, x: Ft): Ft2 => stationArea(built(shape), x)

/** Base width of the pile divided out of its section: the average depth, ft. */
export const averageDepth = (shape: PileShape): Ft => (shape.widthFt > 0 ? sectionArea(shape) / shape.widthFt : 0)

/**
 * Volume between two stations, ft3, whichever comes first: the section integrated along the pile by a rule that is exact for the
 * polynomial pieces (crowned, and trapezoid without a wall) and within 1e-8 otherwise. Stations past the toes add nothing.
 */
export const volumeBetween = (shape: PileShape, fromFt: Ft, toFt: Ft): Ft3 => {
  const b = built(shape)
  return overPieces(b, fromFt, toFt, (a, z) => integrate(x => stationArea(b, x), a, z))
}

/** Whole volume, ft3. */
export const volume = (shape: PileShape): Ft3 => volumeBetween(shape, 0, shape.lengthFt)

/** Over the crown at full height, from toe to toe, or from the wall's top to the other toe, ft. */
export const arcLength = (shape: PileShape): Ft => {
  const b = built(shape)
  return b.wall > 0 ? (arcOf(b, b.height, b.height) + arcOf(b, b.height - b.wall, b.height - b.wall)) / 2 : arcOf(b, b.height, b.height)
}

/** Along the crown from toe to toe, up one ramp and down the other, ft. */
export const crownLength = (shape: PileShape): Ft => {
  const b = built(shape)
  const up = fullAt(b, b.start)
  const down = fullAt(b, b.length - b.end)
  return Math.hypot(b.start, up) + Math.max(0, b.length - b.start - b.end) + Math.hypot(b.end, down)
}

/**
 * Outer surface that a cover lies on, ft2, without laps: ∬ sqrt(1 + y_u^2 + y_x^2) du dx. An end that stands upright adds its face.
 * A trapezoid's sides and ramps are planes, so its surface is exact.
 */
export const coverArea = (shape: PileShape): Ft2 => {
  const b = built(shape)
  if (b.base <= 0 || b.length <= 0) return 0
  const climb = (x: Ft, full: Ft): number =>
    (x < b.start ? full / b.start : b.length - x < b.end ? -full / b.end : 0) + b.slope * rise(b, x)
  /** Surface of half the width in a strip 1 ft long at a station, on the side that stands `wall` high. */
  const half = (x: Ft, wall: Ft): Ft => {
    const full = fullAt(b, x)
    const h = full * rise(b, x)
    const dh = climb(x, full)
    if (h <= wall) return (b.base / 2) * Math.hypot(1, dh)
    if (b.kind === 'trapezoid') {
      const run = ((b.base - b.top) / 2) * ((h - wall) / (full - wall))
      return (b.base / 2 - run) * Math.hypot(1, dh) + Math.hypot(run, h - wall)
    }
    const kind = b.kind
    const across = (u: Ft): number => {
      const g = gradientOf(kind, b.base, h - wall, u)
      return Math.hypot(1, g.across, g.lift * dh)
    }
    return integrate(across, 0, b.base / 2, 2)
  }
  const top = overPieces(b, 0, b.length, (a, z) => integrate(x => half(x, 0) + half(x, b.wall), a, z, 2))
  return top + (b.start === 0 ? stationArea(b, 0) : 0) + (b.end === 0 ? stationArea(b, b.length) : 0)
}

/** Codes for a shape that cannot be; empty where it can. */
export const shapeProblems = (shape: PileShape): string[] => {
  const { widthFt: w, lengthFt: l, heightFt: h, topWidthFt: top, wallFt: wall, slope = 0 } = shape
  const ramps = [shape.rampStartFt, shape.rampEndFt]
  const positive = (x: number) => Number.isFinite(x) && x > 0
  const bad = (x: number | undefined) => x !== undefined && !(Number.isFinite(x) && x >= 0)
  const checks: [string, boolean][] = [
    ['width-impossible', !positive(w)],
    ['length-impossible', !positive(l)],
    ['height-impossible', !positive(h)],
    ['height-above-half-width', positive(w) && positive(h) && h > w / 2],
    ['top-impossible', bad(top)],
    ['top-wider-than-base', top !== undefined && top > w],
    ['ramp-impossible', ramps.some(bad)],
    ['ramps-longer-than-pile', (ramps[0] ?? 0) + (ramps[1] ?? 0) > l],
    ['wall-impossible', bad(wall)],
    ['wall-above-crown', wall !== undefined && wall > h],
    ['slope-impossible', !Number.isFinite(slope) || Math.abs(slope) > 0.15],
    ['slope-runs-out', h > 0 && Math.abs(slope) * l > 2 * h],
  ]
  return checks.filter(([, is]) => is).map(([code]) => code)
}
