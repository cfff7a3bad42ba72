import { randomInt } from 'node:crypto'
import { type Book, setting } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Instant } from '../../units/calendar.ts'

/** No I, O, 0 or 1: codes are read out over engine noise. 32 letters, 8 of them: 40 bits. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789'
export const CODE_LENGTH = 8
export const INVITE_DAYS = 7

export const makeCode = (): string => Array.from({ length: CODE_LENGTH }, () => LETTERS[randomInt(LETTERS.length)]).join('')

/** A code as typed, without what a thumb adds. */
export const tidyCode = (text: string): string => text.toUpperCase().replace(/[\s-]+/g, '')

const settingName = (code: string): string => `invite:${code}`

export interface Invite {
  code: string
  lapses: Instant
  body: Body
}

/** A code that makes one person a member. Its setting is the instant it lapses at, with the role where it is not crew's. */
export const newInvite = (now: Instant, role: 'crew' | 'viewer' = 'crew'): Invite => {
  const code = makeCode()
  const lapses = new Date(Date.parse(now) + INVITE_DAYS * 86_400_000).toISOString()
  return { code, lapses, body: { kind: 'setting', name: settingName(code), value: role === 'crew' ? lapses : `${lapses} ${role}` } }
}

/** What became of an invite: `none` where there never was such a code. */
export const inviteState = (book: Book, code: string, now: Instant): 'open' | 'spent' | 'none' => {
  const [value = ''] = setting<string>(book, settingName(code), '').split(' ')
  if (value === '') return 'none'
  return value !== 'used' && Date.parse(value) > Date.parse(now) ? 'open' : 'spent'
}

/** Whether the code lets its holder ask only. */
export const isForViewer = (book: Book, code: string): boolean => setting<string>(book, settingName(code), '').endsWith(' viewer')

export const spend = (code: string): Body => ({ kind: 'setting', name: settingName(code), value: 'used' })
