import type { IncomingMessage } from 'node:http'
import { z } from 'zod'
import { isPhone, tidyPhone } from '../../units/phone.ts'

/** What a request can be refused for; each has a sentence, and a status of HTTP (RFC 9110, section 15; 429 in RFC 6585). */
export const STATUS = {
  'sms-path': 404,
  'sms-method': 405,
  'sms-type': 415,
  'sms-size': 413,
  'sms-time': 401,
  'sms-signature': 401,
  'sms-replayed': 409,
  'sms-body': 400,
  'sms-often': 429,
  'sms-busy': 503,
} as const
export type RefusalCode = keyof typeof STATUS

export interface Refusal {
  code: RefusalCode
  data: Record<string, string | number>
}

export const PATH = '/sms'
/** The longest text that is read is 4,096 characters; escaped in JSON each takes up to 6 bytes (12 for a pair). */
export const MOST_BYTES = 65_536
/** A gateway that was cut off hands over what waited; older than this a date in the text means something else, days. */
const OLDEST_DAYS = 14

const Body = z.object({
  from: z.string().transform(tidyPhone).refine(isPhone, 'must be a telephone number with its country code, like +16085550142'),
  text: z.string(),
  id: z.string().trim().min(1).max(200).optional(),
  at: z.iso.datetime({ offset: true }).optional(),
})

export type SmsMessage = z.infer<typeof Body> & { at: string }

/** Why a request is not even read; undefined where it may be. */
export const refusedUnread = (request: IncomingMessage): Refusal | undefined => {
  if ((request.url ?? '').split('?')[0] !== PATH) return { code: 'sms-path', data: { path: PATH } }
  if (request.method !== 'POST') return { code: 'sms-method', data: {} }
  if (!/^application\/json\s*(;|$)/i.test(request.headers['content-type'] ?? '')) return { code: 'sms-type', data: {} }
  return Number(request.headers['content-length'] ?? 0) > MOST_BYTES ? { code: 'sms-size', data: { most: MOST_BYTES } } : undefined
}

/** The body, up to its most; undefined where it is longer, and the rest is not read. Rejects where the line breaks. */
export const bodyOf = (request: IncomingMessage): Promise<Buffer | undefined> =>
  new Promise((resolve, reject) => {
    const pieces: Buffer[] = []
    let size = 0
    request.on('data', (piece: Buffer) => {
      size += piece.length
      if (size <= MOST_BYTES) pieces.push(piece)
      else {
        request.pause()
        resolve(undefined)
      }
    })
    request.once('end', () => resolve(Buffer.concat(pieces)))
    request.once('error', reject)
    request.once('close', () => reject(new Error('the line broke')))
  })

/** A message as a gateway hands it over. Slots that are not known are nobody's harm: gateways tell more than is asked. */
export const messageIn = (body: Buffer, nowMs: number): SmsMessage | Refusal => {
  const wrong = (field: string, why: string): Refusal => ({ code: 'sms-body', data: { field, why } })
  let value: unknown
  try {
    value = JSON.parse(new TextDecoder('utf8', { fatal: true }).decode(body))
  } catch {
    return wrong('body', 'is not JSON in UTF-8')
  }
  const r = Body.safeParse(value)
  if (!r.success) return wrong(String(r.error.issues[0]?.path[0] ?? 'body'), r.error.issues[0]?.message ?? 'cannot be read')
  const at = r.data.at === undefined ? nowMs : Date.parse(r.data.at)
  if (nowMs - at > OLDEST_DAYS * 86_400_000) return wrong('at', `is more than ${OLDEST_DAYS} days ago`)
  // a telephone's clock that runs ahead must not date anything in the future
  return { ...r.data, at: new Date(Math.min(at, nowMs)).toISOString() }
}
