import { type ChildProcess, spawn } from 'node:child_process'
import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { describe, expect, it } from 'vitest'
import { openStore } from '../../src/edges/store.ts'
import { children, close, entry, faultIn, folder, message, open, raw, useStores } from './storeBench.ts'

useStores()

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
