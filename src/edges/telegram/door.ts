import type { UserFromGetMe } from 'grammy/types'
import type { Member } from '../../book/book.ts'
import type { Incoming } from '../../ports.ts'
import { type Instant, localDay } from '../../units/calendar.ts'
import { admit, type Entrance, memberOf, turnAway } from '../joining/admit.ts'
import { inviteState, newInvite, tidyCode } from '../joining/codes.ts'
import { asksForBook } from './commands.ts'
import type { Desk } from './desk.ts'
import type { Freight } from './freight.ts'
import type { Heard } from './heard.ts'
import type { Core } from './options.ts'
import { binding, isBound, isStopped, joining, stopping, unbinding } from './people.ts'
import { isViewerWord, type Staff } from './staff.ts'

/** What is said to somebody at the door. */
const AT_THE_DOOR: Record<Entrance['as'], string> = {
  owner: 'telegram-owner',
  crew: 'telegram-crew',
  'no-owner': 'telegram-no-owner',
  'code-spent': 'telegram-code-spent',
  stranger: 'telegram-stranger',
}

export interface DoorOptions extends Core {
  desk: Desk
  staff: Staff
  freight: Freight
  ownerCode: string
  zone: string
  now(): Instant
  me: UserFromGetMe
  /** The owner wants the book as a file. */
  onExport(heard: Heard): void
}

/** Decides a message that is the channel's own business; hands back the one that is for the house, if it is. */
export type Door = (heard: Heard) => Incoming | undefined

/**
 * Who may come in, and where. Strangers get one line, once; a group that is not the farm's hears nothing of it. What is
 * decided here goes through the log like everything else, so the same update again decides nothing twice.
 */
export const makeDoor = (o: DoorOptions): Door => {
  const { desk, staff } = o

  const stranger = (h: Heard): void => {
    const book = o.book()
    const { from } = h.message
    if (!h.message.private && !h.message.addressed) return
    const code = tidyCode(h.command === 'start' ? h.rest : h.message.text)
    const entrance = h.message.private ? admit(book, from, code, o.ownerCode, o.now()) : turnAway(book, from)
    if (!entrance) return
    const { as, bodies } = entrance
    if (as !== 'owner' && as !== 'crew') {
      desk.refuse(h, AT_THE_DOOR[as], bodies)
      return
    }
    const member = joining(book, h.user, entrance.viewer ? 'viewer' : as)
    // One who was here before takes up the private chat again.
    const again = isStopped(book, h.message.chat) ? [stopping(h.message.chat, false)] : []
    desk.answer(h, entrance.viewer ? 'telegram-viewer' : AT_THE_DOOR[as], { name: member.name }, [member, ...again, ...bodies])
  }

  /** A code for one person; `name` where their contact was sent. */
  const invite = (h: Heard, member: Member, name = ''): void => {
    if (!desk.owns(h, member)) return
    if (!h.message.private) {
      desk.refuse(h, 'telegram-invite-private')
      return
    }
    const role = isViewerWord(h.rest) ? 'viewer' : 'crew'
    const { code, lapses, body } = newInvite(o.now(), role)
    const link = `https://t.me/${o.me.username}?start=${code}`
    desk.answer(h, 'telegram-invite', { code, link, until: localDay(lapses, o.zone), role, name }, [body])
  }

  const here = (h: Heard, member: Member): void => {
    if (h.message.private) {
      desk.refuse(h, 'telegram-here-private')
      return
    }
    if (!desk.owns(h, member)) return
    const code = h.hearsAll ? 'telegram-here' : 'telegram-here-hidden'
    desk.answer(h, code, { name: `@${o.me.username}` }, binding(h.message.chat))
  }

  const away = (h: Heard, member: Member): void => {
    if (h.message.private) {
      desk.refuse(h, 'telegram-here-private')
      return
    }
    if (!desk.owns(h, member)) return
    if (!isBound(o.book(), h.message.chat)) {
      desk.refuse(h, 'telegram-not-here')
      return
    }
    desk.answer(h, 'telegram-away', {}, unbinding(o.book(), h.message.chat))
  }

  const leave = (h: Heard, member: Member): void => {
    if (h.message.private) {
      staff.leave(h, member)
      return
    }
    // In a group it is the group that is left, and the owner's to say.
    away(h, member)
  }

  const bookAsFile = (h: Heard, member: Member): void => {
    if (!desk.owns(h, member)) return
    if (!h.message.private) {
      desk.refuse(h, 'telegram-export-private')
      return
    }
    o.onExport(h)
  }

  const OWN: Record<string, (h: Heard, m: Member) => void> = {
    invite: (h, m) => invite(h, m),
    here,
    away,
    leave,
    crew: staff.list,
    role: staff.role,
    remove: staff.remove,
    export: bookAsFile,
  }

  const insider = (h: Heard, member: Member): Incoming | undefined => {
    const { message } = h
    const carryOut = h.command === undefined ? undefined : OWN[h.command]
    const ours = message.private || isBound(o.book(), message.chat)
    if (carryOut && (ours || h.command === 'here' || h.command === 'invite')) {
      // A command that was edited has been carried out already.
      if (message.edit === '') carryOut(h, member)
      return undefined
    }
    if (!ours) {
      if (message.addressed) desk.refuse(h, 'telegram-not-here')
      return undefined
    }
    if (h.wordless) {
      if (h.cargo.contact !== undefined && message.private && member.role === 'owner') invite(h, member, h.cargo.contact)
      else return o.freight.wordless(h, member)
      return undefined
    }
    if (message.private) {
      const code = tidyCode(h.command === 'start' ? h.rest : message.text)
      if (code !== '' && (code === tidyCode(o.ownerCode) || inviteState(o.book(), code, o.now()) !== 'none')) {
        desk.answer(h, 'telegram-already')
        return undefined
      }
    }
    if (asksForBook(message.text) && message.edit === '') {
      bookAsFile(h, member)
      return undefined
    }
    return h.command === 'start' ? { ...message, text: 'help' } : message
  }

  return h => {
    const member = memberOf(o.book(), h.message.from)
    if (member) return insider(h, member)
    if (h.message.edit === '') stranger(h)
    return undefined
  }
}
