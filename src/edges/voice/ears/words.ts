import type { HeardWord, Wording } from '../../../ports.ts'

/** A word or a piece of one as a recogniser reports it; `sure` 0 to 1, left out where it says nothing about that. */
export interface Timed {
  word: string
  /** Seconds from the beginning of the note. */
  from: number
  to: number
  sure?: number
}

/** How sure a word counts where the recogniser does not say: it is neither trusted nor thrown away. Common practice, no source. */
export const UNSAID_SURE = 0.7

/** A word without what is written around it: small letters, digits, and what joins them within ("34.5", "don't"). */
export const bareWord = (word: string): string =>
  word
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}%$/'’.,-]/gu, '')
    .replace(/^[^\p{L}\p{N}%$]+|[^\p{L}\p{N}%$]+$/gu, '')

/** The timed words that together are `bare`, beginning at `at`: how many they are; 0 where they are not. */
const covering = (bare: string, timed: string[], at: number): number => {
  let got = ''
  for (let k = at; k < timed.length; k++) {
    got += timed[k]!
    if (got === bare) return k + 1 - at
    if (!bare.startsWith(got)) return 0
  }
  return 0
}

/** So many timed words are passed over to find the next one of the text. Some servers time words that their text does not show. */
const LOOK_AHEAD = 4

/**
 * The words of a text with their times and confidences, from the list of timed words beside it. The text is what was heard: it has the
 * punctuation, without which "7 on north, 3 on south" would be another message; the words keep it ("north,"). A word that the list
 * does not have stands between its neighbours, as sure as `otherwise` says.
 */
export const wordsOf = (text: string, timed: Timed[], span: { from: number; to: number }, otherwise = UNSAID_SURE): HeardWord[] => {
  const tokens = text.split(/\s+/u).filter(t => bareWord(t) !== '')
  const list = timed.map(t => ({ ...t, bare: bareWord(t.word) })).filter(t => t.bare !== '')
  const bare = list.map(t => t.bare)
  const found: (HeardWord | undefined)[] = []
  let at = 0
  for (const token of tokens) {
    let hit: HeardWord | undefined
    for (let k = at; k < Math.min(at + LOOK_AHEAD, list.length) && !hit; k++) {
      const n = covering(bareWord(token), bare, k)
      if (!n) continue
      const parts = list.slice(k, k + n)
      hit = { word: token, from: parts[0]!.from, to: parts.at(-1)!.to, sure: Math.min(...parts.map(p => p.sure ?? otherwise)) }
      at = k + n
    }
    found.push(hit)
  }
  return spread(tokens, found, span, otherwise)
}

/** Words without times share the gap that they stand in. */
const spread = (tokens: string[], found: (HeardWord | undefined)[], span: { from: number; to: number }, sure: number): HeardWord[] => {
  const out: HeardWord[] = []
  for (let k = 0; k < tokens.length; k++) {
    const hit = found[k]
    if (hit) {
      out.push(hit)
      continue
    }
    const from = out.at(-1)?.to ?? span.from
    const ahead = found.findIndex((f, n) => n > k && f)
    const left = (ahead < 0 ? tokens.length : ahead) - k
    const to = Math.max(from, ahead < 0 ? span.to : found[ahead]!.from)
    out.push({ word: tokens[k]!, from, to: from + (to - from) / left, sure })
  }
  return out
}

/** A wording as heavy as its words are sure on average (the geometric mean: one doubtful word counts). */
export const wordingOf = (words: HeardWord[]): Wording => ({
  words,
  weight: words.length ? Math.exp(words.reduce((t, w) => t + Math.log(Math.max(w.sure, 1e-4)), 0) / words.length) : 0,
})
