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
    [20, 45, 4.2, 11],
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
