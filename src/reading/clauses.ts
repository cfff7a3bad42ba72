import { cover } from './frames/cover.ts'
import { box, pile, ration, size, test } from './frames/facts.ts'
import { feed, spoil } from './frames/feed.ts'
import { check, damage, patch } from './frames/harm.ts'
import { harvest } from './frames/harvest.ts'
import { load } from './frames/load.ts'
import { pack } from './frames/pack.ts'
import { empty, face, open, shift } from './frames/pileLife.ts'
import type { Found } from './frames/slots.ts'
import { supply } from './frames/supply.ts'
import { weather } from './frames/weather.ts'
import { has, hasCat, type Item } from './item.ts'
import { isThin, Pool, weightOf } from './pool.ts'
import type { Act, FrameName } from './reading.ts'

type Frame = (p: Pool) => Found | undefined

interface Rule {
  name: FrameName
  frame: Frame
  /** One of these senses or categories (`cat:`) must be in the clause; a cheap gate before the frame itself. */
  needs: string[]
  /** What a clause without its own verb may lean on, after a clause of this frame. */
  ghost?: string
}

/** The frames, in the order that breaks a tie. */
export const FRAMES: Rule[] = [
  { name: 'pile', frame: pile, needs: ['v:new'] },
  { name: 'box', frame: box, needs: ['v:hold'] },
  { name: 'spoil', frame: spoil, needs: ['v:pitch', 'thing:spoiled'], ghost: 'v:pitch' },
  { name: 'shift', frame: shift, needs: ['v:push', 'b:push', 'v:put'] },
  { name: 'ration', frame: ration, needs: ['v:milk', 'cat:per', 'cat:group'] },
  { name: 'harvest', frame: harvest, needs: ['harv:expect', 'acre', 'approx'] },
  { name: 'patch', frame: patch, needs: ['v:patch', 'b:patch'], ghost: 'v:patch' },
  { name: 'damage', frame: damage, needs: ['cat:what', 'cat:animal', 'v:break', 'v:lift'], ghost: 'what:hole' },
  { name: 'cover', frame: cover, needs: ['v:cover', 'v:uncover', 'v:roll', 'cat:mat'] },
  { name: 'pack', frame: pack, needs: ['v:pack'] },
  { name: 'test', frame: test, needs: ['cat:dm', 'v:test'], ghost: 'v:test' },
  { name: 'face', frame: face, needs: ['thing:face', 'thing:left', 'thing:at'] },
  { name: 'size', frame: size, needs: ['cat:dim', 'v:measure', 'sides'] },
  {
    name: 'load',
    frame: load,
    needs: ['v:put', 'b:put', 'unit:load', 'cat:crop', 'load', 'bucket', 'more', 'v:weigh', 'total', 'lb', 'ton', 'tonne'],
    ghost: 'v:put',
  },
  {
    name: 'feed',
    frame: feed,
    needs: ['v:feed', 'to:cows', 'v:take', 'b:feed', 'b:take', 'batch', 'off', 'cat:group', 'unit:head'],
    ghost: 'v:feed',
  },
  { name: 'open', frame: open, needs: ['v:open', 'b:open', 'v:uncover'] },
  { name: 'empty', frame: empty, needs: ['thing:gone'] },
  { name: 'check', frame: check, needs: ['v:check', 'b:check', 'find:good', 'find:trouble'], ghost: 'v:check' },
  { name: 'supply', frame: supply, needs: ['v:buy', 'v:have', 'v:use', 'thing:out'], ghost: 'v:have' },
  { name: 'weather', frame: weather, needs: ['cat:sky', 'degF'] },
]

