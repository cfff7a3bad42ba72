import { ENGLISH, LONG } from './sounds.en.ts'
import { SPANISH } from './sounds.es.ts'

/** Words of the trade that the CMU dictionary lacks (own transcriptions). */
export const TRADE_SOUNDS: Record<string, string[]> = {
  haylage: ['HH EY L IH JH'],
  silage: ['S AY L IH JH'],
  earlage: ['IH R L IH JH'],
  baleage: ['B EY L IH JH'],
  balage: ['B EY L IH JH'],
  snaplage: ['S N AE P L IH JH'],
  oatlage: ['OW T L IH JH'],
  ryelage: ['R AY L IH JH'],
  wheatlage: ['W IY T L IH JH'],
  coon: ['K UW N'],
  coons: ['K UW N Z'],
  triticale: ['T R IH T AH K EY L IY'],
  sudangrass: ['S UW D AE N G R AE S'],
  tedder: ['T EH D ER'],
  theres: ['DH EH R Z'],
  hows: ['HH AW Z'],
  thats: ['DH AE T S'],
  whats: ['W AH T S'],
}

const spell = (word: string, rules: [string, string][]): string[] => {
  const text = `#${word}#`
  const out: string[] = []
  for (let k = 1; k < text.length - 1; ) {
    let best: [string, string] | undefined
    let step = 0
    for (const r of rules) {
      const at = r[0].startsWith('#') ? k - 1 : k
      if (!text.startsWith(r[0], at)) continue
      const uses = r[0].replaceAll('#', '').length
      if (!best || r[0].length > best[0].length) {
        best = r
        step = uses
      }
    }
    if (best?.[1]) out.push(...best[1].split(' '))
    k += Math.max(1, step)
  }
  return out
}

/** Consonant, vowel, consonant, `e`: the vowel is long and the `e` silent. */
const withLong = (word: string): string[] | undefined => {
  const m = /^(.*?)([aeiou])([^aeiouwxy])e(s?)$/.exec(word)
  if (!m) return undefined
  return [
    ...spell(m[1]!, ENGLISH),
    LONG[m[2]!]!,
    ...spell(m[3] === 'c' ? 's' : m[3] === 'g' ? 'j' : m[3]!, ENGLISH),
    ...(m[4] ? ['Z'] : []),
  ]
}

const looksSpanish = (word: string): boolean =>
  /[aoi]s?$|ll|rr|[ae]z$|^(el|la|los|las|san|santa)$|[bcdfglmnprst][aeiou][bcdfglmnprst][ao]$/.test(word)

/**
 * How a word that stands in no dictionary may be said: one to three ways, best first, in CMU phones. Names are guesses; the crew's own
 * way will often be among them.
 */
export const soundsOf = (word: string): string[] => {
  const own = TRADE_SOUNDS[word]
  if (own) return own
  const letters = word.replace(/[^a-z]/g, '')
  if (!letters) return []
  const english = (withLong(letters) ?? spell(letters, ENGLISH)).join(' ')
  const spanish = spell(letters, SPANISH).join(' ')
  return [...new Set(looksSpanish(letters) ? [spanish, english] : [english, spanish])].filter(Boolean)
}
