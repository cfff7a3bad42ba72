import { z } from 'zod'
import type { HeardWord } from '../../../../ports.ts'
import { type Timed, wordsOf } from '../words.ts'

const numbers = z.array(z.number()).nullish().catch(undefined)

/**
 * What the package's recognisers give as JSON. The logarithms of the tokens' probabilities have a name for the offline and one for the
 * streaming transducers, and are not there for the other kinds. Beware: the streaming ones come from a distribution that was flattened
 * (temperature 2, as measured with a made-up model), so that a sure word stands lower there.
 */
const Result = z.object({
  text: z.string(),
  tokens: z.array(z.string()).nullish().catch(undefined),
  timestamps: numbers,
  durations: numbers,
  ys_probs: numbers,
  ys_log_probs: numbers,
})

/** Marks that stand for no sound: "<|en|>", "<unk>". */
const MARK = /<\|?[^<>]*\|?>/g
/** The sign for a word's beginning within pieces, U+2581. */
const BEGIN = /^[\u2581\s]/

/** A last word lasts as long as this at most, seconds: nothing says where it ends. */
const LAST_S = 0.6

/** Tokens run on to words; a word is as sure as its least sure token. */
const timedOf = (r: z.infer<typeof Result>, offset: number, end: number): Timed[] => {
  const tokens = r.tokens ?? []
  const times = r.timestamps?.length === tokens.length ? r.timestamps : undefined
  const given = r.ys_log_probs?.length === tokens.length ? r.ys_log_probs : r.ys_probs
  const logs = given?.length === tokens.length ? given : undefined
  const out: (Timed & { begun: number })[] = []
  for (const [k, token] of tokens.entries()) {
    if (token.replace(MARK, '') === '') continue
    const log = logs?.[k]
    const sure = log === undefined || log > 0 ? undefined : Math.exp(log)
    const from = offset + (times?.[k] ?? 0)
    const last = out.at(-1)
    if (last && !BEGIN.test(token)) {
      last.word += token
      last.begun = from
      if (sure !== undefined) last.sure = Math.min(last.sure ?? 1, sure)
    } else {
      if (last) last.to = from
      out.push({ word: token.replace(BEGIN, ''), from, to: from, begun: from, ...(sure !== undefined && { sure }) })
    }
  }
  const last = out.at(-1)
  if (last) last.to = Math.max(last.begun, Math.min(end, last.begun + LAST_S))
  if (times) return out
  const each = out.length ? (end - offset) / out.length : 0
  return out.map((w, k) => ({ ...w, from: offset + each * k, to: offset + each * (k + 1) }))
}

/**
 * The words of one part of a note, which stands from `offset` to `end`, in seconds; undefined where the answer is none.
 *
 * Models with letters of one case only write in capitals; such words are made small.
 */
export const wordsIn = (answer: unknown, offset: number, end: number): HeardWord[] | undefined => {
  const r = Result.safeParse(answer)
  if (!r.success) return undefined
  const text = r.data.text.replace(MARK, ' ').trim()
  const cased = /\p{Ll}/u.test(text) ? text : text.toLowerCase()
  return wordsOf(cased, timedOf(r.data, offset, end), { from: offset, to: end })
}
