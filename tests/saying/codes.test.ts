import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { FluentParser } from '@fluent/syntax'
import { describe, expect, it } from 'vitest'
import { loadPrompts } from '../../src/edges/prompts.ts'

/** Codes that have an English sentence; that both languages have the same ones is another test's. */
const said = new Set(
  loadPrompts().en.flatMap(text =>
    new FluentParser({ withSpans: false })
      .parse(text)
      .body.flatMap(e => (e.type === 'Message' ? [(e as unknown as { id: { name: string } }).id.name] : [])),
  ),
)

const sources = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap(f =>
    f.isDirectory() ? sources(join(folder, f.name)) : f.name.endsWith('.ts') ? [join(folder, f.name)] : [],
  )

/** Hyphenated words in the sources that are never said. */
const NO_SENTENCE = [
  'face-back',
  'range-inches',
  'no-owner',
  'code-spent',
  'content-type',
  'content-length',
  'en-us',
  'es-419',
  'espeak-ng',
  'pilehand-hear',
]

/** Codes that are put together from parts in the sources. */
const COMPOSED = [
  ...['slower-face', 'below-least', 'lower', 'narrower', 'short-pile', 'several-piles'].map(a => `note-plan-${a}`),
  ...['scale', 'tickets', 'box', 'crop-box', 'usual'].map(w => `weighed-${w}`),
  ...['pile', 'crop', 'herd', 'intake', 'logs', 'face', 'none'].map(u => `used-${u}`),
  ...['filling', 'fermentation', 'seepage', 'top', 'face'].map(c => `lost-${c}`),
  ...['ask', 'again', 'owner'].flatMap(r => [`repair-${r}`, `freeze-${r}`]),
  ...['again', 'owner'].flatMap(r => [`check-${r}`, `round-${r}`]),
  ...['morning', 'evening', 'weekly'].flatMap(n => [`${n}-head`, `${n}-nothing`]),
  ...['done', 'hour', 'tomorrow', 'patched', 'walked', 'later', 'hail', 'wind', 'none'].map(v => `choice-${v}`),
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
    for (const m of text.matchAll(/(?<!from )'([a-z]+(?:-[a-z0-9]+)+)'/g)) found.set(m[1]!, file.slice(src.length))
  }
  for (const other of NO_SENTENCE) found.delete(other)

  it('all have a sentence', () => {
    expect(found.size).toBeGreaterThan(50)
    // A formula's own codes are named inside of another sentence.
    const named = (code: string): boolean => ['outside', 'note', 'note-plan'].some(kind => said.has(`${kind}-${code}`))
    const missing = [...found]
      .filter(([code, file]) => !said.has(code) && !(file.startsWith('/figures/') && named(code)))
      .map(([code, file]) => `${code} (${file})`)
    expect(missing).toEqual([])
    expect(COMPOSED.filter(c => !said.has(c))).toEqual([])
  })

  it('name every limit of a formula', () => {
    const limits = sources(join(src, 'figures')).flatMap(f =>
      [...readFileSync(f, 'utf8').matchAll(/\b(?:hold|flag)\('([a-z-]+)'/g)].map(m => m[1]!),
    )
    expect(limits.length).toBeGreaterThan(10)
    expect([...new Set(limits)].filter(c => !said.has(`outside-${c}`))).toEqual([])
  })
})
