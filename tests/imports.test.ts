import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, normalize, relative } from 'node:path'
import { expect, it } from 'vitest'

const SRC = new URL('../src', import.meta.url).pathname

/** What each room may import: `types` only with `import type`. A room may always import its own files. */
const RULES: Record<string, { rooms: string[]; types?: string[] }> = {
  units: { rooms: [] },
  reading: { rooms: ['units'] },
  book: { rooms: ['units'], types: ['ports'] },
  // what was heard, before it is read
  hearing: { rooms: [], types: ['ports'] },
  // what a doubt needs to know of the farm comes from the book, not from the figures; hours and reminders are the watch's
  settle: { rooms: ['reading', 'book', 'saying', 'units', 'watch'], types: ['ports'] },
  figures: { rooms: ['units', 'book'] },
  watch: { rooms: ['units', 'book', 'figures'] },
  saying: { rooms: ['units'], types: ['book', 'ports'] },
  ports: { rooms: [], types: ['book', 'units'] },
  config: { rooms: ['units'] },
  // the book's checks and views, and the calendar, serve the edges too; the rooms that think do not
  edges: { rooms: ['book', 'units', 'hearing'], types: ['pipeline', 'ports', 'saying', 'reading'] },
  desk: { rooms: ['reading', 'settle', 'book', 'units'], types: ['ports'] },
  clockwork: { rooms: ['watch', 'book', 'units'], types: ['desk', 'pipeline', 'ports'] },
  pipeline: { rooms: ['desk', 'clockwork', 'reading', 'settle', 'book', 'figures', 'watch', 'saying', 'units'], types: ['ports'] },
  main: { rooms: ['pipeline', 'config', 'edges', 'figures', 'saying', 'units', 'book', 'watch', 'reading', 'hearing'], types: ['ports'] },
}
const PURE = ['units', 'reading', 'book', 'hearing', 'settle', 'figures', 'watch', 'saying']
/** The edges' common parts: the prompts' folder and their texts, who comes in at a door, how a choice is typed. */
const EDGE_COMMON = ['prompts', 'joining', 'choices']
/** Parts put together from all rooms: they are composition, wherever they stand. */
const COMPOSITION = ['main.ts', 'compose.ts', 'hear.ts']

