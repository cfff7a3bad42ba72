import { fork } from 'node:child_process'
import type { Socket } from 'node:net'
import { dirname, extname } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Order, Report } from './child.ts'

/** The process ended by itself; `message` is what it said of that. */
export class Ended extends Error {}

export interface Recogniser {
  /** One order at a time. Rejects with `Ended`, or with the signal's reason; the process is ended then, for nothing else stops it. */
  ask(order: Order, signal: AbortSignal): Promise<Report>
  readonly ended: boolean
  stop(): void
}

/** Of the surroundings the process gets what a program needs to start, and none of the keys that stand there. */
const NEEDED = ['PATH', 'HOME', 'TMPDIR', 'LANG', 'NODE_OPTIONS', 'LD_LIBRARY_PATH', 'DYLD_LIBRARY_PATH', 'SystemRoot', 'TEMP', 'TMP']
const LONGEST_LOG = 4000

/** The one line of the log that tells: what an exception of the native code says, or else the first; what follows is advice. */
const telling = (log: string): string | undefined => {
  const lines = log
    .split('\n')
    .map(l => l.trim())
    .filter(l => l !== '')
  const line = lines.find(l => l.startsWith('what():'))?.slice('what():'.length) ?? lines[0]
  return line?.trim().slice(0, 200)
}

/** Starts the process; it says nothing before it is asked. */
export const startRecogniser = (): Recogniser => {
  const here = fileURLToPath(import.meta.url)
  const child = fork(new URL(`./child${extname(here)}`, import.meta.url), [], {
    // from the sources it needs what reads TypeScript, found from its own folder
    execArgv: here.endsWith('.ts') ? ['--import', 'tsx'] : [],
    cwd: dirname(here),
    env: Object.fromEntries(NEEDED.flatMap(n => (process.env[n] === undefined ? [] : [[n, process.env[n]]]))),
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'pipe', 'ipc'],
  })
  const errors = child.stderr as Socket
  let log = ''
  let end: string | undefined
  let pending: { resolve: (r: Report) => void; reject: (e: unknown) => void } | undefined

  /** While nothing is asked of it, it keeps nobody from ending. */
  const idle = (): void => {
    child.unref()
    child.channel?.unref()
    errors.unref()
  }
  const finish = (how: 'resolve' | 'reject', value: unknown): void => {
    const p = pending
    pending = undefined
    idle()
    p?.[how](value as Report)
  }
  errors.on('data', (d: Buffer) => {
    log = (log + d.toString('utf8')).slice(0, LONGEST_LOG)
  })
  child.on('message', m => finish('resolve', m))
  child.on('error', e => {
    end ??= e.message
    finish('reject', new Ended(end))
  })
  child.on('close', (code, signal) => {
    end ??= telling(log) ?? signal ?? `exit ${code}`
    finish('reject', new Ended(end))
  })
  idle()

  const stop = (): void => {
    end ??= 'stopped'
    child.kill('SIGKILL')
  }
  const ask = (order: Order, signal: AbortSignal): Promise<Report> =>
    new Promise((resolve, reject) => {
      if (signal.aborted) return reject(signal.reason)
      if (end !== undefined) return reject(new Ended(end))
      const aborted = (): void => {
        stop()
        finish('reject', signal.reason)
      }
      const clean =
        <T>(then: (value: T) => void) =>
        (value: T): void => {
          signal.removeEventListener('abort', aborted)
          then(value)
        }
      pending = { resolve: clean(resolve), reject: clean(reject) }
      signal.addEventListener('abort', aborted, { once: true })
      child.ref()
      // a process is over when its last words are read
      errors.ref()
      child.channel?.ref()
      // where it cannot be sent the process has ended, and `close` tells why
      child.send(order, () => undefined)
    })

  return {
    ask,
    stop,
    get ended() {
      return end !== undefined
    },
  }
}
