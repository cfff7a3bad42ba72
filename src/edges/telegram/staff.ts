import type { Member } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Role } from '../../ports.ts'
import { isLastOwner } from '../joining/admit.ts'
import type { Desk } from './desk.ts'
import type { Heard } from './heard.ts'
import type { Core } from './options.ts'
import { langOf, memberNamed, membersOf } from './people.ts'

/** Questions of the channel's own. They stand in no book: a tap on one is carried out by what the farm is at that moment. */
export const LEAVE = 'door:leave'
export const REMOVE = 'door:remove'

/** Roles as they are typed. */
const ROLES: Record<string, Role> = {
  owner: 'owner',
  crew: 'crew',
  viewer: 'viewer',
  dueno: 'owner',
  duena: 'owner',
  cuadrilla: 'crew',
  mirar: 'viewer',
  mira: 'viewer',
}
const roleOf = (word: string): Role | undefined => ROLES[word.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()]

/** Whether an invitation is for somebody who may only ask. */
export const isViewerWord = (word: string): boolean => roleOf(word) === 'viewer'

export const removal = (person: string): Body => ({ kind: 'member', person, role: 'stranger' })

/** The owner's list of people, and who leaves or is let go. A farm always keeps an owner. */
export const makeStaff = (o: Core, desk: Desk) => {
  const name = (m: Member): string => m.name ?? m.person
  const isLast = (m: Member): boolean => isLastOwner(o.book(), m)

  const list = (h: Heard, member: Member): void => {
    if (!desk.owns(h, member)) return
    const all = membersOf(o.book()).map(m => ({ code: 'telegram-crew-one', data: { name: name(m), role: m.role } }))
    desk.answer(h, 'telegram-crew-list', { people: { code: 'join', data: { list: all, by: 'line' } } })
  }

  const role = (h: Heard, member: Member): void => {
    if (!desk.owns(h, member)) return
    const words = h.rest.split(/\s+/)
    const to = roleOf(words.at(-1) ?? '')
    const who = memberNamed(o.book(), words.slice(0, -1).join(' '))
    if (!to || !who) {
      desk.refuse(h, 'telegram-role-how')
      return
    }
    if (to !== 'owner' && isLast(who)) {
      desk.refuse(h, 'telegram-owner-stays')
      return
    }
    desk.answer(h, 'telegram-role-set', { name: name(who), role: to }, [{ kind: 'member', person: who.person, role: to }])
  }

  const remove = (h: Heard, member: Member): void => {
    if (!desk.owns(h, member)) return
    const book = o.book()
    if (h.rest === '') {
      const others = membersOf(book).filter(m => m.person !== member.person)
      if (!others.length) {
        desk.refuse(h, 'telegram-nobody-else')
        return
      }
      const never = o.say({ code: 'choice-never-mind', data: {} }, langOf(o.book(), h.user))
      desk.answer(h, 'telegram-remove-whom', {}, [], 'answered', { choices: [...others.map(name), never], question: REMOVE })
      return
    }
    const who = memberNamed(book, h.rest)
    if (!who) {
      desk.refuse(h, 'telegram-nobody')
      return
    }
    if (isLast(who)) {
      desk.refuse(h, 'telegram-owner-stays')
      return
    }
    desk.answer(h, 'telegram-removed', { name: name(who) }, [removal(who.person)])
  }

  const leave = (h: Heard, member: Member): void => {
    if (isLast(member)) {
      desk.refuse(h, 'telegram-owner-stays')
      return
    }
    const choices = ['choice-yes', 'choice-no'].map(code => o.say({ code, data: {} }, langOf(o.book(), h.user)))
    desk.answer(h, 'telegram-leave-sure', {}, [], 'answered', { choices, question: LEAVE })
  }

  /** What a tap on one of our own questions comes to: the words that take its place, and what is entered. */
  const tapped = (
    question: string,
    choice: number,
    label: string,
    by: Member,
  ): { code: string; data: { name: string }; bodies: Body[] } => {
    const none = { code: 'closed-question', data: { name: '' }, bodies: [] }
    if (question === LEAVE) {
      if (choice !== 0) return none
      if (isLast(by)) return { ...none, code: 'telegram-owner-stays' }
      return { code: 'telegram-left', data: { name: name(by) }, bodies: [removal(by.person)] }
    }
    if (by.role !== 'owner') return { ...none, code: 'refused-owner' }
    const who = memberNamed(o.book(), label)
    if (!who) return none
    if (isLast(who)) return { ...none, code: 'telegram-owner-stays' }
    return { code: 'telegram-removed', data: { name: name(who) }, bodies: [removal(who.person)] }
  }

  return { list, role, remove, leave, tapped }
}
export type Staff = ReturnType<typeof makeStaff>
