import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openHouse } from '../../src/compose.ts'
import { DEMO_ZONE, type Played, playDemo, seasonLines } from '../../src/edges/demo.ts'
import { lineReader } from '../../src/edges/lines.ts'

// The demo season, played through the real house: what a newcomer sees first must be right.

const shown: string[] = []
const played: Played[] = []
const season = seasonLines()
let folder: string
let stages: Record<string, string>

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'pilehand-demo-'))
  const { core, store } = openHouse({ data: folder, zone: DEMO_ZONE }, { firstOwns: true, passing: true })
  const reader = lineReader(core, 'demo')
  const take = (line: string): Played[] => {
    const out: Played[] = reader.take(line)
    played.push(...out)
    return out
  }
  playDemo(season, take, text => shown.push(...text.split('\n')))
  const { piles } = await import('../../src/book/book.ts')
  stages = Object.fromEntries(piles(core.book('home')).map(p => [p.name, p.stage]))
  store.close()
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const results = () => played.flatMap(p => ('line' in p ? [p] : []))
const outcome = (r: ReturnType<typeof results>[number]) => ('error' in r ? 'error' : r.outcome)
const textOf = (line: string): string => (JSON.parse(line) as { text: string }).text

describe('the demo season', () => {
  it('is a year of many hands, in both languages', () => {
    expect(season.length).toBeGreaterThanOrEqual(60)
    const all = season.map(l => JSON.parse(l) as { at: string; from: string })
    expect(new Set(all.map(l => l.from)).size).toBeGreaterThanOrEqual(4)
    expect(Date.parse(all.at(-1)!.at) - Date.parse(all[0]!.at)).toBeGreaterThan(270 * 86_400_000)
  })

  it('has every line understood: nobody is puzzled or refused, and no line is wrong', () => {
    expect(results()).toHaveLength(season.length)
    for (const r of results())
      expect(['recorded', 'answered', 'asked', 'ignored'], `${textOf(season[r.line - 1]!)} → ${outcome(r)}`).toContain(outcome(r))
  })

  it('has every line answered but talk and what is only being thought about', () => {
    const silent = results().filter(r => !('replies' in r) || !r.replies?.length)
    expect(silent.map(r => outcome(r)).filter(o => o !== 'ignored')).toEqual([])
    expect(silent.map(r => textOf(season[r.line - 1]!))).toEqual(['should we put the rest on tomorrow?', 'anyone need lunch from town'])
  })

  it('asks only where something is missing or strange', () => {
    const asked = results().filter(r => outcome(r) === 'asked')
    expect(asked.map(r => textOf(season[r.line - 1]!))).toEqual([
      '6 loads haylage on orchard',
      'put some loads of corn on stone lot',
      'face on stone lot is at 20 ft',
    ])
  })

  it('tells a whole season of work', () => {
    const types = new Set(results().flatMap(r => ('recorded' in r ? (r.recorded ?? []) : []).map(e => e.type)))
    for (const type of [
      'pile',
      'box',
      'load',
      'pack',
      'size',
      'cover',
      'damage',
      'patch',
      'check',
      'weather',
      'open',
      'feed',
      'face',
      'spoil',
      'empty',
      'test',
      'ration',
      'supply',
      'harvest',
      'remind',
    ])
      expect(types, type).toContain(type)
    const abouts = new Set(results().flatMap(r => ('answers' in r ? (r.answers ?? []) : []).map(a => a.about)))
    for (const about of ['left', 'why', 'reach', 'status', 'loads', 'density', 'face', 'cover', 'ready', 'loss', 'who', 'supplies'])
      expect(abouts, about).toContain(about)
    expect(stages).toEqual({ orchard: 'empty', 'stone lot': 'feeding' })
  })

  it('counts rightly: 44 loads on orchard and 87 on stone lot', () => {
    // orchard 9+6+6+15+8, stone lot 12+10+11+13+12+15+14: as a crew would count, corrections made
    const loads = (pile: string) => {
      let n = 0
      for (const r of results()) {
        if ('error' in r) continue
        for (const e of r.recorded ?? []) if (e.type === 'load' && e.pile === pile) n += e.count ?? 0
        for (const e of r.withdrawn ?? []) if (e.type === 'load' && e.pile === pile) n -= e.count ?? 0
      }
      return n
    }
    expect([loads('orchard'), loads('stone lot')]).toEqual([44, 87])
  })

  it('fits on a few screens, in plain words: nothing undefined, no code instead of a sentence', () => {
    expect(shown.length).toBeLessThan(250)
    for (const l of shown) expect(l).not.toMatch(/undefined|NaN|\[object|\{ ?\$|\b[a-z]+(-[a-z]+){2,}$/)
  })
})
