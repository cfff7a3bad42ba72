import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { arpaOf } from '../../src/edges/voice/model/arpa.ts'
import { dictionaryOf, pickFrom } from '../../src/edges/voice/model/dictionary.ts'
import { drawSentences, spoken } from '../../src/edges/voice/model/draw.ts'
import { NO_GENERAL, readGeneral } from '../../src/edges/voice/model/general.ts'
import { soundsOf } from '../../src/edges/voice/model/pronounce.ts'
import { farm } from '../bench/voiceFarm.ts'

const CMU = '/usr/share/pocketsphinx/model/en-us/cmudict-en-us.dict'
const FARM = { piles: ['quarry', 'ridge', 'loma'], boxes: ['red wagon'], people: ['lea'], words: [] }
const TALK = [{ word: 'well', weight: 1 }]
const GENERAL = readGeneral(readFileSync(new URL('../../shared/voice/english.txt', import.meta.url), 'utf8'))

/** An ARPA file as a program reads it that knows only the format: P(w|h) by the longest listed n-gram, else back-off times the shorter. */
const reader = (arpa: string) => {
  const p = new Map<string, number>()
  const bo = new Map<string, number>()
  let order = 0
  for (const line of arpa.split('\n')) {
    const m = /^\\(\d)-grams:/.exec(line)
    if (m) order = Number(m[1])
    const [prob, gram, back] = line.split('\t')
    if (!order || gram === undefined) continue
    p.set(gram, 10 ** Number(prob))
    if (back !== undefined) bo.set(gram, 10 ** Number(back))
  }
  const of = (w: string, h: string[]): number => {
    const gram = [...h, w].join(' ')
    if (p.has(gram)) return p.get(gram)!
    return h.length ? (bo.get(h.join(' ')) ?? 1) * of(w, h.slice(1)) : 0
  }
  const words = [...p.keys()].filter(g => !g.includes(' ') && g !== '<s>')
  return { of, words, p }
}

describe('the language model', () => {
  it("is Witten and Bell's on a text that can be worked by hand", () => {
    // "a b", "a c": after "a" came b and c, once each, T = 2, c = 2; P1(b) = 1/6. (1 + 2 * 1/6) / (2 + 2) = 1/3
    const m = reader(
      arpaOf(
        [
          ['a', 'b'],
          ['a', 'c'],
        ],
        NO_GENERAL,
        { words: 0, pairs: 0, open: 1 },
      ),
    ) // prettier-ignore
    expect(m.of('b', [])).toBeCloseTo(1 / 6, 4)
    expect(m.of('b', ['a'])).toBeCloseTo(1 / 3, 3)
    // "<s> a" was followed by b and c too: (1 + 2 * 1/3) / 4
    expect(m.of('b', ['<s>', 'a'])).toBeCloseTo(5 / 12, 3)
  })

  it.each([
    ['of the trade alone', NO_GENERAL, { words: 0, pairs: 0, open: 1 }],
    ['with everyday English', GENERAL, { words: 0.05, pairs: 0.5, open: 2 }],
  ])('%s adds up to 1 after every history tried', (_, general, leaning) => {
    const m = reader(arpaOf(drawSentences(FARM, TALK, 800, 3), general, leaning))
    for (const h of [[], ['<s>'], ['loads'], ['loads', 'of'], ['of', 'corn'], ['<s>', 'we'], ['ridge'], ['well', 'well']]) {
      const sum = m.words.reduce((t, w) => t + m.of(w, h), 0)
      expect(Math.abs(sum - 1), h.join(' ')).toBeLessThan(0.002)
    }
  })

  it('counts its n-grams as its head says', () => {
    const arpa = arpaOf(drawSentences(FARM, TALK, 200, 3), GENERAL, { words: 0.05, pairs: 0.5, open: 1 })
    const { p } = reader(arpa)
    for (const n of [1, 2, 3]) {
      const told = Number(new RegExp(`ngram ${n}=(\\d+)`).exec(arpa)![1])
      expect([...p.keys()].filter(g => g.split(' ').length === n)).toHaveLength(told)
    }
  })
})

