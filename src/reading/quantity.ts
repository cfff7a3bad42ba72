import { tail } from './fractions.ts'
import { altered, type Item, type Unit } from './item.ts'
import { LEXICON, type Phrase } from './lexicon.ts'
import type { NameHit, NameIndex } from './names.ts'
import { type NumberItem, numberAt } from './numbers.ts'
import { small } from './numberWords.ts'
import type { Lang } from './scan.ts'
import { mendWord } from './slips.ts'
import type { Token } from './token.ts'

export const phraseAt = (tokens: Token[], i: number, word = tokens[i]!.norm): Phrase | undefined => {
  const start = LEXICON.starts.get(word)
  if (!start) return undefined
  const longer = start.longer.size && i + 1 < tokens.length ? start.longer.get(tokens[i + 1]!.norm) : undefined
  if (longer)
    for (const p of longer) {
      let k = 2
      while (k < p.words.length && tokens[i + k]?.norm === p.words[k]) k++
      if (k >= p.words.length) return p
    }
  return start.alone
}

export const sensesOf = (p: Phrase, lang: Lang): string[] => {
  const own = lang === 'en' ? p.en : p.es
  return own.length ? own : lang === 'en' ? p.es : p.en
}

export const isUnit = (tokens: Token[], i: number): Phrase | undefined => {
  if (!tokens[i]) return undefined
  // "seven in the morning", "put 5 in the barn": a place or a time, no inches
  if (tokens[i]!.norm === 'in' && /^(the|my|our|his|her|there|here)$/.test(tokens[i + 1]?.norm ?? '')) return undefined
  let p = phraseAt(tokens, i)
  if (!p && tokens[i]!.kind === 'word') {
    const mended = mendWord(LEXICON, tokens[i]!.norm)
    if (mended) p = phraseAt(tokens, i, mended)
  }
  return p && [...p.en, ...p.es].some(s => s.startsWith('unit:') || s === 'what:hole' || s === 'what:tear' || s === 'item:patch tape')
    ? p
    : undefined
}

export const isMore = (tokens: Token[], i: number): boolean => {
  const p = phraseAt(tokens, i)
  return p !== undefined && p.words.length === 1 && p.en.includes('more')
}

/** What a bare number can mean. One list for all of them: what is worked out from a list is kept with it. */
export const NUM: string[] = ['num']

/** What an item may have beyond its words. */
type More = Partial<Pick<Item, 'num' | 'unit' | 'sides' | 'ordinal' | 'date' | 'slip'>>

const NO_MORE: More = {}

/** An item over some tokens. All have the same fields in the same order: the frames look at them so often that it tells. */
export const make = (tokens: Token[], from: number, to: number, senses: string[], more: More = NO_MORE): Item => ({
  from,
  to,
  senses,
  text:
    to === from + 1
      ? tokens[from]!.text
      : tokens
          .slice(from, to)
          .map(t => t.text)
          .join(' '),
  tokens: tokens.slice(from, to),
  num: more.num,
  unit: more.unit,
  sides: more.sides,
  ordinal: more.ordinal,
  date: more.date,
  slip: more.slip,
  ghost: undefined,
  meaning: undefined,
  weight: undefined,
})

export const BY = new Set(['x', 'by', 'por', '*', 'buy', 'bye'])

/** No sheet and no pile is wider, ft. Common practice, no source. */
const WIDEST_FT = 200

/** "three forty by one hundred": three of forty feet, as no sheet is 340 wide; undefined where the number is one. */
const countedSide = (tokens: Token[], n: NumberItem): { count: number; side: number } | undefined => {
  const first = tokens[n.from]!
  const count = first.kind === 'word' && n.to - n.from === 2 && n.value > WIDEST_FT ? small(first.norm) : undefined
  const side = count === undefined ? 0 : n.value - 100 * count
  return count !== undefined && count < 10 && side >= 10 && side < 100 ? { count, side } : undefined
}

const OF_WALL = /^(?:walls?|sides|high|tall|deep|alto|altura)$/
/** No pile and no wall is higher, ft. Common practice, no source. */
const HIGHEST_FT = 40

/** "by a hundred and nine feet high", "by ninety three foot walls": the last word is a height, as nothing is so high; the side's end and length. */
const heightBehind = (tokens: Token[], n: NumberItem): { to: number; side: number } | undefined => {
  const last = n.to - n.from > 1 && n.value > HIGHEST_FT ? small(tokens[n.to - 1]!.norm) : undefined
  if (!last || n.value - last < 10) return undefined
  return { to: /^(?:and|y)$/.test(tokens[n.to - 2]!.norm) ? n.to - 2 : n.to - 1, side: n.value - last }
}

