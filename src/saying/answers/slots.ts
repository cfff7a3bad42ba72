import type { Message } from '../../book/questions.ts'
import { cropWord, joined, m } from '../phrases.ts'

export type Slots = Record<string, unknown>
export type Lines = (Message | undefined)[]

export const num = (s: Slots, key: string): number | undefined =>
  typeof s[key] === 'number' && Number.isFinite(s[key]) ? (s[key] as number) : undefined
export const text = (s: Slots, key: string): string | undefined =>
  typeof s[key] === 'string' && s[key] !== '' ? (s[key] as string) : undefined
export const rows = (s: Slots, key: string): Slots[] => (Array.isArray(s[key]) ? (s[key] as Slots[]) : [])
export const notesOf = (s: Slots): Message[] => (Array.isArray(s.notes) ? (s.notes as Message[]) : [])
export const given = <T>(value: T | undefined, then: (value: T) => Message | undefined): Message | undefined =>
  value === undefined ? undefined : then(value)
export const pileOf = (s: Slots): string => text(s, 'pile') ?? ''

export const cropOf = (s: Slots): Message | string => cropWord(text(s, 'crop'), num(s, 'cut')) ?? ''
export const sharesOf = (list: Slots[]): Message =>
  joined(
    list.map(r => m('answer-share', { crop: cropOf(r), pct: (num(r, 'share') ?? 0) * 100, ft: num(r, 'atFt') || undefined })),
    'comma',
  )
