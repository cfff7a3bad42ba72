import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Chat, Message, User } from 'grammy/types'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Message as Message_ } from '../../src/book/questions.ts'
import { openStore, type Store, StoreFault } from '../../src/edges/store.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import type { TelegramOptions } from '../../src/edges/telegram/options.ts'
import { runTelegram, type TelegramRun } from '../../src/edges/telegram/telegram.ts'
import type { Lang } from '../../src/ports.ts'
import { type BotApi, startBotApi } from '../support/botApi.ts'
import { tinyCore } from './telegramCore.ts'

// All of it is real grammY over real HTTP against a stand-in of the Bot API that keeps its rules.

const TOKEN = '700123456:AAEhBOweik9ai2o01-Sample_token_of_tests'
const me = { id: 700123456, username: 'creekhand_bot' }
const user = (id: number, first_name: string, language_code = 'en'): User => ({ id, is_bot: false, first_name, language_code })
const INES = user(501, 'Ines')
const TOMAS = user(502, 'Tomás', 'es-MX')
const NOBODY = user(666, 'Nobody')
const alone = (u: User): Chat => ({ id: u.id, type: 'private', first_name: u.first_name })
const YARD: Chat = { id: -1001, type: 'supergroup', title: 'yard' }

let api: BotApi
let folder: string
let store: Store
let core: ReturnType<typeof tinyCore>
let run: TelegramRun
let logged: string[]
const runs: TelegramRun[] = []

const start = (more: Partial<TelegramOptions> = {}): TelegramRun => {
  store = openStore(folder, { durable: ['telegram'] })
  core = tinyCore(store)
  const logger = makeLogger(TOKEN, { write: line => logged.push(line) }, 'trace')
  run = runTelegram({
    ...core,
    log: store,
    token: TOKEN,
    apiRoot: api.root,
    ownerCode: 'gatepost 9',
    zone: 'America/Chicago',
    logger,
    pollSeconds: 5,
    retryMs: 20,
    ...more,
  })
  run.done.catch(() => undefined)
  runs.push(run)
  return run
}
const stop = async (): Promise<void> => {
  await run.stop()
  store.close()
  runs.splice(runs.indexOf(run), 1)
}
const texts = (chat: Chat): string[] => api.shown(chat.id).map(m => m.text)
const last = (chat: Chat): string | undefined => texts(chat).at(-1)
/** Sends, and waits for the bot's next word in that chat. */
const tell = async (chat: Chat, from: User, text: string, more?: Partial<Message>): Promise<string> => {
  const before = api.shown(chat.id).length
  api.say(chat, from, text, more)
  await api.until(`"${text}" is answered`, () => api.shown(chat.id).length > before)
  return last(chat)!
}
/** All that was sent to the bot has been worked through and confirmed. */
const quiet = (): Promise<void> =>
  api.until('all is worked through', () => api.pending().length === 0 && store.queued('telegram').length === 0)
const line = (code: string, data: Message_['data'] = {}, lang: Lang = 'en'): string => core.say({ code, data }, lang)
const codeIn = (text: string): string | undefined => /\b[A-HJ-NP-Z2-9]{8}\b/.exec(text)?.[0]
const joinOwner = (): Promise<string> => tell(alone(INES), INES, 'gatepost 9')
const joinCrew = async (): Promise<void> => {
  const code = codeIn(await tell(alone(INES), INES, '/invite'))
  await tell(alone(TOMAS), TOMAS, code!)
}

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

