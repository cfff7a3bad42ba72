import { FIELD_WORD } from './frames/field.ts'
import { has, hasCat, type Item } from './item.ts'

const CUT_IS = new Set(['v:take', 'v:break', 'what:tear'])
const GOT_TO = /^g[eo]ts? to$/

/** True behind "from" and its articles. */
const comesFrom = (items: Item[], k: number): boolean => {
  let j = k - 1
  while (j > 0 && has(items[j], 'filler') && !has(items[j], 'off')) j--
  return has(items[j], 'off')
}

/** What the word at `k` means beside what stands around it; undefined where nothing is ruled out. */
const meant = (items: Item[], k: number): string[] | undefined => {
  const i = items[k]!
  // "3rd cut": which one it is, not what was done
  if (has(i, 'cutword') && i.senses.some(s => CUT_IS.has(s)) && (hasCat(items[k - 1], 'say') || items[k - 1]?.ordinal))
    return i.senses.filter(s => !CUT_IS.has(s))
  // "de la milpa de atras": where it grew, after the feed was named
  const grew = hasCat(i, 'crop') && FIELD_WORD.test(i.text.toLowerCase())
  if (grew && comesFrom(items, k) && items.slice(0, k).some(x => hasCat(x, 'crop'))) return i.senses.filter(s => !s.startsWith('crop:'))
  // "wind got to 48": reached, no plan
  if (has(i, 'm:plan') && items[k + 1]?.num !== undefined && GOT_TO.test(i.text.toLowerCase())) return REACHED
  return undefined
}
const REACHED = ['filler']

/** The items with the senses gone that their neighbours rule out. */
export const narrowed = (items: Item[]): Item[] => {
  let out = items
  for (let k = 0; k < items.length; k++) {
    const senses = meant(items, k)
    if (!senses) continue
    if (out === items) out = [...items]
    out[k] = { ...items[k]!, senses, cats: undefined, weight: undefined }
  }
  return out
}
