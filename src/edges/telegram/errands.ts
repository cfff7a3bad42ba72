import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Logger } from 'pino'
import { z } from 'zod'
import { NoFile } from './download.ts'

const errand = z.object({ chat: z.string(), message: z.string(), fileId: z.string(), name: z.string() })

/** A picture to be fetched and kept with a message. */
export type Errand = z.infer<typeof errand>

export interface Errands {
  add(errand: Errand): void
  /** Those that an earlier process left. */
  resume(): void
  /** Resolves when the one in hand is done, or given up at the signal. */
  stop(): Promise<void>
}

export interface ErrandOptions {
  folder: string
  logger: Logger
  retryMs: number
  carry(errand: Errand, signal: AbortSignal): Promise<void>
}

const RETRY_MOST_MS = 5 * 60_000
/** Some three days of tries; by then nobody looks for the picture. */
const TRIES = 900

/**
 * Pictures to be fetched, as one small file each: the message is stored and answered first, and a process that dies between the two
 * fetches them at the next start. One at a time, so that the line is left to the words.
 */
export const makeErrands = (o: ErrandOptions): Errands => {
  const leaving = new AbortController()
  const waiting = new Map<string, { errand: Errand; tries: number; from: number }>()
  let running: Promise<void> | undefined
  let timer: NodeJS.Timeout | undefined

  const fileOf = ({ chat, message, name }: Errand): string => `${[chat, message, name].map(t => t.replace(/[^\w-]/g, '.')).join('_')}.json`
  const done = (file: string): void => {
    waiting.delete(file)
    rmSync(join(o.folder, file), { force: true })
  }

  const runOne = async (file: string): Promise<void> => {
    const one = waiting.get(file)!
    try {
      await o.carry(one.errand, leaving.signal)
      done(file)
    } catch (error) {
      if (leaving.signal.aborted) return
      const why = error instanceof Error ? error.message : String(error)
      const forGood = error instanceof NoFile || ++one.tries >= TRIES
      o.logger.warn({ picture: one.errand.name, tries: one.tries, why, forGood }, 'a picture was not fetched')
      if (forGood) return done(file)
      one.from = Date.now() + Math.min(RETRY_MOST_MS, o.retryMs * 2 ** Math.min(one.tries - 1, 12))
    }
  }

  const run = async (): Promise<void> => {
    for (;;) {
      const next = [...waiting].find(([, w]) => w.from <= Date.now())
      if (!next || leaving.signal.aborted) break
      await runOne(next[0])
    }
    const soonest = Math.min(...[...waiting.values()].map(w => w.from))
    if (Number.isFinite(soonest) && !leaving.signal.aborted) timer = setTimeout(wake, Math.max(1, soonest - Date.now()))
  }

  const wake = (): void => {
    clearTimeout(timer)
    if (leaving.signal.aborted || running) return
    running = run()
      .catch(error => o.logger.error({ why: String(error) }, 'pictures could not be fetched'))
      .finally(() => {
        running = undefined
        // one that came after the last look
        if ([...waiting.values()].some(w => w.from <= Date.now())) wake()
      })
  }

  return {
    add: e => {
      const file = fileOf(e)
      if (waiting.has(file)) return
      mkdirSync(o.folder, { recursive: true })
      writeFileSync(join(o.folder, `${file}.part`), JSON.stringify(e))
      renameSync(join(o.folder, `${file}.part`), join(o.folder, file))
      waiting.set(file, { errand: e, tries: 0, from: 0 })
      wake()
    },
    resume: () => {
      let names: string[] = []
      try {
        names = readdirSync(o.folder).filter(n => n.endsWith('.json'))
      } catch {
        return
      }
      for (const file of names) {
        const read = errand.safeParse(JSON.parse(readFileSync(join(o.folder, file), 'utf8')))
        if (read.success) waiting.set(file, { errand: read.data, tries: 0, from: 0 })
      }
      wake()
    },
    stop: async () => {
      leaving.abort()
      clearTimeout(timer)
      await running
    },
  }
}
