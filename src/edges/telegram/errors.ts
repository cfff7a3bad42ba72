import type { User } from 'grammy/types'
import type { Logger } from 'pino'
import type { Incoming } from '../../ports.ts'
import { isStoreFault } from '../joining/storeFault.ts'
import { CHANNEL, type ChannelStore, type Core, FARM } from './options.ts'
import { langOf } from './people.ts'

/** Something of ours failed with one message. It is kept; the others must not wait behind it. Throws what is the store's fault. */
export const makeApology =
  (o: Core & { log: ChannelStore; logger: Logger; scrub(text: string): string }) =>
  ({ message, user }: { message: Incoming; user: User }, error: unknown): void => {
    if (isStoreFault(error)) throw error
    const why = o.scrub(error instanceof Error ? (error.stack ?? error.message) : String(error))
    o.logger.error({ chat: message.chat, message: message.id, why }, 'a message failed')
    o.log.take(message)
    if (!message.private && !message.addressed) return
    const text = o.say({ code: 'telegram-trouble', data: {} }, langOf(o.book(), user))
    o.log.append(FARM, CHANNEL, [], [{ to: message.chat, text, under: message.id }])
  }
