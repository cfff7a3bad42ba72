import { describe, expect, it } from 'vitest'
import { FARMS } from '../seasons/farms.ts'
import { play } from '../seasons/play.ts'
import { score } from '../seasons/score.ts'

/**
 * Days left against the truth of simulated seasons, which the book never sees. What a notebook gets from the same words is the
 * yardstick. Few seasons and wide limits: the full table is printed by the seasons themselves.
 */
const guesses = (name: string, count: number) => {
  const world = FARMS.find(f => f.name === name)!
  return Array.from({ length: count }, (_, i) => play(world, i + 1)).flat()
}

describe.each([
  ['plain', 1],
  ['light boxes', 1],
  ['simple', 1],
  ['long silence', 1],
  ['feet logged', 1.3],
])('days left where the farm is: %s', (name, slack) => {
  const all = guesses(name, 60)
  it.each([
    [20, 45, 4.2, 12],
    [45, 90, 5.6, 15],
  ])('with %i to %i days to go', (from, to, median, p90) => {
    const s = score(all.filter(g => g.truth >= from && g.truth < to))
    expect(s.n).toBeGreaterThan(50)
    expect(s.median).toBeLessThan(median * slack)
    expect(s.p90).toBeLessThan(p90 * slack)
    expect(s.median).toBeLessThan(s.notebookMedian)
    expect(s.held).toBeGreaterThan(65)
  })
})

/** What is asked of the estimate where errors are ordinary, over sixty seasons of each farm; of other simulators, too. */
describe.each(['ordinary', 'ordinary, short', 'even', 'even, wide boxes', 'pair'])('days left, errors being ordinary: %s', name => {
  const all = guesses(name, 60)
  const between = (from: number, to: number) => score(all.filter(g => g.truth >= from && g.truth < to))
  it('is within 2.7 days as often as not at 20 to 45 days, and within 8 nine times in ten', () => {
    expect(between(20, 45).median).toBeLessThan(2.7)
    expect(between(20, 45).p90).toBeLessThan(8)
  })
  it('is within 4 days as often as not at 45 to 90 days', () => {
    expect(between(45, 90).median).toBeLessThan(4)
  })
  it('is better than the notebook at both, and its range holds the truth', () => {
    for (const s of [between(20, 45), between(45, 90)]) {
      expect(s.median).toBeLessThan(s.notebookMedian)
      expect(s.held).toBeGreaterThan(74)
    }
  })
})

/** A range that is right 80 % of the time: over farms of every kind together, for no one of them is the world. */
describe('the range over all farms', () => {
  const all = FARMS.flatMap(f => guesses(f.name, 6))
  it.each([
    [8, 20],
    [20, 45],
    [45, 90],
  ])('holds the truth about 80 times in 100 with %i to %i days to go', (from, to) => {
    const s = score(all.filter(g => g.truth >= from && g.truth < to))
    expect(s.held).toBeGreaterThan(74)
    expect(s.held).toBeLessThan(88)
  })
})
