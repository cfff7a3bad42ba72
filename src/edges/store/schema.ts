import { dirname } from 'node:path'
import Database from 'better-sqlite3'
import { faultOf, StoreFault } from './fault.ts'

/** Marks the file as this program's, so that another program's database is never migrated by mistake ("PHAN"). */
const APPLICATION_ID = 0x5048414e

/**
 * The steps from an empty file to today's tables. A step that has been released is never changed; the file's
 * `user_version` is the number of steps it has taken.
 */
export const MIGRATIONS: string[] = [
  `
  create table message (
    seq integer primary key,
    channel text not null, farm text not null, chat text not null, id text not null, edit text not null,
    raw text not null, taken_at text not null,
    result text, settled_at text,
    unique (channel, farm, chat, id, edit)
  ) strict;
  create index message_unsettled on message (seq) where result is null;

  create table entry (
    seq integer primary key,
    farm text not null, n integer not null check (n > 0), body text not null,
    unique (farm, n)
  ) strict;
  create trigger entry_is_never_changed before update on entry begin select raise(abort, 'the log is append-only'); end;
  create trigger entry_is_never_removed before delete on entry begin select raise(abort, 'the log is append-only'); end;

  create table outbox (
    id integer primary key autoincrement,
    channel text not null, farm text not null, chat text not null, reply text not null, queued_at text not null,
    cause text, instead text,
    tries integer not null default 0, last_why text,
    sent_at text, message_id text,
    dropped_at text
  ) strict;
  create index outbox_queued on outbox (channel, id) where sent_at is null and dropped_at is null;
  create index outbox_sent on outbox (channel, chat, message_id) where message_id is not null;
  `,
]

const number = (db: Database.Database, pragma: string): number => Number(db.pragma(pragma, { simple: true }))

/** Refuses, before anything is written, what is not ours or is from a version that knows more than this one. */
const inspect = (db: Database.Database, file: string): void => {
  const tables = db.prepare('select count(*) from sqlite_schema').pluck().get() as number
  if (tables > 0 && number(db, 'application_id') !== APPLICATION_ID)
    throw new StoreFault('store-corrupt', { folder: dirname(file), file, why: 'it belongs to another program' })
  const found = number(db, 'user_version')
  if (found > MIGRATIONS.length) throw new StoreFault('store-newer', { folder: dirname(file), found, known: MIGRATIONS.length })
}

const migrate = (db: Database.Database): void => {
  for (let step = number(db, 'user_version'); step < MIGRATIONS.length; step++) {
    db.transaction(() => {
      db.exec(MIGRATIONS[step]!)
      db.pragma(`application_id = ${APPLICATION_ID}`)
      db.pragma(`user_version = ${step + 1}`)
    })()
  }
}

/**
 * Opens the book's file, making or upgrading its tables. The pragmas belong to the connection, not to the file, so they
 * are set at every open. FULL makes a commit survive a power cut (with NORMAL the last ones may be lost under WAL).
 *
 * @throws StoreFault
 */
export const openDatabase = (file: string, passing = false): Database.Database => {
  let db: Database.Database | undefined
  try {
    db = new Database(file)
    db.pragma('busy_timeout = 5000')
    inspect(db, file)
    db.pragma('journal_mode = WAL')
    // a store that is thrown away at the end need not wait for the disk
    db.pragma(passing ? 'synchronous = OFF' : 'synchronous = FULL')
    db.pragma('foreign_keys = ON')
    migrate(db)
    return db
  } catch (error) {
    db?.close()
    throw faultOf(error, file)
  }
}