describe('coming in', () => {
  it('makes the first person with the code the owner, and nobody after', async () => {
    start()
    expect(await tell(alone(NOBODY), NOBODY, 'hello')).toBe(line('telegram-no-owner'))
    expect(await joinOwner()).toBe(line('telegram-owner', { name: 'Ines' }))
    expect(core.book().members.get('501')).toEqual({ person: '501', role: 'owner', name: 'Ines', lang: 'en', address: '501' })
    expect(await tell(alone(TOMAS), TOMAS, 'Gatepost 9')).toBe(line('telegram-stranger', {}, 'es'))
    expect(core.book().members.has('502')).toBe(false)
    expect(await tell(alone(INES), INES, 'GATEPOST 9')).toBe(line('telegram-already'))
  })

  it('tells strangers one line and nothing else, ever', async () => {
    start()
    await joinOwner()
    expect(await tell(alone(NOBODY), NOBODY, 'what is on the piles')).toBe(line('telegram-stranger'))
    for (const text of ['please', '/start', '/help', '/invite', '/here', 'gatepost']) api.say(alone(NOBODY), NOBODY, text)
    api.edit(alone(NOBODY), NOBODY, 3, 'I changed it')
    await quiet()
    await stop()
    start()
    api.say(alone(NOBODY), NOBODY, 'still there?')
    await quiet()
    expect(texts(alone(NOBODY))).toHaveLength(1)
    expect(core.heard).toEqual([])
    expect(core.notes()).toEqual([])
  })

  it('lets one person in for one code, for a week', async () => {
    let now = '2026-09-14T15:00:00.000Z'
    start({ now: () => now })
    await joinOwner()
    const first = await tell(alone(INES), INES, '/invite')
    const code = codeIn(first)!
    expect(first).toBe(line('telegram-invite', { code, until: '2026-09-21', link: `https://t.me/creekhand_bot?start=${code}` }))
    expect(await tell(alone(TOMAS), TOMAS, `/start ${code}`)).toBe(line('telegram-crew', { name: 'Tomás' }, 'es'))
    expect(core.book().members.get('502')).toMatchObject({ role: 'crew', name: 'Tomás', lang: 'es', address: '502' })
    expect(await tell(alone(NOBODY), NOBODY, code)).toBe(line('telegram-code-spent'))
    expect(await tell(alone(TOMAS), TOMAS, '/invite')).toBe(line('refused-owner', {}, 'es'))

    const old = codeIn(await tell(alone(INES), INES, '/invite'))!
    now = '2026-09-21T15:00:00.001Z'
    const late = user(503, 'Late')
    expect(await tell(alone(late), late, old.toLowerCase())).toBe(line('telegram-code-spent'))
    expect(core.book().members.has('503')).toBe(false)
  })

  it('works in a group only where the owner said so', async () => {
    start()
    await joinOwner()
    await joinCrew()
    api.say(YARD, INES, 'put 7 loads on creek')
    expect(await tell(YARD, TOMAS, '/here')).toBe(line('refused-owner', {}, 'es'))
    expect(await tell(YARD, INES, '@creekhand_bot are you there')).toBe(line('telegram-not-here'))
    expect(await tell(YARD, INES, '/invite')).toBe(line('telegram-invite-private'))
    expect(core.notes()).toEqual([])
    expect(await tell(YARD, INES, '/here@creekhand_bot')).toBe(line('telegram-here-hidden', { name: '@creekhand_bot' }))
    expect(core.book().settings.get('crewChat')).toBe('-1001')
    expect(await tell(YARD, TOMAS, 'put 7 loads on creek')).toBe('Noted: put 7 loads on creek')
    expect(api.calls.findLast(c => c.method === 'sendMessage')!.payload.reply_parameters).toMatchObject({
      allow_sending_without_reply: true,
    })
    // A stranger in the farm's own group hears one line, where they spoke to us, and is never put in the book.
    api.say(YARD, NOBODY, 'put 90 loads on creek')
    expect(await tell(YARD, NOBODY, '@creekhand_bot how is creek')).toBe(line('telegram-stranger'))
    api.say(YARD, NOBODY, '@creekhand_bot how is creek')
    api.say(YARD, TOMAS, '/here@another_bot')
    await quiet()
    expect(texts(YARD).filter(t => t === line('telegram-stranger'))).toHaveLength(1)
    expect(core.notes()).toEqual(['put 7 loads on creek'])
  })

  it('follows a group that gets a new number', async () => {
    start()
    await joinOwner()
    await tell(YARD, INES, '/here')
    const NEW: Chat = { id: -1002, type: 'supergroup', title: 'yard' }
    api.say(YARD, INES, '', { migrate_to_chat_id: -1002 } as Partial<Message>)
    expect(await tell(NEW, INES, 'first on creek')).toBe('Noted: first on creek')
    expect(core.book().settings.get('crewChat')).toBe('-1002')
    api.say(YARD, INES, 'into the old one')
    await quiet()
    expect(core.notes()).toEqual(['first on creek'])
    // A word already under way to the old number arrives at the new one.
    api.fault('sendMessage', { code: 400, description: 'Bad Request: group chat was upgraded to a supergroup chat', migrateTo: -1002 })
    store.append('home', 'telegram', [], [{ to: '-1001', text: 'for the yard' }])
    run.wake()
    await api.until('it is there', () => last(NEW) === 'for the yard')
  })
})

