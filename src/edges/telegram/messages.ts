import type { Context } from 'grammy'
import type { UserFromGetMe } from 'grammy/types'
import type { Incoming } from '../../ports.ts'
import type { Desk } from './desk.ts'
import type { Door } from './door.ts'
import type { makeApology } from './errors.ts'
import type { Freight } from './freight.ts'
import { type Heard, hear, type Sent } from './heard.ts'
import type { Core } from './options.ts'
import type { makeUpkeep } from './upkeep.ts'

export interface MessagesOptions extends Core {
  desk: Desk
  freight: Freight
  upkeep: ReturnType<typeof makeUpkeep>
  doorFor(me: UserFromGetMe): Door
  sent: Sent
  apologise: ReturnType<typeof makeApology>
  /** Something was asked of the second reader, where there is one. */
  offer(message: Incoming, result: ReturnType<Core['handle']>): void
  /** A voice note is heard in its own time. */
  listen(message: Incoming): void
  /** What an export still has to do. */
  exporting(): Promise<void> | undefined
  /** Members may have changed. */
  onMembers(): void
  wake(): void
}

/** Of two clocks, ms: Telegram tells whole seconds. */
const SAME_MS = 2000

/** The same words, said then, stand in the book already: what was passed on was told to us too. */
const isKnown = (o: Core, { message, forward }: Heard): boolean =>
  forward !== undefined &&
  o
    .book()
    .logged.some(
      l =>
        l.event.said === message.text &&
        Math.abs(Date.parse(l.at) - Date.parse(message.at)) <= SAME_MS &&
        (forward.person === undefined || forward.person === l.by),
    )

/** Whether Telegram shows us all that is said in a group (Bot API, "privacy mode"): as an administrator, or with the mode off. */
const hearsAll = async (ctx: Context): Promise<boolean> => {
  if (ctx.me.can_read_all_group_messages) return true
  const me = await ctx.getChatMember(ctx.me.id).catch(() => undefined)
  return me?.status === 'administrator' || me?.status === 'creator'
}

/** A message or its edit: past the door, then to the house. */
export const makeMessages = (o: MessagesOptions) => {
  const handOn = (heard: Heard, message: Incoming): void => {
    if (message.voice) {
      o.listen(message)
      return
    }
    if (isKnown(o, heard)) {
      if (message.private) o.desk.answer(heard, 'telegram-forward-known')
      else o.desk.quietly(heard)
      return
    }
    const result = o.handle(message)
    o.offer(message, result)
    if (result.outcome === 'recorded' || result.outcome === 'asked') o.freight.captioned(heard)
  }

  return async (ctx: Context): Promise<void> => {
    const msg = ctx.message
    if (msg?.migrate_to_chat_id !== undefined)
      return o.upkeep.moved(
        String(msg.chat.id),
        String(msg.migrate_to_chat_id),
        String(msg.message_id),
        String(msg.from?.id ?? msg.chat.id),
      )
    const heard = hear(ctx.update, ctx.me, o.sent)
    if (!heard) return
    try {
      if (heard.message.private) o.upkeep.opened(heard.message.chat)
      if (heard.command === 'here') heard.hearsAll = await hearsAll(ctx)
      const message = o.doorFor(ctx.me)(heard)
      if (message) handOn(heard, message)
      await o.exporting()
      o.onMembers()
    } catch (error) {
      o.apologise(heard, error)
    }
    o.wake()
  }
}
