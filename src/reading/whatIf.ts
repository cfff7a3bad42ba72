import { inLb } from './frames/slots.ts'
import { has, hasCat, type Item, valueOf } from './item.ts'

/** What a "what if" changes: numbers that take the place of what the book says, or come on top of it. */
export interface WhatIfSaid {
  head?: number
  /** More head, or fewer. */
  headMore?: number
  lbPerDay?: number
  lbPerHead?: number
  /** More pounds a head than now, or fewer; and so for a day. */
  perHeadMore?: number
  perDayMore?: number
  /** So much more fed than now, or less, percent. */
  pctMore?: number
  /** The harvest comes so many days later, or sooner. */
  delayDays?: number
  /** Feed bought, or sold. */
  addLb?: number
  /** Piles that are fed at once. */
  together?: string[]
}

const LEAD = '^(?:(?:and|so|ok|okay|hey|uh|um|well|now|but|y|oye|bueno|entonces|pues|pero|,) )*'
const SUPPOSING = new RegExp(
  `${LEAD}(?:what if|what happens if|what about if|how about if|supposing|suppose (?!to )|lets say|let us say|how about \\d|` +
    'say (?:we|i) (?:go|milk|feed|fed|sell|buy|add|cull|have|drop|cut|ship|keep|get)|say (?:the )?(?:harvest|first|second|third|hay|corn) .*(?:late|early|later|earlier|slips|behind)|' +
    'y si|y que si|que pasa si|que pasaria si|que tal si|que si|supon(?:gamos|iendo|gan|te)? que|supon(?:gamos|iendo)|digamos que|imaginate que|imagina que) ?',
)
const IF = new RegExp(`${LEAD}(?:if|si) (?!,)`)
const REACHES =
  /\b(?:(?:do|will|would|can|could) we (?:still )?(?:make it|have enough|be short|run short|run out|get to|reach)|make it|is there enough|will it (?:last|reach)|are we (?:ok|short)|how (?:long|far)|(?:nos )?alcanza\w*|llegamos|llegaremos|la hacemos|ajustamos|cuanto (?:dura|nos dura)|nos falta)\b/

/** True where a sentence (folded, single spaces) supposes something, so that it asks and never tells. */
export const supposes = (text: string): boolean => SUPPOSING.test(`${text} `) || (IF.test(`${text} `) && REACHES.test(text))

const PLAIN = /^(?:y )?esta (?:bien )?(?:pisad|compactad|apretad|apisonad)|\bque tan (?:grande|anch|alt|larg)/
/** Asked without a mark: nobody tells the assistant that a pile is packed well, or how big it is to be. */
export const asksAnyway = (text: string): boolean => supposes(text) || PLAIN.test(text)

const MAY =
  /\b(?:(?:can|could|may|should) (?:we|i) (?:still )?(?:sell|spare|ship|carry|handle|winter|take on)|(?:how much|how many tons?)\b.*\b(?:sell|spare|(?:need|have) to buy)|(?:podemos|puedo|podriamos|podria) (?:vender|mantener|con)|cuant[oa]s?\b.*\b(?:vender|comprar))\b/
/** "can we spare 100 ton", "how much can we sell", "could we carry 10 more cows". */
export const mayWe = (text: string): boolean => MAY.test(text)

const WEEKS = /^(?:weeks?|wks?|semanas?)$/
const DAYS = /^(?:days?|dias?)$/
const MONTHS = /^(?:months?|mes|meses)$/
const LATE = /\b(?:late|later|behind|delayed|slips?|slipped|pushed back|tarde|atras\w*|retras\w*|demor\w*|despues)\b/
const EARLY = /\b(?:early|earlier|sooner|ahead|antes|adelant\w*|temprano)\b/
const LESS =
  /\b(?:sell|sold|selling|spare|lose|lost|cull|culled|fewer|less|drop|dropped|cut|cutting|ship|shipped|vend\w*|menos|perd\w*|desech\w*|quit\w*|baj\w*)\b/
const MORE =
  /\b(?:buy|bought|buying|more|extra|additional|another|add|added|adding|get|compr\w*|mas|otr[ao]s?|agreg\w*|traemos|met\w*|sub\w*)\b/
/** What is said behind a number makes it a change; verbs stand before it. */
const LESS_AFTER = /^(?:fewer|less|menos)$/
const MORE_AFTER = /^(?:more|extra|mas)$/
const TO = /^(?:to|at|a)$/
const TRADE = /\b(?:buy|bought|buying|sell|sold|selling|spare|ship|shipped|lose|lost|compr\w*|vend\w*|perd\w*)\b/
const COWS = /^(?:cows?|head|vacas?|cabezas?|heifers?|vaquillas?|animales|animals|milkers?)$/
const BOTH = /\b(?:both|at once|same time|together|half and half|las dos|los dos|ambas|ambos|juntas|juntos|al mismo tiempo|mitad)\b/
/** Nobody feeds a cow more than this of one feed, lb. */
const MOST_A_HEAD = 200

