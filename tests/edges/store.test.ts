import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Entry } from '../../src/book/entries.ts'
import { EVENT_TYPES } from '../../src/book/events.ts'
import { readEntry } from '../../src/edges/store/entryText.ts'
import { openStore, type Store, StoreFault, type StoreOptions } from '../../src/edges/store.ts'
import type { Incoming, Result } from '../../src/ports.ts'

let folder: string
const opened: Store[] = []
const children: ChildProcess[] = []

const open = (options?: StoreOptions): Store => {
  const s = openStore(folder, options)
  opened.push(s)
  return s
}
const close = (s: Store): void => {
  opened.splice(opened.indexOf(s), 1)
  s.close()
}

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pilehand-store-'))
})
afterEach(() => {
  for (const c of children.splice(0)) c.kill('SIGKILL')
  for (const s of opened.splice(0)) s.close()
  rmSync(folder, { recursive: true, force: true })
})

const message = (id: string, more: Partial<Incoming> = {}): Incoming => ({
  channel: 'telegram',
  farm: 'home',
  chat: 'yard',
  private: true,
  from: 'ines',
  id,
  edit: '',
  at: '2026-09-14T15:00:00Z',
  text: `note: number ${id}`,
  ...more,
})
const entry = (
  n: number,
  body: Entry['body'] = { kind: 'event', id: `e${n}`, event: { type: 'note', text: `number ${n}`, on: '2026-09-14' } },
): Entry => ({
  v: 1,
  n,
  at: '2026-09-14T15:00:00Z',
  by: 'ines',
  body,
})
const result = (text = 'Noted.'): Result => ({
  outcome: 'recorded',
  recorded: [],
  withdrawn: [],
  asks: [],
  answers: [],
  replies: [{ to: 'yard', text }],
})
const faultIn = (work: () => unknown): StoreFault => {
  try {
    work()
  } catch (error) {
    expect(error).toBeInstanceOf(StoreFault)
    return error as StoreFault
  }
  throw new Error('nothing was thrown')
}
const raw = (work: (db: Database.Database) => void): void => {
  const db = new Database(join(folder, 'pilehand.db'))
  work(db)
  db.close()
}

describe('the log', () => {
  it('keeps what was appended, in order, over a restart', () => {
    const a = open()
    a.append('home', 'console', [entry(1), entry(2)], [])
    a.append('hillside', 'console', [entry(1)], [])
    close(a)
    const b = open()
    expect(b.farms()).toEqual(['hillside', 'home'])
    expect(b.entries('home')).toEqual([entry(1), entry(2)])
    expect(b.entries('nowhere')).toEqual([])
  })

  it('stores a message once, and gives back what came of it', () => {
    const s = open()
    expect(s.take(message('7'))).toEqual({ fresh: true })
    expect(s.take(message('7'))).toEqual({ fresh: false })
    s.settle(message('7'), [entry(1)], result())
    expect(s.take(message('7'))).toEqual({ fresh: false, result: result() })
    // Each part of the identity counts.
    for (const other of [{ channel: 'lines' }, { farm: 'hillside' }, { chat: 'shop' }, { edit: '1' }, { id: '8' }]) {
      expect(s.take(message('7', other)), JSON.stringify(other)).toEqual({ fresh: true })
    }
  })

  it('settles a message once, however often it is asked to', () => {
    const s = open({ durable: ['telegram'] })
    s.take(message('7'))
    s.settle(message('7'), [entry(1)], result('first'))
    s.settle(message('7'), [entry(2)], result('second'))
    expect(s.entries('home')).toEqual([entry(1)])
    expect(s.take(message('7')).result).toEqual(result('first'))
    expect(s.queued('telegram').map(q => q.reply.text)).toEqual(['first'])
  })

  it('knows what was taken and never settled', () => {
    const a = open()
    const tap = message('9', { pick: { question: 'q1', choice: 0 } })
    for (const m of [message('7'), message('8'), tap]) a.take(m)
    a.settle(message('8'), [], result())
    close(a)
    expect(open().unsettled()).toEqual([message('7'), tap])
  })

  it('takes all of a settling or nothing', () => {
    const s = open({ durable: ['telegram'] })
    s.take(message('7'))
    const bad = entry(2, { kind: 'event', id: 'e2', event: { type: 'load', pile: 'north' } as never })
    expect(faultIn(() => s.settle(message('7'), [entry(1), bad], result()))).toMatchObject({
      code: 'entry-refused',
      data: { farm: 'home', n: 2 },
    })
    expect(s.entries('home')).toEqual([])
    expect(s.queued('telegram')).toEqual([])
    expect(s.unsettled()).toEqual([message('7')])
  })

  it('refuses a gap and a number used twice', () => {
    const s = open()
    s.append('home', 'console', [entry(1)], [])
    expect(faultIn(() => s.append('home', 'console', [entry(3)], []))).toMatchObject({ code: 'entry-order', data: { n: 3, wanted: 2 } })
    expect(faultIn(() => s.append('home', 'console', [entry(1)], []))).toMatchObject({ code: 'entry-order', data: { n: 1, wanted: 2 } })
    expect(s.entries('home')).toEqual([entry(1)])
  })

  it('lets nobody change or remove an entry', () => {
    close(
      (() => {
        const s = open()
        s.append('home', 'console', [entry(1)], [])
        return s
      })(),
    )
    raw(db => {
      expect(() => db.exec("update entry set body = '{}'")).toThrow('append-only')
      expect(() => db.exec('delete from entry')).toThrow('append-only')
    })
    expect(open().entries('home')).toEqual([entry(1)])
  })
})

