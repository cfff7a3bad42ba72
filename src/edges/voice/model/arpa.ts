import type { General } from './general.ts'

/** How a model leans. Tuned on the development half of the spoken sentences, see tests/bench/voiceBench.ts. */
export interface Leaning {
  /** Share of the general language in the words' own probabilities, 0 to 1. */
  words: number
  /** Share of the general language's word pairs in what a pair backs off to, 0 to 1. */
  pairs: number
  /** How much of each history's mass goes to what was not seen after it; 1 is Witten and Bell's own measure. */
  open: number
}

const BEGIN = '<s>'
const END = '</s>'

/** What followed a history, how often. */
type Followers = Map<string, number>

const count = (into: Map<string, Followers>, history: string, word: string): void => {
  const f = into.get(history)
  if (f) f.set(word, (f.get(word) ?? 0) + 1)
  else into.set(history, new Map([[word, 1]]))
}
const sum = (f: Followers): number => {
  let t = 0
  for (const n of f.values()) t += n
  return t
}

/**
 * A trigram model of sentences as an ARPA file, smoothed after Witten and Bell (Witten, I.H., Bell, T.C.: The zero-frequency problem,
 * IEEE Trans. Inf. Theory 37(4), 1991): P(w|h) = (c(h,w) + T(h) P(w|h')) / (c(h) + T(h)), with T(h) the number of different followers of h.
 * A general model of the language stands behind it, with its words and its word pairs.
 */
export const arpaOf = (sentences: string[][], general: General, { words: share, pairs: pairShare, open }: Leaning): string => {
  const one: Followers = new Map()
  const two = new Map<string, Followers>()
  const three = new Map<string, Followers>()
  for (const s of sentences) {
    const run = [BEGIN, ...s, END]
    for (let k = 1; k < run.length; k++) {
      one.set(run[k]!, (one.get(run[k]!) ?? 0) + 1)
      count(two, run[k - 1]!, run[k]!)
      if (k > 1) count(three, `${run[k - 2]} ${run[k - 1]}`, run[k]!)
    }
  }
  const vocabulary = [...new Set([...one.keys(), ...general.words.keys()])].filter(w => w !== BEGIN).sort()
  const all = sum(one)
  let generalSum = 0
  for (const p of general.words.values()) generalSum += p
  if (generalSum === 0) generalSum = 1
  const p1 = new Map<string, number>()
  for (const w of vocabulary) p1.set(w, ((1 - share) * (one.get(w) ?? 0)) / all + (share * (general.words.get(w) ?? 0)) / generalSum)
  // a word of one model alone would stand at nothing in the other
  const floor = 1e-7
  const p1Of = (w: string): number => Math.max(p1.get(w) ?? 0, floor)

  const p2 = new Map<string, Map<string, number>>()
  for (const v of [BEGIN, ...vocabulary]) {
    if (v === END) continue
    const field: Followers = two.get(v) ?? new Map<string, number>()
    const paired = general.pairs.get(v) ?? new Map<string, number>()
    if (!field.size && !paired.size) continue
    let listed = 0
    let alone = 0
    for (const [w, p] of paired) {
      listed += p
      alone += (general.words.get(w) ?? 0) / generalSum
    }
    const rest = Math.max(0, 1 - listed) / Math.max(1e-9, 1 - alone)
    const lean = paired.size ? pairShare : 0
    const generalOf = (w: string): number => paired.get(w) ?? (rest * (general.words.get(w) ?? 0)) / generalSum
    const c = sum(field)
    const t = field.size ? field.size * open : 1
    const out = new Map<string, number>()
    for (const w of new Set([...field.keys(), ...(lean ? paired.keys() : [])])) {
      if (!p1.has(w)) continue
      out.set(w, ((field.get(w) ?? 0) + t * ((1 - lean) * p1Of(w) + lean * generalOf(w))) / (c + t))
    }
    p2.set(v, out)
  }
  const left = (explicit: Map<string, number>, lower: (w: string) => number): number => {
    let above = 0
    let below = 0
    for (const [w, p] of explicit) {
      above += p
      below += lower(w)
    }
    return Math.max(1e-6, 1 - above) / Math.max(1e-6, 1 - below)
  }
  const bo2 = new Map([...p2].map(([v, e]) => [v, left(e, p1Of)]))
  const p2Of = (v: string, w: string): number => p2.get(v)?.get(w) ?? (bo2.get(v) ?? 1) * p1Of(w)

  const p3: [string, Map<string, number>, number][] = []
  for (const [h, f] of [...three].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const v = h.slice(h.indexOf(' ') + 1)
    const c = sum(f)
    const t = f.size * open
    const out = new Map<string, number>()
    for (const [w, n] of f) out.set(w, (n + t * p2Of(v, w)) / (c + t))
    p3.push([h, out, left(out, w => p2Of(v, w))])
  }
  const bo3 = new Map(p3.map(([h, , bo]) => [h, bo]))
  const log = (p: number): string => Math.log10(p).toFixed(4)
  const lines: string[] = []
  let n2 = 0
  let n3 = 0
  lines.push('\\1-grams:', `-99.0000\t${BEGIN}\t${log(bo2.get(BEGIN) ?? 1)}`)
  for (const w of vocabulary) lines.push(w === END ? `${log(p1Of(w))}\t${w}` : `${log(p1Of(w))}\t${w}\t${log(bo2.get(w) ?? 1)}`)
  lines.push('', '\\2-grams:')
  for (const [v, e] of p2)
    for (const [w, p] of e) {
      n2++
      lines.push(w === END ? `${log(p)}\t${v} ${w}` : `${log(p)}\t${v} ${w}\t${log(bo3.get(`${v} ${w}`) ?? 1)}`)
    }
  lines.push('', '\\3-grams:')
  for (const [h, e] of p3)
    for (const [w, p] of e) {
      n3++
      lines.push(`${log(p)}\t${h} ${w}`)
    }
  lines.push('', '\\end\\', '')
  return ['\\data\\', `ngram 1=${vocabulary.length + 1}`, `ngram 2=${n2}`, `ngram 3=${n3}`, '', ...lines].join('\n')
}
