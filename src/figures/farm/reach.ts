import { type Book, eventsOf, piles } from '../../book/book.ts'
import type { EventOf } from '../../book/events.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import { type Day, daysBetween } from '../../units/calendar.ts'
import type { Lb } from '../../units/measure.ts'
import { type Estimate, estimate } from './estimate.ts'
import { dayIn } from './horizon.ts'
import { needOf, type WhatIf } from './need.ts'
import type { Now } from './now.ts'

/** One pile in the order in which it will be fed. */
export interface Leg {
  pile: string
  lbDry: Lb
  /** Day it is opened; today for one that is open. */
  opens: Day
  runsOut: Day
  days: number
}

export interface Reach {
  /** Everything that is there to be fed, lb dry, and its standard error. */
  haveDry: Lb
  haveSd: Lb
  /** Used a day, lb dry and as fed, over all piles that are open. */
  dayDry: Lb
  dayAsFed: Lb
  /** Error of the use, a share. */
  daySd: number
  legs: Leg[]
  dmPct: number
}

/** What else a question supposes. */
export interface Otherwise {
  /** Feed bought, or sold, lb as fed; sold first out of the pile `from`. */
  addLb?: Lb
  from?: string
  /** Piles fed at once; empty for all that can be. */
  together?: readonly string[]
}

/** The next harvest from a day on, of one crop where one is named. */
export const nextHarvest = (book: Book, day: Day, crop?: string): EventOf<'harvest'> | undefined =>
  eventsOf(book, 'harvest')
    .map(t => t.event)
    .find(e => e.on >= day && (!crop || e.crop === crop))

const factor = (book: Book, p: PileState, e: Estimate, now: Now, whatIf: WhatIf): number => {
  const dm = e.evidence.dmPct
  const before = needOf(book, p, now.day, dm)
  const after = needOf(book, p, now.day, dm, whatIf)
  return before && after && before.lbDay > 0 ? after.lbDay / before.lbDay : 1
}

/**
 * All feed of the farm (or of one pile) against all that is used a day: piles that are open are fed at their own pace, and
 * as one ends the next takes its place. Undefined where no pile holds anything or nothing tells the use.
 */