const DAYS_IN: [RegExp, number][] = [
  [WEEKS, 7],
  [DAYS, 1],
  [MONTHS, 30],
]
const norm = (i: Item | undefined): string => i?.tokens[0]?.norm ?? ''
const last = (i: Item): string => i.tokens.at(-1)?.norm ?? ''
const words = (items: Item[]): string => items.map(i => i.tokens.map(t => t.norm).join(' ')).join(' ')

/** Days in "two weeks", "10 days", "a week"; a word of time may stand in the number's own item or behind it. */
const spanIn = (items: Item[], text: string): { days: number; at?: Item } | undefined => {
  for (const [k, i] of items.entries()) {
    if (i.unit === 'day' || i.unit === 'month') return { days: (i.num ?? 1) * (i.unit === 'month' ? 30 : 1), at: i }
    if (i.num === undefined) continue
    const word = DAYS_IN.find(([like]) => like.test(norm(items[k + 1])) || like.test(last(i)))
    if (word) return { days: i.num * word[1], at: i }
  }
  const one = /\b(?:a|one|una?) (week|semana|month|mes|day|dia)\b/.exec(text)
  const word = one && DAYS_IN.find(([like]) => like.test(one[1]!))
  return word ? { days: word[1] } : undefined
}

/** Whether a number is a change: 1 more, -1 fewer, 0 neither. By what stands close behind it, else by the verb before it. */
const changeAt = (items: Item[], k: number): number => {
  for (const i of items.slice(k, k + 6)) {
    if (i !== items[k] && (i.num !== undefined || has(i, 'and') || has(i, 'comma'))) break
    const close = i.tokens.map(t => t.norm)
    if (close.some(w => LESS_AFTER.test(w))) return -1
    if (close.some(w => MORE_AFTER.test(w))) return 1
  }
  let from = k
  while (from > 0 && items[from - 1]!.num === undefined) from--
  const before = words(items.slice(from, k))
  if (TO.test(before.split(' ').at(-1) ?? '')) return 0
  return LESS.test(before) ? -1 : MORE.test(before) ? 1 : 0
}

/**
 * Reads what a question supposes. `text` is the sentence, folded, with single spaces. A number says what it counts by its unit,
 * by the word behind it, or by "a day" and "a head".
 */
export const whatIfIn = (items: Item[], text: string): WhatIfSaid => {
  const out: WhatIfSaid = {}
  const shift = LATE.test(text) ? 1 : EARLY.test(text) ? -1 : 0
  const span = shift ? spanIn(items, text) : undefined
  if (span) out.delayDays = shift * span.days
  const perDay = items.some(i => has(i, 'per:day'))
  const perHead = items.some(i => has(i, 'per:head'))
  for (const [k, i] of items.entries()) {
    // "half and half", "las dos pilas"
    if (i.num === undefined || i.ordinal || i === span?.at || i.date || i.num < 1) continue
    if (i.num === 2 && BOTH.test(text)) continue
    const lb = inLb(i)
    const next = items[k + 1]
    const change = changeAt(items, k)
    const bare = i.unit === undefined
    const cows =
      i.unit === 'head' ||
      (bare && (COWS.test(norm(next)) || hasCat(next, 'group') || (has(next, 'more') && COWS.test(norm(items[k + 2])))))
    if (i.unit === 'pct') out.pctMore = change * i.num
    else if (cows || (bare && change !== 0 && !perDay && !perHead && i.num < 2000) || (bare && has(items[k - 1], 'v:milk'))) {
      if (change) out.headMore = change * i.num
      else out.head = i.num
    } else if ((perHead || (lb !== undefined && !TRADE.test(text))) && (lb ?? i.num) <= MOST_A_HEAD) {
      if (change && perHead) out.perHeadMore = change * (lb ?? i.num)
      else out.lbPerHead = lb ?? i.num
    } else if (perDay && (lb !== undefined || bare)) {
      if (change) out.perDayMore = change * (lb ?? i.num)
      else out.lbPerDay = lb ?? i.num
    } else if (lb !== undefined && change) out.addLb = change * lb
    else if (lb !== undefined || (bare && i.num >= 2000)) out.lbPerDay = lb ?? i.num
    else if (bare) out.head = i.num
  }
  const piles = [...new Set(items.flatMap(i => (hasCat(i, 'pile') ? [valueOf(i, 'pile')!] : [])))]
  const alone = Object.keys(out).length === 0
  if (piles.length > 1 && out.addLb === undefined) out.together = piles
  else if (BOTH.test(text) && alone) out.together = []
  return out
}
