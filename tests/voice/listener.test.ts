import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { openStore, type Store } from '../../src/edges/store.ts'
import { EarFault, makeListener } from '../../src/edges/voice.ts'
import { answer, pilesFor } from '../../src/figures/asked/answer.ts'
import { type Core, makeCore } from '../../src/pipeline.ts'
import type { Ear, FarmWords, Incoming, Lang, Listener } from '../../src/ports.ts'
import { makeSayer } from '../../src/saying/say.ts'

/** 40 ms of silence: the smallest OGG/Opus file that opusenc 0.2 writes. */
const SILENCE = readFileSync(new URL('silence.ogg', import.meta.url))
const say = makeSayer(loadPrompts())

let folder: string
let store: Store
let core: Core
let listeners: Listener[]
let n: number

const open = (): void => {
  store = openStore(folder, { durable: ['post'], passing: true })
  core = makeCore({ log: store, zone: 'America/Chicago', say, answer, pilesFor, firstOwns: true })
}
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'pilehand-listener-'))
  listeners = []
  n = 0
  open()
  for (const text of ['new pile called quarry, 40 by 130', 'put 3 loads corn on quarry']) core.handle(note({ text, voice: undefined }))
})
afterEach(async () => {
  for (const l of listeners) await l.close()
  store.close()
  rmSync(folder, { recursive: true, force: true })
})

const note = (more: Partial<Incoming> = {}): Incoming => {
  const id = `m${++n}`
  const at = new Date(Date.parse('2026-09-14T14:00:00Z') + n * 60_000).toISOString()
  return { channel: 'post', farm: 'home', chat: 'lea', private: true, from: 'lea', id, edit: '', at, text: '', voice: { ref: id }, ...more }
}
/** An ear that hears what it is told to. */
const earOf = (hear: (farm: FarmWords, lang: Lang, signal?: AbortSignal) => Promise<string>, langs: Lang[] = ['en']): Ear => ({
  name: 'told',
  langs,
  hear: async (_sound, farm, lang, signal) => {
    const text = await hear(farm, lang, signal)
    return { lang, wordings: text ? [{ words: text.split(' ').map(word => ({ word, from: 0, to: 0, sure: 1 })), weight: 1 }] : [] }
  },
  close: () => undefined,
})
const listenerOn = (ear: Ear | undefined, more: Partial<Parameters<typeof makeListener>[0]> = {}): Listener => {
  const l = makeListener({ ear, handle: core.handle, book: core.book, log: store, folder: join(folder, 'waiting'), ...more })
  listeners.push(l)
  return l
}
/** For saying in one breath that something was done and what comes back. */
const giving = <T>(_done: unknown, value: T): T => value
const bring = () => Promise.resolve(SILENCE)
const waiting = (): string[] => {
  try {
    return readdirSync(join(folder, 'waiting'))
  } catch {
    return []
  }
}
const SEVEN = earOf(async () => 'put seven loads corn on quarry')

describe('a voice note', () => {
  it('is heard with the names of the farm, recorded, answered by the outbox, and its sound let go', async () => {
    const names: FarmWords[] = []
    const l = listenerOn(earOf(async farm => giving(names.push(farm), 'put seven loads corn on quarry')))
    const m = note()
    expect(await l.hear(m, bring)).toMatchObject({ outcome: 'recorded', recorded: [{ type: 'load', count: 7, pile: 'quarry' }] })
    expect(names.map(x => x.piles)).toEqual([['quarry']])
    expect(store.queued('post').at(-1)).toMatchObject({ chat: 'lea', cause: m.id })
    expect(waiting()).toEqual([])
    expect(store.unsettled()).toEqual([])
  })

  it('the same twice is one, and is fetched once', async () => {
    const l = listenerOn(SEVEN)
    const m = note()
    let fetched = 0
    const fetch = async () => giving(fetched++, SILENCE)
    const both = await Promise.all([l.hear(m, fetch), l.hear({ ...m }, fetch)])
    expect(both[0]).toEqual(both[1])
    expect(await l.hear({ ...m }, fetch)).toEqual(both[0])
    expect(fetched).toBe(1)
  })

  it('notes of a farm are heard one at a time, in order; another farm does not wait', async () => {
    const order: string[] = []
    let now = 0
    let most = 0
    let free = (): void => undefined
    const gate = new Promise<void>(resolve => {
      free = resolve
    })
    const l = listenerOn(
      earOf(async farm => {
        if (!farm.piles.length) return 'how is everything'
        most = Math.max(most, ++now)
        await gate
        now--
        return 'put seven loads corn on quarry'
      }),
    )
    const one = l.hear(note(), bring).then(() => order.push('one'))
    const two = l.hear(note(), bring).then(() => order.push('two'))
    await l.hear(note({ farm: 'other' }), bring).then(() => order.push('other'))
    free()
    await Promise.all([one, two])
    expect(order).toEqual(['other', 'one', 'two'])
    expect(most).toBe(1)
  })
})

