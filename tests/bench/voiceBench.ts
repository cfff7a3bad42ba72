import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { embeddedEar } from '../../src/edges/voice/embedded.ts'
import { drawSentences } from '../../src/edges/voice/model/draw.ts'
import { RATE, soundOf } from '../../src/edges/voice/sound.ts'
import { noteOf } from '../../src/hearing/note.ts'
import { textOf } from '../../src/hearing/weigh.ts'
import type { Result } from '../../src/ports.ts'
import { freelySpoken, isRight } from '../voice/spoken.ts'
import { missing, noteOf as noteSaid, recorded, UNTUNED, VOICES } from '../voice/synth.ts'
import { farm } from './voiceFarm.ts'

/**
 * The embedded ear on synthesised voice notes, from the words to the book: `npm run voice-bench -- [--half held|dev] [--noise 20]
 * [--voices 2] [--part 1/2]`. Half of the sentences are written by hand (tests/voice/spoken.free.txt), half are drawn from the
 * templates with a seed of their own. `--voices` is how many of the twelve say each sentence.
 */
const { values } = parseArgs({
  options: {
    half: { type: 'string', default: 'held' },
    noise: { type: 'string', default: 'clean,20,10' },
    voices: { type: 'string', default: '2' },
    part: { type: 'string', default: '1/1' },
    show: { type: 'boolean', default: false },
  },
})
const out = (line = ''): void => void process.stdout.write(`${line}\n`)
const lacking = missing('pocketsphinx_batch', 'espeak-ng', 'flite', 'opusenc')
if (lacking.length) {
  out(`Not installed: ${lacking.join(', ')}`)
  process.exit(2)
}

const PILES = ['quarry', 'ridge', 'willow', 'loma']
const FARM = { piles: PILES, boxes: [], people: ['lea'], words: [] }

interface Case {
  kind: 'free' | 'grammar'
  text: string
  right(r: Pick<Result, 'recorded' | 'asks'>): boolean
  asks: boolean
}

const bare = (r: Pick<Result, 'recorded' | 'asks'>): string => JSON.stringify([r.recorded, r.asks]).replace(/,?"said":"[^"]*"/g, '')

/** Sentences of the templates that the assistant settles at once when they are typed; not too many of one kind. */
const drawn = (seed: number): Case[] => {
  const list: Case[] = []
  const seen = new Map<string, number>()
  for (const words of drawSentences(FARM, [{ word: 'well', weight: 1 }], 600, seed)) {
    const text = words.join(' ')
    const r = farm().tell(text)
    const kind = r.recorded.map(e => e.type).join('+') || r.asks.map(a => `?${a.about}`).join()
    const settled = (r.outcome === 'recorded' && !r.asks.length) || (r.outcome === 'answered' && r.asks.length > 0)
    if (list.length >= 40 || !kind || !settled || r.replies[0]?.choices || /\bwell\b/.test(text)) continue
    const n = seen.get(kind) ?? 0
    if (n >= (kind === 'load' ? 8 : 4)) continue
    seen.set(kind, n + 1)
    const want = bare(r)
    list.push({ kind: 'grammar', text, right: got => bare(got) === want, asks: r.recorded.length === 0 })
  }
  return list
}

const half = values.half === 'dev' ? 'dev' : 'held'
const cases: Case[] = [
  ...freelySpoken()
    .filter(s => s.half === half)
    .map((s): Case => ({ kind: 'free', text: s.text, right: r => isRight(s, r), asks: s.ask })),
  ...drawn(half === 'dev' ? 901 : 902),
]
const voices = half === 'dev' ? VOICES.filter(v => !UNTUNED.has(v)) : [...VOICES]

/** Word error: the least number of words wrong, missing or too many. */
const wordErrors = (a: string[], b: string[]): number => {
  let row = b.map((_, k) => k + 1)
  row.unshift(0)
  for (let i = 1; i <= a.length; i++) {
    const next = [i]
    for (let k = 1; k <= b.length; k++) next[k] = Math.min(next[k - 1]! + 1, row[k]! + 1, row[k - 1]! + (a[i - 1] === b[k - 1] ? 0 : 1))
    row = next
  }
  return row[b.length]!
}

