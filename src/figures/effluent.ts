import type { Pct } from '../units/measure.ts'
import { bounds, type Figure, type Range } from './result.ts'

/** Driest crop that seeps, g dry matter per kg: none below 71 % moisture in bunkers (Purdue NCH-49), and the parabola turns at 285. */
const DRY = 290

/**
 * Seepage over the whole storing, L per tonne as fed: V = 767 - 5.34 D + 0.00936 D^2, D dry matter in g/kg; 0 from 290 on. Bastiman
 * (1976), from memory; that it is the standard: Haigh (1997) J. Agric. Eng. Res. 66:63-77. Valid 150 to 290 g/kg.
 */
export const effluent = (dmPct: Pct): Figure => {
  const b = bounds()
  const d = 10 * b.hold('dry-matter', dmPct, [15, 80], [12, 99])
  // Between the parabola's turn at 285 and 290 it would rise again.
  const turn = Math.min(d, 285)
  return b.figure(d >= DRY ? 0 : Math.max(0, 767 - 5.34 * turn + 0.00936 * turn * turn))
}

/** Dry matter in seepage, share by weight: about 6 % (trade page). */
const EFFLUENT_DM = 0.06
/** Most that seepage was seen to take, percent of dry matter (Agroscope 2004). */
const MOST: Pct = 4.5
const KG_PER_L = 1

/** Dry matter that seeps away, percent of what was put in: V 0.06 / DM, held to 4.5 %; half as much to half as much again. */
export const seepageLoss = (dmPct: Pct): { range: Range; outside?: string[] } => {
  const { value: litres, ...rest } = effluent(dmPct)
  const held = Math.min(99, Math.max(12, Number.isFinite(dmPct) ? dmPct : 35))
  const mid = Math.min(MOST, (100 * litres * KG_PER_L * EFFLUENT_DM) / (held * 10))
  return { range: { low: mid / 2, mid, high: Math.min(MOST * 1.2, mid * 1.5) }, ...rest }
}
