import type { Ask } from '../book/asks.ts'
import type { Logged } from '../book/book.ts'
import type { Body } from '../book/entries.ts'
import type { Event } from '../book/events.ts'
import type { Draft, Message, Question } from '../book/questions.ts'
import type { Outcome } from '../ports.ts'
import type { Act } from '../reading/reading.ts'
import type { Context, Need } from './context.ts'

/** What a message comes to, before any figure is worked out or word is said. */
export interface Settled {
  outcome: Outcome
  entries: Body[]
  recorded: Event[]
  withdrawn: Event[]
  /** Questions that figures answer. */
  asks: Ask[]
  /** The question put back, if one is. */
  question?: Question
  /** The message whose question this one answered. */
  raised?: string
  /** The message was longer than is read. */
  cut?: boolean
  /** The wording of a voice note that was settled; empty where there was none. */
  heard?: string
  /** A short line that is neither record nor question. */
  word?: Message
}

export const nothing = (outcome: Outcome, word?: Message): Settled => ({
  outcome,
  entries: [],
  recorded: [],
  withdrawn: [],
  asks: [],
  word,
})
export const m = (code: string, data: Message['data'] = {}): Message => ({ code, data })

/** How far a reading may leave words unexplained and still be taken as certain. */
export const clear = (a: Act): boolean => a.leftNumbers === 0 && a.left <= Math.max(1.5, a.used * 0.34)

/** Puts an event into the outcome, and takes back what it replaces. */
export const record = (out: Settled, event: Event, d: Draft, c: Context): void => {
  for (const id of d.replaces) {
    const was = c.book.byId.get(id)
    if (was && was.withdrawnBy === undefined && !out.entries.some(e => e.kind === 'withdraw' && e.id === id)) {
      out.entries.push({ kind: 'withdraw', id, why: c.message.edits !== undefined ? 'edit' : 'correction' })
      out.withdrawn.push(was.event)
    }
  }
  out.entries.push({ kind: 'event', id: c.id(), event })
  out.recorded.push(event)
}

export const question = (c: Context, need: Need, drafts: Draft[]): Question => ({
  id: c.id(),
  chat: c.message.chat,
  to: c.message.from,
  lang: c.lang,
  at: c.message.at,
  source: { channel: c.message.channel, chat: c.message.chat, id: c.message.id, edit: c.message.edit },
  ask: need.ask,
  slot: need.slot,
  choices: need.choices,
  drafts: need.doubt ? drafts.map((d, k) => (k === 0 ? { ...d, sure: [...d.sure, `?${need.doubt}`] } : d)) : drafts,
})

export const ask = (out: Settled, needs: Need[], c: Context): void => {
  const q = question(
    c,
    needs[0]!,
    needs.map(n => n.draft),
  )
  out.entries.push({ kind: 'ask', question: q })
  out.question = q
}

export const withdraw = (out: Settled, l: Logged | undefined, why: 'undo' | 'correction' | 'edit'): void => {
  if (!l || l.withdrawnBy !== undefined) return
  out.entries.push({ kind: 'withdraw', id: l.id, why })
  out.withdrawn.push(l.event)
}
