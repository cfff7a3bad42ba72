import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { PassThrough } from 'node:stream'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Fault, openHouse } from '../../src/compose.ts'
import { explained, runConsole } from '../../src/edges/console.ts'

// The program as a newcomer starts it, by its own process; and the console's own rules over a book in a folder of its own.

const root = new URL('../..', import.meta.url).pathname
const tsx = join(root, 'node_modules', '.bin', 'tsx')

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pilehand-console-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

interface Ran {
  code: number | null
  out: string
  err: string
}

const start = (
  data: string,
  env: Record<string, string> = {},
  ...args: string[]
): { child: ChildProcessWithoutNullStreams; ended: Promise<Ran> } => {
  const { TELEGRAM_TOKEN: _, ...own } = process.env
  const child = spawn(tsx, [join(root, 'src/main.ts'), ...args], {
    env: { ...own, PILEHAND_DATA: data, PILEHAND_ZONE: 'America/Chicago', LC_ALL: 'C', ...env },
  })
  let out = ''
  let err = ''
  child.stdout.on('data', (d: Buffer) => {
    out += d.toString()
  })
  child.stderr.on('data', (d: Buffer) => {
    err += d.toString()
  })
  return { child, ended: new Promise(resolve => child.on('close', code => resolve({ code, out, err }))) }
}
const run = (said: string, data = folder, env: Record<string, string> = {}, ...args: string[]): Promise<Ran> => {
  const { child, ended } = start(data, env, ...args)
  child.stdin.end(said)
  return ended
}
/** One line that says what is wrong, exit code 2, nothing else. */
const expectLine = (r: Ran, line: RegExp): void => {
  expect(r.err.trim().split('\n')).toHaveLength(1)
  expect(r.err).toMatch(line)
  expect(r.code).toBe(2)
  expect(r.out).toBe('')
}

describe('npm start with piped input', () => {
  it('greets a newcomer, answers line by line, and finds the book again', async () => {
    const first = await run('new pile called quarry, 40 by 120\nput 7 loads corn on quarry\nhow much is on quarry\n')
    expect(first.err).toBe('')
    expect(first.code).toBe(0)
    // hello, and the three things to type
    expect(first.out.split('\n')[0]).toMatch(/book/)
    expect(
      first.out
        .split('\n')
        .slice(1, 4)
        .every(l => l.length > 10),
    ).toBe(true)
    expect(first.out).toContain('7 loads corn silage on quarry')
    expect(first.out).not.toContain('> ')

    const second = await run("put 5 loads corn on quarry\nexit\nput 90 loads corn on quarry\nhow's quarry\n")
    expect(second.code).toBe(0)
    expect(second.out).not.toContain(first.out.split('\n')[0])
    // 7 of the first run and 5 of this one; what stands behind "exit" was not read
    expect(second.out).toContain('12 so far')
    expect(second.out).not.toContain('90 loads')
  })

  it('greets in Spanish where the machine speaks it', async () => {
    const { out } = await run('', folder, { LC_ALL: 'es_MX.UTF-8' })
    expect(out).toContain('pila nueva')
  })

  it('says in one line that the folder is none', async () => {
    const file = join(folder, 'book')
    writeFileSync(file, '')
    expectLine(await run('help\n', file), /folder .*book.*PILEHAND_DATA/)
  })

  it('says in one line that the time zone is none', async () => {
    expectLine(await run('help\n', folder, { PILEHAND_ZONE: 'Mars/Olympus' }), /PILEHAND_ZONE/)
    expectLine(await run('', folder, {}, 'lines', '--zone', 'Mars/Olympus'), /Mars\/Olympus/)
  })

  it('says in one line that another process has the book; that one is not disturbed', async () => {
    const one = start(folder)
    one.child.stdin.write('new pile called quarry, 40 by 120\n')
    await new Promise(resolve => one.child.stdout.once('data', resolve))
    expectLine(await run('put 7 loads corn on quarry\n'), /open already/)
    expect((await run('', folder, {}, 'explain', 'put 7 loads corn on quarry')).out).toMatch(/open elsewhere/)
    one.child.stdin.end('put 3 loads corn on quarry\n')
    const r = await one.ended
    expect(r.code).toBe(0)
    expect(r.out).toContain('3 loads corn silage on quarry')
  })

  it('says in one line that there is no such command', async () => {
    expectLine(await run('', folder, {}, 'dance'), /dance/)
  })
})

const config = () => ({ data: folder, zone: 'America/Chicago' })

