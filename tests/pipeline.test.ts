import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { eventsOf, pileState } from '../src/book/book.ts'
import type { EventOf, EventType } from '../src/book/events.ts'
import { loadPrompts } from '../src/edges/prompts.ts'
import { openStore, type Store } from '../src/edges/store.ts'
import { answer, pilesFor } from '../src/figures/asked/answer.ts'
import { type Core, makeCore } from '../src/pipeline.ts'
import type { EventLog, Incoming, Result } from '../src/ports.ts'
import { makeSayer } from '../src/saying/say.ts'

const say = makeSayer(loadPrompts())
const ZONE = 'America/Chicago'
const BEGIN = Date.parse('2026-09-14T14:00:00Z')

let folder: string
let store: Store
let core: Core
let minute = 0

const coreOn = (log: EventLog): Core => makeCore({ log, zone: ZONE, say, answer, pilesFor, firstOwns: true })
const open = (): void => {
  store = openStore(folder, { durable: ['post'] })
  core = coreOn(store)
}
const restart = (): void => {
  store.close()
  open()
}
const message = (text: string, more: Partial<Incoming> = {}): Incoming => {
  const n = ++minute
  return {
    channel: 'lines',
    farm: 'home',
    chat: 'yard',
    private: false,
    from: 'lea',
    id: `m${n}`,
    edit: '',
    at: new Date(BEGIN + n * 60_000).toISOString(),
    text,
    ...more,
  }
}
const hear = (text: string, more: Partial<Incoming> = {}): Result => core.handle(message(text, more))
const entries = () => store.entries('home')
const told = <T extends EventType>(type: T): EventOf<T>[] => eventsOf(core.book('home'), type).map(t => t.event)

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pilehand-pipeline-'))
  minute = 0
  open()
  for (const text of ['new pile called quarry, 38 by 110', 'new pile called ridge, 30 by 80', 'put 4 loads haylage on ridge'])
    expect(hear(text).outcome, text).toBe('recorded')
})
afterEach(() => {
  store.close()
  rmSync(folder, { recursive: true, force: true })
})

describe('the same message twice', () => {
  it('is one, with the same answer', () => {
    const m = message('put 7 loads corn on quarry')
    const first = core.handle(m)
    const n = entries().length
    expect(first.recorded).toMatchObject([{ type: 'load', pile: 'quarry', crop: 'corn silage', count: 7 }])
    expect(core.handle({ ...m })).toEqual(first)
    restart()
    expect(core.handle({ ...m })).toEqual(first)
    expect(entries()).toHaveLength(n)
    expect(told('load').filter(e => e.pile === 'quarry')).toHaveLength(1)
  })

  it.each<[string, Partial<Incoming>]>([
    ['channel', { channel: 'post' }],
    ['farm', { farm: 'other' }],
    ['chat', { chat: 'shed' }],
    ['id', { id: 'else' }],
    ['edit', { edit: '1', edits: 'm4' }],
  ])('but another %s makes it another message', (_, more) => {
    const m = message('put 7 loads corn on quarry')
    core.handle(m)
    expect(store.take({ ...m, ...more })).toEqual({ fresh: true })
  })

  it('on a channel that sends later, its reply waits once', () => {
    const m = message('put 7 loads corn on quarry', { channel: 'post' })
    core.handle(m)
    core.handle({ ...m })
    expect(store.queued('post')).toMatchObject([{ chat: 'yard', cause: m.id }])
    expect(entries().filter(e => e.source?.channel === 'post' && e.body.kind === 'event')).toHaveLength(1)
  })

  it('of two farms goes into two books', () => {
    hear('new pile called quarry, 20 by 50', { farm: 'other', from: 'sol' })
    hear('put 2 loads corn on quarry', { farm: 'other', from: 'sol' })
    hear('put 9 loads corn on quarry')
    expect(eventsOf(core.book('other'), 'load').map(t => t.event.count)).toEqual([2])
    expect(told('load').map(e => e.count)).toEqual([4, 9])
  })
})

