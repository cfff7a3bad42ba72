import { distance } from 'fastest-levenshtein'
import type { Lexicon } from './lexicon.ts'
import { REAL_WORDS } from './realWords.ts'

/** The consonants of a word, doubled ones once: "pushd", "ripd", "chkd" keep them all. */
const skeleton = (w: string): string =>
  w[0] +
  w
    .slice(1)
    .replace(/[aeiou]/g, '')
    .replace(/(.)\1+/g, '$1')

/** True where the typed letters stand in the word in their order. */
const inside = (typed: string, word: string): boolean => {
  let k = 0
  for (const c of word) if (c === typed[k]) k++
  return k === typed.length
}

/** True where `typed` is `word` with vowels or doubled letters left out: "qury", "lwr", "opnd". */
export const isShort = (typed: string, word: string): boolean =>
  typed.length >= 3 && typed.length < word.length && skeleton(typed) === skeleton(word) && skeleton(word).length >= 3 && inside(typed, word)

const sensesOf = (lexicon: Lexicon, w: string): string[] =>
  lexicon.byFirst
    .get(w)
    ?.filter(p => p.words.length === 1)
    .flatMap(p => [...p.en, ...p.es]) ?? []
const meansSame = (lexicon: Lexicon, a: string, b: string): boolean => {
  const x = sensesOf(lexicon, a)
  return sensesOf(lexicon, b).some(s => s !== 'filler' && x.includes(s))
}

interface Index {
  /** Every word of the tables, those that only stand in phrases too. */
  words: Set<string>
  memo: Map<string, string | null>
  /** English words by skeleton: vowels are dropped in English thumb typing; Spanish is spelled by ear instead. */
  skeletons: Map<string, string[]>
}

const caches = new WeakMap<Lexicon, Index>()

const indexOf = (lexicon: Lexicon): Index => {
  const known = caches.get(lexicon)
  if (known) return known
  const skeletons = new Map<string, string[]>()
  const seen = new Set<string>()
  for (const list of lexicon.byFirst.values()) {
    for (const p of list) {
      if (!p.en.length) continue
      for (const w of p.words) {
        if (w.length < 4 || seen.has(w)) continue
        seen.add(w)
        const k = skeleton(w)
        if (k.length >= 3) skeletons.set(k, [...(skeletons.get(k) ?? []), w])
      }
    }
  }
  const words = new Set([...lexicon.byFirst.values()].flatMap(list => list.flatMap(p => p.words)))
  const made: Index = { words, memo: new Map(), skeletons }
  caches.set(lexicon, made)
  return made
}

/** Words of four letters that are half of what a crew types; one letter of them may be wrong. */
const SHORT_TRADE = ['corn', 'load', 'hail', 'rain', 'snow', 'mesh', 'hole', 'film', 'tire', 'maiz', 'hoyo']

/** True where two words are letters changed about: "cron", "tiers". */
const isTurned = (a: string, b: string): boolean =>
  a.length === b.length && distance(a, b) === 2 && [...a].sort().join('') === [...b].sort().join('')

/** As `mendWord`, whatever else the word may be in English or Spanish. */
export const slipOf = (lexicon: Lexicon, word: string): string | undefined => {
  if (word.length < 3 || word.length > 16) return undefined
  if (word.length === 4 || word.length === 5) {
    const near = SHORT_TRADE.filter(s => s[0] === word[0] && distance(s, word) === 1 && lexicon.byFirst.has(s))
    if (near.length === 1) return near[0]
  }
  if (word.length === 4) {
    const turned = [...lexicon.byFirst.keys()].find(
      s => s[0] === word[0] && isTurned(s, word) && sensesOf(lexicon, s).some(x => x !== 'filler'),
    )
    if (turned) return turned
  }
  if (word.length >= 5) {
    const near = lexicon.singles.filter(
      s => s[0] === word[0] && Math.abs(s.length - word.length) <= 1 && (distance(s, word) === 1 || isTurned(s, word)),
    )
    // "puled" is pulled, not piled: letters exchanged, then one left out or doubled, before a wrong one
    const same = near.find(s => isTurned(s, word)) ?? near.find(s => skeleton(s) === skeleton(word) && s.length !== word.length) ?? near[0]
    if (same) return same
  }
  const all = (indexOf(lexicon).skeletons.get(skeleton(word)) ?? []).filter(w => isShort(word, w)).sort((a, b) => a.length - b.length)
  // words with a meaning of their own before words that only stand in phrases
  const own = all.filter(w => sensesOf(lexicon, w).length > 0)
  const fits = own.length ? own : all
  const first = fits[0]
  return first && (!own.length || fits.every(f => f === first || meansSame(lexicon, f, first))) ? first : undefined
}

/**
 * The trade word that an unknown word is a slip of, or undefined. One letter off in words of five letters and more, two exchanged
 * in words of four and more, or the vowels left out. Two candidates of two meanings: none. A word that means something else: none.
 */
export const mendWord = (lexicon: Lexicon, word: string): string | undefined => {
  const { memo, words } = indexOf(lexicon)
  if (REAL_WORDS.has(word) || words.has(word)) return undefined
  const known = memo.get(word)
  if (known !== undefined) return known ?? undefined
  const best = slipOf(lexicon, word)
  if (memo.size > 20_000) memo.clear()
  memo.set(word, best ?? null)
  return best
}
