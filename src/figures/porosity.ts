import { KGM3_PER_LBFT3, type LbFt3, type Pct, type Share } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/**
 * Densities of water, organic matter and ash, kg/m3. Richard, Veeken, de Wilde & Hamelers (2004) Biotechnol. Prog. 20:1372-1381,
 * from memory. Near them: ryegrass dry matter 1421 +/- 16 (McNulty & Kennedy 1982); ground corn parts 1486 to 1625.
 */
export const WATER = 1000
export const ORGANIC = 1600
export const ASH = 2500

/** Most gas-filled pores that good packing leaves, share (Holmes & Muck, UW, from memory); 44 lb as fed/ft3 comes to the same. */
export const POROSITY_TARGET: Share = 0.4

/** Volume of solids and water in a pound as fed, ft3. */
const fill = (dm: Share, ash: Share): number => ((1 - dm) / WATER + (dm * (1 - ash)) / ORGANIC + (dm * ash) / ASH) * KGM3_PER_LBFT3

const inputs = (dmPct: Pct, ash: Share) => {
  const b = bounds()
  const dm = b.hold('dry-matter', dmPct, [20, 75], [1, 99]) / 100
  return { b, each: fill(dm, b.hold('ash', ash, [0.01, 0.2], [0, 1])) }
}

/**
 * Gas-filled pores, share of the volume: phi = 1 - BD [(1-DM)/rho_w + DM (1-ash)/rho_om + DM ash/rho_ash]. `bulk` as fed, lb/ft3;
 * `dmPct` percent; `ash` share of the dry matter. Source as the densities above, from memory; the choice of solids' density moves
 * it by 0.013, so say two decimals at most. Valid 20 to 75 % dry matter; held to 0 where the density is past saturation, with
 * `past-saturation`.
 */
export const porosity = (bulk: LbFt3, dmPct: Pct, ash: Share): Figure<Share> => {
  const { b, each } = inputs(dmPct, ash)
  const rho = b.hold('density', bulk, [10, 80], [0, 200])
  const phi = 1 - rho * each
  b.flag('past-saturation', phi < 0)
  return b.figure(Math.min(1, Math.max(0, phi)))
}

/**
 * Density as fed that leaves a porosity, lb/ft3. The equation above turned round; at 0 it is saturation, past which nothing can be
 * packed.
 */
export const bulkFor = (phi: Share, dmPct: Pct, ash: Share): Figure<LbFt3> => {
  const { b, each } = inputs(dmPct, ash)
  return b.figure((1 - b.hold('porosity', phi, [0, 0.9], [0, 1])) / each)
}
