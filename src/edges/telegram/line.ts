import { autoRetry } from '@grammyjs/auto-retry'
import { Bot, HttpError } from 'grammy'
import type { Update } from 'grammy/types'
import type { Logger } from 'pino'

/** Beyond this a wait is the outbox's business, which lets other chats pass meanwhile, seconds. */
const SHORT_WAIT = 3

export interface LineOptions {
  token: string
  apiRoot?: string
  logger: Logger
  scrub(text: string): string
  /** A fault ended the channel: nothing more may be confirmed. */
  broken(): boolean
  leaving: AbortSignal
}

/** A batch in the order of its updates: their numbers go up, in which order ever they were handed on (Bot API, "Update"). */
const inOrder = (answer: { ok: true; result: unknown }): void => {
  if (Array.isArray(answer.result)) (answer.result as Update[]).sort((a, b) => a.update_id - b.update_id)
}

/** The bot on its line: what is tried again at once, what is written down, and what is never confirmed. */
export const openLine = ({ token, apiRoot, logger, scrub, broken, leaving }: LineOptions): Bot => {
  const bot = new Bot(token, { client: { timeoutSeconds: 60, ...(apiRoot && { apiRoot }) } })
  bot.api.config.use(
    autoRetry({ maxRetryAttempts: 3, maxDelaySeconds: SHORT_WAIT, rethrowHttpErrors: true, rethrowInternalServerErrors: true }),
  )
  bot.api.config.use(async (prev, method, payload, signal) => {
    // Asking for updates confirms the ones before. After a fatal fault the last one was not stored, so it must not be confirmed.
    if (broken() && method === 'getUpdates') throw new Error('stopped')
    try {
      const answer = await prev(method, payload, signal)
      if (!answer.ok) logger.debug({ method, code: answer.error_code, why: answer.description }, 'Telegram said no')
      else if (method === 'getUpdates') inOrder(answer)
      return answer
    } catch (error) {
      if (!leaving.aborted)
        logger.warn({ method, why: error instanceof HttpError ? 'no connection' : scrub(String(error)) }, 'Telegram could not be reached')
      throw error
    }
  })
  return bot
}
