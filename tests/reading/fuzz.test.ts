import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { indexNames } from '../../src/reading/names.ts'
import { type ReadContext, read } from '../../src/reading/read.ts'
import type { Reading } from '../../src/reading/reading.ts'
import { PARTS } from './hostile.ts'

/** The longest message the house takes. */
const MOST = 4096
/**
 * What one message may take, ms of processor time: twice the 20 that the benchmark measures against, because the caches
 * of a busy machine are not ours alone. A pattern that runs away takes seconds.
 */
const LIMIT_MS = 40

const contextOf = (piles: string[]): ReadContext => ({
  names: indexNames({
    piles: new Map(piles.map(p => [p, p])),
    boxes: ['red truck', 'tall wagon'],
    words: new Map([['jag', 'half a load']]),
    people: ['Berit', 'Chuy'],
  }),
  now: { day: '2026-09-14', hour: 10 },
  lang: 'en',
})
const farm = contextOf(['quarry', 'hollow', 'long bench', 'north', 'gate', 'windy knob', 'pit', 'old mill'])

const filled = (part: string, before = ''): string => (before + part.repeat(Math.ceil(MOST / part.length))).slice(0, MOST)

const part = fc.constantFrom(...PARTS)
const anyText = fc.oneof(
  fc.string({ unit: 'binary', maxLength: MOST }),
  fc.string({ unit: 'grapheme', maxLength: MOST, size: 'max' }),
  fc.array(part, { maxLength: 200 }).map(p => p.join('').slice(0, MOST)),
  fc.tuple(part, fc.array(part, { minLength: 1, maxLength: 4 })).map(([before, run]) => filled(run.join(''), before)),
)

describe('any text is read', () => {
  it('without a throw', () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom('en' as const, 'es' as const), (text, lang) => {
        read(text, { ...farm, lang })
      }),
      { numRuns: 250, seed: 20260914 },
    )
  })

  it('the same again', () => {
    fc.assert(
      fc.property(fc.array(part, { maxLength: 30 }), run => {
        const text = run.join('')
        expect(read(text, farm)).toEqual(read(text, farm))
      }),
      { numRuns: 100, seed: 7 },
    )
  })
})

/** Processor time of one reading, ms: what other processes do on the machine counts little. */
const once = (text: string): number => {
  const before = process.cpuUsage()
  read(text, farm)
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}
const median = (text: string): number => Array.from({ length: 7 }, () => once(text)).sort((a, b) => a - b)[3]!
/** The best of a few medians, where the first is too long: a text that is slow is slow every time. */
const cost = (text: string): number => {
  let best = once(text)
  for (let k = 0; k < 4 && best > LIMIT_MS * 0.9; k++) best = Math.min(best, median(text))
  return best
}

describe(`no text of ${MOST} characters takes longer than ${LIMIT_MS} ms`, () => {
  const warm = (): void => {
    for (const p of PARTS) read(filled(p).slice(0, 400), farm)
    for (let k = 0; k < 200; k++) read('put 7 loads corn on quarry, hail last night, patched 3 holes', farm)
  }
  const slow = (texts: Iterable<[name: string, text: string]>): string[] => {
    warm()
    const out: string[] = []
    for (const [name, text] of texts) {
      const ms = cost(text)
      if (ms > LIMIT_MS) out.push(`${JSON.stringify(name)}: ${ms.toFixed(1)} ms`)
    }
    return out
  }

  it('one part over and over', () => {
    expect(slow(PARTS.map(p => [p, filled(p)]))).toEqual([])
  })

  it('a few parts over and over', () => {
    const runs = fc.sample(fc.tuple(part, fc.array(part, { minLength: 2, maxLength: 4 })), { numRuns: 150, seed: 41 })
    expect(slow(runs.map(([before, run]) => [`${before}|${run.join('')}`, filled(run.join(''), before)]))).toEqual([])
  })

  it('parts in any order', () => {
    const texts = fc
      .sample(fc.array(part, { minLength: 400, maxLength: 900, size: 'max' }), { numRuns: 40, seed: 43 })
      .map(p => p.join('').slice(0, MOST))
    expect(slow(texts.map(t => [t.slice(0, 120), t]))).toEqual([])
  })
})

it('a taught word that stands for many does not make a message longer than one can be', () => {
  // some twenty of them: a reader that lets them grow takes seconds over a full message of them
  const taught: ReadContext = {
    ...farm,
    names: indexNames({ piles: new Map(), boxes: [], words: new Map([['jag', '1x2x3x4x5x6x7x8x9x'.repeat(3)]]), people: [] }),
  }
  const times = Array.from({ length: 5 }, () => {
    const before = process.cpuUsage()
    read('jag '.repeat(20), taught)
    return process.cpuUsage(before).user / 1000
  })
  expect(Math.min(...times)).toBeLessThan(LIMIT_MS)
})

/** What a reading says, without places in the text and with the names put back. */
const gist = (r: Reading, names: Map<string, string>) => {
  const back = (v: unknown): unknown => {
    if (typeof v === 'string') return [...names].reduce((t, [own, plain]) => t.replaceAll(own, plain), v)
    if (Array.isArray(v)) return v.map(back)
    if (v && typeof v === 'object')
      return Object.fromEntries(
        Object.entries(v)
          .filter(([k]) => !['from', 'to', 'tokens', 'text', 'senses'].includes(k))
          .map(([k, x]) => [k, back(x)]),
      )
    return v
  }
  const { trace: _, ...rest } = r
  return back(rest)
}

describe('renaming the piles changes nothing', () => {
  const SENTENCES = [
    'put 7 loads corn on A',
    '14 ton second crop on B pile',
    'A 5 loads hay',
    'covered A with plastic and 40 tires',
    'rolled the plastic on B back 12 ft',
    'raccoons tore 2 holes in A by the wall',
    'patched 3 holes on B',
    'walked A and B, all good',
    'opened A to feed',
    'fed 11k off B',
    'face is at 34 ft on A',
    'moved 3 loads from A to B',
    'B is empty',
    'A measured 41 by 118, 11 high',
    'how much is left in A',
    'hail last night, 4 holes in B',
    'no, that was B',
    'echamos 6 viajes de maiz en A',
    'tapamos la pila B con plastico y llantas',
    '¿cuánto queda en A?',
  ]
  const PLAIN: [string, string] = ['quarry', 'hollow']
  const OTHERS: [string, string][] = [
    ['kestrel', 'sandpit'],
    ['old mill', 'windy knob'],
    ['tobacco shed', 'ravine'],
    ['sycamore', 'long bench'],
    ['north', 'south'],
    ['el mezquite', 'la loma'],
  ]
  const said = (sentence: string, [a, b]: [string, string]): string => sentence.replace(/\bA\b/g, a).replace(/\bB\b/g, b)

  for (const pair of OTHERS) {
    it(`${PLAIN.join(', ')} as ${pair.join(', ')}`, () => {
      const back = new Map(pair.map((own, k) => [own, PLAIN[k]!]))
      for (const s of SENTENCES) {
        const plain = read(said(s, PLAIN), contextOf(PLAIN))
        expect.soft(plain.acts.length + plain.asks.length + (plain.fix ? 1 : 0), s).toBeGreaterThan(0)
        expect.soft(gist(read(said(s, pair), contextOf(pair)), back), said(s, pair)).toEqual(gist(plain, new Map()))
      }
    })
  }
})
