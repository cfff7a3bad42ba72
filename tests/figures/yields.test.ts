import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { BUSHEL_DRY_LB, bushelsInTon, drydownDays, expectedDry, LAUER, silageTons } from '../../src/figures/yields.ts'

describe('published: Lauer (2000), UW, corn silage at 65 % moisture', () => {
  it.each([
    [100, 13.4, 7.5],
    [150, 18.7, 8],
    [175, 22.2, 7.9],
  ])('%s bu an acre: %s tons, %s bu in a ton', (bu, tons, perTon) => {
    expect(silageTons(bu)).toEqual({ value: tons })
    expect(Math.abs(bu / tons - perTon)).toBeLessThanOrEqual(0.05)
    expect(LAUER.find(([x]) => x === bu)?.[2]).toBe(perTon)
  })
})

it('arithmetic: straight lines between the rows, 125 bu is half way from 13.4 to 18.7', () => {
  expect(silageTons(125)).toEqual({ value: 16.05 })
})

it('published: a ton at 65 % moisture is 700 lb dry, a bushel 47.32 (Tennessee article); half of it grain is 7.40 bu', () => {
  expect(2000 * 0.35).toBeCloseTo(700, 9)
  expect(BUSHEL_DRY_LB).toBeCloseTo(47.32, 9)
  expect(bushelsInTon(35)).toBeCloseTo(7.4, 2)
})

it('arithmetic: from 70 to 65 % moisture takes 10 days at half a point a day, 6.7 at three quarters (cooperative)', () => {
  const { soonest, latest } = drydownDays(70, 65)
  expect(soonest).toBeCloseTo(6.7, 1)
  expect(latest).toBe(10)
  expect(drydownDays(63, 65)).toEqual({ soonest: 0, latest: 0 })
  expect(drydownDays(90, 65).outside).toEqual(['moisture'])
})

it('dry matter an acre as published (UNL G74-142); cuttings make up the season', () => {
  expect(expectedDry('corn silage', 10)).toBe(120_000)
  expect([1, 2, 3, 4].reduce((s, cut) => s + expectedDry('haylage', 10, cut)!, 0)).toBeCloseTo(expectedDry('haylage', 10)!, 6)
  expect(expectedDry('beet pulp', 10)).toBeUndefined()
  expect(expectedDry('corn silage', Number.NaN)).toBeUndefined()
})

it('more grain never means less silage; past the table it says so; never NaN', () => {
  expect(silageTons(220).outside).toEqual(['grain-yield'])
  expect(silageTons(60).outside).toEqual(['grain-yield'])
  fc.assert(
    fc.property(fc.double(), fc.double(), (a, b) => {
      const [x, y] = [silageTons(a).value, silageTons(b).value]
      expect(x).toBeGreaterThanOrEqual(0)
      if (a < b) expect(x).toBeLessThanOrEqual(y)
    }),
  )
})
