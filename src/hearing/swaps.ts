import { distance } from 'fastest-levenshtein'
import { nearNumbers } from './near.ts'

const startsWith = (words: string[], at: number, name: string[]): boolean => name.every((w, k) => words[at + k] === w)

/** Names of which at most half the letters differ may be heard for one another. */
const alike = (a: string[], b: string[]): boolean => {
  const [x, y] = [a.join(''), b.join('')]
  return distance(x, y) <= Math.max(x.length, y.length) / 2
}

/**
 * The wordings one slip of the ear away from `words` that would change the book: each number word for those near to it, each of
 * the farm's names for every other that is like it. `names` are spoken words, lower case.
 */
export const swapsOf = (words: string[], names: string[][], most = 16): string[][] => {
  const out: string[][] = []
  for (let k = 0; k < words.length; k++) {
    for (const n of nearNumbers(words[k]!)) out.push(words.toSpliced(k, 1, n))
    const here = names.find(n => startsWith(words, k, n))
    if (here) for (const other of names) if (other !== here && alike(here, other)) out.push(words.toSpliced(k, here.length, ...other))
  }
  return out.slice(0, most)
}
