import { describe, expect, it } from 'vitest'
import { StoreFault } from '../../src/edges/store.ts'
import { makeLogger } from '../../src/edges/telegram/logger.ts'
import { alone, api, core, folder, INES, joinOwner, line, logged, run, start, stop, store, TOKEN, tell, useBench } from './telegramBench.ts'

useBench()

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
    for (const text of ['first', 'second', 'third']) api.say(alone(INES), INES, text)
    start(house => ({
      handle: m => {
        if (m.text === 'second') throw new StoreFault('store-full', { folder })
        return house.handle(m)
      },
    }))
    await expect(run.done).rejects.toMatchObject({ code: 'store-full' })
    expect(api.pending().map(u => u.message?.text)).toEqual(['first', 'second', 'third'])
    expect(core.notes()).toEqual(['first'])
    store.close()
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
