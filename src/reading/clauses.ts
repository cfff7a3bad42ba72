import { FRAMES } from './frames/rules.ts'
import { type Gates, gates } from './gates.ts'
import { has, hasCat, type Item, isVerb } from './item.ts'
import { isThin, Pool, weightOf } from './pool.ts'
import { make } from './quantity.ts'
import type { Act, FrameName } from './reading.ts'

const START = ['v:', 'b:', 'sky:', 'stone:', 'fix:make']

/** Positions where a new clause may begin, with what a cut there costs. */
const cuts = (items: Item[]): Map<number, number> => {
  const at = new Map<number, number>()
  // "sat fed 10k sun 11k": days lead; else a day ends what was told before it
  const lead = items.findIndex(i => i.date !== undefined || i.num !== undefined || isVerb(i))
  const ends = lead >= 0 && items[lead]!.date === undefined
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
      (i.date && !(ends && has(items[k + 1], 'and'))) ||
      // "rain since yesterday no damage"
      (hasCat(i, 'find') && prev.date) ||
      (i.num !== undefined && i.unit !== undefined) ||
      // "11k yesterday 10.6k today"
      (i.num !== undefined && i.num >= 1000 && prev.date !== undefined) ||
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
      if (!at.has(b)) at.set(b, i.date && ends ? 1.2 : 0.9)
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

/** The verb that a clause may lean on, as an item; one for each sense. */
const GHOSTS = new Map<string, Item>(FRAMES.flatMap(r => (r.ghost ? [[r.ghost, { ...make([], -1, -1, [r.ghost]), ghost: true }]] : [])))

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
  // "fed 10k, gonna do 2 more": told before the comma, planned behind it
  const turns =
    g.turn > from + 1 && g.turn < to && items.slice(from, g.turn).some(isVerb) && items.slice(g.turn, to).some(i => i.num !== undefined)
      ? 1
      : 0
  let seg: Segment = { from, to }
  for (let r = 0; r < FRAMES.length; r++) {
    const rule = FRAMES[r]!
    const open = (opened & (1 << r)) !== 0
    const lean = before === rule.name && !!rule.ghost && (verbs & (1 << r)) === 0
    if (!open && !lean) continue
    for (const ghost of lean ? (open ? BOTH : LEANING) : PLAIN) {
      const pool = new Pool(ghost ? [GHOSTS.get(rule.ghost!)!, ...run] : run)
      const found = rule.frame(pool)
      if (!found) continue
      // "and 3 in barn" leans on the holes before; a length does not
      if (ghost && (rule.name === 'damage' || rule.name === 'patch') && found.slots.count === undefined) continue
      // "that's the last | three loads"
      if (rule.name === 'empty' && found.slots.pile === undefined && items[to]?.num !== undefined) continue
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
        if (date?.date && i.date!.past !== date.date.past) days++
        if (!date || (date.date!.explicit === false && i.date!.explicit)) date = i
      }
      pool.takeCat('person')
      const s = pool.score()
      const total =
        s.used -
        2 * s.left +
        (found.bias ?? 0) +
        (found.full ? 0.5 : -1) -
        0.8 -
        (ghost ? 0.7 : 0) -
        (found.strange ? 1 : 0) -
        3 * days -
        3 * turns
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
            tape: found.tape,
            implied: found.implied,
            used: s.used,
            left: s.left,
            leftWords: pool.leftWords(),
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