/** A thing of the shed that is counted begins there: rolls of tape, tires, bags. */
const countsThing = (tokens: Token[], i: number): boolean => {
  const p = phraseAt(tokens, i)
  return p !== undefined && [...p.en, ...p.es].some(s => s.startsWith('item:') || s === 'mat:tires' || s === 'mat:gravel bags')
}

/** "40 by 120", "50x150", "50 ft by 150 ft", "40 por 120 por 10"; `count` where the first word counts such sheets. */
export const sidesAt = (tokens: Token[], i: number): { to: number; sides: number[]; count?: number } | undefined => {
  const sides: number[] = []
  let count: number | undefined
  let k = i
  for (;;) {
    const n = numberAt(tokens, k)
    if (!n || n.ordinal || (n.weak && !n.value)) break
    if (n.weak && sides.length === 0 && n.to === k + 1) break
    if (n.range) break
    const counted = sides.length ? undefined : countedSide(tokens, n)
    count ??= counted?.count
    sides.push(counted?.side ?? n.value)
    // nothing here has a fourth side
    if (sides.length > 3) return undefined
    k = n.to
    let j = k
    const unit = tokens[j]?.norm
    if (unit === 'ft' || unit === 'feet' || unit === 'foot' || unit === 'pies' || unit === 'pie') j++
    // "34 por ciento" is a share
    const share =
      tokens[j]?.norm === 'por' && /^(?:ciento|siento)$/.test(tokens[j + 1]?.norm ?? '') && numberAt(tokens, j + 1)?.to === j + 2
    if (tokens[j] && !share && BY.has(tokens[j]!.norm) && tokens[j + 1] && numberAt(tokens, j + 1)) {
      k = j + 1
      continue
    }
    const of = tokens[j]?.norm === 'de' ? tokens[j + 1] : tokens[j]
    const high = sides.length > 1 && j > k && OF_WALL.test(of?.norm ?? '') ? heightBehind(tokens, n) : undefined
    if (high) {
      sides[sides.length - 1] = high.side
      return { to: high.to, sides }
    }
    // "fifty by a hundred and three rolls of tape": the last word counts what stands behind it
    const rolls =
      sides.length > 1 && j === k && /^(?:and|y)$/.test(tokens[n.to - 2]?.norm ?? '') && n.value >= 100
        ? small(tokens[n.to - 1]!.norm)
        : undefined
    if (rolls && tokens[k] && countsThing(tokens, k)) {
      sides[sides.length - 1] = n.value - rolls
      return { to: n.to - 2, sides }
    }
    if (sides.length > 1) k = j
    break
  }
  return sides.length >= 2 && sides.length <= 3 ? { to: k, sides, ...(count !== undefined && { count }) } : undefined
}

/** Words between a number and its unit. */
const PASSED_OVER = new Set(
  'of more mas de d big full good nice heavy small little other buenos extra additional heaping short square solid'.split(' '),
)

const UNIT_OF_MARK: Record<string, Unit> = { '#': 'lb', '%': 'pct' }

/** A number with what stands behind it: 7 loads, 12 ft 6, 34 %, 9800#. */
export const quantityAt = (tokens: Token[], n: NumberItem, lang: Lang): Item => {
  const item = bareQuantityAt(tokens, n, lang)
  return n.range && !item.senses.includes('range') ? altered(item, { senses: [...item.senses, 'range'] }) : item
}

/** Units that are told but not kept: what they are in a unit that is, and how much of it. */
const TOLD_IN: Record<string, [Unit, number]> = { yd: ['ft', 3], cwt: ['lb', 100], mm: ['in', 1 / 25.4], cm: ['in', 1 / 2.54] }

/** What a number before some phrase counts, and what else the two may mean. */
interface Counted {
  unit?: Unit
  senses: string[]
}
const COUNTED: Record<Lang, Map<Phrase, Counted>> = { en: new Map(), es: new Map() }

const countedBy = (p: Phrase, lang: Lang): Counted => {
  let counted = COUNTED[lang].get(p)
  if (!counted) {
    const all = [...sensesOf(p, lang), ...p.en, ...p.es]
    const unit = all.find(s => s.startsWith('unit:'))?.slice(5) as Unit | undefined
    // a word that is more than its unit keeps its other senses: "2 tractors", "5 boxes"
    const others = all.filter(s => !s.startsWith('unit:') && s !== 'filler')
    counted = { unit, senses: others.length ? [...NUM, ...others] : NUM }
    COUNTED[lang].set(p, counted)
  }
  return counted
}

