import { LB_PER_TON, type Lb, type Pct } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/** Corn silage at 65 % moisture by the grain it would make: bu/acre, tons/acre, bu in a ton. Lauer (2000), UW. */
export const LAUER: readonly (readonly [buAcre: number, tonsAcre: number, buTon: number])[] = [
  [100, 13.4, 7.5],
  [150, 18.7, 8],
  [175, 22.2, 7.9],
]

/**
 * Tons of corn silage (65 % moisture) an acre by the grain yield, bu/acre: Lauer's table, straight lines between. Valid 100 to 175
 * bu; past that by the nearest row's bushels in a ton.
 */
export const silageTons = (buAcre: number): Figure => {
  const b = bounds()
  const bu = b.hold('grain-yield', buAcre, [100, 175], [0, 400])
  const first = LAUER[0]!
  const last = LAUER.at(-1)!
  if (bu < first[0]) return b.figure((bu / first[0]) * first[1])
  if (bu >= last[0]) return b.figure((bu / last[0]) * last[1])
  const i = LAUER.findIndex(([x]) => x > bu)
  const [x0, y0] = LAUER[i - 1]!
  const [x1, y1] = LAUER[i]!
  return b.figure(y0 + ((y1 - y0) * (bu - x0)) / (x1 - x0))
}

/** Dry matter in a bushel of corn at 15.5 % moisture, lb: 56 x 0.845. */
export const BUSHEL_DRY_LB: Lb = 56 * 0.845

/**
 * Bushels of grain in a ton of silage: half the dry matter is grain. 7.4 at 65 % moisture. Definition with the half as said
 * (Tennessee article).
 */
export const bushelsInTon = (dmPct: Pct, grainShare = 0.5): number => (LB_PER_TON * (dmPct / 100) * grainShare) / BUSHEL_DRY_LB

/** Dry matter an acre, tons: UNL G74-142. Alfalfa of a whole season, all cuttings. */
export const DRY_TONS_ACRE: Readonly<Record<string, number>> = {
  haylage: 5,
  'small-grain silage': 4,
  'corn silage': 6,
  'sorghum silage': 6,
}

/**
 * Dry pounds to expect of so many acres; undefined for a crop without a figure. Of haylage a cutting is a share of the season,
 * first of four about 0.35 (common practice, no source).
 */
export const expectedDry = (crop: string, acres: number, cut?: number): Lb | undefined => {
  const tons = DRY_TONS_ACRE[crop]
  if (tons === undefined || !(acres >= 0)) return undefined
  const share = crop === 'haylage' && cut !== undefined ? ([0.35, 0.27, 0.22, 0.16][Math.min(4, cut) - 1] ?? 0.25) : 1
  return tons * acres * share * LB_PER_TON
}

/** Corn dries 0.5 to 0.75 points a day (cooperative). */
export const DRYDOWN: readonly [Pct, Pct] = [0.5, 0.75]

/** Days until corn is at a moisture, the soonest and the latest; 0 where it is there. Valid 50 to 80 % moisture. */
export const drydownDays = (moisturePct: Pct, wantedPct: Pct): { soonest: number; latest: number; outside?: string[] } => {
  const b = bounds()
  const now = b.hold('moisture', moisturePct, [50, 80], [0, 100])
  const points = Math.max(0, now - b.hold('moisture', wantedPct, [50, 80], [0, 100]))
  return { soonest: points / DRYDOWN[1], latest: points / DRYDOWN[0], ...b.rest() }
}
