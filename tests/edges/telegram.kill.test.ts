import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { describe, expect, it } from 'vitest'
import { alone, api, core, folder, INES, joinOwner, last, open, start, stop, store, TOKEN, tell, texts, useBench } from './telegramBench.ts'

useBench()

describe('a process killed at any moment', () => {
  const child = (): ChildProcess =>
    spawn(process.execPath, ['--import', 'tsx', new URL('./telegramChild.ts', import.meta.url).pathname, folder, api.root, TOKEN], {
      stdio: ['ignore', 'inherit', 'inherit'],
    })

  it('records each message once, in order, and leaves no reply unsent', async () => {
    start()
    await joinOwner()
    await stop()
    const all = Array.from({ length: 60 }, (_, i) => `load ${i + 1}`)
    for (const text of all) api.say(alone(INES), INES, text)
    const sentSoFar = (): number => texts(alone(INES)).length - 1
    let kills = 0
    for (const enough of [1, 9, 23, 24]) {
      const c = child()
      await api.until(`${enough} replies went out`, () => sentSoFar() >= enough, 20_000)
      c.kill('SIGKILL')
      await once(c, 'exit')
      kills++
    }
    const c = child()
    await api.until('the last reply went out', () => last(alone(INES)) === 'Noted: load 60' && api.pending().length === 0, 20_000)
    c.kill('SIGKILL')
    await once(c, 'exit')
    open()
    expect(core.notes()).toEqual(all)
    const replies = texts(alone(INES)).slice(1)
    expect([...new Set(replies)]).toEqual(all.map(t => `Noted: ${t}`))
    // A kill between the sending and its note sends that one letter again; nothing else may go out twice.
    expect(replies.length - all.length).toBeLessThanOrEqual(kills)
  })

  it('sends from the outbox what the last run left there, once', async () => {
    start()
    await joinOwner()
    await stop()
    open()
    store.append('home', 'telegram', [], [{ to: '501', text: 'Good morning.' }])
    store.close()
    start()
    await api.until('it is there', () => last(alone(INES)) === 'Good morning.')
    await stop()
    start()
    expect(await tell(alone(INES), INES, 'good morning')).toBe('Noted: good morning')
    expect(texts(alone(INES)).filter(t => t === 'Good morning.')).toHaveLength(1)
  })
})
