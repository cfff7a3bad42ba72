import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import {
  alone,
  api,
  core,
  folder,
  INES,
  joinCrew,
  joinOwner,
  last,
  logged,
  quiet,
  run,
  start,
  stop,
  store,
  TOMAS,
  tell,
  texts,
  useBench,
} from './telegramBench.ts'

useBench()

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

  it('keeps the order of a chat, also where a wait ends while another chat is served', async () => {
    await joinCrew()
    await quiet()
    api.fault('sendMessage', { code: 500, description: 'Internal Server Error' }, { delayMs: 80 })
    store.append(
      'home',
      'telegram',
      [],
      [
        { to: '501', text: 'One.' },
        { to: '502', text: 'Slow.' },
        { to: '501', text: 'Two.' },
      ],
    )
    run.wake()
    await quiet()
    expect(texts(alone(INES)).slice(-2)).toEqual(['One.', 'Two.'])
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

  it('a spoken answer after its words', async () => {
    const voice = join(folder, 'answer.ogg')
    writeFileSync(voice, Buffer.from('OggS'))
    store.append('home', 'telegram', [], [{ to: '501', text: 'Twenty days.', voice }])
    run.wake()
    await api.until('it is there', () => api.shown(501).at(-1)?.file !== undefined)
    expect(texts(alone(INES)).slice(-2)).toEqual(['Twenty days.', ''])
    expect(api.shown(501).at(-1)!.file!.toString()).toBe('OggS')
    await quiet()
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
        { to: '501', text: 'Creek from above.', picture, choices: ['again'] },
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
