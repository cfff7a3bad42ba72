import type { Lb, LbFt3, Pct, Share } from '../units/measure.ts'

/** Where a default comes from, for "why?". */
export interface Known<T extends number = number> {
  value: T
  source: string
}

export interface CropDefaults {
  /** Dry matter at filling, percent, and how far a farm's own may lie from it. */
  dmPct: Known<Pct>
  dmSd: Pct
  /** Dry matter that a covered pile of it should have. */
  dmRange: readonly [Pct, Pct]
  /** Ash, share of the dry matter. */
  ash: Known<Share>
  /** Dry matter in a packed pile, lb/ft3. */
  dryLbFt3: Known<LbFt3>
  /** Spread of that among farms, a share. */
  densitySd: Share
  /** Dry matter in a wagon as blown in, lb/ft3. */
  wagonLbFt3: Known<LbFt3>
}

const PRACTICE = 'common practice, no source'
const MOISTURE = 'Purdue and SDSU extension: piles and bunkers 65 to 70 % moisture; 32 to 38 % dry matter overall'
const SURVEY = 'survey mean of bunkers, from memory'
const WAGON = 'Wiersma & Holmes, UW Focus on Forage 3:3'
const TRAILER = 'maize in trailers, 423 loads: 112 kg dry matter per m3'
const CORN_ASH = 'handbook range 4.5 to 5 %, from memory'
const HAY_ASH = 'handbook range 9 to 11 %, from memory'

/**
 * Pile densities scatter from 6.6 to 27.1 lb/ft3 (Muck & Holmes 2000); that about one standard deviation is 17 % of the mean is
 * common practice, no source.
 */
const SPREAD: Share = 0.17

const known = <T extends number>(value: T, source: string): Known<T> => ({ value, source })

const TABLE: Record<string, CropDefaults> = {
  'corn silage': {
    dmPct: known(35, MOISTURE),
    dmSd: 3,
    dmRange: [30, 38],
    ash: known(0.05, CORN_ASH),
    dryLbFt3: known(14.5, SURVEY),
    densitySd: SPREAD,
    wagonLbFt3: known(6.99, TRAILER),
  },
  haylage: {
    dmPct: known(38, 'alfalfa in bunkers 60 to 65 % moisture, from memory'),
    dmSd: 5,
    dmRange: [35, 45],
    ash: known(0.1, HAY_ASH),
    dryLbFt3: known(14.8, SURVEY),
    densitySd: SPREAD,
    wagonLbFt3: known(5, WAGON),
  },
  'grass silage': {
    dmPct: known(37.5, 'grass in bunkers 60 to 65 % moisture, from memory'),
    dmSd: 5,
    dmRange: [30, 42],
    ash: known(0.1, HAY_ASH),
    dryLbFt3: known(14.8, SURVEY),
    densitySd: SPREAD,
    wagonLbFt3: known(4.6, WAGON),
  },
  'small-grain silage': {
    dmPct: known(35, 'Anderson, UNL: small grain 60 to 70 % moisture'),
    dmSd: 4,
    dmRange: [30, 40],
    ash: known(0.09, PRACTICE),
    dryLbFt3: known(14, PRACTICE),
    densitySd: SPREAD,
    wagonLbFt3: known(5, PRACTICE),
  },
  'sorghum silage': {
    dmPct: known(32.5, 'sorghum 65 to 70 % moisture, from memory'),
    dmSd: 4,
    dmRange: [28, 36],
    ash: known(0.07, PRACTICE),
    dryLbFt3: known(14, PRACTICE),
    densitySd: SPREAD,
    wagonLbFt3: known(6, PRACTICE),
  },
  earlage: {
    dmPct: known(62, PRACTICE),
    dmSd: 4,
    dmRange: [55, 68],
    ash: known(0.02, PRACTICE),
    dryLbFt3: known(28, PRACTICE),
    densitySd: SPREAD,
    wagonLbFt3: known(17, PRACTICE),
  },
  'high-moisture corn': {
    dmPct: known(72, PRACTICE),
    dmSd: 3,
    dmRange: [65, 76],
    ash: known(0.015, PRACTICE),
    dryLbFt3: known(38, PRACTICE),
    densitySd: SPREAD,
    wagonLbFt3: known(30, PRACTICE),
  },
}

/** For a feed that is not listed: a forage, with a wide spread. */
const OTHER: CropDefaults = {
  dmPct: known(36, PRACTICE),
  dmSd: 7,
  dmRange: [20, 80],
  ash: known(0.08, PRACTICE),
  dryLbFt3: known(14, PRACTICE),
  densitySd: 0.25,
  wagonLbFt3: known(5.5, PRACTICE),
}

/** What is usual of a crop where the farm has told nothing. */
export const cropDefaults = (crop: string): CropDefaults => (Object.hasOwn(TABLE, crop) ? TABLE[crop] : undefined) ?? OTHER
export const isListedCrop = (crop: string): boolean => crop in TABLE

/** A heaped forage box 16 by 8 ft filled 5 ft deep, ft3. Common practice, no source. */
export const USUAL_BOX_FT3 = 640

/** Pounds as fed in a box of the usual size at the crop's usual dry matter; the last resort. */
export const usualBoxLb = (crop: string): Lb => {
  const c = cropDefaults(crop)
  return (USUAL_BOX_FT3 * c.wagonLbFt3.value) / (c.dmPct.value / 100)
}
