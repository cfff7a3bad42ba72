import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Message } from 'grammy/types'
import { describe, expect, it } from 'vitest'
import { eventsOf, pileState } from '../../src/book/book.ts'
import { openHouse } from '../../src/compose.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import { runTelegram } from '../../src/edges/telegram/telegram.ts'
import { startBotApi } from '../support/botApi.ts'
import { alone, INES, TOMAS, YARD } from './telegramBench.ts'
import { api, book, ines, quiet, settleIn, start, stop, texts, useHouse } from './telegramHouse.ts'

useHouse()

describe('the whole house behind the channel', () => {
  it('an owner joins, begins a pile, is asked, taps, edits, and finds it all again after a restart', async () => {
    await ines('gatepost')
    await ines('new pile called creek, 40 by 120')
    expect((await ines('put some loads of corn on creek')).said[0]).toContain('?')
    const question = api.shown(501).at(-1)!
    api.press(alone(INES), INES, question.message_id, '6')
    await quiet()
    expect(eventsOf(book(), 'load')[0]?.event).toMatchObject({ pile: 'creek', crop: 'corn silage', count: 6 })
    expect(api.shown(501).find(m => m.message_id === question.message_id)?.text).toContain('6 loads')
    expect(book().questions.size).toBe(0)

    const second = await ines('put 5 loads corn on creek')
    api.edit(alone(INES), INES, second.id, 'put 4 loads corn on creek')
    await quiet()
    expect(eventsOf(book(), 'load').map(l => l.event.count)).toEqual([6, 4])

    const events = book().logged.length
    await stop()
    start()
    expect((await ines("how's creek")).said[0]).toMatch(/creek/i)
    expect(book().logged).toHaveLength(events)
    expect(pileState(book(), 'creek')?.loads.at(-1)?.event.count).toBe(4)
  })

  it('what waited through an outage is read in its order, each by its own time', async () => {
    await settleIn()
    await stop()
    // Evenings in Chicago: the second is past midnight in Greenwich.
    const said: [string, string][] = [
      ['put 7 loads corn on creek', '2026-09-14T18:00:00-05:00'],
      ['put 3 loads corn on creek', '2026-09-14T21:30:00-05:00'],
      ['make that 4', '2026-09-14T21:31:00-05:00'],
      ['hail last night', '2026-09-16T07:00:00-05:00'],
    ]
    for (const [text, at] of said) api.say(YARD, TOMAS, text, { date: Date.parse(at) / 1000 } as Partial<Message>)
    start()
    await quiet()
    expect(eventsOf(book(), 'load').map(l => [l.event.count, l.event.on])).toEqual([
      [7, '2026-09-14'],
      [4, '2026-09-14'],
    ])
    expect(eventsOf(book(), 'weather').map(l => l.event.on)).toEqual(['2026-09-15'])
    expect(texts(YARD).at(-2)).toContain('Now 4 loads')
  })

  it('somebody of two farms talks to two bots, and nothing of one reaches the other', async () => {
    await settleIn()
    const token = '700999999:AAEhBOweik9ai2o01-Sample_token_of_second'
    const other = await startBotApi(token, { id: 700999999, username: 'ridgehand_bot' })
    const folder = mkdtempSync(join(tmpdir(), 'pilehand-second-'))
    const house = openHouse({ data: folder, zone: 'America/Chicago' }, { firstOwns: false, passing: true })
    const run = runTelegram({
      ...house,
      handle: house.core.handle,
      book: () => house.core.book('home'),
      log: house.store,
      token,
      apiRoot: other.root,
      ownerCode: 'other gate',
      zone: 'America/Chicago',
      folder,
      logger: makeLogger(token, undefined, 'fatal'),
      pollSeconds: 5,
    })
    try {
      for (const text of ['other gate', 'new pile called ridge, 20 by 40', "how's creek"]) {
        const before = other.shown(501).length
        other.say(alone(INES), INES, text)
        await other.until(`"${text}" is answered`, () => other.shown(501).length > before)
      }
      expect(other.shown(501).at(-1)!.text).not.toMatch(/^Creek/)
      expect([...house.core.book('home').byPile.keys()]).toEqual(['ridge'])
      expect([...book().byPile.keys()]).toEqual(['creek'])
    } finally {
      await run.stop()
      house.store.close()
      await other.close()
      rmSync(folder, { recursive: true, force: true })
    }
  })
})
