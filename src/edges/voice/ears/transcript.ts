import { z } from 'zod'
import type { Wording } from '../../../ports.ts'
import { type Timed, UNSAID_SURE, wordingOf, wordsOf } from './words.ts'

const share = z.number().min(0).max(1).nullish().catch(undefined)
const Word = z.object({ word: z.string(), start: z.number(), end: z.number(), probability: share, confidence: share })
const Segment = z.object({
  text: z.string(),
  start: z.number(),
  end: z.number(),
  avg_logprob: z.number().nullish(),
  no_speech_prob: z.number().nullish(),
  compression_ratio: z.number().nullish(),
  words: z.array(Word).nullish().catch(undefined),
})

/**
 * The answer of an OpenAI-compatible transcription endpoint, the fields that matter: `text` always; `words` and `segments` with
 * `verbose_json`, `logprobs` (of each token) with `include[]=logprobs`. Some servers add `probability` to their words, or put the words
 * into the segments. What is there but not of this form is passed over, all but the text. (OpenAI's API reference, from memory.)
 */
const Transcript = z.object({
  text: z.string(),
  duration: z.coerce.number().nullish().catch(undefined),
  words: z.array(Word).nullish().catch(undefined),
  segments: z.array(Segment).nullish().catch(undefined),
  logprobs: z
    .array(z.object({ token: z.string(), logprob: z.number() }))
    .nullish()
    .catch(undefined),
})

/**
 * A segment is taken for silence or babble by the rules of Whisper's own decoder: no speech more than 0.6 likely with a mean log
 * probability below -1, or text that packs more than 2.4 times, which only repetition does. (Whisper's `transcribe` defaults, from memory.)
 */
const isNothing = (s: z.infer<typeof Segment>): boolean =>
  ((s.no_speech_prob ?? 0) > 0.6 && (s.avg_logprob ?? 0) < -1) || (s.compression_ratio ?? 0) > 2.4

const timedOf = (w: z.infer<typeof Word>, segmentSure?: number): Timed => {
  const sure = w.probability ?? w.confidence ?? segmentSure
  return { word: w.word, from: w.start, to: w.end, ...(sure !== undefined && { sure }) }
}

const sureOf = (s: z.infer<typeof Segment>): number | undefined =>
  s.avg_logprob == null ? undefined : Math.min(1, Math.exp(s.avg_logprob))

/** Tokens run on to words: a new word begins where a token begins with a space. A word is as sure as its least sure token. */
const fromTokens = (tokens: { token: string; logprob: number }[]): Timed[] => {
  const out: Timed[] = []
  for (const { token, logprob } of tokens) {
    const sure = Math.min(1, Math.exp(logprob))
    const last = out.at(-1)
    if (last && !/^\s/.test(token)) {
      last.word += token
      last.sure = Math.min(last.sure ?? 1, sure)
    } else out.push({ word: token, from: 0, to: 0, sure })
  }
  return out
}

/** Times made up for words that come without: they share the note evenly. */
const evenly = (words: Timed[], seconds: number): Timed[] =>
  words.map((w, k) => ({ ...w, from: (seconds * k) / words.length, to: (seconds * (k + 1)) / words.length }))

/**
 * What an answer says was heard; no wording where that is nothing. Undefined where it is no transcript.
 *
 * `seconds`: length of the note.
 */
export const readTranscript = (answer: unknown, seconds: number): Wording[] | undefined => {
  const r = Transcript.safeParse(answer)
  if (!r.success) return undefined
  const { text, words, segments, logprobs } = r.data
  const whole = { from: 0, to: seconds }
  if (!segments?.length) {
    const timed = words?.length ? words.map(w => timedOf(w)) : evenly(fromTokens(logprobs ?? []), seconds)
    return wording([wordsOf(text, timed, whole)])
  }
  return wording(
    segments
      .filter(s => !isNothing(s))
      .map(s => {
        const own = s.words ?? words?.filter(w => w.start >= s.start - EDGE && w.start < s.end + EDGE) ?? []
        return wordsOf(
          s.text,
          own.map(w => timedOf(w, sureOf(s))),
          { from: s.start, to: Math.max(s.start, s.end) },
          sureOf(s) ?? UNSAID_SURE,
        )
      }),
  )
}

/** Seconds by which a word may stand outside of its segment. */
const EDGE = 0.05

const wording = (parts: ReturnType<typeof wordsOf>[]): Wording[] => {
  const words = parts.flat()
  return words.length ? [wordingOf(words)] : []
}
