import type { Message } from 'grammy/types'
import { beforeEach, describe, expect, it } from 'vitest'
import { alone, api, core, INES, joinOwner, last, line, quiet, start, tell, texts, useBench, YARD } from './telegramBench.ts'

useBench()

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
    const photo = [{ ...api.file(new Uint8Array([0xff, 0xd8, 0xff, 0xe0])), width: 90, height: 90 }]
    expect(await tell(alone(INES), INES, '', { photo } as Partial<Message>)).toBe(line('telegram-picture-words'))
    api.say(alone(INES), INES, '', { photo, caption: 'coons got in creek' } as Partial<Message>)
    await quiet()
    expect(heard()).toMatchObject({ text: 'coons got in creek', photo: true })
    const count = core.heard.length
    // An album's other pictures belong to the caption of the first.
    api.say(alone(INES), INES, '', { photo, caption: 'and here', media_group_id: 'a' } as Partial<Message>)
    api.say(alone(INES), INES, '', { photo, media_group_id: 'a' } as Partial<Message>)
    api.say(alone(INES), INES, '', { pinned_message: { message_id: 1, date: 0, chat: alone(INES) } } as Partial<Message>)
    await quiet()
    expect(core.heard).toHaveLength(count + 1)
    expect(texts(alone(INES)).filter(t => t === line('telegram-picture-words'))).toHaveLength(1)
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
