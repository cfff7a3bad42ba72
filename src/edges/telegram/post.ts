import { type Api, GrammyError, HttpError } from 'grammy'
import type { Logger } from 'pino'
import { isStoreFault } from '../joining/storeFault.ts'
import type { Buttons } from './buttons.ts'
import { CHANNEL, type ChannelStore, type Letter } from './options.ts'
import { makeSender, said } from './sending.ts'

/** The longest wait between two tries, ms. */
const RETRY_MAX_MS = 5 * 60_000

export interface PostOptions {
  api: Api
  log: Pick<ChannelStore, 'queued' | 'sent' | 'failed'>
  logger: Logger
  retryMs: number
  /** The token is refused, or another program reads this bot: sending makes no sense any more. */
  onFatal(error: GrammyError): void
  /** Somebody stopped us, or put us out of a group. */
  onClosed(chat: string, why: string): void
  /** Where a letter goes now; undefined where it must not go out any more. */
  addressOf(letter: Letter): string | undefined
  buttons: Buttons
}

export interface Post {
  /** Something may be waiting. */
  wake(): void
  /** What waits for a chat is let go. */
  drop(chat: string, why: string): void
  /** Sends no more; resolves when the letter in hand is sent or given up after `graceMs`. */
  stop(graceMs: number): Promise<void>
}

/**
 * Empties the outbox: what stands in it is sent in the order of its chat, and noted as sent once Telegram has taken it.
 * A process that dies between the two sends that one letter again; none is lost.
 */
export const makePost = ({ api, log, logger, retryMs, onFatal, onClosed, addressOf, buttons }: PostOptions): Post => {
  const stopping = new AbortController()
  const sendOne = makeSender(api, logger, stopping.signal)
  const held = new Map<string, { until: number; wait: number }>()
  /** Let go while a round with it was under way. */
  const gone = new Set<number>()
  let timer: NodeJS.Timeout | undefined
  let running: Promise<void> | undefined
  let again = false
  let closed = false

  const hold = (chat: string, seconds?: number): void => {
    const wait = Math.min(RETRY_MAX_MS, (held.get(chat)?.wait ?? retryMs / 2) * 2)
    held.set(chat, { until: Date.now() + (seconds === undefined ? wait : seconds * 1000), wait })
  }

  const failed = (letter: Letter, error: unknown): void => {
    const why = said(error)
    if (error instanceof GrammyError && (error.error_code === 401 || error.error_code === 409)) {
      onFatal(error)
      return
    }
    // Telegram will not change its mind about these: blocked, no such chat, a text it does not take.
    const forGood = error instanceof GrammyError && error.error_code >= 400 && error.error_code < 500 && error.error_code !== 429
    // Anything that is neither Telegram's answer nor the network is a slip of our own, and would fail for ever.
    const ours = !(error instanceof GrammyError || error instanceof HttpError)
    log.failed(letter.id, why, forGood || ours)
    logger.warn({ chat: letter.chat, letter: letter.id, tries: letter.tries + 1, why, forGood: forGood || ours }, 'a reply was not taken')
    if (error instanceof GrammyError && error.error_code === 403) onClosed(letter.chat, why)
    if (!forGood && !ours) hold(letter.chat, error instanceof GrammyError ? error.parameters.retry_after : undefined)
  }

  const deliver = async (letter: Letter): Promise<void> => {
    const address = addressOf(letter)
    if (address === undefined) return log.failed(letter.id, 'not a chat of the farm', true)
    let chat = address
    try {
      let mark: string
      try {
        mark = await sendOne(chat === letter.chat ? letter : { ...letter, instead: undefined }, chat)
      } catch (error) {
        const moved = error instanceof GrammyError ? error.parameters.migrate_to_chat_id : undefined
        if (moved === undefined) throw error
        chat = String(moved)
        mark = await sendOne({ ...letter, instead: undefined }, chat)
      }
      log.sent(letter.id, mark)
      buttons.shown(letter, { chat, messageId: mark })
      held.delete(letter.chat)
    } catch (error) {
      if (isStoreFault(error)) throw error
      if (!stopping.signal.aborted) failed(letter, error)
    }
  }

  const isHeld = (chat: string): boolean => (held.get(chat)?.until ?? 0) > Date.now()

  const empty = async (): Promise<void> => {
    do {
      again = false
      // Order within a chat: what comes after a letter that failed waits with it, also where its wait ends before the round does.
      const behind = new Set<string>()
      for (const letter of log.queued(CHANNEL)) {
        if (gone.delete(letter.id)) continue
        if (isHeld(letter.chat)) behind.add(letter.chat)
        if (behind.has(letter.chat)) continue
        await deliver(letter)
        if (held.has(letter.chat)) behind.add(letter.chat)
        if (stopping.signal.aborted || closed) return
      }
      gone.clear()
      await buttons.sweep()
    } while (again)
    if (!held.size) return
    const waiting = new Set(log.queued(CHANNEL).map(letter => letter.chat))
    for (const chat of [...held.keys()]) if (!waiting.has(chat)) held.delete(chat)
    // A wait may have ended while other chats were served: then it goes on at once.
    const next = Math.min(...[...held.values()].map(h => h.until))
    if (Number.isFinite(next)) timer = setTimeout(wake, Math.max(1, next - Date.now()))
  }

  const wake = (): void => {
    clearTimeout(timer)
    again = true
    if (closed || running !== undefined) return
    running = empty()
      .catch(error => logger.error({ why: said(error) }, 'the outbox could not be read'))
      .finally(() => {
        running = undefined
        if (again && !closed) wake()
      })
  }

  return {
    wake,
    drop: (chat, why) => {
      for (const letter of log.queued(CHANNEL)) {
        if (letter.chat !== chat) continue
        log.failed(letter.id, why, true)
        gone.add(letter.id)
      }
    },
    stop: async graceMs => {
      closed = true
      clearTimeout(timer)
      const limit = setTimeout(() => stopping.abort(), graceMs)
      await running
      clearTimeout(limit)
    },
  }
}
