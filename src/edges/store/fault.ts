import { dirname } from 'node:path'
import Database from 'better-sqlite3'

export type FaultCode =
  | 'folder-unwritable'
  | 'store-locked'
  | 'store-newer'
  | 'store-corrupt'
  | 'store-full'
  | 'store-trouble'
  | 'entry-unreadable'
  | 'entry-refused'
  | 'entry-order'

/**
 * What can go wrong with the store, as a code and the data its sentence needs. Whatever it is, everything stored before
 * is still in the file as it was.
 */
export class StoreFault extends Error {
  readonly code: FaultCode
  readonly data: Record<string, string | number>
  constructor(code: FaultCode, data: Record<string, string | number>) {
    super(`${code} ${JSON.stringify(data)}`)
    this.name = 'StoreFault'
    this.code = code
    this.data = data
  }
}

/** SQLite's primary result codes (sqlite.org/rescode.html); the extended ones begin with them. */
const CODES: [prefix: string, code: FaultCode][] = [
  ['SQLITE_CANTOPEN', 'folder-unwritable'],
  ['SQLITE_READONLY', 'folder-unwritable'],
  ['SQLITE_PERM', 'folder-unwritable'],
  ['SQLITE_AUTH', 'folder-unwritable'],
  ['SQLITE_BUSY', 'store-locked'],
  ['SQLITE_LOCKED', 'store-locked'],
  ['SQLITE_NOTADB', 'store-corrupt'],
  ['SQLITE_CORRUPT', 'store-corrupt'],
  ['SQLITE_FULL', 'store-full'],
]

/** Any error as a StoreFault. */
export const faultOf = (error: unknown, file: string): StoreFault => {
  if (error instanceof StoreFault) return error
  const at = { folder: dirname(file), file }
  const why = error instanceof Error ? error.message : String(error)
  if (!(error instanceof Database.SqliteError)) return new StoreFault('store-trouble', { ...at, why })
  const code = CODES.find(([prefix]) => error.code.startsWith(prefix))?.[1] ?? 'store-trouble'
  return new StoreFault(code, { ...at, why })
}

/** Runs `work`; what it throws comes out as a StoreFault. */
export const guarded = <T>(file: string, work: () => T): T => {
  try {
    return work()
  } catch (error) {
    throw faultOf(error, file)
  }
}
