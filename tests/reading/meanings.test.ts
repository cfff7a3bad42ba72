import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { linesOf, openStage, type Stage } from './playing.ts'
import type { Expected, Said } from './scorer.ts'

/** One meaning, and the ways it is said. All of them have to come to the same. */
interface Meaning {
  meaning: string
  /** Who says it, and where, where that matters. */
  from?: string
  chat?: string
  at?: string
  /** What was said before it. */
  before?: Said[]
  expect: Expected & { alternatives?: Expected[] }
  en: string[]
  es: string[]
}

const FOLDER = new URL('../corpora', import.meta.url).pathname
const tables = readdirSync(join(FOLDER, 'meanings'))
  .filter(f => f.endsWith('.jsonl'))
  .sort()
const FARM = 'farm.jsonl'
/** Ways of saying it, in each language. */
const LEAST = 8

let stage: Stage
beforeAll(() => {
  stage = openStage()
  stage.raise(FARM, linesOf<Said & { at: string }>(join(FOLDER, FARM)))
})
afterAll(() => stage.close())

describe.each(tables)('%s', file => {
  const meanings = linesOf<Meaning>(join(FOLDER, 'meanings', file))
  it('each is said in both languages, in as many ways', () => {
    expect(meanings.filter(m => m.en.length < LEAST || m.es.length < LEAST).map(m => m.meaning)).toEqual([])
    const all = meanings.flatMap(m => [...m.en.map(text => `en ${m.meaning}: ${text}`), ...m.es.map(text => `es ${m.meaning}: ${text}`)])
    expect(new Set(all).size).toBe(all.length)
  })
  it.each(meanings)('$meaning', m => {
    const wrong: string[] = []
    for (const [lang, texts] of [
      ['en', m.en],
      ['es', m.es],
    ] as const)
      for (const [k, text] of texts.entries()) {
        const said: Said = { from: m.from ?? 'gil', chat: m.chat ?? 'crew', text, ...(m.at ? { at: m.at } : {}) }
        const played = stage.play(FARM, `${file} ${m.meaning} ${lang}${k}`, {
          id: `${m.meaning} ${lang}`,
          lines: [...(m.before ?? []), said],
          expect: m.expect,
        })
        if (played.verdict !== 'right') wrong.push(played.report())
      }
    expect(wrong.join('\n\n')).toBe('')
  })
})