describe('the outbox', () => {
  it('holds replies of durable channels only, until they are sent', () => {
    const s = open({ durable: ['telegram'] })
    s.settle(message('1'), [], result('one'))
    s.settle(message('1', { channel: 'console' }), [], result('aside'))
    s.append('home', 'telegram', [], [{ to: 'shop', text: 'two', choices: ['yes', 'no'], question: 'q2' }])
    expect(s.queued('console')).toEqual([])
    const [one, two] = s.queued('telegram')
    expect([one?.reply.text, two?.reply.text]).toEqual(['one', 'two'])
    s.sent(one!.id, '501')
    expect(s.queued('telegram').map(q => q.reply.text)).toEqual(['two'])
    s.sent(two!.id, '502')
    expect(s.sentMessage('telegram', 'shop', '502')?.reply).toEqual({ to: 'shop', text: 'two', choices: ['yes', 'no'], question: 'q2' })
    expect(s.sentMessage('telegram', 'yard', '502')).toBeUndefined()
    expect(s.sentMessage('telegram', 'yard', '501')?.reply.text).toBe('one')
  })

  it("puts the first reply to a tap in the question's place, unless the tap did nothing", () => {
    const s = open({ durable: ['telegram'] })
    const tap = (id: string): Incoming => message(id, { pick: { question: 'q1', choice: 1 }, replyTo: '88' })
    const replies = [
      { to: 'shop', text: 'elsewhere' },
      { to: 'yard', text: 'first' },
      { to: 'yard', text: 'second' },
    ]
    s.settle(tap('tap-1'), [], { ...result(), replies })
    s.settle(tap('tap-2'), [], { ...result('not yours'), outcome: 'refused' })
    s.settle(message('5', { replyTo: '88' }), [], result('typed'))
    expect(s.queued('telegram').map(q => [q.reply.text, q.instead, q.cause])).toEqual([
      ['elsewhere', undefined, 'tap-1'],
      ['first', '88', 'tap-1'],
      ['second', undefined, 'tap-1'],
      ['not yours', undefined, 'tap-2'],
      ['typed', undefined, '5'],
    ])
  })

  it('tries again after a failure and after a restart, but not where the chat is gone for good', () => {
    const a = open({ durable: ['telegram'] })
    a.settle(message('1'), [], result('one'))
    a.settle(message('2'), [], result('two'))
    const [one, two] = a.queued('telegram')
    a.failed(one!.id, 'no network')
    a.failed(two!.id, 'the assistant was blocked', true)
    close(a)
    const left = open({ durable: ['telegram'] }).queued('telegram')
    expect(left.map(q => [q.reply.text, q.tries])).toEqual([['one', 1]])
    raw(db => expect(db.prepare('select count(*) from outbox').pluck().get()).toBe(2))
  })
})

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

