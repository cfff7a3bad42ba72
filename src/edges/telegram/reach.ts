import { type Api, GrammyError } from 'grammy'
import type { UserFromGetMe } from 'grammy/types'
import { TelegramFault } from './faults.ts'

/** Waits between tries to reach Telegram at the start, ms. A machine at the end of a lane may start before its line is up. */
const FIRST_TRY_MS = 1000
const LAST_TRY_MS = 30_000

/** grammY types its signals by a package from before Node had them; the platform's own do. */
export type ApiSignal = NonNullable<Parameters<Api['getMe']>[0]>
export const apiSignal = (signal: AbortSignal): ApiSignal => signal as unknown as ApiSignal

/** The fault behind an answer that trying again can't change. */
export const fatalOf = (error: unknown): TelegramFault | undefined => {
  if (!(error instanceof GrammyError)) return undefined
  if (error.error_code === 409) return new TelegramFault('telegram-second-reader', error.description)
  // A token that never was one gets 404, one that was taken back 401.
  const refused = error.error_code === 401 || (error.error_code === 404 && error.method === 'getMe')
  return refused ? new TelegramFault('telegram-token-refused', error.description) : undefined
}

const sleep = (ms: number, signal: AbortSignal): Promise<void> =>
  new Promise(resolve => {
    const end = (): void => {
      clearTimeout(timer)
      signal.removeEventListener('abort', end)
      resolve()
    }
    const timer = setTimeout(end, ms)
    signal.addEventListener('abort', end)
    if (signal.aborted) end()
  })

/** Asks again and again as long as there is no line. Undefined where `signal` ended it. Throws what trying again can't change. */
export const persist = async <T>(ask: (signal: AbortSignal) => Promise<T>, signal: AbortSignal): Promise<T | undefined> => {
  for (let wait = FIRST_TRY_MS; !signal.aborted; wait = Math.min(LAST_TRY_MS, wait * 2)) {
    try {
      return await ask(signal)
    } catch (error) {
      if (error instanceof GrammyError && error.error_code < 500 && error.error_code !== 429) throw error
      await sleep(wait, signal)
    }
  }
  return undefined
}

/** Who we are. */
export const introduce = (api: Api, signal: AbortSignal): Promise<UserFromGetMe | undefined> =>
  persist(s => api.getMe(apiSignal(s)), signal)
