import { type Book, pileState, setting } from '../book/book.ts'
import type { PileState, Told } from '../book/pile.ts'
import { addDays, type Day, daysBetween } from '../units/calendar.ts'
import type { Moment } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'
import { isType, recent } from './recent.ts'

/** Fermentation is mostly done in three weeks (extension pages of several states); two months are better (Thomas), days. */
export const WAIT_DAYS = 21

const SHEETS = ['plastic', 'second plastic', 'barrier film', 'tarp']

/** The day on which the cover was last closed before `by`, and how many days it was to wait. A pile re-opened to add a crop waits anew from its new sealing. */
export const sealedBefore = (p: PileState, by: Day): Day | undefined =>
  p.covers.findLast(t => t.event.change === 'on' && SHEETS.includes(t.event.material) && t.event.on <= by)?.event.on

export interface Early {
  pile: string
  sealedOn: Day
  readyOn: Day
  /** Days too soon. */
  days: number
}

/** A pile opened to feed before its time; undefined where it was not, or no sealing is known. */
export const openedEarly = (book: Book, t: Told, figures: WatchFigures): Early | undefined => {
  const feeding = (isType(t, 'open') && t.event.why === 'feed') || isType(t, 'feed')
  const p = feeding ? pileState(book, (t as Told<'feed'>).event.pile) : undefined
  if (!p || p.openedOn !== t.event.on) return undefined
  const sealedOn = sealedBefore(p, t.event.on)
  if (!sealedOn) return undefined
  const readyOn = figures.readyOn?.(p.name) ?? addDays(sealedOn, setting(book, 'waitDays', WAIT_DAYS))
  const days = daysBetween(t.event.on, readyOn)
  return days > 0 ? { pile: p.name, sealedOn, readyOn, days } : undefined
}

/** Said once for one opening, with the date from which it is better. */
export const earlyDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] =>
  recent(book, m).flatMap(t => {
    const early = openedEarly(book, t, figures)
    if (!early) return []
    const key = `early:${early.pile}:${early.sealedOn}`
    return book.said.has(key) ? [] : [{ key, at: t.at, to: 'crew', message: { code: 'early-open', data: { ...early } } }]
  })
