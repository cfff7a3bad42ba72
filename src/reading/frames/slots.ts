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
  if (name) out.strange = name
  else p.takeSense('pileword')
}

/** "from the north field", "del lote norte": where it was cut, though a pile has the name too. */
export const isField = (p: Pool, at: number): boolean => {
  const field = /^(?:field|fld|place|farm|campo|lote|potrero|parcela)$/
  return field.test(p.items[at + 1]?.text.toLowerCase() ?? '') || field.test(p.items[at - 1]?.text.toLowerCase() ?? '')
}

const nextSolid = (p: Pool, k: number): number => {
  let j = k + 1
  while (p.items[j] && isThin(p.items[j]!)) j++
  return j
}

/** Place words that name a part of any pile, never a pile. */
const NO_NAME =
  /^(top|bottom|end|side|middle|center|ground|base|back|front|edge|face|yard|near|far|wall|corner|left|right|ramp|n|s|e|w|arriba|encima|lado|orilla|fondo|medio|frente|parte|cerca|enmedio|punta)$/

/** Words nobody knows where a pile's name belongs: "on hilltop", "river pile". */
export const takeStrange = (p: Pool, want?: 'on' | 'off'): string | undefined => {
  const nameable = (i: Item | undefined): boolean =>
    i !== undefined &&
    i.num === undefined &&
    !i.date &&
    (i.senses.length === 0 ||
      has(i, 'where:place') ||
      (i.senses.every(s => s === 'filler' || s.startsWith('animal:') || s.startsWith('v:') || s.startsWith('b:')) && !has(i, 'filler')))
  for (let k = 0; k < p.items.length; k++) {
    if (p.used[k] || !nameable(p.items[k])) continue
    let end = k + 1
    while (p.free(end) && nameable(p.items[end]) && end - k < 3) end++
    const word = p.items[end]
    const called = word !== undefined && has(word, 'pileword') && p.free(end)
    const rel = p.relation(k)
    const unknown = p.items.slice(k, end).some(i => !i.senses.length)
    // "en la pila del cerrito"
    const of = has(p.items[k - 1], 'off') && has(p.items[k - 2], 'pileword')
    if (of && p.items.slice(k, end).some(i => !i.senses.length)) {
      for (let j = k - 2; j < end; j++) p.used[j] = 1
      return p.items
        .slice(k, end)
        .map(i => i.text.toLowerCase())
        .join(' ')
    }
    const named = want === 'on' && rel === 'on' && !p.items.slice(k, end).some(i => NO_NAME.test(i.tokens[0]!.norm))
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

export interface CropSaid {
  crop?: string
  cut?: number
}

const cropIn = (p: Pool): CropSaid => {
  const out: CropSaid = {}
  const ord = p.find((i, k) => {
    if (!hasCat(i, 'say')) return false
    const n = p.items[k + 1]
    return n !== undefined && (has(n, 'cutword') || hasCat(n, 'crop'))
  })
  if (ord >= 0) {
    out.cut = Number(valueOf(p.take(ord), 'say')!.split(':')[1])
    out.crop = 'haylage'
    const n = p.items[ord + 1]!
    p.take(ord + 1)
    if (!has(n, 'cutword')) {
      out.crop = valueOf(n, 'crop')!
      if (p.items[ord + 2] && has(p.items[ord + 2], 'cutword')) p.take(ord + 2)
    } else {
      let k = ord + 2
      while (p.items[k] && (has(p.items[k], 'off') || isThin(p.items[k]!)) && k < ord + 4) k++
      if (p.free(k) && hasCat(p.items[k], 'crop') && !has(p.items[k], 'cutword')) out.crop = valueOf(p.take(k), 'crop')!
      else {
        // "alfalfa del tercer corte"
        const named = p.items.findLastIndex((x, j) => j < ord && p.free(j) && hasCat(x, 'crop') && !has(x, 'cutword'))
        const other = p.find((x, j) => j > ord && hasCat(x, 'crop') && !has(x, 'cutword'))
        if (named >= 0 && other < 0 && p.items.slice(named + 1, ord).every(x => isThin(x) || hasCat(x, 'pile')))
          out.crop = valueOf(p.take(named), 'crop')!
      }
    }
    return out
  }
  // "hay, third cut": crop first, cut after it
  const at = p.find(i => hasCat(i, 'crop') && !has(i, 'cutword'))
  if (at >= 0) {
    out.crop = valueOf(p.take(at), 'crop')
    const k = p.find((i, j) => (j > at && i.ordinal === true) || (hasCat(i, 'say') && has(p.items[j + 1], 'cutword')))
    if (k >= 0 && p.items[k + 1] && has(p.items[k + 1], 'cutword')) {
      out.cut = p.items[k]!.num ?? Number(valueOf(p.items[k], 'say')!.split(':')[1])
      p.take(k)
      p.take(k + 1)
    }
  }
  return out
}

/** Takes a crop with its cut: "third crop hay", "2nd cutting", "corn". */
export const takeCrop = (p: Pool): CropSaid => {
  const out = cropIn(p)
  // "silo de maíz": two words for one feed
  if (out.crop) p.takeAll(`crop:${out.crop}`)
  return out
}

/** A place on a pile, kept as said: "by the wall", "n end", "del lado norte". */
export const takeWhere = (p: Pool, allowUnknown = true, not?: RegExp): string | undefined => {
  for (let k = 0; k < p.items.length; k++) {
    if (p.used[k]) continue
    const i = p.items[k]!
    // "w tape" is with it, "w side" the west
    const place = has(i, 'where:place') && !(has(i, 'with') && (hasCat(p.items[k + 1], 'item') || hasCat(p.items[k + 1], 'mat')))
    const led = has(i, 'prepWhere')
    // "out n stomped 5 holes": and
    if (i.text.toLowerCase() === 'n' && p.items[k + 1] && !has(p.items[k + 1], 'where:place') && !has(p.items[k + 1], 'comma')) continue
    // "walked right up on it"
    if (i.text.toLowerCase() === 'right' && (has(p.items[k + 1], 'on') || has(p.items[k + 1], 'off') || has(p.items[k + 1], 'prepWhere')))
      continue
    if (!place && !led) continue
    let from = k
    let end = k
    if (led && !place) {
      from = k + 1
      while (p.items[from] && isThin(p.items[from]!)) from++
      if (!p.free(from)) continue
      // "by the feed lane"
      if (
        p.items[from]!.text.toLowerCase() === 'feed' &&
        p.free(from + 1) &&
        (p.items[from + 1]!.senses.length === 0 || has(p.items[from + 1], 'where:place'))
      ) {
        for (let j = k; j <= from + 1; j++) p.used[j] = 1
        return `feed ${p.items[from + 1]!.text.toLowerCase()}`
      }
      const head = p.items[from]!
      const ok =
        has(head, 'where:place') ||
        (allowUnknown &&
          (head.senses.length === 0 ||
            /^(?:piso|suelo|floor|ground)$/.test(head.text.toLowerCase()) ||
            hasCat(head, 'mat') ||
            has(head, 'ordinal')))
      if (!ok || head.num !== undefined) continue
      end = from + 1
    } else {
      // a place word that stands in a pile's room is a place only beside another place word or a relation
      end = k + 1
      const prev = p.items[k - 1]
      const lead = prev && p.free(k - 1) && prev.senses.length === 0 && k >= 1 ? k - 1 : k
      from = lead
    }
    while (p.free(end) && (has(p.items[end], 'where:place') || (p.items[end]!.senses.length === 0 && has(p.items[end + 1], 'where:place'))))
      end++
    // "corner of the feed end"
    while (
      p.free(end) &&
      p.items[end]!.senses.every(s => s === 'off' || s === 'filler') &&
      p.free(end + 1) &&
      has(p.items[end + 1], 'where:place')
    ) {
      end += 2
    }
    // "along the top", "under the tires": how it lies there is kept, "by" and "at" say nothing more
    const lies =
      from > k &&
      /^(?:along|around|under|underneath|behind|beside|below|above|between|across|inside|outside|debajo|detras|atras|alrededor)$/.test(
        i.text.toLowerCase(),
      )
    const text = p.items
      .slice(lies ? k : from, end)
      .map(x => x.text.toLowerCase())
      .join(' ')
    if (not?.test(text)) continue
    for (let j = Math.min(k, from); j < end; j++) p.used[j] = 1
    return text
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
