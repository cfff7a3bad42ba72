/** A general model of a language: how likely words are, and which follow which. */
export interface General {
  words: Map<string, number>
  /** Of each word, and of `<s>`: its usual followers with their probability. */
  pairs: Map<string, Map<string, number>>
}

export const NO_GENERAL: General = { words: new Map(), pairs: new Map() }

/**
 * Reads a table of lines `word logprob (follower logprob)*`, logarithms to base 10; lines that begin with `#` are remarks.
 * `most` keeps the first so many words only (they stand in falling order).
 */
export const readGeneral = (text: string, most = Number.POSITIVE_INFINITY): General => {
  const words = new Map<string, number>()
  const pairs = new Map<string, Map<string, number>>()
  for (const line of text.split('\n')) {
    if (!line || line.startsWith('#')) continue
    const [word = '', p = '', ...rest] = line.split(' ')
    if (word !== '<s>') {
      if (words.size >= most) break
      words.set(word, 10 ** Number(p))
    }
    const followers = new Map<string, number>()
    for (let k = 0; k + 1 < rest.length; k += 2) followers.set(rest[k]!, 10 ** Number(rest[k + 1]))
    if (followers.size) pairs.set(word, followers)
  }
  for (const f of pairs.values()) for (const w of f.keys()) if (w !== '</s>' && !words.has(w)) f.delete(w)
  return { words, pairs }
}
