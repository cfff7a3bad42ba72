import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { faultOf, StoreFault } from './fault.ts'

/** How long to wait for another process to go: a service manager may start the new one while the old one closes. */
const GRACE_MS = 1000

/**
 * Makes this process the only one on a store. The lock is SQLite's exclusive lock on an empty database of its own, held
 * by an open transaction; the operating system drops it when the process ends, however it ends.
 *
 * Beware: POSIX drops a process's locks on a file when *any* of its handles on that file closes. Nothing else in this
 * process may open the lock file, not even to copy it.
 *
 * @throws StoreFault `store-locked` where another process (or this one) has the store open; `folder-unwritable` where the file can't be made.
 */
export const lockStore = (file: string): (() => void) => {
  let db: Database.Database | undefined
  try {
    db = new Database(file, { timeout: GRACE_MS })
    db.exec('BEGIN EXCLUSIVE')
    const held = db
    return () => held.close()
  } catch (error) {
    db?.close()
    const fault = faultOf(error, file)
    throw fault.code === 'store-locked' ? new StoreFault('store-locked', { folder: dirname(file) }) : fault
  }
}
