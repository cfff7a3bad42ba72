import type { UserFromGetMe } from 'grammy/types'
import type { Member } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Datum } from '../../book/questions.ts'
import type { Incoming, Outcome, Role } from '../../ports.ts'
import { type Instant, localDay } from '../../units/calendar.ts'
import { inviteState, newInvite, spend, tidyCode } from './codes.ts'
import type { Enter } from './enter.ts'
import type { Heard } from './heard.ts'
import type { Core } from './options.ts'
import { binding, hasOwner, isBound, joining, langOf, memberOf } from './people.ts'

/** As long as nobody owns the book, whoever tries is told what is missing, but not for ever. */
const OWNER_TRIES = 5

export interface DoorOptions extends Core {
  enter: Enter
  ownerCode: string
  zone: string
  now(): Instant
  me: UserFromGetMe
}

/** Decides a message that is the channel's own business; hands back the one that is for the house, if it is. */
export type Door = (heard: Heard) => Incoming | undefined

/**
 * Who may come in, and where. Strangers get one line, once; a group that is not the farm's hears nothing of it. What is
 * decided here goes through the log like everything else, so the same update again decides nothing twice.
 */
export const makeDoor = (o: DoorOptions): Door => {
  let lastAlbum: string | undefined

  /** Answers in the message's own chat, and writes `bodies`. */
  const answer = (
    h: Heard,
    code: string,
    data: Record<string, Datum> = {},
    bodies: Body[] = [],
    outcome: Outcome = 'answered',
  ): undefined => {
    const text = o.say({ code, data }, langOf(h.user, memberOf(o.book(), h.message.from)))
    const replies = [{ to: h.message.chat, text, under: h.message.id }]
    o.enter(h.message, bodies, { outcome, recorded: [], withdrawn: [], asks: [], answers: [], replies })
    return undefined
  }
  const refuse = (h: Heard, code: string, bodies: Body[] = []): undefined => answer(h, code, {}, bodies, 'refused')

  const once = (h: Heard, code: string, key: string): undefined =>
    o.book().said.has(key) ? undefined : refuse(h, code, [{ kind: 'said', key }])

  const join = (h: Heard, role: Role, code: string, more: Body[] = []): undefined => {
    const member = joining(o.book(), h.user, role)
    return answer(h, code, { name: member.name }, [member, ...more])
  }

  const stranger = (h: Heard): undefined => {
    const book = o.book()
    const { from } = h.message
    if (!h.message.private) return h.message.addressed ? once(h, 'telegram-stranger', `stranger:${from}`) : undefined
    const code = tidyCode(h.command === 'start' ? h.rest : h.message.text)
    if (!hasOwner(book)) {
      if (code !== '' && code === tidyCode(o.ownerCode)) return join(h, 'owner', 'telegram-owner')
      const tries = Array.from({ length: OWNER_TRIES }, (_, i) => `owner-try:${from}:${i + 1}`)
      const next = tries.find(key => !book.said.has(key))
      return next === undefined ? undefined : refuse(h, 'telegram-no-owner', [{ kind: 'said', key: next }])
    }
    const state = inviteState(book, code, o.now())
    if (state === 'open') return join(h, 'crew', 'telegram-crew', [spend(code)])
    // Whoever holds a code of ours was invited by somebody; they learn why it does not open.
    if (state === 'spent') return once(h, 'telegram-code-spent', `spent:${code}:${from}`)
    return once(h, 'telegram-stranger', `stranger:${from}`)
  }

  const invite = (h: Heard, member: Member): undefined => {
    if (member.role !== 'owner') return refuse(h, 'refused-owner')
    if (!h.message.private) return refuse(h, 'telegram-invite-private')
    const { code, lapses, body } = newInvite(o.now())
    const link = `https://t.me/${o.me.username}?start=${code}`
    return answer(h, 'telegram-invite', { code, link, until: localDay(lapses, o.zone) }, [body])
  }

  const here = (h: Heard, member: Member): undefined => {
    if (h.message.private) return refuse(h, 'telegram-here-private')
    if (member.role !== 'owner') return refuse(h, 'refused-owner')
    const code = o.me.can_read_all_group_messages ? 'telegram-here' : 'telegram-here-hidden'
    return answer(h, code, { name: `@${o.me.username}` }, binding(h.message.chat))
  }

  const insider = (h: Heard, member: Member): Incoming | undefined => {
    const { message } = h
    if (h.command === 'invite') return invite(h, member)
    if (h.command === 'here') return here(h, member)
    if (!message.private && !isBound(o.book(), message.chat)) return message.addressed ? refuse(h, 'telegram-not-here') : undefined
    if (h.wordless) return message.private && (!h.album || h.album !== lastAlbum) ? refuse(h, 'telegram-words-only') : undefined
    if (message.private) {
      const code = tidyCode(h.command === 'start' ? h.rest : message.text)
      if (code !== '' && (code === tidyCode(o.ownerCode) || inviteState(o.book(), code, o.now()) !== 'none'))
        return answer(h, 'telegram-already')
    }
    return h.command === 'start' ? { ...message, text: 'help' } : message
  }

  return h => {
    const member = memberOf(o.book(), h.message.from)
    if (!member) return h.message.edit === '' ? stranger(h) : undefined
    // A command that was edited has been carried out already.
    const passed = h.message.edit !== '' && h.command !== '' ? undefined : insider(h, member)
    lastAlbum = h.album
    return passed
  }
}
