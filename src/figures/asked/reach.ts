import type { Answer, Ask } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { addDays } from '../../units/calendar.ts'
import { dayIn } from '../farm/horizon.ts'
import { headOf } from '../farm/need.ts'
import type { Now } from '../farm/now.ts'
import { daysUntil, nextHarvest, reachOf } from '../farm/reach.ts'
import { Z80 } from './left.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

/**
 * Whether the feed reaches the next harvest, or a day that is named: what is there against what is used, short or to spare, and
 * what would close the gap. What-ifs (more cows, another ration, a late harvest, feed bought or sold) change the question only.
 */
export const reach = (book: Book, ask: Ask, now: Now, only?: PileState): Answer | Refusal => {
  const { group, lbPerDay, lbPerHead, addLb, delayDays, headMore, together } = ask
  const headNow = headOf(book, now.day, group)
  if (headMore !== undefined && headNow === undefined) return refuse('no-head-known', { group })
  const head = headMore !== undefined ? Math.max(0, headNow! + headMore) : ask.head
  const perHead = lbPerHead !== undefined && (head ?? headNow)
  if (lbPerHead !== undefined && !perHead) return refuse('no-head-known', { group })
  const day = lbPerDay ?? (perHead ? lbPerHead! * perHead : undefined)
  if (head !== undefined && day === undefined && headNow === undefined) return refuse('no-head-known', { group })
  const r = reachOf(
    book,
    now,
    only,
    {
      ...(head !== undefined && { head }),
      ...(group && { group }),
      ...(day !== undefined && { lbPerDay: day }),
      ...(headNow !== undefined && { headNow }),
    },
    addLb,
    together,
  )
  if (!r) return refuse('no-ration-known', only ? { pile: only.name } : {})
  const days = r.dayDry > 0 ? r.haveDry / r.dayDry : 0
  const runsOut = dayIn(now.day, days)
  const harvest = ask.until ? undefined : nextHarvest(book, now.day, ask.crop)
  const end = ask.until ?? harvest?.on
  const whatIf = slots({ head, group, lbPerDay: day, addLb, delayDays, together: together && r.legs.slice(0, 2).map(l => l.pile) })
  const how = [told('how-have', { lbDry: r.haveDry, piles: r.legs.map(l => l.pile) }), told('how-day', { lb: r.dayAsFed, lbDry: r.dayDry })]
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
      how,
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
    ranOutOn: short ? runsOut : undefined,
    runsOut,
    spareDays: days - ahead,
    spareLow: spareLbDry - Z80 * sd,
    spareHigh: spareLbDry + Z80 * sd,
    lbDayAsFed: r.dayAsFed,
    lbDry: r.haveDry,
    crop: harvest?.crop,
    cut: harvest?.cut,
    piles: r.legs,
    gap: short
      ? slots({
          lbDayAsFed: (r.dayAsFed * fits) / r.dayDry,
          head: headNow !== undefined ? Math.floor(((head ?? headNow) * fits) / r.dayDry) : undefined,
          lbAsFed: (-spareLbDry * 100) / r.dmPct,
        })
      : undefined,
    whatIf,
    how: [...how, told('how-until', { until, days: ahead })],
    notes: [],
  })
}