describe('the sentences drawn', () => {
  const drawn = drawSentences(FARM, TALK, 400, 5)

  it('are the same for the same farm, and have its names', () => {
    expect(drawSentences(FARM, TALK, 400, 5)).toEqual(drawn)
    const said = new Set(drawn.flat())
    for (const name of ['quarry', 'ridge', 'loma', 'wagon', 'lea']) expect(said).toContain(name)
    expect(new Set(drawSentences({ ...FARM, piles: ['la cuesta'] }, TALK, 400, 5).flat())).toContain('cuesta')
  })

  it('have spoken words only: no signs of the templates, no digits', () => {
    expect(drawn.flat().filter(w => !/^[a-z']+$/.test(w))).toEqual([])
  })

  it('are such as the assistant understands: four in five come to a record, an answer or a question', () => {
    const f = drawSentences({ ...FARM, piles: ['quarry', 'ridge', 'willow'] }, TALK, 150, 9)
    const got = f.filter(s => !['puzzled', 'ignored'].includes(farm().tell(s.join(' ')).outcome))
    expect(got.length / f.length).toBeGreaterThan(0.8)
  })

  it('say a name as it is spoken', () => {
    expect(spoken('Peña #2')).toBe('pena')
    expect(spoken('  Big-Bunk ')).toBe('big bunk')
  })
})

/** Phones wrong, missing or too many. */
const apart = (a: string[], b: string[]): number => {
  let row = Array.from({ length: b.length + 1 }, (_, k) => k)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let k = 1; k <= b.length; k++) next[k] = Math.min(next[k - 1]! + 1, row[k]! + 1, row[k - 1]! + (a[i - 1] === b[k - 1] ? 0 : 1))
    row = next
  }
  return row[b.length]!
}

describe('pronunciations', () => {
  // Places and things that piles are called by; the other side is the CMU dictionary.
  const NAMES =
    'north south hill barn creek ridge quarry willow lane pond shop maple cedar stone bottom orchard timber hollow spring bridge slab corner shed pit gravel pine meadow dairy silo river'

  it.skipIf(!existsSync(CMU))(
    `by rule are near the CMU dictionary's${existsSync(CMU) ? '' : ' (skipped: pocketsphinx-en-us is not installed)'}`,
    () => {
      const words = NAMES.split(' ')
      const known = pickFrom(readFileSync(CMU, 'latin1'), new Set(words))
      let wrong = 0
      let all = 0
      for (const w of words) {
        const listed = known.get(w)!.map(s => s.split(' '))
        wrong += Math.min(...soundsOf(w).flatMap(s => listed.map(l => apart(s.split(' '), l))))
        all += listed[0]!.length
      }
      expect(wrong / all).toBeLessThan(0.25)
    },
  )

  it('of Spanish names follow Spanish spelling', () => {
    expect(soundsOf('loma')[0]).toBe('L OW M AH')
    expect(soundsOf('cuesta')[0]).toBe('K W EH S T AH')
    expect(soundsOf('llano')[0]).toMatch(/^Y AA N OW$/)
    expect(soundsOf('jalisco')[0]).toMatch(/^HH AA L IY S K OW$/)
  })

  it('are phones of the model, whatever the name', () => {
    const phones = new Set(
      'AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH'.split(' '),
    )
    for (const w of ['haylage', 'xyzzy', 'queue', "o'neil", 'schmidt', 'ñandu', 'kyrgyz', 'zoquiapan', 'q', 'wright'])
      for (const s of soundsOf(w.normalize('NFD').replace(/[^a-z']/g, '')))
        for (const p of s.split(' ')) expect(phones, `${w}: ${s}`).toContain(p)
    expect(soundsOf('123')).toEqual([])
  })

  it('come from the dictionary where it has the word, with its further ways numbered', () => {
    const known = pickFrom('read R EH D\nread(2) R IY D\nready R EH D IY\n', new Set(['read']))
    const { text, guessed } = dictionaryOf(['read', 'silage', 'loma'], known)
    expect(text).toBe(
      'loma L OW M AH\nread R EH D\nread(2) R IY D\nsilage S AY L IH JH\n'.replace(
        'loma L OW M AH\n',
        `${soundsOf('loma')
          .map((s, k) => `loma${k ? `(${k + 1})` : ''} ${s}\n`)
          .join('')}`,
      ),
    )
    expect(guessed).toEqual(['loma'])
  })
})
