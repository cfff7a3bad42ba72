import { join } from 'node:path'
import type { Incoming, Result } from '../../ports.ts'
import { localDay } from '../../units/calendar.ts'
import { isStoreFault } from '../joining/storeFault.ts'
import { LONG_BOOK, writeBook } from './bookFile.ts'
import { busyIn } from './busy.ts'
import { makeButtons } from './buttons.ts'
import { SHOT_MOST } from './cargo.ts'
import { makeDesk } from './desk.ts'
import { type Door, makeDoor } from './door.ts'
import { makeFetch, NoFile } from './download.ts'
import { makeEntering } from './entering.ts'
import { makeErrands } from './errands.ts'
import { makeApology } from './errors.ts'
import { scrubber, TelegramFault } from './faults.ts'
import { makeFreight } from './freight.ts'
import type { Heard } from './heard.ts'
import { openLine } from './line.ts'
import { announce, openHook, type Secured, secured, UPDATES } from './listen.ts'
import { makeMenus } from './menus.ts'
import { makeMessages } from './messages.ts'
import { CHANNEL, FARM, type TelegramOptions } from './options.ts'
import { isOurs, langOf, nowAt, owners } from './people.ts'
import { makePost } from './post.ts'
import { fatalOf, introduce } from './reach.ts'
import { makeStaff } from './staff.ts'
import { makeTapping } from './tapping.ts'
import { makeUpkeep } from './upkeep.ts'

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

const STOP_GRACE_MS = 5000
const TELEGRAM = 'https://api.telegram.org'
/** Bot API, "getFile": bots can download files of up to 20 MB. */
const VOICE_MOST = 20_000_000

/**
 * The crew's chat on Telegram, by long polling or by webhook.
 *
 * Updates come at least once and are settled once: each is stored and settled, with its replies, before the next is
 * asked for, and the same one again finds itself settled. Replies leave by the outbox. So a process that dies at any
 * point loses nothing; at worst one reply goes out twice.
 */
