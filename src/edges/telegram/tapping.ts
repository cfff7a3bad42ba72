import type { Api, Context, Filter } from 'grammy'
import type { User } from 'grammy/types'
import type { Logger } from 'pino'
import type { Member } from '../../book/book.ts'
import type { Datum } from '../../book/questions.ts'
import type { Incoming, Lang, Result } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { memberOf } from '../joining/admit.ts'
import { type Enter, resultOf } from '../joining/enter.ts'
import type { Core, Letter } from './options.ts'
import { isBound, langOf } from './people.ts'
import type { Staff } from './staff.ts'
import { closeQuietly, dropButtons, type Tapped, tapOf, tapRefused } from './taps.ts'

export interface TappingOptions extends Core {
  api: Api
  logger: Logger
  enter: Enter
  staff: Staff
  now(): Instant
  scrub(text: string): string
  sent(chat: string, messageId: string): Letter | undefined
  wake(): void
  apologise(what: { message: Incoming; user: User }, error: unknown): void
}

/** A tap on a button: answered by the house or at the door, or by a word that shows on the phone for a moment. */
export const makeTapping = (o: TappingOptions) => {
  /** Stops the button's turning wheel. A tap that is too old to be answered is no harm. */
  const toast = (ctx: Filter<Context, 'callback_query'>, lang: Lang, code?: string, data: Record<string, Datum> = {}): void => {
    ctx
      .answerCallbackQuery(code === undefined ? {} : { text: o.say({ code, data }, lang).slice(0, TOAST_MOST) })
      .catch(error => o.logger.debug({ why: o.scrub(String(error)) }, 'a tap could not be answered'))
  }

  /** One of the channel's own questions. */
  const atTheDoor = (tapped: Tapped, member: Member, lang: Lang): void => {
    const { message } = tapped
    const { question, choice } = message.pick!
    const { code, data, bodies } = o.staff.tapped(question, choice, message.text, member)
    const reply = { to: message.chat, text: o.say({ code, data }, lang), under: message.id }
    o.enter(message, bodies, resultOf('answered', [reply]))
  }

  const settledBefore = (result: Result): boolean => result.outcome === 'ignored'

  return async (ctx: Filter<Context, 'callback_query'>): Promise<void> => {
    const query = ctx.callbackQuery
    const shown = query.message
    const letter = shown && o.sent(String(shown.chat.id), String(shown.message_id))
    const tapped = tapOf(query, letter, o.now())
    const member = memberOf(o.book(), String(query.from.id))
    const lang = langOf(o.book(), query.from)
    if (!member || !tapped || !(tapped.message.private || isBound(o.book(), tapped.message.chat))) return toast(ctx, lang)
    try {
      if (tapped.message.pick?.question.startsWith('door:')) {
        toast(ctx, lang)
        return atTheDoor(tapped, member, lang)
      }
      const refused = tapRefused(o.book(), tapped, member)
      if (refused) {
        toast(ctx, lang, refused)
        // Its label alone would be read as something said anew.
        if (refused === 'telegram-settled') await dropButtons(o.api, tapped, letter, o.logger)
        return
      }
      const result = o.handle(tapped.message)
      const over = settledBefore(result)
      toast(ctx, lang, over ? 'telegram-settled' : undefined)
      o.wake()
      if (over) await dropButtons(o.api, tapped, letter, o.logger)
      else await closeQuietly(o.api, tapped, result, o.logger)
    } catch (error) {
      o.apologise({ message: tapped.message, user: query.from }, error)
    } finally {
      o.wake()
    }
  }
}

/** Bot API, "answerCallbackQuery": up to 200 characters. */
const TOAST_MOST = 200
