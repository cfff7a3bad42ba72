import { describe, expect, it } from 'vitest'
import type { Incoming } from '../../src/ports.ts'
import { close, entry, faultIn, message, open, raw, result, useStores } from './storeBench.ts'

useStores()

describe('the log', () => {
  it('keeps what was appended, in order, over a restart', () => {
    const a = open()
    a.append('home', 'console', [entry(1), entry(2)], [])
    a.append('hillside', 'console', [entry(1)], [])
    close(a)
    const b = open()
    expect(b.farms()).toEqual(['hillside', 'home'])
    expect(b.entries('home')).toEqual([entry(1), entry(2)])
    expect(b.entries('nowhere')).toEqual([])
  })

  it('stores a message once, and gives back what came of it', () => {
    const s = open()
    expect(s.take(message('7'))).toEqual({ fresh: true })
    expect(s.take(message('7'))).toEqual({ fresh: false })
    s.settle(message('7'), [entry(1)], result())
    expect(s.take(message('7'))).toEqual({ fresh: false, result: result() })
    // Each part of the identity counts.
    for (const other of [{ channel: 'lines' }, { farm: 'hillside' }, { chat: 'shop' }, { edit: '1' }, { id: '8' }]) {
      expect(s.take(message('7', other)), JSON.stringify(other)).toEqual({ fresh: true })
    }
  })

  it('settles a message once, however often it is asked to', () => {
    const s = open({ durable: ['telegram'] })
    s.take(message('7'))
    s.settle(message('7'), [entry(1)], result('first'))
    s.settle(message('7'), [entry(2)], result('second'))
    expect(s.entries('home')).toEqual([entry(1)])
    expect(s.take(message('7')).result).toEqual(result('first'))
    expect(s.queued('telegram').map(q => q.reply.text)).toEqual(['first'])
  })

  it('knows what was taken and never settled', () => {
    const a = open()
    const tap = message('9', { pick: { question: 'q1', choice: 0 } })
    for (const m of [message('7'), message('8'), tap]) a.take(m)
    a.settle(message('8'), [], result())
    close(a)
    expect(open().unsettled()).toEqual([message('7'), tap])
  })

  it('takes all of a settling or nothing', () => {
    const s = open({ durable: ['telegram'] })
    s.take(message('7'))
    const bad = entry(2, { kind: 'event', id: 'e2', event: { type: 'load', pile: 'north' } as never })
    expect(faultIn(() => s.settle(message('7'), [entry(1), bad], result()))).toMatchObject({
      code: 'entry-refused',
      data: { farm: 'home', n: 2 },
    })
    expect(s.entries('home')).toEqual([])
    expect(s.queued('telegram')).toEqual([])
    expect(s.unsettled()).toEqual([message('7')])
  })

  it('refuses a gap and a number used twice', () => {
    const s = open()
    s.append('home', 'console', [entry(1)], [])
    expect(faultIn(() => s.append('home', 'console', [entry(3)], []))).toMatchObject({ code: 'entry-order', data: { n: 3, wanted: 2 } })
    expect(faultIn(() => s.append('home', 'console', [entry(1)], []))).toMatchObject({ code: 'entry-order', data: { n: 1, wanted: 2 } })
    expect(s.entries('home')).toEqual([entry(1)])
  })

  it('lets nobody change or remove an entry', () => {
    close(
      (() => {
        const s = open()
        s.append('home', 'console', [entry(1)], [])
        return s
      })(),
    )
    raw(db => {
      expect(() => db.exec("update entry set body = '{}'")).toThrow('append-only')
      expect(() => db.exec('delete from entry')).toThrow('append-only')
    })
    expect(open().entries('home')).toEqual([entry(1)])
  })
})

describe('the outbox', () => {
  it('holds replies of durable channels only, until they are sent', () => {
    const s = open({ durable: ['telegram'] })
    s.settle(message('1'), [], result('one'))
    s.settle(message('1', { channel: 'console' }), [], result('aside'))
    s.append('home', 'telegram', [], [{ to: 'shop', text: 'two', choices: ['yes', 'no'], question: 'q2' }])
    expect(s.queued('console')).toEqual([])
    const [one, two] = s.queued('telegram')
    expect([one?.reply.text, two?.reply.text]).toEqual(['one', 'two'])
    s.sent(one!.id, '501')
    expect(s.queued('telegram').map(q => q.reply.text)).toEqual(['two'])
    s.sent(two!.id, '502')
    expect(s.sentMessage('telegram', 'shop', '502')?.reply).toEqual({ to: 'shop', text: 'two', choices: ['yes', 'no'], question: 'q2' })
    expect(s.sentMessage('telegram', 'yard', '502')).toBeUndefined()
    expect(s.sentMessage('telegram', 'yard', '501')?.reply.text).toBe('one')
  })

  it("puts the first reply to a tap in the question's place, unless the tap did nothing", () => {
    const s = open({ durable: ['telegram'] })
    const tap = (id: string): Incoming => message(id, { pick: { question: 'q1', choice: 1 }, replyTo: '88' })
    const replies = [
      { to: 'shop', text: 'elsewhere' },
      { to: 'yard', text: 'first' },
      { to: 'yard', text: 'second' },
    ]
    s.settle(tap('tap-1'), [], { ...result(), replies })
    s.settle(tap('tap-2'), [], { ...result('not yours'), outcome: 'refused' })
    s.settle(message('5', { replyTo: '88' }), [], result('typed'))
    expect(s.queued('telegram').map(q => [q.reply.text, q.instead, q.cause])).toEqual([
      ['elsewhere', undefined, 'tap-1'],
      ['first', '88', 'tap-1'],
      ['second', undefined, 'tap-1'],
      ['not yours', undefined, 'tap-2'],
      ['typed', undefined, '5'],
    ])
  })

  it('tries again after a failure and after a restart, but not where the chat is gone for good', () => {
    const a = open({ durable: ['telegram'] })
    a.settle(message('1'), [], result('one'))
    a.settle(message('2'), [], result('two'))
    const [one, two] = a.queued('telegram')
    a.failed(one!.id, 'no network')
    a.failed(two!.id, 'the assistant was blocked', true)
    close(a)
    const left = open({ durable: ['telegram'] }).queued('telegram')
    expect(left.map(q => [q.reply.text, q.tries])).toEqual([['one', 1]])
    raw(db => expect(db.prepare('select count(*) from outbox').pluck().get()).toBe(2))
  })
})
