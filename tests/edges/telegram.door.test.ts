import type { Chat, Message } from 'grammy/types'
import { describe, expect, it } from 'vitest'
import {
  alone,
  api,
  codeIn,
  core,
  INES,
  joinCrew,
  joinOwner,
  last,
  line,
  NOBODY,
  quiet,
  run,
  start,
  stop,
  store,
  TOMAS,
  tell,
  texts,
  useBench,
  user,
  YARD,
} from './telegramBench.ts'

useBench()

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
    expect(first).toBe(
      line('telegram-invite', { code, until: '2026-09-21', link: `https://t.me/creekhand_bot?start=${code}`, role: 'crew', name: '' }),
    )
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
