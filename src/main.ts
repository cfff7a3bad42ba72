import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { readConfig } from './config.ts'
import { loadPrompts } from './edges/prompts.ts'
import { openStore } from './edges/store.ts'
import { answer, pilesFor } from './figures/asked/answer.ts'
import { makeCore } from './pipeline.ts'
import { makeSayer } from './saying/say.ts'
import { isZone } from './units/calendar.ts'

/** Composition: config, store, clock, channels. It decides nothing. */
const say = makeSayer(loadPrompts())
const fail = (code: string, data: Record<string, string | number>): never => {
  process.stderr.write(`${say({ code, data }, 'en')}\n`)
  process.exit(2)
}

const { positionals, values } = parseArgs({ allowPositionals: true, strict: false, options: { zone: { type: 'string' }, data: { type: 'string' }, pictures: { type: 'boolean' } } })
const command = positionals[0] ?? 'start'
const checked = readConfig(process.env)
if (!checked.ok) fail(checked.code, checked.data)
const config = (checked as Extract<typeof checked, { ok: true }>).config
if (typeof values.zone === 'string') {
  if (!isZone(values.zone)) fail('zone-unknown', { zone: values.zone })
  config.zone = values.zone
}
if (typeof values.data === 'string') config.data = values.data

const open = (folder: string, durable: string[] = [], passing = false) => {
  try {
    return openStore(folder, { durable, passing })
  } catch (error) {
    const f = error as { code?: string; data?: Record<string, string | number> }
    if (f.code && f.data) return fail(f.code, f.data)
    throw error
  }
}

const core = (store: ReturnType<typeof openStore>, firstOwns: boolean) => makeCore({ log: store, zone: config.zone, say, answer, pilesFor, firstOwns })

switch (command) {
  case 'lines': {
    const fresh = typeof values.data !== 'string'
    const folder = fresh ? mkdtempSync(join(tmpdir(), 'pilehand-')) : config.data
    const store = open(folder, [], fresh)
    const { runLines } = await import('./edges/lines.ts')
    await runLines(core(store, true), process.stdin, line => process.stdout.write(`${line}\n`), `${Date.now().toString(36)}${process.pid}`)
    store.close()
    if (fresh) rmSync(folder, { recursive: true, force: true })
    break
  }
  default:
    fail('config-wrong', { name: command, why: 'no such command' })
}
