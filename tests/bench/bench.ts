import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { availableParallelism, cpus, tmpdir } from 'node:os'
import { join } from 'node:path'
import { performance } from 'node:perf_hooks'
import { fileURLToPath } from 'node:url'
import fc from 'fast-check'
import type { Entry } from '../../src/book/entries.ts'
import type { Event } from '../../src/book/events.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { openStore } from '../../src/edges/store.ts'
import { answer, pilesFor } from '../../src/figures/asked/answer.ts'
import { makeCore } from '../../src/pipeline.ts'
import { indexNames } from '../../src/reading/names.ts'
import { read } from '../../src/reading/read.ts'
import { makeSayer } from '../../src/saying/say.ts'
import { addDays } from '../../src/units/calendar.ts'
import { PARTS as HOSTILE } from '../reading/hostile.ts'

// Figures of this machine, not a test: what else runs on it shows in them.

const ZONE = 'America/Chicago'
const FARM = 'home'
const EVENTS = 50_000
const DAYS = 3650
const PILES = 12
const FIRST_DAY = '2016-09-01'

/** One line of the table, with what counts as good enough. */
interface Figure {
  what: string
  value: string
  wanted: string
}
const figures: Figure[] = []
const put = (what: string, value: string, wanted: string): void => void figures.push({ what, value, wanted })
const ms = (n: number): string => `${n < 10 ? n.toFixed(2) : n.toFixed(0)} ms`
const median = (list: number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length / 2)] ?? Number.NaN
const at95 = (list: number[]): number => [...list].sort((a, b) => a - b)[Math.floor(list.length * 0.95)] ?? Number.NaN

/** Messages a second over all texts of the corpora, read again and again for some seconds after a warm-up. */
const reading = (): void => {
  const folder = new URL('../corpora', import.meta.url).pathname
  const texts = readdirSync(folder)
    .filter(f => f.endsWith('.jsonl'))
    .flatMap(f =>
      readFileSync(join(folder, f), 'utf8')
        .split('\n')
        .filter(l => l.trim())
        .map(l => JSON.parse(l) as { text?: string; lines?: { text: string }[] }),
    )
    .flatMap(c => (c.lines ? c.lines.map(l => l.text) : [c.text ?? '']))
  const names = indexNames({
    piles: new Map([
      ['old slab', 'old slab'],
      ['lane', 'lane'],
      ['north', 'north'],
      ['norte', 'north'],
      ['far corner', 'far corner'],
    ]),
    boxes: ['orange truck', 'grey box'],
    words: new Map(),
    people: ['ruth', 'gil', 'pete', 'nadia'],
  })
  const round = (): void => {
    for (const text of texts) read(text, { names, now: { day: '2026-09-14', hour: 13.5 }, lang: 'en' })
  }
  // a process that has read for some seconds, as it has on the farm
  for (let k = 0; k < 40; k++) round()
  const rates: number[] = []
  for (let k = 0; k < 25; k++) {
    const from = performance.now()
    round()
    rates.push((texts.length / (performance.now() - from)) * 1000)
  }
  put(
    `reading, ${texts.length} texts of the corpora, warm`,
    `${Math.round(median(rates)).toLocaleString('en-US')} messages/s`,
    '10,000 messages/s',
  )
  // the longest message there can be, of every kind of token in any order
  const hostile = fc
    .sample(fc.array(fc.constantFrom(...HOSTILE), { minLength: 400, maxLength: 900, size: 'max' }), { numRuns: 40, seed: 43 })
    .map(p => p.join('').slice(0, 4096))
  const context = { names, now: { day: '2026-09-14', hour: 13.5 }, lang: 'en' as const }
  for (let k = 0; k < 5; k++) for (const text of hostile) read(text, context)
  const each = hostile.map(text =>
    median(
      Array.from({ length: 5 }, () => {
        const from = process.cpuUsage()
        read(text, context)
        const { user, system } = process.cpuUsage(from)
        return (user + system) / 1000
      }),
    ),
  )
  put('reading, hostile texts of 4,096 characters, warm, the slowest', `${ms(Math.max(...each))} of processor time`, '20 ms')
}

