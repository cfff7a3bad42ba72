import { has, hasCat, type Item } from './item.ts'
import { isThing } from './pool.ts'

const TRADE = ['pile', 'crop', 'box', 'mat', 'item', 'what', 'dim', 'dm', 'per', 'group'] as const
const KEPT_UNITS = new Set(['load', 'bucket', 'batch', 'lb', 'ton', 'tonne', 'kg', 'ft', 'in', 'm', 'head', 'tractor'])
/** Units of time count nothing the book keeps, but the hours of packing. */
const TIME_UNITS = new Set(['day', 'month', 'hour'])

/** What is counted there is nothing of the book: money, people, time, miles. */
const COUNTED_APART =
  /^(?:bucks?|dollars?|dlls|dolares|pesos|people|persons?|personas?|kids?|guys?|men|women|boys?|girls|ni(?:n|ñ)[oa]s?|muchachos?|se(?:n|ñ)ores|hijos?|hijas?|weeks?|wks?|semanas?|years?|yrs?|a(?:n|ñ)os?|minutes?|mins?|minutos?|seconds?|segundos?|miles?|millas?|samples?|muestras?|oclock|times|veces|percent off|of us|of them|of em|de nosotros|de ellos)$/

const wordOf = (i: Item | undefined): string => i?.tokens.map(t => t.norm).join(' ') ?? ''

const isStrange = (i: Item): boolean => i.senses.length === 0 && i.num === undefined && i.tokens[0]?.kind === 'word'

const isOfBook = (i: Item): boolean =>
  TRADE.some(cat => hasCat(i, cat)) && !(has(i, 'filler') && !hasCat(i, 'pile'))
    ? !has(i, 'where:place') || hasCat(i, 'pile')
    : KEPT_UNITS.has(i.unit ?? '')

/** Somebody's kids, the vet at seven, what the gate cost: words that nobody here knows, and nothing of the trade among them. */
const isAside = (clause: Item[]): boolean => clause.filter(isStrange).length > 1 && !clause.some(isOfBook)

/** "he might have another 50 in spring": nothing there is told as done. */
const isUndone = (clause: Item[]): boolean =>
  clause.some(i => has(i, 'm:plan') || has(i, 'm:hope') || has(i, 'm:if') || has(i, 'm:tell') || i.date?.ahead === true) &&
  !clause.some(i => hasCat(i, 'pile'))

/** "los de alfalfa todavía no llegan": what did not come, or is still to come, was not left out. */
const isDenied = (clause: Item[]): boolean =>
  clause.every(i => i.num === undefined && !i.sides) && clause.some(i => has(i, 'm:no') || has(i, 'm:plan') || has(i, 'm:hope'))

/** True where a number is counted in something the book does not keep. */
const isApart = (clause: Item[], k: number): boolean => {
  const i = clause[k]!
  // hours of a tractor are packing that was not understood
  if (TIME_UNITS.has(i.unit ?? '')) return !(i.unit === 'hour' && clause.some(x => has(x, 'unit:tractor') || has(x, 'v:pack')))
  const next = clause[k + 1]
  return (
    i.unit === undefined &&
    next !== undefined &&
    (COUNTED_APART.test(wordOf(next)) || COUNTED_APART.test(`${wordOf(next)} ${wordOf(clause[k + 2])}`))
  )
}

/**
 * Of a clause that no frame explains, what may have been meant for one that was not understood: numbers, piles and things of the trade.
 * What is told in passing is none of it.
 */
export const unplaced = (clause: Item[]): Item[] => {
  if (isAside(clause) || isUndone(clause)) return []
  const denied = isDenied(clause)
  return clause.filter((i, k) => {
    if (i.num !== undefined || i.sides !== undefined) return !isApart(clause, k)
    return !denied && (isThing(i) || (hasCat(i, 'pile') && !has(i, 'where:place')))
  })
}