export const bareQuantityAt = (tokens: Token[], n: NumberItem, lang: Lang): Item => {
  const item = saidQuantityAt(tokens, n, lang)
  const told = item.unit === undefined ? undefined : TOLD_IN[item.unit]
  return told ? altered(item, { num: Math.round(item.num! * told[1] * 1e6) / 1e6, unit: told[0] }) : item
}

const saidQuantityAt = (tokens: Token[], n: NumberItem, lang: Lang): Item => {
  if (n.feet) {
    return make(tokens, n.from, n.to, NUM, { num: n.value, unit: 'ft' })
  }
  if (n.inches) return make(tokens, n.from, n.to, NUM, { num: n.value, unit: 'in' })
  const mark = tokens[n.to]
  if (mark?.kind === 'mark' && UNIT_OF_MARK[mark.norm]) {
    // "34 % moisture": the share goes with the word behind it
    return make(tokens, n.from, n.to + 1, NUM, { num: n.value, unit: UNIT_OF_MARK[mark.norm] })
  }
  let at = n.to
  // "two of loads", "7 more loads", "12 mil libras", "5 big loads", "3 full buckets"
  while (
    tokens[at] &&
    (PASSED_OVER.has(tokens[at]!.norm) || (/^an?$/.test(tokens[at]!.norm) && tokens[at - 1]!.norm === 'of') || isMore(tokens, at)) &&
    at - n.to < 2 &&
    !isUnit(tokens, at)
  )
    at++
  // "8 more in, corn": into the pile, no inches
  const into = at > n.to && tokens[at]?.norm === 'in' && isMore(tokens, at - 1)
  const p = into ? undefined : isUnit(tokens, at)
  if (p) {
    const { unit, senses } = countedBy(p, lang)
    if (unit === 'ft') {
      // "12 ft 6", "12 foot 6 in"
      const to = at + p.words.length
      let j = to
      if (tokens[j]?.norm === 'and' || tokens[j]?.norm === 'y' || tokens[j]?.norm === 'con') j++
      const inch = tokens[j] ? numberAt(tokens, j) : undefined
      if (inch && !inch.weak && inch.value < 12 && !inch.range) {
        const next = isUnit(tokens, inch.to)
        const isInch = next && [...next.en, ...next.es].includes('unit:in')
        const ends = j === to && (!tokens[inch.to] || tokens[inch.to]!.kind === 'mark')
        const dim = tokens[inch.to] && phraseAt(tokens, inch.to)
        const hasDim = j === to && dim && [...dim.en, ...dim.es].some(s => s.startsWith('dim:')) && !dim.en.includes('unit:in')
        if (isInch || ends || hasDim)
          return make(tokens, n.from, isInch ? inch.to + next!.words.length : inch.to, NUM, {
            num: n.value + inch.value / 12,
            unit: 'ft',
          })
      }
      const h = tail(tokens, to)
      if (h) return make(tokens, n.from, to + h.length, NUM, { num: n.value + h.adds, unit })
      return make(tokens, n.from, to, NUM, { num: n.value, unit })
    }
    if (unit) {
      const to = at + p.words.length
      const h = tail(tokens, to)
      if (h) return make(tokens, n.from, to + h.length, NUM, { num: n.value + h.adds, unit })
      return make(tokens, n.from, to, senses, { num: n.value, unit })
    }
  }
  return make(tokens, n.from, n.to, NUM, { num: n.value })
}

export const LEADS =
  /^(on|onto|in|into|to|at|off|from|of|the|pile|pad|el|al|del|en|de|la|called|patched|checked|chkd|walked|opened|covered|and|y|how|hows|is|by|over)$/

/** A pile named by a number is meant where a name belongs, and nothing counted follows: "17 loads on 17". */
export const numberNames = (tokens: Token[], hit: NameHit, names: NameIndex): boolean => {
  const before = tokens[hit.from - 1]
  const after = tokens[hit.to]
  const counted =
    after &&
    (isUnit(tokens, hit.to) ||
      BY.has(after.norm) ||
      numberAt(tokens, hit.to) !== undefined ||
      /^(more|percent|%|dm|de|of|wide|long|high|hundred|thousand|mil)$/.test(after.norm) ||
      names.byFirst.has(after.norm))
  return !counted && (before === undefined || before.kind === 'mark' || LEADS.test(before.norm) || after === undefined)
}