export const runTelegram = (o: TelegramOptions): TelegramRun => {
  const now = o.now ?? (() => new Date().toISOString())
  const scrub = scrubber(o.token)
  const { logger, log, book } = o
  const leaving = new AbortController()
  let fatal: Error | undefined

  const bot = openLine({ ...o, scrub, broken: () => fatal !== undefined, leaving: leaving.signal })
  const end = (error: Error): void => {
    fatal ??= error
    leaving.abort()
    // Its last getUpdates is refused above.
    bot.stop().catch(() => undefined)
  }
  /** What is worked on beside the messages: a store that fails ends all of it. */
  const beside = new Set<Promise<void>>()
  const aside = (work: Promise<unknown>, what: string): void => {
    const one: Promise<void> = work
      .then(() => post.wake())
      .catch(error => {
        if (isStoreFault(error)) end(error)
        else if (!leaving.signal.aborted) logger.error({ why: scrub(String(error)) }, what)
      })
      .finally(() => beside.delete(one))
    beside.add(one)
  }

  const buttons = makeButtons(bot.api, logger, question => book().questions.has(question))
  // At once: the clock may close some of them before Telegram is reached.
  for (const q of book().questions.values()) {
    const at = log.sentQuestion(CHANNEL, q.id)
    if (at) buttons.shown({ reply: { to: at.chat, text: '', question: q.id, choices: [''] } }, at)
  }
  const post = makePost({
    api: bot.api,
    log,
    logger,
    buttons,
    retryMs: o.retryMs ?? 2000,
    onFatal: error => end(fatalOf(error) ?? new TelegramFault('telegram-token-refused', error.description)),
    onClosed: (chat, why) => upkeep.closed(chat, why),
    addressOf: letter => {
      const chat = nowAt(book(), letter.chat)
      // An answer belongs where it was asked for. What comes by itself goes to the farm's own chats, and to nobody who left.
      return letter.cause !== undefined || isOurs(book(), chat) ? chat : undefined
    },
  })
  const { enter, note: enterNote } = makeEntering(log, book, now, post.drop)
  const note: typeof enterNote = (bodies, replies) => {
    enterNote(bodies, replies)
    post.wake()
  }
  const upkeep = makeUpkeep({ ...o, enter, note, now, drop: post.drop })
  const desk = makeDesk({ ...o, enter })
  const staff = makeStaff(o, desk)
  const sent = (chat: string, id: string) => log.sentMessage(CHANNEL, chat, id)
  const apologise = makeApology({ ...o, scrub })

  const bring = makeFetch(bot.api, o.apiRoot ?? TELEGRAM, o.token)
  const errands = makeErrands({
    folder: join(o.folder, 'telegram', 'errands'),
    logger,
    retryMs: o.retryMs ?? 2000,
    carry: async ({ chat, message, fileId, name }, signal) => {
      const bytes = await busyIn(bot.api, chat, 'typing', bring(fileId, SHOT_MOST, signal), signal)
      if (o.pictures?.keep({ channel: CHANNEL, chat, id: message }, name, bytes) === undefined) throw new NoFile('it is no picture')
    },
  })
  const freight = makeFreight({
    ...o,
    desk,
    hears: o.listener !== undefined,
    keep: ({ message, cargo }, target) => {
      if (!o.pictures) return
      for (const s of cargo.shots) errands.add({ chat: message.chat, message: target, ...s })
    },
  })

  const sound = (message: Incoming): Promise<Uint8Array> => bring(message.voice!.ref, VOICE_MOST, leaving.signal)
  // A note in hand waits in the store for the next start: what is cut off now was not the sender's fault.
  leaving.signal.addEventListener('abort', () => {
    if (o.listener) aside(o.listener.close(), 'the listener could not be closed')
  })
  const listen = (message: Incoming): void => {
    const hearing = o.listener!.hear(message, () => sound(message))
    aside(busyIn(bot.api, message.chat, 'typing', hearing, leaving.signal), 'a voice note failed')
  }
  /** The plain answer goes out at once; a guess that comes later is asked about in a message of its own. */
  const offer = (message: Incoming, result: Result): void => {
    if (o.second) aside(o.second(message, result, leaving.signal), 'a guess failed')
  }

  let exporting: Promise<void> | undefined
  const exportBook = async (h: Heard): Promise<void> => {
    const count = book().logged.length
    const { chat, at } = h.message
    if (count > LONG_BOOK) {
      const text = o.say({ code: 'telegram-export-begun', data: { count } }, langOf(book(), h.user))
      log.append(FARM, CHANNEL, [], [{ to: chat, text }])
      post.wake()
    }
    const writing = writeBook(book(), join(o.folder, 'telegram'), localDay(at, o.zone))
    const file = await busyIn(bot.api, chat, 'upload_document', writing, leaving.signal)
    desk.answer(h, 'telegram-export', { count }, [], 'answered', { file })
  }

  const menus = makeMenus(o, bot.api, logger)
  const menuFor = new Set<string>()
  const onMembers = (): void => {
    const chats = new Set(owners(book()).map(m => m.person))
    for (const c of chats) if (!menuFor.has(c)) aside(menus.owner(c), 'a menu failed')
    for (const c of menuFor) if (!chats.has(c)) aside(menus.former(c), 'a menu failed')
    menuFor.clear()
    for (const c of chats) menuFor.add(c)
  }

  let door: Door | undefined
  const onMessage = makeMessages({
    ...o,
    desk,
    freight,
    upkeep,
    sent,
    apologise,
    offer,
    listen,
    onMembers,
    wake: post.wake,
    exporting: () => {
      const one = exporting
      exporting = undefined
      return one
    },
    doorFor: me => {
      const onExport = (h: Heard): void => {
        exporting = exportBook(h)
      }
      door ??= makeDoor({ ...o, desk, staff, freight, now, me, onExport })
      return door
    },
  })
  const onTap = makeTapping({ ...o, api: bot.api, enter, staff, now, scrub, sent, apologise, wake: post.wake })

  // What comes after a message that could not be stored must not get into the book before it.
  bot.use(async (_, next) => {
    if (!fatal) await next()
  })
  bot.on(['message', 'edited_message'], onMessage)
  bot.on('callback_query', async ctx => {
    await onTap(ctx)
    onMembers()
  })
  bot.on('my_chat_member', ctx => {
    upkeep.membership(ctx.myChatMember, ctx.update.update_id, `@${ctx.me.username}`)
    post.wake()
  })
  // Without this grammY stops at a failing handler and confirms the update all the same. What arrives here was not stored.
  const onUnstored = (error: unknown): void => end(error instanceof Error ? error : new Error(scrub(String(error))))
  bot.catch(({ error }) => onUnstored(error))

  let listening: () => void
  const started = new Promise<void>(resolve => {
    listening = resolve
  })
  const opened = (): void => {
    logger.info({ bot: bot.botInfo.username }, 'listening on Telegram')
    listening()
  }

  /** What an earlier process left half done. */
  const resume = (): void => {
    post.wake()
    errands.resume()
    if (o.listener) aside(o.listener.resume(CHANNEL, sound), 'earlier voice notes failed')
    aside(menus.everybody(), 'a menu failed')
    onMembers()
  }

  const poll = (): Promise<void> => bot.start({ allowed_updates: [...UPDATES], timeout: o.pollSeconds ?? 30, onStart: opened })
  const beCalled = async (webhook: Secured): Promise<void> => {
    const hook = await openHook(bot, webhook, logger, () => fatal !== undefined, onUnstored)
    try {
      await announce(bot, webhook, leaving.signal)
      if (!leaving.signal.aborted) opened()
      await new Promise<void>(resolve => {
        leaving.signal.addEventListener('abort', () => resolve())
        if (leaving.signal.aborted) resolve()
      })
    } finally {
      await hook.close()
    }
  }

  const run = async (): Promise<void> => {
    try {
      const me = await introduce(bot.api, leaving.signal)
      if (me) {
        bot.botInfo = me
        resume()
        await (o.webhook ? beCalled(secured(o.webhook)) : poll())
      }
    } catch (error) {
      const known = error instanceof TelegramFault || isStoreFault(error) ? error : fatalOf(error)
      fatal ??= known ?? new Error(scrub(error instanceof Error ? error.message : String(error)))
    }
    leaving.abort()
    await errands.stop()
    await Promise.all(beside)
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
