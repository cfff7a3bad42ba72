import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  celsiusInterval,
  FT3_PER_BUSHEL,
  KG_PER_LB,
  KG_PER_TON,
  KGM3_PER_LBFT3,
  LB_PER_TON,
  M_PER_FT,
  M2_PER_ACRE,
  THA_PER_TONACRE,
  UM_PER_MIL,
} from '../../src/units/measure.ts'

describe('definitions of units', () => {
  it('pound, foot, short ton: NIST SP 811 (2008)', () => {
    expect(KG_PER_LB).toBe(0.45359237)
    expect(M_PER_FT).toBe(0.3048)
    expect(KG_PER_TON).toBeCloseTo(907.18474, 9)
    expect(LB_PER_TON).toBe(2000)
  })
  it('a pound in a cubic foot is 16.018463 kg/m3: NIST SP 811', () => {
    expect(KGM3_PER_LBFT3).toBeCloseTo(16.018463, 6)
  })
  it('acre 4,046.8564224 m2, ton an acre 2.241702 t/ha, bushel 1.244456 ft3: NIST Handbook 44, Appendix C', () => {
    expect(M2_PER_ACRE).toBeCloseTo(4046.8564224, 7)
    expect(THA_PER_TONACRE).toBeCloseTo(2.241702, 6)
    expect(FT3_PER_BUSHEL).toBeCloseTo(1.244456, 6)
  })
  it('film of 5, 6 and 8 mil is 127, 152.4 and 203.2 micrometres: the inch is 25.4 mm (NIST)', () => {
    expect([5, 6, 8].map(mil => mil * UM_PER_MIL)).toEqual([127, 152.39999999999998, 203.2])
  })
  it('differences of 20 F and 10 F are 11.11 and 5.56 C: NIST', () => {
    expect(celsiusInterval(20)).toBeCloseTo(11.11, 2)
    expect(celsiusInterval(10)).toBeCloseTo(5.56, 2)
  })
})

describe('what was printed wrong', () => {
  it('a pile 14 m wide is 45.9 ft, not the 40 that a Saskatchewan page prints', () => {
    expect(14 / M_PER_FT).toBeCloseTo(45.9, 1)
    expect(14 / M_PER_FT).not.toBeCloseTo(40, 0)
  })
})

describe('densities of packed silage', () => {
  it('106 and 434 kg/m3 are 6.6 and 27.1 lb/ft3: Muck & Holmes (2000), abstract', () => {
    expect(106 / KGM3_PER_LBFT3).toBeCloseTo(6.6, 1)
    expect(434 / KGM3_PER_LBFT3).toBeCloseTo(27.1, 1)
  })
})

it('there and back again changes nothing', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e9, noNaN: true }),
      fc.constantFrom(KG_PER_LB, M_PER_FT, KGM3_PER_LBFT3, M2_PER_ACRE, THA_PER_TONACRE),
      (x, k) => {
        expect((x * k) / k / x).toBeCloseTo(1, 12)
      },
    ),
  )
})