describe('corrections', () => {
  it('by an edit: the old one is withdrawn, and both stay in the log', () => {
    hear('put 7 loads corn on quarry', { id: 'a' })
    const got = hear('put 8 loads corn on quarry', { id: 'a', edit: '1', edits: 'a' })
    expect(got).toMatchObject({ outcome: 'recorded', recorded: [{ type: 'load', count: 8 }], withdrawn: [{ type: 'load', count: 7 }] })
    expect(told('load').map(e => e.count)).toEqual([4, 8])
    expect(core.book('home').logged.filter(l => l.event.type === 'load')).toHaveLength(3)
  })

  it('by a second edit withdraws what the first one recorded', () => {
    hear('put 7 loads corn on quarry', { id: 'a' })
    hear('put 8 loads corn on quarry', { id: 'a', edit: '1', edits: 'a' })
    expect(hear('put 9 loads corn on quarry', { id: 'a', edit: '2', edits: 'a' })).toMatchObject({
      recorded: [{ count: 9 }],
      withdrawn: [{ count: 8 }],
    })
    expect(told('load').map(e => e.count)).toEqual([4, 9])
  })

  it('by an edit that changes no meaning change nothing', () => {
    hear('put 7 loads corn on quarry', { id: 'a' })
    expect(hear('Put 7 loads of corn on quarry.', { id: 'a', edit: '1', edits: 'a' })).toMatchObject({ recorded: [], withdrawn: [] })
    expect(told('load').map(e => e.count)).toEqual([4, 7])
  })

  it('by a reply change the message replied to, not the last one', () => {
    hear('put 7 loads corn on quarry', { id: 'a' })
    hear('put 3 loads haylage on ridge', { id: 'b' })
    expect(hear('make that 6', { replyTo: 'a' })).toMatchObject({
      recorded: [{ pile: 'quarry', count: 6 }],
      withdrawn: [{ pile: 'quarry', count: 7 }],
    })
    expect(told('load').map(e => e.count)).toEqual([4, 3, 6])
  })

  it('step by step back with undo', () => {
    hear('put 7 loads corn on quarry')
    hear('put 3 loads corn on quarry')
    expect(hear('undo').withdrawn).toMatchObject([{ count: 3 }])
    expect(hear('undo').withdrawn).toMatchObject([{ count: 7 }])
    expect(pileState(core.book('home'), 'quarry')).toMatchObject({ stage: 'planned', loads: [] })
  })
})

describe('who may do what', () => {
  it('the first to speak owns the farm, later ones are crew', () => {
    hear('put 2 loads corn on quarry', { from: 'teo' })
    expect([...core.book('home').members.values()].map(m => [m.person, m.role])).toEqual([
      ['lea', 'owner'],
      ['teo', 'crew'],
    ])
  })

  it('a viewer may ask and not record', () => {
    expect(hear('put 2 loads corn on quarry', { from: 'ana', role: 'viewer' })).toMatchObject({ outcome: 'refused', recorded: [] })
    expect(hear("how's ridge", { from: 'ana', role: 'viewer' })).toMatchObject({
      outcome: 'answered',
      asks: [{ about: 'status', pile: 'ridge' }],
    })
  })

  it('a stranger is refused, and is nobody in the book', () => {
    expect(hear('put 2 loads corn on quarry', { from: 'who', role: 'stranger' })).toMatchObject({ outcome: 'refused', recorded: [] })
    expect(hear("how's ridge", { from: 'who', role: 'stranger' }).answers).toEqual([])
    expect(core.book('home').members.has('who')).toBe(false)
  })

  it("crew does not take back another's record unasked", () => {
    hear('put 7 loads corn on quarry', { id: 'a' })
    expect(hear('scratch that', { from: 'teo', replyTo: 'a' })).toMatchObject({ withdrawn: [] })
    expect(told('load').map(e => e.count)).toEqual([4, 7])
    hear('put 5 loads haylage on ridge', { from: 'teo', id: 'b' })
    expect(hear('make that 6', { replyTo: 'b' })).toMatchObject({ withdrawn: [{ count: 5 }] })
  })
})

