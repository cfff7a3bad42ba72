import { autoRetry } from '@grammyjs/auto-retry'
import { Bot, type Context, GrammyError, HttpError } from 'grammy'
import type { UserFromGetMe } from 'grammy/types'
import { type Door, makeDoor } from './door.ts'
import { isStoreFault, scrubber, TelegramFault } from './faults.ts'
import { type Heard, hear } from './heard.ts'
import { CHANNEL, FARM, type TelegramOptions } from './options.ts'
import { binding, isBound, langOf, memberOf, unbinding } from './people.ts'
import { makePost } from './post.ts'
import { closeQuietly, tapOf } from './taps.ts'

export type { ChannelStore, Core, TelegramOptions } from './options.ts'

export interface TelegramRun {
  /** Resolves when the bot is known to Telegram and listens. */
  started: Promise<void>
  /** Resolves after `stop`; rejects with a TelegramFault, or with the store's fault, where the channel can not go on. */
  done: Promise<void>
  /** Replies were put in the outbox from elsewhere: the clock. */
  wake(): void
  /** Handles what it has in hand and goes; the rest stays with Telegram, and in the outbox. */
  stop(): Promise<void>
}

/** Beyond this a wait is the outbox's business, which lets other chats pass meanwhile, seconds. */
const SHORT_WAIT = 3
/** Waits between tries to reach Telegram at the start, ms. A machine at the end of a lane starts before its line is up. */
const FIRST_TRY_MS = 1000
const LAST_TRY_MS = 30_000
const STOP_GRACE_MS = 5000
const UPDATES = ['message', 'edited_message', 'callback_query'] as const

const sleep = (ms: number, signal: AbortSignal): Promise<void> =>
  new Promise(resolve => {
    if (signal.aborted) return resolve()
    const timer = setTimeout(resolve, ms)
    signal.addEventListener('abort', () => (clearTimeout(timer), resolve()), { once: true })
  })

const fatalOf = (error: GrammyError): TelegramFault | undefined => {
  if (error.error_code === 409) return new TelegramFault('telegram-second-reader', error.description)
  // A token that never was one gets 404, one that was taken back 401.
  if (error.error_code === 401 || (error.error_code === 404 && error.method === 'getMe'))
    return new TelegramFault('telegram-token-refused', error.description)
  return undefined
}

/**
 * The crew's chat on Telegram, by long polling.
 *
 * Updates come at least once and are settled once: each is stored and settled, with its replies, before the next is
 * asked for, and the same one again finds itself settled. Replies leave by the outbox. So a process that dies at any
 * point loses nothing; at worst one reply goes out twice.
 */
