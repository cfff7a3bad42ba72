import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  dryPct,
  dryPctByNdf,
  FORAGE_SHARE,
  fcm4,
  fillLimit,
  forageByWeight,
  heifer2008,
  heifer2021,
  herdForage,
  lee2021,
  milkEnergy,
  nasem2021,
  nrc2001,
  usualIntake,
} from '../../src/figures/intake.ts'

describe('published', () => {
  it.each([
    [35, 23.6],
    [55, 30.2],
  ])('680 kg, %s kg of milk: %s kg; NRC (2001) table as quoted elsewhere; 3.5 %% fat and week 12 are ours', (milkKg, dmi) => {
    expect(Math.abs(nrc2001({ bwKg: 680, milkKg, fatPct: 3.5, week: 12 }).value / dmi - 1)).toBeLessThan(0.02)
  })
  it('intake falls by 30 to 35 % in the last weeks before calving: Grummer (1996)', () => {
    const fall = 1 - dryPct(-1).value / dryPct(-21).value
    expect(fall).toBeGreaterThan(0.3)
    expect(fall).toBeLessThan(0.35)
    expect(fall).toBeCloseTo(0.315, 3)
  })
  it('forage: 50 to 60 % of dry matter milking (Varga, Penn State), 1.2 to 1.7 % of weight dry, 1 to 2 heifers (Cornell)', () => {
    expect(FORAGE_SHARE.milking).toBeGreaterThanOrEqual(0.5)
    expect(FORAGE_SHARE.milking).toBeLessThanOrEqual(0.6)
    const ofWeight = (group: 'dry' | 'heifers', kg: number) => (100 * usualIntake(group).value * FORAGE_SHARE[group] * 0.45359237) / kg
    expect(ofWeight('dry', 650)).toBeCloseTo(1.45, 1)
    expect(ofWeight('heifers', 350)).toBeCloseTo(1.5, 1)
  })
})

describe('arithmetic', () => {
  it('40 kg at 3.5 % are 37.0 kg at 4 %', () => {
    expect(fcm4(40, 3.5)).toBeCloseTo(37, 9)
  })
  it.each([
    [650, 40, 3.5, 20, 25.95],
    [600, 30, 4, 10, 21.24],
    [680, 25, 3.8, 30, 21.88],
  ])('NRC (2001) from memory: %s kg, %s kg of milk at %s %%, week %s: %s kg', (bwKg, milkKg, fatPct, week, dmi) => {
    expect(Math.abs(nrc2001({ bwKg, milkKg, fatPct, week }).value - dmi)).toBeLessThanOrEqual(0.01)
  })
  it.each([
    [{ older: 1, milkKg: 40, fatPct: 3.8, proteinPct: 3.1, lactosePct: 4.85, bwKg: 700, score: 3, days: 150 }, 29.04, 25.98],
    [{ older: 0, milkKg: 32, fatPct: 3.8, proteinPct: 3.1, lactosePct: 4.85, bwKg: 600, score: 3.25, days: 100 }, 23.23, 21.72],
    [{ older: 1, milkKg: 45, fatPct: 3.6, proteinPct: 3, lactosePct: 4.8, bwKg: 680, score: 3, days: 21 }, 31.48, 23.28],
  ])('NASEM (2021) 2-1, de Souza et al. (2019), from memory: %o', (cow, energy, dmi) => {
    expect(milkEnergy(cow)).toBeCloseTo(energy, 2)
    expect(Math.abs(nasem2021(cow).value - dmi)).toBeLessThanOrEqual(0.01)
  })
  it('650 kg, 35 kg of milk at 4 %, NDF 35: 24.30 kg (Lee et al. 2021, abstract)', () => {
    expect(Math.abs(lee2021({ bwKg: 650, fcmKg: 35, ndfPct: 35 }).value - 24.3)).toBeLessThanOrEqual(0.01)
  })
  it.each([
    [250, 6.52, 6.5],
    [350, 8.27, 8.25],
    [450, 9.68, 9.65],
  ])('heifer of %s kg: %s (NASEM 2021, from memory), %s (Hoffman et al. 2008, from memory)', (bw, nasem, hoffman) => {
    expect(Math.abs(heifer2021(bw).value - nasem)).toBeLessThanOrEqual(0.01)
    expect(Math.abs(heifer2008(bw).value - hoffman)).toBeLessThanOrEqual(0.01)
  })
  it('dry cows by NRC (2001), from memory: 1.944 % at 21 days, 1.725 at 7, 1.331 at 1', () => {
    expect([-21, -7, -1].map(t => dryPct(t).value.toFixed(3))).toEqual(['1.944', '1.725', '1.331'])
  })
  it('dry cows by NASEM (2021), from memory: 1.872 % three weeks off, 1.47 at calving, NDF 45', () => {
    expect(dryPctByNdf(-3, 45).value).toBeCloseTo(1.872, 3)
    expect(dryPctByNdf(0, 45).value).toBeCloseTo(1.47, 9)
  })
  it('a heifer of 1,000 lb at 1.0 % as NDF of 45: 22.2 lb (Hoffman & Kester 2013)', () => {
    expect(fillLimit(1000, 45, 1).value).toBeCloseTo(22.2, 1)
  })
  it('100 cows of 1,400 lb at 2 % for a year eat 511 tons of forage, 562.1 with 10 % lost (Cornell ranges)', () => {
    expect(forageByWeight(100, 1400, 2, 365)).toBeCloseTo(511, 1)
    expect(forageByWeight(100, 1400, 2, 365, 0.1)).toBeCloseTo(562.1, 1)
  })
})

