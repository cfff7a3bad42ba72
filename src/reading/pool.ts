import { has, hasCat, type Item, meaningOf, type Unit, valueOf } from './item.ts'

const FREE = new Set([
  'filler',
  'comma',
  'and',
  'stop',
  'mark',
  'on',
  'off',
  'with',
  'back',
  'approx',
  'also',
  'more',
  'ask?',
  'cutword',
  'pileword',
  'total',
  'each',
  'so',
  'but',
  'aside',
  'label',
])

/** What it costs to leave an item unexplained. Numbers cost most: a number nobody claimed is a reading gone wrong. */
export const weightOf = (i: Item): number => {
  i.weight ??= weigh(i)
  return i.weight
}

const weigh = (i: Item): number => {
  if (i.ghost) return 0
  if (i.num !== undefined || i.sides) return 4
  if (!i.senses.length) return 1
  if (i.senses.includes('num?')) return 4
  if (i.senses.some(s => FREE.has(s))) return 0
  let w = 0
  for (const s of i.senses) {
    const cat = s.slice(0, s.indexOf(':') < 0 ? s.length : s.indexOf(':'))
    const v = WEIGHTS[cat] ?? 1
    if (v > w) w = v
  }
  return w
}

const WEIGHTS: Record<string, number> = {
  to: 0,
  pile: 3,
  crop: 2,
  box: 2,
  v: 2,
  b: 1.5,
  mat: 2,
  item: 2,
  what: 2,
  cause: 2,
  animal: 2,
  sky: 2,
  vague: 2,
  date: 1,
  find: 1,
  thing: 1,
  q: 2,
  m: 0,
  unit: 1,
  group: 1,
  '<link>': 8,
  '<phone>': 8,
  person: 0.5,
  ans: 0,
  pick: 0,
  fix: 0,
  harv: 0.5,
  why: 0.5,
  where: 1,
  prepWhere: 0,
  dim: 1,
  per: 1,
  dm: 1,
  basis: 0.5,
  stone: 2,
}

const SINCE = new Set(['since', 'till', 'until', 'desde', 'hasta'])
const THEN = /^(?:then|and then|luego|y luego|despues)$/i

/** The items of one clause, and which of them a frame has used. */
export class Pool {
  readonly items: Item[]
  readonly used: Uint8Array
  constructor(items: Item[]) {
    this.items = items
    this.used = new Uint8Array(items.length)
  }

  free(i: number): boolean {
    return i >= 0 && i < this.items.length && !this.used[i]
  }

  /** Index of the first unused item that fits, or -1. */
  find(fits: (i: Item, at: number) => boolean, from = 0): number {
    for (let k = from; k < this.items.length; k++) if (!this.used[k] && fits(this.items[k]!, k)) return k
    return -1
  }

  take(at: number): Item | undefined {
    if (at < 0 || at >= this.items.length) return undefined
    this.used[at] = 1
    return this.items[at]
  }

  sense(...senses: string[]): number {
    for (let k = 0; k < this.items.length; k++) {
      if (this.used[k]) continue
      const own = this.items[k]!.senses
      for (const s of senses) if (own.includes(s)) return k
    }
    return -1
  }

  cat(cat: string): number {
    for (let k = 0; k < this.items.length; k++) if (!this.used[k] && hasCat(this.items[k], cat)) return k
    return -1
  }

  takeSense(...senses: string[]): boolean {
    return this.take(this.sense(...senses)) !== undefined
  }

  /** Takes every item with one of these senses. */
  takeAll(...senses: string[]): number {
    let n = 0
    for (let k = 0; k < this.items.length; k++) {
      if (this.used[k]) continue
      const own = this.items[k]!.senses
      for (const s of senses)
        if (own.includes(s)) {
          this.used[k] = 1
          n++
          break
        }
    }
    return n
  }

  takeCat(cat: string): string | undefined {
    const at = this.cat(cat)
    return at < 0 ? undefined : valueOf(this.take(at), cat)
  }

  num(units: (Unit | undefined)[], ok: (i: Item, at: number) => boolean = () => true): number {
    for (let k = 0; k < this.items.length; k++) {
      const i = this.items[k]!
      if (!this.used[k] && i.num !== undefined && !i.ordinal && units.includes(i.unit) && ok(i, k)) return k
    }
    return -1
  }

  /** The nearest item before `at` that carries something, or undefined. */
  before(at: number): Item | undefined {
    for (let k = at - 1; k >= 0; k--) if (!isThin(this.items[k]!)) return this.items[k]
    return undefined
  }

  after(at: number): Item | undefined {
    return this.items[this.afterAt(at)]
  }

  afterAt(at: number): number {
    for (let k = at + 1; k < this.items.length; k++) if (!isThin(this.items[k]!)) return k
    return -1
  }

  /** The relation word standing before `at`: `on`, `off` or none; articles between are passed over. */
  relation(at: number): 'on' | 'off' | undefined {
    for (let k = at - 1; k >= 0; k--) {
      const i = this.items[k]!
      if (has(i, 'off') && has(i, 'on')) return 'on'
      // "went on hillside"
      if (has(i, 'v:put') && i.tokens.length > 1 && /^(?:on|onto|in)$/.test(i.tokens.at(-1)!.norm)) return 'on'
      // "on there then the chopper quit"
      if (has(i, 'and') && THEN.test(i.text)) return undefined
      // "a la pila y ya paramos"
      // "7 loads in since brkfst"
      if (SINCE.has(i.tokens[0]?.norm ?? '')) return undefined
      if (/^ya$/i.test(i.text) && /^y$/i.test(this.items[k - 1]?.text ?? '')) return undefined
      // "another 3 loads for creek"
      if (has(i, 'off') && i.text === 'for') return 'on'
      if (has(i, 'off')) return 'off'
      if (has(i, 'on')) return 'on'
      if (!has(i, 'filler') && !has(i, 'pileword') && !has(i, 'what:loose edge') && !has(i, 'where:place')) return undefined
    }
    return undefined
  }

  /** The words that carry something and are not used. */
  leftWords(): string[] {
    return this.items.filter((i, k) => !this.used[k] && !i.ghost && weightOf(i) > 0).map(i => i.text)
  }

  score(): { used: number; left: number; numbers: number } {
    let used = 0
    let left = 0
    let numbers = 0
    for (let k = 0; k < this.items.length; k++) {
      const i = this.items[k]!
      const w = weightOf(i)
      if (i.ghost) continue
      if (this.used[k]) used += Math.max(w, 0.5)
      else {
        left += w
        if (i.num !== undefined || i.sides || isThing(i) || hasCat(i, 'pile')) numbers++
      }
    }
    return { used, left, numbers }
  }
}

/** Articles, fillers and marks: nothing to hold on to. */
export const isThin = (i: Item): boolean => i.num === undefined && !i.sides && !i.date && meaningOf(i).thin

/**
 * A thing of the trade that stands in no act, or is left over in one, was meant for one that was not understood. "hay" alone may be
 * Spanish for "there is".
 */
export const isThing = (i: Item): boolean =>
  !has(i, 'filler') &&
  !has(i, 'but') &&
  ((hasCat(i, 'crop') && !has(i, 'cutword') && i.text.toLowerCase() !== 'hay') ||
    hasCat(i, 'what') ||
    hasCat(i, 'box') ||
    (hasCat(i, 'animal') && !has(i, 'animal:animal')))
