/** One word, number or mark of a message, with its place in the text. */
export interface Token {
  /** As typed. */
  text: string
  /** Lower case, accents folded, apostrophes removed. */
  norm: string
  from: number
  to: number
  kind: 'word' | 'number' | 'mark'
  /** Set for a plain number in digits: 7, 9,000, 34.5, 12k. */
  value?: number
}

/** The norm of the token at `i`; empty outside the message. */
export const normAt = (tokens: readonly Token[], i: number): string => tokens[i]?.norm ?? ''