describe('what always holds', () => {
  it('a herd is the sum of its groups, and twice the cows eat twice as much', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 500 }),
        fc.integer({ min: 0, max: 200 }),
        fc.integer({ min: 0, max: 300 }),
        (milking, dry, heifers) => {
          const all = herdForage({ milking, dry, heifers })
          expect(herdForage({ milking }) + herdForage({ dry }) + herdForage({ heifers })).toBeCloseTo(all, 6)
          expect(herdForage({ milking: 2 * milking, dry: 2 * dry, heifers: 2 * heifers })).toBeCloseTo(2 * all, 6)
        },
      ),
    )
  })
  it('more milk and more weight never eat less', () => {
    const milk = fc.double({ min: 10, max: 60, noNaN: true })
    const bw = fc.double({ min: 400, max: 800, noNaN: true })
    fc.assert(
      fc.property(milk, bw, (milkKg, bwKg) => {
        const nrc = (m: number, w: number) => nrc2001({ bwKg: w, milkKg: m, fatPct: 3.8, week: 15 }).value
        const nasem = (m: number, w: number) =>
          nasem2021({ bwKg: w, milkKg: m, fatPct: 3.8, proteinPct: 3.1, older: 1, score: 3, days: 120 }).value
        for (const f of [nrc, nasem]) {
          expect(f(milkKg + 1, bwKg)).toBeGreaterThan(f(milkKg, bwKg))
          expect(f(milkKg, bwKg + 10)).toBeGreaterThan(f(milkKg, bwKg))
        }
      }),
    )
  })
  it('never NaN or below nothing; out of range is named', () => {
    expect(nrc2001({ bwKg: 1400, milkKg: 40, fatPct: 3.5, week: 20 }).outside).toEqual(['weight'])
    expect(heifer2021(690).outside).toEqual(['weight'])
    expect(dryPct(5).outside).toEqual(['days-to-calving'])
    const any = fc.double()
    fc.assert(
      fc.property(any, any, any, any, any, any, (a, b, c, d, e, f) => {
        const all = [
          nrc2001({ bwKg: a, milkKg: b, fatPct: c, week: d }),
          nasem2021({ bwKg: a, milkKg: b, fatPct: c, proteinPct: d, older: e, score: f, days: a }),
          lee2021({ bwKg: a, fcmKg: b, ndfPct: c }),
          heifer2021(a, b),
          heifer2008(a),
          dryPct(a),
          dryPctByNdf(a, b),
        ]
        for (const { value } of all) expect(Number.isFinite(value)).toBe(true)
      }),
    )
  })
})
