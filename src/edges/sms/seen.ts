import { closeSync, fdatasyncSync, openSync, readFileSync, renameSync, writeFileSync, writeSync } from 'node:fs'
import { WINDOW } from './signature.ts'

/** The signatures that were used, as long as their time would still be taken. */
export interface Seen {
  has(signature: string): boolean
  /** Remembered before the message is handled, and on the disk: a process that dies in between takes no request twice. */
  add(signature: string, time: number): void
  close(): void
}

/** Lapsed lines are left out when the file is read, and when it has grown to so many. */
const MOST_LINES = 20_000

const read = (file: string): Map<string, number> => {
  const kept = new Map<string, number>()
  let text = ''
  try {
    text = readFileSync(file, 'utf8')
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
  }
  // A line that a power cut left half written is no signature.
  for (const m of text.matchAll(/^(\d{1,11}) ([0-9a-f]{64})$/gm)) kept.set(m[2]!, Number(m[1]))
  return kept
}

/** Opens the file of used signatures: a line each, its time and itself. Beside the book, so that a restart forgets none. */
export const openSeen = (file: string, nowMs: () => number): Seen => {
  const kept = read(file)
  let lines = 0
  let handle: number | undefined
  const forget = (): void => {
    const oldest = nowMs() / 1000 - WINDOW
    for (const [signature, time] of kept) if (time < oldest) kept.delete(signature)
  }
  const rewrite = (): void => {
    forget()
    if (handle !== undefined) closeSync(handle)
    writeFileSync(`${file}.new`, [...kept].map(([signature, time]) => `${time} ${signature}\n`).join(''), { mode: 0o600 })
    renameSync(`${file}.new`, file)
    handle = openSync(file, 'a')
    lines = kept.size
  }
  rewrite()
  return {
    has: signature => kept.has(signature),
    add: (signature, time) => {
      if (lines >= MOST_LINES) rewrite()
      writeSync(handle!, `${time} ${signature}\n`)
      fdatasyncSync(handle!)
      kept.set(signature, time)
      lines++
    },
    close: () => closeSync(handle!),
  }
}
