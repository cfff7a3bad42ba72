import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { type Api, GrammyError, HttpError, InputFile } from 'grammy'
import type { Logger } from 'pino'
import { isStoreFault } from './faults.ts'
import { keyboardFor } from './keyboard.ts'
import { CHANNEL, type ChannelStore, type Letter } from './options.ts'
import { parts } from './parts.ts'
import { apiSignal } from './reach.ts'

/** Bot API, "sendPhoto": a caption has up to 1024 characters. */
const CAPTION_MAX = 1024
/** The longest wait between two tries, ms. */
const RETRY_MAX_MS = 5 * 60_000

export interface PostOptions {
  api: Api
  log: Pick<ChannelStore, 'queued' | 'sent' | 'failed'>
  logger: Logger
  retryMs: number
  /** The token is refused, or another program reads this bot: sending makes no sense any more. */
  onFatal(error: GrammyError): void
}

export interface Post {
  /** Something may be waiting. */
  wake(): void
  /** Sends no more; resolves when the letter in hand is sent or given up after `graceMs`. */
  stop(graceMs: number): Promise<void>
}

/** Only in groups: in a private chat the quote above every answer is noise. */
const under = (letter: Letter, chat: string) => {
  const id = Number(letter.reply.under)
  if (!chat.startsWith('-') || !Number.isInteger(id)) return {}
  return { reply_parameters: { message_id: id, allow_sending_without_reply: true } }
}

const said = (error: unknown): string =>
  error instanceof GrammyError ? error.description : error instanceof Error ? error.message : String(error)

/** These two mean that the edit was done before: the process died between the edit and its note in the book. */
const isDone = (error: unknown): boolean => error instanceof GrammyError && error.description.includes('message is not modified')

/**
 * Empties the outbox: what stands in it is sent in the order of its chat, and noted as sent once Telegram has taken it.
 * A process that dies between the two sends that one letter again; none is lost.
 */
export const makePost = ({ api, log, logger, retryMs, onFatal }: PostOptions): Post => {
  const stopping = new AbortController()
  const signal = apiSignal(stopping.signal)
  const held = new Map<string, { until: number; wait: number }>()
  let timer: NodeJS.Timeout | undefined
  let running: Promise<void> | undefined
  let again = false
  let closed = false

  /** Its bytes, not a path: a stream of a file that is gone never ends the request, and can't be sent a second time. */
  const attachment = async (path: string): Promise<InputFile | undefined> => {
    try {
      return new InputFile(await readFile(path), basename(path))
    } catch (error) {
      logger.warn({ path, why: said(error) }, 'a picture is gone; its words are sent alone')
      return undefined
    }
  }

  const sendAnew = async (letter: Letter, chat: string): Promise<number> => {
    const { reply } = letter
    const keyboard = keyboardFor(reply)
    const path = reply.picture ?? reply.file
    const file = path === undefined ? undefined : await attachment(path)
    const pieces = parts(reply.text)
    const caption = file && pieces.length === 1 && pieces[0]!.length <= CAPTION_MAX ? pieces.pop() : undefined
    let id = 0
    for (const [i, piece] of pieces.entries()) {
      const last = i === pieces.length - 1 && !file
      const more = { ...(i === 0 && under(letter, chat)), ...(last && keyboard && { reply_markup: keyboard }) }
      const sent = await api.sendMessage(chat, piece, { link_preview_options: { is_disabled: true }, ...more }, signal)
      id = sent.message_id
    }
    if (!file) return id
    const more = { ...under(letter, chat), ...(caption && { caption }), ...(keyboard && { reply_markup: keyboard }) }
    const send = reply.picture ? api.sendPhoto.bind(api) : api.sendDocument.bind(api)
    return (await send(chat, file, more, signal)).message_id
  }

  const sendOne = async (letter: Letter, chat: string): Promise<number> => {
    const { reply, instead } = letter
    if (instead === undefined || reply.picture || reply.file || parts(reply.text).length > 1) return await sendAnew(letter, chat)
    try {
      const keyboard = keyboardFor(reply)
      await api.editMessageText(chat, Number(instead), reply.text, keyboard && { reply_markup: keyboard }, signal)
      return Number(instead)
    } catch (error) {
      if (isDone(error)) return Number(instead)
      // The question was deleted, or is too old to be changed: the answer still has to be said.
      if (error instanceof GrammyError && error.error_code === 400) return await sendAnew(letter, chat)
      throw error
    }
  }

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
    if (!forGood && !ours) hold(letter.chat, error instanceof GrammyError ? error.parameters.retry_after : undefined)
  }

  const deliver = async (letter: Letter): Promise<void> => {
    try {
      let id: number
      try {
        id = await sendOne(letter, letter.chat)
      } catch (error) {
        const moved = error instanceof GrammyError ? error.parameters.migrate_to_chat_id : undefined
        if (moved === undefined) throw error
        id = await sendOne({ ...letter, instead: undefined }, String(moved))
      }
      log.sent(letter.id, String(id))
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
      for (const letter of log.queued(CHANNEL)) {
        // Order within a chat: what comes after a letter that failed waits with it.
        if (isHeld(letter.chat)) continue
        await deliver(letter)
        if (stopping.signal.aborted || closed) return
      }
    } while (again)
    const next = Math.min(...[...held.values()].map(h => h.until).filter(t => t > Date.now()))
    if (Number.isFinite(next)) timer = setTimeout(wake, next - Date.now() + 1)
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
    stop: async graceMs => {
      closed = true
      clearTimeout(timer)
      const limit = setTimeout(() => stopping.abort(), graceMs)
      await running
      clearTimeout(limit)
    },
  }
}
