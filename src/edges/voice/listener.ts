import { type Book, boxes, lessons, nameOf, pileNames } from '../../book/book.ts'
import { noteOf } from '../../hearing/note.ts'
import type { Ear, EventLog, FarmWords, Heard, HeardNote, Incoming, Lang, Listener, Reply, Result } from '../../ports.ts'
import { ownLang } from '../joining/lang.ts'
import { EarFault } from './fault.ts'
import { keptIn } from './kept.ts'
import { makeQueue } from './queue.ts'
import { secondsOf, soundOf } from './sound.ts'

/** A minute and a half says more than a day's loads; Telegram's own notes of that length are below 1 MB. */
export const LIMITS = { seconds: 90, bytes: 3_000_000, atLeastMs: 60_000, msASecond: 4000 }

export interface ListenerParts {
  /** Without one every note is answered with a word that none is set up. */
  ear?: Ear
  handle(message: Incoming): Result
  book(farm: string): Book
  log: Pick<EventLog, 'take' | 'unsettled' | 'append'>
  /** Where notes wait; they are gone from there when they are settled. */
  folder: string
  /** Told of what the ear threw, for the owner's log. */
  trouble?: (why: string) => void
  /** Makes a short reply a voice note too: the path of its file, or nothing. */
  speak?: (text: string, lang: Lang, name: string) => Promise<string | undefined>
  limits?: Partial<typeof LIMITS>
}

/** The farm's own words, for the ear. */
export const farmWords = (book: Book): FarmWords => ({
  piles: [...pileNames(book).keys()],
  boxes: [...boxes(book).keys()],
  people: [...book.members.keys()].map(p => nameOf(book, p)),
  words: [...lessons(book).keys()],
})

const langOf = (book: Book, person: string): Lang => ownLang(book, person) ?? 'en'

const aborted = (): Error => new DOMException('the listener was closed', 'AbortError')

export const makeListener = (o: ListenerParts): Listener => {
  const limits = { ...LIMITS, ...o.limits }
  const kept = keptIn(o.folder)
  const inTurn = makeQueue()
  const leaving = new AbortController()
  const busy = new Set<Promise<unknown>>()

  const tooMuch = (seconds = 0, bytes = 0): EarFault | undefined =>
    seconds > limits.seconds
      ? new EarFault('voice-too-long', { most: limits.seconds })
      : bytes > limits.bytes
        ? new EarFault('voice-too-large')
        : undefined

  const bytesOf = async (message: Incoming, fetch: () => Promise<Uint8Array>): Promise<Uint8Array> => {
    const waiting = await kept.read(message)
    if (waiting) return waiting
    const known = tooMuch(message.voice?.seconds, message.voice?.bytes)
    if (known) throw known
    const bytes = await fetch().catch(error => {
      o.trouble?.(`a voice note could not be fetched: ${error instanceof Error ? error.message : String(error)}`)
      throw new EarFault('voice-lost')
    })
    await kept.write(message, bytes)
    return bytes
  }

  const listen = async (ear: Ear, message: Incoming, lang: Lang, bytes: Uint8Array): Promise<Heard> => {
    const seconds = secondsOf(bytes)
    const known = tooMuch(seconds, bytes.length)
    if (known) throw known
    const late = AbortSignal.timeout(Math.max(limits.atLeastMs, (seconds ?? 0) * limits.msASecond))
    const signal = AbortSignal.any([late, leaving.signal])
    try {
      const sound = await soundOf(bytes)
      signal.throwIfAborted()
      return await ear.hear(sound, farmWords(o.book(message.farm)), lang, signal)
    } catch (error) {
      if (late.aborted) throw new EarFault('voice-slow')
      throw error
    }
  }

  /** The note's words, or why there are none. */
  const heardIn = async (message: Incoming, fetch: () => Promise<Uint8Array>): Promise<HeardNote & { text: string }> => {
    const none = (code: string, data: EarFault['data'] = {}) => ({ text: '', wordings: [], trouble: { code, data } })
    if (!o.ear) return none('voice-off')
    const lang = langOf(o.book(message.farm), message.from)
    if (!o.ear.langs.includes(lang)) return none('voice-no-spanish')
    try {
      const { piles, boxes } = farmWords(o.book(message.farm))
      return noteOf(await listen(o.ear, message, lang, await bytesOf(message, fetch)), [...piles, ...boxes]) ?? none('voice-nothing')
    } catch (error) {
      if (leaving.signal.aborted) throw aborted()
      if (!(error instanceof EarFault)) {
        o.trouble?.(String(error))
        return none('voice-trouble', { why: error instanceof Error ? error.message.slice(0, 120) : '?' })
      }
      if (error.code.startsWith('ear-') || error.code === 'voice-trouble') o.trouble?.(error.message)
      return none(error.code, error.data)
    }
  }

  /** The reply said aloud, as one more. Without it the text still stands. */
  const spoken = async (message: Incoming, result: Result): Promise<Result> => {
    const [first] = result.replies
    if (!o.speak || !first?.text) return result
    const file = await o
      .speak(first.text, langOf(o.book(message.farm), message.from), `${message.chat}-${message.id}`)
      .catch(() => undefined)
    if (file === undefined || leaving.signal.aborted) return result
    const reply: Reply = { to: first.to, text: '', voice: file, ...(first.under !== undefined && { under: first.under }) }
    o.log.append(message.farm, message.channel, [], [reply])
    return { ...result, replies: [...result.replies, reply] }
  }

  const one = async (message: Incoming, fetch: () => Promise<Uint8Array>): Promise<Result> => {
    if (leaving.signal.aborted) throw aborted()
    // settled meanwhile, by an earlier call with the same note
    const before = o.log.take(message)
    if (before.result) return before.result
    const { text, ...heard } = await heardIn(message, fetch)
    const result = o.handle({ ...message, text, heard, ...(/\bpile ?hand\b/i.test(text) && { addressed: true }) })
    await kept.drop(message)
    return spoken(message, result)
  }

  const hear: Listener['hear'] = (message, fetch) => {
    if (leaving.signal.aborted) return Promise.reject(aborted())
    let taken: ReturnType<EventLog['take']>
    try {
      taken = o.log.take(message)
    } catch (error) {
      return Promise.reject(error)
    }
    if (taken.result) return Promise.resolve(taken.result)
    const work = inTurn(message.farm, () => one(message, fetch)).finally(() => busy.delete(work))
    busy.add(work)
    return work
  }

  return {
    hear,
    resume: (channel, fetch) =>
      Promise.all(
        o.log
          .unsettled()
          .filter(m => m.channel === channel && m.voice && m.text === '')
          .map(m => hear(m, () => fetch(m))),
      ),
    close: async () => {
      leaving.abort()
      await Promise.allSettled(busy)
      o.ear?.close()
    },
  }
}
