import type { Api } from 'grammy'
import { apiSignal } from './reach.ts'

export type Doing = 'typing' | 'upload_photo' | 'upload_document'

/** Bot API, "sendChatAction": the sign goes after five seconds. */
const AGAIN_MS = 4500

/** Shows in a chat that something is worked on, until it is done. The sign itself may fail as it likes. */
export const busyIn = async <T>(api: Api, chat: string, doing: Doing, work: Promise<T>, signal: AbortSignal): Promise<T> => {
  const show = (): void => void api.sendChatAction(chat, doing, {}, apiSignal(signal)).catch(() => undefined)
  show()
  const beat = setInterval(show, AGAIN_MS)
  try {
    return await work
  } finally {
    clearInterval(beat)
  }
}
