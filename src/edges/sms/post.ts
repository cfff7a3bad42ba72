import type { Logger } from 'pino'
import { CHANNEL, type Letter, type SmsStore } from './options.ts'
import { SIGNATURE_HEADER, sign, TIME_HEADER } from './signature.ts'

/** The longest wait between two tries, ms. */
const RETRY_MAX_MS = 15 * 60_000
const TIMEOUT_MS = 20_000
/** These say that the message itself will never be taken; all others may pass (a key that is set right, a gateway that is back). */
const NEVER = new Set([400, 410, 422])

export interface PostOptions {
  log: Pick<SmsStore, 'queued' | 'sent' | 'failed'>
  logger: Logger
  url: string
  secret: string
  partsOf(letter: Letter): string[]
  /** Letters that somebody else has in hand: a response carries them. */
  busy: Set<number>
  nowMs(): number
  retryMs: number
  timeoutMs?: number
}

export interface Post {
  /** Something may be waiting. */
  wake(): void
  stop(): Promise<void>
}

class Refused extends Error {
  readonly forGood: boolean
  readonly waitMs: number | undefined
  constructor(status: number, after: string | null) {
    super(`the gateway answered ${status}`)
    this.forGood = NEVER.has(status)
    // RFC 9110, 10.2.3: seconds, or a date, which is left to the usual wait
    this.waitMs = after !== null && /^\d{1,6}$/.test(after) ? Number(after) * 1000 : undefined
  }
}

/** Sends what waits in the outbox to the gateway, in the order of its telephone; what is not taken waits and is tried again. */
export const makePost = (o: PostOptions): Post => {
  const stopping = new AbortController()
  const held = new Map<string, { until: number; wait: number }>()
  let timer: NodeJS.Timeout | undefined
  let running: Promise<void> | undefined
  let again = false

  const send = async (letter: Letter): Promise<void> => {
    // the id stays the same when it is tried again, so that a gateway can tell
    const body = JSON.stringify({ to: letter.chat, id: `${CHANNEL}-${letter.id}`, parts: o.partsOf(letter) })
    const time = String(Math.floor(o.nowMs() / 1000))
    const response = await fetch(o.url, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json', [TIME_HEADER]: time, [SIGNATURE_HEADER]: sign(o.secret, time, body) },
      body,
      redirect: 'error',
      signal: AbortSignal.any([stopping.signal, AbortSignal.timeout(o.timeoutMs ?? TIMEOUT_MS)]),
    })
    await response.body?.cancel()
    if (!response.ok) throw new Refused(response.status, response.headers.get('Retry-After'))
  }

  const failed = (letter: Letter, error: unknown): void => {
    const why = error instanceof Error ? error.message : String(error)
    const refused = error instanceof Refused ? error : undefined
    o.log.failed(letter.id, why, refused?.forGood)
    o.logger.warn({ letter: letter.id, why, forGood: refused?.forGood ?? false }, 'a text message was not taken')
    if (refused?.forGood) return
    const wait = Math.min(RETRY_MAX_MS, (held.get(letter.chat)?.wait ?? o.retryMs / 2) * 2)
    held.set(letter.chat, { until: Date.now() + (refused?.waitMs ?? wait), wait })
  }

  const isHeld = (chat: string): boolean => (held.get(chat)?.until ?? 0) > Date.now()

  // looked up anew each time: a response may have carried what stood there a moment ago
  const next = (): Letter | undefined => o.log.queued(CHANNEL).find(l => !isHeld(l.chat) && !o.busy.has(l.id))

  const empty = async (): Promise<void> => {
    again = false
    for (let letter = next(); letter && !stopping.signal.aborted; letter = next()) {
      o.busy.add(letter.id)
      try {
        await send(letter)
        o.log.sent(letter.id, `out-${letter.id}`)
        held.delete(letter.chat)
      } catch (error) {
        if (!stopping.signal.aborted) failed(letter, error)
      } finally {
        o.busy.delete(letter.id)
      }
    }
    const until = Math.min(...[...held.values()].map(h => h.until).filter(t => t > Date.now()))
    if (Number.isFinite(until)) timer = setTimeout(wake, until - Date.now() + 1)
  }

  const wake = (): void => {
    clearTimeout(timer)
    again = true
    if (stopping.signal.aborted || running !== undefined) return
    running = empty()
      .catch(error => o.logger.error({ why: String(error) }, 'the outbox could not be read'))
      .finally(() => {
        running = undefined
        if (again) wake()
      })
  }

  return {
    wake,
    stop: async () => {
      stopping.abort()
      clearTimeout(timer)
      await running
    },
  }
}
