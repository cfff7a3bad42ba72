import type { Heard, HeardNote, Wording } from '../ports.ts'
import { isNumberWord } from './near.ts'
import { textOf } from './weigh.ts'

/** Wordings lighter than this are noise. */
const LEAST = 0.005
const MOST = 32
/** A number or a name that a recogniser is less sure of than this is asked about. Common practice, no source. */
const LOW = 0.6

const bare = (word: string): string => word.toLowerCase().replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '')

/**
 * The weight of the only wording of an ear that gives no others: all of it, unless a word that goes into the book (a number, a name)
 * is in doubt. Its mean over all words says little: a mumbled "okay" harms nobody.
 */
const alone = (w: Wording, names: ReadonlySet<string>): number => {
  let least = 1
  for (const { word, sure } of w.words) {
    const b = bare(word)
    if (/\d/.test(b) || isNumberWord(b) || names.has(b)) least = Math.min(least, sure)
  }
  return least >= LOW ? 1 : least
}

/** What an ear made of a note, as it goes with the message; undefined where it heard nothing. `names` are the farm's own. */
export const noteOf = (heard: Heard, names: string[]): (HeardNote & { text: string }) | undefined => {
  const parts = new Set(names.flatMap(n => n.toLowerCase().split(/\s+/)))
  const only = heard.wordings.length === 1
  const wordings = heard.wordings
    .map(w => ({ text: textOf(w.words).trim(), weight: only ? alone(w, parts) : w.weight }))
    .filter(w => w.text !== '' && w.weight >= LEAST)
    .slice(0, MOST)
  return wordings.length ? { text: wordings[0]!.text, wordings } : undefined
}
