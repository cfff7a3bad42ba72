import type { Ft, Ft2, Share } from '../units/measure.ts'
import { LB_PER_TON } from '../units/measure.ts'
import { arcLength, coverArea, crownLength, type PileShape } from './shape.ts'

/** Sheet beyond the toe all round, ft. Common practice, no source; feed companies print 3 to 4. */
export const LAP_FT: Ft = 2
/** Less than this and the edge cannot be weighted, ft. Common practice, no source. */
export const LEAST_LAP_FT: Ft = 1
/** Sheets come in steps of 5 ft. Common practice, no source. */
const STEP_FT: Ft = 5
/** Two sheets overlap by 3 to 4 ft, the uphill one on top (trade). */
export const OVERLAP_FT: Ft = 4

export interface SheetNeed {
  /** Over the crown and both laps, ft. */
  widthFt: Ft
  /** Along the crown, up and down the ramps, and both laps, ft. */
  lengthFt: Ft
  /** The size to ask for: the next step of 5 ft that leaves a lap of a foot at least. */
  buyWidthFt: Ft
  buyLengthFt: Ft
  /** What lies under it, ft2. */
  areaFt2: Ft2
}

const step = (ft: Ft): Ft => Math.ceil((ft - 1e-9) / STEP_FT) * STEP_FT

/**
 * Sheet that a pile needs: arc over the crown + 2 lap by length along the crown + 2 lap. Plane geometry. For check, common
 * practice, no source: a pile 32 ft wide, 65 ft long and about 7 ft high is covered by a 40 by 70 ft sheet.
 */
export const sheetNeed = (shape: PileShape, lapFt: Ft = LAP_FT): SheetNeed => {
  const across = arcLength(shape)
  const along = crownLength(shape)
  const least = Math.min(lapFt, LEAST_LAP_FT)
  return {
    widthFt: across + 2 * lapFt,
    lengthFt: along + 2 * lapFt,
    buyWidthFt: step(across + 2 * least),
    buyLengthFt: step(along + 2 * least),
    areaFt2: coverArea(shape),
  }
}

export interface Sheet {
  widthFt: Ft
  lengthFt: Ft
}

export interface SheetFit {
  /** One sheet, or two with a seam. */
  sheets: Sheet[]
  /** Lap that is left at the shorter side, ft. */
  lapFt: Ft
  /** Of the sheets' area, not on the pile or its laps. */
  waste: Share
}

const areaOf = (sheets: readonly Sheet[]): Ft2 => sheets.reduce((s, h) => s + h.widthFt * h.lengthFt, 0)

const fitOf = (need: SheetNeed, lap: Ft, width: Ft, length: Ft, sheets: Sheet[]): SheetFit | undefined => {
  const lapFt = lap + Math.min(width - need.widthFt, length - need.lengthFt) / 2
  if (lapFt < Math.min(lap, LEAST_LAP_FT) - 1e-9) return undefined
  return { sheets, lapFt, waste: Math.max(0, 1 - (Math.min(width, need.widthFt) * Math.min(length, need.lengthFt)) / areaOf(sheets)) }
}

/**
 * The smallest sheet in stock that fits with a lap of a foot at least, turned if need be; where none does, the two that do,
 * overlapped across the pile or along it. `lapFt` tells how much lap it leaves. Undefined where nothing fits.
 */
export const fitFromStock = (need: SheetNeed, stock: readonly (Sheet & { count?: number })[], lapFt: Ft = LAP_FT): SheetFit | undefined => {
  const have = stock.filter(s => s.widthFt > 0 && s.lengthFt > 0 && (s.count ?? 1) > 0)
  const turned = have.flatMap(s => [
    { w: s.widthFt, l: s.lengthFt, s },
    ...(s.widthFt === s.lengthFt ? [] : [{ w: s.lengthFt, l: s.widthFt, s }]),
  ])
  const plain = ({ widthFt, lengthFt }: Sheet): Sheet => ({ widthFt, lengthFt })
  const best = (fits: (SheetFit | undefined)[]): SheetFit | undefined =>
    fits.filter(f => f !== undefined).sort((a, b) => areaOf(a.sheets) - areaOf(b.sheets) || b.lapFt - a.lapFt)[0]
  const single = best(turned.map(t => fitOf(need, lapFt, t.w, t.l, [plain(t.s)])))
  if (single) return single
  return best(
    turned.flatMap((a, i) =>
      turned.slice(i).map(b => {
        if (a.s === b.s && (a.s.count ?? 1) < 2) return undefined
        const pair = [plain(a.s), plain(b.s)]
        return best([
          fitOf(need, lapFt, Math.min(a.w, b.w), a.l + b.l - OVERLAP_FT, pair),
          fitOf(need, lapFt, a.w + b.w - OVERLAP_FT, Math.min(a.l, b.l), pair),
        ])
      }),
    ),
  )
}

/** Outer diameter of a car tire, in. Common practice, no source. */
export const TIRE_IN = 26
/** Tires in 100 ft2 where they do not touch: 500 on a sheet of 50 by 100 ft (Lancaster Farming). */
export const SPACED_PER_100 = 10

/**
 * Tires in 100 ft2. `touching` (asked for by Holmes, UW; 20 to 25 by Bolsen, from memory) is 100 / d^2 in rows, 100 / (d^2
 * sqrt(3)/2) where each row lies in the gaps of the last. Plane geometry. Valid for 20 to 45 in.
 */
export const tiresPer100 = (odIn: number = TIRE_IN, laid: 'rows' | 'gaps' | 'spaced' = 'rows'): number => {
  if (laid === 'spaced') return SPACED_PER_100
  const d = (odIn > 0 ? odIn : TIRE_IN) / 12
  return 100 / (laid === 'rows' ? d * d : (d * d * Math.sqrt(3)) / 2)
}

export const tiresFor = (areaFt2: Ft2, laid: 'rows' | 'gaps' | 'spaced' = 'rows', odIn: number = TIRE_IN): number =>
  Math.ceil((Math.max(0, areaFt2) * tiresPer100(odIn, laid)) / 100)

/** Around the pile on the ground, ft: what has to be weighted down. The toe lies straight on the ground however high the crown. */
export const edgeFt = (shape: PileShape): Ft => 2 * (Math.max(0, shape.widthFt) + Math.max(0, shape.lengthFt))

/** A filled gravel bag laid end to end, ft. Common practice, no source. */
export const BAG_FT: Ft = 4
/** Rows of bags over a mesh every 10 to 20 ft (feed company), ft. */
export const BAG_ROW_FT: Ft = 15

/** Bags end to end round the edge, and with `rows` also across the crown every 15 ft. */
export const bagsFor = (shape: PileShape, rows = false): number => {
  const across = rows ? Math.max(0, Math.ceil(shape.lengthFt / BAG_ROW_FT) - 1) * arcLength(shape) : 0
  return Math.ceil((edgeFt(shape) + across) / BAG_FT - 1e-9)
}

/** Edge strip of gravel or sand: a foot wide, 6 in deep (15 to 30 cm is published), at 100 lb/ft3. */
export const STRIP_FT2 = 0.5
export const GRAVEL_LB_FT3 = 100

/** Gravel for a strip along an edge, tons. */
export const gravelTons = (edge: Ft, stripFt2: Ft2 = STRIP_FT2): number => (Math.max(0, edge) * stripFt2 * GRAVEL_LB_FT3) / LB_PER_TON
