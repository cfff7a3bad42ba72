import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Chat, Message, User } from 'grammy/types'
import { afterEach, beforeEach, expect } from 'vitest'
import type { Message as Said } from '../../src/book/questions.ts'
import { openPictures } from '../../src/edges/pictures.ts'
import { openStore, type Store } from '../../src/edges/store.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import type { Core, TelegramOptions } from '../../src/edges/telegram/options.ts'
import { runTelegram, type TelegramRun } from '../../src/edges/telegram/telegram.ts'
import type { Lang } from '../../src/ports.ts'
import { type BotApi, startBotApi } from '../support/botApi.ts'
import { tinyCore } from './telegramCore.ts'

// All of it is real grammY over real HTTP against a stand-in of the Bot API that keeps its rules.

export const TOKEN = '700123456:AAEhBOweik9ai2o01-Sample_token_of_tests'
const me = { id: 700123456, username: 'creekhand_bot' }
export const user = (id: number, first_name: string, language_code = 'en'): User => ({ id, is_bot: false, first_name, language_code })
export const INES = user(501, 'Ines')
export const TOMAS = user(502, 'Tomás', 'es-MX')
export const NOBODY = user(666, 'Nobody')
export const alone = (u: User): Chat => ({ id: u.id, type: 'private', first_name: u.first_name })
export const YARD: Chat = { id: -1001, type: 'supergroup', title: 'yard' }

export let api: BotApi
export let folder: string
export let store: Store
export let core: ReturnType<typeof tinyCore>
export let run: TelegramRun
export let logged: string[]
const runs: TelegramRun[] = []

/** The store and its core, without a channel. */
export const open = (): void => {
  store = openStore(folder, { durable: ['telegram'], passing: true })
  core = tinyCore(store)
}
export const start = (more: Partial<TelegramOptions> | ((core: Core) => Partial<TelegramOptions>) = {}): void => {
  open()
  run = runTelegram({
    ...core,
    log: store,
    token: TOKEN,
    apiRoot: api.root,
    ownerCode: 'gatepost 9',
    zone: 'America/Chicago',
    folder,
    pictures: openPictures(folder),
    logger: makeLogger(TOKEN, { write: line => logged.push(line) }, 'trace'),
    pollSeconds: 5,
    retryMs: 20,
    ...(typeof more === 'function' ? more(core) : more),
  })
  run.done.catch(() => undefined)
  runs.push(run)
}
export const stop = async (): Promise<void> => {
  await run.stop()
  store.close()
  runs.splice(runs.indexOf(run), 1)
}
export const texts = (chat: Chat): string[] => api.shown(chat.id).map(m => m.text)
export const last = (chat: Chat): string | undefined => texts(chat).at(-1)
/** Sends, and waits for the bot's next word in that chat. */
export const tell = async (chat: Chat, from: User, text: string, more?: Partial<Message>): Promise<string> => {
  const before = api.shown(chat.id).length
  api.say(chat, from, text, more)
  await api.until(`"${text}" is answered`, () => api.shown(chat.id).length > before)
  return last(chat)!
}
/** All that was sent to the bot has been worked through and confirmed. */
export const quiet = (): Promise<void> =>
  api.until('all is worked through', () => api.pending().length === 0 && store.queued('telegram').length === 0)
export const line = (code: string, data: Said['data'] = {}, lang: Lang = 'en'): string => core.say({ code, data }, lang)
export const codeIn = (text: string): string | undefined => /\b[A-HJ-NP-Z2-9]{8}\b/.exec(text)?.[0]
export const joinOwner = (): Promise<string> => tell(alone(INES), INES, 'gatepost 9')
export const joinCrew = async (): Promise<void> => {
  const code = codeIn(await tell(alone(INES), INES, '/invite'))
  await tell(alone(TOMAS), TOMAS, code!)
}

/** A server, an empty book and a log for each test of the file. */
export const useBench = (): void => {
  beforeEach(async () => {
    api = await startBotApi(TOKEN, me)
    folder = mkdtempSync(join(tmpdir(), 'pilehand-telegram-'))
    logged = []
  })
  afterEach(async () => {
    for (const r of runs.splice(0)) await r.stop()
    store?.close()
    await api.close()
    rmSync(folder, { recursive: true, force: true })
    // Whatever happened, the token is in no line of the log.
    for (const line of logged) expect(line).not.toContain(TOKEN.split(':')[1])
  })
}