describe('each is answered in the language they write', () => {
  it('one chat, two languages', () => {
    const [english] = hear('put 2 loads corn on quarry').replies
    const [spanish] = hear('puse 3 viajes de maíz en quarry', { from: 'teo' }).replies
    expect(english!.text).toMatch(/loads/)
    expect(spanish!.text).toMatch(/viajes/)
    expect(hear('make that 4', { from: 'lea' }).replies[0]!.text).not.toMatch(/viajes/)
  })

  it('a word too short to tell is answered as they wrote before', () => {
    hear('puse 3 viajes de maíz en quarry', { from: 'teo' })
    expect(core.book('home').members.get('teo')).toMatchObject({ lang: 'es' })
    hear('undo', { from: 'teo' })
    expect(core.book('home').members.get('teo')).toMatchObject({ lang: 'es' })
  })
})

describe('what breaks off', () => {
  it('between storing and settling is settled by the next start, once', () => {
    const m = message('put 7 loads corn on quarry')
    // the raw message is stored, then the power goes
    expect(store.take(m)).toEqual({ fresh: true })
    restart()
    expect(store.unsettled()).toMatchObject([{ id: m.id, text: m.text }])
    for (const open of store.unsettled()) core.handle(open)
    expect(store.unsettled()).toEqual([])
    core.handle({ ...m })
    expect(told('load').map(e => e.count)).toEqual([4, 7])
    restart()
    expect(told('load').map(e => e.count)).toEqual([4, 7])
  })

  it('while it is written leaves the book as it was', () => {
    let broken = true
    const log: EventLog = {
      ...store,
      settle: (m, list, result) =>
        broken
          ? (() => {
              throw new Error('the disk is gone')
            })()
          : store.settle(m, list, result),
    }
    const shaky = coreOn(log)
    const m = message('put 7 loads corn on quarry')
    expect(() => shaky.handle(m)).toThrow('the disk is gone')
    expect(pileState(shaky.book('home'), 'quarry')).toMatchObject({ loads: [] })
    broken = false
    expect(shaky.handle(m).recorded).toMatchObject([{ count: 7 }])
    expect(pileState(shaky.book('home'), 'quarry')!.loads).toHaveLength(1)
  })

  it('a question is kept, and its answer is dated by the message that raised it', () => {
    const asked = hear('put 7 loads on quarry')
    expect(asked).toMatchObject({ outcome: 'asked', recorded: [] })
    expect(asked.replies[0]!.choices?.length).toBeGreaterThan(0)
    restart()
    const got = hear('corn', { at: '2026-09-15T13:00:00.000Z' })
    expect(got).toMatchObject({
      outcome: 'recorded',
      recorded: [{ type: 'load', pile: 'quarry', crop: 'corn silage', count: 7, on: '2026-09-14' }],
    })
    expect(core.book('home').questions.size).toBe(0)
  })

  it('a choice tapped after the restart answers as well, and only once', () => {
    const asked = hear('put 7 loads on quarry')
    const { question, choices } = asked.replies[0]!
    const choice = choices!.findIndex(c => /corn/i.test(c))
    expect(choice).toBeGreaterThanOrEqual(0)
    restart()
    const tap = message(choices![choice]!, { pick: { question: question!, choice } })
    expect(core.handle(tap).recorded).toMatchObject([{ crop: 'corn silage', count: 7 }])
    core.handle({ ...tap, id: 'again' })
    expect(told('load').map(e => e.count)).toEqual([4, 7])
  })
})

describe('what comes due', () => {
  it('is said once, and not again after a restart', () => {
    hear('remind me tomorrow at 7am to call the co-op', { private: true, chat: 'lea' })
    const at = '2026-09-15T12:00:00.000Z' // 07:00 in Chicago
    const before = core.tick('home', 'lines', '2026-09-15T11:59:00.000Z').flatMap(d => d.replies.map(r => r.text))
    expect(before.join('\n')).not.toMatch(/co-op/)
    const said = core.tick('home', 'lines', at).flatMap(d => d.replies)
    expect(said.filter(r => /co-op/.test(r.text))).toHaveLength(1)
    expect(core.tick('home', 'lines', at)).toEqual([])
    restart()
    expect(core.tick('home', 'lines', at)).toEqual([])
  })
})
