import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'
import { apply, newBook } from '../../src/book/book.ts'
import type { Event } from '../../src/book/events.ts'
import { openHouse } from '../../src/compose.ts'
import type { Incoming, Reply } from '../../src/ports.ts'
import { type Alert, alertsDue } from '../../src/watch/alerts.ts'
import { momentOf } from '../../src/watch/hours.ts'

const ZONE = 'America/Chicago'
const bookOf = (...events: Event[]) => {
  const book = newBook()
  for (const [k, event] of events.entries())
    apply(book, { v: 1, n: k + 1, at: `${event.on}T12:00:00.000Z`, by: 'ada', body: { kind: 'event', id: `e${k}`, event } })
  return book
}
const COVERED: Event[] = [
  { type: 'pile', name: 'ridge', on: '2026-09-01' },
  { type: 'load', pile: 'ridge', crop: 'corn silage', count: 40, on: '2026-09-10' },
  { type: 'cover', pile: 'ridge', material: 'plastic', change: 'on', on: '2026-09-11' },
]
/** Half past eight to ten of the evening of the 20th, by the farm's clock (UTC-5). */
const HAIL: Alert = { id: 'a', kind: 'hail', from: '2026-09-21T01:30:00.000Z', to: '2026-09-21T03:00:00.000Z' }
const MORNING = '2026-09-21T11:30:00.000Z'
const due = (alerts: Alert[], at: string, more: Event[] = [], said: string[] = []) => {
  const book = bookOf(...COVERED, ...more)
  for (const key of said) book.said.add(key)
  return alertsDue(book, momentOf(book, { at, zone: ZONE }), { alerts: () => alerts })
}
const at = (a: Alert, from: string, to: string, kind = a.kind): Alert => ({ id: `${a.id}'`, kind, from, to })

describe('a storm that was warned of', () => {
  it('is asked about once it is over, in the words of the night, with what can be answered', () => {
    expect(due([HAIL], '2026-09-21T02:00:00.000Z')).toEqual([])
    expect(due([HAIL], MORNING)).toEqual([
      {
        key: 'alert:hail:2026-09-21T01:30:00.000Z/2026-09-21T03:00:00.000Z',
        at: HAIL.to,
        to: 'crew',
        message: { code: 'alert-past', data: { kind: 'hail', piles: ['ridge'], on: '2026-09-20', when: 'night' } },
        offer: { did: 'hail', piles: ['ridge'] },
      },
    ])
    const noon = at(HAIL, '2026-09-21T17:00:00.000Z', '2026-09-21T18:00:00.000Z')
    expect(due([noon], '2026-09-21T18:00:00.000Z')[0]?.message).toMatchObject({ data: { on: '2026-09-21', when: 'today' } })
    expect(due([noon], '2026-09-22T12:00:00.000Z')[0]?.message).toMatchObject({ data: { on: '2026-09-21', when: 'day' } })
    // after midnight it still is the night that began the day before
    expect(due([at(HAIL, '2026-09-21T07:00:00.000Z', '2026-09-21T08:00:00.000Z')], MORNING)[0]?.message).toMatchObject({
      data: { on: '2026-09-20', when: 'night' },
    })
  })

  it('is one question however many alerts it had, about the worst of it', () => {
    const more = [
      at(HAIL, '2026-09-21T02:30:00.000Z', '2026-09-21T04:00:00.000Z', 'wind'),
      at(HAIL, '2026-09-21T05:30:00.000Z', '2026-09-21T06:00:00.000Z', 'rain'),
    ]
    expect(due([...more, HAIL], MORNING).map(i => i.key)).toEqual(['alert:hail:2026-09-21T01:30:00.000Z/2026-09-21T06:00:00.000Z'])
    // not while the next part of it still goes on
    expect(due([...more, HAIL], '2026-09-21T05:45:00.000Z')).toEqual([])
  })

  it('that was asked about is not asked about again: not by an update, a milder part, or another warning close by', () => {
    const { key } = due([HAIL], MORNING)[0]!
    const longer = { ...HAIL, id: 'b', to: '2026-09-21T04:30:00.000Z' }
    const wind = at(HAIL, '2026-09-21T04:00:00.000Z', '2026-09-21T04:30:00.000Z', 'wind')
    for (const alerts of [[HAIL], [longer], [HAIL, wind], [wind]]) expect(due(alerts, MORNING, [], [key])).toEqual([])
    // the next storm of the same night is another
    const second = at(HAIL, '2026-09-21T07:30:00.000Z', '2026-09-21T08:00:00.000Z')
    expect(due([HAIL, second], MORNING, [], [key]).map(i => i.at)).toEqual([second.to])
    // and so is the hail of a storm of which only wind was asked
    const mild = due([{ ...HAIL, kind: 'wind' }], MORNING)[0]!.key
    expect(due([HAIL], MORNING, [], [mild])).toHaveLength(1)
  })

  it('is not asked about where somebody told of it or walked since, where nothing is covered, and when it is long past', () => {
    expect(due([HAIL], MORNING, [{ type: 'weather', kind: 'hail', on: '2026-09-20' }])).toEqual([])
    expect(due([HAIL], MORNING, [{ type: 'weather', kind: 'rain', on: '2026-09-20' }])).toHaveLength(1)
    // at noon, UTC, of the 21st
    expect(due([HAIL], '2026-09-21T14:00:00.000Z', [{ type: 'check', pile: 'all', finding: 'good', on: '2026-09-21' }])).toEqual([])
    expect(due([HAIL], MORNING, [{ type: 'empty', pile: 'ridge', on: '2026-09-20' }])).toEqual([])
    expect(due([HAIL], '2026-09-24T11:30:00.000Z')).toEqual([])
  })
})

