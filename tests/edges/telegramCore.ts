import { type Book, eventsFrom, foldBook } from '../../src/book/book.ts'
import type { Body } from '../../src/book/entries.ts'
import type { Event } from '../../src/book/events.ts'
import { makeEnter } from '../../src/edges/joining/enter.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import type { Store } from '../../src/edges/store.ts'
import type { Core } from '../../src/edges/telegram/options.ts'
import type { Incoming, Result } from '../../src/ports.ts'
import { makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const plain = (outcome: Result['outcome'], text?: string, m?: Incoming): Result => ({
  outcome,
  recorded: [],
  withdrawn: [],
  asks: [],
  answers: [],
  replies: text === undefined || !m ? [] : [{ to: m.chat, text, under: m.id }],
})

/**
 * A core of a few rules over the real store: "ask …" asks with the words after it as choices, "chatter" is ignored, "fail"
 * fails, "big" answers at length, a tap closes its question; all else is noted, and an edit notes anew.
 */
export const tinyCore = (store: Store): Core & { heard: Incoming[]; notes(): string[] } => {
  let book: Book = foldBook(store.entries('home'))
  const heard: Incoming[] = []

  const enter = makeEnter(store, () => book)

  const note = (m: Incoming, text: string): { bodies: Body[]; event: Event } => {
    const event: Event = { type: 'note', text, on: m.at.slice(0, 10), by: m.from }
    return { event, bodies: [{ kind: 'event', id: `${book.last + 1}`, event }] }
  }

  const settle = (m: Incoming): unknown => {
    const [word = '', ...rest] = m.text.split(' ')
    if (m.pick) {
      const { bodies, event } = note(m, m.text)
      const close: Body = { kind: 'close', question: m.pick.question, how: 'answered' }
      if (m.text === 'no') return enter(m, [close], plain('answered'))
      if (m.text === 'mine') return enter(m, [], plain('refused', 'That is not for you.', m))
      return enter(m, [...bodies, close], { ...plain('recorded', `Settled on ${m.text}.`, m), recorded: [event] })
    }
    if (word === 'chatter') return enter(m, [], plain('ignored'))
    if (word === 'big') return enter(m, [], plain('answered', Array.from({ length: 900 }, (_, i) => `line ${i}`).join('\n'), m))
    if (word === 'ask') {
      const id = `q${book.last + 1}`
      const question = {
        id,
        chat: m.chat,
        to: m.from,
        lang: 'en' as const,
        at: m.at,
        source: { channel: m.channel, chat: m.chat, id: m.id, edit: m.edit },
        ask: { code: 'ask-pile', data: {} },
        choices: rest.map(label => ({ label, act: 'fill' as const, value: label })),
        drafts: [],
      }
      return enter(m, [{ kind: 'ask', question }], {
        ...plain('asked'),
        replies: [{ to: m.chat, text: 'Which one?', choices: rest, question: id, under: m.id }],
      })
    }
    const before = eventsFrom(book, { channel: m.channel, chat: m.chat, id: m.id })
    const { bodies, event } = note(m, m.text)
    const withdrawals: Body[] = before.map(l => ({ kind: 'withdraw', id: l.id, why: 'edit' }))
    const line = before.length ? `Changed: ${m.text}` : `Noted: ${m.text}`
    enter(m, [...withdrawals, ...bodies], { ...plain('recorded', line, m), recorded: [event], withdrawn: before.map(l => l.event) })
  }

  return {
    heard,
    say,
    book: () => book,
    notes: () => {
      book = foldBook(store.entries('home'))
      return book.logged.filter(l => l.withdrawnBy === undefined && l.event.type === 'note').map(l => (l.event as { text: string }).text)
    },
    handle: m => {
      heard.push(m)
      const taken = store.take(m)
      if (taken.result) return taken.result
      if (m.text.startsWith('fail')) throw new Error('the core failed')
      settle(m)
      return store.take(m).result!
    },
  }
}
