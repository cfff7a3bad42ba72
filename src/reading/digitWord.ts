import { phraseAt } from './quantity.ts'
import type { Token } from './token.ts'

const DONE_NEXT = /^(feed|open|add|put|top|patch|cover|check|use|dar|echar)$/

/**
 * A figure that stands for the word it sounds like: "rdy 2 open", "plastic size 4 creek".
 * @param isPile whether a pile's name begins at a token
 */
export const isDigitWord = (tokens: Token[], i: number, isPile: (i: number) => boolean): boolean => {
  const { text } = tokens[i]!
  if (text !== '2' && text !== '4') return false
  if (DONE_NEXT.test(tokens[i + 1]?.norm ?? '') && tokens[i + 2]?.norm !== 'tape') return true
  if (text !== '4' || !isPile(i + 1) || i === 0) return false
  const before = phraseAt(tokens, i - 1)
  return before !== undefined && [...before.en, ...before.es].some(s => s.startsWith('mat:') || s === 'stone:size')
}
