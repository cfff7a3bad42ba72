import { z } from 'zod'
import type { Incoming } from '../../ports.ts'
import { StoreFault } from './fault.ts'

const incomingSchema = z.looseObject({
  channel: z.string(),
  farm: z.string(),
  chat: z.string(),
  private: z.boolean(),
  from: z.string(),
  role: z.enum(['owner', 'crew', 'viewer', 'stranger']).optional(),
  id: z.string(),
  edits: z.string().optional(),
  edit: z.string(),
  replyTo: z.string().optional(),
  at: z.string(),
  text: z.string(),
  photo: z.boolean().optional(),
  addressed: z.boolean().optional(),
  voice: z.looseObject({ ref: z.string(), seconds: z.number().optional(), bytes: z.number().optional() }).optional(),
  pick: z.object({ question: z.string(), choice: z.int().nonnegative() }).optional(),
})

/**
 * A stored message, checked.
 *
 * @throws StoreFault `entry-unreadable` with `n` its place in the inbox
 */
export const readMessage = (farm: string, seq: number, text: string): Incoming => {
  const raw: unknown = JSON.parse(text)
  const r = incomingSchema.safeParse(raw)
  if (r.success) return raw as Incoming
  throw new StoreFault('entry-unreadable', {
    farm,
    n: seq,
    why: `message ${r.error.issues[0]?.path.join('.') ?? ''}: ${r.error.issues[0]?.message ?? 'invalid'}`,
  })
}
