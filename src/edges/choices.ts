import type { Book } from '../book/book.ts'
import type { Reply } from '../ports.ts'

/** Slots whose values are numbers: a bare "2" is the value there, and never the second choice. */
const NUMBERS = /^(count|amount|lb|.*(Ft|Lb|In|Pct|PerDay|PerHead)|ft|in|inches|mph|degF|hours|tractors|head|acres|cut)$/

/** A question whose choices stand before somebody who can only type. */
export interface Shown {
  question: string
  choices: string[]
  /** The choices are numbered, and a number is one of them. */
  numbered: boolean
}

/** The question that a reply puts, as long as it is open. */
export const shownBy = (reply: Pick<Reply, 'question' | 'choices'>, book: Book): Shown | undefined => {
  const q = reply.question === undefined ? undefined : book.questions.get(reply.question)
  if (!q || !reply.choices?.length) return undefined
  return {
    question: q.id,
    choices: reply.choices,
    numbered: q.slot === undefined ? !/^ask-implausible|^ask-face-back/.test(q.ask.code) : !NUMBERS.test(q.slot),
  }
}

const tidy = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, '')

/** The choice that was typed: its words, or its number where the choices have numbers. */
export const typed = (text: string, shown: Shown | undefined): { question: string; choice: number; label: string } | undefined => {
  if (!shown) return undefined
  const number = shown.numbered ? /^\s*(\d{1,2})\s*[.)]?\s*$/.exec(text) : null
  const choice = number ? Number(number[1]) - 1 : shown.choices.findIndex(c => tidy(c) === tidy(text))
  const label = shown.choices[choice]
  return label === undefined ? undefined : { question: shown.question, choice, label }
}