/** A book of many seasons: piles filled, covered, walked and fed off, day after day. */
const manyEvents = (): Entry[] => {
  const pile = (k: number): string => `slab ${k % PILES}`
  const kinds: ((k: number, on: string) => Event)[] = [
    (k, on) => ({ type: 'load', pile: pile(k), crop: k % 3 ? 'corn silage' : 'haylage', count: 1 + (k % 9), on }),
    (k, on) => ({ type: 'feed', pile: pile(k + 5), lb: 8000 + (k % 50) * 100, on }),
    (k, on) => ({ type: 'check', pile: pile(k), finding: 'good', on }),
    (k, on) => ({ type: 'face', pile: pile(k + 5), atFt: (k % 120) + 1, on }),
    (k, on) => ({ type: 'damage', pile: pile(k), cause: 'animal', animal: 'raccoon', what: 'hole', count: 1, on }),
    (k, on) => ({ type: 'patch', pile: pile(k), count: 1, on }),
    (_, on) => ({ type: 'weather', kind: 'rain', inches: 0.4, on }),
    (k, on) => ({ type: 'empty', pile: pile(k >> 3), on }),
  ]
  const order = [0, 0, 1, 1, 1, 0, 2, 3, 1, 1, 4, 5, 1, 6, 1, 0]
  const events: Event[] = Array.from(
    { length: PILES },
    (_, k): Event => ({ type: 'pile', name: pile(k), widthFt: 40, lengthFt: 120, heightFt: 10, on: FIRST_DAY }),
  )
  for (let k = 0; events.length < EVENTS; k++) {
    const on = addDays(FIRST_DAY, Math.floor((k * DAYS) / EVENTS))
    // Every pile is emptied about once a year, as on a farm: else its state would grow with the whole book.
    events.push(
      k % Math.floor(EVENTS / 10 / PILES) === 7
        ? kinds[7]!(8 * Math.floor(k / Math.floor(EVENTS / 10 / PILES)), on)
        : kinds[order[k % order.length]!]!(k, on),
    )
  }
  const log: Entry[] = events.map((event, k) => ({
    v: 1,
    n: k + 2,
    at: `${event.on}T14:00:00.000Z`,
    by: 'ruth',
    source: { channel: 'bench', chat: 'crew', id: `seed-${k}`, edit: '' },
    body: { kind: 'event', id: `${k + 2}.1`, event: { ...event, said: 'as it was typed that day' } },
  }))
  return [
    {
      v: 1,
      n: 1,
      at: `${FIRST_DAY}T13:00:00.000Z`,
      by: 'ruth',
      body: { kind: 'member', person: 'ruth', role: 'owner', lang: 'en', address: 'ruth' },
    },
    ...log,
  ]
}

const TEXTS = [
  'put 3 loads corn on slab 2',
  'fed 11k off slab 4',
  'hail last night, golf ball size',
  'how many days left in slab 4',
  'walked the covers, all good',
  'coons got in slab 3, two holes by the wall',
  'patched the holes on slab 3',
  'how is slab 2',
  'face is at 31 ft on slab 4',
  'fed 2 buckets off slab 4',
]

/** Fills a book, as its own process would have left it. */
const seed = (folder: string): void => {
  const store = openStore(folder)
  store.append(FARM, 'bench', manyEvents(), [])
  store.close()
}

const house = (folder: string): void => {
  const from = performance.now()
  const store = openStore(folder, { durable: ['bench'] })
  const core = makeCore({ log: store, zone: ZONE, say: makeSayer(loadPrompts()), answer, pilesFor, firstOwns: true })
  core.book(FARM)
  put('start: store opened and book folded, 50,000 events', ms(performance.now() - from), '1,000 ms')

  const took: number[] = []
  const byText = new Map<string, number[]>()
  const begin = Date.parse(`${addDays(FIRST_DAY, DAYS)}T13:00:00Z`)
  for (let k = 0; k < 1000; k++) {
    const text = TEXTS[k % TEXTS.length]!
    const t = performance.now()
    core.handle({
      channel: 'bench',
      farm: FARM,
      chat: 'crew',
      private: false,
      from: 'ruth',
      id: `m${k}`,
      edit: '',
      at: new Date(begin + k * 3_600_000).toISOString(),
      text,
    })
    const one = performance.now() - t
    if (k < WARM) continue
    took.push(one)
    byText.set(text, [...(byText.get(text) ?? []), one])
  }
  put('a message settled, stored durably and answered, median', ms(median(took)), '10 ms')
  put('  95 of 100 are below', ms(at95(took)), '')
  for (const [text, list] of byText) put(`  "${text}", median`, ms(median(list)), '')
  put('resident memory with that book open', `${Math.round(process.memoryUsage().rss / 2 ** 20)} MB`, '150 MB')
  store.close()
}
const WARM = 100

/** In a process of its own: start and memory are those of an assistant that has just been started, without seed and warm-up. */
const apart = (part: string, folder: string): Figure[] => {
  const run = spawnSync(process.execPath, [...process.execArgv, fileURLToPath(import.meta.url), part, folder], {
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  if (run.status !== 0) throw new Error(`${part} ended with ${run.status}`)
  return run.stdout ? (JSON.parse(run.stdout) as Figure[]) : []
}

const PARTS: Record<string, (folder: string) => void> = { seed, house }
const [part, given] = process.argv.slice(2)
if (part && given) {
  PARTS[part]!(given)
  process.stdout.write(JSON.stringify(figures))
} else {
  const folder = mkdtempSync(join(tmpdir(), 'pilehand-bench-'))
  try {
    reading()
    apart('seed', folder)
    figures.push(...apart('house', folder))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  const width = Math.max(...figures.map(f => f.what.length))
  console.log(
    `node ${process.version}, ${cpus()[0]?.model ?? 'unknown processor'}, ${availableParallelism()} cores, ${process.platform} ${process.arch}`,
  )
  for (const f of figures) console.log(`${f.what.padEnd(width)}  ${f.value.padStart(17)}${f.wanted ? `   wanted ${f.wanted}` : ''}`)
}
