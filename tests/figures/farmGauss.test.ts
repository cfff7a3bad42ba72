import { describe, expect, it } from 'vitest'
import { belief, blur, drift, learn, learnOne, normalBelow, relax } from '../../src/figures/farm/gauss.ts'

describe('a Gaussian belief', () => {
  // Gelman et al., Bayesian Data Analysis, section 2.5: with prior N(m, s2) and a reading y of variance v the mean is
  // (m/s2 + y/v) / (1/s2 + 1/v), and the precisions add up.
  it('takes a reading of one number as the textbook has it', () => {
    const b = belief([10, 3], [2, 1])
    learnOne(b, 0, 13, 1)
    expect(b.mean[0]).toBeCloseTo((10 / 4 + 13 / 1) / (1 / 4 + 1), 12)
    expect(b.cov[0]).toBeCloseTo(1 / (1 / 4 + 1), 12)
    expect(b.mean[1]).toBe(3)
  })

  // Two numbers known only by their sum: by hand, prior variances 4 and 1, reading of the sum 5 over, variance 0 or nearly: 4 and 1
  // of the 5.
  it('shares out what a sum tells by how unsure each part was', () => {
    const b = belief([0, 0], [2, 1])
    learn(b, Float64Array.from([1, 1]), 5, 1e-9)
    expect(b.mean[0]).toBeCloseTo(4, 6)
    expect(b.mean[1]).toBeCloseTo(1, 6)
    expect(b.cov[0]! + b.cov[3]! + 2 * b.cov[1]!).toBeCloseTo(0, 6)
  })

  // Least squares by hand: y = a + b t through (0,1), (1,3), (2,5) has a 1, b 2.
  it('finds a line through points', () => {
    const b = belief([0, 0], [1000, 1000])
    for (const [t, y] of [
      [0, 1],
      [1, 3],
      [2, 5],
    ] as const)
      learn(b, Float64Array.from([1, t]), y, 1e-4)
    expect(b.mean[0]).toBeCloseTo(1, 4)
    expect(b.mean[1]).toBeCloseTo(2, 4)
  })

  it('carries one number into another with its doubt, and back', () => {
    const b = belief([2, 0], [0.5, 0])
    drift(b, 1, 0, 10)
    expect([b.mean[1], b.cov[3], b.cov[1]]).toEqual([20, 25, 2.5])
    learnOne(b, 1, 25, 1e-9)
    expect(b.mean[0]).toBeCloseTo(2.5, 6)
    relax(b, 0, 0, 1, 0.04)
    blur(b, 0, 0.05)
    expect([b.mean[0], b.cov[0], b.cov[1]]).toEqual([1, 0.09, 0])
  })

  it('does not let one slip move everything', () => {
    const calm = belief([0], [1])
    learnOne(calm, 0, 2, 1)
    const wild = belief([0], [1])
    learnOne(wild, 0, 200, 1)
    expect(calm.mean[0]).toBeCloseTo(1, 12)
    // By the plain rule it would be 100.
    expect(wild.mean[0]).toBeLessThan(10)
    expect(wild.cov[0]).toBeGreaterThan(calm.cov[0]!)
  })

  // Tables of the normal distribution.
  it('knows the normal distribution', () => {
    for (const [z, p] of [
      [0, 0.5],
      [1, 0.841345],
      [1.281552, 0.9],
      [1.959964, 0.975],
      [-1.281552, 0.1],
      [-3, 0.00135],
    ] as const)
      expect(normalBelow(z)).toBeCloseTo(p, 5)
  })
})
