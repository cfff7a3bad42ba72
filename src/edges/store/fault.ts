import Database from 'better-sqlite3'

export type FaultCode =
  | 'store-folder'
  | 'store-locked'
  | 'store-newer'
  | 'store-broken'
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
  ['SQLITE_CANTOPEN', 'store-folder'],
  ['SQLITE_READONLY', 'store-folder'],
  ['SQLITE_PERM', 'store-folder'],
  ['SQLITE_AUTH', 'store-folder'],
  ['SQLITE_BUSY', 'store-locked'],
  ['SQLITE_LOCKED', 'store-locked'],
  ['SQLITE_NOTADB', 'store-broken'],
  ['SQLITE_CORRUPT', 'store-broken'],
  ['SQLITE_FULL', 'store-full'],
]

/** Any error as a StoreFault. */
export const faultOf = (error: unknown, file: string): StoreFault => {
  if (error instanceof StoreFault) return error
  const why = error instanceof Error ? error.message : String(error)
  if (!(error instanceof Database.SqliteError)) return new StoreFault('store-trouble', { file, why })
  const code = CODES.find(([prefix]) => error.code.startsWith(prefix))?.[1] ?? 'store-trouble'
  return new StoreFault(code, { file, why })
}

/** Runs `work`; what it throws comes out as a StoreFault. */
export const guarded = <T>(file: string, work: () => T): T => {
  try {
    return work()
  } catch (error) {
    throw faultOf(error, file)
  }
}
