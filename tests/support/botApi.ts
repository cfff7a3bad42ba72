import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo, Socket } from 'node:net'
import type { Chat, InlineKeyboardMarkup, Message, Update, User } from 'grammy/types'
import { makeExtras } from './botApiExtras.ts'
import { type Hook, startHook } from './botApiHook.ts'
import {
  ApiError,
  type BotApi,
  bad,
  bodyOf,
  type Call,
  entitiesIn,
  type Fault,
  type Line,
  type Payload,
  type Shown,
} from './botApiParts.ts'

export type { BotApi } from './botApiParts.ts'

// A stand-in for the Bot API server on loopback, after core.telegram.org/bots/api as read in 2026: updates are kept until an offset
// above them is asked for, and come again until then; a second reader ends the first with 409; errors are as the real server words them.

export const startBotApi = async (
  token: string,
  me: { id: number; username: string; can_read_all_group_messages?: boolean },
): Promise<BotApi> => {
  const bot: User = { id: me.id, is_bot: true, first_name: 'Pilehand', username: me.username }
  const updates: Update[] = []
  const chats = new Map<number, Map<number, Shown>>()
  const calls: Call[] = []
  const toasts: string[] = []
  const faults = new Map<string, Fault[]>()
  const blocked = new Set<number>()
  const answeredTaps = new Set<string>()
  const sockets = new Set<Socket>()
  const watchers = new Set<() => void>()
  const extras = makeExtras(bot, blocked)
  const line: Line = {}
  let hook: Hook | undefined
  let allowed: string[] = []
  let lastUpdate = 1000
  let lastMessage = 0
  let lastTap = 0
  let revoked = false
  let poll: { end: (answer: Update[] | ApiError | undefined) => void } | undefined

  const date = (): number => Math.floor(Date.now() / 1000)
  const chatOf = (id: number): Map<number, Shown> => {
    const chat = chats.get(id) ?? new Map<number, Shown>()
    chats.set(id, chat)
    return chat
  }
  const push = (update: Omit<Update, 'update_id'>): void => {
    if (allowed.length && !Object.keys(update).some(k => allowed.includes(k))) return
    updates.push({ update_id: ++lastUpdate, ...update } as Update)
    poll?.end(updates.slice())
    hook?.wake()
  }

  const getUpdates = async (p: Payload, socket: Socket): Promise<Update[]> => {
    poll?.end(new ApiError(409, 'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running'))
    const offset = Number(p.offset ?? 0)
    while (updates.length && updates[0]!.update_id < offset) updates.shift()
    if (Array.isArray(p.allowed_updates)) allowed = p.allowed_updates as string[]
    const limit = Number(p.limit ?? 100)
    if (hook) throw new ApiError(409, "Conflict: can't use getUpdates method while webhook is active")
    const given = (list: Update[]): Update[] => line.batch?.(list.slice(0, limit)) ?? list.slice(0, limit)
    if (updates.length || !p.timeout) return given(updates)
    const answer = await new Promise<Update[] | ApiError | undefined>(resolve => {
      const end = (a: Update[] | ApiError | undefined): void => {
        clearTimeout(timer)
        socket.off('close', gone)
        if (poll?.end === end) poll = undefined
        resolve(a)
      }
      const gone = (): void => end(undefined)
      const timer = setTimeout(() => end([]), Number(p.timeout) * 1000)
      socket.on('close', gone)
      poll = { end }
    })
    if (answer instanceof ApiError) throw answer
    return given(answer ?? [])
  }

  const checkMarkup = (markup: unknown): InlineKeyboardMarkup | undefined => {
    const keyboard = markup as InlineKeyboardMarkup | undefined
    for (const b of keyboard?.inline_keyboard.flat() ?? []) {
      const bytes = 'callback_data' in b ? Buffer.byteLength(b.callback_data) : 0
      if (bytes < 1 || bytes > 64) throw bad('BUTTON_DATA_INVALID')
    }
    return keyboard
  }
  const checkText = (text: unknown): string => {
    if (typeof text !== 'string' || text.trim() === '') throw bad('message text is empty')
    if (text.length > 4096) throw bad('message is too long')
    return text
  }
  const send = (p: Payload, text: string, file?: Buffer): Shown => {
    const id = Number(p.chat_id)
    if (!Number.isInteger(id)) throw bad('chat not found')
    if (blocked.has(id)) throw new ApiError(403, 'Forbidden: bot was blocked by the user')
    const reply_markup = checkMarkup(p.reply_markup)
    const chat: Chat = id < 0 ? { id, type: 'supergroup', title: 'group' } : { id, type: 'private', first_name: 'someone' }
    const message = {
      message_id: ++lastMessage,
      date: date(),
      chat,
      from: bot,
      text,
      ...(reply_markup && { reply_markup }),
      ...(file && { file, filename: (file as Buffer & { filename?: string }).filename }),
    } as Shown
    chatOf(id).set(message.message_id, message)
    return message
  }
  const change = (p: Payload, patch: { text?: string }): Shown => {
    const message = chatOf(Number(p.chat_id)).get(Number(p.message_id))
    if (!message) throw bad('message to edit not found')
    const reply_markup = checkMarkup(p.reply_markup)
    const same = (patch.text ?? message.text) === message.text && JSON.stringify(reply_markup) === JSON.stringify(message.reply_markup)
    if (same) throw bad('message is not modified: specified new message content and reply markup are exactly the same')
    Object.assign(message, patch, { edit_date: date(), reply_markup })
    if (!reply_markup) delete message.reply_markup
    return message
  }

  const fileOf = (p: Payload, field: string): Buffer => {
    const file = p[String(p[field]).replace('attach://', '')]
    if (!Buffer.isBuffer(file)) throw bad('there is no photo in the request')
    return file
  }

  const carryOut = async (method: string, p: Payload, socket: Socket): Promise<unknown> => {
    switch (method) {
      case 'getMe':
        return {
          ...bot,
          can_join_groups: true,
          can_read_all_group_messages: me.can_read_all_group_messages ?? false,
          supports_inline_queries: false,
        }
      case 'deleteWebhook':
        hook?.stop()
        hook = undefined
        return true
      case 'setWebhook':
        hook?.stop()
        if (Array.isArray(p.allowed_updates)) allowed = p.allowed_updates as string[]
        hook = startHook(String(p.url), p.secret_token as string | undefined, updates)
        return true
      case 'getUpdates':
        return await getUpdates(p, socket)
      case 'sendMessage':
        return send(p, checkText(p.text))
      case 'sendPhoto':
        return send(p, String(p.caption ?? ''), fileOf(p, 'photo'))
      case 'sendDocument':
        return send(p, String(p.caption ?? ''), fileOf(p, 'document'))
      case 'sendVoice':
        return send(p, String(p.caption ?? ''), fileOf(p, 'voice'))
      case 'editMessageText':
        return change(p, { text: checkText(p.text) })
      case 'editMessageReplyMarkup':
        return change(p, {})
      case 'answerCallbackQuery':
        if (answeredTaps.has(String(p.callback_query_id))) throw bad('query is too old and response timeout expired or query ID is invalid')
        answeredTaps.add(String(p.callback_query_id))
        if (p.text) toasts.push(String(p.text))
        return true
      default:
        if (Object.hasOwn(extras.methods, method)) return extras.methods[method]!(p)
        throw new ApiError(404, 'Not Found: method not found')
    }
  }

  const reply = (res: ServerResponse, status: number, body: Payload): void => {
    res.writeHead(status, { 'content-type': 'application/json' })
    res.end(JSON.stringify(body))
  }
  const fail = (res: ServerResponse, e: ApiError): void =>
    reply(res, e.code, { ok: false, error_code: e.code, description: e.description, ...(e.parameters && { parameters: e.parameters }) })

  const hand = (req: IncomingMessage, res: ServerResponse, path: string): void => {
    const fault = faults.get('download')?.shift()
    calls.push({ method: 'download', payload: { path } })
    if (fault && 'drop' in fault) return void req.socket.destroy()
    if (fault && 'code' in fault) {
      fail(res, new ApiError(fault.code, fault.description))
      return
    }
    res.writeHead(200, { 'content-type': 'application/octet-stream' }).end(extras.download(path))
  }

  const answer = async (req: IncomingMessage, res: ServerResponse): Promise<void> => {
    const wanted = new RegExp(`^/file/bot${token}/(.+)$`).exec(req.url ?? '')?.[1]
    if (wanted !== undefined) return hand(req, res, decodeURIComponent(wanted))
    const [, given, method = ''] = /^\/bot([^/]+)\/(\w+)/.exec(req.url ?? '') ?? []
    const payload = await bodyOf(req)
    calls.push({ method, payload })
    if (given !== token) return fail(res, new ApiError(404, 'Not Found'))
    if (revoked) return fail(res, new ApiError(401, 'Unauthorized'))
    const fault = faults.get(method)?.shift() ?? line.fault?.(method)
    if (fault && 'code' in fault) {
      const parameters = {
        ...(fault.retryAfter !== undefined && { retry_after: fault.retryAfter }),
        ...(fault.migrateTo && { migrate_to_chat_id: fault.migrateTo }),
      }
      return fail(res, new ApiError(fault.code, fault.description, parameters))
    }
    if (fault && 'html' in fault) return void res.writeHead(fault.html, { 'content-type': 'text/html' }).end('<html>no gateway</html>')
    if (fault && 'drop' in fault && fault.drop === 'before') return void req.socket.destroy()
    if (fault && 'delayMs' in fault) await new Promise(r => setTimeout(r, fault.delayMs))
    try {
      const result = await carryOut(method, payload, req.socket)
      if (fault && 'drop' in fault) return void req.socket.destroy()
      reply(res, 200, { ok: true, result })
    } catch (e) {
      if (e instanceof ApiError) fail(res, e)
      else throw e
    }
  }

  const look = (): void => {
    for (const w of watchers) w()
  }
  const server = createServer((req, res) => {
    res.on('close', () => setImmediate(look))
    answer(req, res).catch(error => fail(res, new ApiError(500, `Internal Server Error: ${error}`)))
  })
  server.on('connection', s => {
    sockets.add(s)
    s.on('close', () => sockets.delete(s))
  })
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))

  return {
    root: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    calls,
    toasts,
    shown: chat => [...chatOf(chat).values()],
    push,
    say: (chat, from, text, more = {}) => {
      const entities = entitiesIn(text)
      const message = {
        message_id: ++lastMessage,
        date: date(),
        chat,
        from,
        ...(text && { text }),
        ...(entities.length && { entities }),
        ...more,
      } as Message
      push({ message } as Omit<Update, 'update_id'>)
      return message
    },
    edit: (chat, from, message_id, text) =>
      push({ edited_message: { message_id, date: date(), edit_date: date(), chat, from, text, entities: entitiesIn(text) } } as Omit<
        Update,
        'update_id'
      >),
    press: (chat, from, messageId, label) => {
      const message = chatOf(chat.id).get(messageId)
      const button = message?.reply_markup?.inline_keyboard.flat().find(b => b.text === label)
      if (!message || !button || !('callback_data' in button)) throw new Error(`there is no button ${label}`)
      push({
        callback_query: { id: String(++lastTap), from, message: structuredClone(message), chat_instance: '1', data: button.callback_data },
      } as Omit<Update, 'update_id'>)
    },
    pending: () => updates.slice(),
    fault: (method, ...list) => void faults.set(method, [...(faults.get(method) ?? []), ...list]),
    block: chat => void blocked.add(chat),
    unblock: chat => void blocked.delete(chat),
    ...extras.api,
    line,
    revoke: () => {
      revoked = true
    },
    until: (what, test, ms = 10_000) =>
      new Promise((resolve, reject) => {
        const end = (work: () => void): void => {
          clearTimeout(limit)
          clearInterval(beat)
          watchers.delete(check)
          work()
        }
        const check = (): void => {
          if (test()) end(resolve)
        }
        const limit = setTimeout(() => end(() => reject(new Error(`waited in vain until ${what}`))), ms)
        // Not everything that is waited for ends with a call.
        const beat = setInterval(check, 20)
        watchers.add(check)
        check()
      }),
    close: async () => {
      poll?.end([])
      hook?.stop()
      for (const s of sockets) s.destroy()
      await new Promise(resolve => server.close(resolve))
    },
  }
}
