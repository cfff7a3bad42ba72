import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Chat, User } from 'grammy/types'
import { afterEach, beforeEach, expect, it } from 'vitest'
import { eventsOf, pileState } from '../../src/book/book.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { openStore, type Store } from '../../src/edges/store.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import { runTelegram, type TelegramRun } from '../../src/edges/telegram/telegram.ts'
import { answer, pilesFor } from '../../src/figures/asked/answer.ts'
import { type Core, makeCore } from '../../src/pipeline.ts'
import { makeSayer } from '../../src/saying/say.ts'
import { type BotApi, startBotApi } from '../support/botApi.ts'

// The whole house behind the channel: its own reading, settling and book.

const TOKEN = '700123456:AAEhBOweik9ai2o01-Sample_token_of_tests'
const INES: User = { id: 501, is_bot: false, first_name: 'Ines', language_code: 'en' }
const chat: Chat = { id: 501, type: 'private', first_name: 'Ines' }

let api: BotApi
let folder: string
let store: Store
let core: Core
let run: TelegramRun

const start = (): void => {
  store = openStore(folder, { durable: ['telegram'] })
  const say = makeSayer(loadPrompts())
  core = makeCore({ log: store, zone: 'America/Chicago', say, answer, pilesFor, firstOwns: false })
  run = runTelegram({
    handle: core.handle,
    book: () => core.book('home'),
    say,
    log: store,
    token: TOKEN,
    apiRoot: api.root,
    ownerCode: 'gatepost',
    zone: 'America/Chicago',
    folder,
    logger: makeLogger(TOKEN, undefined, 'fatal'),
    pollSeconds: 5,
  })
}
const tell = async (text: string): Promise<string> => {
  const before = api.shown(501).length
  api.say(chat, INES, text)
  await api.until(`"${text}" is answered`, () => api.shown(501).length > before)
  return api.shown(501).at(-1)!.text
}

beforeEach(async () => {
  api = await startBotApi(TOKEN, { id: 700123456, username: 'creekhand_bot' })
  folder = mkdtempSync(join(tmpdir(), 'pilehand-telegram-'))
  start()
})
afterEach(async () => {
  await run.stop()
  store.close()
  await api.close()
  rmSync(folder, { recursive: true, force: true })
})

it('an owner joins, begins a pile, is asked, taps, edits, and finds it all again after a restart', async () => {
  await tell('gatepost')
  await tell('new pile called creek, 40 by 120')
  expect(await tell('put some loads of corn on creek')).toContain('?')
  const question = api.shown(501).at(-1)!
  api.press(chat, INES, question.message_id, '6')
  await api.until('the loads are in the book', () => eventsOf(core.book('home'), 'load').length === 1)

  expect(eventsOf(core.book('home'), 'load')[0]?.event).toMatchObject({ pile: 'creek', crop: 'corn silage', count: 6 })
  await api.until(
    'the question has become its answer',
    () =>
      api
        .shown(501)
        .find(m => m.message_id === question.message_id)
        ?.text.includes('6 loads') === true,
  )
  expect(core.book('home').questions.size).toBe(0)

  const second = api.say(chat, INES, 'put 5 loads corn on creek')
  await api.until('5 more are in the book', () => eventsOf(core.book('home'), 'load').length === 2)
  api.edit(chat, INES, second.message_id, 'put 4 loads corn on creek')
  await api.until('5 are 4', () => eventsOf(core.book('home'), 'load').some(l => l.event.count === 4))
  expect(eventsOf(core.book('home'), 'load').map(l => l.event.count)).not.toContain(5)

  const events = core.book('home').logged.length
  await api.until('all is confirmed', () => api.pending().length === 0 && store.queued('telegram').length === 0)
  await run.stop()
  store.close()
  start()
  expect(await tell("how's creek")).toMatch(/creek/i)
  expect(core.book('home').logged).toHaveLength(events)
  expect(pileState(core.book('home'), 'creek')?.loads.at(-1)?.event.count).toBe(4)
})
