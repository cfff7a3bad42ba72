import { spawn } from 'node:child_process'
import { instantOf } from '../../src/units/calendar.ts'
import type { Farm } from './farms.ts'
import type { Guess } from './play.ts'
import { notebookDays } from './season.ts'

const ZONE = 'America/Chicago'
const two = (n: number): string => String(n).padStart(2, '0')
const clock = (hour: number, minute: number): string => `${two(Math.floor(hour))}:${two(Math.floor((hour % 1) * 60) + minute)}`

interface Line {
  at: string
  farm: string
  from: string
  text: string
}

interface Out {
  line?: number
  outcome?: string
  recorded?: unknown[]
  answers?: { about: string; days?: number; daysLow?: number; daysHigh?: number }[]
}

export interface Told {
  guesses: Guess[]
  /** Lines that told something and were not recorded, with their words. */
  lost: string[]
}

/** Plays seasons through the line channel, as words, each on a farm of its own, and takes the answers that come back. */
export const playThroughLines = async (from: Farm, seeds: readonly number[]): Promise<Told> => {
  const lines: Line[] = []
  const asked = new Map<number, Omit<Guess, 'mid' | 'low' | 'high'>>()
  const tells = new Map<number, string>()
  for (const seed of seeds) {
    const s = from.season(seed)
    const farm = `${from.name} ${seed}`
    const all = [
      ...s.told.map(t => ({ on: t.on, hour: t.hour, words: t.words, truth: undefined as number | undefined })),
      ...s.questions.map(q => ({ on: q.on, hour: 18.75, words: `how long will ${s.pile} last`, truth: q.truth as number | undefined })),
    ].sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.hour - b.hour))
    let minute = 0
    let last = ''
    for (const x of all) {
      minute = last === `${x.on} ${x.hour}` ? minute + 1 : 0
      last = `${x.on} ${x.hour}`
      lines.push({ at: instantOf(x.on, clock(x.hour, minute), ZONE), farm, from: 'ada', text: x.words })
      if (x.truth === undefined) tells.set(lines.length, x.words)
      else asked.set(lines.length, { world: from.name, seed, truth: x.truth, notebook: notebookDays(s, x.on) })
    }
  }
  const child = spawn('npx', ['tsx', 'src/main.ts', 'lines', '--zone', ZONE], {
    cwd: new URL('../..', import.meta.url).pathname,
    stdio: ['pipe', 'pipe', 'inherit'],
  })
  child.stdin.end(lines.map(l => `${JSON.stringify(l)}\n`).join(''))
  let text = ''
  for await (const chunk of child.stdout) text += chunk
  const guesses: Guess[] = []
  const lost: string[] = []
  for (const row of text.split('\n')) {
    if (!row) continue
    const out = JSON.parse(row) as Out
    if (out.line === undefined) continue
    const q = asked.get(out.line)
    if (q) {
      const a = out.answers?.find(x => x.about === 'left')
      guesses.push({ ...q, mid: a?.days, low: a?.daysLow, high: a?.daysHigh })
    } else if (out.outcome !== 'recorded') lost.push(`${out.outcome}: ${tells.get(out.line)}`)
  }
  return { guesses, lost }
}
