import type { Member } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Datum } from '../../book/questions.ts'
import type { Outcome, Reply } from '../../ports.ts'
import { type Enter, resultOf } from '../joining/enter.ts'
import type { Heard } from './heard.ts'
import type { Core } from './options.ts'
import { langOf } from './people.ts'

/** What is said at the channel's own desk, beside the words: choices, a file. */
export type More = Pick<Reply, 'choices' | 'question' | 'file' | 'plain'>

/** Settles what is the channel's own business, with an answer in the message's own chat. */
export interface Desk {
  answer(h: Heard, code: string, data?: Record<string, Datum>, bodies?: Body[], outcome?: Outcome, more?: More): void
  refuse(h: Heard, code: string, bodies?: Body[]): void
  /** Settles it without a word. */
  quietly(h: Heard, bodies?: Body[]): void
  /** True where the person owns the farm; else they are told that it takes an owner. */
  owns(h: Heard, member: Member): boolean
}

export const makeDesk = (o: Core & { enter: Enter }): Desk => {
  const answer: Desk['answer'] = (h, code, data = {}, bodies = [], outcome = 'answered', more = {}) => {
    const text = o.say({ code, data }, langOf(o.book(), h.user))
    const replies = [{ to: h.message.chat, text, under: h.message.id, ...more }]
    o.enter(h.message, bodies, resultOf(outcome, replies))
  }
  const refuse: Desk['refuse'] = (h, code, bodies = []) => answer(h, code, {}, bodies, 'refused')
  return {
    answer,
    refuse,
    quietly: (h, bodies = []) => void o.enter(h.message, bodies, resultOf('answered', [])),
    owns: (h, member) => {
      if (member.role === 'owner') return true
      refuse(h, 'refused-owner')
      return false
    },
  }
}
