import { expect, it } from 'vitest'
import { storm } from './storm.ts'

it('a short storm loses nothing, doubles nothing, tells no stranger, and keeps the order', async () => {
  const { wrong, counts, sent } = await storm({ updates: 300, kills: 2, seed: 7, lifeMs: 300 })
  expect(wrong).toEqual([])
  expect(sent).toBeGreaterThan(150)
  // It was a storm. Which call meets which fault depends on how fast the machine is.
  const met = (...kinds: string[]): number => kinds.reduce((sum, kind) => sum + (counts[kind] ?? 0), 0)
  expect(counts.killed).toBe(2)
  expect(met('lost before', 'lost after')).toBeGreaterThan(2)
  expect(met('refused', 'delayed')).toBeGreaterThan(2)
  expect(met('shuffled', 'sent again')).toBeGreaterThan(0)
}, 120_000)
