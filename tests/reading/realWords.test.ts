import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { LEXICON } from '../../src/reading/lexicon.ts'
import { mendWord } from '../../src/reading/slips.ts'
import { realWords, realWordsFile } from '../words/real.ts'

// Sources: SUBTLEX-US word frequencies of spoken English (Brysbaert & New 2009, Behavior Research Methods 41:977-990) and the 10,000
// commonest Spanish words, by two open packages.

const REAL = realWords()

describe('everyday words', () => {
  it('are taken for no slip of a trade word', () => {
    const taken = REAL.filter(w => mendWord(LEXICON, w) !== undefined)
    expect(REAL.length).toBeGreaterThan(1000)
    expect(taken).toEqual([])
  })

  it('are listed anew when the trade words change: run `npm run real-words`', () => {
    expect(readFileSync('src/reading/realWords.ts', 'utf8')).toBe(realWordsFile())
  })

  it('do not hide the slips of a thumb, nor other forms of a trade word', () => {
    const mended = Object.fromEntries(
      ['cron', 'hualed', 'plasitc', 'silagge', 'opnd', 'bucktes', 'alflafa', 'revisen'].map(w => [w, mendWord(LEXICON, w)]),
    )
    expect(mended).toMatchObject({ cron: 'corn', hualed: 'hauled', plasitc: 'plastic', silagge: 'silage', bucktes: 'buckets' })
    expect(mended.opnd).toMatch(/^open/)
    expect(mended.alflafa).toBe('alfalfa')
    expect(mended.revisen).toMatch(/^revis/)
  })
})
