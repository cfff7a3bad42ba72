import { z } from 'zod'
import { ENTRY_VERSION, type Entry } from '../../book/entries.ts'
import { checkEvent } from '../../book/events.ts'
import { StoreFault } from './fault.ts'

const messageSchema: z.ZodType = z.looseObject({
  code: z.string(),
  data: z.record(
    z.string(),
    z.lazy(() => datumSchema),
  ),
})
const datumSchema: z.ZodType = z.union([z.string(), z.number(), z.boolean(), messageSchema, z.array(z.lazy(() => datumSchema))])

const sourceSchema = z.looseObject({ channel: z.string(), chat: z.string(), id: z.string(), edit: z.string() })

const questionSchema = z.looseObject({
  id: z.string(),
  chat: z.string(),
  to: z.string(),
  lang: z.enum(['en', 'es']),
  at: z.string(),
  source: sourceSchema,
  ask: messageSchema,
  slot: z.string().optional(),
  choices: z.array(z.looseObject({ label: z.union([z.string(), messageSchema]), act: z.string() })),
  drafts: z.array(
    z.looseObject({ type: z.string(), slots: z.record(z.string(), z.unknown()), sure: z.array(z.string()), replaces: z.array(z.string()) }),
  ),
  undo: z.array(z.string()).optional(),
  needs: z.string().optional(),
})

const bodySchema = z.discriminatedUnion('kind', [
  z.looseObject({ kind: z.literal('withdraw'), id: z.string(), why: z.enum(['undo', 'correction', 'edit']) }),
  z.looseObject({ kind: z.literal('ask'), question: questionSchema }),
  z.looseObject({ kind: z.literal('close'), question: z.string(), how: z.enum(['answered', 'dropped', 'lapsed']) }),
  z.looseObject({
    kind: z.literal('member'),
    person: z.string(),
    role: z.enum(['owner', 'crew', 'viewer', 'stranger']),
    name: z.string().optional(),
    lang: z.enum(['en', 'es']).optional(),
    address: z.string().optional(),
  }),
  z.looseObject({ kind: z.literal('setting'), name: z.string(), value: z.union([z.string(), z.number(), z.boolean()]) }),
  z.looseObject({ kind: z.literal('said'), key: z.string() }),
])

const headSchema = z.looseObject({
  v: z.int().positive(),
  n: z.int().positive(),
  at: z.iso.datetime({ offset: true }),
  by: z.string(),
  source: sourceSchema.optional(),
})

/** Turns an entry of version `from` into one of `from + 1`. */
export type Upgrade = (old: Record<string, unknown>) => Record<string, unknown>

/** One step for each version left behind, by the version it starts from. Stored entries are never rewritten; they are brought up to date on every read. */
export const UPGRADES: Record<number, Upgrade> = {}

const why = (error: z.ZodError): string => {
  const issue = error.issues[0]
  return `${issue?.path.join('.') || 'entry'}: ${issue?.message ?? 'invalid'}`
}

/** Events are most of the log, and have a check of their own that names the slot. */
const bodyTrouble = (body: unknown): string | undefined => {
  const b = body as { kind?: unknown; id?: unknown; event?: unknown } | undefined
  if (b?.kind !== 'event') {
    const r = bodySchema.safeParse(body)
    return r.success ? undefined : why(r.error)
  }
  if (typeof b.id !== 'string') return 'id: none'
  const checked = checkEvent(b.event)
  return checked.ok ? undefined : `${checked.data.type || 'event'}: ${checked.data.why}`
}

const known = (value: unknown, upgrades: Record<number, Upgrade>, newest: number): { entry: Entry } | { why: string } => {
  let raw = value as Record<string, unknown>
  const v = raw?.v
  if (typeof v !== 'number' || v < 1) return { why: 'v: no version' }
  if (v > newest) return { why: `version ${v} is newer than this program's ${newest}` }
  for (let step = v; step < newest; step++) {
    const upgrade = upgrades[step]
    if (!upgrade) return { why: `version ${step} has no way to ${step + 1}` }
    raw = { ...upgrade(raw), v: step + 1 }
  }
  const head = headSchema.safeParse(raw)
  const wrong = head.success ? bodyTrouble(raw.body) : why(head.error)
  return wrong === undefined ? { entry: raw as unknown as Entry } : { why: wrong }
}

/**
 * One stored line as an entry of today's version.
 *
 * @throws StoreFault `entry-unreadable` naming the farm and the number: an entry that can't be read must stop the start, not vanish from the book.
 */
export const readEntry = (farm: string, n: number, text: string, upgrades = UPGRADES, newest = ENTRY_VERSION): Entry => {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    throw new StoreFault('entry-unreadable', { farm, n, why: 'not JSON' })
  }
  const r = known(value, upgrades, newest)
  if ('why' in r) throw new StoreFault('entry-unreadable', { farm, n, why: r.why })
  if (r.entry.n !== n) throw new StoreFault('entry-unreadable', { farm, n, why: `it calls itself ${r.entry.n}` })
  return r.entry
}

/**
 * An entry as it is stored. What could not be read back is not written either.
 *
 * @throws StoreFault `entry-refused`
 */
export const writeEntry = (farm: string, entry: Entry): string => {
  const text = JSON.stringify(entry)
  const r = known(JSON.parse(text), UPGRADES, ENTRY_VERSION)
  if ('why' in r) throw new StoreFault('entry-refused', { farm, n: entry.n, why: r.why })
  return text
}