export const reachOf = (
  book: Book,
  now: Now,
  only: PileState | undefined,
  whatIf: WhatIf & { headNow?: number },
  { addLb = 0, together, from }: Otherwise = {},
): Reach | undefined => {
  const held = (only ? [only] : piles(book)).filter(p => hasFeed(p) || p.stage === 'feeding')
  const all = held.map(p => ({ p, e: estimate(book, p, now) })).filter(({ e }) => e.whole.lb > 0)
  const open = all.filter(({ p, e }) => p.stage === 'feeding' && e.use && (e.days?.mid ?? 0) > 0)
  const usual = open.length ? open : all.filter(({ e }) => e.use).slice(0, 1)
  // Fed at once, each pile gives an equal part of what is used today.
  const named = together?.length
    ? all.filter(({ p }) => together.includes(p.name))
    : together && [...open, ...all.filter(a => !open.includes(a)).sort(oldestFirst)].slice(0, 2)
  const base = named?.length ? named : usual
  if (!all.length || !usual.length) return undefined
  const { head, headNow, lbPerDay } = whatIf
  // A herd's day said in the question is for all piles together; shares stay as they are.
  const asFed = usual.reduce((s, { e }) => s + e.use!.lb, 0)
  const scale = (x: (typeof base)[number]): number => {
    // Of one feed alone: only the piles that hold it are fed otherwise.
    if (whatIf.crop !== undefined) return factor(book, x.p, x.e, now, whatIf)
    if (lbPerDay !== undefined) return lbPerDay / asFed
    if (head !== undefined && headNow) return whatIf.lbPerHead === undefined ? head / headNow : factor(book, x.p, x.e, now, whatIf)
    return factor(book, x.p, x.e, now, whatIf)
  }
  const uses = named?.length
    ? base.map(x => ({ x, lb: usual.reduce((s, u) => s + u.e.use!.lb * scale(u), 0) / base.length, dm: x.e.evidence.dmPct }))
    : base.map(x => ({ x, lb: x.e.use!.lb * scale(x), dm: x.e.evidence.dmPct }))
  const dayAsFed = uses.reduce((s, u) => s + u.lb, 0)
  const dayDry = uses.reduce((s, u) => s + (u.lb * u.dm) / 100, 0)
  const lbAll = all.reduce((s, { e }) => s + e.left.lb, 0)
  const dryAll = all.reduce((s, { e }) => s + (e.left.lb * e.evidence.dmPct) / 100, 0)
  const dmPct = lbAll > 0 ? (100 * dryAll) / lbAll : (100 * dayDry) / dayAsFed
  const haveDry = dryAll + (addLb * dmPct) / 100
  const haveSd = Math.sqrt(all.reduce((s, { e }) => s + ((e.left.sd * e.evidence.dmPct) / 100) ** 2, 0))
  const daySd = Math.sqrt(usual.reduce((s, { e }) => s + e.use!.sd ** 2, 0)) / Math.max(1e-9, asFed)

  const legs: Leg[] = []
  for (const { x, lb, dm } of uses) {
    const lbDry = (x.e.left.lb * dm) / 100
    // a use next to nothing would last past any calendar
    const days = lb > 0 ? Math.min(x.e.left.lb / lb, 100 * 365) : 0
    legs.push({ pile: x.p.name, lbDry, opens: now.day, runsOut: dayIn(now.day, days), days })
  }
  // The next pile takes the place of the first that ends, at its pace.
  const places = legs.map((l, k) => ({ free: l.runsOut, dry: (uses[k]!.lb * uses[k]!.dm) / 100 }))
  const closed = all.filter(a => !base.includes(a)).sort(oldestFirst)
  for (const { p, e } of closed) {
    const lbDry = (e.left.lb * e.evidence.dmPct) / 100
    const place = places.reduce((a, b) => (b.free < a.free ? b : a))
    const days = place.dry > 0 ? Math.min(lbDry / place.dry, 100 * 365) : 0
    const opens = place.free
    place.free = dayIn(opens, days)
    legs.push({ pile: p.name, lbDry, opens, runsOut: place.free, days })
  }
  traded(legs, haveDry - dryAll, now.day, from)
  return { haveDry, haveSd, dayDry, dayAsFed, daySd, legs, dmPct }
}

/** Feed bought lies on the pile that is fed last; feed sold comes off the one named, else off that one, and then off those before it. */
const traded = (legs: Leg[], lbDry: Lb, today: Day, from?: string): void => {
  let rest = lbDry
  const lastFirst = [...legs].sort((a, b) => (a.pile === from ? -1 : b.pile === from ? 1 : a.runsOut < b.runsOut ? 1 : -1))
  for (const leg of lastFirst) {
    if (rest === 0 || !(leg.days > 0)) continue
    const by = Math.max(-leg.lbDry, rest)
    const days = (by * leg.days) / leg.lbDry
    const ended = leg.runsOut
    leg.lbDry += by
    leg.days += days
    leg.runsOut = dayIn(leg.opens, leg.days)
    // What was opened as that one ended is opened sooner, or later.
    for (const next of legs)
      if (next !== leg && next.opens >= ended && next.opens > today) {
        next.opens = dayIn(today, Math.max(0, daysBetween(today, next.opens) + days))
        next.runsOut = dayIn(next.opens, next.days)
      }
    rest -= by
  }
}

/** Old feed before new. */
const oldestFirst = (a: { p: PileState }, b: { p: PileState }): number => ((a.p.sealedOn ?? '9') < (b.p.sealedOn ?? '9') ? -1 : 1)

export const daysUntil = (now: Now, until: Day): number => Math.max(0, daysBetween(now.day, until))
