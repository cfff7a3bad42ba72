import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Chat, Message, User } from 'grammy/types'
import { afterEach, beforeEach } from 'vitest'
import type { Book } from '../../src/book/book.ts'
import { type House, openHouse } from '../../src/compose.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import type { TelegramOptions } from '../../src/edges/telegram/options.ts'
import { runTelegram, type TelegramRun } from '../../src/edges/telegram/telegram.ts'
import { type BotApi, startBotApi } from '../support/botApi.ts'
import { alone, INES, TOKEN, TOMAS, YARD } from './telegramBench.ts'

// The whole house behind the channel: its own reading, settling, book and words.

export let api: BotApi
export let folder: string
export let house: House
export let run: TelegramRun
const logger = makeLogger(TOKEN, undefined, 'fatal')

export const start = (more: Partial<TelegramOptions> = {}): void => {
  house = openHouse({ data: folder, zone: 'America/Chicago' }, { firstOwns: false, passing: true })
  const { core, say, store, pictures } = house
  run = runTelegram({
    handle: core.handle,
    book: () => core.book('home'),
    say,
    log: store,
    pictures,
    token: TOKEN,
    apiRoot: api.root,
    ownerCode: 'gatepost',
    zone: 'America/Chicago',
    folder,
    logger,
    pollSeconds: 5,
    retryMs: 20,
    ...more,
  })
  run.done.catch(() => undefined)
}
export const stop = async (): Promise<void> => {
  await run.stop()
  house.store.close()
}
export const book = (): Book => house.core.book('home')
export const texts = (chat: Chat): string[] => api.shown(chat.id).map(m => m.text)
export const quiet = (): Promise<void> =>
  api.until('all is worked through', () => api.pending().length === 0 && house.store.queued('telegram').length === 0)
/** Sends, and waits until all is worked through; gives what the bot said meanwhile in that chat. */
export const tell = async (chat: Chat, from: User, text: string, more?: Partial<Message>): Promise<{ said: string[]; id: number }> => {
  const before = api.shown(chat.id).length
  const m = api.say(chat, from, text, more)
  await quiet()
  return { said: texts(chat).slice(before), id: m.message_id }
}
export const ines = (text: string, more?: Partial<Message>) => tell(alone(INES), INES, text, more)
export const yard = (from: User, text: string, more?: Partial<Message>) => tell(YARD, from, text, more)

/** A farm with an owner, a crew member, their group, and a pile being filled. */
export const settleIn = async (): Promise<void> => {
  await ines('gatepost')
  const code = /\b[A-HJ-NP-Z2-9]{8}\b/.exec((await ines('/invite')).said[0]!)![0]
  await tell(alone(TOMAS), TOMAS, `/start ${code}`)
  await yard(INES, '/here')
  await ines('new pile called creek, 40 by 120')
}

/** A server and an empty book for each test of the file. */
export const useHouse = (me: { can_read_all_group_messages?: boolean } = {}): void => {
  beforeEach(async () => {
    api = await startBotApi(TOKEN, { id: 700123456, username: 'creekhand_bot', ...me })
    folder = mkdtempSync(join(tmpdir(), 'pilehand-telegram-'))
    start()
  })
  afterEach(async () => {
    await stop()
    await api.close()
    rmSync(folder, { recursive: true, force: true })
  })
}
