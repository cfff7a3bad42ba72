import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { z } from 'zod'
import { checkEvent, EVENTS, type EventType } from '../book/events.ts'
import type { Core } from '../pipeline.ts'
import type { Lang } from '../ports.ts'
import type { Day } from '../units/calendar.ts'
import { promptsFolder } from './prompts.ts'

/** One thing said, as the reading gives it. */
export type Act = Parameters<Core['offer']>[1][number]

/** What a guess may name: this farm's own names, and nothing else of its book. */
export interface Farm {
  piles: string[]
  boxes: string[]
  crops: string[]
  today: Day
  lang: Lang
}

export interface SecondReader {
  /** What a message may have meant; undefined for whatever is not a clean guess. Never throws. */
  guess(text: string, farm: Farm, signal?: AbortSignal): Promise<{ acts: Act[] } | undefined>
}

export interface SecondReaderOptions {
  /** Base of an OpenAI-compatible API (`https://host/v1`), with or without `/chat/completions`. */
  url: string
  name?: string
  key?: string
  /** The system text; left out, the package's own. */
  prompt?: string
  /** For the whole exchange, ms. */
  timeoutMs?: number
  fetch?: typeof globalThis.fetch
  /** Told why no guess came, in a few words without the message, so that a wrong key does not stay unseen. */
  trouble?: (why: string) => void
}

/** A message holds one or two events, rarely more; beyond this it is no reading but a story. */
const MOST_EVENTS = 6
/** An answer of six events takes some 2,000 bytes. */
const MOST_BYTES = 65_536
/** Longer, and whoever asked has put the telephone away. Common practice, no source. */
const TIMEOUT_MS = 8000
/** A message about the past says its day within a season. Common practice, no source. */
const OLDEST_DAYS = 400
const AHEAD = new Set<EventType>(['remind', 'harvest'])

/** The slots of an event that its words give; who said it, and the words, are known already. */
const guessOf = (type: EventType) => {
  const { type: _type, on, by: _by, said: _said, ...slots } = EVENTS[type].shape as z.ZodRawShape & { on: z.ZodType }
  return z.strictObject({ frame: z.literal(type), ...slots, on: on.optional() })
}

const Guess = z.strictObject({
  events: z.array(z.union((Object.keys(EVENTS) as EventType[]).map(guessOf))).max(MOST_EVENTS),
})

/** The shape of an answer as JSON Schema, made from the schema that the answer is parsed with. */
export const guessSchema = (): Record<string, unknown> => z.toJSONSchema(Guess, { io: 'input' }) as Record<string, unknown>

const Completion = z.object({
  choices: z
    .array(
      z.object({
        finish_reason: z.string().nullish(),
        message: z.object({ content: z.string().nullish(), refusal: z.string().nullish() }),
      }),
    )
    .min(1),
})

/** Where completions are asked for, whether or not the address given ends there. */
export const completionsOf = (url: string): string => {
  const at = new URL(url)
  const path = at.pathname.replace(/\/+$/, '')
  at.pathname = path.endsWith('/chat/completions') ? path : `${path}/chat/completions`
  return at.href
}

/** A body's text; undefined where it is longer than anything sensible. */
const limited = async (response: Response): Promise<string | undefined> => {
  const parts: Uint8Array[] = []
  let size = 0
  // leaving the loop early also cancels the rest of the body
  for await (const part of (response.body ?? []) as AsyncIterable<Uint8Array>) {
    size += part.length
    if (size > MOST_BYTES) return undefined
    parts.push(part)
  }
  return Buffer.concat(parts).toString('utf8')
}

/** Some models put their JSON in a code fence, and null where a slot is not given. */
const jsonIn = (content: string): unknown => {
  const bare = content.trim().replace(/^```(?:json)?\s*([\s\S]*?)\s*```$/, '$1')
  return JSON.parse(bare, (_, value) => (value === null ? undefined : value))
}

type Said = { frame: EventType; on?: Day } & Record<string, unknown>

const daysFrom = (a: Day, b: Day): number => (Date.parse(b) - Date.parse(a)) / 86_400_000