export const runTelegram = (o: TelegramOptions): TelegramRun => {
  const now = o.now ?? (() => new Date().toISOString())
  const scrub = scrubber(o.token)
  const { logger, log } = o
  const leaving = new AbortController()
  let fatal: Error | undefined

  const bot = new Bot(o.token, { client: { timeoutSeconds: 60, ...(o.apiRoot && { apiRoot: o.apiRoot }) } })
  bot.api.config.use(
    autoRetry({ maxRetryAttempts: 3, maxDelaySeconds: SHORT_WAIT, rethrowHttpErrors: true, rethrowInternalServerErrors: true }),
  )
  bot.api.config.use(async (prev, method, payload, signal) => {
    // Asking for updates confirms the ones before. After a fatal fault the last one was not stored, so it must not be confirmed.
    if (fatal && method === 'getUpdates') throw new Error('stopped')
    try {
      const answer = await prev(method, payload, signal)
      if (!answer.ok) logger.debug({ method, code: answer.error_code, why: answer.description }, 'Telegram said no')
      return answer
    } catch (error) {
      if (!leaving.signal.aborted)
        logger.warn({ method, why: error instanceof HttpError ? 'no connection' : scrub(String(error)) }, 'Telegram could not be reached')
      throw error
    }
  })

  const end = (error: Error): void => {
    fatal ??= error
    leaving.abort()
    // Its last getUpdates is refused above.
    bot.stop().catch(() => undefined)
  }
  const post = makePost({
    api: bot.api,
    log,
    logger,
    retryMs: o.retryMs ?? 2000,
    onFatal: error => end(fatalOf(error) ?? new TelegramFault('telegram-token-refused', error.description)),
  })

  const sent = (chat: string, id: string) => log.sentMessage(CHANNEL, chat, id)
  let door: Door | undefined
  const doorFor = (me: UserFromGetMe): Door => {
    door ??= makeDoor({ ...o, now, me })
    return door
  }

  /** Something of ours failed with one message. It is stored; the others must not wait behind it. */
  const apologise = (heard: Pick<Heard, 'message' | 'user'>, error: unknown): void => {
    if (isStoreFault(error)) throw error
    const { message, user } = heard
    logger.error(
      { chat: message.chat, message: message.id, why: scrub(error instanceof Error ? (error.stack ?? error.message) : String(error)) },
      'a message failed',
    )
    if (!message.private && !message.addressed) return
    const text = o.say({ code: 'telegram-trouble', data: {} }, langOf(user, memberOf(o.book(), message.from)))
    log.append(FARM, CHANNEL, [], [{ to: message.chat, text, under: message.id }])
  }

  /** A group that outgrew its number: what was bound stays bound under the new one (Bot API, "migrate_to_chat_id"). */
  const move = (ctx: Context, to: number): void => {
    const msg = ctx.msg!
    const chat = String(msg.chat.id)
    if (!isBound(o.book(), chat)) return
    const message = {
      channel: CHANNEL,
      farm: FARM,
      chat,
      private: false,
      from: String(msg.from?.id ?? msg.chat.id),
      id: String(msg.message_id),
      edit: '',
      at: now(),
      text: '',
    }
    o.enter(message, [unbinding(chat), ...binding(String(to))], {
      outcome: 'answered',
      recorded: [],
      withdrawn: [],
      asks: [],
      answers: [],
      replies: [],
    })
  }

  bot.on(['message', 'edited_message'], ctx => {
    const to = ctx.message?.migrate_to_chat_id
    if (to !== undefined) return move(ctx, to)
    const heard = hear(ctx.update, ctx.me, sent)
    if (!heard) return
    try {
      const message = doorFor(ctx.me)(heard)
      if (message) o.handle(message)
    } catch (error) {
      apologise(heard, error)
    }
    post.wake()
  })

  bot.on('callback_query', async ctx => {
    const query = ctx.callbackQuery
    // Stops the button's turning wheel. Too old to be answered is no harm.
    ctx.answerCallbackQuery().catch(error => logger.debug({ why: scrub(String(error)) }, 'a tap could not be answered'))
    const shown = query.message
    const tapped = shown && tapOf(query, sent(String(shown.chat.id), String(shown.message_id)), now())
    if (!tapped) return
    const { message } = tapped
    if (!memberOf(o.book(), message.from) || !(message.private || isBound(o.book(), message.chat))) return
    try {
      const result = o.handle(message)
      post.wake()
      await closeQuietly(bot.api, tapped, result, logger)
    } catch (error) {
      apologise({ message, user: query.from }, error)
      post.wake()
    }
  })

  // Without this grammY stops at a failing handler and confirms the update all the same. What arrives here was not stored.
  bot.catch(({ error }) => end(error instanceof Error ? error : new Error(scrub(String(error)))))

  /** Who we are; asked again and again as long as there is no line. */
  const introduce = async (): Promise<void> => {
    for (let wait = FIRST_TRY_MS; !leaving.signal.aborted; wait = Math.min(LAST_TRY_MS, wait * 2)) {
      try {
        bot.botInfo = await bot.api.getMe(leaving.signal as never)
        return
      } catch (error) {
        if (error instanceof GrammyError && error.error_code < 500 && error.error_code !== 429) throw error
        await sleep(wait, leaving.signal)
      }
    }
  }

  let listening: () => void
  const started = new Promise<void>(resolve => {
    listening = resolve
  })
  const run = async (): Promise<void> => {
    try {
      await introduce()
      if (!leaving.signal.aborted) {
        post.wake()
        await bot.start({
          allowed_updates: [...UPDATES],
          timeout: o.pollSeconds ?? 30,
          onStart: me => {
            logger.info({ bot: me.username }, 'listening on Telegram')
            listening()
          },
        })
      }
    } catch (error) {
      fatal ??= (error instanceof GrammyError && fatalOf(error)) || new Error(scrub(error instanceof Error ? error.message : String(error)))
    }
    leaving.abort()
    await post.stop(STOP_GRACE_MS)
    if (fatal) throw fatal
  }
  const done = run()

  return {
    started,
    done,
    wake: post.wake,
    stop: async () => {
      leaving.abort()
      await bot.stop().catch(() => undefined)
      await done.catch(() => undefined)
    },
  }
}
