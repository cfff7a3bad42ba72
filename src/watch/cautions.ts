import { type Book, pileState } from '../book/book.ts'
import type { Told } from '../book/pile.ts'
import type { Datum } from '../book/questions.ts'
import { addDays, monthOf } from '../units/calendar.ts'
import type { Moment } from './hours.ts'
import type { DueItem } from './item.ts'
import { namedOn } from './named.ts'
import { isType, recent, seasonOf } from './recent.ts'

/** Never closer to the face than three times its height: Bolsen & Bolsen, silage safety papers of the 2000s. */
export const STAND_OFF = 3
/** Silo gas: danger for up to three weeks from filling (Penn State, Michigan State and NASD safety pages), days. */
export const GAS_DAYS = 21

interface Caution {
  code: string
  data: Record<string, Datum>
  /** What it is said once for, within a season. */
  of: string
}

const SHEETS = ['plastic', 'second plastic', 'barrier film', 'tarp', 'mesh']
const ICE_MONTHS = [11, 12, 1, 2, 3]

/** The cautions that one event calls for. */
const cautionsOf = (book: Book, t: Told): Caution[] => {
  if (isType(t, 'load'))
    return [{ code: 'caution-gas', of: t.event.crop, data: { pile: t.event.pile, days: GAS_DAYS, until: addDays(t.event.on, GAS_DAYS) } }]
  if (isType(t, 'pack')) return [{ code: 'caution-slope', of: '', data: { pile: t.event.pile } }]
  if (isType(t, 'open') || isType(t, 'feed') || isType(t, 'face')) {
    if (isType(t, 'open') && t.event.why === 'add') return []
    const p = pileState(book, t.event.pile)
    const heightFt = p?.measured?.heightFt ?? p?.planned.heightFt ?? 0
    return [{ code: 'caution-face', of: '', data: { pile: t.event.pile, heightFt, awayFt: heightFt * STAND_OFF } }]
  }
  if (isType(t, 'cover') && SHEETS.includes(t.event.material)) {
    const list: Caution[] = [
      { code: t.event.change === 'on' ? 'caution-sheet-wind' : 'caution-knife', of: '', data: { pile: t.event.pile } },
    ]
    if (t.event.change !== 'on' && ICE_MONTHS.includes(monthOf(t.event.on))) list.push({ code: 'caution-ice', of: '', data: {} })
    return list
  }
  if (isType(t, 'weather') && t.event.kind === 'freeze') return [{ code: 'caution-ice', of: '', data: {} }]
  return []
}

/**
 * Each caution the first time it matters in a season: the gas for each crop that is put up, the others once. That local
 * codes and licensed people go before it is said with the first of a season.
 */
export const cautionsDue = (book: Book, m: Moment): DueItem[] => {
  const items = new Map<string, DueItem>()
  const deferred = new Set<string>()
  for (const t of recent(book, m)) {
    const season = seasonOf(t.event.on)
    for (const { code, data, of } of cautionsOf(book, t)) {
      const key = `${code}:${season}${of && `:${of}`}`
      if (book.said.has(key) || items.has(key) || namedOn(book, key)) continue
      const defer = `caution-defer:${season}`
      const first = !book.said.has(defer) && !deferred.has(defer)
      deferred.add(defer)
      items.set(key, {
        key,
        at: t.at,
        to: 'crew',
        message: [{ code, data }, ...(first ? [{ code: 'caution-defer', data: {} }] : [])],
        ...(first && { also: [defer] }),
      })
    }
  }
  return [...items.values()]
}
