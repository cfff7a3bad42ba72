import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { FluentParser } from '@fluent/syntax'
import { describe, expect, it } from 'vitest'
import { loadPrompts } from '../../src/edges/prompts.ts'

/** Codes that have an English sentence; that both languages have the same ones is another test's. */
const said = new Set(
  loadPrompts().en.flatMap(text => new FluentParser({ withSpans: false }).parse(text).body.flatMap(e => (e.type === 'Message' ? [(e as unknown as { id: { name: string } }).id.name] : []))),
)

const sources = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap(f =>
    f.isDirectory() ? sources(join(folder, f.name)) : f.name.endsWith('.ts') ? [join(folder, f.name)] : [],
  )

/** Hyphenated words in the sources that are never said. */
const NO_SENTENCE = ['face-back', 'range-inches', 'better-sqlite3']

/** Codes that are put together from parts in the sources. */
const COMPOSED = [
  ...['ask', 'again', 'owner'].flatMap(r => [`repair-${r}`, `freeze-${r}`]),
  ...['again', 'owner'].flatMap(r => [`check-${r}`, `round-${r}`]),
  ...['morning', 'evening', 'weekly'].flatMap(n => [`${n}-head`, `${n}-nothing`]),
  ...['load', 'bucket', 'batch'].map(u => `n-${u}`),
  ...['on', 'off', 'back'].map(c => `did-cover-${c}`),
  ...['add', 'use', 'have'].map(c => `did-supply-${c}`),
]

describe('codes in the sources', () => {
  const src = new URL('../../src', import.meta.url).pathname
  // Any hyphenated word in quotes is taken for a code. The reading's are words of the crew.
  const found = new Map<string, string>()
  for (const file of sources(src).filter(f => !f.startsWith(join(src, 'reading')))) {
    const text = readFileSync(file, 'utf8')
    for (const m of text.matchAll(/'([a-z]+(?:-[a-z0-9]+)+)'/g)) found.set(m[1]!, file.slice(src.length))
  }
  for (const other of NO_SENTENCE) found.delete(other)

  it('all have a sentence', () => {
    expect(found.size).toBeGreaterThan(50)
    const missing = [...found].filter(([code]) => !said.has(code)).map(([code, file]) => `${code} (${file})`)
    expect(missing).toEqual([])
    expect(COMPOSED.filter(c => !said.has(c))).toEqual([])
  })
})
