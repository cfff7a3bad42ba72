import { mkdirSync, readdirSync, renameSync, writeFileSync } from 'node:fs'
import { join, resolve } from 'node:path'

/** The message that a picture came with. */
export interface PictureOf {
  channel: string
  chat: string
  id: string
}

export interface Pictures {
  /** Paths of the pictures that came with a message, in their order. */
  of(message: PictureOf): string[]
  /**
   * Keeps a picture; the same one (`name`, the channel's own mark of it) again is the same file. Undefined for what is no picture.
   * Throws where the folder can't be written.
   */
  keep(message: PictureOf, name: string, bytes: Uint8Array): string | undefined
}

/** The first bytes of what is kept, and the ending it gets: JPEG (ISO 10918), PNG (W3C PNG 5.2), WebP (RIFF container). */
const KINDS: [end: string, like: RegExp][] = [
  ['jpg', /^\xff\xd8\xff/],
  ['png', /^\x89PNG\r\n.\n/],
  ['webp', /^RIFF.{4}WEBP/s],
]

/** The ending of a picture by what it is, not by what it is called; undefined for what is no picture. */
const kindOf = (bytes: Uint8Array): string | undefined => {
  const head = Buffer.from(bytes.subarray(0, 12)).toString('latin1')
  return KINDS.find(([, like]) => like.test(head))?.[0]
}

/** A name's letters that no file system minds. */
const safe = (text: string): string => text.replace(/[^\w-]/g, '.').slice(0, 80)
const stem = ({ channel, chat, id }: PictureOf): string => [channel, chat, id].map(safe).join('_')

/**
 * The pictures beside the book: files named by the message they came with, so that the folder needs no list of its own and
 * goes wherever the book's folder is copied to.
 */
export const openPictures = (data: string): Pictures => {
  const folder = resolve(data, 'pictures')
  let index: Map<string, string[]> | undefined

  const add = (map: Map<string, string[]>, file: string): void => {
    const key = file.replace(/_[^_]*$/, '')
    map.set(key, [...(map.get(key) ?? []).filter(f => f !== file), file])
  }
  const known = (): Map<string, string[]> => {
    if (index) return index
    const map = new Map<string, string[]>()
    try {
      for (const file of readdirSync(folder).sort()) if (!file.endsWith('.part')) add(map, file)
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'ENOENT') throw error
    }
    index = map
    return map
  }

  return {
    of: message => (known().get(stem(message)) ?? []).map(f => join(folder, f)),
    keep: (message, name, bytes) => {
      const kind = kindOf(bytes)
      if (kind === undefined) return undefined
      mkdirSync(folder, { recursive: true })
      const file = `${stem(message)}_${safe(name).replaceAll('_', '.')}.${kind}`
      const path = join(folder, file)
      writeFileSync(`${path}.part`, bytes)
      // a half-written picture never has the name of a whole one
      renameSync(`${path}.part`, path)
      add(known(), file)
      return path
    },
  }
}
