import { distance } from 'fastest-levenshtein'
import type { Lexicon } from './lexicon.ts'

/** The consonants of a word: "pushd", "milkng", "chkd" keep them all. */
const skeleton = (w: string): string => w[0] + w.slice(1).replace(/[aeiou]/g, '')

const caches = new WeakMap<Lexicon, { memo: Map<string, string | null>; skeletons: Map<string, string | null> }>()

/**
 * The trade word that an unknown word is a slip of, or undefined. One letter off for words of five letters and more; or the
 * same word with vowels left out. Two candidates: none.
 */
export const mendWord = (lexicon: Lexicon, word: string): string | undefined => {
  if (word.length < 4 || word.length > 16) return undefined
  let c = caches.get(lexicon)
  if (!c) {
    const skeletons = new Map<string, string | null>()
    for (const s of lexicon.singles) {
      const k = skeleton(s)
      if (k.length >= 4) skeletons.set(k, skeletons.has(k) ? null : s)
    }
    c = { memo: new Map(), skeletons }
    caches.set(lexicon, c)
  }
  const known = c.memo.get(word)
  if (known !== undefined) return known ?? undefined
  let best: string | null = null
  if (word.length >= 5) {
    for (const s of lexicon.singles) {
      if (s[0] !== word[0] || Math.abs(s.length - word.length) > 1) continue
      if (distance(s, word) === 1 || (s.length === word.length && distance(s, word) === 2 && [...s].sort().join('') === [...word].sort().join(''))) {
        best = s
        break
      }
    }
  }
  if (!best && !/[aeiou]{2}/.test(word)) best = c.skeletons.get(skeleton(word)) ?? null
  if (c.memo.size > 20_000) c.memo.clear()
  c.memo.set(word, best)
  return best ?? undefined
}
