import { soundsOf, TRADE_SOUNDS } from './pronounce.ts'

/** Pronunciations by word, as a CMU dictionary has them; further ones of a word stand there as `word(2)`. */
export type Pronunciations = Map<string, string[]>

/** The lines of a large dictionary that are about the words wanted. */
export const pickFrom = (dictionary: string, wanted: ReadonlySet<string>): Pronunciations => {
  const out: Pronunciations = new Map()
  let at = 0
  while (at < dictionary.length) {
    let end = dictionary.indexOf('\n', at)
    if (end < 0) end = dictionary.length
    const gap = dictionary.indexOf(' ', at)
    if (gap > at && gap < end) {
      const head = dictionary.slice(at, gap)
      const word = head.endsWith(')') ? head.slice(0, head.indexOf('(')) : head
      if (wanted.has(word)) {
        const list = out.get(word)
        const sounds = dictionary.slice(gap + 1, end).trim()
        if (list) list.push(sounds)
        else out.set(word, [sounds])
      }
    }
    at = end + 1
  }
  return out
}

/** The dictionary of a model as a file: from the large one where it has a word, by rule where it has not. */
export const dictionaryOf = (words: Iterable<string>, known: Pronunciations): { text: string; guessed: string[] } => {
  const lines: string[] = []
  const guessed: string[] = []
  for (const w of [...new Set(words)].sort()) {
    const listed = known.get(w)
    const ways = listed ? [...new Set([...listed, ...(TRADE_SOUNDS[w] ?? [])])] : soundsOf(w)
    if (!listed && !TRADE_SOUNDS[w]) guessed.push(w)
    for (const [k, s] of ways.entries()) lines.push(`${k ? `${w}(${k + 1})` : w} ${s}`)
  }
  return { text: `${lines.join('\n')}\n`, guessed }
}