describe('what the house hears', () => {
  beforeEach(async () => {
    start()
    await joinOwner()
  })
  const heard = () => core.heard.at(-1)!

  it('text, with its own time and number', async () => {
    const m = api.say(alone(INES), INES, 'hail last night', { date: 1789398300 })
    await quiet()
    expect(heard()).toEqual({
      channel: 'telegram',
      farm: 'home',
      chat: '501',
      private: true,
      from: '501',
      id: String(m.message_id),
      edit: '',
      at: '2026-09-14T15:05:00.000Z',
      text: 'hail last night',
    })
  })

  it('captions, and says what a picture without one needs', async () => {
    const photo = [{ file_id: 'f', file_unique_id: 'f', width: 90, height: 90 }]
    api.say(alone(INES), INES, '', { photo, caption: 'coons got in creek' } as Partial<Message>)
    await quiet()
    expect(heard()).toMatchObject({ text: 'coons got in creek', photo: true })
    const count = core.heard.length
    expect(await tell(alone(INES), INES, '', { photo } as Partial<Message>)).toBe(line('telegram-words-only'))
    // An album's other pictures belong to the caption of the first.
    api.say(alone(INES), INES, '', { photo, caption: 'and here', media_group_id: 'a' } as Partial<Message>)
    api.say(alone(INES), INES, '', { photo, media_group_id: 'a' } as Partial<Message>)
    api.say(alone(INES), INES, '', { pinned_message: { message_id: 1, date: 0, chat: alone(INES) } } as Partial<Message>)
    await quiet()
    expect(core.heard).toHaveLength(count + 1)
    expect(texts(alone(INES)).filter(t => t === line('telegram-words-only'))).toHaveLength(1)
  })

  it('nothing from other bots, nor in the name of a channel or of the group itself', async () => {
    await tell(YARD, INES, '/here')
    const count = core.heard.length
    api.say(YARD, { ...INES, is_bot: true }, 'put 7 loads on creek')
    api.say(YARD, INES, 'put 8 loads on creek', { sender_chat: YARD } as Partial<Message>)
    await quiet()
    expect(core.heard).toHaveLength(count)
  })

  it('commands as words, mentions as being spoken to', async () => {
    await tell(YARD, INES, '/here')
    await tell(YARD, INES, '/days_left creek')
    expect(heard()).toMatchObject({ text: 'days left creek', addressed: true, private: false })
    await tell(YARD, INES, '@creekhand_bot, how is creek')
    expect(heard()).toMatchObject({ text: 'how is creek', addressed: true })
    await tell(YARD, INES, 'fed 11k off creek')
    expect(heard().addressed).toBeUndefined()
    await tell(alone(INES), INES, '/start')
    expect(heard().text).toBe('help')
  })

  it('replies: to the crew, and through our own words to what they belonged to', async () => {
    const said = api.say(alone(INES), INES, 'put 7 loads on creek')
    await quiet()
    const ours = api.shown(501).at(-1)!
    api.say(alone(INES), INES, 'make that 6', { reply_to_message: said } as Partial<Message>)
    await quiet()
    expect(heard().replyTo).toBe(String(said.message_id))
    api.say(alone(INES), INES, 'no, 5', { reply_to_message: ours } as unknown as Partial<Message>)
    await quiet()
    expect(heard()).toMatchObject({ replyTo: String(said.message_id), addressed: true })
  })

  it('edits: each once, under the number of the first sending', async () => {
    const said = api.say(alone(INES), INES, 'put 7 loads on creek')
    await quiet()
    api.edit(alone(INES), INES, said.message_id, 'put 6 loads on creek')
    api.edit(alone(INES), INES, said.message_id, 'put 5 loads on creek')
    await quiet()
    const [first, a, b] = core.heard
    expect([a!.id, a!.edits, b!.id, b!.edits]).toEqual(Array(4).fill(first!.id))
    expect(new Set([first!.edit, a!.edit, b!.edit]).size).toBe(3)
    expect(core.notes()).toEqual(['put 5 loads on creek'])
    expect(last(alone(INES))).toBe('Changed: put 5 loads on creek')
  })
})

