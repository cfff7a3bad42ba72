import { type Ft, type Ft2, type Ft3, IN_PER_FT, type In, LB_PER_TON, type Lb, type LbFt3, type Pct } from '../units/measure.ts'
import { DESIGN, faceFor, GOAL, inPerDay, LEAST, type Season } from './faceRate.ts'
import { bounds, outsideOf } from './result.ts'
import { type PileShape, sectionArea, USUAL_RUN, volume } from './shape.ts'

/** Feed that the day takes out of the pile, ft3. Holmes, UW: 3,000 lb at 14 lb/ft3 is 214.3. */
export const dailyVolume = (lbDay: Lb, lbFt3: LbFt3): Ft3 => (lbFt3 > 0 ? lbDay / lbFt3 : 0)

/** Width of a face with upright sides, ft: lb 12 / (H rho R). Garcia, SDSU, with 14.8 lb/ft3 and 5 in/day. */
export const uprightWidth = (lbDay: Lb, heightFt: Ft, rate: In = 5, lbFt3: LbFt3 = 14.8): Ft =>
  (lbDay * IN_PER_FT) / (heightFt * lbFt3 * rate)

/** Days that so much lasts: lb (1 - loss) / need. Definition; undefined where nothing is fed. */
export const daysOfFeed = (lbDry: Lb, lbDay: Lb, lossPct: Pct = 0): number | undefined =>
  lbDay > 0 ? (Math.max(0, lbDry) * (1 - lossPct / 100)) / lbDay : undefined

/** Above this the unloader does not reach: 12 to 16 ft (Holmes, UW). */
export const REACH_FT: Ft = 12
/** Flat top that a packing tractor needs, ft. Common practice, no source. */
export const TRACTOR_TOP_FT: Ft = 10
/** Lower than this a pile is mostly top, ft. Common practice, no source. */
export const LEAST_HEIGHT_FT: Ft = 5
/** Past this one pile is better made two, ft. Common practice, no source. */
export const LONGEST_FT: Ft = 300
/** Side slopes by what drives on them, run over rise: 3 up and down only, 6 to drive across (Carrabba, NEC). */
export const RUN_ALONG = USUAL_RUN
export const RUN_ACROSS = 6

export interface SizingInputs {
  /** Dry matter to hold when full, lb. */
  lbDry: Lb
  dryLbFt3: LbFt3
  /** Dry matter that is fed of it, lb/day; without it the pile is sized for a good form alone. */
  lbDay?: Lb
  /** In/day; what the season asks for, falling back to its half and its least, where left out. */
  rate?: In
  season?: Season
  run?: number
  reachFt?: Ft
  /** A slab or a space that it has to stay within. */
  widestFt?: Ft
}

export interface Sizing {
  shape: PileShape
  widthFt: Ft
  heightFt: Ft
  topWidthFt: Ft
  lengthFt: Ft
  /** The rate it was sized for, in/day, and what the face does. */
  rate?: In
  inPerDay?: In
  lbDry: Lb
  /** Angle of the sides, degrees. */
  sideDeg: number
  /**
   * What gives: `slower-face` than the season's goal; `below-least` height even so, and then `lower`, `narrower`; `short-pile`, wider
   * than long; `several-piles`, too long for one. Empty where all is had.
   */
  advice: string[]
  outside?: string[]
}

/** Highest section of an area with sides of `run` and a top a tractor can stand on, ft: H from A = (b + s H) H. */
const highest = (area: Ft2, run: number, top: Ft): Ft => (-top + Math.sqrt(top * top + 4 * run * area)) / (2 * run)

const withSection = (i: SizingInputs, height: Ft, top: Ft, run: number): Omit<Sizing, 'advice' | 'inPerDay' | 'rate' | 'outside'> => {
  const widthFt = top + 2 * run * height
  const ramps = 2 * run * height
  const base: PileShape = {
    section: 'trapezoid',
    widthFt,
    heightFt: height,
    topWidthFt: top,
    lengthFt: ramps,
    rampStartFt: run * height,
    rampEndFt: run * height,
  }
  const need = i.lbDry / i.dryLbFt3
  const lengthFt = ramps + Math.max(0, need - volume(base)) / sectionArea(base)
  const shape = { ...base, lengthFt }
  return { shape, widthFt, heightFt: height, topWidthFt: top, lengthFt, lbDry: volume(shape) * i.dryLbFt3, sideDeg: slopeDeg(run) }
}

/** Angle of a slope of `run` to 1, degrees. */
export const slopeDeg = (run: number): number => (Math.atan2(1, run) * 180) / Math.PI

