import { createHash } from 'node:crypto'
import { mkdir, open, readFile, rename, rm } from 'node:fs/promises'
import { join } from 'node:path'
import type { Incoming } from '../../ports.ts'

/** Notes that wait to be heard, as files: their channel may not be able to bring them a second time. */
export interface Kept {
  read(message: Incoming): Promise<Uint8Array | undefined>
  /** On the disk when it resolves. */
  write(message: Incoming, bytes: Uint8Array): Promise<void>
  drop(message: Incoming): Promise<void>
}

export const keptIn = (folder: string): Kept => {
  const fileOf = (m: Incoming): string => {
    const key = JSON.stringify([m.channel, m.farm, m.chat, m.id, m.edit])
    return join(folder, `${createHash('sha256').update(key).digest('hex').slice(0, 32)}.ogg`)
  }
  return {
    read: m => readFile(fileOf(m)).catch(() => undefined),
    write: async (m, bytes) => {
      await mkdir(folder, { recursive: true })
      const passing = `${fileOf(m)}.part`
      const f = await open(passing, 'w')
      try {
        await f.writeFile(bytes)
        await f.sync()
      } finally {
        await f.close()
      }
      await rename(passing, fileOf(m))
    },
    drop: m => rm(fileOf(m), { force: true }),
  }
}
