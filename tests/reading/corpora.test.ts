import { readdirSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { linesOf, openStage, type Stage } from './playing.ts'
import { type Case, judge, type Said, type Verdict } from './scorer.ts'

/**
 * What is read right at the least, and recorded wrongly at the most, in percent of a file's cases. Raise the floors and lower
 * the ceilings as the reading gets better; never the other way.
 */
const BOUNDS: Record<string, { right: number; wrong: number }> = {
  'crew.es.jsonl': { right: 99, wrong: 1 },
  'dictated.en.jsonl': { right: 99, wrong: 1 },
  'mixed.es.jsonl': { right: 99, wrong: 1 },
  'plain.en.jsonl': { right: 99, wrong: 1 },
  'plain.es.jsonl': { right: 98, wrong: 2 },
  'second/english.jsonl': { right: 98, wrong: 1.5 },
  'second/spanish.jsonl': { right: 98.4, wrong: 1.6 },

  'third/english.jsonl': { right: 98, wrong: 1 },
  'third/spanish.jsonl': { right: 99, wrong: 1 },
  'fourth/spanish.jsonl': { right: 97, wrong: 0.5 },
  'fifth/english.jsonl': { right: 97, wrong: 0.5 },
  'sixth/english.jsonl': { right: 99.5, wrong: 0.2 },
  'sixth/spanish.jsonl': { right: 99.5, wrong: 0.2 },
  'sixth/met.jsonl': { right: 98, wrong: 0.5 },
  'talk.en.jsonl': { right: 99, wrong: 1 },
  'talk.es.jsonl': { right: 99, wrong: 1 },
  'terse.en.jsonl': { right: 99, wrong: 1 },
  'traps.en.jsonl': { right: 99, wrong: 1 },
}

const FOLDER = new URL('../corpora', import.meta.url).pathname
const FARM = 'farm.jsonl'
/** Corpora with their farm; a folder within has a farm of its own. */
const corpora = (readdirSync(FOLDER, { recursive: true }) as string[])
  .filter(f => f.endsWith('.jsonl') && basename(f) !== FARM && !f.startsWith('meanings'))
  .sort()
const farms = [...new Set(corpora.map(f => join(dirname(f), FARM)))]

let stage: Stage
const unheard: string[] = []

beforeAll(() => {
  stage = openStage()
  for (const farm of farms) unheard.push(...stage.raise(farm, linesOf<Said & { at: string }>(join(FOLDER, farm))))
})
afterAll(() => stage.close())

it('the farms of the corpora are read as they are told', () => {
  expect(unheard).toEqual([])
  for (const farm of farms)
    expect(stage.told(farm).filter(e => e.body.kind === 'event').length).toBeGreaterThanOrEqual(linesOf(join(FOLDER, farm)).length)
})

it('every corpus has its bounds', () => {
  expect(corpora.filter(f => !(f in BOUNDS))).toEqual([])
})

describe.each(corpora)('%s', file => {
  it('is read right often enough, and hardly ever recorded wrongly', () => {
    const cases = linesOf<Case>(join(FOLDER, file))
    expect(new Set(cases.map(c => c.id)).size, 'ids are unique').toBe(cases.length)
    const played = cases.map(c => stage.play(join(dirname(file), FARM), `${file} ${c.id}`, c))
    const share = (v: Verdict): number => (100 * played.filter(p => p.verdict === v).length) / cases.length
    const [right, wrong] = [share('right'), share('wrong')]
    for (const p of played) if (p.verdict !== 'right') console.log(p.report())
    console.log(
      `${file}: ${cases.length} cases, right ${right.toFixed(1)} %, wrong record ${wrong.toFixed(1)} %, needless question ${share('asked').toFixed(1)} %, missed ${share('missed').toFixed(1)} %`,
    )
    expect(right).toBeGreaterThanOrEqual(BOUNDS[file]?.right ?? 100)
    expect(wrong).toBeLessThanOrEqual(BOUNDS[file]?.wrong ?? 0)
  })
})

describe('the scorer', () => {
  const day = '2026-09-14'
  const load = { type: 'load', pile: 'north', crop: 'corn silage', count: 6 }
  const c = (expect: Case['expect']): Case => ({ id: 't', lines: [], expect })
  const got = (recorded: object[], outcome = 'recorded') => ({
    outcome,
    recorded: recorded as Record<string, unknown>[],
    withdrawn: [],
    asks: [],
  })

  it.each<[string, object[], Verdict]>([
    ['the same', [{ ...load, on: day }], 'right'],
    ['half a percent off', [{ ...load, count: 6.02 }], 'right'],
    ['one percent off', [{ ...load, count: 6.06 }], 'wrong'],
    ['another pile', [{ ...load, pile: 'lane' }], 'wrong'],
    ['another day', [{ ...load, on: '2026-09-13' }], 'wrong'],
    ['a slot too many', [{ ...load, cut: 2 }], 'wrong'],
    ['an event too many', [load, load], 'wrong'],
    ['no event', [], 'missed'],
  ])('%s', (_, recorded, verdict) => {
    expect(judge(c({ outcome: 'recorded', recorded: [load] }), got(recorded), day)).toBe(verdict)
  })

  it('takes an alternative, and knows a needless question from a needed one', () => {
    const either = c({ outcome: 'ignored', alternatives: [{ outcome: 'asked' }] })
    expect(judge(either, got([], 'asked'), day)).toBe('right')
    expect(judge(c({ outcome: 'recorded', recorded: [load] }), got([], 'asked'), day)).toBe('asked')
    expect(judge(either, got([], 'answered'), day)).toBe('other')
  })

  it('asks for the withdrawn and for the questions', () => {
    const taken = c({ outcome: 'recorded', withdrawn: [load] })
    expect(judge(taken, { ...got([]), withdrawn: [load] }, day)).toBe('right')
    expect(judge(taken, got([]), day)).not.toBe('right')
    const asked = c({ outcome: 'answered', asks: [{ about: 'left', pile: 'lane' }] })
    expect(judge(asked, { ...got([], 'answered'), asks: [{ about: 'left', pile: 'lane' }] }, day)).toBe('right')
    expect(judge(asked, { ...got([], 'answered'), asks: [{ about: 'status', pile: 'lane' }] }, day)).toBe('other')
  })
})
