import type { Ear, FarmWords, Heard, Lang, Wording } from '../../../ports.ts'
import { EarFault } from '../fault.ts'
import { RATE, wavOf } from '../sound.ts'
import { readTranscript } from './transcript.ts'

export interface EndpointOptions {
  /** Base of an OpenAI-compatible API (`https://host/v1`), with or without `/audio/transcriptions`. */
  url: string
  /** Name of the model; servers with a single model take any. */
  model?: string
  key?: string
  /** The languages that the model hears; left out, both. */
  langs?: Lang[]
  /** For the whole exchange, ms. */
  timeoutMs?: number
  fetch?: typeof globalThis.fetch
}

/** A note of a minute is two megabytes to send, and a small computer hears it at a third of its length. Common practice, no source. */
const TIMEOUT_MS = 60_000
/** A minute of speech with every word timed takes some 30 kB. */
const MOST_BYTES = 1024 * 1024
/** Recognisers keep some 220 tokens of a prompt; names run to two or three letters a token. From memory. */
const MOST_PROMPT = 500

/** Where transcriptions are asked for, whether or not the address given ends there. */
export const transcriptionsOf = (url: string): string => {
  const at = new URL(url)
  const path = at.pathname.replace(/\/+$/, '')
  at.pathname = path.endsWith('/audio/transcriptions') ? path : `${path}/audio/transcriptions`
  return at.href
}

/** The farm's own names in a row: the recogniser takes them for what was said before, and spells them so. Whole names only. */
export const promptOf = (farm: FarmWords): string => {
  const out: string[] = []
  let size = 0
  for (const name of new Set([...farm.piles, ...farm.boxes, ...farm.people, ...farm.words].map(n => n.trim().replace(/\s+/g, ' ')))) {
    if (!name || size + name.length + 2 > MOST_PROMPT) continue
    out.push(name)
    size += name.length + 2
  }
  return out.length ? `${out.join(', ')}.` : ''
}

/** What is asked for, fullest first. A server that refuses one form is asked by the next: some models give no times, some servers know no options. */
const FORMS: [name: string, value: string][][] = [
  [
    ['response_format', 'verbose_json'],
    ['timestamp_granularities[]', 'word'],
    ['timestamp_granularities[]', 'segment'],
  ],
  [
    ['response_format', 'json'],
    ['include[]', 'logprobs'],
  ],
  [['response_format', 'json']],
]
const REFUSES_FORM = new Set([400, 415, 422])

/** A body's text, up to a size. */
const textOf = async (response: Response): Promise<string> => {
  const parts: Uint8Array[] = []
  let size = 0
  // leaving the loop early also cancels the rest of the body
  for await (const part of (response.body ?? []) as AsyncIterable<Uint8Array>) {
    size += part.length
    if (size > MOST_BYTES) throw new EarFault('ear-answer', { why: `> ${MOST_BYTES} B` })
    parts.push(part)
  }
  return Buffer.concat(parts).toString('utf8')
}

const faultOf = (status: number): EarFault => {
  const why = `HTTP ${status}`
  if (status === 401 || status === 403) return new EarFault('ear-key', { why })
  if (status === 413) return new EarFault('voice-too-large')
  if (status === 429) return new EarFault('ear-busy', { why })
  return new EarFault('ear-refused', { why })
}

/** The system's own word for a failed connection ("ECONNREFUSED"), without the address that its sentence carries. */
const netWord = (error: unknown): string => {
  const cause = error instanceof Error ? (error.cause ?? error) : error
  const code = (cause as { code?: unknown } | undefined)?.code
  return typeof code === 'string' ? code : error instanceof Error ? error.name : '?'
}

/**
 * A recogniser behind an OpenAI-compatible API, on the farm's own network or elsewhere. Sends the sound and the farm's names (piles,
 * boxes, people) to the address given, and nothing else. The words keep the punctuation of the answer.
 *
 * `hear` rejects with an EarFault: `ear-key`, `ear-busy`, `ear-refused` (each `why`: "HTTP 500"), `voice-too-large`, `ear-slow` (`seconds`),
 * `ear-unreachable` (`why`: the system's code), `ear-answer` (no transcript, or one too large); with the signal's reason where `signal` ended it.
 */
export const endpointEar = (o: EndpointOptions): Ear => {
  const call = o.fetch ?? globalThis.fetch
  const url = transcriptionsOf(o.url)
  const timeoutMs = o.timeoutMs ?? TIMEOUT_MS
  const closed = new AbortController()
  let form = 0

  const send = (wav: Blob, prompt: string, lang: Lang, fields: [string, string][], signal: AbortSignal): Promise<Response> => {
    const body = new FormData()
    body.set('file', wav, 'note.wav')
    body.set('model', o.model ?? 'default')
    body.set('language', lang)
    body.set('temperature', '0')
    if (prompt) body.set('prompt', prompt)
    for (const [name, value] of fields) body.append(name, value)
    return call(url, {
      method: 'POST',
      // whoever answers elsewhere in its stead has not been chosen by the owner
      redirect: 'error',
      ...(o.key !== undefined && { headers: { authorization: `Bearer ${o.key}` } }),
      body,
      signal,
    })
  }

  const ask = async (sound: Float32Array, farm: FarmWords, lang: Lang, signal: AbortSignal): Promise<Wording[]> => {
    const wav = new Blob([new Uint8Array(wavOf(sound))], { type: 'audio/wav' })
    let tried = form
    let response = await send(wav, promptOf(farm), lang, FORMS[tried]!, signal)
    while (REFUSES_FORM.has(response.status) && tried + 1 < FORMS.length) {
      await response.body?.cancel()
      response = await send(wav, promptOf(farm), lang, FORMS[++tried]!, signal)
    }
    if (!response.ok) {
      await response.body?.cancel()
      throw faultOf(response.status)
    }
    const text = await textOf(response)
    let answer: unknown
    try {
      answer = JSON.parse(text)
    } catch {
      throw new EarFault('ear-answer', { why: 'JSON' })
    }
    const wordings = readTranscript(answer, sound.length / RATE)
    if (!wordings) throw new EarFault('ear-answer', { why: 'text' })
    form = tried
    return wordings
  }

  const hear = async (sound: Float32Array, farm: FarmWords, lang: Lang, signal?: AbortSignal): Promise<Heard> => {
    const limit = AbortSignal.timeout(timeoutMs)
    const ended = signal ? AbortSignal.any([signal, closed.signal]) : closed.signal
    ended.throwIfAborted()
    try {
      return { wordings: await ask(sound, farm, lang, AbortSignal.any([limit, ended])), lang }
    } catch (error) {
      if (ended.aborted) throw ended.reason
      if (limit.aborted) throw new EarFault('ear-slow', { seconds: Math.round(timeoutMs / 1000) })
      throw error instanceof EarFault ? error : new EarFault('ear-unreachable', { why: netWord(error) })
    }
  }
  return { name: 'endpoint', langs: o.langs ?? ['en', 'es'], hear, close: () => closed.abort() }
}
