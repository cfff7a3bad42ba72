import type { Answer } from '../../book/asks.ts'
import type { Datum, Message } from '../../book/questions.ts'

/** Why a question cannot be answered, and what is missing for it. Never thrown. */
export interface Refusal {
  code: string
  data: Record<string, Datum>
}

export const refuse = (code: string, data: Record<string, Datum | undefined> = {}): Refusal => ({
  code,
  data: Object.fromEntries(Object.entries(data).filter(e => e[1] !== undefined)) as Refusal['data'],
})

export const isRefusal = (x: Answer | Refusal): x is Refusal => 'code' in x

/** A line of how a figure was worked out, or of what to beware of. Data that is not known is left out. */
export const told = (code: string, data: Record<string, Datum | undefined> = {}): Message => refuse(code, data)

/** Slots that are known; an unknown one must not stand in an answer. */
export const slots = <T extends object>(all: T): T => Object.fromEntries(Object.entries(all).filter(e => e[1] !== undefined)) as T
