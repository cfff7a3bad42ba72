import { septets } from './alphabet.ts'

/**
 * What one text message carries: 140 octets of user data (3GPP TS 23.040, 9.2.3.24), which are 160 characters of 7 bits or
 * 70 of 16 bits (TS 23.038). The 153 and 67 of a concatenated message, whose header takes 6 octets of each, are the limits of
 * who joins the parts into one message; here each part is a message of its own and may be full. Its place stands at its end,
 * as messages of their own may arrive in any order.
 */
export const MOST_SEPTETS = 160
export const MOST_WIDE = 70

const fits = (text: string, room: number): boolean => {
  const n = septets(text)
  return n === undefined ? text.length <= MOST_WIDE - room : n <= MOST_SEPTETS - room
}

/**
 * The longest beginning that fits: up to a word's end, or to a line's where that fills half of it at least; a word that is too
 * long by itself is cut between characters.
 */
const head = (text: string, room: number): string => {
  if (fits(text, room)) return text
  let words = ''
  let lines = ''
  for (const m of text.matchAll(/\s+/g)) {
    if (!fits(text.slice(0, m.index), room)) break
    words = text.slice(0, m.index)
    if (m[0].includes('\n')) lines = words
  }
  if (lines.length * 2 >= words.length && lines !== '') return lines
  if (words !== '') return words
  let cut = ''
  for (const c of text) {
    if (!fits(cut + c, room)) break
    cut += c
  }
  return cut
}

const cut = (text: string, room: number): string[] => {
  const list: string[] = []
  for (let rest = text.trim(); rest !== ''; ) {
    const part = head(rest, room)
    list.push(part.trimEnd())
    rest = rest.slice(part.length).trimStart()
  }
  return list
}

/** A text in messages that can each be sent whole, numbered where they are several: `… (1/2)`. */
export const smsParts = (text: string): string[] => {
  const whole = cut(text, 0)
  if (whole.length <= 1) return whole
  for (let digits = 1; ; digits++) {
    const list = cut(text, 4 + 2 * digits)
    if (String(list.length).length <= digits) return list.map((part, i) => `${part} (${i + 1}/${list.length})`)
  }
}
