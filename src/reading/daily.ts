import { inLb } from './frames/slots.ts'
import { type DateItem, has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import type { Act } from './reading.ts'

/** Feed is told in pounds without saying so from here on. Common practice, no source. */
const LEAST_LB = 1000

/** "todo de shop", "shop both": of all the days told. */
const OF_ALL = /^(?:all|both|each|everything|todo|todos|ambos|los dos|los tres|total)$/i

type Amount = { lb: number } | { ft: number } | { count: number; unit: 'batch' | 'bucket' }

const amountOf = (i: Item): Amount | undefined => {
  if (i.num === undefined || i.ordinal) return undefined
  if (i.unit === undefined) return i.num >= LEAST_LB ? { lb: i.num } : undefined
  if (i.unit === 'ft') return { ft: i.num }
  if (i.unit === 'batch' || i.unit === 'bucket') return { count: i.num, unit: i.unit }
  const lb = inLb(i)
  return lb === undefined ? undefined : { lb }
}

/**
 * Several days of feed in one breath, with the verb or the pile said once: "sun 10.8k, this am 11.1k, shop both", "fri 9900, sat 10200
 * fed off barn"; undefined where a sentence is anything else.
 */
export const dailyFeed = (run: Item[]): Act[] | undefined => {
  let dated = 0
  for (const i of run) if (i.date) dated++
  if (dated < 2) return undefined
  const told: ({ date: DateItem } | { amount: Amount })[] = []
  let pile: string | undefined
  let fed = false
  for (const i of run) {
    if (i.date) {
      if (i.date.ahead) return undefined
      told.push({ date: i.date })
      continue
    }
    const amount = amountOf(i)
    if (amount) told.push({ amount })
    else if (i.num !== undefined || i.sides) return undefined
    else if (hasCat(i, 'pile')) {
      if (pile !== undefined) return undefined
      pile = valueOf(i, 'pile')
    } else if (has(i, 'v:feed')) fed = true
    else if (!(isThin(i) || has(i, 'and') || has(i, 'comma') || has(i, 'to:cows') || has(i, 'pileword') || OF_ALL.test(i.text)))
      return undefined
  }
  const days = told.length / 2
  if (days < 2 || !Number.isInteger(days) || (pile === undefined && !fed)) return undefined
  const acts: Act[] = []
  for (let k = 0; k < told.length; k += 2) {
    const pair = { ...told[k]!, ...told[k + 1]! } as { date?: DateItem; amount?: Amount }
    if (!pair.date || !pair.amount) return undefined
    acts.push({
      frame: 'feed',
      mood: 'fact',
      slots: { ...pair.amount, ...(pile === undefined ? {} : { pile }) },
      date: pair.date,
      used: 8,
      left: 0,
      leftWords: [],
      leftNumbers: 0,
      full: true,
    })
  }
  return acts
}
