import { cuts } from './cuts.ts'
import { NO_HARM } from './frames/check.ts'
import { FRAMES, type Rule } from './frames/rules.ts'
import type { Found } from './frames/slots.ts'
import { type Gates, gates } from './gates.ts'
import { has, hasCat, type Item, isVerb } from './item.ts'
import { isThin, Pool, weightOf } from './pool.ts'
import { make } from './quantity.ts'
import type { Act, FrameName } from './reading.ts'

export interface Segment {
  from: number
  to: number
  act?: Act
  several?: Record<string, unknown>[]
  order?: boolean
  morePiles?: string[]
}

/** The verb that a clause may lean on, as an item; one for each sense. */
const GHOSTS = new Map<string, Item>(
  FRAMES.flatMap(r => (r.ghost ? [[r.ghost, Object.assign(make([], -1, -1, [r.ghost]), { ghost: true })]] : [])),
)

/** The rules that may lean on a clause of their own before them, a bit each by the frame's name. */
const LEANS_ON = new Map(FRAMES.flatMap((r, k) => (r.ghost ? [[r.name, 1 << k]] : [])))

/** The rules that lean only where something is counted or measured, a bit each. */
const COUNTED = FRAMES.reduce((bits, r, k) => (r.leans ? bits | (1 << k) : bits), 0)

/** A run of items as one rule explains it. */
interface Candidate {
  from: number
  to: number
  rule?: Rule
  found?: Found
  pool?: Pool
  date?: Item
  leans?: boolean
}

/** The days that a frame left over, taken: which one is meant, and how many contradict it. */
const takeDays = (pool: Pool): { date?: Item; others: number } => {
  let others = 0
  let date: Item | undefined
  for (let d = pool.find(isDated); d >= 0; d = pool.find(isDated)) {
    const i = pool.take(d)!
    // "next year around aug 12", "next spring about may 20": the day says it all
    if (/\b(?:year|spring|summer|fall|ano|año|primavera|verano)\b/i.test(i.text) && pool.find(isDated) >= 0) continue
    if (date?.date && i.date!.past !== date.date.past) others++
    if (!date || (date.date!.explicit === false && i.date!.explicit)) date = i
  }
  return { date, others }
}
const isDated = (i: Item): boolean => i.date !== undefined

/** An amount on two of these piles is two deeds; on others it is a question. */
const ON_SEVERAL = new Set<FrameName>(['patch', 'check', 'damage', 'cover', 'open', 'empty'])

/** True where what a frame found is none: it leans on a clause before without an amount, or is told on several piles at once. */
const isNone = (rule: Rule, found: Found, ghost: boolean, next: Item | undefined, second: Item | undefined): boolean => {
  if (rule.name === 'empty') {
    // "that's the last | three loads"
    if (found.slots.pile === undefined && next?.num !== undefined) return true
    // "one on shop, used up the tape"
    if (hasCat(has(next, 'filler') ? second : next, 'item')) return true
  }
  if (found.morePiles && !ON_SEVERAL.has(rule.name)) return true
  return ghost && rule.leans !== undefined && !rule.leans(found)
}

/** What it costs to read over a "but" with a pile before it and a deed behind it as one clause; more where the first is denied. */
const butIn = (items: Item[], from: number, to: number): number => {
  let pile = false
  let denied = false
  let at = -1
  for (let k = from; k < to; k++) {
    const i = items[k]!
    if (at < 0 && has(i, 'but') && pile) at = k
    else if (at >= 0 && isVerb(i)) return denied ? 8 : 3
    else if (hasCat(i, 'pile')) pile = true
    else if (at < 0 && has(i, 'm:no')) denied = true
  }
  return 0
}

