import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import Database from 'better-sqlite3'
import { startBotApi } from '../support/botApi.ts'
import { makeRandom } from './random.ts'
import { alone, CREW, GROUP, makeTraffic, OWNER, OWNER_CODE } from './traffic.ts'
import { faultsOf } from './verdict.ts'
import { badLine } from './weather.ts'

const TOKEN = '700123499:AAEhBOweik9ai2o01-Sample_token_of_storms'
/** So many updates may wait at the server before more are sent. */
const AHEAD = 150

export interface Storm {
  updates: number
  kills: number
  seed: number
  /** Longest life of a process, ms. */
  lifeMs: number
}

export interface AfterStorm {
  wrong: string[]
  counts: Record<string, number>
  sent: number
  seconds: number
}

/** A crew's traffic over a bad line, to a program that is killed again and again; then what is wrong with the book. */
export const storm = async (o: Storm): Promise<AfterStorm> => {
  const from = Date.now()
  const random = makeRandom(o.seed)
  const counts: Record<string, number> = {}
  const count = (what: string): void => {
    counts[what] = (counts[what] ?? 0) + 1
  }
  const api = await startBotApi(TOKEN, { id: 700123499, username: 'chaos_bot', can_read_all_group_messages: true })
  const folder = mkdtempSync(join(tmpdir(), 'pilehand-storm-'))
  const start = (): ChildProcess =>
    spawn(process.execPath, ['--import', 'tsx', new URL('./child.ts', import.meta.url).pathname, folder, api.root, TOKEN, OWNER_CODE], {
      stdio: ['ignore', 'inherit', 'inherit'],
    })
  const kill = async (c: ChildProcess): Promise<void> => {
    c.kill('SIGKILL')
    if (c.exitCode === null && c.signalCode === null) await once(c, 'exit')
  }
  let child = start()
  try {
    const answered = async (chat: number, work: () => void): Promise<string> => {
      const before = api.shown(chat).length
      work()
      await api.until('it is answered', () => api.shown(chat).length > before, 30_000)
      return api.shown(chat).at(-1)!.text
    }
    await answered(OWNER.id, () => api.say(alone(OWNER), OWNER, OWNER_CODE))
    for (const who of CREW) {
      const code = /\b[A-HJ-NP-Z2-9]{8}\b/.exec(await answered(OWNER.id, () => api.say(alone(OWNER), OWNER, '/invite')))![0]
      await answered(who.id, () => api.say(alone(who), who, code))
    }
    await answered(GROUP.id, () => api.say(GROUP, OWNER, '/here'))
    for (const pile of ['creek', 'ridge'])
      await answered(OWNER.id, () => api.say(alone(OWNER), OWNER, `new pile called ${pile}, 40 by 120`))

    const traffic = makeTraffic(api, random)
    Object.assign(api.line, badLine(random, count))
    const each = Math.ceil(o.updates / (o.kills + 1))
    let left = o.updates
    for (let life = 0; left > 0; life++) {
      for (const until = Math.max(0, left - each); left > until; left--) {
        if (api.pending().length > AHEAD) await api.until('it catches up', () => api.pending().length < AHEAD / 2, 120_000)
        traffic.next()
      }
      if (life < o.kills) {
        await new Promise(r => setTimeout(r, random() * o.lifeMs))
        await kill(child)
        count('killed')
        child = start()
      }
    }
    await api.until('all is confirmed', () => api.pending().length === 0, 240_000)
    // The lock keeps a second program out of the book; looking on does it no harm.
    const looking = new Database(join(folder, 'pilehand.db'), { readonly: true })
    const unsent = looking.prepare('select count(*) from outbox where sent_at is null and dropped_at is null').pluck()
    await api.until('the outbox is empty', () => unsent.get() === 0, 120_000).finally(() => looking.close())
    await kill(child)
    const wrong = faultsOf(folder, api, traffic.sent)
    return { wrong, counts, sent: traffic.sent.size, seconds: (Date.now() - from) / 1000 }
  } finally {
    await kill(child)
    await api.close()
    rmSync(folder, { recursive: true, force: true })
  }
}
