import type { Guess } from './play.ts'

/** Days left when asked, from and to. */
export const HORIZONS: [number, number][] = [
  [8, 20],
  [20, 45],
  [45, 90],
  [90, 120],
]

export interface Score {
  n: number
  median: number
  p90: number
  /** Share of the answers whose interval held the truth, percent. */
  held: number
  /** Half of the interval's width, median, days. */
  half: number
  /** Mean error with its sign: above 0 is too many days. */
  lean: number
  notebookMedian: number
  notebookP90: number
}

export const quantile = (list: readonly number[], q: number): number => {
  if (!list.length) return Number.NaN
  const s = [...list].sort((a, b) => a - b)
  const at = (s.length - 1) * q
  const i = Math.floor(at)
  return s[i]! + (s[Math.min(s.length - 1, i + 1)]! - s[i]!) * (at - i)
}

export const score = (guesses: readonly Guess[]): Score => {
  const given = guesses.filter(g => g.mid !== undefined)
  const off = given.map(g => Math.abs(g.mid! - g.truth))
  const book = guesses.map(g => Math.abs(g.notebook - g.truth))
  return {
    n: given.length,
    median: quantile(off, 0.5),
    p90: quantile(off, 0.9),
    held: (100 * given.filter(g => g.low! <= g.truth && g.truth <= g.high!).length) / Math.max(1, given.length),
    half: quantile(
      given.map(g => (g.high! - g.low!) / 2),
      0.5,
    ),
    lean: given.reduce((t, g) => t + g.mid! - g.truth, 0) / Math.max(1, given.length),
    notebookMedian: quantile(book, 0.5),
    notebookP90: quantile(book, 0.9),
  }
}