/** True where a guess names only what this farm has, on a day that a message can be about. */
const fits = ({ frame, on, ...slots }: Said, farm: Farm): boolean => {
  const known = (list: string[], name: unknown): boolean => name === undefined || list.includes(name as string)
  const piles = frame === 'check' ? [...farm.piles, 'all'] : farm.piles
  if (!known(piles, slots.pile) || !known(farm.piles, slots.toPile) || !known(farm.crops, slots.crop)) return false
  if (frame === 'load' && !known(farm.boxes, slots.box)) return false
  // a line break in a name or a note would put words of their own into the question
  if (Object.values(slots).some(v => typeof v === 'string' && /\p{Cc}/u.test(v))) return false
  if (on === undefined) return true
  const ahead = daysFrom(farm.today, on)
  return AHEAD.has(frame) ? ahead >= 0 && ahead <= OLDEST_DAYS : ahead <= 0 && ahead >= -OLDEST_DAYS
}

const NAMES = ['pile', 'toPile', 'name', 'box', 'crop'] as const

const actOf = ({ frame, on, ...slots }: Said): Act => ({
  frame,
  mood: 'fact',
  slots,
  ...(on !== undefined && { date: { from: 0, to: 0, past: on, future: on, explicit: true } }),
  used: 1,
  left: 0,
  leftWords: [],
  leftNumbers: 0,
  full: true,
})

/** The acts in an answer's text, or why there are none. */
const actsIn = (content: string, farm: Farm): Act[] | string => {
  let raw: unknown
  try {
    raw = jsonIn(content)
  } catch {
    return 'no JSON'
  }
  const parsed = Guess.safeParse(raw)
  if (!parsed.success) return 'not of the schema'
  const said = parsed.data.events as Said[]
  for (const s of said) for (const k of NAMES) if (typeof s[k] === 'string') s[k] = s[k].trim().toLowerCase()
  if (!said.every(s => fits(s, farm))) return 'names or days that this farm does not have'
  // the events' own checks know more than the schema can say: one amount of several, no empty name
  if (!said.every(({ frame, ...s }) => checkEvent({ ...s, type: frame, on: s.on ?? farm.today }).ok)) return 'no event'
  return said.map(actOf)
}

/**
 * Asks a language model over an OpenAI-compatible API what a message may have meant that the rules could not read. What
 * comes back is a guess, to be asked about: it is never recorded as it stands.
 */
export const makeSecondReader = (o: SecondReaderOptions): SecondReader => {
  const call = o.fetch ?? globalThis.fetch
  const url = completionsOf(o.url)
  const system = o.prompt ?? readFileSync(join(promptsFolder(), 'second-reader.md'), 'utf8')
  const format = { type: 'json_schema', json_schema: { name: 'guess', schema: guessSchema() } }

  const ask = async (text: string, farm: Farm, signal: AbortSignal): Promise<Act[] | string> => {
    const response = await call(url, {
      method: 'POST',
      // whoever answers elsewhere in its stead has not been chosen by the owner
      redirect: 'error',
      headers: { 'Content-Type': 'application/json', ...(o.key !== undefined && { authorization: `Bearer ${o.key}` }) },
      body: JSON.stringify({
        model: o.name ?? 'default',
        temperature: 0,
        messages: [
          { role: 'system', content: system },
          { role: 'user', content: JSON.stringify({ ...farm, message: text }) },
        ],
        response_format: format,
      }),
      signal,
    })
    if (!response.ok) {
      await response.body?.cancel()
      return `HTTP ${response.status}`
    }
    const body = await limited(response)
    if (body === undefined) return `an answer of more than ${MOST_BYTES} bytes`
    const completion = Completion.safeParse(JSON.parse(body))
    if (!completion.success) return 'no completion'
    const { finish_reason, message } = completion.data.choices[0]!
    if (message.refusal || !message.content || finish_reason === 'length' || finish_reason === 'content_filter')
      return 'refused or cut short'
    return actsIn(message.content, farm)
  }

  const guess: SecondReader['guess'] = async (text, farm, signal) => {
    const limit = AbortSignal.timeout(o.timeoutMs ?? TIMEOUT_MS)
    let got: Act[] | string
    try {
      got = await ask(text, farm, signal ? AbortSignal.any([limit, signal]) : limit)
    } catch (error) {
      got = limit.aborted ? 'no answer in time' : error instanceof SyntaxError ? 'no JSON' : 'could not be reached'
    }
    if (typeof got !== 'string') return got.length ? { acts: got } : undefined
    if (!signal?.aborted) o.trouble?.(got)
    return undefined
  }
  return { guess }
}
