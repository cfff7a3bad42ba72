import { beforeEach, describe, expect, it } from 'vitest'
import { eventsOf } from '../../src/book/book.ts'
import { alone, INES, NOBODY, TOMAS, user, YARD } from './telegramBench.ts'
import { api, book, house, ines, quiet, run, settleIn, start, stop, tell, texts, useHouse, yard } from './telegramHouse.ts'

useHouse()
const WALT = user(503, 'Walt')
const tap = async (chat: number, label: string, from = INES): Promise<void> => {
  const shown = api.shown(chat).findLast(m => m.reply_markup)!
  api.press(alone(from), from, shown.message_id, label)
  await quiet()
}
const roles = () => [...book().members.values()].filter(m => /^\d+$/.test(m.person)).map(m => [m.name, m.role])

describe('people', () => {
  beforeEach(settleIn)

  it('come in by a link as crew, or to ask only', async () => {
    const invite = (await ines('/invite viewer')).said[0]!
    expect(invite).toContain('may only ask')
    const link = new URL(/https:\S+/.exec(invite)![0])
    expect(link.href).toMatch(/^https:\/\/t\.me\/creekhand_bot\?start=[A-Z2-9]{8}$/)
    expect((await tell(alone(WALT), WALT, `/start ${link.searchParams.get('start')}`)).said[0]).toContain('only the crew can log')
    expect(roles()).toContainEqual(['Walt', 'viewer'])
    expect((await tell(alone(WALT), WALT, 'put 7 loads corn on creek')).said[0]).toContain('not log')
    expect((await tell(alone(WALT), WALT, "how's creek")).said[0]).toMatch(/creek/i)
    // A viewer's tap records nothing either.
    await yard(TOMAS, 'put some loads of corn on creek')
    const q = api.shown(YARD.id).findLast(m => m.reply_markup)!
    api.press(YARD, WALT, q.message_id, '6')
    await quiet()
    expect(api.toasts.at(-1)).toContain('not log')
    expect(eventsOf(book(), 'load')).toEqual([])
  })

  it('are listed by the owner, change what they may do, and a farm keeps an owner', async () => {
    expect((await tell(alone(TOMAS), TOMAS, '/cuadrilla')).said[0]).toContain('dueño')
    expect((await ines('/crew')).said[0]).toContain('Ines: owner\nTomás: crew')
    expect((await ines('/role Ines crew')).said[0]).toContain('needs an owner')
    expect((await ines('/leave')).said[0]).toContain('needs an owner')
    expect((await ines('/role Nobody crew')).said[0]).toContain('/role Walt viewer')
    expect((await ines('/role tomas viewer')).said[0]).toBe('Tomás is a viewer: may ask, and not log now.')
    await ines('/role Tomás owner')
    expect(roles()).toEqual([
      ['Ines', 'owner'],
      ['Tomás', 'owner'],
    ])
    await ines('/leave')
    await tap(501, 'Yes')
    expect(texts(alone(INES)).at(-1)).toContain('You are out, Ines')
    expect(roles()).toEqual([
      ['Ines', 'stranger'],
      ['Tomás', 'owner'],
    ])
  })

  it('leave by themselves after a yes, and may change their mind', async () => {
    await tell(alone(TOMAS), TOMAS, '/salir')
    await tap(502, 'No', TOMAS)
    expect(roles()).toContainEqual(['Tomás', 'crew'])
    await tell(alone(TOMAS), TOMAS, '/leave')
    await tap(502, 'Sí', TOMAS)
    expect(roles()).toContainEqual(['Tomás', 'stranger'])
  })

  it('are let go by a tap, and then nothing of the farm reaches them', async () => {
    await tell(alone(TOMAS), TOMAS, 'put 7 loads corn on creek')
    await ines('/remove')
    const shown = api.shown(501).at(-1)!
    expect(shown.reply_markup!.inline_keyboard.flat().map(b => b.text)).toEqual(['Tomás', 'Never mind'])
    await tap(501, 'Tomás')
    expect(api.shown(501).find(m => m.message_id === shown.message_id)?.text).toContain('Tomás is out')
    const before = texts(alone(TOMAS)).length
    house.store.append('home', 'telegram', [], [{ to: '502', text: 'Creek lasts 20 days.' }])
    run.wake()
    expect((await tell(alone(TOMAS), TOMAS, "how's creek")).said).toEqual(['Este libro es solo de la cuadrilla. El dueño da el código.'])
    await tell(alone(TOMAS), TOMAS, 'puse 3 viajes de maíz en creek')
    expect(texts(alone(TOMAS))).toHaveLength(before + 1)
    expect(eventsOf(book(), 'load')).toHaveLength(1)
    // Their words in the farm's group are not heard either.
    await yard(TOMAS, 'put 9 loads corn on creek')
    expect(eventsOf(book(), 'load')).toHaveLength(1)
    // A new code lets them in again.
    const code = /\b[A-HJ-NP-Z2-9]{8}\b/.exec((await ines('/invite')).said[0]!)![0]
    await tell(alone(TOMAS), TOMAS, code)
    expect((await tell(alone(TOMAS), TOMAS, "how's creek")).said[0]).toMatch(/creek/i)
  })

  it('who stop us are noticed, once, and hear from us again when they write', async () => {
    api.block(502)
    house.store.append(
      'home',
      'telegram',
      [],
      [
        { to: '502', text: 'One.' },
        { to: '502', text: 'Two.' },
      ],
    )
    run.wake()
    await quiet()
    house.store.append('home', 'telegram', [], [{ to: '502', text: 'Three.' }])
    run.wake()
    await quiet()
    expect(api.calls.filter(c => c.payload.chat_id === '502' && /One|Two|Three/.test(String(c.payload.text)))).toHaveLength(1)
    expect(texts(alone(INES)).filter(t => t.includes('Tomás has blocked me'))).toHaveLength(1)
    await stop()
    start()
    api.unblock(502)
    expect((await tell(alone(TOMAS), TOMAS, "how's creek")).said[0]).toMatch(/creek/i)
    house.store.append('home', 'telegram', [], [{ to: '502', text: 'Four.' }])
    run.wake()
    await quiet()
    expect(texts(alone(TOMAS)).at(-1)).toBe('Four.')
  })

  it('who are strangers hear one line, once, whatever they send', async () => {
    const photo = [{ ...api.file(new Uint8Array([0xff, 0xd8, 0xff])), width: 9, height: 9 }]
    for (const more of [
      {},
      { photo },
      { sticker: {} },
      { location: { latitude: 1, longitude: 2 } },
      { voice: { file_id: 'v', duration: 1 } },
    ])
      api.say(alone(NOBODY), NOBODY, Object.keys(more).length ? '' : '/today', more as never)
    api.say(alone(NOBODY), NOBODY, 'send me the book')
    api.say(YARD, NOBODY, '/crew@creekhand_bot')
    const q = await yard(TOMAS, 'put some loads of corn on creek')
    expect(q.said).toHaveLength(1)
    api.press(YARD, NOBODY, api.shown(YARD.id).at(-1)!.message_id, '6')
    await quiet()
    expect(texts(alone(NOBODY))).toEqual(['This book is for the crew only. Ask the owner for a code.'])
    expect(eventsOf(book(), 'load')).toEqual([])
    expect(api.calls.filter(c => c.method === 'getFile')).toEqual([])
  })
})
