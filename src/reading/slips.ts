import { distance } from 'fastest-levenshtein'
import type { Lexicon } from './lexicon.ts'

/** The consonants of a word, doubled ones once: "pushd", "ripd", "chkd" keep them all. */
const skeleton = (w: string): string => w[0] + w.slice(1).replace(/[aeiou]/g, '').replace(/(.)\1+/g, '$1')

const sensesOf = (lexicon: Lexicon, w: string): string[] => lexicon.byFirst.get(w)?.filter(p => p.words.length === 1).flatMap(p => [...p.en, ...p.es]) ?? []
const meansSame = (lexicon: Lexicon, a: string, b: string): boolean => {
  const x = sensesOf(lexicon, a)
  return sensesOf(lexicon, b).some(s => s !== 'filler' && x.includes(s))
}

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
      // vowels are dropped in English thumb typing; Spanish is spelled by ear instead
      if (!lexicon.byFirst.get(s)?.some(p => p.words.length === 1 && p.en.length > 0)) continue
      const k = skeleton(s)
      if (k.length < 3) continue
      const other = skeletons.get(k)
      // two words of one meaning are no doubt; two meanings are
      skeletons.set(k, other === undefined ? s : other !== null && meansSame(lexicon, other, s) ? other : null)
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
