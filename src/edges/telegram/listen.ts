import { randomBytes } from 'node:crypto'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { type Bot, BotError, GrammyError, webhookCallback } from 'grammy'
import type { Logger } from 'pino'
import { TelegramFault } from './faults.ts'
import type { Webhook } from './options.ts'
import { apiSignal, persist } from './reach.ts'

/** What we ask Telegram for; all else stays there. */
export const UPDATES = ['message', 'edited_message', 'callback_query', 'my_chat_member'] as const

/** An update is some kilobytes; what is far larger is none. */
const BODY_MOST = 1_000_000

/** A webhook with its secret: a new one at each start tells Telegram's calls from those of anybody who kept the old one. */
export type Secured = Webhook & { secret: string }
export const secured = (webhook: Webhook): Secured => ({ ...webhook, secret: webhook.secret ?? randomBytes(24).toString('hex') })

export interface Hooked {
  close(): Promise<void>
}

/**
 * Lets Telegram call us. One call at a time: the order of the updates is the order of the book. A call is answered with 200 only once
 * its update is stored; anything else makes Telegram send it again. `broken` says that nothing more can be stored.
 */
export const openHook = async (
  bot: Bot,
  { url, secret, host, port }: Secured,
  logger: Logger,
  broken: () => boolean,
  onError: (error: unknown) => void,
): Promise<Hooked> => {
  const handle = webhookCallback(bot, 'http', { secretToken: secret, timeoutMilliseconds: 60_000, onTimeout: 'throw' })
  const path = new URL(url).pathname
  let tail: Promise<void> = Promise.resolve()

  const refuse = (res: ServerResponse, status: number): void => {
    if (!res.headersSent) res.writeHead(status)
    res.end()
  }
  const one = async (req: IncomingMessage, res: ServerResponse): Promise<void> => {
    if (broken()) return refuse(res, 503)
    try {
      await handle(req, res)
    } catch (error) {
      // what wraps it carries the update and the token with it
      onError(error instanceof BotError ? error.error : error)
      refuse(res, 500)
    }
  }
  const server: Server = createServer((req, res) => {
    if (req.url?.split('?')[0] !== path) return refuse(res, 404)
    if (req.method !== 'POST') return refuse(res, 405)
    if (Number(req.headers['content-length'] ?? 0) > BODY_MOST) return refuse(res, 413)
    tail = tail.then(() => one(req, res))
  })
  await new Promise<void>((resolve, reject) => {
    server.once('error', e => reject(new TelegramFault('telegram-webhook-port', e.message)))
    server.listen(port, host, resolve)
  })
  logger.info({ host, port }, 'waiting for calls')
  return {
    close: async () => {
      const closed = new Promise(resolve => server.close(resolve))
      server.closeIdleConnections()
      await tail
      server.closeAllConnections()
      await closed
    },
  }
}

/** Tells Telegram where to call: one call at a time, so that it keeps the order too. */
export const announce = (bot: Bot, { url, secret }: Secured, signal: AbortSignal): Promise<unknown> =>
  persist(
    s => bot.api.setWebhook(url, { secret_token: secret, allowed_updates: [...UPDATES], max_connections: 1 }, apiSignal(s)),
    signal,
  ).catch(error => {
    throw error instanceof GrammyError && error.error_code === 400
      ? new TelegramFault('telegram-webhook-refused', error.description)
      : error
  })
