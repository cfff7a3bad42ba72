import { autoRetry } from '@grammyjs/auto-retry'
import { Bot, type Context, HttpError } from 'grammy'
import type { UserFromGetMe } from 'grammy/types'
import type { Result } from '../../ports.ts'
import { type Door, makeDoor } from './door.ts'
import { makeEnter } from './enter.ts'
import { isStoreFault, scrubber, TelegramFault } from './faults.ts'
import { type Heard, hear } from './heard.ts'
import { CHANNEL, FARM, type TelegramOptions } from './options.ts'
import { binding, isBound, langOf, memberOf, unbinding } from './people.ts'
import { makePost } from './post.ts'
import { fatalOf, introduce } from './reach.ts'
import { closeQuietly, dropButtons, tapOf } from './taps.ts'

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
const STOP_GRACE_MS = 5000
const UPDATES = ['message', 'edited_message', 'callback_query'] as const

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
  const enter = makeEnter(log, o.book)
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
    door ??= makeDoor({ ...o, enter, now, me })
    return door
  }

  /** Something of ours failed with one message. It is kept; the others must not wait behind it. */
  const apologise = (heard: Pick<Heard, 'message' | 'user'>, error: unknown): void => {
    if (isStoreFault(error)) throw error
    const { message, user } = heard
    logger.error(
      { chat: message.chat, message: message.id, why: scrub(error instanceof Error ? (error.stack ?? error.message) : String(error)) },
      'a message failed',
    )
    log.take(message)
    if (!message.private && !message.addressed) return
    const text = o.say({ code: 'telegram-trouble', data: {} }, langOf(user, memberOf(o.book(), message.from)))
    log.append(FARM, CHANNEL, [], [{ to: message.chat, text, under: message.id }])
  }

  const guessing = new Set<Promise<void>>()
  /** The plain answer goes out at once; a guess that comes later is asked about in a message of its own. */
  const offer = (message: Heard['message'], result: Result): void => {
    if (!o.second) return
    const asking = o
      .second(message, result, leaving.signal)
      .then(asked => {
        if (asked) post.wake()
      })
      .catch(error => {
        if (isStoreFault(error)) end(error)
        else logger.error({ chat: message.chat, message: message.id, why: scrub(String(error)) }, 'a guess failed')
      })
      .finally(() => guessing.delete(asking))
    guessing.add(asking)
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
    enter(message, [unbinding(chat), ...binding(String(to))], {
      outcome: 'answered',
      recorded: [],
      withdrawn: [],
      asks: [],
      answers: [],
      replies: [],
    })
  }

  // What comes after a message that could not be stored must not get into the book before it.
  bot.use(async (_, next) => {
    if (!fatal) await next()
  })

  bot.on(['message', 'edited_message'], ctx => {
    const to = ctx.message?.migrate_to_chat_id
    if (to !== undefined) return move(ctx, to)
    const heard = hear(ctx.update, ctx.me, sent)
    if (!heard) return
    try {
      const message = doorFor(ctx.me)(heard)
      if (message) offer(message, o.handle(message))
    } catch (error) {
      apologise(heard, error)
    }
    post.wake()
  })

  bot.on('callback_query', async ctx => {
    const query = ctx.callbackQuery
    const shown = query.message
    const letter = shown && sent(String(shown.chat.id), String(shown.message_id))
    const tapped = tapOf(query, letter, now())
    const member = memberOf(o.book(), String(query.from.id))
    const allowed = member && tapped && (tapped.message.private || isBound(o.book(), tapped.message.chat))
    const stale = allowed && tapped.message.pick && !o.book().questions.has(tapped.message.pick.question)
    // Stops the button's turning wheel. A tap that is too old to be answered is no harm.
    ctx
      .answerCallbackQuery(stale ? { text: o.say({ code: 'telegram-settled', data: {} }, langOf(query.from, member)) } : {})
      .catch(error => logger.debug({ why: scrub(String(error)) }, 'a tap could not be answered'))
    if (!allowed) return
    // Its label alone would be read as something said anew.
    if (stale) return await dropButtons(bot.api, tapped, letter, logger)
    const { message } = tapped
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

  let listening: () => void
  const started = new Promise<void>(resolve => {
    listening = resolve
  })
  const run = async (): Promise<void> => {
    try {
      const me = await introduce(bot.api, leaving.signal)
      if (me) {
        bot.botInfo = me
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
      fatal ??= fatalOf(error) ?? new Error(scrub(error instanceof Error ? error.message : String(error)))
    }
    leaving.abort()
    await Promise.all(guessing)
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
