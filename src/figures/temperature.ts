import { celsiusInterval } from '../units/measure.ts'

/** Core, 18 in behind the face, hotter than the air at harvest by more than this is too hot, F (feed company). */
export const CORE_OVER_HARVEST_F = 20
/** A spot hotter than the core by about this is going bad, F (Borreani & Tabacco; that air is at work is from memory). */
export const SPOT_OVER_CORE_F = 10
/** Above this protein is bound, F. */
export const PROTEIN_F = 115
/** A sample is no longer stable once it is this much above the air, C (Kung, from memory). */
export const UNSTABLE_C = 2

export interface Probe {
  /** 18 in behind the face. Probe, not infra-red: the sun misleads it. */
  coreF?: number
  /** Hottest spot at the face. */
  spotF?: number
  /** Air on the day it was put up. */
  harvestF?: number
}

/** Codes for what the temperatures say; empty where nothing is wrong or nothing is known. */
export const heatFlags = ({ coreF, spotF, harvestF }: Probe): string[] => {
  const over = (a: number | undefined, b: number | undefined): number =>
    a !== undefined && b !== undefined ? a - b : Number.NEGATIVE_INFINITY
  const checks: [string, boolean][] = [
    ['core-hot', over(coreF, harvestF) > CORE_OVER_HARVEST_F],
    ['spot-hot', over(spotF, coreF) >= SPOT_OVER_CORE_F],
    ['protein-bound', Math.max(coreF ?? -Infinity, spotF ?? -Infinity) > PROTEIN_F],
  ]
  return checks.filter(([, is]) => is).map(([code]) => code)
}

/**
 * Aerobic stability, hours: until the sample first stands 2 C above the air; undefined while it does not. Temperatures F, in time's
 * order.
 */
export const stableHours = (readings: readonly { hour: number; sampleF: number; airF: number }[]): number | undefined =>
  readings.find(r => celsiusInterval(r.sampleF - r.airF) >= UNSTABLE_C)?.hour
