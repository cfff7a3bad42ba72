import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { join } from 'node:path'
import type { Incoming, Lang, Result } from '../ports.ts'
import { memberOf } from './joining/admit.ts'
import { makeEnter, resultOf } from './joining/enter.ts'
import { isStoreFault } from './joining/storeFault.ts'
import { plainly } from './sms/alphabet.ts'
import { makeDoor } from './sms/door.ts'
import { SmsFault } from './sms/faults.ts'
import { CHANNEL, FARM, type Letter, type SmsOptions } from './sms/options.ts'
import { smsParts } from './sms/parts.ts'
import { makePost, type Post } from './sms/post.ts'
import { makeRate } from './sms/rate.ts'
import { bodyOf, MOST_BYTES, messageIn, type Refusal, refusedUnread, type SmsMessage, STATUS } from './sms/request.ts'
import { openSeen } from './sms/seen.ts'
import { langOf, OPEN_MS, shownAt, withChoice, wordsOf } from './sms/shown.ts'
import { SIGNATURE_HEADER, TIME_HEADER, wrongWith } from './sms/signature.ts'

export type { SmsOptions } from './sms/options.ts'

export interface SmsRun {
  /** Resolves with the port when the door is open. */
  started: Promise<number>
  /** Resolves after `stop`; rejects with an SmsFault, or with the store's fault, where the door can not stay open. */
  done: Promise<void>
  /** Replies were put in the outbox from elsewhere: the clock. */
  wake(): void
  /** Takes no more requests and goes; what was not carried stays in the outbox. */
  stop(): Promise<void>
}

/** A request is a few hundred bytes from a machine; who takes longer holds the door open, ms. */
const REQUEST_MS = 10_000
/** A gateway keeps few lines open. */
const MOST_CONNECTIONS = 100

/**
 * The crew's text messages. A gateway hands each one over by a signed POST and gets the answer in the response, in parts that
 * fit a message each. What is due by itself waits in the outbox for the next response of its telephone, or is sent to the
 * gateway's own address where there is one.
 */
