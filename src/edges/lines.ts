import { readFile } from 'node:fs/promises'
import { createInterface } from 'node:readline'
import { z } from 'zod'
import type { Core } from '../pipeline.ts'
import type { Due, Incoming, Listener, Result } from '../ports.ts'

const TEXT_MOST = 4096

const Line = z.strictObject({
  at: z.iso.datetime({ offset: true, error: 'must be an ISO 8601 instant with its offset, like 2026-09-14T10:05:00-05:00' }),
  farm: z.string().min(1).max(64).default('home'),
  chat: z.string().min(1).max(128).optional(),
  from: z.string().min(1).max(128),
  role: z.enum(['owner', 'crew', 'viewer', 'stranger']).optional(),
  id: z.union([z.number(), z.string()]).optional(),
  replyTo: z.union([z.number(), z.string()]).optional(),
  edits: z.union([z.number(), z.string()]).optional(),
  text: z.string().max(TEXT_MOST, `longer than ${TEXT_MOST} characters: send it in parts`).optional(),
  voice: z.string().min(1).max(4096).optional(),
  photo: z.boolean().optional(),
})

export type LineOut = ({ line: number } & Partial<Result>) | { line: number; error: string } | Due

/** What is wrong with a line, said in one sentence. */
const why = (error: z.ZodError): string => {
  const i = error.issues[0]!
  const where = i.path.join('.')
  return where ? `${where}: ${i.message}` : i.message
}

/** What was not understood may be offered to a second reader: its question, or undefined where the result stands. */
export type Second = (message: Incoming, result: Result) => Promise<Result | undefined>

/** What a line may have to wait for. */
export interface Helpers {
  second?: Second
  listener?: Listener
}

export interface LineReader {
  /** Everything that one line brings about, in order. */
  take(text: string): LineOut[]
  /** The same, where voice notes are heard and a second reader may be asked. The next line must wait for it. */
  takeWith(text: string, helpers: Helpers): Promise<LineOut[]>
}

/** A line before its message is handled: what became due until then, or what is wrong with it. */
interface Begun {
  line: number
  out: LineOut[]
  message?: Incoming
}

/**
 * The line channel without its pipes: JSON Lines in, JSON Lines out. A line that is not valid gets an error of its own and
 * changes nothing. `run` keeps the ids of messages that carry none apart from those of an earlier run on the same folder.
 */
export const lineReader = (core: Core, run: string): LineReader => {
  let n = 0
  const clocks = new Map<string, string>()
  const dueBetween = (farm: string, until: string): Due[] => {
    const out: Due[] = []
    let at = clocks.get(farm)
    if (at === undefined) return out
    for (let guard = 0; guard < 20_000; guard++) {
      const next = core.next(farm, at)
      if (Date.parse(next) > Date.parse(until)) break
      out.push(...core.tick(farm, 'lines', next))
      at = next
    }
    return out
  }
  const begin = (text: string, voices = false): Begun => {
    const line = ++n
    const wrong = (error: string): Begun => ({ line, out: [{ line, error }] })
    let raw: unknown
    try {
      raw = JSON.parse(text)
    } catch {
      return wrong('not JSON: each line must be one JSON object')
    }
    const parsed = Line.safeParse(raw)
    if (!parsed.success) return wrong(why(parsed.error))
    const l = parsed.data
    if (l.text === undefined && l.voice === undefined) return wrong('text: is missing')
    if (l.text !== undefined && l.voice !== undefined) return wrong('voice: comes instead of text, not beside it')
    if (l.voice !== undefined && !voices) return wrong('voice: no recogniser is set up here, send the words as text')
    const words = l.text ?? ''
    const at = new Date(l.at).toISOString()
    const last = clocks.get(l.farm)
    if (last !== undefined && at < last) return wrong(`at: runs backwards, the farm's clock stands at ${last}; nothing was recorded`)
    const out: LineOut[] = dueBetween(l.farm, at)
    const chat = l.chat ?? l.from
    const message: Incoming = {
      channel: 'lines',
      farm: l.farm,
      chat,
      private: l.chat === undefined || l.chat === l.from,
      from: l.from,
      role: l.role,
      id: String(l.id ?? `${run}-${line}`),
      edit: l.edits === undefined ? '' : String(l.id ?? `${run}-${line}`),
      at,
      text: words,
      ...(l.voice === undefined ? {} : { voice: { ref: l.voice } }),
      ...(l.edits === undefined ? {} : { edits: String(l.edits) }),
      ...(l.replyTo === undefined ? {} : { replyTo: String(l.replyTo) }),
      ...(l.photo ? { photo: true } : {}),
      ...(/\bpilehand\b/i.test(words) ? { addressed: true } : {}),
    }
    return { line, out, message }
  }
  const end = ({ line, out }: Begun, { farm, at }: Incoming, result: Result): LineOut[] => {
    clocks.set(farm, at)
    return [...out, { line, ...slim(result) }, ...core.tick(farm, 'lines', at)]
  }
  return {
    take: text => {
      const begun = begin(text)
      return begun.message ? end(begun, begun.message, core.handle(begun.message)) : begun.out
    },
    takeWith: async (text, { second, listener }) => {
      const begun = begin(text, listener !== undefined)
      const { message } = begun
      if (!message) return begun.out
      const file = message.voice?.ref
      const result = file !== undefined && listener ? await listener.hear(message, () => readFile(file)) : core.handle(message)
      return end(begun, message, (await second?.(message, result)) ?? result)
    },
  }
}

/** Empty lists may be left out. */
const slim = (r: Result): Partial<Result> => ({
  outcome: r.outcome,
  ...(r.recorded.length ? { recorded: r.recorded } : {}),
  ...(r.withdrawn.length ? { withdrawn: r.withdrawn } : {}),
  ...(r.asks.length ? { asks: r.asks } : {}),
  ...(r.answers.length ? { answers: r.answers } : {}),
  ...(r.replies.length ? { replies: r.replies } : {}),
})

/** Reads standard input to its end, writing what each line brings about as it comes. */
export const runLines = async (
  core: Core,
  input: NodeJS.ReadableStream,
  write: (line: string) => void,
  run: string,
  helpers: Helpers = {},
): Promise<void> => {
  const reader = lineReader(core, run)
  for await (const text of createInterface({ input, crlfDelay: Number.POSITIVE_INFINITY })) {
    if (!text.trim()) continue
    for (const o of await reader.takeWith(text, helpers)) write(JSON.stringify(o))
  }
}
