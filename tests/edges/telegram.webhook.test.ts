import type { AddressInfo } from 'node:net'
import { createServer } from 'node:net'
import { beforeEach, describe, expect, it } from 'vitest'
import { readConfig } from '../../src/config.ts'
import { StoreFault } from '../../src/edges/store.ts'
import { alone, api, core, folder, INES, joinOwner, last, run, start, stop, store, tell, useBench } from './telegramBench.ts'

useBench()

const freePort = async (): Promise<number> => {
  const s = createServer().listen(0, '127.0.0.1')
  await new Promise(resolve => s.once('listening', resolve))
  const { port } = s.address() as AddressInfo
  await new Promise(resolve => s.close(resolve))
  return port
}

describe('called by Telegram', () => {
  let webhook: { url: string; secret: string; host: string; port: number }
  beforeEach(async () => {
    const port = await freePort()
    // The real server calls https only; the stand-in calls what it is told.
    webhook = { url: `http://127.0.0.1:${port}/hook/creek`, secret: 'a-secret_of-tests-1', host: '127.0.0.1', port }
  })
  const call = (path: string, secret?: string, body: unknown = { update_id: 1 }) =>
    fetch(new URL(path, webhook.url), {
      method: 'POST',
      headers: { 'content-type': 'application/json', ...(secret && { 'x-telegram-bot-api-secret-token': secret }) },
      body: JSON.stringify(body),
    }).then(r => r.status)

  it('answers as it does when it asks, one after another', async () => {
    start({ webhook })
    await run.started
    const set = api.calls.find(c => c.method === 'setWebhook')!.payload
    expect(set).toMatchObject({ url: webhook.url, secret_token: webhook.secret, max_connections: 1 })
    await joinOwner()
    for (const n of [1, 2, 3, 4, 5]) api.say(alone(INES), INES, `load ${n}`)
    await api.until('all are answered', () => last(alone(INES)) === 'Noted: load 5')
    expect(core.notes()).toEqual([1, 2, 3, 4, 5].map(n => `load ${n}`))
    expect(api.calls.some(c => c.method === 'getUpdates')).toBe(false)
  })

  it('lets nobody in without the secret, nor by another path, and takes no word of theirs', async () => {
    start({ webhook })
    await run.started
    await joinOwner()
    const forged = { update_id: 5, message: { message_id: 99, date: 1, chat: alone(INES), from: INES, text: 'put 90 loads on creek' } }
    expect(await call('/hook/creek', undefined, forged)).toBe(401)
    expect(await call('/hook/creek', 'a-secret_of-tests-2', forged)).toBe(401)
    expect(await call('/hook', webhook.secret, forged)).toBe(404)
    expect(await fetch(webhook.url).then(r => r.status)).toBe(405)
    expect(await call('/hook/creek', webhook.secret, { update_id: 6, filler: 'x'.repeat(1_100_000) })).toBe(413)
    expect(core.notes()).toEqual([])
    expect(await tell(alone(INES), INES, 'still here')).toBe('Noted: still here')
  })

  it('the same update again changes nothing', async () => {
    start({ webhook })
    await run.started
    await joinOwner()
    const again = { update_id: 77, message: { message_id: 99, date: 1, chat: alone(INES), from: INES, text: 'once' } }
    expect([await call('/hook/creek', webhook.secret, again), await call('/hook/creek', webhook.secret, again)]).toEqual([200, 200])
    expect(core.notes()).toEqual(['once'])
  })

  it('what could not be stored is not taken, and comes again to the next run', async () => {
    start({ webhook })
    await run.started
    await joinOwner()
    await stop()
    start(house => ({
      webhook,
      handle: m => {
        if (m.text === 'second') throw new StoreFault('store-full', { folder })
        return house.handle(m)
      },
    }))
    await run.started
    for (const text of ['first', 'second', 'third']) api.say(alone(INES), INES, text)
    await expect(run.done).rejects.toMatchObject({ code: 'store-full' })
    expect(core.notes()).toEqual(['first'])
    store.close()
    start({ webhook })
    await api.until('the rest came again', () => last(alone(INES)) === 'Noted: third')
    expect(core.notes()).toEqual(['first', 'second', 'third'])
  })

  it('a port that is taken, and an address that Telegram refuses, say so', async () => {
    start({ webhook: { ...webhook, port: Number(new URL(api.root).port) } })
    await expect(run.done).rejects.toMatchObject({ code: 'telegram-webhook-port' })
    store.close()
    api.fault('setWebhook', { code: 400, description: 'Bad Request: bad webhook: HTTPS url must be provided for webhook' })
    start({ webhook })
    await expect(run.done).rejects.toMatchObject({ code: 'telegram-webhook-refused' })
  })

  it('and asking again after it ends the calls', async () => {
    start({ webhook })
    await run.started
    await joinOwner()
    await stop()
    start()
    expect(await tell(alone(INES), INES, 'asked for')).toBe('Noted: asked for')
  })
})

describe('the settings of it', () => {
  const TELEGRAM_TOKEN = `123456:${'A'.repeat(35)}`
  const read = (more: Record<string, string>) => readConfig({ TELEGRAM_TOKEN, ...more })

  it('are checked, with a loopback port where none is told', () => {
    expect(read({})).toMatchObject({ ok: true, config: { telegram: { token: TELEGRAM_TOKEN } } })
    expect(read({ TELEGRAM_WEBHOOK: 'https://farm.example/hook' })).toMatchObject({
      config: { telegram: { webhook: { url: 'https://farm.example/hook', host: '127.0.0.1', port: 8443 } } },
    })
    expect(read({ TELEGRAM_WEBHOOK: 'https://farm.example/hook', TELEGRAM_WEBHOOK_LISTEN: '0.0.0.0:9000' })).toMatchObject({
      config: { telegram: { webhook: { host: '0.0.0.0', port: 9000 } } },
    })
    for (const [name, value] of [
      ['TELEGRAM_WEBHOOK', 'http://farm.example/hook'],
      ['TELEGRAM_WEBHOOK_LISTEN', 'somewhere'],
      ['TELEGRAM_WEBHOOK_SECRET', 'short'],
    ] as const)
      expect(read({ [name]: value })).toMatchObject({ ok: false, data: { name } })
  })
})
