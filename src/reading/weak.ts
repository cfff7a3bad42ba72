import type { Item } from './item.ts'
import type { Phrase } from './lexicon.ts'
import type { NameHit } from './names.ts'
import type { NumberItem } from './numbers.ts'
import { isMore, phraseAt, sidesAt } from './quantity.ts'
import type { Lang } from './scan.ts'
import type { Token } from './token.ts'

/** What was made out around a word before: names, and numbers to the left. */
interface Around {
  lang: Lang
  hits: (NameHit | undefined)[]
  nums: (Item | undefined)[]
}

const ONE = new Set(['one', 'uno', 'once'])
const SIZED = /^(?:old|new|other|big|bigger|little|small|tiny|long|bad|good|nasty|huge|fresh|decent)$/
const ARTICLE = new Set(['a', 'an', 'un', 'una'])

const sensesOf = (p: Phrase | undefined): string[] => (p ? [...p.en, ...p.es] : [])

/** What stands behind, past "more", is counted one by one: holes, rolls of tape, sheets that were bought. */
const isCounted = (tokens: Token[], i: number, to: number): boolean => {
  let thing = to
  // "one big tear"
  while (tokens[thing] && SIZED.test(tokens[thing]!.norm)) thing++
  while (tokens[thing] && (isMore(tokens, thing) || (thing > to && sidesAt(tokens, thing))))
    thing = isMore(tokens, thing) ? thing + 1 : sidesAt(tokens, thing)!.to
  const got = /^(bought|have|got|counted|used|up|ordered|compre|compramos)$/.test(tokens[i - 1]?.norm ?? '')
  return sensesOf(tokens[thing] && phraseAt(tokens, thing)).some(
    s => s === 'what:hole' || s === 'what:tear' || s === 'item:patch tape' || (s.startsWith('mat:') && got),
  )
}

/** "one" says how many only before what is counted, or in a list: "two corn, one haylage". */
const isOne = (tokens: Token[], i: number, q: NumberItem, bare: boolean, { lang, hits, nums }: Around): boolean => {
  const w = tokens[i]!.norm
  if (w === 'once') return !(bare && lang === 'en')
  if (!bare || tokens.length === 1 || isCounted(tokens, i, q.to)) return true
  const listed = hits[q.to + 1]?.kind === 'pile' && /^(?:and|y|,)$/.test(tokens[i - 1]?.norm ?? '') && nums.some(x => x?.num !== undefined)
  if (listed) return true
  // "y tire uno de puro podrido"
  const bad = tokens.slice(q.to, q.to + 3).some((_, k) => sensesOf(phraseAt(tokens, q.to + k)).includes('thing:spoiled'))
  if (bad && nums.some(x => x?.unit !== undefined)) return true
  if (w !== 'one') return false
  const isCrop = tokens[q.to] !== undefined && phraseAt(tokens, q.to)?.en.some(s => s.startsWith('crop:')) === true
  return hits[q.to]?.kind === 'box' || (isCrop && nums.some(x => x?.num !== undefined && x.unit === undefined))
}

/** "a foot", "un hoyo", "y una blue box": one of them; but "with a green wagon" is what the loads came in. */
const isArticleOne = (tokens: Token[], i: number, q: NumberItem, item: Item, bare: boolean, { hits }: Around): boolean => {
  const box = hits[q.to]
  if (box?.kind === 'box' && !/s$/.test(tokens[box.to - 1]!.norm))
    return i === 0 || /^(?:and|y|,|plus|mas|put|puse|dumped|eche)$/.test(tokens[i - 1]!.norm)
  if (bare) return /^una?$/.test(tokens[i]!.norm) && isCounted(tokens, i, q.to)
  return ['load', 'bucket', 'batch', 'ft', 'in', 'ton'].includes(item.unit ?? '')
}

/** What dictation writes for a number: "for loads", "to inches", "hauled for blue boxes", "make that ate". */
const isHomophone = (tokens: Token[], i: number, q: NumberItem, item: Item, bare: boolean, { hits, nums }: Around): boolean => {
  const w = tokens[i]!.norm
  const next = tokens[q.to]
  const last = tokens[item.to - 1]!.norm
  // "uh for": what is asked how many
  if (tokens.length <= 3 && i === tokens.length - 1 && tokens.every((_, k) => k === i || sensesOf(phraseAt(tokens, k)).includes('filler')))
    return true
  if (item.unit === 'ft' && /^(took|take|shaved|fed|pulled|cut|knocked|back|another|peeled|rolled)$/.test(tokens[i - 1]?.norm ?? ''))
    return true
  if (isCounted(tokens, i, q.to)) return true
  const box = hits[q.to]
  if (box?.kind === 'box' && /s$/.test(tokens[box.to - 1]!.norm)) return true
  // "five loads of corn and to of haylage"
  if (next?.norm === 'of' && tokens[q.to + 1] && nums.some(x => x?.unit === 'load')) {
    const kind = phraseAt(tokens, q.to + 1)
    if (kind?.en.some(s => s.startsWith('crop:') || s.startsWith('say:'))) return true
  }
  // "packed it too hours"; "for hours" is how long, and nobody knows it
  if (item.unit === 'hour' && (w !== 'for' || last === 'ours')) return true
  // "that was ate not six"
  const setRight = w !== 'to' && /^(?:was|its|that|make|been|be|mean|wait|meant)$/.test(tokens[i - 1]?.norm ?? '')
  if (setRight && (next === undefined || next.kind === 'mark' || next.norm === 'not')) return true
  if ((item.unit === 'in' || item.unit === 'ft') && /^(?:inches|feet)$/.test(last)) return true
  if (bare || !['load', 'bucket', 'batch', 'lb', 'ton', 'tractor'].includes(item.unit ?? '')) return false
  // "to load corn", "for loads of work": it wants a plural or an amount behind it
  return w === 'won' || (w === 'ate' && item.unit === 'ton') || /s$/.test(last)
}

/** True where an article, "one" or a homophone at `i` is meant as the number `q`, with what is counted in `item`. */
export const meansNumber = (tokens: Token[], i: number, q: NumberItem, item: Item, around: Around): boolean => {
  const w = tokens[i]!.norm
  const bare = item.unit === undefined && item.to === q.to
  if (ONE.has(w)) return isOne(tokens, i, q, bare, around)
  return ARTICLE.has(w) ? isArticleOne(tokens, i, q, item, bare, around) : isHomophone(tokens, i, q, item, bare, around)
}
