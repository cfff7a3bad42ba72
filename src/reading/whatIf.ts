import { inLb } from './frames/slots.ts'
import { has, hasCat, type Item, valueOf } from './item.ts'

/** What a "what if" changes: numbers that take the place of what the book says, or come on top of it. */
export interface WhatIfSaid {
  head?: number
  /** More head, or fewer. */
  headMore?: number
  lbPerDay?: number
  lbPerHead?: number
  /** The harvest comes so many days later, or sooner. */
  delayDays?: number
  /** Feed bought, or sold. */
  addLb?: number
  /** Piles that are fed at once. */
  together?: string[]
}

const WEEKS = /^(?:weeks?|wks?|semanas?)$/
const DAYS = /^(?:days?|dias?)$/
const MONTHS = /^(?:months?|mes|meses)$/
const LATE = /\b(?:late|later|behind|delayed|slips?|slipped|pushed back|tarde|atras\w*|retras\w*|demor\w*|despues)\b/
const EARLY = /\b(?:early|earlier|sooner|ahead|antes|adelant\w*|temprano)\b/
const LESS = /\b(?:sell|sold|selling|lose|lost|cull|culled|fewer|less|drop|ship|vend\w*|menos|perd\w*|desech\w*)\b/
const MORE = /\b(?:buy|bought|buying|more|extra|additional|another|add|adding|get|compr\w*|mas|otr[ao]s?|agreg\w*|traemos)\b/
const COWS = /^(?:cows?|head|vacas?|cabezas?|heifers?|vaquillas?|animales|animals)$/
const BOTH = /\b(?:both|at once|same time|together|las dos|los dos|ambas|ambos|juntas|juntos|al mismo tiempo)\b/

const DAYS_IN: [RegExp, number][] = [
  [WEEKS, 7],
  [DAYS, 1],
  [MONTHS, 30],
]
const norm = (i: Item | undefined): string => i?.tokens[0]?.norm ?? ''
const last = (i: Item): string => i.tokens.at(-1)?.norm ?? ''

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

/**
 * Reads what a question supposes. `text` is the sentence, folded, with single spaces. A number says what it counts by its unit,
 * by the word behind it, or by "a day" and "a head".
 */
export const whatIfIn = (items: Item[], text: string): WhatIfSaid => {
  const out: WhatIfSaid = {}
  const sign = LESS.test(text) ? -1 : 1
  const changes = LESS.test(text) || MORE.test(text)
  const shift = LATE.test(text) ? 1 : EARLY.test(text) ? -1 : 0
  const span = shift ? spanIn(items, text) : undefined
  if (span) out.delayDays = shift * span.days
  const perDay = items.some(i => has(i, 'per:day'))
  const perHead = items.some(i => has(i, 'per:head'))
  for (const [k, i] of items.entries()) {
    if (i.num === undefined || i.ordinal || i === span?.at || i.date) continue
    // "las dos pilas"
    if (i.num === 2 && BOTH.test(text)) continue
    const lb = inLb(i)
    const next = items[k + 1]
    const cows = i.unit === 'head' || COWS.test(norm(next)) || hasCat(next, 'group') || (has(next, 'more') && COWS.test(norm(items[k + 2])))
    if (cows && !perHead) {
      if (changes) out.headMore = sign * i.num
      else out.head = i.num
    } else if (perHead && (lb !== undefined || i.unit === undefined) && i.num < 1000) out.lbPerHead = lb ?? i.num
    else if (perDay && (lb !== undefined || i.unit === undefined)) out.lbPerDay = lb ?? i.num
    else if (lb !== undefined && changes) out.addLb = sign * lb
    else if (lb !== undefined) out.lbPerDay = lb
    else if (i.unit === undefined && i.num >= 2000) out.lbPerDay = i.num
    else if (i.unit === undefined && i.num < 2000) {
      if (changes && !items.some(x => has(x, 'v:milk'))) out.headMore = sign * i.num
      else out.head = i.num
    }
  }
  const piles = [...new Set(items.flatMap(i => (hasCat(i, 'pile') ? [valueOf(i, 'pile')!] : [])))]
  if (piles.length > 1) out.together = piles
  else if (BOTH.test(text) && !changes && out.head === undefined && out.lbPerDay === undefined) out.together = []
  return out
}
