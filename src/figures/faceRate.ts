import { type Day, monthOf } from '../units/calendar.ts'
import { type Ft, type Ft2, IN_PER_FT, type In, type Lb, type LbFt3, type Pct } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/** Least that a face should move, in/day: 4 in summer, 3 in winter (Nebraska column after UW). */
export const LEAST: Record<Season, In> = { warm: 4, cool: 3 }
/** What to plan for, in/day: 10 to 12 in summer, 6 and more in winter (cooperative agronomy article; Holmes, UW; Kautz, Drovers). */
export const GOAL: Record<Season, In> = { warm: 10, cool: 6 }
/** Rate to size a pile for; then half of it is the fallback (Holmes, UW), in/day. */
export const DESIGN: In = 12
/** Air reaches this far behind a face (Holmes, UW), ft. */
export const AIR_DEPTH_FT: Ft = 3

export type Season = 'warm' | 'cool'

/** May to September is the warm half north of the equator; that these are the months is common practice, no source. */
export const seasonOf = (day: Day, south = false): Season => {
  const m = monthOf(day)
  return (m >= 5 && m <= 9) !== south ? 'warm' : 'cool'
}

export interface SeasonRate {
  season: Season
  least: In
  goal: In
}

export const seasonRate = (day: Day, south = false): SeasonRate => {
  const season = seasonOf(day, south)
  return { season, least: LEAST[season], goal: GOAL[season] }
}

/**
 * How fast the face moves, in/day: 12 (lb / rho) / A. `lbDay` and `lbFt3` both dry or both as fed; `faceFt2` area of the face.
 * Definition. Valid where the face has an area and the feed a density; `face-area` and `density` otherwise, with 0.
 */
export const inPerDay = (lbDay: Lb, lbFt3: LbFt3, faceFt2: Ft2): Figure<In> => {
  const b = bounds()
  b.flag('face-area', !(faceFt2 > 0))
  b.flag('density', !(lbFt3 > 0))
  b.flag('feeding', !(lbDay >= 0))
  const v = (IN_PER_FT * lbDay) / lbFt3 / faceFt2
  return b.figure(Number.isFinite(v) && v > 0 ? v : 0)
}

/** Face that so much feed keeps moving at a rate, ft2. The other way round. */
export const faceFor = (lbDay: Lb, lbFt3: LbFt3, rate: In): Figure<Ft2> => {
  const b = bounds()
  b.flag('rate', !(rate > 0))
  b.flag('density', !(lbFt3 > 0))
  b.flag('feeding', !(lbDay >= 0))
  const v = (IN_PER_FT * lbDay) / lbFt3 / rate
  return b.figure(Number.isFinite(v) && v > 0 ? v : 0)
}

/** Feeding that keeps a face moving at a rate, lb/day, on the density's basis. */
export const feedingFor = (rate: In, lbFt3: LbFt3, faceFt2: Ft2): Lb =>
  (Math.max(0, rate) / IN_PER_FT) * Math.max(0, lbFt3) * Math.max(0, faceFt2)

/** The feed at the face has had air for so many days: depth of the zone over rate (Holmes, UW). A face that stands still: 90. */
export const exposureDays = (rate: In, depthFt: Ft = AIR_DEPTH_FT): number => (rate > 0 ? Math.min(90, (depthFt * IN_PER_FT) / rate) : 90)

/** Feed uncovered ahead of the face at most, days (Holmes, UW; Nebraska column). */
export const UNCOVER_DAYS = 3
/** How far to roll the cover back, ft: three days' feed at most. */
export const rollBackFt = (rate: In, days = UNCOVER_DAYS): Ft => (Math.max(0, rate) * days) / IN_PER_FT

/** Points lost a day of exposure; no source, see faceLoss. */
const A_DAY: Record<Season, Pct> = { warm: 1.1, cool: 0.55 }

/**
 * Dry matter lost at the face, percent, with its range. Published are only the bounds: 1 to 15 % (Hay & Forage Grower 3112), and up
 * to 10 points less above 5 in/day (Garcia, SDSU); the closed form of Pitt & Muck (1993) is not. Between them: so much a day of
 * exposure, 1.1 points in the warm season and 0.55 in the cool, our own figures, no source, chosen so that a well-managed pile
 * loses about 15 % in all. Half way where the season is not known.
 */
export const faceLoss = (rate: In, season?: Season): { low: Pct; mid: Pct; high: Pct } => {
  const held = (x: number) => Math.min(15, Math.max(1, x))
  const mid = held(exposureDays(rate) * (season ? A_DAY[season] : (A_DAY.warm + A_DAY.cool) / 2))
  return { low: held(mid * 0.5), mid, high: held(mid * 1.7) }
}

/** Nearer to a face than three times its height nobody stands: a face of 4 m threw silage more than twice as far (Bolsen & Bolsen). */
export const STAND_OFF = 3
export const standOffFt = (heightFt: Ft): Ft => STAND_OFF * Math.max(0, heightFt)
