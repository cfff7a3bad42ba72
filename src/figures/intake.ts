import { KG_PER_LB, LB_PER_TON, type Lb, type Pct, type Share } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/** Kilograms, as the equations are published. */
type Kg = number

/** Milk at 4 % fat, kg: milk (0.4 + 0.15 fat%). NRC (2001). */
export const fcm4 = (milkKg: Kg, fatPct: Pct): Kg => milkKg * (0.4 + 0.15 * fatPct)

/**
 * Dry matter intake of a milking cow, kg/day: (0.372 FCM + 0.0968 BW^0.75) (1 - e^(-0.192 (WOL + 3.67))). BW kg, milk kg/day, fat
 * %, WOL week of milk. NRC (2001), from memory; within 0.4 % of its printed table as another source quotes it. Valid BW 350 to 850
 * kg, milk 5 to 65 kg, fat 2 to 6 %, week 1 to 60.
 */
export const nrc2001 = (c: { bwKg: Kg; milkKg: Kg; fatPct: Pct; week: number }): Figure<Kg> => {
  const b = bounds()
  const bw = b.hold('weight', c.bwKg, [350, 850], [50, 1500])
  const milk = b.hold('milk', c.milkKg, [5, 65], [0, 100])
  const fat = b.hold('milk-fat', c.fatPct, [2, 6], [0, 10])
  const week = b.hold('week', c.week, [1, 60], [0, 200])
  return b.figure((0.372 * fcm4(milk, fat) + 0.0968 * bw ** 0.75) * (1 - Math.exp(-0.192 * (week + 3.67))))
}

export interface Milk {
  milkKg: Kg
  fatPct: Pct
  proteinPct: Pct
  lactosePct?: Pct
}

/** Energy in milk, Mcal/day: milk (0.0929 fat% + 0.0585 true protein% + 0.0395 lactose%). NASEM (2021), from memory. */
export const milkEnergy = (m: Milk): number => m.milkKg * (0.0929 * m.fatPct + 0.0585 * m.proteinPct + 0.0395 * (m.lactosePct ?? 4.85))

/**
 * Dry matter intake of a milking cow, kg/day: [(3.7 + 5.7 P) + 0.305 MilkE + 0.022 BW + (-0.689 - 1.87 P) BCS] [1 - (0.212 + 0.136
 * P) e^(-0.053 DIM)]; P 0 in the first milk, 1 later, or the share of older cows. NASEM (2021) equation 2-1, de Souza et al. (2019)
 * J. Dairy Sci. 102:7948-7960, from memory. Valid BW 350 to 900 kg, 5 to 70 kg of milk, BCS 1.5 to 5, 1 to 400 days in milk.
 */
export const nasem2021 = (c: Milk & { bwKg: Kg; older: Share; score: number; days: number }): Figure<Kg> => {
  const b = bounds()
  const bw = b.hold('weight', c.bwKg, [350, 900], [50, 1500])
  const p = b.hold('older', c.older, [0, 1])
  const score = b.hold('condition', c.score, [1.5, 5], [1, 5])
  const days = b.hold('days-in-milk', c.days, [1, 400], [0, 1000])
  b.flag('milk', !(c.milkKg >= 5 && c.milkKg <= 70))
  const energy = b.hold('milk-energy', milkEnergy(c), [2, 60], [0, 100])
  const v =
    (3.7 + 5.7 * p + 0.305 * energy + 0.022 * bw + (-0.689 - 1.87 * p) * score) * (1 - (0.212 + 0.136 * p) * Math.exp(-0.053 * days))
  return b.figure(v)
}

/**
 * Dry matter intake by weight, milk and ration, kg/day: 4.103 + 0.112 BW^0.75 + 0.284 FCM - 0.119 NDF%. Lee et al. (2021) Anim.
 * Biosci. 34(10), abstract. Valid 500 to 800 kg, 10 to 50 kg of milk, NDF 25 to 45 %.
 */
export const lee2021 = (c: { bwKg: Kg; fcmKg: Kg; ndfPct: Pct }): Figure<Kg> => {
  const b = bounds()
  const bw = b.hold('weight', c.bwKg, [500, 800], [50, 1500])
  const fcm = b.hold('milk', c.fcmKg, [10, 50], [0, 100])
  const ndf = b.hold('ndf', c.ndfPct, [25, 45], [10, 70])
  return b.figure(4.103 + 0.112 * bw ** 0.75 + 0.284 * fcm - 0.119 * ndf)
}

/**
 * Dry matter intake in the last three weeks before calving, percent of body weight: cows 1.97 - 0.75 e^(0.16 t), heifers 1.71 -
 * 0.69 e^(0.35 t), t days to calving, negative. NRC (2001) after Hayirli et al., from memory. Valid t -21 to 0; earlier it is
 * level.
 */
export const dryPct = (days: number, heifer = false): Figure<Pct> => {
  const b = bounds()
  const t = b.hold('days-to-calving', days, [-60, 0], [-365, 0])
  return b.figure(heifer ? 1.71 - 0.69 * Math.exp(0.35 * t) : 1.97 - 0.75 * Math.exp(0.16 * t))
}