/** What a pure room must not do, as it would be written. */
const FORBIDDEN: [RegExp, string][] = [
  [/\bnew Date\(\s*\)/, 'new Date() without an instant: the clock is an argument'],
  [/\bDate\.now\b/, 'Date.now: the clock is an argument'],
  [/\bMath\.random\b/, 'Math.random: chance is an argument'],
  [/\bprocess\./, 'process.: the surroundings are not its business'],
  [/\bperformance\.now\b/, 'performance.now: the clock is an argument'],
  [/\b(?:setTimeout|setInterval)\(/, 'timers belong to the edges'],
  [/\bfetch\(/, 'the network belongs to the edges'],
]
const PURE_PACKAGES: Record<string, string[]> = {
  units: ['@date-fns/tz', 'date-fns'],
  reading: ['fastest-levenshtein', 'chrono-node'],
  book: ['zod'],
  hearing: ['fastest-levenshtein'],
  settle: ['fastest-levenshtein'],
  figures: [],
  // the sun's height
  watch: ['suncalc'],
  saying: ['@fluent/bundle'],
}

const MOST_LINES = 300
const isWordTable = (file: string): boolean => /^reading\/\w+\/words\.ts$|^edges\/voice\/model\/sounds\.\w+\.ts$/.test(file)

const files = (readdirSync(SRC, { recursive: true }) as string[]).filter(f => f.endsWith('.ts')).sort()
const source = new Map(files.map(f => [f, readFileSync(join(SRC, f), 'utf8')]))

const roomOf = (file: string): string => (COMPOSITION.includes(file) ? 'main' : (file.split('/')[0] ?? '').replace(/\.ts$/, ''))
/** An edge is a file of `edges`, with the folder of the same name as its parts. */
const edgeOf = (file: string): string => (file.split('/')[1] ?? '').replace(/\.ts$/, '')

interface Import {
  file: string
  from: string
  /** The file in `src`, where it is one of ours. */
  target?: string
  typeOnly: boolean
}

const withoutComments = (text: string): string => text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1')

const importsOf = (file: string): Import[] => {
  const text = withoutComments(source.get(file)!)
  const out: Import[] = []
  const add = (from: string, typeOnly: boolean): void => {
    out.push({
      file,
      from,
      typeOnly,
      ...(from.startsWith('.') ? { target: relative(SRC, normalize(join(SRC, dirname(file), from))) } : {}),
    })
  }
  for (const m of text.matchAll(/^\s*(?:import|export)\s+(type\s+)?([^'"();]*?)\s*from\s+['"]([^'"]+)['"]/gm)) {
    const named = /^\{([\s\S]*)\}$/.exec(m[2]!.trim())?.[1]
    const allTypes =
      named
        ?.split(',')
        .filter(n => n.trim())
        .every(n => n.trim().startsWith('type ')) ?? false
    add(m[3]!, m[1] !== undefined || allTypes)
  }
  for (const m of text.matchAll(/^\s*import\s+['"]([^'"]+)['"]/gm)) add(m[1]!, false)
  for (const m of text.matchAll(/(typeof\s+)?\bimport\(\s*['"]([^'"]+)['"]\s*\)/g)) add(m[2]!, m[1] !== undefined)
  return out
}
const all = files.flatMap(importsOf)

it('the scan sees imports at all', () => {
  expect(all.length).toBeGreaterThan(300)
  expect(all).toContainEqual({ file: 'pipeline.ts', from: './ports.ts', target: 'ports.ts', typeOnly: true })
  expect(all.filter(i => i.target && !source.has(i.target))).toEqual([])
})

it('every room has its rule', () => {
  expect([...new Set(files.map(roomOf))].filter(r => !(r in RULES))).toEqual([])
})

it.each(Object.keys(RULES))('%s imports only what it may', room => {
  const rule = RULES[room]!
  const broken = all
    .filter(i => i.target && roomOf(i.file) === room && roomOf(i.target) !== room)
    .filter(i => !rule.rooms.includes(roomOf(i.target!)) && !(i.typeOnly && rule.types?.includes(roomOf(i.target!))))
  expect(broken.map(i => `${i.file} imports ${i.target}${i.typeOnly ? ' (types)' : ''}`)).toEqual([])
})

it('edges never import one another', () => {
  const broken = all.filter(
    i =>
      i.target &&
      roomOf(i.file) === 'edges' &&
      roomOf(i.target) === 'edges' &&
      edgeOf(i.file) !== edgeOf(i.target) &&
      !EDGE_COMMON.includes(edgeOf(i.target)),
  )
  expect(broken.map(i => `${i.file} imports ${i.target}`)).toEqual([])
})

it.each(PURE)('%s imports no more packages than it needs', room => {
  const packages = all.filter(i => !i.target && roomOf(i.file) === room)
  expect(
    packages
      .filter(i => !PURE_PACKAGES[room]!.some(p => i.from === p || i.from.startsWith(`${p}/`)))
      .map(i => `${i.file} imports ${i.from}`),
  ).toEqual([])
})

it.each(PURE)('%s has no clock, no chance and no surroundings', room => {
  const found = files
    .filter(f => roomOf(f) === room)
    .flatMap(f => {
      const text = withoutComments(source.get(f)!)
      return FORBIDDEN.filter(([like]) => like.test(text)).map(([, why]) => `${f}: ${why}`)
    })
  expect(found).toEqual([])
})

it(`no file but a word table has more than ${MOST_LINES} lines`, () => {
  const long = files
    .filter(f => !isWordTable(f))
    .flatMap(f => {
      const n = source.get(f)!.trimEnd().split('\n').length
      return n > MOST_LINES ? [`${f}: ${n}`] : []
    })
  expect(long).toEqual([])
})
