import type { Member } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Datum } from '../../book/questions.ts'
import type { Incoming, Outcome, Result, Role } from '../../ports.ts'
import { type Instant, localDay } from '../../units/calendar.ts'
import { isPhone, tidyPhone } from '../../units/phone.ts'
import { admit, type Entrance, isLastOwner, memberOf } from '../joining/admit.ts'
import { CODE_LENGTH, inviteState, newInvite, tidyCode } from '../joining/codes.ts'
import { type Enter, resultOf } from '../joining/enter.ts'
import type { SmsOptions } from './options.ts'
import { langOf } from './shown.ts'

export interface DoorOptions extends Pick<SmsOptions, 'book' | 'say' | 'ownerCode' | 'zone'> {
  enter: Enter
  now(): Instant
}

/** What a message came to at the door: it is for the house, or it was settled here, or nothing is said to it. */
export type AtDoor = { pass: Incoming } | { result: Result } | undefined

/** What is said to somebody at the door. */
const AT_THE_DOOR: Record<Entrance['as'], string> = {
  owner: 'sms-owner',
  crew: 'sms-crew',
  'no-owner': 'sms-no-owner',
  'code-spent': 'sms-code-spent',
  stranger: 'sms-stranger',
}
/** The words of this channel's own. Whatever else is said is the house's. */
const INVITE = /^\/?(?:invite|invitar)(\s+(?:viewer|mirar))?[.!]?$/i
const CREW = /^\/?(?:crew|cuadrilla)[.!?]?$/i
const LEAVE = /^\/?(?:leave|salir)[.!]?$/i
const REMOVE = /^\/?(?:remove|quitar)\s+(\S.*)$/i
const NAME_MOST = 40

/** A code at the beginning, and the name behind it: `ABCD 2345 Walt`. */
const codeAndName = (text: string, length: number): { code: string; name: string } => {
  const all = tidyCode(text)
  let at = 0
  for (let n = 0; n < length && at < text.length; at++) if (/[^\s-]/.test(text[at]!)) n++
  // a code that runs on is another word
  if (/^[^\s,:;-]/.test(text.slice(at))) return { code: all, name: '' }
  return {
    code: tidyCode(text.slice(0, at)),
    name: text
      .slice(at)
      .replace(/^[\s,:;-]+/, '')
      .replace(/\s+/g, ' ')
      .trim()
      .slice(0, NAME_MOST),
  }
}

/**
 * Who may come in by telephone. Strangers get one line, once, and leave no trace after it; what is decided here goes through
 * the log like everything else, so the same message again decides nothing twice.
 */
export const makeDoor = (o: DoorOptions): ((message: Incoming) => AtDoor) => {
  const answer = (m: Incoming, code: string, data: Record<string, Datum>, bodies: Body[], outcome: Outcome): AtDoor => {
    const text = o.say({ code, data }, langOf(o.book(), m.from))
    return { result: o.enter(m, bodies, resultOf(outcome, [{ to: m.chat, text, under: m.id }])) }
  }

  const phones = (): Member[] => [...o.book().members.values()].filter(x => x.role !== 'stranger' && isPhone(x.person))
  const named = (words: string): Member | undefined =>
    phones().find(x => x.name?.toLowerCase() === words.toLowerCase() || x.person === tidyPhone(words))

  const letGo = (m: Incoming, x: Member, code: string): AtDoor =>
    isLastOwner(o.book(), x)
      ? answer(m, 'sms-owner-stays', {}, [], 'refused')
      : answer(m, code, { name: x.name ?? x.person }, [{ kind: 'member', person: x.person, role: 'stranger' }], 'answered')

  const owners = (m: Incoming, member: Member, act: () => AtDoor): AtDoor =>
    member.role === 'owner' ? act() : answer(m, 'refused-owner', {}, [], 'refused')

  /** Who belongs to the farm, and a word that is the channel's own; undefined for one that is not. */
  const own = (m: Incoming, member: Member): AtDoor => {
    const text = m.text.trim()
    const invite = INVITE.exec(text)
    if (invite)
      return owners(m, member, () => {
        const role = invite[1] ? 'viewer' : 'crew'
        const { code, lapses, body } = newInvite(o.now(), role)
        return answer(m, 'sms-invite', { code, until: localDay(lapses, o.zone), role }, [body], 'answered')
      })
    if (CREW.test(text))
      return owners(m, member, () => {
        const list = phones().map(x => ({ code: 'sms-one', data: { name: x.name ?? '', phone: x.person, role: x.role } }))
        return answer(m, 'join', { list, by: 'line' }, [], 'answered')
      })
    if (LEAVE.test(text)) return letGo(m, member, 'sms-left')
    const gone = REMOVE.exec(text)
    const who = gone ? named(gone[1]!.trim()) : undefined
    // any other name is a pile's or a box's, and the house's business
    return who && owners(m, member, () => letGo(m, who, 'sms-removed'))
  }

  const join = (m: Incoming, role: Role, name: string, bodies: Body[]): AtDoor => {
    const taken = [...o.book().members.values()].some(x => x.person !== m.from && x.name?.toLowerCase() === name.toLowerCase())
    // two of one name are told apart by the end of their numbers
    const own = name === '' ? '' : taken ? `${name} ${m.from.slice(-4)}` : name
    const member: Body = { kind: 'member', person: m.from, role, address: m.chat, ...(own && { name: own }) }
    const code = role === 'viewer' ? 'sms-viewer' : AT_THE_DOOR[role === 'owner' ? 'owner' : 'crew']
    return answer(m, code, { name: own }, [member, ...bodies], 'answered')
  }

  const stranger = (m: Incoming): AtDoor => {
    const owner = tidyCode(o.ownerCode).length
    // of a code that the owner chose the length is known as well
    for (const length of [CODE_LENGTH, owner]) {
      const { code, name } = codeAndName(m.text, length)
      const e = admit(o.book(), m.from, code, o.ownerCode, o.now())
      if (e?.as === 'owner' || e?.as === 'crew') return join(m, e.viewer ? 'viewer' : e.as, name, e.bodies)
      if (e?.as === 'code-spent') return answer(m, AT_THE_DOOR[e.as], {}, e.bodies, 'refused')
    }
    const e = admit(o.book(), m.from, '', o.ownerCode, o.now())
    return e && answer(m, AT_THE_DOOR[e.as], {}, e.bodies, 'refused')
  }

  return m => {
    const member = memberOf(o.book(), m.from)
    if (!member) return stranger(m)
    const there = own(m, member)
    if (there) return there
    const { code } = codeAndName(m.text, CODE_LENGTH)
    if (inviteState(o.book(), code, o.now()) !== 'none' || tidyCode(m.text) === tidyCode(o.ownerCode))
      return answer(m, 'sms-already', {}, [], 'answered')
    return { pass: m }
  }
}
