import { createHmac, timingSafeEqual } from 'node:crypto'

/** The two headers of a signed request, either way. */
export const TIME_HEADER = 'Pilehand-Time'
export const SIGNATURE_HEADER = 'Pilehand-Signature'
/** How far the two clocks may be apart, and how long a signature is remembered, seconds. */
export const WINDOW = 300

/** HMAC-SHA256 (RFC 2104) over the time, a full stop and the body, in hexadecimal. `time` is whole seconds since 1970. */
export const sign = (secret: string, time: string, body: Buffer | string): string =>
  createHmac('sha256', secret).update(`${time}.`).update(body).digest('hex')

/** Undefined where the request is signed, and lately. `signature` in small letters. */
export const wrongWith = (
  secret: string,
  time: string | undefined,
  signature: string | undefined,
  body: Buffer,
  nowMs: number,
): 'sms-time' | 'sms-signature' | undefined => {
  if (time === undefined || !/^\d{1,11}$/.test(time)) return 'sms-time'
  const given = signature ?? ''
  const right = sign(secret, time, body)
  // both are told apart only for who signed: an old stamp under a wrong signature is a wrong signature
  if (given.length !== right.length || !timingSafeEqual(Buffer.from(given), Buffer.from(right))) return 'sms-signature'
  return Math.abs(nowMs / 1000 - Number(time)) > WINDOW ? 'sms-time' : undefined
}
