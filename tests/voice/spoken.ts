import { readFileSync } from 'node:fs'
import type { Result } from '../../src/ports.ts'

/** A sentence to be said, and what must be in the book, or be asked of it, afterwards. */
export interface Spoken {
  half: 'dev' | 'held'
  text: string
  wants: { type: string; slots: Record<string, string | number> }[]
  /** It asks; nothing may be recorded. */
  ask: boolean
}

const valueOf = (text: string): string | number => {
  const bare = text.replaceAll('"', '')
  return /^-?[\d.]+$/.test(bare) ? Number(bare) : bare
}

export const spokenIn = (lines: string): Spoken[] =>
  lines
    .split('\n')
    .filter(l => l.trim() && !l.startsWith('#'))
    .map(l => {
      const [half = '', text = '', want = ''] = l.split('|').map(x => x.trim())
      const ask = want.startsWith('ask ')
      const wants = want
        .replace(/^ask /, '')
        .split(' + ')
        .map(w => ({
          type: w.split(' ')[0]!,
          slots: Object.fromEntries([...w.matchAll(/(\w+)=("[^"]*"|\S+)/g)].map(m => [m[1]!, valueOf(m[2]!)])),
        }))
      return { half: half as Spoken['half'], text, wants, ask }
    })

export const freelySpoken = (): Spoken[] => spokenIn(readFileSync(new URL('spoken.free.txt', import.meta.url), 'utf8'))

/** Slots that a wrong value of would harm the book. The others (`on`, `by`, `said`, `where`) follow from the clock and the words. */
const HARMFUL = [
  'pile',
  'toPile',
  'name',
  'crop',
  'count',
  'lb',
  'ft',
  'unit',
  'atFt',
  'leftFt',
  'inches',
  'mph',
  'degF',
  'dmPct',
  'widthFt',
  'lengthFt',
  'heightFt',
  'head',
  'lbPerDay',
  'lbPerHead',
  'tractors',
  'tractorLb',
  'kind',
  'change',
  'material',
  'item',
  'finding',
  'why',
  'cause',
  'cut',
] // prettier-ignore

const same = (wants: Spoken['wants'], got: { type: string; [slot: string]: unknown }[]): boolean =>
  wants.length === got.length &&
  wants.every(w =>
    got.some(
      g =>
        g.type === w.type &&
        Object.entries(w.slots).every(([k, v]) => g[k] === v) &&
        HARMFUL.every(k => g[k] === undefined || k in w.slots || LOOSE.has(k)),
    ),
  )

/** May be filled in by the reading without having been written in the wanted line: what the farm's state gives. */
const LOOSE = new Set(['pile', 'cause', 'crop', 'group', 'unit', 'change', 'material', 'lengthFt', 'widthFt'])

/** Whether exactly what was said is recorded, or asked of the book. */
export const isRight = (s: Spoken, r: Pick<Result, 'recorded' | 'asks'>): boolean =>
  s.ask
    ? r.recorded.length === 0 &&
      r.asks.length === 1 &&
      r.asks[0]!.about === s.wants[0]!.type &&
      Object.entries(s.wants[0]!.slots).every(([k, v]) => (r.asks[0] as unknown as Record<string, unknown>)[k] === v)
    : same(s.wants, r.recorded as unknown as { type: string }[])
