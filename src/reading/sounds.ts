import { EN_COUNTS, EN_SCALES, EN_TENS, EN_UNITS } from './en/numbers.ts'
import { ES_COUNTS, ES_HUNDREDS, ES_TENS, ES_UNITS } from './es/numbers.ts'
import type { Lexicon } from './lexicon.ts'
import { mendWord } from './slips.ts'
import type { Token } from './token.ts'

/**
 * How a Spanish word sounds in Mexico and Central America, so that "kitamos", "bolbimos" and "oyos" meet "quitamos",
 * "volvimos" and "hoyos": h is silent, b is v, c, s and z are one, ll is y, qu and k are one, n before p or b is m.
 */
export const soundOf = (word: string): string => {
  let sound = heard.get(word)
  if (sound === undefined) {
    if (heard.size >= MOST_HEARD) heard.clear()
    sound = spelledOut(word)
    heard.set(word, sound)
  }
  return sound
}

// the same words come in every message
const heard = new Map<string, string>()
const MOST_HEARD = 20_000

const spelledOut = (word: string): string =>
  word
    .replace(/h/g, '')
    .replace(/qu(?=[ei])|k|c(?![eih])/g, 'k')
    .replace(/[zc](?=[eiaou]|$)/g, m => (m === 'c' ? 's' : 's'))
    .replace(/z/g, 's')
    .replace(/v/g, 'b')
    .replace(/ll/g, 'y')
    .replace(/g(?=[ei])/g, 'j')
    .replace(/n(?=[pb])/g, 'm')
    .replace(/([^r])\1+/g, '$1')
    // between vowels it tells words apart: "cerro" is no "cero"
    .replace(/(^|[^aeiou])r+/g, '$1r')

const NUMBERS = [EN_UNITS, EN_TENS, EN_SCALES, EN_COUNTS, ES_UNITS, ES_TENS, ES_HUNDREDS, ES_COUNTS].flatMap(t => Object.keys(t))

interface Sounds {
  words: Set<string>
  bySound: Map<string, string | null>
}

const made = new WeakMap<Lexicon, Sounds>()

const soundsOf = (lexicon: Lexicon): Sounds => {
  const known = made.get(lexicon)
  if (known) return known
  const words = new Set<string>(NUMBERS)
  const bySound = new Map<string, string | null>()
  const add = (w: string) => {
    const s = soundOf(w)
    // two words of one sound: the first of the table, which is the right spelling
    if (!bySound.has(s)) bySound.set(s, w)
  }
  for (const list of lexicon.byFirst.values()) {
    for (const p of list) {
      for (const w of p.words) words.add(w)
      if (p.es.length) for (const w of p.words) if (w.length >= 2) add(w)
    }
  }
  for (const t of [ES_UNITS, ES_TENS, ES_HUNDREDS, ES_COUNTS]) for (const w of Object.keys(t)) add(w)
  const out = { words, bySound }
  made.set(lexicon, out)
  return out
}

/** Words that dictation or a thumb writes for words of the trade; none of them is meant as such on a silage pile. */
const HEARD_AS = new Map(
  Object.entries({
    wholes: 'holes',
    roles: 'rolls',
    rolles: 'rolls',
    reign: 'rain',
    rein: 'rain',
    reigned: 'rained',
    tares: 'tears',
    dear: 'deer',
    dears: 'deer',
    lodes: 'loads',
    lode: 'load',
    bails: 'bales',
    feat: 'feet',
    haled: 'hailed',
    heche: 'eche',
    hechamos: 'echamos',
    hecharon: 'echaron',
    hechar: 'echar',
    hechando: 'echando',
    sinta: 'cinta',
    knight: 'night',
    qtr: 'quarter',
    qrtr: 'quarter',
    knite: 'night',
    tongues: 'tons',
    tongue: 'ton',
    lair: 'layer',
    lairs: 'layers',
    hales: 'hails',
    hale: 'hail',
    pounce: 'pounds',
  }),
)

/**
 * Tokens with Spanish words spelled by ear, or short English ones without their vowels, put right; only words that nobody knows.
 * Names of this farm stay; what `isLeft` knows is no slip either, but may be what dictation writes for a trade word.
 */
export const respell = (
  lexicon: Lexicon,
  tokens: Token[],
  isName: (word: string) => boolean,
  isLeft: (word: string) => boolean,
  spanish: boolean,
): Token[] => {
  const { words, bySound } = soundsOf(lexicon)
  return tokens.map(t => {
    if (t.kind !== 'word') return t
    const heard = HEARD_AS.get(t.norm)
    if (heard !== undefined) return isName(t.norm) ? t : { ...t, norm: heard }
    if (words.has(t.norm) || isLeft(t.norm)) return t
    const right = spanish ? bySound.get(soundOf(t.norm)) : t.norm.length === 3 ? mendWord(lexicon, t.norm) : undefined
    return right && right !== t.norm ? { ...t, norm: right } : t
  })
}
