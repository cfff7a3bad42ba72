import { ApiError, bad, type Payload } from './botApiParts.ts'

interface Kept {
  bytes: Uint8Array
  size: number
  path: string
}

/** Bot API, "getFile": bots can download files of up to 20 MB. */
const MOST = 20_000_000

/** The files that people sent, and what the bot may fetch of them. */
export const makeFiles = () => {
  const files = new Map<string, Kept>()
  return {
    add: (bytes: Uint8Array, told: { size?: number; path?: string } = {}) => {
      const n = files.size + 1
      const file_id = `file-${n}`
      const size = told.size ?? bytes.length
      files.set(file_id, { bytes, size, path: told.path ?? `photos/file_${n}.jpg` })
      return { file_id, file_unique_id: `unique${n}`, file_size: size }
    },
    get: (p: Payload) => {
      const kept = files.get(String(p.file_id))
      if (!kept) throw bad('invalid file_id')
      if (kept.bytes.length > MOST) throw bad('file is too big')
      return { file_id: p.file_id, file_unique_id: p.file_id, file_size: kept.size, file_path: kept.path }
    },
    download: (path: string): Uint8Array => {
      const kept = [...files.values()].find(f => f.path === path)
      if (!kept) throw new ApiError(404, 'Not Found')
      return kept.bytes
    },
  }
}