describe('choices', () => {
  let question: { message_id: number }
  beforeEach(async () => {
    start()
    await joinOwner()
    await joinCrew()
    await tell(alone(INES), INES, 'ask creek road mine no the-long-one-behind-the-barn')
    question = api.shown(501).at(-1)!
  })

  it('are buttons, two to a row at most', () => {
    const rows = api.shown(501).at(-1)!.reply_markup!.inline_keyboard
    expect(rows.map(r => r.map(b => b.text))).toEqual([['creek', 'road'], ['mine', 'no'], ['the-long-one-behind-the-barn']])
  })

  it('a tap is the label said, and the answer takes the place of the question', async () => {
    api.press(alone(INES), INES, question.message_id, 'road')
    await api.until('the question is answered', () => last(alone(INES)) === 'Settled on road.')
    await quiet()
    expect(core.heard.at(-1)).toMatchObject({
      text: 'road',
      pick: { question: expect.stringMatching(/^q\d+$/), choice: 1 },
      replyTo: String(question.message_id),
    })
    const shown = api.shown(501).at(-1)!
    expect(shown.message_id).toBe(question.message_id)
    expect(shown.reply_markup).toBeUndefined()
    expect(core.notes()).toEqual(['road'])
  })

  it('a second tap changes nothing', async () => {
    const before = structuredClone(api.shown(501).at(-1)!)
    api.press(alone(INES), INES, question.message_id, 'road')
    const data = before.reply_markup!.inline_keyboard[0]![0] as { callback_data: string }
    api.push({ callback_query: { id: 'late', from: INES, message: before, chat_instance: '1', data: data.callback_data } } as never)
    await api.until('the second tap is answered', () => api.toasts.length === 1)
    await quiet()
    expect(api.toasts).toEqual(['That is settled already.'])
    expect(core.notes()).toEqual(['road'])
    expect(last(alone(INES))).toBe('Settled on road.')
  })

  it('where the house has nothing to add, the label stands below the question', async () => {
    api.press(alone(INES), INES, question.message_id, 'no')
    await api.until('the question is closed', () => last(alone(INES)) === 'Which one?\nno')
    expect(api.shown(501).at(-1)!.reply_markup).toBeUndefined()
  })

  it('a tap that was refused leaves the question standing', async () => {
    api.press(alone(INES), INES, question.message_id, 'mine')
    await api.until('it is refused', () => last(alone(INES)) === 'That is not for you.')
    expect(api.shown(501).find(m => m.message_id === question.message_id)).toMatchObject({ text: 'Which one?', reply_markup: {} })
  })

  it('a question that can not be changed any more is answered anew', async () => {
    api.fault('editMessageText', { code: 400, description: "Bad Request: message can't be edited" })
    api.press(alone(INES), INES, question.message_id, 'creek')
    await api.until('it is answered', () => last(alone(INES)) === 'Settled on creek.')
    expect(api.shown(501).at(-1)!.message_id).not.toBe(question.message_id)
  })

  it('a tap by a stranger, and one where the group is not ours, does nothing', async () => {
    const shown = api.shown(501).at(-1)!
    const data = (shown.reply_markup!.inline_keyboard[0]![0] as { callback_data: string }).callback_data
    api.push({ callback_query: { id: 'x1', from: NOBODY, message: shown, chat_instance: '1', data } } as never)
    api.push({ callback_query: { id: 'x2', from: INES, message: { ...shown, chat: YARD }, chat_instance: '1', data } } as never)
    await quiet()
    expect(core.notes()).toEqual([])
    expect(texts(YARD)).toEqual([])
  })
})

