import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import type Database from 'better-sqlite3'
import type { Entry } from '../book/entries.ts'
import type { EventLog, Incoming, Reply, Result } from '../ports.ts'
import type { Instant } from '../units/calendar.ts'
import { readEntry, writeEntry } from './store/entryText.ts'
import { guarded, StoreFault } from './store/fault.ts'
import { lockStore } from './store/lock.ts'
import { readMessage } from './store/messageText.ts'
import { type Cause, type Outbox, outboxOf } from './store/outbox.ts'
import { openDatabase } from './store/schema.ts'

export { StoreFault } from './store/fault.ts'
export type { Outbox, Queued } from './store/outbox.ts'

export type Store = EventLog & Outbox & { file: string }

export interface StoreOptions {
  /** Channels whose replies wait in the outbox until they are sent. The others answer at once and have no use for it. */
  durable?: string[]
  /** A store in a temporary folder that its process deletes when it ends. */
  passing?: boolean
  now?: () => Instant
}

const makeFolder = (folder: string): void => {
  try {
    mkdirSync(folder, { recursive: true })
  } catch (error) {
    throw new StoreFault('folder-unwritable', { folder, why: (error as Error).message })
  }
}

/**
 * Opens the store in a folder: `pilehand.db`, and `pilehand.lock`, which keeps every other process out. Every method is
 * one transaction; none awaits. All that it throws is a StoreFault, and none of them loses what was stored before.
 */
export const openStore = (folder: string, options: StoreOptions = {}): Store => {
  const now = options.now ?? (() => new Date().toISOString())
  const durable = new Set(options.durable)
  makeFolder(folder)
  const unlock = lockStore(join(folder, 'pilehand.lock'))
  const file = join(folder, 'pilehand.db')
  try {
    return storeOn(openDatabase(file, options.passing), file, durable, now, unlock)
  } catch (error) {
    unlock()
    throw error
  }
}

/** A tap that did something: its reply takes the question's place. After one that did not, the question stands. */
const settles = (m: Incoming, { outcome }: Result): boolean => m.pick !== undefined && ['recorded', 'answered', 'asked'].includes(outcome)

const storeOn = (db: Database.Database, file: string, durable: Set<string>, now: () => Instant, unlock: () => void): Store => {
  const { outbox, post } = outboxOf(db, file, now)
  const farms = db.prepare('select distinct farm from entry union select distinct farm from message order by 1').pluck()
  const ofFarm = db.prepare('select n, body from entry where farm = ? order by n')
  const lastOf = db.prepare('select coalesce(max(n), 0) from entry where farm = ?').pluck()
  const addEntry = db.prepare('insert into entry (farm, n, body) values (?, ?, ?)')
  const addMessage = db.prepare('insert or ignore into message (channel, farm, chat, id, edit, raw, taken_at) values (?, ?, ?, ?, ?, ?, ?)')
  const key = 'channel = ? and farm = ? and chat = ? and id = ? and edit = ?'
  const resultOf = db.prepare(`select result from message where ${key}`).pluck()
  const setResult = db.prepare(`update message set result = ?, settled_at = ? where ${key} and result is null`)
  const open = db.prepare('select seq, farm, raw from message where result is null order by seq')

  const keyOf = (m: Incoming): string[] => [m.channel, m.farm, m.chat, m.id, m.edit]
  const put = (m: Incoming): boolean => addMessage.run(...keyOf(m), JSON.stringify(m), now()).changes === 1

  const log = (farm: string, entries: Entry[]): void => {
    let n = lastOf.get(farm) as number
    for (const e of entries) {
      // A gap or a number used twice means two minds were at work on one book; nothing of it may get in.
      if (e.n !== ++n) throw new StoreFault('entry-order', { farm, n: e.n, wanted: n })
      addEntry.run(farm, e.n, writeEntry(farm, e))
    }
  }
  // Row by row: all the texts at once would take as much memory again as the book.
  const entriesOf = (farm: string): Entry[] => {
    const list: Entry[] = []
    for (const r of ofFarm.iterate(farm) as Iterable<{ n: number; body: string }>) list.push(readEntry(farm, r.n, r.body))
    return list
  }
  const queue = (channel: string, farm: string, replies: Reply[], from?: Cause & { chat: string }): void => {
    if (durable.has(channel)) post(channel, farm, replies, from)
  }

  const take = db.transaction((m: Incoming): { fresh: boolean; result?: Result } => {
    if (put(m)) return { fresh: true }
    const text = resultOf.get(...keyOf(m)) as string | null
    return text === null ? { fresh: false } : { fresh: false, result: JSON.parse(text) as Result }
  })
  const settle = db.transaction((m: Incoming, entries: Entry[], result: Result): void => {
    put(m)
    if (setResult.run(JSON.stringify(result), now(), ...keyOf(m)).changes === 0) return
    log(m.farm, entries)
    queue(m.channel, m.farm, result.replies, { chat: m.chat, cause: m.id, ...(settles(m, result) && { instead: m.replyTo }) })
  })
  const append = db.transaction((farm: string, channel: string, entries: Entry[], replies: Reply[]): void => {
    log(farm, entries)
    queue(channel, farm, replies)
  })

  return {
    file,
    ...outbox,
    farms: () => guarded(file, () => farms.all() as string[]),
    entries: farm => guarded(file, () => entriesOf(farm)),
    take: m => guarded(file, () => take.immediate(m)),
    settle: (m, entries, result) => guarded(file, () => settle.immediate(m, entries, result)),
    append: (farm, channel, entries, replies) => guarded(file, () => append.immediate(farm, channel, entries, replies)),
    unsettled: () =>
      guarded(file, () => (open.all() as { seq: number; farm: string; raw: string }[]).map(r => readMessage(r.farm, r.seq, r.raw))),
    close: () => {
      db.close()
      unlock()
    },
  }
}
