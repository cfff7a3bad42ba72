import { eventsOf } from '../book/book.ts'
import type { Told } from '../book/pile.ts'
import { type Context, HOUR } from './context.ts'

/** Buttons for a number: three rows of two. */
const MOST = 6
/** So far back a farm's habit is looked for, events. */
const BACK = 120
/** A farm without a history is offered these. */
const PLAIN = [1, 2, 3, 4, 5, 6]

const since = (c: Context, at: string, hours: number): boolean => Date.parse(c.message.at) - Date.parse(at) <= hours * HOUR

/** Values by how likely each is to come again, likeliest first: the same pile and the same person count for more, and so does today. */
const ranked = (list: Told[], value: (l: Told) => number | undefined, c: Context, pile: string | undefined): number[] => {
  const weight = new Map<number, number>()
  for (const l of list.slice(-BACK)) {
    const n = value(l)
    if (n === undefined) continue
    const w = 1 + ('pile' in l.event && l.event.pile === pile ? 1 : 0) + (l.by === c.message.from ? 1 : 0) + (since(c, l.at, 14) ? 1 : 0)
    weight.set(n, (weight.get(n) ?? 0) + w)
  }
  return [...weight].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([n]) => n)
}

/** Loads that one message of this farm is likely to tell, likeliest first; a farm that has told few is offered small numbers beside. */
export const likelyCounts = (c: Context, pile: string | undefined, unit: string | undefined): number[] => {
  const loads = eventsOf(c.book, 'load').filter(l => l.event.unit === (unit === 'load' ? undefined : unit))
  const usual = ranked(loads, l => (l.event as { count?: number }).count, c, pile).slice(0, MOST)
  return [...new Set([...usual, ...PLAIN])].slice(0, MOST)
}

/** Counts that this farm has told of the same thing (tires on a cover, a sort of plastic), likeliest first; none where none was told yet. */
export const likelyOf = (c: Context, type: 'cover' | 'supply', same: Record<string, unknown>): number[] => {
  const told = eventsOf(c.book, type).filter(l => Object.entries(same).every(([k, v]) => (l.event as Record<string, unknown>)[k] === v))
  return ranked(told, l => (l.event as { count?: number }).count, c, undefined).slice(0, MOST)
}

/** Weights that this farm usually feeds or throws out at a time, lb, likeliest first; none where none was told yet. */
export const likelyWeights = (c: Context, type: 'feed' | 'spoil', pile: string | undefined): number[] =>
  ranked(eventsOf(c.book, type), l => (l.event as { lb?: number }).lb, c, pile).slice(0, MOST)
