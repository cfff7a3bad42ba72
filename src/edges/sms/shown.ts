import type { Book } from '../../book/book.ts'
import type { Incoming, Lang } from '../../ports.ts'
import { type Shown, shownBy, typed } from '../choices.ts'
import { farmLang, ownLang } from '../joining/lang.ts'
import type { Letter, SmsOptions } from './options.ts'

/** A question that nobody answered is let go after a day and a half, as everywhere in the house, ms. */
export const OPEN_MS = 36 * 3_600_000

/**
 * The question that a telephone shows: the newest one that is open there, if it has choices. `unsaid` are those that still
 * wait to be carried: nobody can mean them. It is read from the book, so that a number means the same after a restart.
 */
export const shownAt = (
  book: Book,
  chat: string,
  at: string,
  say: SmsOptions['say'],
  unsaid: ReadonlySet<string> = new Set(),
): Shown | undefined => {
  const q = [...book.questions.values()].findLast(x => x.chat === chat && !unsaid.has(x.id) && Date.parse(at) - Date.parse(x.at) < OPEN_MS)
  return q && shownBy({ question: q.id, choices: q.choices.map(c => (typeof c.label === 'string' ? c.label : say(c.label, q.lang))) }, book)
}

/** A number, or a choice's words, as the choice itself. */
export const withChoice = (message: Incoming, shown: Shown | undefined): Incoming => {
  const choice = typed(message.text, shown)
  return choice ? { ...message, text: choice.label, pick: { question: choice.question, choice: choice.choice } } : message
}

/** The words of a letter, its choices below: numbered where a number will be taken for one of them. */
export const wordsOf = ({ reply }: Pick<Letter, 'reply'>, shown: Shown | undefined): string => {
  const { text, choices, question } = reply
  if (!choices?.length) return text
  const numbered = shown !== undefined && shown.question === question && shown.numbered
  return `${text}\n${numbered ? choices.map((c, i) => `${i + 1} ${c}`).join('  ') : choices.join(', ')}`
}

export const langOf = (book: Book, phone: string): Lang => ownLang(book, phone) ?? farmLang(book)
