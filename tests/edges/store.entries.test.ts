import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { EVENT_TYPES } from '../../src/book/events.ts'
import { readEntry } from '../../src/edges/store/entryText.ts'
import { close, entry, faultIn, open, raw, useStores } from './storeBench.ts'

useStores()

describe('old and spoiled entries', () => {
  const lines = readFileSync(new URL('./store.entries.v1.jsonl', import.meta.url), 'utf8')
    .trim()
    .split('\n')
  const insert = (texts: string[]): void => {
    close(open())
    raw(db => {
      const add = db.prepare("insert into entry (farm, n, body) values ('home', ?, ?)")
      texts.forEach((t, i) => {
        add.run(i + 1, t)
      })
    })
  }

  it('still reads every kind of entry and event as version 1 wrote it', () => {
    insert(lines)
    const entries = open().entries('home')
    expect(entries).toEqual(lines.map(l => JSON.parse(l)))
    expect(new Set(entries.map(e => e.body.kind))).toEqual(new Set(['event', 'withdraw', 'ask', 'close', 'member', 'setting', 'said']))
    const types = entries.flatMap(e => (e.body.kind === 'event' ? [e.body.event.type] : []))
    expect([...new Set(types)].sort()).toEqual([...EVENT_TYPES].sort())
  })

  it('brings an older version up to date step by step', () => {
    // Two invented steps: version 1 called the author `who`, version 2 had no zone mark on its instants.
    const upgrades = {
      1: ({ who, ...rest }: Record<string, unknown>) => ({ ...rest, by: who }),
      2: (old: Record<string, unknown>) => ({ ...old, at: `${old.at}Z` }),
    }
    const { by, ...rest } = entry(4)
    const old = JSON.stringify({ ...rest, who: by, at: '2026-09-14T15:00:00' })
    expect(readEntry('home', 4, old, upgrades, 3)).toEqual({ ...entry(4), v: 3 })
    expect(faultIn(() => readEntry('home', 4, old, {}, 3)).data).toMatchObject({ farm: 'home', n: 4, why: 'version 1 has no way to 2' })
  })

  it.each([
    ['not JSON', '{"v":1,', 'not JSON'],
    [
      'an unknown event type',
      JSON.stringify(entry(2, { kind: 'event', id: 'e', event: { type: 'dance' } as never })),
      'dance: no such event type',
    ],
    [
      'a slot it does not know',
      JSON.stringify(
        entry(2, { kind: 'event', id: 'e', event: { type: 'empty', pile: 'north', on: '2026-09-14', colour: 'red' } as never }),
      ),
      'colour',
    ],
    [
      'a day that is none',
      JSON.stringify(entry(2, { kind: 'event', id: 'e', event: { type: 'empty', pile: 'north', on: '2026-02-30' } })),
      'not a calendar day',
    ],
    ['a newer version', JSON.stringify({ ...entry(2), v: 99 }), 'newer'],
    ['no version', JSON.stringify({ ...entry(2), v: undefined }), 'no version'],
    ['another number than its own', JSON.stringify(entry(5)), 'calls itself 5'],
  ])('names the farm and the number of one with %s, and drops nothing', (_, text, why) => {
    insert([JSON.stringify(entry(1)), text, JSON.stringify(entry(3))])
    const s = open()
    const fault = faultIn(() => s.entries('home'))
    expect(fault).toMatchObject({ code: 'entry-unreadable', data: { farm: 'home', n: 2 } })
    expect(fault.data.why).toContain(why)
    close(s)
    raw(db => expect(db.prepare('select body from entry where n = 2').pluck().get()).toBe(text))
  })
})
