import { altered, type Change, has, hasCat, type Item } from './item.ts'
import { LABEL, OF_EACH, type Ruling, STUTTER, textAt } from './ruling.ts'
import { BY_SENSE } from './senseRulings.ts'
import { BY_WORD } from './wordRulings.ts'

const TO_DO = /^(?:put|feed|add|get|haul)$/
const OF_THINGS = /^(?:cosas?|things?|stuff)$/

// the same senses come in every message
const known = new Map<string, Ruling[]>()
const MOST_KNOWN = 5000

/** The rulings on a sense and on its category. */
const rulingsOn = (sense: string): Ruling[] => {
  let rulings = known.get(sense)
  if (!rulings) {
    const at = sense.indexOf(':')
    rulings = [BY_SENSE.get(sense), at > 0 ? BY_SENSE.get(sense.slice(0, at)) : undefined].filter(r => r !== undefined)
    if (known.size >= MOST_KNOWN) known.clear()
    known.set(sense, rulings)
  }
  return rulings
}

const HAULS = new Set(['load', 'bucket', 'batch'])
const EACH = /^(?:an?|per|el|la|cada)$/
const TEMPERATURE = /^(?:temps?|temperature|mercury|thermometer|temperatura|termometro)$/

/** Rulings on a number. */
const ofNumber: Ruling = (items, k, i) => {
  // "temp dropped to 14 last night"
  if (isBare(i) && items.slice(Math.max(0, k - 4), k).some(x => TEMPERATURE.test(x.text.toLowerCase()))) return { unit: 'degF' }
  if (isOutOf(items, k) || isOfThose(items, k)) return LABEL
  // "salio medio aguada", "half asleep": so much of nothing
  if (i.num === 0.5 && isBare(i) && /^(?:medi[oa]|half)$/.test(i.tokens[0]!.norm) && items[k + 1]?.senses.length === 0) return STUTTER
  // "last 1 of that field": the one that was told
  if (i.num === 1 && isBare(i) && /^(?:the )?last$/.test(textAt(items, k - 1)) && has(items[k + 1], 'off')) return LABEL
  // "opened it back up two put corn on": heard for to
  if (
    i.num === 2 &&
    isBare(i) &&
    /^(?:two|too)$/.test(i.tokens[0]!.norm) &&
    TO_DO.test(textAt(items, k + 1)) &&
    items.slice(0, k).some(x => has(x, 'v:open'))
  )
    return STUTTER
  // "apunta 2 cosas"
  if (isBare(i) && OF_THINGS.test(textAt(items, k + 1))) return LABEL
  // "no eleven eleven loads": said twice over
  if (i.unit === undefined && i.tokens[0]?.kind === 'word' && items[k + 1]?.num === i.num && items[k + 1]?.unit !== undefined)
    return STUTTER
  // "load 15 was wet": which one it was
  if (i.unit === undefined && k > 0 && /^(?:load|viaje)$/.test(textAt(items, k - 1)) && !hasCat(items[k + 1], 'crop')) return LABEL
  // "fed 4 batches, about 2800 a batch": of each
  return i.num === 1 && HAULS.has(i.unit ?? '') && EACH.test(i.tokens[0]!.norm) && (items[k - 1]?.num ?? 0) >= 100 ? OF_EACH : undefined
}

/** What the item at `k` becomes beside what stands around it; most mean the same wherever they stand. */
const changed = (items: Item[], k: number): Change | undefined => {
  const i = items[k]!
  const counted = i.num === undefined ? undefined : ofNumber(items, k, i)
  if (counted) return counted
  const word = i.tokens.length === 1 ? BY_WORD.get(i.tokens[0]!.norm)?.(items, k, i) : undefined
  if (word) return word
  for (const s of i.senses)
    for (const ruling of rulingsOn(s)) {
      const ruled = ruling(items, k, i)
      if (ruled) return ruled
    }
  return undefined
}

const isBare = (i: Item): boolean => i.num !== undefined && i.unit === undefined && !i.ordinal

/** "patched 2 of the 3": how many there are is no count of what was done. */
const isOutOf = (items: Item[], k: number): boolean => {
  const of = has(items[k - 1], 'filler') && !has(items[k - 1], 'off') ? k - 2 : k - 1
  return (
    isBare(items[k]!) &&
    of > 0 &&
    /^(?:of|out of|de)$/i.test(items[of]!.text) &&
    isBare(items[of - 1]!) &&
    items[of - 1]!.num! <= items[k]!.num!
  )
}

/** "de los 9 hoyos de barn ya parche 7": how many there were. */
const isOfThose = (items: Item[], k: number): boolean =>
  k <= 3 &&
  /^(?:de|of|out of)$/.test(textAt(items, k - 2)) &&
  /^(?:los|las|the|those|them)$/.test(textAt(items, k - 1)) &&
  items.slice(k + 1).some(x => has(x, 'v:patch')) &&
  items.slice(k + 1).some(x => x.num !== undefined)

/** The items with the senses gone that their neighbours rule out. */
export const narrowed = (items: Item[]): Item[] => {
  let out = items
  for (let k = 0; k < items.length; k++) {
    const change = changed(items, k)
    if (!change) continue
    if (out === items) out = [...items]
    out[k] = altered(items[k]!, change)
  }
  return out
}
