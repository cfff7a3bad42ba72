import { createHmac } from 'node:crypto'
import { createServer, type IncomingHttpHeaders, type Server, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { afterEach, describe, expect, it } from 'vitest'
import { EVAN, NORA, OWNER_CODE, type SmsBench, useBench } from './smsBench.ts'

const bench = useBench()
const withOwner = async (): Promise<SmsBench> => {
  const b = await bench()
  await b.text(NORA, `${OWNER_CODE} Nora`)
  await b.text(NORA, 'new pile called knoll, 40 by 120')
  return b
}

/** A gateway's own address on loopback, with what it was sent. */
interface Gateway {
  url: string
  got: { headers: IncomingHttpHeaders; body: { to: string; id: string; parts: string[] }; raw: string }[]
  answer: (res: ServerResponse) => void
}
const servers: Server[] = []
const gateway = async (): Promise<Gateway> => {
  const g: Gateway = { url: '', got: [], answer: res => res.writeHead(204).end() }
  const server = createServer((req, res) => {
    let raw = ''
    req.on('data', d => {
      raw += d
    })
    req.on('end', () => {
      g.got.push({ headers: req.headers, body: JSON.parse(raw), raw })
      g.answer(res)
    })
  })
  await new Promise<void>(done => server.listen(0, '127.0.0.1', done))
  servers.push(server)
  g.url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/send`
  return g
}
afterEach(async () => {
  for (const s of servers.splice(0)) {
    s.closeAllConnections()
    await new Promise(done => s.close(done))
  }
})
const until = async (test: () => boolean): Promise<void> => {
  for (let i = 0; i < 400 && !test(); i++) await new Promise(done => setTimeout(done, 5))
  expect(test()).toBe(true)
}

describe('what is due by itself', () => {
  it('waits for the next message of its telephone, and comes with it, once; a restart in between forgets nothing', async () => {
    const b = await withOwner()
    await b.text(NORA, 'remind me at 11 to order plastic')
    b.clock = '2026-09-14T16:00:30.000Z'
    expect(b.tick()).toBe(1)
    await b.restart()
    b.later(30)
    const parts = await b.text(NORA, '7 loads corn silage')
    expect(parts).toHaveLength(2)
    expect(parts[0]).toContain('order plastic')
    expect(parts[1]).toContain('7 loads corn silage on knoll')
    expect(await b.text(NORA, 'note: all quiet')).toHaveLength(1)
    b.tick()
    expect((await b.text(NORA, 'note: still quiet')).join()).not.toContain('order plastic')
  })

  it('is answered by its number once it was shown, and not before', async () => {
    const b = await withOwner()
    await b.text(NORA, 'new pile called swale, 40 by 120')
    await b.text(NORA, 'remind me at 11 to order plastic')
    await b.text(NORA, '7 loads corn silage')
    b.clock = '2026-09-14T16:00:30.000Z'
    b.tick()
    // still the question that stands on the telephone
    const parts = await b.text(NORA, '2')
    expect(b.house.core.book('home').logged.at(-1)?.event).toMatchObject({ type: 'load', pile: 'swale' })
    expect(parts[0]).toMatch(/order plastic\.?\n1 Done {2}2 In an hour {2}3 Tomorrow$/)
    expect(await b.text(NORA, '1')).toEqual([b.line('reminder-done', { about: 'order plastic' })])
  })

  it('comes with nobody else, and is let go when it is old', async () => {
    const b = await withOwner()
    await b.text(EVAN, `${/[A-Z2-9]{8}/.exec((await b.text(NORA, 'invite'))[0]!)![0]} Evan`)
    await b.text(NORA, 'remind me at 11 to order plastic')
    b.clock = '2026-09-14T16:00:30.000Z'
    b.tick()
    expect((await b.text(EVAN, 'note: all quiet')).join()).not.toContain('order plastic')
    // the store's own clock dates what waits
    const old = Date.parse(b.house.store.queued('sms')[0]!.queuedAt) + 37 * 3_600_000
    b.clock = new Date(old).toISOString()
    expect((await b.text(NORA, 'note: all quiet')).join()).not.toContain('order plastic')
    expect(b.house.store.queued('sms')).toEqual([])
  })

  it('is not lost with a response that nobody took', async () => {
    const b = await withOwner()
    b.house.store.append('home', 'sms', [], [{ to: NORA, text: 'Walk knoll today.' }])
    const said = JSON.stringify({ from: NORA, text: 'note: all quiet', id: 'gw-1' })
    const { connect } = await import('node:net')
    await new Promise<void>(resolve => {
      const line = connect(b.port, '127.0.0.1', () => {
        const headers = Object.entries(b.headers(said)).map(([k, v]) => `${k}: ${v}\r\n`)
        line.write(`POST /sms HTTP/1.1\r\nHost: x\r\n${headers.join('')}Content-Length: ${said.length}\r\n\r\n${said.slice(0, -1)}`)
        setTimeout(() => line.destroy(), 20)
      })
      line.once('close', () => resolve())
    })
    expect(await b.text(NORA, 'note: all quiet', { id: 'gw-1' })).toEqual(['Walk knoll today.', expect.stringContaining('all quiet')])
  })
})

describe("a gateway's own address", () => {
  it('is sent what is due, signed the same way, and the next response does not carry it again', async () => {
    const b = await withOwner()
    const g = await gateway()
    await b.shut()
    await b.open({ sendUrl: g.url })
    await b.text(NORA, 'remind me at 11 to order plastic')
    b.clock = '2026-09-14T16:00:30.000Z'
    b.tick()
    await until(() => g.got.length === 1 && b.house.store.queued('sms').length === 0)
    const { body, headers, raw } = g.got[0]!
    expect(body).toMatchObject({ to: NORA, parts: [expect.stringContaining('order plastic')] })
    const time = String(headers['pilehand-time'])
    expect(time).toBe(b.now())
    expect(headers['pilehand-signature']).toBe(createHmac('sha256', b.secret).update(`${time}.${raw}`).digest('hex'))
    expect(headers['content-type']).toBe('application/json')
    expect(await b.text(NORA, 'note: all quiet')).toHaveLength(1)
    expect(g.got).toHaveLength(1)
  })

  it('that fails is tried again with the same id, in the order of the telephone', async () => {
    const b = await withOwner()
    const g = await gateway()
    let n = 0
    g.answer = res => res.writeHead(++n <= 2 ? 500 : 200).end()
    await b.shut()
    await b.open({ sendUrl: g.url })
    b.house.store.append(
      'home',
      'sms',
      [],
      [
        { to: NORA, text: 'First.' },
        { to: NORA, text: 'Second.' },
      ],
    )
    b.run.wake()
    await until(() => b.house.store.queued('sms').length === 0)
    expect(g.got.map(x => x.body.parts[0])).toEqual(['First.', 'First.', 'First.', 'Second.'])
    expect(new Set(g.got.map(x => x.body.id)).size).toBe(2)
  })

  it('that is slow, gone, or sends elsewhere loses nothing; what it will never take is put away', async () => {
    const b = await withOwner()
    const g = await gateway()
    g.answer = () => undefined
    await b.shut()
    await b.open({ sendUrl: g.url, timeoutMs: 30, retryMs: 60_000 })
    b.house.store.append('home', 'sms', [], [{ to: NORA, text: 'Walk knoll today.' }])
    b.run.wake()
    await until(() => g.got.length === 1)
    await b.shut()
    g.answer = res => res.writeHead(302, { location: 'http://127.0.0.1:9/' }).end()
    await b.open({ sendUrl: g.url, retryMs: 60_000 })
    await until(() => g.got.length === 2)
    expect(b.house.store.queued('sms')).toHaveLength(1)
    // the next message carries it all the same
    await new Promise(done => setTimeout(done, 20))
    expect(await b.text(NORA, 'note: all quiet')).toHaveLength(2)
    g.answer = res => res.writeHead(422).end()
    b.house.store.append('home', 'sms', [], [{ to: EVAN, text: 'To nobody.' }])
    b.run.wake()
    await until(() => b.house.store.queued('sms').length === 0)
  })

  it('keeps a person on the telephone and one in another channel apart', async () => {
    const b = await withOwner()
    const { core, store } = b.house
    const member = { kind: 'member', person: '501', role: 'crew', name: 'Ola', lang: 'en', address: '501' } as const
    store.append('home', 'telegram', [{ v: 1, n: core.book('home').last + 1, at: b.clock, by: NORA, body: member }], [])
    await b.restart()
    await b.text(NORA, 'remind ola at 11 to order plastic')
    await b.text(NORA, 'remind me at 11 to call the vet')
    b.clock = '2026-09-14T16:00:30.000Z'
    expect(b.tick()).toBe(2)
    expect(b.house.store.queued('telegram').map(l => l.chat)).toEqual(['501'])
    expect(b.house.store.queued('sms').map(l => l.chat)).toEqual([NORA])
  })
})
