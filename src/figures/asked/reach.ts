import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, piles } from '../../book/book.ts'
import { hasFeed, type PileState } from '../../book/pile.ts'
import { addDays } from '../../units/calendar.ts'
import { dayIn } from '../farm/horizon.ts'
import { cropsIn, headOf } from '../farm/need.ts'
import type { Now } from '../farm/now.ts'
import { daysUntil, nextHarvest, reachOf } from '../farm/reach.ts'
import { howReach } from './howReach.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'
import { Z80 } from './z80.ts'

/** No herd is fed so much less, or so much more, that the day's use leaves these, shares of it. */
const USE_BOUNDS = [0.02, 50] as const

/**
 * Whether the feed reaches the next harvest, or a day that is named: what is there against what is used, short or to spare, and
 * what would close the gap. What-ifs (more cows, another ration, a late harvest, feed bought or sold) change the question only.
 */
export const reach = (book: Book, ask: Ask, now: Now, named?: PileState): Answer | Refusal => {
  const { group, lbPerDay, lbPerHead, addLb, delayDays, headMore, perHeadMore, perDayMore, pctMore, together } = ask
  const fed = lbPerDay !== undefined || lbPerHead !== undefined
  // Feed that is sold off a pile, or fed otherwise, is a question about the farm all the same.
  const only = addLb === undefined ? named : undefined
  const headNow = headOf(book, now.day, group)
  const needsHead = headMore !== undefined || lbPerHead !== undefined || perHeadMore !== undefined
  const head = headMore !== undefined && headNow !== undefined ? Math.max(0, headNow + headMore) : ask.head
  if ((needsHead || (head !== undefined && !fed)) && (head ?? headNow) === undefined) return refuse('no-head-known', { group })
  if (headMore !== undefined && headNow === undefined) return refuse('no-head-known', { group })
  if (head !== undefined && headNow === undefined && lbPerDay === undefined && lbPerHead === undefined)
    return refuse('no-head-known', { group })
  // A crop said beside a ration is what the ration is of; else it is the harvest that is waited for.
  const feed = fed ? ask.crop : undefined
  if (feed !== undefined && !piles(book).some(p => hasFeed(p) && cropsIn(p).includes(feed))) return refuse('no-such-feed', { crop: feed })
  const waitedFor = fed || perHeadMore !== undefined || perDayMore !== undefined || addLb !== undefined ? undefined : ask.crop
  const perHead = lbPerHead !== undefined ? lbPerHead * (head ?? headNow ?? 0) : undefined
  const changed = {
    ...(head !== undefined && { head }),
    ...(group && { group }),
    ...(feed !== undefined ? { crop: feed, ...(lbPerDay !== undefined ? { lbPerDay } : { lbPerHead }) } : {}),
    ...(feed === undefined && (lbPerDay ?? perHead) !== undefined && { lbPerDay: lbPerDay ?? perHead }),
    ...(headNow !== undefined && { headNow }),
  }
  const run = (whatIf: typeof changed) => reachOf(book, now, only, whatIf, { addLb, together, from: named?.name })
  const plain = run(changed)
  if (!plain) return refuse('no-ration-known', only ? { pile: only.name } : {})
  const more = (perHeadMore ?? 0) * (head ?? headNow ?? 0) + (perDayMore ?? 0) + (plain.dayAsFed * (pctMore ?? 0)) / 100
  const day = plain.dayAsFed + more
  const r =
    more === 0
      ? plain
      : run({
          ...changed,
          crop: undefined,
          lbPerHead: undefined,
          lbPerDay: Math.min(USE_BOUNDS[1] * plain.dayAsFed, Math.max(USE_BOUNDS[0] * plain.dayAsFed, day)),
        })!
  const days = r.dayDry > 0 ? r.haveDry / r.dayDry : 0
  const runsOut = dayIn(now.day, days)
  const harvest = ask.until ? undefined : nextHarvest(book, now.day, waitedFor)
  const end = ask.until ?? harvest?.on
  const asFed = (lbDry: number): number => (r.dmPct > 0 ? (lbDry * 100) / r.dmPct : 0)
  const whatIf = slots({
    head,
    group,
    feed,
    lbPerDay,
    lbPerHead,
    perHeadMore,
    perDayMore,
    pctMore,
    addLb,
    delayDays,
    together: together && r.legs.slice(0, 2).map(l => l.pile),
  })
  // Without a day to reach the days themselves are the answer.
  if (!end)
    return slots({
      about: 'reach' as const,
      ...(only && { pile: only.name }),
      days,
      runsOut,
      lbDayAsFed: r.dayAsFed,
      lbDry: r.haveDry,
      piles: r.legs,
      whatIf,
      how: howReach(book, now, r),
      notes: [told('note-no-harvest')],
    })
  const until = delayDays ? addDays(end, delayDays) : end
  const ahead = daysUntil(now, until)
  const spareLbDry = r.haveDry - r.dayDry * ahead
  const sd = Math.hypot(r.haveSd, r.dayDry * ahead * r.daySd)
  const short = spareLbDry < 0
  const fits = ahead > 0 ? r.haveDry / ahead : r.haveDry
  return slots({
    about: 'reach' as const,
    ...(only && { pile: only.name }),
    until,
    days,
    spareLbDry,
    spareLbAsFed: asFed(spareLbDry),
    ranOutOn: short ? runsOut : undefined,
    runsOut,
    spareDays: days - ahead,
    spareLow: spareLbDry - Z80 * sd,
    spareHigh: spareLbDry + Z80 * sd,
    spareDaysLow: r.dayDry > 0 ? days - ahead - (Z80 * sd) / r.dayDry : undefined,
    spareDaysHigh: r.dayDry > 0 ? days - ahead + (Z80 * sd) / r.dayDry : undefined,
    lbDayAsFed: r.dayAsFed,
    lbDry: r.haveDry,
    crop: harvest?.crop,
    cut: harvest?.cut,
    piles: r.legs,
    gap: short
      ? slots({
          lbDayAsFed: (r.dayAsFed * fits) / r.dayDry,
          head: headNow !== undefined ? Math.floor(((head ?? headNow) * fits) / r.dayDry) : undefined,
          lbAsFed: asFed(-spareLbDry),
        })
      : undefined,
    whatIf,
    how: howReach(book, now, r, { until, ahead, sd }),
    notes: [],
  })
}