describe('sending', () => {
  beforeEach(async () => {
    start()
    await joinOwner()
  })
  const times = (text: string): number => api.calls.filter(c => c.method === 'sendMessage' && c.payload.text === text).length

  it.each([
    ['429, and waits as long as it is told', { code: 429, description: 'Too Many Requests: retry after 1', retryAfter: 1 }],
    ['500', { code: 500, description: 'Internal Server Error' }],
    ["a gateway's page", { html: 502 }],
    ['a line that breaks', { drop: 'before' }],
  ] as const)('tries again after %s', async (_, fault) => {
    api.fault('sendMessage', fault, fault)
    const from = Date.now()
    api.say(alone(INES), INES, 'one')
    api.say(alone(INES), INES, 'two')
    await api.until('both are there', () => last(alone(INES)) === 'Noted: two')
    await quiet()
    expect(texts(alone(INES)).slice(1)).toEqual(['Noted: one', 'Noted: two'])
    if ('retryAfter' in fault) expect(Date.now() - from).toBeGreaterThanOrEqual(2000)
  })

  it('lets other chats pass while one has to wait', async () => {
    await joinCrew()
    api.fault('sendMessage', { code: 429, description: 'Too Many Requests: retry after 600', retryAfter: 600 })
    api.say(alone(INES), INES, 'waits')
    await api.until('it was tried', () => times('Noted: waits') === 1)
    expect(await tell(alone(TOMAS), TOMAS, 'passes')).toBe('Noted: passes')
    api.say(alone(INES), INES, 'waits behind it')
    expect(await tell(alone(TOMAS), TOMAS, 'passes again')).toBe('Noted: passes again')
    expect(times('Noted: waits behind it')).toBe(0)
    // It is not lost: the next run sends both.
    await stop()
    start()
    await api.until('they are there', () => last(alone(INES)) === 'Noted: waits behind it')
  })

  it('gives up on a person who blocked the bot, and on nobody else', async () => {
    await joinCrew()
    api.block(501)
    api.say(alone(INES), INES, 'unheard')
    expect(await tell(alone(TOMAS), TOMAS, 'heard')).toBe('Noted: heard')
    await quiet()
    expect(times('Noted: unheard')).toBe(1)
    expect(core.notes()).toEqual(['unheard', 'heard'])
    expect(logged.join('')).toContain('blocked by the user')
  })

  it('cuts what is too long for one message at line ends', async () => {
    api.say(alone(INES), INES, 'big')
    await api.until('all of it is there', () => last(alone(INES))?.endsWith('line 899') ?? false)
    await quiet()
    const pieces = texts(alone(INES)).slice(1)
    expect(pieces.length).toBeGreaterThan(1)
    expect(pieces.join('\n')).toBe(Array.from({ length: 900 }, (_, i) => `line ${i}`).join('\n'))
  })

  it('pictures with their caption, again after a fault, and the words alone where the picture is gone', async () => {
    const picture = join(folder, 'pile.png')
    writeFileSync(picture, Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 255]))
    api.fault('sendPhoto', { code: 500, description: 'Internal Server Error' })
    store.append(
      'home',
      'telegram',
      [],
      [
        { to: '501', text: 'Creek from above.', picture, choices: ['again'], question: 'q' },
        { to: '501', text: 'Gone.', picture: join(folder, 'nothing.png') },
        { to: '501', text: 'After.' },
      ],
    )
    run.wake()
    await api.until('the last is there', () => last(alone(INES)) === 'After.')
    const photo = api.shown(501).find(m => m.file)!
    expect([...photo.file!]).toEqual([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 255])
    expect(photo.text).toBe('Creek from above.')
    expect(texts(alone(INES)).slice(1)).toEqual(['Creek from above.', 'Gone.', 'After.'])
    expect(photo.reply_markup?.inline_keyboard[0]?.[0]?.text).toBe('again')
    await quiet()
  })
})

