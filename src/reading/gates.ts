import { FRAMES, type Rule } from './frames/rules.ts'
import { has, type Item, isVerb } from './item.ts'

/** For each item, a bit for each rule whose gate it opens, and for each that could lean on the verb it carries. */
export interface Gates {
  open: Int32Array
  own: Int32Array
  /** Where a plan begins behind a comma; -1 where none does. */
  turn: number
  /** Where what is done is told behind a comma, after a plan; -1 where it is not. */
  back: number
}

/** The rules with this need, a bit each; a need is a sense, a unit, `sides`, or `cat:` with a category. */
const rulesWith = (fits: (r: Rule) => boolean): number => FRAMES.reduce((bits, r, k) => (fits(r) ? bits | (1 << k) : bits), 0)

const SIDES = rulesWith(r => r.needs.includes('sides'))
// worked out once for each sense and unit: the same words come in every message
const opens = new Map<string, number>()
const leans = new Map<string, number>()
const kept = (of: Map<string, number>, key: string, fits: (r: Rule) => boolean): number => {
  let bits = of.get(key)
  if (bits === undefined) {
    bits = rulesWith(fits)
    of.set(key, bits)
  }
  return bits
}

export const gates = (items: Item[]): Gates => {
  const open = new Int32Array(items.length)
  const own = new Int32Array(items.length)
  for (let k = 0; k < items.length; k++) {
    const i = items[k]!
    let bits = i.sides ? SIDES : 0
    let verbs = 0
    for (const s of i.senses) {
      // a name of this farm is in no table, but its category is
      const at = s.indexOf(':')
      const cat = at > 0 ? `cat:${s.slice(0, at)}` : undefined
      const key = cat === 'cat:pile' || cat === 'cat:box' || cat === 'cat:person' ? cat : s
      bits |= kept(opens, key, r => r.needs.includes(s) || (cat !== undefined && r.needs.includes(cat)))
      verbs |= kept(leans, key, r => r.ghost === s)
    }
    if (i.unit !== undefined) bits |= kept(opens, i.unit, r => r.needs.includes(i.unit!))
    open[k] = bits
    own[k] = verbs
  }
  const turn = items.findIndex((i, k) => k > 1 && has(i, 'm:plan') && !has(i, 'approx') && has(items[k - 1], 'comma'))
  // "gonna cover creek wed, 6 more loads went on it today"
  const plan = items.findIndex(i => has(i, 'm:plan') && !has(i, 'approx'))
  const pause = plan < 0 || plan > 3 ? -1 : items.findIndex((i, k) => k > plan && has(i, 'comma'))
  const done =
    pause > plan &&
    items.slice(pause).some(isVerb) &&
    items.slice(pause).some(i => i.num !== undefined) &&
    !items.slice(pause).some(i => has(i, 'm:plan'))
  return { open, own, turn, back: done ? pause : -1 }
}
