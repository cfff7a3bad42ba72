import { type Ft, IN_PER_FT, type In, type LbFt3 } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

export interface Ground {
  /** Conductivity frozen, Btu/(h ft F). */
  k: number
  /** Surface factor: air's freezing index to the surface's; snow lowers it. */
  n?: number
  /** Dry density, lb/ft3. */
  dry: LbFt3
  /** Water by mass of dry, share. */
  water: number
}

/** Wet sand as it lies on a cover's edge: k 0.9, n 0.9, 100 lb/ft3, 15 % water. */
export const WET_SAND: Ground = { k: 0.9, n: 0.9, dry: 100, water: 0.15 }

/** Heat of fusion of water, Btu/lb, as the equation is printed. */
const FUSION = 144
export const FREEZING_F = 32

/** Air freezing index, F-days: Σ max(0, 32 - mean of the day). Definition. */
export const freezingIndex = (meansF: readonly number[]): number => meansF.reduce((s, t) => s + Math.max(0, FREEZING_F - t), 0)

const latent = (g: Ground): number => FUSION * g.water * g.dry

/**
 * Depth of frost, ft: x = sqrt(48 k n FI / L), L = 144 w gamma_d Btu/ft3. Stefan; UW/WSDOT guide, constant 48 in UFC 3-130-06. It
 * reads deep, as it leaves out the heat of cooling. Valid k 0.2 to 2, n 0.2 to 1.2, 2 to 60 % water, FI 0 to 6000 F-days.
 */
export const frostDepth = (fi: number, g: Ground): Figure<Ft> => {
  const b = bounds()
  const index = b.hold('freezing-index', fi, [0, 6000], [0, 20_000])
  const k = b.hold('conductivity', g.k, [0.2, 2], [0.01, 5])
  const n = b.hold('surface-factor', g.n ?? 1, [0.2, 1.2], [0.01, 2])
  const water = b.hold('water', g.water, [0.02, 0.6], [0.001, 2])
  const dry = b.hold('density', g.dry, [20, 140], [1, 200])
  return b.figure(Math.sqrt((48 * k * n * index) / latent({ k, water, dry })))
}

/**
 * The same with the heat of cooling, ft: lambda x, lambda = 1/sqrt(1 + mu (alpha + 0.5)), mu = vs c / L, alpha = vo / vs, vs = n FI
 * / d, vo = MAT - 32, c = gamma_d (0.17 + 0.75 w). `days` length of the freezing season, `yearF` mean of the year. Modified
 * Berggren: Aldrich & Paynter (1953).
 */
export const frostDepthBerggren = (fi: number, g: Ground, days: number, yearF: number): Figure<Ft> => {
  const x = frostDepth(fi, g)
  const vs = ((g.n ?? 1) * fi) / days
  if (!(vs > 0 && Number.isFinite(vs))) return x
  const mu = (vs * g.dry * (0.17 + 0.75 * g.water)) / latent(g)
  const alpha = Math.max(0, yearF - FREEZING_F) / vs
  const value = x.value / Math.sqrt(1 + mu * (alpha + 0.5))
  return Number.isFinite(value) ? { ...x, value } : x
}

/**
 * Freezing index that freezes a layer through, F-days: x^2 L / (48 k n). Stefan turned round. Two inches of wet sand take 1.5: an
 * edge is held fast by the first hard freeze.
 */
export const indexToFreeze = (depthIn: In, g: Ground = WET_SAND): number =>
  ((Math.max(0, depthIn) / IN_PER_FT) ** 2 * latent(g)) / (48 * g.k * (g.n ?? 1))

/** The layer on a cover that is frozen fast when it is this deep, in. Our own choice; no rule for covers is published. */
export const EDGE_IN: In = 2

/** Whether the edges are frozen down after such days, by their means, F. */
export const edgesFrozen = (meansF: readonly number[], depthIn: In = EDGE_IN): boolean => freezingIndex(meansF) >= indexToFreeze(depthIn)

/** Ice on standing water, in: 0.2 to 0.8 sqrt(F-days), 0.6 an average lake (USACE Ice Engineering, from memory). */
export const iceOnWater = (fi: number): { low: In; mid: In; high: In } => {
  const root = Math.sqrt(Math.max(0, Number.isFinite(fi) ? fi : 0))
  return { low: 0.2 * root, mid: 0.6 * root, high: 0.8 * root }
}
