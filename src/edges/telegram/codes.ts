import { randomInt } from 'node:crypto'
import { type Book, setting } from '../../book/book.ts'
import type { Body } from '../../book/entries.ts'
import type { Instant } from '../../units/calendar.ts'

/** No I, O, 0 or 1: codes are read out over engine noise. 32 letters, 8 of them: 40 bits. */
const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ23456789'
const LENGTH = 8
export const INVITE_DAYS = 7

export const makeCode = (): string => Array.from({ length: LENGTH }, () => LETTERS[randomInt(LETTERS.length)]).join('')

/** A code as typed, without what a thumb adds. */
export const tidyCode = (text: string): string => text.toUpperCase().replace(/[\s-]+/g, '')

const settingName = (code: string): string => `invite:${code}`

export interface Invite {
  code: string
  lapses: Instant
  body: Body
}

export const newInvite = (now: Instant): Invite => {
  const code = makeCode()
  const lapses = new Date(Date.parse(now) + INVITE_DAYS * 86_400_000).toISOString()
  return { code, lapses, body: { kind: 'setting', name: settingName(code), value: lapses } }
}

/** What became of an invite: `none` where there never was such a code. */
export const inviteState = (book: Book, code: string, now: Instant): 'open' | 'spent' | 'none' => {
  const value = setting<string>(book, settingName(code), '')
  if (value === '') return 'none'
  return value !== 'used' && Date.parse(value) > Date.parse(now) ? 'open' : 'spent'
}

export const spend = (code: string): Body => ({ kind: 'setting', name: settingName(code), value: 'used' })
