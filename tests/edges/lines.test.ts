import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type House, openHouse } from '../../src/compose.ts'
import { type LineOut, type LineReader, lineReader } from '../../src/edges/lines.ts'

// The line channel over a real book in a folder of its own.

let folder: string
let house: House
let reader: LineReader
let runs = 0

const open = (zone = 'America/Chicago'): void => {
  house = openHouse({ data: folder, zone }, { firstOwns: true, passing: true })
  reader = lineReader(house.core, `run${++runs}`)
}
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pilehand-lines-'))
  open()
})
afterEach(() => {
  house.store.close()
  rmSync(folder, { recursive: true, force: true })
})

const AT = '2026-09-14T10:05:00-05:00'
const take = (line: Record<string, unknown>): LineOut[] => reader.take(JSON.stringify({ at: AT, from: 'edda', ...line }))
/** What a line came to, without what became due. */
const own = (line: Record<string, unknown>) =>
  take(line).find(o => 'line' in o) as {
    line: number
    outcome?: string
    error?: string
    recorded?: unknown[]
    replies?: { text: string }[]
  }
const dues = (out: LineOut[]) => out.flatMap(o => ('due' in o ? [o] : []))
const mornings = (out: LineOut[]) => dues(out).filter(d => /morning\./.test(d.replies[0]?.text ?? ''))
const stored = () => house.core.book('home').logged.map(l => l.event.type)

const begin = (): void => {
  own({ text: 'new pile called quarry, 40 by 120' })
}

describe('a line that is not valid gets its own error, and the next goes on', () => {
  const cases: [string, string, RegExp][] = [
    ['not JSON', '{"at": ', /JSON/],
    ['JSON, but no object', '7', /object/],
    ['without at', '{"from":"edda","text":"help"}', /^at: /],
    ['at without offset', '{"at":"2026-09-14T10:05:00","from":"edda","text":"help"}', /^at: .*offset/],
    ['without from', `{"at":"${AT}","text":"help"}`, /^from: /],
    ['without text', `{"at":"${AT}","from":"edda"}`, /^text: /],
    ['text of 4,097 characters', JSON.stringify({ at: AT, from: 'edda', text: 'a'.repeat(4097) }), /^text: .*4096/],
    ['a field nobody knows', `{"at":"${AT}","from":"edda","text":"help","colour":"red"}`, /colour/],
    ['a role nobody knows', `{"at":"${AT}","from":"edda","text":"help","role":"king"}`, /^role: /],
    ['voice without a recogniser', `{"at":"${AT}","from":"edda","voice":"a.ogg"}`, /^voice: /],
  ]
  for (const [name, line, error] of cases) {
    it(name, () => {
      begin()
      const out = reader.take(line)
      expect(out).toHaveLength(1)
      const [first] = out
      expect(first).toMatchObject({ line: 2 })
      const said = (first as { error: string }).error
      expect(said).toMatch(error)
      expect(said).not.toContain('\n')
      expect(stored()).toEqual(['pile'])
      expect(own({ text: 'put 7 loads corn on quarry' })).toMatchObject({ line: 3, outcome: 'recorded' })
      expect(stored()).toEqual(['pile', 'load'])
    })
  }

  it('at that runs backwards, within a farm only', () => {
    begin()
    const earlier = '2026-09-14T10:04:59-05:00'
    expect(own({ at: earlier, text: 'put 7 loads corn on quarry' }).error).toMatch(/^at: .*back/)
    expect(stored()).toEqual(['pile'])
    // the same instant told with another offset is not earlier
    expect(own({ at: '2026-09-14T17:05:00+02:00', text: 'put 7 loads corn on quarry' }).outcome).toBe('recorded')
    expect(own({ at: earlier, farm: 'other', text: 'new pile called ridge, 30 by 90' }).outcome).toBe('recorded')
    expect(stored()).toEqual(['pile', 'load'])
  })
})

