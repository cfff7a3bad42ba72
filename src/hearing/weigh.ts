import type { HeardWord, Wording } from '../ports.ts'
import { isNoNumber } from './near.ts'

/** What one pass of a recogniser heard. */
export interface Pass {
  words: HeardWord[]
  /** How much its vote counts. */
  weight: number
}

/** A wording tried against the sound beside the one it came from: how much better (+) or worse (-) the sound fits it, in each trial. */
export interface Trial {
  of: string
  words: string[]
  margins: number[]
}

/** How many units of the recogniser's score make an odds ratio of e. Set on the development half of the spoken notes. */
export const SCALE = 80

/** What is left of the weight of a wording that nobody would say; the rest goes to nothing, so that it is asked about. */
const UNLIKELY = 0.1

export const textOf = (words: readonly (HeardWord | string)[]): string => words.map(w => (typeof w === 'string' ? w : w.word)).join(' ')

/** Of each word of `a`: whether the best alignment of the two has the same word in `b`. */
const shared = (a: string[], b: string[]): boolean[] => {
  const cost: number[][] = [b.map((_, k) => k + 1)]
  cost[0]!.unshift(0)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let k = 1; k <= b.length; k++)
      row[k] = Math.min(row[k - 1]! + 1, cost[i - 1]![k]! + 1, cost[i - 1]![k - 1]! + (a[i - 1] === b[k - 1] ? 0 : 1))
    cost.push(row)
  }
  const out = a.map(() => false)
  for (let i = a.length, k = b.length; i > 0 && k > 0; ) {
    const same = a[i - 1] === b[k - 1]
    if (cost[i]![k] === cost[i - 1]![k - 1]! + (same ? 0 : 1)) {
      out[i - 1] = same
      i--
      k--
    } else if (cost[i]![k] === cost[i - 1]![k]! + 1) i--
    else k--
  }
  return out
}

/** The share of the passes, by weight, that have each word of a wording in the same place. */
const agreed = (words: HeardWord[], passes: Pass[]): HeardWord[] => {
  const total = passes.reduce((t, p) => t + p.weight, 0)
  const votes = words.map(() => 0)
  const a = words.map(w => w.word)
  for (const p of passes)
    shared(
      a,
      p.words.map(w => w.word),
    ).forEach((same, k) => {
      if (same) votes[k]! += p.weight
    })
  return words.map((w, k) => ({ ...w, sure: Math.round((votes[k]! / total) * 1000) / 1000 }))
}

const odds = (margins: number[]): number => {
  // the trial that speaks most for the other wording counts: a doubt in one is a doubt
  const worst = Math.max(...margins)
  return 1 / (1 + Math.exp(-worst / SCALE))
}

/**
 * The wordings of several passes over one note, heaviest first, their weights adding up to 1 at most. A wording on trial takes the part of
 * its origin's weight that the sound gives it.
 */
export const weigh = (passes: Pass[], trials: Trial[]): Wording[] => {
  const heard = passes.filter(p => p.words.length > 0)
  const total = passes.reduce((t, p) => t + p.weight, 0)
  if (!heard.length || total <= 0) return []
  const by = new Map<string, Wording>()
  for (const p of heard) {
    const text = textOf(p.words)
    const w = by.get(text)
    if (w) w.weight += p.weight / total
    else by.set(text, { words: agreed(p.words, passes), weight: p.weight / total })
  }
  const origins = new Map([...by].map(([text, w]) => [text, w.weight]))
  const doubts = new Map<string, { text: string; words: string[]; part: number }[]>()
  for (const t of trials) {
    if (!origins.has(t.of) || !t.margins.length) continue
    const list = doubts.get(t.of) ?? []
    list.push({ text: textOf(t.words), words: t.words, part: odds(t.margins) })
    doubts.set(t.of, list)
  }
  for (const [of, list] of doubts) {
    const origin = by.get(of)!
    const weight = origins.get(of)!
    const against = list.reduce((t, d) => t + d.part / Math.max(1e-9, 1 - d.part), 0)
    origin.weight += weight / (1 + against) - weight
    for (const d of list) {
      const part = (weight * (d.part / Math.max(1e-9, 1 - d.part))) / (1 + against)
      const there = by.get(d.text)
      if (there) there.weight += part
      else by.set(d.text, { words: d.words.map(word => ({ word, from: 0, to: 0, sure: part })), weight: part })
    }
  }
  for (const w of by.values()) if (isNoNumber(w.words.map(x => x.word))) w.weight *= UNLIKELY
  return [...by.values()].sort((a, b) => b.weight - a.weight)
}
