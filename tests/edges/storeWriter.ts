// Run as a process of its own by the store tests: writes for ever, saying each number once the store has acknowledged it, until it is killed.
import { writeSync } from 'node:fs'
import { openStore } from '../../src/edges/store.ts'
import type { Incoming } from '../../src/ports.ts'

const say = (line: string): void => {
  for (;;) {
    try {
      writeSync(1, `${line}\n`)
      return
    } catch (error) {
      // The pipe is full: whoever reads it is busy.
      if ((error as NodeJS.ErrnoException).code !== 'EAGAIN') throw error
      Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 2)
    }
  }
}

const store = openStore(process.argv[2]!, { durable: ['telegram'] })
let n = store.entries('home').length
for (;;) {
  n++
  const m: Incoming = {
    channel: 'telegram',
    farm: 'home',
    chat: 'yard',
    private: true,
    from: 'ines',
    id: String(n),
    edit: '',
    at: '2026-09-14T15:00:00Z',
    text: `note: ${n}`,
  }
  store.take(m)
  say(`taken ${n}`)
  const source = { channel: m.channel, chat: m.chat, id: m.id, edit: m.edit }
  const event = { type: 'note' as const, text: String(n), on: '2026-09-14' }
  store.settle(m, [{ v: 1, n, at: m.at, by: 'ines', source, body: { kind: 'event', id: `e${n}`, event } }], {
    outcome: 'recorded',
    recorded: [event],
    withdrawn: [],
    asks: [],
    answers: [],
    replies: [{ to: 'yard', text: `Noted ${n}.` }],
  })
  say(`settled ${n}`)
}
