import type { Update } from 'grammy/types'
import type { Fault, Line } from '../support/botApiParts.ts'
import type { Random } from './random.ts'

const SENDING = new Set(['sendMessage', 'editMessageText', 'setMessageReaction', 'editMessageReplyMarkup', 'answerCallbackQuery'])

/** A bad line: calls and answers are dropped, delayed or refused, and batches come shuffled, twice, and mixed with earlier ones. */
export const badLine = (random: Random, count: (what: string) => void): Required<Line> => {
  const earlier: Update[] = []
  const shuffle = <T>(list: T[]): T[] =>
    list
      .map(x => ({ x, at: random() }))
      .sort((a, b) => a.at - b.at)
      .map(y => y.x)
  const befalls = (method: string): Fault | undefined => {
    const r = random()
    if (r < 0.04) return { drop: 'before' }
    if (r < 0.08) return { drop: 'after' }
    if (r < 0.11) return { code: 500, description: 'Internal Server Error' }
    if (r < 0.13) return { html: 502 }
    if (r < 0.2) return { delayMs: Math.floor(random() * 30) }
    if (r < 0.23 && SENDING.has(method)) return { code: 429, description: 'Too Many Requests: retry after 0', retryAfter: 0 }
    return undefined
  }
  return {
    fault: method => {
      // grammY waits three seconds after a failed poll: one in a while is enough
      if (method !== 'getUpdates' && !SENDING.has(method)) return undefined
      if (method === 'getUpdates' && random() < 0.9) return undefined
      const fault = befalls(method)
      if (fault) count('drop' in fault ? `lost ${fault.drop}` : 'delayMs' in fault ? 'delayed' : 'refused')
      return fault
    },
    batch: list => {
      if (!list.length) return list
      const again = random() < 0.2 ? earlier.slice(-5) : []
      if (again.length) count('sent again')
      earlier.push(...list)
      earlier.splice(0, Math.max(0, earlier.length - 50))
      const mixed = [...again, ...list, ...(random() < 0.2 ? list.slice(0, 3) : [])]
      if (random() > 0.5) return mixed
      count('shuffled')
      return shuffle(mixed)
    },
  }
}
