import { COMMON } from './common.ts'
import { isDigitWord } from './digitWord.ts'
import { tail } from './fractions.ts'
import type { DateItem, Item, Unit } from './item.ts'
import { LEXICON, type Phrase } from './lexicon.ts'
import { isSlip, type NameHit, type NameIndex, nameAt, slipAt } from './names.ts'
import { numberAt } from './numbers.ts'
import { isUnit, make, NUM, numberNames, phraseAt, quantityAt, sensesOf, sidesAt } from './quantity.ts'
import { mendWord } from './slips.ts'
import { respell } from './sounds.ts'
import type { Token } from './token.ts'
import { meansNumber } from './weak.ts'

export type Lang = 'en' | 'es'

/** The language of a message by the words only one table knows; `fallback` where neither wins. */
export const languageOf = (
  tokens: Token[],
  fallback: Lang,
  isName: (word: string) => boolean = () => false,
  phrase = (i: number) => phraseAt(tokens, i),
): Lang => {
  let en = 0
  let es = 0
  for (let i = 0; i < tokens.length; i++) {
    const t = tokens[i]!
    if (t.kind !== 'word' || isName(t.norm)) continue
    const p = phrase(i)
    if (p) {
      if (p.en.length && !p.es.length) en += p.words.length
      if (p.es.length && !p.en.length) es += p.words.length
      i += p.words.length - 1
    }
    if (t.norm !== t.text && /[ñ¿¡áéíóú]/i.test(t.text)) es++
  }
  return en === es ? fallback : en > es ? 'en' : 'es'
}

/** What was found in a message before frames are laid over it. */
export interface Scan {
  tokens: Token[]
  items: Item[]
  lang: Lang
}

const DIRECTION =
  /^(north|south|east|west|n|s|e|w|ne|nw|se|sw|top|bottom|back|front|left|right|far|near|upper|lower|middle|norte|sur|este|oeste)$/
/** Phrases whose words only look like numbers: "golf ball", "todo al cien", "entre los dos". */
const NO_NUMBER = /^(?:stone|pick|find):|^(?:vague|aside|mat:second plastic)$/
/** Spanish says the part first: "la orilla norte". */
const PLACE_HEAD = new Set(['orilla', 'lado', 'pared', 'esquina', 'punta', 'extremo', 'costado', 'parte', 'rampa'])
const PLACE_TAIL = new Set(['end', 'side', 'corner', 'wall', 'edge', 'part', 'slope', 'face'])

// one list for all items of a kind: what is worked out from a list of senses is kept with it
const DATE = ['date']
const NOTHING: string[] = []
const COMMA = ['comma']
const STOP = ['stop']
const AND = ['and']
const MARK = ['mark']
const MARKS: Record<string, string[]> = {
  '.': STOP,
  ';': STOP,
  '!': STOP,
  '\n': STOP,
  '?': ['ask?'],
  ',': COMMA,
  ':': COMMA,
  '(': COMMA,
  ')': COMMA,
  '&': AND,
  '+': AND,
  '<link>': ['<link>'],
  '<phone>': ['<phone>'],
  '#': ['unit:lb'],
  '%': ['unit:pct'],
}

