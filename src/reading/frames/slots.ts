import { LB_PER_TON, LB_PER_TONNE } from '../../units/measure.ts'
import { has, hasCat, type Item, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'

export interface Found {
  slots: Record<string, unknown>
  vague?: boolean
  strange?: string
  slip?: boolean
  total?: boolean
  more?: boolean
  wet?: boolean
  tape?: boolean
  /** "on there": on the pile that was named before. */
  there?: boolean
  /** What was broken, or that a sheet was lifted, follows from the verb alone: "tore shop". */
  implied?: boolean
  /** No verb of its own tells of the harm. */
  noVerb?: boolean
  /** Loads were counted without saying that they are loads. */
  noUnit?: boolean
  /** Nothing but what a load weighed is told. */
  weighed?: boolean
  /** Added to the frame's score: how sure its trigger is. */
  bias?: number
  /** Frames that tell several events of one type: one slot set each. */
  several?: Record<string, unknown>[]
  /** Further piles of the same deed. */
  morePiles?: string[]
  /** Said in the bare form of the verb: it may be an order. */
  order?: boolean
  full: boolean
}

const round = (n: number): number => Math.round(n * 1e6) / 1e6

/** Pounds of a number with a unit of weight. */
export const inLb = (i: Item): number | undefined => {
  if (i.num === undefined) return undefined
  switch (i.unit) {
    case 'lb':
      return round(i.num)
    case 'ton':
      return round(i.num * LB_PER_TON)
    case 'tonne':
      return round(i.num * LB_PER_TONNE)
    case 'kg':
      return round((i.num * LB_PER_TONNE) / 1000)
    default:
      return undefined
  }
}

/** Feet of a number with a unit of length; a bare number is feet. */
export const inFt = (i: Item): number | undefined => {
  if (i.num === undefined) return undefined
  if (i.unit === 'in') return round(i.num / 12)
  if (i.unit === 'm') return round(i.num / 0.3048)
  return i.unit === undefined || i.unit === 'ft' ? round(i.num) : undefined
}

const BUNKER = /^(?:the )?(?:bunkers?|bunks?|bnkrs?)$/i

/** Takes the pile of a clause into `out`; a name that is not known goes to `strange`. */
export const takePile = (p: Pool, out: Found, slot = 'pile', want?: 'on' | 'off'): void => {
  let at = want ? p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === want) : -1
  if (at < 0) at = p.cat('pile')
  if (at >= 0) {
    const i = p.take(at)!
    out.slots[slot] = valueOf(i, 'pile')
    if (i.slip) out.slip = true
    if (slot === 'pile') {
      // "barn and shop": the second pile has the same done to it, where the frame allows
      let k = at + 1
      while (p.items[k] && has(p.items[k], 'and') && hasCat(p.items[nextSolid(p, k)], 'pile') && p.free(nextSolid(p, k))) {
        k = nextSolid(p, k)
        out.morePiles = [...(out.morePiles ?? []), valueOf(p.take(k), 'pile')!]
        k++
      }
    }
    p.takeSense('pileword')
    return
  }
  const name = takeStrange(p, want)
  // "the bunker pile": a name of its own, though nobody knows it
  const word = p.find((i, k) => has(i, 'pileword') && i.tokens.length === 1 && p.free(k + 1) && has(p.items[k + 1], 'pileword'))
  if (name) out.strange = name
  else if (word >= 0 && !/^(?:piles?|pilas?)$/i.test(p.items[word]!.text)) {
    out.strange = p.take(word)!.text.toLowerCase()
    p.take(word + 1)
  } else {
    // "fed 9k off the bunker": piles are no bunkers, so it is one by its name
    const bunker = p.find((i, k) => BUNKER.test(i.text) && p.relation(k) !== undefined)
    if (bunker >= 0) out.strange = p.take(bunker)!.text.toLowerCase()
    else p.takeSense('pileword')
  }
}

const FIELD = /^(?:field|fld|place|farm|campo|lote|potrero|parcela)$/

/** "from the north field", "del lote norte": where it was cut, though a pile has the name too. */
const isField = (p: Pool, at: number): boolean =>
  FIELD.test(p.items[at + 1]?.text.toLowerCase() ?? '') || FIELD.test(p.items[at - 1]?.text.toLowerCase() ?? '')