/**
 * How big a pile to build. The face that the feeding keeps moving is A = 12 lb / (rho R). Its section is a trapezoid with sides of
 * `run` to 1 and a flat top: as high as the top stays wide enough for a tractor and the unloader reaches, the rest goes into the
 * top, A = (b + s H) H. A small herd cannot have a fast face and a good height: then the rate falls back from the goal to its half
 * and to the season's least, and what is left is to build lower and narrower, or several small piles. The length is what holds the
 * feed, sloped ends in it. Sources: Holmes, UW (rates); plane geometry.
 */
export const sizePile = (i: SizingInputs): Sizing | { outside: string[] } => {
  const b = bounds()
  const cannot = (x: number | undefined): boolean => x !== undefined && !(Number.isFinite(x) && x > 0)
  b.flag('feed', cannot(i.lbDry))
  b.flag('density', cannot(i.dryLbFt3))
  b.flag('feeding', cannot(i.lbDay))
  b.flag('rate', cannot(i.rate))
  b.flag('width', cannot(i.widestFt))
  const { outside } = b.rest()
  if (outside) return { outside }
  const run = i.run && i.run > 0 ? i.run : RUN_ALONG
  const reach = i.reachFt && i.reachFt > 0 ? i.reachFt : REACH_FT
  const season = i.season ?? 'warm'
  const { lbDay } = i
  if (lbDay === undefined) return byForm(i, run, reach)
  const rates = i.rate !== undefined ? [i.rate] : [...new Set([DESIGN, GOAL[season], GOAL.cool, LEAST[season]])]
  const height = (rate: In): Ft => Math.min(reach, highest(faceFor(lbDay, i.dryLbFt3, rate).value, run, TRACTOR_TOP_FT))
  const rate = rates.find(r => height(r) >= LEAST_HEIGHT_FT) ?? rates.at(-1)!
  const area = faceFor(lbDay, i.dryLbFt3, rate)
  const advice: string[] = i.rate === undefined && rate < GOAL[season] ? ['slower-face'] : []
  let h = height(rate)
  if (h < LEAST_HEIGHT_FT) advice.push('below-least', 'lower', 'narrower')
  let top = Math.max(area.value / h - run * h, 0)
  if (i.widestFt !== undefined && top + 2 * run * h > i.widestFt) {
    // A = W H - s H^2 on the flat side of its root; where the base is too narrow for it, as high as the tractor's top allows.
    const root = i.widestFt ** 2 - 4 * run * area.value
    const most = Math.max(1, (i.widestFt - TRACTOR_TOP_FT) / (2 * run))
    h = Math.min(reach, most, root >= 0 ? (i.widestFt - Math.sqrt(root)) / (2 * run) : most)
    top = Math.max(0, i.widestFt - 2 * run * h)
    advice.push('narrower')
  }
  let made = withSection(i, h, top, run)
  // Less feed than the two ramps of that height hold: a lower pile has shorter ones.
  while (made.lbDry > i.lbDry * 1.001 && h > 1.5) {
    h -= 0.5
    made = withSection(i, h, Math.max(top, TRACTOR_TOP_FT), run)
    advice.push('lower')
  }
  if (made.lengthFt < made.widthFt) advice.push('short-pile')
  if (made.lengthFt > LONGEST_FT) advice.push('several-piles')
  const moves = inPerDay(lbDay, i.dryLbFt3, sectionArea(made.shape))
  return { ...made, rate, inPerDay: moves.value, advice: [...new Set(advice)], ...outsideOf(area, moves) }
}

/** Without a feeding rate: the highest pile within reach that is at least twice as long as wide. Common practice, no source. */
const byForm = (i: SizingInputs, run: number, reach: Ft): Sizing => {
  let made = withSection(i, reach, TRACTOR_TOP_FT, run)
  for (let h = reach; h >= 3; h -= 0.5) {
    made = withSection(i, h, TRACTOR_TOP_FT, run)
    if (made.lengthFt >= 2 * made.widthFt && (i.widestFt === undefined || made.widthFt <= i.widestFt)) break
  }
  return { ...made, advice: made.lengthFt < made.widthFt ? ['short-pile'] : [] }
}

/** Dry pounds to put in so that so many days can be fed: need x days / (1 - loss). */
export const toStore = (lbDay: Lb, days: number, lossPct: Pct): Lb =>
  (Math.max(0, lbDay) * Math.max(0, days)) / (1 - Math.min(90, Math.max(0, lossPct)) / 100)

/** Tons of dry matter in a section of a length at a density. */
export const tonsDry = (areaFt2: Ft2, lengthFt: Ft, dryLbFt3: LbFt3): number => (areaFt2 * lengthFt * dryLbFt3) / LB_PER_TON