export const runSms = (o: SmsOptions): SmsRun => {
  const now = o.now ?? (() => new Date().toISOString())
  const nowMs = (): number => Date.parse(now())
  const { log, logger } = o
  const seen = openSeen(join(o.folder, 'sms.seen'), nowMs)
  const rate = makeRate(nowMs)
  const door = makeDoor({ ...o, enter: makeEnter(log, o.book), now })
  /** Letters that a response or the post has in hand. */
  const busy = new Set<number>()
  const leaving = new AbortController()
  let post: Post | undefined
  let end: (error?: Error) => void = () => undefined

  const english = (r: Refusal): string => o.say({ code: r.code, data: r.data }, 'en')
  const send = (response: ServerResponse, status: number, value: object, headers: Record<string, string> = {}): void => {
    if (!response.headersSent) response.writeHead(status, { 'Content-Type': 'application/json', ...headers })
    response.end(JSON.stringify(value))
  }
  const refuse = (response: ServerResponse, r: Refusal): void => {
    const headers = {
      ...(r.code === 'sms-method' && { allow: 'POST' }),
      ...(r.code === 'sms-often' && { 'Retry-After': String(r.data.seconds) }),
      // what is left of a body that is too long is not waited for
      ...(r.code === 'sms-size' && { connection: 'close' }),
    }
    send(response, STATUS[r.code], { error: r.code, why: english(r) }, headers)
  }

  const unsaid = (letters: Letter[]): Set<string> =>
    new Set(letters.flatMap(l => (l.reply.question === undefined ? [] : [l.reply.question])))

  /** What waits for a telephone. What is too old (the next summary says it better, and its question has lapsed), or is for somebody who left, is put away on the way. */
  const waitingFor = (phone: string, cause?: string): Letter[] =>
    log.queued(CHANNEL).filter(l => {
      if (l.chat !== phone || busy.has(l.id)) return false
      const own = cause !== undefined && l.cause === cause
      const why = !own && !memberOf(o.book(), phone) ? 'no member' : nowMs() - Date.parse(l.queuedAt) > OPEN_MS ? 'too old' : undefined
      if (why) log.failed(l.id, why, true)
      return why === undefined
    })

  const partsOf = (letter: Pick<Letter, 'reply'> & { chat: string }): string[] => {
    const lang: Lang = langOf(o.book(), letter.chat)
    const words = wordsOf(letter, shownAt(o.book(), letter.chat, now(), o.say))
    return smsParts(plainly(words, o.say({ code: 'sms-about', data: {} }, lang)))
  }

  /** Something of ours failed with one message. It is kept; the gateway need not send it again. */
  const apologise = (message: Incoming, error: unknown): Result => {
    if (isStoreFault(error)) throw error
    logger.error({ message: message.id, why: error instanceof Error ? (error.stack ?? error.message) : String(error) }, 'a message failed')
    log.take(message)
    const text = o.say({ code: 'sms-trouble', data: {} }, langOf(o.book(), message.from))
    return resultOf('ignored', [{ to: message.chat, text }])
  }

  const offer = (message: Incoming, result: Result): void => {
    o.second?.(message, result, leaving.signal).then(
      asked => asked && post?.wake(),
      error => (isStoreFault(error) ? end(error) : logger.error({ why: String(error) }, 'a guess failed')),
    )
  }

  const settle = (message: Incoming): Result | undefined => {
    try {
      const there = door(message)
      if (!there || 'result' in there) return there?.result
      const shown = shownAt(o.book(), message.chat, message.at, o.say, unsaid(waitingFor(message.chat)))
      const chosen = withChoice(there.pass, shown)
      const result = o.handle(chosen)
      offer(chosen, result)
      return result
    } catch (error) {
      return apologise(message, error)
    }
  }

  const take = (m: SmsMessage, signature: string, response: ServerResponse): void => {
    // without a number of its own a message is known by its signature
    const id = m.id ?? signature.slice(0, 32)
    const message: Incoming = {
      channel: CHANNEL,
      farm: FARM,
      chat: m.from,
      private: true,
      from: m.from,
      id,
      edit: '',
      at: m.at,
      text: m.text.trim(),
      addressed: true,
    }
    const result = message.text === '' ? undefined : settle(message)
    const letters = waitingFor(m.from, id)
    // the same message again, after its answer went out once: the answer again
    const again = letters.some(l => l.cause === id) ? [] : (result?.replies ?? []).map(reply => ({ chat: m.from, reply }))
    for (const l of letters) busy.add(l.id)
    response.once('finish', () => {
      try {
        for (const l of letters) log.sent(l.id, id)
      } catch (error) {
        // they will come once more: better than never
        end(error instanceof Error ? error : new Error(String(error)))
      }
    })
    response.once('close', () => {
      for (const l of letters) busy.delete(l.id)
      post?.wake()
    })
    send(response, 200, { parts: [...letters, ...again].flatMap(partsOf) })
  }

  const hear = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const unread = refusedUnread(request)
    if (unread) return refuse(response, unread)
    const body = await bodyOf(request)
    if (!body) return refuse(response, { code: 'sms-size', data: { most: MOST_BYTES } })
    const header = (name: string): string | undefined => [request.headers[name.toLowerCase()]].flat()[0]
    const [time, signature] = [header(TIME_HEADER), header(SIGNATURE_HEADER)?.trim().toLowerCase()]
    const wrong = wrongWith(o.secret, time, signature, body, nowMs())
    if (wrong) return refuse(response, { code: wrong, data: {} })
    if (seen.has(signature!)) return refuse(response, { code: 'sms-replayed', data: {} })
    const m = messageIn(body, nowMs())
    if ('code' in m) return refuse(response, m)
    const seconds = rate(m.from)
    if (seconds !== undefined) return refuse(response, { code: 'sms-often', data: { seconds } })
    seen.add(signature!, Number(time))
    take(m, signature!, response)
  }

  const server = createServer({ requestTimeout: REQUEST_MS, headersTimeout: REQUEST_MS }, (request, response) => {
    hear(request, response).catch(error => {
      // Somebody who hung up gets no answer. Anything else was not stored, so the gateway must keep it.
      if (request.destroyed && !request.complete) return response.destroy()
      logger.error({ why: String(error) }, 'a request failed')
      refuse(response, { code: 'sms-busy', data: {} })
      if (isStoreFault(error)) end(error)
    })
  })
  server.maxConnections = MOST_CONNECTIONS

  const started = new Promise<number>((resolve, reject) => {
    server.once('error', error => {
      const fault = new SmsFault(o.host, o.port, error.message)
      reject(fault)
      end(fault)
    })
    server.listen(o.port, o.host, () => {
      const { port } = server.address() as AddressInfo
      logger.info({ host: o.host, port }, 'the door for text messages is open')
      if (o.sendUrl !== undefined) {
        const { sendUrl: url, secret, retryMs = 5000, timeoutMs } = o
        post = makePost({ log, logger, url, secret, partsOf, busy, nowMs, retryMs, ...(timeoutMs && { timeoutMs }) })
        post.wake()
      }
      resolve(port)
    })
  })
  // Whoever waits for `done` hears of it there.
  started.catch(() => undefined)

  const done = new Promise<void>((resolve, reject) => {
    let ended = false
    end = error => {
      if (ended) return
      ended = true
      leaving.abort()
      const closed = new Promise<void>(over => server.close(() => over()))
      server.closeIdleConnections()
      const limit = setTimeout(() => server.closeAllConnections(), 2000)
      void Promise.all([closed, post?.stop()]).then(() => {
        clearTimeout(limit)
        seen.close()
        if (error) reject(error)
        else resolve()
      })
    }
  })

  return {
    started,
    done,
    wake: () => post?.wake(),
    stop: async () => {
      end()
      await done.catch(() => undefined)
    },
  }
}