/**
 * The same by the ration's NDF, percent of body weight: 1.47 - (0.365 - 0.0028 NDF) Wk - 0.035 Wk^2, Wk weeks from calving, -3 to
 * 0. NASEM (2021), from memory, not certain.
 */
export const dryPctByNdf = (week: number, ndfPct: Pct): Figure<Pct> => {
  const b = bounds()
  const w = b.hold('week', week, [-3, 0])
  const ndf = b.hold('ndf', ndfPct, [30, 55], [20, 70])
  return b.figure(1.47 - (0.365 - 0.0028 * ndf) * w - 0.035 * w * w)
}

/**
 * Dry matter intake of a growing heifer, kg/day: 0.022 MatBW (1 - e^(-1.54 BW/MatBW)); weights kg. NASEM (2021), from memory. Valid
 * 100 kg to 0.95 of the grown weight of 400 to 850.
 */
export const heifer2021 = (bwKg: Kg, grownKg: Kg = 700): Figure<Kg> => {
  const b = bounds()
  const grown = b.hold('grown-weight', grownKg, [400, 850], [200, 1200])
  const bw = b.hold('weight', bwKg, [100, 0.95 * grown], [0, 1500])
  return b.figure(0.022 * grown * (1 - Math.exp((-1.54 * bw) / grown)))
}

/** The same for Holsteins, kg/day: 15.36 (1 - e^(-0.0022 BW)). Hoffman et al. (2008), from memory. Valid 100 to 650 kg. */
export const heifer2008 = (bwKg: Kg): Figure<Kg> => {
  const b = bounds()
  return b.figure(15.36 * (1 - Math.exp(-0.0022 * b.hold('weight', bwKg, [100, 650], [0, 1500]))))
}

/**
 * What a cow can fill herself with, lb dry matter/day: fiber limit (percent of body weight as NDF) over the ration's NDF. 1.1 to
 * 1.2 % cows (Mertens, from memory), 1.0 % heifers (Hoffman & Kester 2013, UW).
 */
export const fillLimit = (bwLb: Lb, ndfPct: Pct, limitPct: Pct = 1.1): Figure<Lb> => {
  const b = bounds()
  return b.figure((Math.max(0, bwLb) * limitPct) / b.hold('ndf', ndfPct, [20, 70], [10, 90]))
}

export type Group = 'milking' | 'dry' | 'heifers'

/**
 * The cow a herd count stands for where nothing more is told: 650 kg, 36 kg of milk at 4.0 % fat, 3.1 % protein, half way through,
 * two in three older; a heifer of 350 kg. Common practice, no source.
 */
const USUAL = { bwKg: 650, milkKg: 36, fatPct: 4, proteinPct: 3.1, lactosePct: 4.85, older: 0.65, score: 3, days: 160 }
const HEIFER_KG = 350

/**
 * Share of the dry matter that is forage. Milking 54.7 % (survey of 79 rations, 33 to 72; Hay & Forage Grower 3346). Dry and
 * heifers by forage at 1.45 and 1.5 % of body weight, the middle of Cornell's ranges (SCNY 2020), over the intake below.
 */
export const FORAGE_SHARE: Record<Group, Share> = { milking: 0.547, dry: 0.74, heifers: 0.64 }

/** Dry matter that a head of a group eats, lb/day, by the equations above for the usual cow. */
export const usualIntake = (group: Group, own: Partial<typeof USUAL> = {}): Figure<Lb> => {
  if (group === 'heifers') {
    const { value, ...rest } = heifer2021(own.bwKg ?? HEIFER_KG)
    return { value: value / KG_PER_LB, ...rest }
  }
  const cow = { ...USUAL, ...own }
  if (group === 'dry') {
    const { value, ...rest } = dryPct(-30)
    return { value: ((value / 100) * cow.bwKg) / KG_PER_LB, ...rest }
  }
  const { value, ...rest } = nasem2021(cow)
  return { value: value / KG_PER_LB, ...rest }
}

/** Feeding loss at the bunk, 5 to 10 % at least (Cornell SCNY 2020), share. */
export const REFUSAL: Share = 0.05

/** Forage dry matter that a herd takes out of the piles, lb/day: Σ head x intake x forage share x (1 + refusal). */
export const herdForage = (
  heads: Partial<Record<Group, number>>,
  share: Partial<Record<Group, Share>> = {},
  refusal: Share = REFUSAL,
): Lb =>
  (Object.entries(heads) as [Group, number][]).reduce(
    (sum, [g, n]) => sum + Math.max(0, n) * usualIntake(g).value * (share[g] ?? FORAGE_SHARE[g]),
    0,
  ) *
  (1 + refusal)

/**
 * Forage dry matter by body weight, tons: head x weight x percent x days x (1 + loss). Cornell SCNY (2020): milking 1.5 to 2.5 %,
 * dry 1.2 to 1.7, heifers 1.0 to 2.0.
 */
export const forageByWeight = (head: number, bwLb: Lb, pctBw: Pct, days: number, loss: Share = 0): number =>
  (head * bwLb * (pctBw / 100) * days * (1 + loss)) / LB_PER_TON
