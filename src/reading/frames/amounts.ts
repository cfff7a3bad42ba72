import { has } from '../item.ts'
import type { Pool } from '../pool.ts'
import { type Found, inFt, inLb, isEach } from './slots.ts'

/** Units of weight. */
export const WEIGHT = ['lb', 'ton', 'tonne', 'kg'] as const

/** Takes what was said of an amount: a weight, a count of loads, buckets or batches, or feet of the pile. A bare number from `bareFloor` on is pounds. */
export const takeAmount = (p: Pool, out: Found, bareFloor: number): void => {
  const w = p.num([...WEIGHT])
  const c = p.num(['load', 'bucket', 'batch'])
  const f = p.num(['ft', 'in'])
  if (c >= 0) {
    const i = p.take(c)!
    out.slots.count = i.num
    if (i.unit !== 'load') out.slots.unit = i.unit
    if (has(i, 'range')) out.vague = true
  }
  if (f >= 0 && p.free(f)) {
    const i = p.take(f)!
    out.slots.ft = inFt(i)
    if (has(i, 'range')) out.vague = true
  }
  if (w >= 0 && p.free(w)) {
    const i = p.take(w)!
    const lb = inLb(i)!
    out.slots.lb = isEach(p, w) && typeof out.slots.count === 'number' ? lb * out.slots.count : lb
    if (has(i, 'range')) out.vague = true
  } else {
    const n = p.num([undefined], (i, k) => i.num! >= bareFloor && !countsUnknown(p, k))
    if (n >= 0) {
      const i = p.take(n)!
      out.slots.lb = isEach(p, n) && typeof out.slots.count === 'number' ? i.num! * out.slots.count : i.num
      if (has(i, 'range')) out.vague = true
    }
  }
}

/** "3 jags": a number that counts something nobody knows is no count of ours. */
export const countsUnknown = (p: Pool, k: number): boolean =>
  p.items[k + 1] !== undefined && p.items[k + 1]!.senses.length === 0 && p.items[k + 1]!.tokens[0]?.kind === 'word'

export const amount = (s: Record<string, unknown>): boolean => s.lb !== undefined || s.count !== undefined || s.ft !== undefined