/** Cuts the tokens into items: names first, then numbers with units, dates, words of the trade, words mended, words unknown. */
export const scan = (
  typed: Token[],
  names: NameIndex,
  dates: (tokens: Token[], taken: (i: number) => boolean) => DateItem[],
  fallback: Lang,
): Scan => {
  const spanish = typed.some(t => t.kind === 'word' && LEXICON.onlySpanish.has(t.norm))
  const isName = (w: string): boolean => names.byFirst.has(w)
  const isLeft = (w: string): boolean =>
    isName(w) || COMMON.has(w) || (w.length === 3 && names.singles.some(e => e.words.length === 1 && isSlip(w, e.words[0]!)))
  const tokens = respell(LEXICON, typed, isName, isLeft, spanish || fallback === 'es')
  const n = tokens.length
  // looked up several times a word
  const phrases: (Phrase | null | undefined)[] = new Array(n)
  const phrase = (i: number): Phrase | undefined => {
    const known = phrases[i]
    if (known !== undefined) return known ?? undefined
    const p = phraseAt(tokens, i)
    phrases[i] = p ?? null
    return p
  }
  const lang = languageOf(tokens, fallback, isName, phrase)
  const hits: (NameHit | undefined)[] = new Array(n)
  const nums: (Item | undefined)[] = new Array(n)
  const taken = new Uint8Array(n)
  const toWord = new Set<number>()
  const claim = (from: number, to: number) => taken.fill(1, from, to)
  for (let i = 0; i < n; ) {
    const hit = nameAt(names, tokens, i)
    const p = hit ? phrase(i) : undefined
    const place =
      hit?.kind === 'pile' &&
      hit.to === i + 1 &&
      p &&
      DIRECTION.test(p.words[0]!) &&
      (PLACE_TAIL.has(tokens[hit.to]?.norm ?? '') || PLACE_HEAD.has(tokens[i - 1]?.norm ?? ''))
    const digits = hit?.kind === 'pile' && hit.to === i + 1 && numberAt(tokens, i) !== undefined && !numberNames(tokens, hit, names)
    if (hit && !place && !digits && !(p && p.words.length > hit.to - hit.from && !p.en.includes('filler'))) {
      hits[i] = hit
      claim(hit.from, hit.to)
      i = hit.to
      continue
    }
    i++
  }
  const found = dates(tokens, i => taken[i] === 1)
  const dateAt: (DateItem | undefined)[] = new Array(n)
  for (const d of found) {
    dateAt[d.from] = d
    claim(d.from, d.to)
  }
  for (let i = 0; i < n; i++) {
    if (taken[i]) continue
    const longer = tokens[i]!.kind === 'word' || /^\d(?:nd|da|do)$/.test(tokens[i]!.norm) ? phrase(i) : undefined
    if (longer && longer.words.length > 1 && [...longer.en, ...longer.es].some(s => NO_NUMBER.test(s))) {
      i += longer.words.length - 1
      continue
    }
    const sides = sidesAt(tokens, i)
    if (sides) {
      const from = sides.count === undefined ? i : i + 1
      if (sides.count !== undefined) nums[i] = make(tokens, i, from, NUM, { num: sides.count })
      nums[from] = make(tokens, from, sides.to, ['sides'], { sides: sides.sides })
      claim(i, sides.to)
      i = sides.to - 1
      continue
    }
    const q = numberAt(tokens, i)
    // "hora y media": one and a half of what is counted
    const unit = q || tokens[i]!.kind !== 'word' ? undefined : isUnit(tokens, i)
    const half = unit && tail(tokens, i + unit.words.length)
    if (unit && half) {
      const to = i + unit.words.length + half.length
      const counted = [...unit.en, ...unit.es].find(s => s.startsWith('unit:'))
      if (counted) {
        nums[i] = make(tokens, i, to, NUM, { num: 1 + half.adds, unit: counted.slice(5) as Unit })
        claim(i, to)
        i = to - 1
        continue
      }
    }
    if (!q || q.ordinal) continue
    if (isDigitWord(tokens, i, k => hits[k]?.kind === 'pile')) {
      toWord.add(i)
      continue
    }
    const said = quantityAt(tokens, q, lang)
    // "two in barn": where, not inches
    const place = said.unit === 'in' && tokens[said.to - 1]!.norm === 'in' && hits[said.to]?.kind === 'pile'
    const item = place ? make(tokens, q.from, q.to, NUM, { num: q.value }) : said
    // an article or a homophone is a number only beside a unit
    if (q.weak && !meansNumber(tokens, i, q, item, { lang, hits, nums })) continue
    nums[i] = item
    claim(item.from, item.to)
    i = item.to - 1
  }
  const items: Item[] = []
  for (let i = 0; i < n; ) {
    const t = tokens[i]!
    const hit = hits[i]
    if (hit) {
      const own = phrase(i)
      const place = hit.kind !== 'box' && own !== undefined && (own.en.includes('where:place') || own.es.includes('where:place'))
      items.push(make(tokens, hit.from, hit.to, place ? [...hit.senses, 'where:place'] : hit.senses))
      i = hit.to
      continue
    }
    const num = nums[i]
    if (num) {
      items.push(num)
      i = num.to
      continue
    }
    const d = dateAt[i]
    if (d) {
      items.push(make(tokens, d.from, d.to, DATE, { date: d }))
      i = d.to
      continue
    }
    const slash = t.norm === '/' ? phrase(i) : undefined
    if (slash) {
      items.push(make(tokens, i, i + slash.words.length, sensesOf(slash, lang)))
      i += slash.words.length
      continue
    }
    // "w/ a loader", "w/o tires"
    if (t.norm === 'w' && tokens[i + 1]?.norm === '/') {
      const without = tokens[i + 2]?.norm === 'o' && tokens[i + 2]!.from === tokens[i + 1]!.to
      items.push(make(tokens, i, i + (without ? 3 : 2), [without ? 'm:no' : 'with']))
      i += without ? 3 : 2
      continue
    }
    if (t.kind === 'mark') {
      // "north... no, barn": a pause, no end
      const pause = t.norm === '.' && (tokens[i + 1]?.norm === '.' || tokens[i - 1]?.norm === '.')
      items.push(make(tokens, i, i + 1, pause ? MARKS[',']! : (MARKS[t.norm] ?? MARK)))
      i++
      continue
    }
    if (toWord.has(i)) {
      const why = phraseAt([{ ...t, norm: t.text === '2' ? 'to' : 'for', kind: 'word' }, ...tokens.slice(i + 1)], 0)
      const words = why ? why.words.length : 1
      items.push(make(tokens, i, i + words, why ? sensesOf(why, lang) : ['filler']))
      i += words
      continue
    }
    const counted = t.kind === 'number' ? phrase(i) : undefined
    if (counted?.en.some(s => s === 'mat:second plastic')) {
      items.push(make(tokens, i, i + counted.words.length, sensesOf(counted, lang)))
      i += counted.words.length
      continue
    }
    if (t.kind === 'number') {
      const ord = /^(\d{1,2})\D/.exec(t.norm)
      if (ord && /^\d{1,2}[a-zº°ª]/.test(t.norm))
        items.push(make(tokens, i, i + 1, [`say:ordinal:${ord[1]}`], { num: Number(ord[1]), ordinal: true }))
      else items.push(make(tokens, i, i + 1, ['num?']))
      i++
      continue
    }
    const near = slipAt(names, tokens, i, true)
    if (near) {
      items.push(make(tokens, near.from, near.to, near.senses, { slip: true }))
      i = near.to
      continue
    }
    let p = phrase(i)
    // a phrase may not run into what was claimed
    if (p && p.words.length > 1) {
      let free = true
      for (let k = i; k < i + p.words.length; k++) if (taken[k] || hits[k]) free = false
      if (!free) p = shorterAt(tokens, i, taken)
    }
    if (p) {
      // a trade word may be the thumb's slip for a pile, but only in a pile's place
      items.push(make(tokens, i, i + p.words.length, sensesOf(p, lang)))
      i += p.words.length
      continue
    }
    const slip = slipAt(names, tokens, i)
    const prev = items.at(-1)
    const inPlace = prev && ['on', 'off', 'v:patch', 'v:check', 'pileword'].some(s => prev.senses.includes(s))
    if (slip && (inPlace || slip.name.length >= 5 || !COMMON.has(t.norm))) {
      items.push(make(tokens, slip.from, slip.to, slip.senses, { slip: true }))
      i = slip.to
      continue
    }
    const mended = COMMON.has(t.norm) ? undefined : mendWord(LEXICON, t.norm)
    const related =
      prev !== undefined &&
      (prev.senses.includes('on') ||
        prev.senses.includes('off') ||
        (prev.senses.length === 1 && prev.senses[0] === 'filler' && items.at(-2)?.senses.includes('on')))
    const r = mended ? phraseAt(tokens, i, mended) : undefined
    // "on hollow" is a pile nobody knows, not a slip for a hole
    const q = r && related && ![...r.en, ...r.es].some(s => /^(mat|crop|unit|where|thing|item|pileword|sky)/.test(s)) ? undefined : r
    if (q) {
      items.push(make(tokens, i, i + q.words.length, sensesOf(q, lang), { slip: true }))
      i += q.words.length
      continue
    }
    items.push(make(tokens, i, i + 1, NOTHING))
    i++
  }
  return { tokens, items, lang }
}

const shorterAt = (tokens: Token[], i: number, taken: Uint8Array): Phrase | undefined => {
  for (const p of LEXICON.byFirst.get(tokens[i]!.norm) ?? []) {
    if (p.words.every((w, k) => tokens[i + k]?.norm === w && (k === 0 || !taken[i + k]))) return p
  }
  return undefined
}
