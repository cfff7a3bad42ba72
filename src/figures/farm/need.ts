import { type Book, eventsOf, piles } from '../../book/book.ts'
import type { EventOf } from '../../book/events.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import type { Day } from '../../units/calendar.ts'
import type { Lb, Pct } from '../../units/measure.ts'
import { herdForageDry } from './herd.ts'

type Ration = EventOf<'ration'>

/** Where a daily need comes from, the surest first. */
export type NeedFrom = 'pile' | 'crop' | 'herd' | 'intake'

export interface Need {
  /** What the cows are to get from this pile a day, lb as fed. */
  lbDay: Lb
  from: NeedFrom
  /** The day it was said. */
  on: Day
  head?: number
  /** Piles that share one ration. */
  sharedBy: number
}

/** A question's "what if": numbers that take the place of what the book says from today on. Nothing of it is recorded. */
export interface WhatIf {
  head?: number
  group?: string
  /** The feed that `lbPerDay` and `lbPerHead` are of; the whole ration where left out. */
  crop?: string
  lbPerDay?: Lb
  lbPerHead?: Lb
}

/** The group meant where none is named. */
const MAIN_GROUP = 'milking'
const groupOf = (r: { group?: string }): string => r.group ?? MAIN_GROUP

interface Said {
  r: Ration
  /** Head of its group when it was said. */
  headThen?: number
}

/** What the rations add up to on one day: the latest of each kind, and the head of each group. */
interface InForce {
  heads: Map<string, number>
  headsOn: Map<string, Day>
  piles: Map<string, Map<string, Said>>
  crops: Map<string, Map<string, Said>>
  herd: Map<string, Said>
}

const put = (map: Map<string, Map<string, Said>>, key: string, said: Said): void => {
  const groups = map.get(key) ?? new Map<string, Said>()
  map.set(key, groups)
  // A whole day's figure takes the place of every figure by group, and the other way round.
  if (said.r.lbPerDay !== undefined) groups.clear()
  else for (const [g, s] of groups) if (s.r.lbPerDay !== undefined) groups.delete(g)
  groups.set(groupOf(said.r), said)
}

export const rationsOf = (book: Book): Ration[] => eventsOf(book, 'ration').map(t => t.event)

const inForce = (rations: Ration[], day: Day): InForce => {
  const f: InForce = { heads: new Map(), headsOn: new Map(), piles: new Map(), crops: new Map(), herd: new Map() }
  for (const r of rations) {
    if (r.on > day) break
    if (r.head !== undefined) {
      f.heads.set(groupOf(r), r.head)
      f.headsOn.set(groupOf(r), r.on)
    }
    if (r.lbPerDay === undefined && r.lbPerHead === undefined) continue
    const said: Said = { r, headThen: f.heads.get(groupOf(r)) }
    if (r.pile) put(f.piles, r.pile, said)
    else if (r.crop) put(f.crops, r.crop, said)
    else {
      const one = new Map([['', f.herd]])
      put(one, '', said)
    }
  }
  return f
}

/** A ration said for a whole day was said for the head of that day: with more head it grows. */
const lbOf = (said: Said, f: InForce, dmPct: Pct): Lb | undefined => {
  const { r, headThen } = said
  const head = f.heads.get(groupOf(r))
  const asFed = r.basis === 'dry' ? 100 / dmPct : 1
  if (r.lbPerDay !== undefined) return r.lbPerDay * asFed * (headThen && head ? head / headThen : 1)
  if (r.lbPerHead !== undefined && head !== undefined) return r.lbPerHead * head * asFed
  return undefined
}

const sum = (groups: Map<string, Said> | undefined, f: InForce, dmPct: Pct): { lb: Lb; on: Day; head?: number } | undefined => {
  let lb = 0
  let on = ''
  let head = 0
  for (const said of groups?.values() ?? []) {
    const one = lbOf(said, f, dmPct)
    if (one === undefined) continue
    lb += one
    if (said.r.on > on) on = said.r.on
    head += f.heads.get(groupOf(said.r)) ?? 0
  }
  return lb > 0 ? { lb, on, ...(head > 0 && { head }) } : undefined
}

/** Crops in a pile, by name. */
export const cropsIn = (p: PileState): string[] => [...new Set(p.loads.map(t => t.event.crop))]

const fedOn = (p: PileState, day: Day): boolean =>
  p.openedOn !== undefined && p.openedOn <= day && (p.emptyOn === undefined || p.emptyOn > day) && (hasFeed(p) || p.feeds.length > 0)

/** Whether a pile has a ration of its own on a day. */
const ownRation = (f: InForce, p: PileState): boolean => (f.piles.get(p.name)?.size ?? 0) > 0

const sharers = (all: PileState[], p: PileState, day: Day, f: InForce, crop?: string): number =>
  Math.max(1, all.filter(q => q === p || (fedOn(q, day) && !ownRation(f, q) && (crop === undefined || cropsIn(q).includes(crop)))).length)