it('a freeze is told of before it comes, and never after', () => {
  const freeze: Alert = { id: 'f', kind: 'freeze', from: '2026-10-03T05:00:00.000Z', to: '2026-10-03T14:00:00.000Z' }
  expect(due([freeze], '2026-10-01T11:00:00.000Z')).toEqual([])
  expect(due([freeze], '2026-10-02T17:00:00.000Z')).toMatchObject([{ key: 'alert:freeze:2026-10-02', message: { code: 'alert-ahead' } }])
  expect(due([freeze], '2026-10-03T15:00:00.000Z')).toEqual([])
})

describe('the answer', () => {
  let house: ReturnType<typeof openHouse> | undefined
  let folder = ''
  const close = (): void => {
    house?.store.close()
    house = undefined
    if (folder) rmSync(folder, { recursive: true, force: true })
  }
  afterEach(close)
  /** A house with one covered pile and ada as its owner, in which these alerts stand. */
  const open = (...alerts: Alert[]) => {
    close()
    folder = mkdtempSync(join(tmpdir(), 'pilehand-alerts-'))
    house = openHouse({ data: folder, zone: ZONE }, { firstOwns: true, passing: true, alerts: () => alerts })
    let k = 0
    const say = (when: string, text: string, more: Partial<Incoming> = {}) =>
      house!.core.handle({
        channel: 'x',
        farm: 'home',
        chat: 'ada',
        private: true,
        from: 'ada',
        id: `m${++k}`,
        edit: '',
        at: when,
        text,
        ...more,
      })
    for (const text of ['new pile called ridge', '40 loads corn silage on ridge', 'covered ridge with plastic'])
      say('2026-09-11T17:00:00.000Z', text)
    say('2026-09-20T20:00:00.000Z', 'walked ridge, all good')
    const tick = (when: string): Reply[] => house!.core.tick('home', 'x', when).flatMap(d => d.replies)
    tick('2026-09-21T00:00:00.000Z')
    const asked = tick(MORNING).find(r => r.question?.startsWith('alert:'))
    return { say, tick, asked }
  }
  const last = () => house!.core.book('home').logged.at(-1)!.event
  const LATER = '2026-09-21T12:00:00.000Z'

  it('yes is recorded by the word of who said it, and begins the round of the covers', () => {
    for (const how of ['tap', 'yes', 'sí']) {
      const { say, tick, asked } = open(HAIL)
      expect(asked?.text).toBe('Hail was warned of near the farm last night. Did it reach you? Walk ridge.')
      expect(asked?.choices).toEqual(['Yes, hail', 'Not here', 'Walked, all good'])
      expect(house!.core.book('home').logged.filter(l => l.event.type === 'weather')).toEqual([])
      say(LATER, how === 'tap' ? 'Yes, hail' : how, how === 'tap' ? { pick: { question: asked!.question!, choice: 0 } } : {})
      expect(last(), how).toMatchObject({ type: 'weather', kind: 'hail', on: '2026-09-20', by: 'ada' })
      expect(
        tick('2026-09-21T12:01:00.000Z')
          .map(r => r.text)
          .join('\n'),
        how,
      ).toMatch(/Hail/)
      expect(house!.core.book('home').said.has('round:2026-09-20'), how).toBe(true)
      expect(tick('2026-09-21T12:02:00.000Z'), how).toEqual([])
    }
  })

  it('no records nothing, and is not asked again', () => {
    for (const how of ['tap', 'no']) {
      const { say, tick, asked } = open(HAIL)
      const before = house!.core.book('home').logged.length
      const r = say(LATER, how === 'tap' ? 'Not here' : how, how === 'tap' ? { pick: { question: asked!.question!, choice: 1 } } : {})
      expect([r.outcome, r.replies[0]?.text], how).toEqual(['answered', 'Good, nothing to log.'])
      expect(house!.core.book('home').logged).toHaveLength(before)
      expect(tick('2026-09-21T12:01:00.000Z'), how).toEqual([])
    }
  })

  it('walked records the walk, and no weather', () => {
    const { say, asked } = open(HAIL)
    say(LATER, 'Walked, all good', { pick: { question: asked!.question!, choice: 2 } })
    expect(last()).toMatchObject({ type: 'check', pile: 'ridge', finding: 'good', on: '2026-09-21' })
  })

  it('of rain is its inches, tapped or said', () => {
    for (const [text, pick, inches] of [
      ['2 in', 1, 2],
      ['1.5', undefined, 1.5],
      ['2 inches', undefined, 2],
    ] as const) {
      const { say, asked } = open({ ...HAIL, kind: 'rain' })
      expect(asked?.choices).toEqual(['1 in', '2 in', '3 in', 'Not here'])
      say(LATER, text, pick === undefined ? {} : { pick: { question: asked!.question!, choice: pick } })
      expect(last(), text).toMatchObject({ type: 'weather', kind: 'rain', inches, on: '2026-09-20' })
    }
  })

  it('is no answer to another question, and what says more is read for itself', () => {
    const { say } = open(HAIL)
    say(LATER, '3 loads haylage on ridge')
    expect(last()).toMatchObject({ type: 'load', count: 3 })
    say(LATER, 'golf ball hail last night')
    expect(last()).toMatchObject({ type: 'weather', kind: 'hail', inches: 1.75, on: '2026-09-20' })
  })
})
