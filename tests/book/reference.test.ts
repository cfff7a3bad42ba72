import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type About, ASKS } from '../../src/book/asks.ts'
import { EVENT_TYPES, EVENTS } from '../../src/book/events.ts'
import { answerSlots, referenceFile, referenceText } from '../../src/edges/reference.ts'
import { answer } from '../../src/figures/asked/answer.ts'
import { bookOf, evening, upper } from '../figures/askedFarm.ts'

describe('the reference page', () => {
  const text = referenceText()

  it('is what the schemas say', () => {
    const stands = existsSync(referenceFile()) ? readFileSync(referenceFile(), 'utf8') : ''
    expect(stands === text, 'shared/REFERENCE.md is stale: run npm run reference').toBe(true)
  })

  it.each(EVENT_TYPES)('lists every slot of %s', type => {
    const section = text
      .slice(text.indexOf(`### ${type}\n`))
      .slice(4)
      .split('###')[0]!
    for (const slot of Object.keys(EVENTS[type].shape))
      if (!['type', 'on', 'by', 'said'].includes(slot)) expect(section).toContain(`| \`${slot}\` |`)
  })

  it('says which slots are needed, their units and their values', () => {
    expect(text).toContain('| `lb` | needed | lb | number, above 0 | pounds |')
    expect(text).toContain('| `cut` | optional |  | whole number, above 0, at most 12 |  |')
    expect(text).toContain('| `cause` | needed |  | `hail`, `wind`, `animal`, `machine`, `ice`, `unknown` |  |')
    expect(text).toContain('At least one of `lb`, `count`, `ft` is needed.')
  })

  it.each(ASKS)('has a line for the question %s', about => {
    expect(text).toContain(`| \`${about}\` |`)
  })
})

/** A farm on which most questions have an answer: one pile being fed, one filling, a herd, a stock, a harvest to come. */
const farm = bookOf([
  ...upper([
    { type: 'open', pile: 'upper', why: 'feed', on: '2025-11-01' },
    { type: 'face', pile: 'upper', atFt: 4, on: '2025-11-05' },
    { type: 'face', pile: 'upper', atFt: 12, on: '2025-11-19' },
    { type: 'feed', pile: 'upper', lb: 9000, on: '2025-11-19' },
    { type: 'ration', pile: 'upper', lbPerDay: 9000, on: '2025-11-01' },
    { type: 'ration', group: 'milking', head: 120, on: '2025-11-01' },
    { type: 'pack', pile: 'upper', tractors: 2, tractorLb: 30_000, hours: 8, layerIn: 6, on: '2025-09-12' },
    { type: 'supply', item: 'tires', change: 'have', count: 500, on: '2025-09-01' },
    { type: 'supply', item: 'plastic', change: 'have', count: 2, widthFt: 60, lengthFt: 150, on: '2025-11-18' },
    { type: 'damage', pile: 'upper', cause: 'hail', count: 2, on: '2025-11-10' },
    { type: 'check', pile: 'all', finding: 'good', on: '2025-11-12' },
    { type: 'harvest', crop: 'haylage', cut: 1, on: '2026-05-28' },
  ]),
])
const QUESTIONS: Record<Exclude<About, 'why'>, object> = {
  left: { pile: 'upper' },
  reach: { until: '2026-05-28' },
  status: { pile: 'upper' },
  loads: { pile: 'upper' },
  density: { pile: 'upper' },
  face: { pile: 'upper' },
  cover: { pile: 'upper' },
  plan: { lb: 1_200_000 },
  ready: { pile: 'upper' },
  mix: { pile: 'upper' },
  checks: { pile: 'upper' },
  loss: { pile: 'upper' },
  supplies: {},
  who: { type: 'cover' },
  history: { pile: 'upper' },
  picture: {},
  help: {},
}

describe('the answers', () => {
  it.each(Object.keys(QUESTIONS) as (keyof typeof QUESTIONS)[])('carry nothing that the page does not name: %s', about => {
    const got = answer(farm, { about, ...QUESTIONS[about] }, evening('2025-11-20'))
    expect(got).toHaveProperty('about', about)
    const more = Object.keys(got).filter(k => !['about', 'how', 'notes', ...answerSlots(about)].includes(k))
    expect(more, 'name them in src/edges/reference.ts').toEqual([])
  })
})
