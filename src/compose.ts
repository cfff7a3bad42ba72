import { existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { apply, type Book, setting } from './book/book.ts'
import { type Body, ENTRY_VERSION } from './book/entries.ts'
import type { Datum } from './book/questions.ts'
import { type Config, readConfig } from './config.ts'
import { openPictures, type Pictures } from './edges/pictures.ts'
import { loadPrompts } from './edges/prompts.ts'
import { openStore, type Store } from './edges/store.ts'
import { answer, pilesFor } from './figures/asked/answer.ts'
import { type Core, type CoreParts, makeCore } from './pipeline.ts'
import type { Listener, Result } from './ports.ts'
import { makeSayer, type Say } from './saying/say.ts'
import { isZone } from './units/calendar.ts'
import { checkPlan } from './watch/checks.ts'

/** One process keeps one farm's book, unless the line channel names others. */
export const FARM = 'home'

export interface Fault {
  code: string
  data: Record<string, Datum>
}

/** A fault that has a sentence of its own (the store's, the channel's); undefined for a mistake of the program. */
export const faultOf = (error: unknown): Fault | undefined => {
  const f = error as Partial<Fault> | undefined
  return error instanceof Error && typeof f?.code === 'string' && f.data !== undefined ? { code: f.code, data: f.data } : undefined
}

export const makeSay = (): Say => makeSayer(loadPrompts())

/** One line that says what is wrong and what to do, and the end. */
export const leave = ({ code, data }: Fault): never => {
  process.stderr.write(`${makeSay()({ code, data }, 'en')}\n`)
  process.exit(2)
}

/** The environment, with what the command line says instead; leaves where one of them is wrong. */
export const settings = (env: Record<string, string | undefined>, zone?: string, data?: string): Config => {
  const checked = readConfig(env)
  if (!checked.ok) return leave(checked)
  if (zone !== undefined && !isZone(zone)) return leave({ code: 'zone-unknown', data: { zone } })
  return { ...checked.config, ...(zone !== undefined && { zone }), ...(data !== undefined && { data }) }
}

/** Work on a temporary folder, which is gone afterwards however it ends. */
export const inPassing = async (work: (folder: string) => Promise<void> | void): Promise<void> => {
  const folder = mkdtempSync(join(tmpdir(), 'pilehand-'))
  const remove = (): void => rmSync(folder, { recursive: true, force: true })
  // Also where the process is left in the middle of the work.
  process.once('exit', remove)
  try {
    await work(folder)
  } finally {
    process.off('exit', remove)
    remove()
  }
}

export interface House {
  say: Say
  store: Store
  core: Core
  pictures: Pictures
  /** What messages came to that an earlier process had stored, but not settled, when it ended. */
  recovered: Result[]
}

export interface HouseOptions {
  /** The first sender owns the farm: for channels that know no members of their own. */
  firstOwns: boolean
  passing?: boolean
  /** What a weather feed warned of. */
  alerts?: CoreParts['alerts']
}

/**
 * Opens the book and puts the house on it. What a crash left unsettled is settled first: nothing that was said since
 * may get in before it.
 *
 * @throws StoreFault
 */
export const openHouse = (config: Config, o: HouseOptions): House => {
  const say = makeSay()
  const store = openStore(config.data, { durable: ['telegram', 'sms'], passing: o.passing })
  const pictures = openPictures(config.data)
  try {
    const core = makeCore({
      log: store,
      zone: config.zone,
      say,
      answer: withWatch(pictures),
      pilesFor,
      firstOwns: o.firstOwns,
      alerts: o.alerts,
    })
    return { say, store, core, pictures, recovered: recover(store, core) }
  } catch (error) {
    store.close()
    throw error
  }
}

const recover = (store: Store, core: Core): Result[] => {
  const results: Result[] = []
  for (const message of store.unsettled()) {
    // a guess of the second reader that was cut off is no message
    if (message.edit.endsWith('?')) continue
    // a voice note waits for its channel, which knows where the sound is
    if (message.voice && message.text === '') continue
    try {
      results.push(core.handle(message))
    } catch (error) {
      if (faultOf(error)) throw error
      // The message that brought the program down must not do so at every start. It stays in the store.
      process.stderr.write(`A message stored earlier could not be settled (${message.channel}, ${message.id}): ${String(error)}\n`)
    }
  }
  return results
}

/**
 * Who hears this farm's voice notes. What goes wrong later is written to the owner's log, and the notes are answered with it.
 *
 * @throws EarFault where the model that was chosen is not there
 */
export const listenerFor = async (config: Config, { core, store }: House): Promise<Listener> => {
  const { makeEar, makeListener, makeSpeaker } = await import('./edges/voice.ts')
  const trouble = (why: string): void => void process.stderr.write(`Voice notes: ${why}\n`)
  return makeListener({
    ear: makeEar(config.ear, config.data),
    handle: core.handle,
    book: core.book,
    log: store,
    folder: join(config.data, 'voice', 'waiting'),
    trouble,
    ...(config.speak && { speak: makeSpeaker(join(config.data, 'voice', 'spoken')) }),
  })
}

/** The watch plans the walks of the covers, so it says when the next one is; the pictures lie beside the book. */
const withWatch =
  (pictures: Pictures): typeof answer =>
  (book, ask, now) =>
    answer(book, ask, now, { nextCheck: pile => checkPlan(book, pile)?.due, pictures: pictures.of })

/** A house that knows no farm and remembers nothing. */
const bareCore = (config: Config): Core => {
  const log = {
    farms: () => [],
    entries: () => [],
    take: () => ({ fresh: true }),
    settle: () => undefined,
    append: () => undefined,
    unsettled: () => [],
    close: () => undefined,
  }
  return makeCore({ log, zone: config.zone, say: makeSay(), answer, pilesFor, firstOwns: true })
}

/** The farm's own names where its book can be had; else a house without names, and a note that says why. */
export const openForReading = (config: Config): { core: Core; note?: string; close(): void } => {
  const bare = (why: string) => ({ core: bareCore(config), note: `${why}: read without the names of a farm.`, close: () => undefined })
  if (!existsSync(join(config.data, 'pilehand.db'))) return bare(`There is no book in ${config.data}`)
  try {
    const { core, store } = openHouse(config, { firstOwns: true })
    return { core, close: store.close }
  } catch (error) {
    if (faultOf(error)?.code === 'store-locked') return bare(`The book in ${config.data} is open elsewhere`)
    throw error
  }
}

/** Writes lines into the farm's log that no message caused. */
const enter = ({ store, core }: House, channel: string, bodies: Body[]): void => {
  const book = core.book(FARM)
  const at = new Date().toISOString()
  const entries = bodies.map((body, k) => ({ v: ENTRY_VERSION, n: book.last + 1 + k, at, by: 'house', body }))
  store.append(FARM, channel, entries, [])
  for (const e of entries) apply(book, e)
}

/** The code that the owner joins with, made at the first start and kept in the book. */
export const ownerCode = (house: House, makeCode: () => string): string => {
  const kept = setting<string>(house.core.book(FARM), 'ownerCode', '')
  if (kept !== '') return kept
  const code = makeCode()
  enter(house, 'telegram', [{ kind: 'setting', name: 'ownerCode', value: code }])
  return code
}

/**
 * Whoever tried the book at the console first owns it there. In the chat the owner's place must be free for the one
 * who joins with the code, and words to the owner must not go to a console that nobody watches.
 */
export const freeOwnersPlace = (house: House, person: string): void => {
  if (house.core.book(FARM).members.get(person)?.role === 'owner') enter(house, 'telegram', [{ kind: 'member', person, role: 'crew' }])
}

/** The farm's place as its owner set it. */
export const farmPlace = (book: Book): { lat: number; lon: number } | undefined => {
  const lat = setting(book, 'lat', Number.NaN)
  const lon = setting(book, 'lon', Number.NaN)
  return Number.isNaN(lat) || Number.isNaN(lon) ? undefined : { lat, lon }
}