describe('going wrong', () => {
  it('a message that fails is kept, and the others go on', async () => {
    start()
    await joinOwner()
    expect(await tell(alone(INES), INES, 'fail now')).toBe(line('telegram-trouble'))
    expect(await tell(alone(INES), INES, 'then this')).toBe('Noted: then this')
    expect(store.unsettled().map(m => m.text)).toEqual(['fail now'])
  })

  it('what could not be stored stays with Telegram, and what follows does not overtake it', async () => {
    start()
    await joinOwner()
    await stop()
    store = openStore(folder, { durable: ['telegram'] })
    core = tinyCore(store)
    let full = true
    const handle: typeof core.handle = m => {
      if (full && m.text === 'second') throw new StoreFault('store-full', { folder })
      return core.handle(m)
    }
    for (const text of ['first', 'second', 'third']) api.say(alone(INES), INES, text)
    run = runTelegram({
      ...core,
      handle,
      log: store,
      token: TOKEN,
      apiRoot: api.root,
      ownerCode: '',
      zone: 'UTC',
      logger: makeLogger(TOKEN, { write: l => logged.push(l) }),
      pollSeconds: 5,
    })
    await expect(run.done).rejects.toMatchObject({ code: 'store-full' })
    expect(api.pending().map(u => u.message?.text)).toEqual(['first', 'second', 'third'])
    expect(core.notes()).toEqual(['first'])
    store.close()
    full = false
    start()
    await api.until('all are confirmed', () => api.pending().length === 0)
    expect(core.notes()).toEqual(['first', 'second', 'third'])
  })

  it('a second reader of the same bot is fatal, and says so', async () => {
    start()
    await run.started
    await fetch(`${api.root}/bot${TOKEN}/getUpdates`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: '{"timeout":0}',
    })
    await expect(run.done).rejects.toMatchObject({
      code: 'telegram-second-reader',
      data: { why: expect.stringContaining('other getUpdates') },
    })
  })

  it('a token that never was, and one taken back, are fatal', async () => {
    start({ token: '700123456:AAEhBOweik9ai2o01-Another_token_of_test' })
    await expect(run.done).rejects.toMatchObject({ code: 'telegram-token-refused' })
    store.close()
    start()
    await run.started
    api.revoke()
    api.say(alone(INES), INES, 'wakes the poll')
    const error = await run.done.then(
      () => undefined,
      (e: Error) => e,
    )
    expect(error).toMatchObject({ code: 'telegram-token-refused' })
    expect(JSON.stringify(error) + error?.stack + String(error?.cause)).not.toContain(TOKEN)
  })

  it('no line at the start: it tries until there is one, and writes no token in the log', async () => {
    api.fault('getMe', { drop: 'before' }, { html: 502 })
    start()
    await run.started
    expect(await joinOwner()).toBe(line('telegram-owner', { name: 'Ines' }))
    expect(logged.join('')).toContain('Telegram could not be reached')
  })

  it('an error with the address in it loses the token on the way to the log', () => {
    const lines: string[] = []
    const logger = makeLogger(TOKEN, { write: l => lines.push(l) })
    logger.error(
      { err: new Error(`request to https://api.telegram.org/bot${TOKEN}/getMe failed`) },
      `see /bot${encodeURIComponent(TOKEN)}/`,
    )
    logger.info(`another: 123456789:${'A'.repeat(35)}`)
    expect(lines).toHaveLength(2)
    expect(lines.join('')).not.toMatch(/AAEhBOweik|A{30}/)
    expect(JSON.parse(lines[0]!).err.message).toContain('[token]')
  })
})

describe('a process killed at any moment', () => {
  const child = (): ChildProcess =>
    spawn(process.execPath, ['--import', 'tsx', new URL('./telegramChild.ts', import.meta.url).pathname, folder, api.root, TOKEN], {
      stdio: ['ignore', 'inherit', 'inherit'],
    })

  it('records each message once, in order, and leaves no reply unsent', async () => {
    start()
    await joinOwner()
    await stop()
    const all = Array.from({ length: 60 }, (_, i) => `load ${i + 1}`)
    for (const text of all) api.say(alone(INES), INES, text)
    const sentSoFar = (): number => texts(alone(INES)).length - 1
    let kills = 0
    for (const enough of [1, 9, 23, 24]) {
      const c = child()
      await api.until(`${enough} replies went out`, () => sentSoFar() >= enough, 20_000)
      c.kill('SIGKILL')
      await once(c, 'exit')
      kills++
    }
    const c = child()
    await api.until('the last reply went out', () => last(alone(INES)) === 'Noted: load 60' && api.pending().length === 0, 20_000)
    c.kill('SIGKILL')
    await once(c, 'exit')
    store = openStore(folder, { durable: ['telegram'] })
    core = tinyCore(store)
    expect(core.notes()).toEqual(all)
    const replies = texts(alone(INES)).slice(1)
    expect([...new Set(replies)]).toEqual(all.map(t => `Noted: ${t}`))
    // A kill between the sending and its note sends that one letter again; nothing else may go out twice.
    expect(replies.length - all.length).toBeLessThanOrEqual(kills)
  })

  it('sends from the outbox what the last run left there, once', async () => {
    start()
    await joinOwner()
    await stop()
    store = openStore(folder, { durable: ['telegram'] })
    store.append('home', 'telegram', [], [{ to: '501', text: 'Good morning.' }])
    store.close()
    start()
    await api.until('it is there', () => last(alone(INES)) === 'Good morning.')
    await stop()
    start()
    expect(await tell(alone(INES), INES, 'good morning')).toBe('Noted: good morning')
    expect(texts(alone(INES)).filter(t => t === 'Good morning.')).toHaveLength(1)
  })
})
