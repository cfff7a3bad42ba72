import { altered, has, type Item } from './item.ts'
import { isThin } from './pool.ts'

/** No ton of feed costs less, or more. */
const COSTS: readonly [number, number] = [5, 900]

const isBare = (i: Item | undefined): boolean =>
  i?.num !== undefined && i.unit === undefined && !i.ordinal && i.num >= COSTS[0] && i.num <= COSTS[1]
const EACH = /^(?:an?|per|the|la|por|cada|\/)$/
/** Where "a ton" ends that begins at `k`; -1 where it is none. */
const aTonAt = (items: readonly Item[], k: number): number => {
  const first = items[k]
  if (first?.num === 1 && first.unit === 'ton' && EACH.test(first.tokens[0]?.norm ?? '')) return k + 1
  let at = k
  while (items[at] && at < k + 3 && items[at]!.num === undefined && EACH.test(items[at]!.tokens[0]?.norm ?? '')) at++
  const ton = items[at]
  return at > k && ton && ton.num === undefined && has(ton, 'unit:ton') ? at + 1 : -1
}

const MONEY = /^(?:bucks?|dollars?|dlls|dolares|pesos|varos|lana)$/

/**
 * The sentence without what a ton cost, said in passing: "bought 40 tons of hay at 70 a ton". Such a number counts nothing, and left in
 * it would be taken for loads or for one ton more.
 */
export const withoutPrices = (items: Item[]): Item[] => {
  let out = items
  // "8 bucks a head", "900 dollars": money counts nothing here
  for (let k = out.length - 1; k >= 0; k--)
    if (out[k]!.num !== undefined && MONEY.test(out[k + 1]?.text.toLowerCase() ?? '')) {
      let to = k + 2
      if (EACH.test(out[to]?.tokens[0]?.norm ?? '') && out[to + 1]) to += has(out[to], 'per:head') || out[to]!.tokens.length > 1 ? 1 : 2
      out = [...out.slice(0, k), altered(out[k + 1]!, { senses: [] }), ...out.slice(to)]
    }
  for (let k = out.length - 1; k > 0; k--) {
    const to = isBare(out[k]) ? aTonAt(out, k + 1) : -1
    if (to < 0) continue
    let from = k
    while (from > 0 && (has(out[from - 1], 'mark') || isThin(out[from - 1]!)) && !has(out[from - 1], 'comma')) from--
    // "70 a ton": a price told by itself is told elsewhere
    if (from === 0) continue
    out = [...out.slice(0, from), ...out.slice(to)]
    k = from
  }
  return out
}
