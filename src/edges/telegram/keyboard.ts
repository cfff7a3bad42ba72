import type { InlineKeyboardButton, InlineKeyboardMarkup } from 'grammy/types'
import type { Reply } from '../../ports.ts'

/** Bot API, "InlineKeyboardButton": callback_data is 1 to 64 bytes. */
const DATA_BYTES = 64
/** Longer labels get a row of their own: half a phone's width shows about this many letters. From trying, no source. */
const HALF_WIDTH = 18

/** What a button sends back: the question and the choice. Where the question's id is too long for that, the choice alone; the outbox knows the rest. */
export const tapData = (question: string | undefined, choice: number): string => {
  const full = `${question ?? ''}:${choice}`
  return Buffer.byteLength(full) <= DATA_BYTES ? full : `:${choice}`
}

export const readTap = (data: string): { question?: string; choice: number } | undefined => {
  const m = /^(.*):(\d+)$/s.exec(data)
  if (!m) return undefined
  return { ...(m[1] && { question: m[1] }), choice: Number(m[2]) }
}

/** Big buttons in the order given, two to a row at most. */
export const keyboardFor = ({ choices, question }: Reply): InlineKeyboardMarkup | undefined => {
  if (!choices?.length) return undefined
  const rows: InlineKeyboardButton[][] = []
  choices.forEach((text, i) => {
    const button = { text, callback_data: tapData(question, i) }
    const row = rows.at(-1)
    const before = row?.length === 1 ? row[0] : undefined
    if (row && before && before.text.length <= HALF_WIDTH && text.length <= HALF_WIDTH) row.push(button)
    else rows.push([button])
  })
  return { inline_keyboard: rows }
}