describe('messages that are odd, but messages', () => {
  it('4,096 characters are read', () => {
    expect(own({ text: 'a '.repeat(2048) }).error).toBeUndefined()
  })
  it('an emoji wall records nothing', () => {
    begin()
    const r = own({ chat: 'crew', text: '🚜🌽'.repeat(500) })
    expect(['ignored', 'puzzled']).toContain(r.outcome)
    expect(stored()).toEqual(['pile'])
  })
  it('a stranger is refused in one line, and nothing is recorded', () => {
    begin()
    const r = own({ from: 'passer', role: 'stranger', text: 'put 7 loads corn on quarry' })
    expect(r.outcome).toBe('refused')
    expect(r.replies).toHaveLength(1)
    expect(r.replies?.[0]?.text).not.toContain('\n')
    expect(stored()).toEqual(['pile'])
  })
  it('a viewer may ask, not record', () => {
    begin()
    expect(own({ from: 'vet', role: 'viewer', text: 'put 7 loads corn on quarry' }).outcome).toBe('refused')
    expect(own({ from: 'vet', role: 'viewer', text: "how's quarry" }).outcome).toBe('answered')
    expect(stored()).toEqual(['pile'])
  })
  it('the same id in a chat is one message, also after a restart', () => {
    begin()
    const once = own({ id: 12, chat: 'crew', text: 'put 7 loads corn on quarry' })
    expect(own({ id: 12, chat: 'crew', text: 'put 7 loads corn on quarry' })).toMatchObject({
      outcome: once.outcome,
      recorded: once.recorded,
    })
    house.store.close()
    open()
    expect(own({ id: 12, chat: 'crew', text: 'put 7 loads corn on quarry' })).toMatchObject({
      outcome: once.outcome,
      recorded: once.recorded,
    })
    expect(stored()).toEqual(['pile', 'load'])
    // another chat counts its messages by itself
    own({ id: 12, text: 'put 3 loads corn on quarry' })
    expect(stored()).toEqual(['pile', 'load', 'load'])
  })
  it('messages without an id are never taken for those of an earlier run', () => {
    begin()
    house.store.close()
    open()
    own({ text: 'put 7 loads corn on quarry' })
    expect(stored()).toEqual(['pile', 'load'])
  })
  it('farms share nothing', () => {
    own({ text: 'new pile called quarry, 37 by 111' })
    own({ text: 'put 7 loads corn on quarry' })
    const elsewhere = own({ farm: 'other', text: "how's quarry" })
    expect(elsewhere.outcome).not.toBe('answered')
    expect(elsewhere.replies?.[0]?.text ?? '').not.toMatch(/37|111|7 loads corn silage/)
    expect(house.core.book('other').logged).toEqual([])
  })
})

describe('the morning summary', () => {
  const feeding = (): void => {
    begin()
    own({ text: 'put 90 loads corn on quarry' })
    own({ text: 'yes' })
    own({ at: '2026-09-15T16:00:00-05:00', text: 'opened quarry to feed' })
    own({ at: '2026-09-15T16:01:00-05:00', text: 'feeding 9,000 a day off quarry' })
  }

  it('comes once a day at six by the farm’s clock', () => {
    feeding()
    const out = take({ at: '2026-09-17T12:00:00-05:00', text: 'help' })
    expect(mornings(out).map(d => d.due)).toEqual(['2026-09-16T11:00:00.000Z', '2026-09-17T11:00:00.000Z'])
    expect(mornings(take({ at: '2026-09-17T18:00:00-05:00', text: 'help' }))).toEqual([])
  })

  it('is caught up after a restart, the latest only, and never said twice', () => {
    feeding()
    house.store.close()
    open()
    const late = mornings(take({ at: '2026-09-18T09:00:00-05:00', text: 'help' }))
    expect(late).toHaveLength(1)
    expect(late[0]?.replies[0]?.text).toMatch(/Sep 18/)
    house.store.close()
    open()
    expect(mornings(take({ at: '2026-09-18T09:30:00-05:00', text: 'help' }))).toEqual([])
  })

  it('keeps its wall-clock hour over the clock change of another zone', () => {
    house.store.close()
    open('Europe/Berlin')
    feeding()
    // Central European Summer Time ended on 2026-10-25 (EU directive 2000/84/EC: last Sunday of October, 01:00 UTC)
    take({ at: '2026-10-24T12:00:00+02:00', text: 'help' })
    const out = mornings(take({ at: '2026-10-26T12:00:00+01:00', text: 'help' }))
    expect(out.map(d => d.due)).toEqual(['2026-10-25T05:00:00.000Z', '2026-10-26T05:00:00.000Z'])
  })

  it('keeps its wall-clock hour over the clock change of the farm’s zone', () => {
    feeding()
    // Daylight time ended on 2026-11-01 (15 U.S.C. 260a: first Sunday of November, 2 a.m.)
    take({ at: '2026-10-31T12:00:00-05:00', text: 'help' })
    const out = mornings(take({ at: '2026-11-02T12:00:00-06:00', text: 'help' }))
    expect(out.map(d => d.due)).toEqual(['2026-11-01T12:00:00.000Z', '2026-11-02T12:00:00.000Z'])
  })
})

it('one instant is two days in two zones', () => {
  begin()
  const midnight = { at: '2026-09-15T05:30:00Z', text: 'put 7 loads corn on quarry' }
  expect(own(midnight).recorded).toMatchObject([{ type: 'load', on: expect.stringMatching(/2026-09-1[45]/) }])
  house.store.close()
  open('America/Los_Angeles')
  const west = own({ at: '2026-09-15T06:30:00Z', text: 'put 2 loads corn on quarry' })
  // 23:30 of the 14th on the Pacific
  expect(west.recorded).toMatchObject([{ type: 'load', on: '2026-09-14' }])
})