describe('what is too much is refused before it is fetched', () => {
  it.each<[string, Partial<NonNullable<Incoming['voice']>>, RegExp]>([
    ['long', { seconds: 91 }, /longer than 90 seconds/],
    ['large', { bytes: 3_000_001 }, /too large/],
  ])('%s', async (_, told, like) => {
    let fetched = 0
    const got = await listenerOn(SEVEN).hear(note({ voice: { ref: 'x', ...told } }), async () => giving(fetched++, SILENCE))
    expect(got).toMatchObject({ outcome: 'refused', recorded: [] })
    expect(got.replies[0]!.text).toMatch(like)
    expect(fetched).toBe(0)
  })

  it('or after, where the channel did not say', async () => {
    const l = listenerOn(SEVEN, { limits: { seconds: 0.01 } })
    expect((await l.hear(note(), bring)).outcome).toBe('refused')
    const small = listenerOn(SEVEN, { limits: { bytes: 10 } })
    expect((await small.hear(note(), bring)).replies[0]!.text).toMatch(/too large/)
  })

  it('an ear that takes for ever is left', async () => {
    const l = listenerOn(
      earOf((_, __, signal) => new Promise((_resolve, reject) => signal!.addEventListener('abort', () => reject(signal!.reason)))),
      { limits: { atLeastMs: 30, msASecond: 0 } },
    )
    expect((await l.hear(note(), bring)).replies[0]!.text).toMatch(/took too long/)
  })
})

describe('what goes wrong is said', () => {
  it.each<[string, Ear | undefined, () => Promise<Uint8Array>, RegExp]>([
    ['no recogniser', undefined, bring, /no recogniser is set up/],
    ['the sound cannot be fetched', SEVEN, () => Promise.reject(new Error('gone')), /could not be fetched/],
    ['it is no sound', SEVEN, async () => Buffer.from('OggS, as it were'), /could not be read/],
    ['nothing was heard', earOf(async () => ''), bring, /Nothing could be heard/],
    [
      'the recogniser is missing',
      earOf(() => Promise.reject(new EarFault('ear-program-missing', { name: 'listening' }))),
      bring,
      /listening is not installed/,
    ],
    ['the recogniser breaks', earOf(() => Promise.reject(new Error('out of luck'))), bring, /failed \(out of luck\)/],
  ])('%s', async (_, ear, fetch, like) => {
    const got = await listenerOn(ear, { trouble: () => undefined }).hear(note(), fetch)
    expect(got).toMatchObject({ outcome: 'refused', recorded: [] })
    expect(got.replies[0]!.text).toMatch(like)
    expect(store.unsettled()).toEqual([])
  })

  it('in Spanish to who writes Spanish, where the ear has none', async () => {
    core.handle(note({ text: 'cuánto hay en quarry', from: 'teo', voice: undefined }))
    let asked = 0
    const english = earOf(async () => giving(asked++, ''))
    const got = await listenerOn(english).hear(note({ from: 'teo' }), bring)
    expect(got.replies[0]!.text).toMatch(/Escríbelo/)
    expect(asked).toBe(0)
    const both = earOf(async (_, lang) => (lang === 'es' ? 'puse 5 viajes de maíz en quarry' : ''), ['en', 'es'])
    expect(await listenerOn(both).hear(note({ from: 'teo' }), bring)).toMatchObject({ recorded: [{ type: 'load', count: 5 }] })
  })
})

describe('a restart', () => {
  it('hears what was waiting, from the file where it had been fetched', async () => {
    const l = listenerOn(
      earOf((_, __, signal) => new Promise((_r, reject) => signal!.addEventListener('abort', () => reject(signal!.reason)))),
    )
    const m = note()
    const lost = l.hear(m, bring)
    const next = l.hear(note(), bring)
    while (!waiting().length) await new Promise(resolve => setTimeout(resolve, 5))
    const ends = Promise.allSettled([lost, next])
    await l.close()
    expect((await ends).map(e => e.status)).toEqual(['rejected', 'rejected'])
    store.close()
    open()
    expect(store.unsettled()).toHaveLength(2)
    const fetched: string[] = []
    const got = await listenerOn(SEVEN).resume('post', async x => giving(fetched.push(x.id), SILENCE))
    expect(got.map(r => r.recorded.length)).toEqual([1, 1])
    expect(fetched).toEqual(['m4'])
    expect(store.unsettled()).toEqual([])
    expect(waiting()).toEqual([])
  })

  it('leaves the notes of other channels to them', async () => {
    store.take(note({ channel: 'else' }))
    expect(await listenerOn(SEVEN).resume('post', bring)).toEqual([])
    expect(store.unsettled()).toHaveLength(1)
  })
})

it('a spoken answer goes out as one more reply', async () => {
  const file = join(folder, 'said.ogg')
  writeFileSync(file, SILENCE)
  const said: string[] = []
  const l = listenerOn(SEVEN, { speak: async text => giving(said.push(text), file) })
  const got = await l.hear(note(), bring)
  expect(got.replies).toMatchObject([{ text: said[0] }, { text: '', voice: file, under: 'm3' }])
  expect(store.queued('post').at(-1)!.reply).toMatchObject({ voice: file })
})
