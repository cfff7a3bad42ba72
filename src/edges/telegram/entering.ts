import { apply, type Book } from '../../book/book.ts'
import { type Body, ENTRY_VERSION } from '../../book/entries.ts'
import type { Reply } from '../../ports.ts'
import type { Instant } from '../../units/calendar.ts'
import { type Enter, makeEnter } from '../joining/enter.ts'
import { CHANNEL, type ChannelStore, FARM } from './options.ts'
import { isBound } from './people.ts'

export interface Entering {
  enter: Enter
  /** Enters what no message caused. */
  note(bodies: Body[], replies: Reply[]): void
}

/** Writes the channel's own business into the log. A chat that closes by it gets none of the words that still wait for it. */
export const makeEntering = (
  log: ChannelStore,
  book: () => Book,
  now: () => Instant,
  drop: (chat: string, why: string) => void,
): Entering => {
  const entering = makeEnter(log, book)

  const closing = (b: Body): string | undefined => {
    if (b.kind === 'member' && b.role === 'stranger') {
      const was = book().members.get(b.person)
      return was?.role === 'stranger' ? undefined : was?.address
    }
    // Words for a group that moved go on to its new number.
    const group = b.kind === 'setting' && b.value === false && b.name.startsWith('group:') ? b.name.slice('group:'.length) : undefined
    return group !== undefined && isBound(book(), group) ? group : undefined
  }
  const letGo = (bodies: Body[]): void => {
    if (bodies.some(b => b.kind === 'setting' && b.name.startsWith('moved:'))) return
    for (const chat of bodies.map(closing)) if (chat !== undefined) drop(chat, 'the chat was closed')
  }

  return {
    enter: (message, bodies, result) => {
      letGo(bodies)
      return entering(message, bodies, result)
    },
    note: (bodies, replies) => {
      letGo(bodies)
      const b = book()
      const at = now()
      const entries = bodies.map((body, k) => ({ v: ENTRY_VERSION, n: b.last + 1 + k, at, by: 'house', body }))
      log.append(FARM, CHANNEL, entries, replies)
      for (const e of entries) apply(b, e)
    },
  }
}