/** "hauled 7 ton of shop over to creek": feed that goes from one pile to another. */
export const isPileToPile = (p: Pool): boolean => {
  let from = false
  let onto = false
  for (let k = 0; k < p.items.length; k++) {
    if (!hasCat(p.items[k], 'pile')) continue
    const rel = p.relation(k)
    if (rel === 'on') onto = true
    else if (rel === 'off' && !isField(p, k)) from = true
  }
  return from && onto
}

/** "off", "out of", "de": away from something, and no mere "of". */
export const isAway = (i: Item): boolean => has(i, 'off') && /^(?:off|out|de|del)\b/i.test(i.text)

const nextSolid = (p: Pool, k: number): number => {
  let j = k + 1
  while (p.items[j] && isThin(p.items[j]!)) j++
  return j
}

/** Place words that name a part of any pile, never a pile. */
const NO_NAME =
  /^(top|bottom|end|side|middle|center|ground|base|back|front|edge|face|yard|near|far|wall|corner|left|right|ramp|n|s|e|w|arriba|encima|lado|orilla|fondo|medio|frente|parte|cerca|enmedio|punta)$/

const nameable = (i: Item | undefined): boolean =>
  i !== undefined &&
  i.num === undefined &&
  !i.date &&
  (i.senses.length === 0 ||
    has(i, 'where:place') ||
    (i.senses.every(s => s === 'filler' || s.startsWith('animal:') || s.startsWith('v:') || s.startsWith('b:')) && !has(i, 'filler')))

/** Where the word for a pile stands, of which the word at `k` says which one: "la pila de la loma"; -1 where none does. */
const pileOf = (p: Pool, k: number): number => {
  let j = k - 1
  while (j > 0 && has(p.items[j], 'filler') && !has(p.items[j], 'off')) j--
  return has(p.items[j], 'off') && has(p.items[j - 1], 'pileword') ? j - 1 : -1
}

/** Words nobody knows where a pile's name belongs: "on hilltop", "river pile". */
export const takeStrange = (p: Pool, want?: 'on' | 'off'): string | undefined => {
  for (let k = 0; k < p.items.length; k++) {
    if (p.used[k] || !nameable(p.items[k])) continue
    let end = k + 1
    while (p.free(end) && nameable(p.items[end]) && end - k < 3) end++
    const word = p.items[end]
    const called = word !== undefined && has(word, 'pileword') && p.free(end)
    const rel = p.relation(k)
    const unknown = p.items.slice(k, end).some(i => !i.senses.length)
    // "en la pila del cerrito"
    const said = pileOf(p, k)
    if (said >= 0 && p.items.slice(k, end).some(i => !i.senses.length || !NO_NAME.test(i.tokens[0]!.norm))) {
      for (let j = said; j < end; j++) p.used[j] = 1
      return p.items
        .slice(k, end)
        .map(i => i.text.toLowerCase())
        .join(' ')
    }
    const named = want !== undefined && rel === want && !p.items.slice(k, end).some(i => NO_NAME.test(i.tokens[0]!.norm))
    if (
      (called &&
        (rel !== undefined ||
          unknown ||
          /^(?:north|south|east|west|upper|lower|hill|norte|sur|este|oeste)$/.test(p.items[k]!.text.toLowerCase()))) ||
      (rel !== undefined && (!want || rel === want || want === 'on') && (unknown || named) && rel === (want ?? rel))
    ) {
      const text = p.items
        .slice(k, end)
        .map(i => i.text.toLowerCase())
        .join(' ')
      for (let j = k; j < end + (called ? 1 : 0); j++) p.used[j] = 1
      return text
    }
    k = end - 1
  }
  return undefined
}

/** "each" near a number multiplies it by the count. */
export const isEach = (p: Pool, at: number): boolean => {
  // "cada uno traia 14,200"
  for (let k = at - 1; k >= 0 && k >= at - 3; k--) {
    if (has(p.items[k], 'each')) {
      p.used[k] = 1
      return true
    }
    if (p.items[k]!.num !== undefined || has(p.items[k], 'comma')) break
  }
  for (let k = at + 1; k <= at + 2 && k < p.items.length; k++) {
    if (has(p.items[k], 'each')) {
      p.used[k] = 1
      return true
    }
    if (!isThin(p.items[k]!)) return false
  }
  return false
}

export const hasVague = (p: Pool): boolean => p.find(i => has(i, 'vague') || has(i, 'range')) >= 0

/** Takes the words for a vague amount, and says whether there were any. */
export const takeVague = (p: Pool): boolean => p.takeAll('vague') > 0

/** Marks words that only colour a clause. */
export const takeColour = (p: Pool): void => {
  p.takeAll('approx', 'more', 'also', 'each')
}
