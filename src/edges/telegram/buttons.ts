import type { Api } from 'grammy'
import type { Logger } from 'pino'
import type { Letter } from './options.ts'
import { said } from './sending.ts'

/** Where a question stands. */
export interface Standing {
  chat: string
  messageId: string
}

/** Takes the buttons off questions that are over: answered by typing, lapsed, or asked anew. */
export interface Buttons {
  /** A letter went out as that message. */
  shown(letter: Pick<Letter, 'reply'>, at: Standing): void
  /** Takes off the buttons of what was closed since. */
  sweep(): Promise<void>
}

export const makeButtons = (api: Api, logger: Logger, isOpen: (question: string) => boolean): Buttons => {
  const standing = new Map<string, Standing>()
  /** What a message asks now: an answer that took a question's place may itself ask. */
  const asks = new Map<string, string>()
  const keyOf = ({ chat, messageId }: Standing): string => `${chat}/${messageId}`
  return {
    shown: ({ reply }, at) => {
      asks.delete(keyOf(at))
      if (reply.question === undefined || !reply.choices?.length || reply.question.startsWith('door:')) return
      standing.set(reply.question, at)
      asks.set(keyOf(at), reply.question)
    },
    sweep: async () => {
      for (const [question, at] of [...standing]) {
        if (isOpen(question)) continue
        standing.delete(question)
        if (asks.get(keyOf(at)) !== question) continue
        asks.delete(keyOf(at))
        // Only the look of an old question is at stake; whoever taps it all the same is told that it is settled.
        await api.editMessageReplyMarkup(at.chat, Number(at.messageId)).catch(error => {
          logger.debug({ why: said(error) }, 'buttons could not be taken off')
        })
      }
    },
  }
}
