import type { ChildProcess } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { afterEach, beforeEach, expect } from 'vitest'
import type { Entry } from '../../src/book/entries.ts'
import { openStore, type Store, StoreFault, type StoreOptions } from '../../src/edges/store.ts'
import type { Incoming, Result } from '../../src/ports.ts'

export let folder: string
const opened: Store[] = []
export const children: ChildProcess[] = []

export const open = (options?: StoreOptions): Store => {
  const s = openStore(folder, options)
  opened.push(s)
  return s
}
export const close = (s: Store): void => {
  opened.splice(opened.indexOf(s), 1)
  s.close()
}

export const message = (id: string, more: Partial<Incoming> = {}): Incoming => ({
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
export const entry = (
  n: number,
  body: Entry['body'] = { kind: 'event', id: `e${n}`, event: { type: 'note', text: `number ${n}`, on: '2026-09-14' } },
): Entry => ({
  v: 1,
  n,
  at: '2026-09-14T15:00:00Z',
  by: 'ines',
  body,
})
export const result = (text = 'Noted.'): Result => ({
  outcome: 'recorded',
  recorded: [],
  withdrawn: [],
  asks: [],
  answers: [],
  replies: [{ to: 'yard', text }],
})
export const faultIn = (work: () => unknown): StoreFault => {
  try {
    work()
  } catch (error) {
    expect(error).toBeInstanceOf(StoreFault)
    return error as StoreFault
  }
  throw new Error('nothing was thrown')
}
export const raw = (work: (db: Database.Database) => void): void => {
  const db = new Database(join(folder, 'pilehand.db'))
  work(db)
  db.close()
}

/** An empty folder for each test of the file. */
export const useStores = (): void => {
  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'pilehand-store-'))
  })
  afterEach(() => {
    for (const c of children.splice(0)) c.kill('SIGKILL')
    for (const s of opened.splice(0)) s.close()
    rmSync(folder, { recursive: true, force: true })
  })
}
