import type { FarmWords } from '../../../ports.ts'
import { TABLES } from './tables.ts'
import { TEMPLATES } from './templates.ts'

/** Numbers that look random and are the same every time (mulberry32): a model must not change by itself. */
export const chance = (seed: number): (() => number) => {
  let a = seed >>> 0
  return () => {
    a = (a + 0x6d2b79f5) >>> 0
    let t = Math.imul(a ^ (a >>> 15), 1 | a)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

/** Rows with their weights run up, for drawing from. */
interface Rows {
  rows: string[]
  upTo: number[]
}

const rowsOf = (lines: string[]): Rows => {
  const upTo: number[] = []
  let sum = 0
  const rows = lines.map(l => {
    const m = /^(\d+):(.*)$/.exec(l)
    sum += m ? Number(m[1]) : 1
    upTo.push(sum)
    return m ? m[2]! : l
  })
  return { rows, upTo }
}

const one = ({ rows, upTo }: Rows, next: () => number): string => {
  const at = next() * (upTo.at(-1) ?? 0)
  return rows[upTo.findIndex(u => at < u)] ?? ''
}

/** Spoken words of a name: lower case, letters only. */
export const spoken = (name: string): string =>
  name
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f]/g, '')
    .replace(/[^a-z' ]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim()

/** Names that stand in where a farm has none of a kind yet. */
const STAND_INS: Record<string, string[]> = { pile: ['north', 'south', 'east', 'west'], box: ['wagon'], person: ['boss'], word: ['feed'] }

/** Sentences drawn from the templates, with the farm's names in them. The same farm gives the same sentences. */
export const drawSentences = (farm: FarmWords, talk: { word: string; weight: number }[], count: number, seed: number): string[][] => {
  const next = chance(seed)
  const named = (kind: keyof FarmWords, key: string): Rows => {
    const names = [...new Set(farm[kind].map(spoken))].filter(Boolean)
    return rowsOf(names.length ? names : STAND_INS[key]!)
  }
  const tables = new Map<string, Rows>(Object.entries(TABLES).map(([k, v]) => [k, rowsOf(v)]))
  tables.set('pile', named('piles', 'pile'))
  tables.set('box', named('boxes', 'box'))
  tables.set('person', named('people', 'person'))
  tables.set('word', named('words', 'word'))
  let sum = 0
  tables.set('chat', { rows: talk.map(t => t.word), upTo: talk.map(t => (sum += t.weight)) })
  const templates = rowsOf(TEMPLATES)
  const grow = (text: string): string => {
    let out = text
    for (let guard = 0; guard < 60; guard++) {
      const m = /\{(\w+)\}|\[([^[\]]*)\]|\(([^()]*)\)/.exec(out)
      if (!m) break
      let put: string
      if (m[1] !== undefined) put = one(tables.get(m[1]) ?? rowsOf(['']), next)
      else {
        const parts = (m[2] ?? m[3]!).split('|')
        put = m[2] !== undefined && next() < 0.5 ? '' : parts[Math.floor(next() * parts.length)]!
      }
      out = out.slice(0, m.index) + put + out.slice(m.index + m[0].length)
    }
    return out.replace(/[[\]()|]/g, ' ')
  }
  return Array.from({ length: count }, () => grow(one(templates, next)).split(/\s+/).filter(Boolean))
}