const KINDS = [
  'recorded right',
  'answered right',
  'right first choice',
  'right second choice',
  'asked otherwise',
  'not understood',
  'answered wrong',
  'RECORDED WRONG',
] as const // prettier-ignore
type Kind = (typeof KINDS)[number]
interface Tally {
  notes: number
  words: number
  errors: number
  /** Notes whose likeliest wording alone would have come to the right thing. */
  slots: number
  of: Record<Kind, number>
}
const tallies = new Map<string, Tally>()
const tallyOf = (key: string): Tally => {
  const known = tallies.get(key)
  if (known) return known
  const of = Object.fromEntries(KINDS.map(k => [k, 0])) as Record<Kind, number>
  const t: Tally = { notes: 0, words: 0, errors: 0, slots: 0, of }
  tallies.set(key, t)
  return t
}

/** What becomes of a note in the book, where each choice would have led included. */
const outcomeOf = (c: Case, heard: ReturnType<typeof noteOf>): Kind => {
  if (!heard) return 'not understood'
  const tell = () => {
    const f = farm()
    return { f, r: f.tell(heard.text, { heard: { wordings: heard.wordings } }) }
  }
  const { r } = tell()
  if (r.recorded.length) return c.right(r) ? 'recorded right' : 'RECORDED WRONG'
  if (c.asks && r.asks.length) return c.right(r) ? 'answered right' : 'answered wrong'
  const [reply] = r.replies
  if (!reply?.choices || reply.question === undefined) return r.asks.length ? 'answered wrong' : 'not understood'
  const picked = (choice: number): boolean => {
    const { f, r: again } = tell()
    return c.right(f.tell(reply.choices![choice] ?? '', { pick: { question: again.replies[0]!.question!, choice } }))
  }
  return picked(0) ? 'right first choice' : picked(1) ? 'right second choice' : 'asked otherwise'
}

/** CPU time of this process's finished children, seconds (proc(5): cutime and cstime, in ticks of 1/100 s). */
const childSeconds = (): number => {
  const fields = readFileSync('/proc/self/stat', 'utf8')
    .replace(/^.*\) /, '')
    .split(' ')
  return (Number(fields[13]) + Number(fields[14])) / 100
}
let childPeak = 0
const watch = setInterval(() => {
  for (const pid of readdirSync('/proc').filter(n => /^\d+$/.test(n))) {
    try {
      const s = readFileSync(`/proc/${pid}/status`, 'utf8')
      if (s.includes(`PPid:\t${process.pid}\n`)) childPeak = Math.max(childPeak, Number(/VmHWM:\s+(\d+)/.exec(s)?.[1] ?? 0))
    } catch {
      // it has ended
    }
  }
}, 50)

const folder = mkdtempSync(join(tmpdir(), 'pilehand-voice-bench-'))
const ear = embeddedEar({ folder })
let seconds = 0
let hearing = 0
const [part = 1, parts = 1] = values.part.split('/').map(Number)
await ear.hear(new Float32Array(RATE), FARM, 'en')
for (const noise of values.noise.split(',')) {
  let n = 0
  for (const [k, c] of cases.entries())
    for (let v = 0; v < Number(values.voices); v++) {
      if (n++ % parts !== part - 1) continue
      const voice = voices[(k * Number(values.voices) + v * 5 + Math.floor(k / voices.length)) % voices.length]!
      const bytes = noteSaid(c.text, voice, noise === 'clean' ? undefined : Number(noise), k + 1)
      const before = childSeconds()
      const own = process.cpuUsage()
      const sound = await soundOf(bytes)
      const heard = await ear.hear(sound, FARM, 'en')
      const note = noteOf(heard, PILES)
      const used = process.cpuUsage(own)
      hearing += childSeconds() - before + (used.user + used.system) / 1e6
      seconds += sound.length / RATE
      const words = c.text.split(' ')
      const got = note ? textOf(heard.wordings[0]!.words).split(' ') : []
      const kind = outcomeOf(c, note)
      const level = noise === 'clean' ? 'clean' : `${noise} dB`
      for (const key of [level, `${level}, ${c.kind}`, `voice ${voice}${UNTUNED.has(voice) ? ' (not tuned on)' : ''}`]) {
        const t = tallyOf(key)
        t.notes++
        t.words += words.length
        t.errors += wordErrors(words, got)
        t.slots += Number(note !== undefined && c.right(farm().tell(note.text)))
        t.of[kind]++
      }
      if (values.show && kind !== 'recorded right' && kind !== 'answered right')
        out(`${level} ${voice} ${kind}: ${c.text} => ${got.join(' ')}`)
    }
}
clearInterval(watch)