const best = (items: Item[], g: Gates, from: number, to: number, before: FrameName | undefined): { score: number; made: Candidate } => {
  const run = items.slice(from, to)
  let left = 0
  let opened = 0
  let verbs = 0
  let counts = false
  for (let k = from; k < to; k++) {
    if (items[k]!.num !== undefined || items[k]!.sides) counts = true
    left += weightOf(items[k]!)
    opened |= g.open[k]!
    verbs |= g.own[k]!
  }
  let score = -1.2 * left - 0.2
  // "fed 10k, gonna do 2 more": told before the comma, planned behind it
  const turns =
    g.turn > from + 1 && g.turn < to && items.slice(from, g.turn).some(isVerb) && items.slice(g.turn, to).some(i => i.num !== undefined)
      ? 1
      : g.back > from && g.back < to - 1
        ? 1
        : 0
  // "didn't get to barn but I patched 2 holes on shop": another matter behind the "but"
  const but = butIn(items, from, to)
  let made: Candidate = { from, to }
  const leaning = (before === undefined ? 0 : (LEANS_ON.get(before) ?? 0)) & ~verbs & (counts ? -1 : ~COUNTED)
  for (let bits = opened | leaning; bits !== 0; bits &= bits - 1) {
    const bit = bits & -bits
    const rule = FRAMES[31 - Math.clz32(bit)]!
    for (const ghost of (leaning & bit) !== 0 ? ((opened & bit) !== 0 ? BOTH : LEANING) : PLAIN) {
      const pool = new Pool(ghost ? [GHOSTS.get(rule.ghost!)!, ...run] : run)
      const found = rule.frame(pool)
      if (!found || isNone(rule, found, ghost, items[to], items[to + 1])) continue
      // "4 truckloads of corn, each one brought 14,200": of each of them
      if (found.weighed && items.slice(0, from).some(i => has(i, 'each'))) continue
      // one deed has one day
      const { date, others } = takeDays(pool)
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
        3 * others -
        3 * turns -
        (found.noUnit && found.more && found.slots.crop === undefined && before !== undefined && before !== 'load' ? 2 : 0) -
        but
      if (total > score) {
        score = total
        made = { from, to, rule, found, pool, date, leans: ghost || undefined }
      }
    }
  }
  return { score, made }
}

const segmentOf = ({ from, to, rule, found, pool, date, leans }: Candidate): Segment => {
  if (!rule || !found || !pool) return { from, to }
  const { slots, several, order, morePiles, vague, strange, slip, total, more, wet, tape, there, implied, noVerb, noUnit, weighed, full } =
    found
  const { used, left, numbers } = pool.score()
  return {
    from,
    to,
    several,
    order,
    morePiles,
    act: {
      frame: rule.name,
      mood: 'fact',
      slots,
      date: date?.date,
      leans,
      vague,
      strange,
      slip,
      total,
      more,
      wet,
      tape,
      there,
      implied,
      noVerb,
      noUnit,
      weighed,
      used,
      left,
      leftWords: pool.leftWords(),
      leftNumbers: numbers,
      full,
    },
  }
}

/** The frame that the next clause may lean on: "no holes in barn but two in shop" goes on with holes. */
const leadOf = (made: Candidate, items: Item[]): FrameName | undefined =>
  made.rule?.name === 'check' && items.slice(made.from, made.to).some(i => has(i, 'find:good') && NO_HARM.test(i.text))
    ? 'damage'
    : made.rule?.name

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
        const before = items.slice(0, Math.max(c, 0))
        // "y 130 llantas, mañana el resto"
        const rest = before.some(y => y.num !== undefined) && items.slice(k + 1).some(y => has(y, 'thing:first'))
        const told = c > 0 && (before.some(y => hasCat(y, 'v')) || rest)
        return told && where.has(c + 1) ? [c + 1] : []
      })
  const f: { score: number; prev: number; made?: Candidate; frame?: FrameName }[] = [{ score: 0, prev: -1, frame: last }]
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
        top = {
          score,
          prev: i,
          made: b.made,
          frame: leadOf(b.made, items) ?? (isEmpty(items, points[i]!, points[j]!) ? a.frame : undefined),
        }
    }
    f.push(top)
  }
  const out: Segment[] = []
  for (let j = points.length - 1; j > 0; j = f[j]!.prev) out.unshift(segmentOf(f[j]!.made!))
  return out
}

const isEmpty = (items: Item[], from: number, to: number): boolean => items.slice(from, to).every(i => isThin(i) || has(i, 'and'))