/** The console over a terminal of our own. */
const terminal = () => {
  const { core, store } = openHouse(config(), { firstOwns: true })
  const input = new PassThrough()
  const output = new PassThrough()
  let text = ''
  output.on('data', (d: Buffer) => {
    text += d.toString()
  })
  let clock = Date.parse('2026-09-14T15:00:00Z')
  const tick = (): number => {
    clock += 1000
    return clock
  }
  const done = runConsole({ core, farm: 'home', hello: 'HELLO', input, output, run: 't', now: () => new Date(tick()).toISOString() })
  const type = async (line: string): Promise<string> => {
    const from = text.length
    input.write(`${line}\n`)
    await new Promise(resolve => setImmediate(() => setImmediate(resolve)))
    return text.slice(from)
  }
  const end = async (): Promise<void> => {
    input.end()
    await done
    store.close()
  }
  const at = (t: string): void => {
    clock = Date.parse(t)
  }
  return { core, type, end, input, done, store, said: () => text, at }
}

describe('choices', () => {
  it('are numbered where the answer is a word, and a number or the words answer', async () => {
    const t = terminal()
    await t.type('new pile called quarry, 40 by 120')
    const asked = await t.type('put 4 loads on quarry')
    expect(asked).toMatch(/\n {2}1\) corn silage {2}2\) haylage/)
    expect(await t.type('2')).toContain('4 loads haylage on quarry')
    await t.type('new pile called stone lot, 30 by 80')
    await t.type('put 2 loads corn on stone lot')
    expect(await t.type('put 6 loads corn on ridge')).toContain('1)')
    expect(t.core.book('home').questions.size).toBe(1)
    expect(await t.type('Never mind')).not.toContain('?')
    expect(t.core.book('home').questions.size).toBe(0)
    await t.end()
  })

  it('are not numbered where the answer is a number: it is meant as said', async () => {
    const t = terminal()
    await t.type('new pile called quarry, 40 by 120')
    await t.type('put 2 loads corn on quarry')
    const asked = await t.type('put some loads of corn on quarry')
    expect(asked).toContain('?')
    expect(asked).not.toContain('1)')
    expect(await t.type('3')).toContain('3 loads corn silage on quarry')
    await t.end()
  })
})

it('says what came due once, at the start and between two lines', async () => {
  const t = terminal()
  expect(t.said()).toBe('HELLO\n')
  await t.type('remind me tomorrow to order plastic')
  t.at('2026-09-15T15:00:00Z')
  expect(await t.type('help')).toMatch(/Reminder.*order plastic/)
  expect(await t.type('help')).not.toMatch(/Reminder/)
  await t.end()
})

it('rejects with the fault of the store, and reads no further', async () => {
  const t = terminal()
  await t.type('new pile called quarry, 40 by 120')
  t.store.close()
  t.input.write('put 7 loads corn on quarry\nput 8 loads corn on quarry\n')
  const fault = await t.done.then(
    () => undefined,
    (e: Fault) => e,
  )
  expect(fault?.code).toMatch(/^store-/)
  const again = openHouse(config(), { firstOwns: true })
  expect(again.core.book('home').logged.map(l => l.event.type)).toEqual(['pile'])
  again.store.close()
})

it('settles at the next start what a crash left stored and unsettled, before anything else', () => {
  const first = openHouse(config(), { firstOwns: true })
  const message = {
    channel: 'console',
    farm: 'home',
    chat: 'me',
    private: true,
    from: 'me',
    id: '1',
    edit: '',
    at: '2026-09-14T15:00:00.000Z',
    text: 'new pile called quarry, 40 by 120',
  }
  first.store.take(message)
  first.store.close()
  const second = openHouse(config(), { firstOwns: true })
  expect(second.recovered.map(r => r.outcome)).toEqual(['recorded'])
  expect(second.core.book('home').logged.map(l => l.event.type)).toEqual(['pile'])
  second.store.close()
  const third = openHouse(config(), { firstOwns: true })
  expect(third.recovered).toEqual([])
  third.store.close()
})

it('explains a sentence: what it tells, what it asks, and what is not logged', () => {
  const { core, store } = openHouse(config(), { firstOwns: true })
  const of = (text: string): string => explained(core.explain('home', text, '2026-09-14T15:00:00.000Z'))
  expect(of('new pile called quarry, 40 by 120')).toMatch(/Tells: pile: name quarry, widthFt 40, lengthFt 120/)
  expect(of('how many tires do we have')).toMatch(/Asks: supplies/)
  expect(of('no granizó aquí')).toMatch(/Spanish[\s\S]*not logged/)
  store.close()
})