const pct = (a: number, b: number): string => `${((100 * a) / Math.max(1, b)).toFixed(1)} %`.padStart(7)
out(
  `${half === 'held' ? 'Held-out' : 'Development'} sentences: ${cases.length}, each by ${values.voices} of ${voices.length} voices. Of all notes:`,
)
out(`${''.padEnd(32)}  notes  word err  slots  rec.right  answered  1st choice  2nd  asked else  not und.  ans.wrong  REC.WRONG`)
for (const [key, t] of [...tallies].sort(
  ([a], [b]) => Number(a.startsWith('voice')) - Number(b.startsWith('voice')) || a.localeCompare(b, 'en', { numeric: true }),
))
  out(
    `${key.padEnd(32)}  ${String(t.notes).padStart(5)}  ${pct(t.errors, t.words)}  ${pct(t.slots, t.notes)}  ${KINDS.map(k => pct(t.of[k], t.notes)).join('  ')}`,
  )
out(
  `CPU time ${(hearing / Math.max(1, seconds)).toFixed(2)} of the sound's length, on one core, decoding and all (${seconds.toFixed(0)} s of sound).`,
)
out(
  `Memory: the recogniser ${Math.round(childPeak / 1024)} MB, this process ${Math.round(process.resourceUsage().maxRSS / 1024)} MB at most.`,
)

/** People's voices that Debian's pocketsphinx-testdata ships: none speaks of silage, so nothing may get into the book. */
const SHIPPED = '/usr/share/pocketsphinx/test/data'
const human = (): { name: string; said: string }[] => {
  try {
    const cards = readFileSync(join(SHIPPED, 'cards/cards.transcription'), 'latin1').trim().split('\n')
    const books = readFileSync(join(SHIPPED, 'librivox/transcription'), 'latin1').trim().split('\n')
    const of = (folder: string, lines: string[]) =>
      lines.flatMap(l => {
        const m = /^(?:<s>)?(.*?)(?:<\/s>)?\s*\((\S+)\)/.exec(l.trim())
        return m ? [{ name: join(folder, `${m[2]}.wav`), said: m[1]!.trim().toLowerCase() }] : []
      })
    return [
      ...of('cards', cards),
      ...of('librivox', books),
      { name: 'goforward.raw', said: 'go forward ten meters' },
      { name: 'numbers.raw', said: '' },
      { name: 'something.raw', said: '' },
    ]
  } catch {
    return []
  }
}
let kept = 0
let notes = 0
for (const h of human()) {
  try {
    const sound = recorded(join(SHIPPED, h.name))
    const got = noteOf(await ear.hear(sound, FARM, 'en'), PILES)
    const r = got ? farm().tell(got.text, { heard: { wordings: got.wordings } }) : undefined
    notes++
    kept += Number((r?.recorded.length ?? 0) > 0)
    if (values.show) out(`human ${h.name}: "${h.said}" => ${got?.text ?? 'nothing'}: ${r?.outcome ?? ''}`)
  } catch (error) {
    out(`${h.name}: ${String(error)}`)
  }
}
if (notes) out(`People's voices on other things (pocketsphinx-testdata): ${notes} recordings, ${kept} put something in the book.`)
else out('pocketsphinx-testdata is not installed: no human voices tried.')
rmSync(folder, { recursive: true, force: true })
