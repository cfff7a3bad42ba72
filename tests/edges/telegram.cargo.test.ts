import type { Message } from 'grammy/types'
import { beforeEach, describe, expect, it } from 'vitest'
import { eventsOf } from '../../src/book/book.ts'
import type { Incoming, Listener, Result } from '../../src/ports.ts'
import { alone, INES, NOBODY, TOMAS, YARD } from './telegramBench.ts'
import { api, book, house, ines, quiet, run, settleIn, start, stop, tell, texts, useHouse, yard } from './telegramHouse.ts'

useHouse()
beforeEach(settleIn)
const loads = () => eventsOf(book(), 'load').map(l => [l.event.count, l.event.on])
const by = (user: object, date: number) => ({ forward_origin: { type: 'user', sender_user: user, date } }) as unknown as Partial<Message>

describe('what is passed on', () => {
  it('counts on the day it was said', async () => {
    await ines('put 7 loads corn on creek', by(NOBODY, Date.parse('2026-09-14T18:00:00Z') / 1000))
    expect(loads()).toEqual([[7, '2026-09-14']])
  })

  it('counts once where it was told here before', async () => {
    const m = api.say(YARD, TOMAS, 'put 7 loads corn on creek')
    await quiet()
    expect((await ines('put 7 loads corn on creek', by(TOMAS, m.date))).said).toEqual(['That one is in the book already.'])
    expect((await yard(INES, 'put 7 loads corn on creek', by(TOMAS, m.date))).said).toEqual([])
    expect(loads()).toHaveLength(1)
  })

  it('is no report where a channel, a group or a program wrote it, and no command', async () => {
    const me = { id: 700123456, is_bot: true, first_name: 'Pilehand' }
    const channel = { forward_origin: { type: 'channel', chat: { id: -5, type: 'channel', title: 'news' }, message_id: 1, date: 1 } }
    expect((await ines('7 loads corn silage on creek.', by(me, 1))).said).toEqual([])
    expect((await ines('put 7 loads corn on creek', channel as never)).said).toEqual([])
    await ines('/leave', by(TOMAS, 1))
    expect(loads()).toEqual([])
    expect(texts(alone(INES)).at(-1)).not.toContain('Leave the crew')
  })
})

describe('what has no words', () => {
  it('stickers and their like get no answer anywhere', async () => {
    for (const kind of ['sticker', 'dice', 'poll', 'animation'])
      for (const said of [(await ines('', { [kind]: {} })).said, (await yard(INES, '', { [kind]: {} })).said]) expect(said).toEqual([])
  })

  it('films and papers are answered in private only', async () => {
    for (const kind of ['video', 'video_note', 'audio', 'document']) {
      expect((await ines('', { [kind]: {} })).said, kind).toEqual(['I can only read words. Write what it is about.'])
      expect((await yard(INES, '', { [kind]: {} })).said).toEqual([])
    }
  })

  it("the owner's place becomes the farm's where none is known; nobody else's, and not from the group", async () => {
    const location = { latitude: 43.07123, longitude: -89.40119, horizontal_accuracy: 8 }
    await yard(INES, '', { location })
    await tell(alone(TOMAS), TOMAS, '', { location })
    expect(book().settings.get('lat')).toBeUndefined()
    expect((await ines('', { location })).said[0]).toContain('43.07')
    expect([book().settings.get('lat'), book().settings.get('lon')]).toEqual([43.0712, -89.4012])
    expect((await ines('', { location: { latitude: 1, longitude: 2 } })).said[0]).toContain('I know where the farm is')
    // A live place that moves is no message.
    api.push({ edited_message: { message_id: 9, date: 1, edit_date: 2, chat: alone(INES), from: INES, location } } as never)
    const before = texts(alone(INES)).length
    await quiet()
    expect(texts(alone(INES))).toHaveLength(before)
  })

  it('a place from an owner who writes Spanish is answered in Spanish', async () => {
    await ines('/role Tomás owner')
    const { said } = await tell(alone(TOMAS), TOMAS, '', { location: { latitude: 43.07123, longitude: -89.40119 } })
    expect(said[0]).toMatch(/rancho|granja|está/)
    expect(book().members.get('502')).toMatchObject({ lang: 'es' })
  })

  it('a contact from the owner is somebody to invite, and from others nothing', async () => {
    const contact = { phone_number: '+1', first_name: 'Walt' }
    expect((await ines('', { contact })).said[0]).toMatch(/Code for one person \(Walt\).*\n?.*start=/)
    expect((await tell(alone(TOMAS), TOMAS, '', { contact })).said[0]).not.toContain('start=')
    expect((await yard(INES, '', { contact })).said).toEqual([])
  })
})

describe('voice notes', () => {
  const voice = (bytes: Uint8Array): Partial<Message> => ({ voice: { ...api.file(bytes, { path: 'voice/1.oga' }), duration: 3 } }) as never

  it('without an ear: one polite line, in a group once a person', async () => {
    const note = voice(new Uint8Array([1]))
    expect((await ines('', note)).said).toEqual(['I cannot hear voice notes here. Please type it.'])
    expect((await yard(TOMAS, '', note)).said).toHaveLength(1)
    expect((await yard(TOMAS, '', note)).said).toEqual([])
    expect(api.calls.filter(c => c.method === 'getFile')).toEqual([])
  })

  it('with an ear: fetched, heard in their own time while others pass, and earlier ones at the start', async () => {
    await stop()
    const heard: Incoming[] = []
    const resumed: string[] = []
    let release = (): void => undefined
    const listener: Listener = {
      hear: async (message, fetch) => {
        heard.push(message)
        await new Promise<void>(resolve => {
          release = resolve
        })
        const words = Buffer.from(await fetch()).toString()
        return house.core.handle({ ...message, text: words }) as Result
      },
      resume: async channel => {
        resumed.push(channel)
        return []
      },
      close: async () => undefined,
    }
    start({ listener })
    const m = api.say(YARD, TOMAS, '', voice(Buffer.from('put 7 loads corn on creek')))
    await api.until('it is being heard', () => heard.length === 1)
    expect(heard[0]).toMatchObject({ text: '', voice: { seconds: 3, bytes: 25 }, id: String(m.message_id), from: '502' })
    expect((await ines('how many loads today')).said).toHaveLength(1)
    release()
    await api.until('it was heard', () => loads().length === 1)
    // What was heard is said back: it may have been misheard.
    await api.until('it is said', () => texts(YARD).at(-1) === '7 loads corn silage on creek.')
    expect(api.actions).toContain(`${YARD.id} typing`)
    expect(resumed).toEqual(['telegram'])
  })

  it('with an ear that the end of the channel cuts off: it is closed before the note would be given up', async () => {
    await stop()
    const order: string[] = []
    let end = (): void => undefined
    const listener: Listener = {
      hear: async (_, fetch) => {
        order.push('heard')
        api.fault('getFile', { delayMs: 5000 })
        await Promise.race([fetch().catch(() => order.push('no sound')), new Promise<void>(resolve => (end = resolve))])
        throw new DOMException('closed', 'AbortError')
      },
      resume: async () => [],
      close: async () => {
        order.push('closed')
        end()
      },
    }
    start({ listener })
    api.say(YARD, TOMAS, '', voice(Buffer.from('put 7 loads corn on creek')))
    await api.until('it is being heard', () => order.length === 1)
    await run.stop()
    expect(order.slice(0, 2)).toEqual(['heard', 'closed'])
  })
})
