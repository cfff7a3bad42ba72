import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeEach, describe, expect, it } from 'vitest'
import { openStore } from '../../src/edges/store.ts'
import { alone, INES, TOMAS, YARD } from './telegramBench.ts'
import { api, book, folder, ines, quiet, settleIn, start, stop, tell, texts, useHouse, yard } from './telegramHouse.ts'

useHouse()

describe('commands', () => {
  beforeEach(settleIn)
  const names = (menu: string): string[] => (api.menus.get(menu) ?? []).map(c => c.command)

  it('are on the menu in both languages, and more of them in the chat of the owner', async () => {
    await api.until('the menus are set', () => api.menus.size >= 4)
    expect(names('default')).toEqual(['today', 'left', 'covers', 'stock', 'undo', 'help'])
    expect(names('default es')).toEqual(['hoy', 'quedan', 'tapas', 'material', 'deshacer', 'ayuda'])
    expect(names('chat 501')).toEqual([...names('default'), 'invite', 'crew', 'export'])
    expect(api.menus.get('default es')![0]!.description).toBe('Lo que se hizo hoy')
    await ines('/role Tomás owner')
    await tell(alone(TOMAS), TOMAS, '/papel Ines cuadrilla')
    await api.until('the menus follow', () => names('chat 502').length > 6 && names('chat 501').length === 0)
  })

  it('say their words, from whoever types them, in either language', async () => {
    await ines('put 7 loads corn on creek')
    await ines('we have 340 tires')
    expect((await ines('/today')).said[0]).toContain('7 loads')
    expect((await ines('/stock')).said[0]).toContain('340')
    expect((await ines('/covers')).said[0]).toMatch(/creek/i)
    expect((await ines('/left creek')).said[0]).toMatch(/creek/i)
    expect((await tell(alone(TOMAS), TOMAS, '/hoy')).said[0]).toMatch(/viajes/)
    expect((await tell(alone(TOMAS), TOMAS, '/material')).said[0]).toMatch(/340/)
    expect((await ines('/undo')).said[0]).toContain('Took back: 340 tires')
  })

  it('help fits the state of the farm', async () => {
    const filling = (await ines('/help')).said[0]!
    expect(filling).toContain('on creek')
    await ines('put 7 loads corn on creek')
    await ines('covered creek with plastic')
    await ines('opened creek to feed')
    expect((await ines('/help')).said[0]).toContain('fed 12,000 lb off creek')
    expect((await tell(alone(TOMAS), TOMAS, '/ayuda')).said[0]).toMatch(/creek/)
  })
})

describe('the whole book', () => {
  beforeEach(settleIn)

  it('goes to the owner as a file, one record to a line, with what was taken back', async () => {
    const { id } = await yard(TOMAS, 'put 7 loads corn on creek')
    api.edit(YARD, TOMAS, id, 'put 6 loads corn on creek')
    await quiet()
    expect((await ines('send me the book')).said[0]).toContain('3 records')
    const shown = api.shown(501).at(-1)!
    expect(shown.filename).toMatch(/^book-\d{4}-\d\d-\d\d\.jsonl$/)
    const lines = shown
      .file!.toString()
      .trim()
      .split('\n')
      .map(l => JSON.parse(l) as { by: string; withdrawn?: boolean; event: { type: string; count?: number } })
    expect(lines.map(l => [l.by, l.event.type, l.event.count, l.withdrawn])).toEqual([
      ['Ines', 'pile', undefined, undefined],
      ['Tomás', 'load', 7, true],
      ['Tomás', 'load', 6, undefined],
    ])
    expect(api.actions).toContain('501 upload_document')
    expect(readdirSync(join(folder, 'telegram'))).toContain(shown.filename)
    expect(readFileSync(join(folder, 'telegram', shown.filename!)).equals(shown.file!)).toBe(true)
  })

  it('that takes long to write is announced', async () => {
    await stop()
    const notes = openStore(folder, { durable: ['telegram'], passing: true })
    const from = notes.entries('home').length
    const event = { type: 'note', text: 'x', on: '2026-09-14' } as const
    const entries = Array.from({ length: 5001 }, (_, i) => ({
      v: 1,
      n: from + 1 + i,
      at: '2026-09-14T12:00:00.000Z',
      by: '501',
      body: { kind: 'event' as const, id: `x${i}`, event },
    }))
    notes.append('home', 'telegram', entries, [])
    notes.close()
    start()
    const { said } = await ines('/export')
    expect(said[0]).toBe('Writing 5,002 records, one moment.')
    expect(said[1]).toContain('5,002 records')
    expect(api.shown(501).at(-1)!.file!.toString().split('\n')).toHaveLength(5003)
  })

  it('does not go to the crew, nor to the group', async () => {
    expect((await tell(alone(TOMAS), TOMAS, 'mándame el libro')).said[0]).toContain('dueño')
    expect((await yard(INES, '/export')).said[0]).toContain('private chat only')
    expect([...api.shown(501), ...api.shown(502), ...api.shown(YARD.id)].filter(m => m.file)).toEqual([])
    expect(texts(YARD)).not.toContain('records')
    expect(book().logged).toHaveLength(1)
  })
})
