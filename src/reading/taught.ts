import { LEXICON } from './lexicon.ts'
import { numberAt } from './numbers.ts'
import type { Token } from './token.ts'
import { foldWord, tokenise } from './tokens.ts'

/** One of this farm's own words: what is typed, and what it means in words the reader knows. */
export interface Lesson {
  word: string
  means: string
}

const QUOTES = /^["'“”‘’«»\s]+|["'“”‘’«».!\s]+$/g
const clean = (text: string): string => text.replace(QUOTES, '').replace(/\s+/g, ' ').toLowerCase()

/** The ways a lesson is said; the groups are the word and its meaning. */
const LESSONS = [
  /^\s*(?:ok(?:ay)?,?\s+|hey,?\s+)?when\s+(?:we|i|they|the guys|the crew)\s+says?\s+(.{2,40}?),?\s+(?:we|i|they|it)\s+means?\s+(.{2,60})$/i,
  /^\s*(["'“‘].{2,40}?["'”’])\s+(?:means|is the same as|stands for)\s+(.{2,60})$/i,
  /^\s*(?:an?|one)\s+([a-z]{2,20})\s+(?:is|means|counts as|equals)\s+((?:half|a quarter|one|two|three|\d[\d.,/]*)\b.{0,20}\b(?:loads?|buckets?|tons?|lbs?|pounds?))\s*\.?$/i,
  /^\s*cuando\s+(?:decimos|digo|dicen|digamos)\s+(.{2,40}?),?\s+(?:es|queremos decir|quiero decir|nos referimos a|significa|quieren decir)\s+(.{2,60})$/i,
  /^\s*(["'“‘«].{2,40}?["'”’»])\s+(?:significa|quiere decir|es lo mismo que)\s+(.{2,60})$/i,
  /^\s*un[ao]?\s+([a-zñ]{2,20})\s+(?:es|son|equivale a|cuenta como)\s+((?:medi[oa]|un[ao]?|dos|tres|\d[\d.,/]*)\b.{0,20}\b(?:viajes?|cargas?|botes?|cucharon(?:es)?|toneladas?|libras?))\s*\.?$/i,
]

/** The lesson in a message, or undefined. A word that the trade itself has is not taught over. */
export const lessonIn = (text: string): Lesson | undefined => {
  if (text.length > 160) return undefined
  for (const pattern of LESSONS) {
    const m = pattern.exec(text)
    if (!m) continue
    const word = clean(m[1]!)
    const means = clean(m[2]!)
    if (!word || !means || word === means) return undefined
    const single = word.split(' ').length === 1 ? LEXICON.byFirst.get(foldWord(word))?.find(p => p.words.length === 1) : undefined
    if (single && [...single.en, ...single.es].some(s => s !== 'filler')) return undefined
    return { word, means }
  }
  return undefined
}

/** "forget the bunk", "we don't say jag anymore". */
const FORGET = [
  /^\s*(?:we\s+)?(?:don'?t|do not|no longer)\s+say\s+(.{2,40}?)(?:\s+any\s?more)?\s*\.?$/i,
  /^\s*(?:forget|unlearn)\s+(?:the\s+word\s+)?(.{2,40}?)\s*\.?$/i,
  /^\s*ya\s+no\s+decimos\s+(.{2,40}?)\s*\.?$/i,
  /^\s*olvida\s+(?:la\s+palabra\s+)?(.{2,40}?)\s*\.?$/i,
]

/** The taught word that a message takes back, or undefined. */
export const forgottenIn = (text: string, taught: ReadonlyMap<string, string>): string | undefined => {
  for (const pattern of FORGET) {
    const word = pattern.exec(text)?.[1]
    if (word && taught.has(clean(word))) return clean(word)
  }
  return undefined
}

/** "what words do you know", "our words", "que palabras sabes". */
export const asksLessons = (text: string): boolean =>
  /^\s*(?:what\s+(?:words|of our words)\s+(?:do you know|have (?:we|i) taught)|(?:list\s+)?our (?:own )?words|que palabras (?:sabes|te ense)\S*|nuestras palabras)/i.test(
    text.normalize('NFD').replace(/\p{M}/gu, ''),
  )

const asWords = (text: string, at: Token): Token[] => tokenise(text).map(t => ({ ...t, text: t.text, from: at.from, to: at.to }))

/** Puts what the farm's own words mean in their place. "3 jags" of half a load are 1.5 loads. */
export const spellOut = (tokens: Token[], taught: ReadonlyMap<string, string>): Token[] => {
  if (!taught.size) return tokens
  let out = tokens
  for (const [word, means] of taught) {
    const words = word.split(' ').map(foldWord)
    for (let i = 0; i + words.length <= out.length; i++) {
      const hit = words.every(
        (w, k) => out[i + k]!.norm === w || (k === words.length - 1 && (out[i + k]!.norm === `${w}s` || out[i + k]!.norm === `${w}es`)),
      )
      if (!hit) continue
      const spelled = asWords(means, out[i]!)
      const amount = numberAt(spelled, 0)
      let from = i
      let put = spelled
      if (amount && amount.to < spelled.length) {
        // a unit of the farm's own: what stands before it counts it
        for (let b = Math.max(0, i - 4); b < i; b++) {
          const n = numberAt(out, b)
          if (n && n.to === i) {
            const value = Math.round(n.value * amount.value * 1e6) / 1e6
            put = [{ ...out[b]!, text: String(value), norm: String(value), kind: 'number', value }, ...spelled.slice(amount.to)]
            from = b
            break
          }
        }
        if (from === i)
          put = [
            { ...spelled[0]!, text: String(amount.value), norm: String(amount.value), kind: 'number', value: amount.value },
            ...spelled.slice(amount.to),
          ]
      }
      out = [...out.slice(0, from), ...put, ...out.slice(i + words.length)]
      i = from + put.length - 1
    }
  }
  return out
}