const pileNeed = (f: InForce, all: PileState[], p: PileState, day: Day, dmPct: Pct): Need | undefined => {
  const own = sum(f.piles.get(p.name), f, dmPct)
  const crops = cropsIn(p).flatMap(crop => {
    const s = sum(f.crops.get(crop), f, dmPct)
    const by = sharers(all, p, day, f, crop)
    return s ? [{ ...s, lb: s.lb / by, by }] : []
  })
  const byCrop = crops.length
    ? {
        lb: crops.reduce((t, c) => t + c.lb, 0),
        on: crops
          .map(c => c.on)
          .sort()
          .at(-1)!,
        head: crops[0]!.head,
        by: Math.max(...crops.map(c => c.by)),
      }
    : undefined
  const whole = sum(f.herd, f, dmPct)
  const by = sharers(all, p, day, f)
  const found: Need[] = []
  if (own) found.push({ lbDay: own.lb, from: 'pile', on: own.on, head: own.head, sharedBy: 1 })
  if (byCrop) found.push({ lbDay: byCrop.lb, from: 'crop', on: byCrop.on, head: byCrop.head, sharedBy: byCrop.by })
  if (whole) found.push({ lbDay: whole.lb / by, from: 'herd', on: whole.on, head: whole.head, sharedBy: by })
  // The last said counts; of one day's, the most exact.
  const best = found.reduce<Need | undefined>((a, b) => (a && a.on >= b.on ? a : b), undefined)
  if (best) return best
  const dry = herdForageDry(f.heads)
  if (dry === undefined) return undefined
  return {
    lbDay: (dry * 100) / dmPct / by,
    from: 'intake',
    on: [...f.headsOn.values()].sort().at(-1)!,
    head: [...f.heads.values()].reduce((a, b) => a + b, 0),
    sharedBy: by,
  }
}

const withWhatIf = (rations: Ration[], day: Day, p: PileState | undefined, w: WhatIf): Ration[] => {
  const { head, group, crop, lbPerDay, lbPerHead } = w
  if (head === undefined && lbPerDay === undefined && lbPerHead === undefined) return rations
  const more: Ration = {
    type: 'ration',
    on: day,
    ...(group && { group }),
    ...(head !== undefined && { head }),
    ...(lbPerDay !== undefined && { lbPerDay }),
    ...(lbPerHead !== undefined && { lbPerHead }),
  }
  if (crop !== undefined) more.crop = crop
  else if (p && (lbPerDay !== undefined || lbPerHead !== undefined)) more.pile = p.name
  return [...rations.filter(r => r.on <= day), more]
}

/**
 * What the book says a pile gives a day, on each of some days in order; undefined where no ration and no head is known yet.
 * `dmPct` turns a dry ration into an as-fed one.
 */
export const needsOn = (book: Book, p: PileState, days: readonly Day[], dmPct: Pct): (Need | undefined)[] => {
  const rations = rationsOf(book)
  const all = piles(book)
  const turns = new Set<Day>(rations.map(r => r.on))
  for (const q of all) {
    if (q.openedOn) turns.add(q.openedOn)
    if (q.emptyOn) turns.add(q.emptyOn)
  }
  const sorted = [...turns].sort()
  let at = 0
  let last: Need | undefined
  let known = false
  return days.map(day => {
    let turned = !known
    while (at < sorted.length && sorted[at]! <= day) {
      at++
      turned = true
    }
    if (turned) {
      last = pileNeed(inForce(rations, day), all, p, day, dmPct)
      known = true
    }
    return last
  })
}

/** What a pile is to give on one day. Before its first feeding a need said later counts as well: better late than none. */
export const needOf = (book: Book, p: PileState, day: Day, dmPct: Pct, whatIf: WhatIf = {}): Need | undefined =>
  pileNeed(inForce(withWhatIf(rationsOf(book), day, p, whatIf), day), piles(book), p, day, dmPct)

/** Head of a group as last said; the main group where none is named. */
export const headOf = (book: Book, day: Day, group?: string): number | undefined => {
  const { heads } = inForce(rationsOf(book), day)
  return heads.get(group ?? MAIN_GROUP) ?? (group === undefined && heads.size === 1 ? [...heads.values()][0] : undefined)
}

/**
 * What the herd gets of one crop a day, lb as fed, before anything is split between piles: the crop's own ration, else what the
 * piles of it give, else the herd's.
 */
export const cropNeed = (book: Book, day: Day, crop: string, dmPct: Pct, whatIf: WhatIf = {}): Lb | undefined => {
  const f = inForce(withWhatIf(rationsOf(book), day, undefined, whatIf), day)
  const own = sum(f.crops.get(crop), f, dmPct)
  if (own && whatIf.lbPerHead === undefined) return own.lb
  const whole = sum(f.herd, f, dmPct)
  if (whole && whatIf.lbPerHead !== undefined) return whole.lb
  const of = piles(book).filter(p => cropsIn(p).includes(crop))
  const parts = of.flatMap(p => sum(f.piles.get(p.name), f, dmPct) ?? [])
  // Piles follow one another; the last said is what is fed now.
  const last = parts.reduce<{ lb: Lb; on: Day } | undefined>((a, b) => (a && a.on > b.on ? a : b), undefined)
  if (last) return last.lb
  if (whole) return whole.lb
  const dry = herdForageDry(f.heads)
  return dry === undefined ? undefined : (dry * 100) / dmPct
}
