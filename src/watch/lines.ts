import type { Datum, Message } from '../book/questions.ts'

export const MAX_LINES = 12

/** One line of a summary; the higher, the sooner it stands. */
export interface Line {
  urgency: number
  message: Message
  /** What this line names for the first and only time. */
  named?: string
}

export const line = (urgency: number, code: string, data: Record<string, Datum>): Line => ({ urgency, message: { code, data } })

/** A head and the most urgent lines, never more than twelve in all; what is left out is counted. */
export const compose = (head: Message, lines: Line[]): { message: Message[]; named: string[] } => {
  const sorted = [...lines].sort((a, b) => b.urgency - a.urgency)
  const room = MAX_LINES - 1
  const kept = sorted.length <= room ? sorted : sorted.slice(0, room - 1)
  const rest = sorted.length - kept.length
  return {
    message: [head, ...kept.map(l => l.message), ...(rest ? [{ code: 'summary-more', data: { count: rest } }] : [])],
    named: kept.flatMap(l => l.named ?? []),
  }
}