/** For each item, a bit for each rule whose gate it opens, and for each that could lean on the verb it carries. */
interface Gates {
  open: Int32Array
  own: Int32Array
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

const gates = (items: Item[]): Gates => {
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
  return { open, own }
}

const START = ['v:', 'b:', 'sky:', 'stone:', 'fix:make']

/** Positions where a new clause may begin, with what a cut there costs. */
const cuts = (items: Item[]): Map<number, number> => {
  const at = new Map<number, number>()
  for (let k = 1; k < items.length; k++) {
    const i = items[k]!
    const prev = items[k - 1]!
    // "3rd cut" stays whole, and with the crop before it
    if (has(i, 'cutword') && hasCat(prev, 'say')) continue
    if (has(i, 'so') || has(i, 'but')) at.set(k, 0.1)
    else if (has(prev, 'comma')) at.set(k, 0.2)
    else if (has(prev, 'and')) at.set(k, has(items[k - 2], 'comma') ? 0.2 : 0.4)
    else if (
      i.senses.some(s => START.some(p => s.startsWith(p))) ||
      i.date ||
      (i.num !== undefined && i.unit !== undefined) ||
      // "6 corn 2 hay"
      (i.num !== undefined && hasCat(prev, 'crop') && hasCat(items[k + 1], 'crop')) ||
      // "on north dry matter was 40"
      (hasCat(i, 'dm') && items[k - 1]?.num === undefined && !has(prev, 'off')) ||
      hasCat(i, 'animal') ||
      hasCat(i, 'what') ||
      // "off spring": a pile behind its little word belongs to what went before
      (hasCat(i, 'pile') && !(has(prev, 'off') && !hasCat(prev, 'v')) && !has(prev, 'on')) ||
      has(i, 'thing:face') ||
      i.sides ||
      hasCat(i, 'mat') ||
      (hasCat(i, 'crop') && items[k - 1]?.num === undefined)
    ) {
      // moods and articles go with what follows them
      let b = k
      while (
        b > 1 &&
        items[b - 1]!.senses.every(s => s === 'filler' || s.startsWith('m:') || s === 'approx' || s === 'q:yesno') &&
        items[b - 1]!.senses.length > 0 &&
        items[b - 1]!.num === undefined
      )
        b--
      if (!at.has(b)) at.set(b, 0.9)
      if (b !== k && !at.has(k)) at.set(k, 1.4)
    }
  }
  return at
}

export interface Segment {
  from: number
  to: number
  act?: Act
  several?: Record<string, unknown>[]
  order?: boolean
  morePiles?: string[]
}

const GHOST = (sense: string): Item => ({ from: -1, to: -1, senses: [sense], text: '', tokens: [], ghost: true })

const best = (items: Item[], g: Gates, from: number, to: number, before: FrameName | undefined): { score: number; seg: Segment } => {
  const run = items.slice(from, to)
  let left = 0
  let opened = 0
  let verbs = 0
  for (let k = from; k < to; k++) {
    left += weightOf(items[k]!)
    opened |= g.open[k]!
    verbs |= g.own[k]!
  }
  let score = -1.2 * left - 0.2
  let seg: Segment = { from, to }
  for (let r = 0; r < FRAMES.length; r++) {
    const rule = FRAMES[r]!
    const open = (opened & (1 << r)) !== 0
    const lean = before === rule.name && !!rule.ghost && (verbs & (1 << r)) === 0
    if (!open && !lean) continue
    for (const ghost of lean ? (open ? BOTH : LEANING) : PLAIN) {
      const pool = new Pool(ghost ? [GHOST(rule.ghost!), ...run] : run)
      const found = rule.frame(pool)
      if (!found) continue
      if (
        ghost &&
        (rule.name === 'load' || rule.name === 'feed') &&
        found.slots.count === undefined &&
        found.slots.lb === undefined &&
        found.slots.ft === undefined
      )
        continue
      // an amount on two piles is a question, not two amounts
      if (found.morePiles && !['patch', 'check', 'damage', 'cover', 'open', 'empty'].includes(rule.name)) continue
      // one deed has one day
      let days = 0
      let date: Item | undefined
      for (let d = pool.find(i => i.date !== undefined); d >= 0; d = pool.find(i => i.date !== undefined)) {
        const i = pool.take(d)!
        // "next year around aug 12": the day says it all
        if (/\b(?:year|ano|año)\b/i.test(i.text) && pool.find(x => x.date !== undefined) >= 0) continue
        if (i.date!.explicit && date?.date?.explicit && i.date!.past !== date.date.past) days++
        if (!date || (date.date!.explicit === false && i.date!.explicit)) date = i
      }
      pool.takeCat('person')
      const s = pool.score()
      const total =
        s.used - 2 * s.left + (found.bias ?? 0) + (found.full ? 0.5 : -1) - 0.8 - (ghost ? 0.7 : 0) - (found.strange ? 1 : 0) - 3 * days
      if (total > score) {
        score = total
        seg = {
          from,
          to,
          several: found.several,
          order: found.order,
          morePiles: found.morePiles,
          act: {
            frame: rule.name,
            mood: 'fact',
            slots: found.slots,
            date: date?.date,
            leans: ghost || undefined,
            vague: found.vague,
            strange: found.strange,
            slip: found.slip,
            total: found.total,
            more: found.more,
            wet: found.wet,
            used: s.used,
            left: s.left,
            leftWords: s.words,
            leftNumbers: s.numbers,
            full: found.full,
          },
        }
      }
    }
  }
  return { score, seg }
}

const PLAIN = [false]
const LEANING = [true]
const BOTH = [false, true]

const MAX_CUTS = 14
const MAX_SPAN = 10

/** Cuts a sentence into clauses so that together they explain as much as they can. */
export const clauses = (items: Item[], last?: FrameName): Segment[] => {
  if (!items.length) return []
  const where = cuts(items)
  const g = gates(items)
  let marks = [...where.keys()].sort((a, b) => a - b)
  // a very long sentence keeps only its cheapest cuts
  if (marks.length > MAX_CUTS) marks = marks.filter(m => where.get(m)! < 0.9).slice(0, MAX_CUTS * 2)
  // a crowded sentence is a list: its clauses are short
  const span = marks.length > MAX_CUTS ? 5 : MAX_SPAN
  const points = [0, ...marks, items.length]
  const walls = !items.some(x => x.date?.ahead)
    ? []
    : items.flatMap((x, k) => {
        if (!x.date?.ahead) return []
        const c = items.findLastIndex((y, j) => j < k && (has(y, 'and') || has(y, 'comma')))
        const told = c > 0 && items.slice(0, c).some(y => hasCat(y, 'v'))
        return told && where.has(c + 1) ? [c + 1] : []
      })
  const f: { score: number; prev: number; seg?: Segment; frame?: FrameName }[] = [{ score: 0, prev: -1, frame: last }]
  for (let j = 1; j < points.length; j++) {
    let top: (typeof f)[number] = { score: Number.NEGATIVE_INFINITY, prev: 0 }
    for (let i = Math.max(0, j - span); i < j; i++) {
      const a = f[i]!
      // what is told and what is planned for a day to come are two clauses
      if (walls.length && walls.some(w => w > points[i]! && w < points[j]!)) continue
      const cut = i === 0 ? 0 : where.get(points[i]!)!
      const b = best(items, g, points[i]!, points[j]!, a.frame)
      const score = a.score + b.score - cut
      if (score > top.score)
        top = { score, prev: i, seg: b.seg, frame: b.seg.act?.frame ?? (isEmpty(items, points[i]!, points[j]!) ? a.frame : undefined) }
    }
    f.push(top)
  }
  const out: Segment[] = []
  for (let j = points.length - 1; j > 0; j = f[j]!.prev) out.unshift(f[j]!.seg!)
  return out
}

const isEmpty = (items: Item[], from: number, to: number): boolean => items.slice(from, to).every(i => isThin(i) || has(i, 'and'))