describe('a store that can not be opened', () => {
  it('says that the folder can not be written', () => {
    // A file where a folder should be refuses the superuser as well.
    const file = join(folder, 'a-file')
    writeFileSync(file, 'kept')
    expect(faultIn(() => openStore(join(file, 'book')))).toMatchObject({ code: 'folder-unwritable' })
    expect(faultIn(() => openStore(file))).toMatchObject({ code: 'folder-unwritable' })
    expect(readFileSync(file, 'utf8')).toBe('kept')
  })

  it('leaves a database from a newer version as it is', () => {
    const s = open()
    s.append('home', 'console', [entry(1)], [])
    close(s)
    raw(db => db.pragma('user_version = 900'))
    expect(faultIn(() => openStore(folder))).toMatchObject({ code: 'store-newer', data: { found: 900 } })
    raw(db => {
      expect(db.pragma('user_version', { simple: true })).toBe(900)
      db.pragma('user_version = 1')
    })
    expect(open().entries('home')).toEqual([entry(1)])
  })

  it("leaves a file that is no database, and another program's database, as they are", () => {
    const file = join(folder, 'pilehand.db')
    const words = 'this is a shopping list, and a long one '.repeat(200)
    writeFileSync(file, words)
    expect(faultIn(() => openStore(folder))).toMatchObject({ code: 'store-corrupt', data: { file } })
    expect(readFileSync(file, 'utf8')).toBe(words)
    rmSync(file)
    raw(db => db.exec('create table recipes (name text)'))
    expect(faultIn(() => openStore(folder)).data.why).toBe('it belongs to another program')
    raw(db => expect(db.prepare('select name from sqlite_schema').pluck().all()).toEqual(['recipes']))
  })

  it('says so when pages of the file were overwritten', () => {
    const s = open()
    for (let i = 0; i < 20; i++)
      s.append(
        'home',
        'console',
        Array.from({ length: 50 }, (_, k) => entry(i * 50 + k + 1)),
        [],
      )
    close(s)
    const file = join(folder, 'pilehand.db')
    const bytes = readFileSync(file)
    bytes.fill(0xa5, 4096, bytes.length)
    writeFileSync(file, bytes)
    expect(faultIn(() => open().entries('home'))).toMatchObject({ code: 'store-corrupt' })
  })

  it('is free again after a failed opening', () => {
    writeFileSync(join(folder, 'pilehand.db'), 'x'.repeat(5000))
    faultIn(() => openStore(folder))
    rmSync(join(folder, 'pilehand.db'))
    expect(open().farms()).toEqual([])
  })

  it('is refused to a second opening in the same process', () => {
    open()
    expect(faultIn(() => openStore(folder))).toMatchObject({ code: 'store-locked' })
  })
})

describe('another process', () => {
  const writer = (): { child: ChildProcess; said: string[]; heard: (n: number) => Promise<void>; gone: Promise<void> } => {
    const child = spawn(process.execPath, ['--import', 'tsx', new URL('./storeWriter.ts', import.meta.url).pathname, folder], {
      stdio: ['ignore', 'pipe', 'inherit'],
    })
    children.push(child)
    const said: string[] = []
    const waits: { n: number; go: () => void }[] = []
    const lines = createInterface({ input: child.stdout! })
    lines.on('line', l => {
      said.push(l)
      for (const w of waits) if (said.length >= w.n) w.go()
    })
    const gone = new Promise<void>(r => lines.once('close', r))
    return { child, said, heard: n => new Promise<void>(go => waits.push({ n, go })), gone }
  }

  it('can not open a store in use, and can once it is closed', async () => {
    const { child, heard, gone } = writer()
    await heard(10)
    expect(faultIn(() => openStore(folder))).toMatchObject({ code: 'store-locked' })
    child.kill('SIGKILL')
    await gone
    expect(open().entries('home').length).toBeGreaterThan(0)
  })

  it('that is killed at any point loses nothing it had acknowledged, and doubles nothing', async () => {
    let before = 0
    for (const lines of [7, 40, 173, 390]) {
      const { child, said, heard, gone } = writer()
      await heard(lines)
      child.kill('SIGKILL')
      await gone
      const last = (word: string): number => Math.max(before, ...said.filter(l => l.startsWith(word)).map(l => Number(l.split(' ')[1])))
      const s = open({ durable: ['telegram'] })
      const entries = s.entries('home')
      expect(entries.length).toBeGreaterThanOrEqual(last('settled'))
      expect(entries.map(e => e.n)).toEqual(entries.map((_, i) => i + 1))
      expect(s.queued('telegram').map(q => q.reply.text)).toEqual(entries.map(e => `Noted ${e.n}.`))
      for (let n = before + 1; n <= last('taken'); n++) expect(s.take(message(String(n))).fresh, `message ${n}`).toBe(false)
      before = entries.length
      close(s)
    }
    raw(db => expect(db.pragma('integrity_check', { simple: true })).toBe('ok'))
  })
})
