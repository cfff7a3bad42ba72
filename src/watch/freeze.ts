import { type Book, pileState, piles, setting } from '../book/book.ts'
import { isCovered, lengthOf, type PileState, type Told } from '../book/pile.ts'
import { addDays, type Day, daysBetween } from '../units/calendar.ts'
import { climb, type Nudge, type Task } from './escalate.ts'
import { frostDepthFt } from './frost.ts'
import { type Moment, toldAt } from './hours.ts'
import type { DueItem, WatchFigures } from './item.ts'
import { isType, recent, seasonOf, since } from './recent.ts'

/** Defaults of the settings `freezeDay` and `thawDay`, month and day, for a northern dairy farm. Common practice, no source. */
export const FREEZE_DAY = '11-20'
export const THAW_DAY = '03-20'
/** A hard freeze: 28 F or colder, as the U.S. weather service uses the word. From memory. */
export const HARD_FREEZE_F = 28
/** Where a freeze is told without its degrees. */
const UNTOLD_F = 24
/** How long before the freeze the lifting is first spoken of, days. Common practice, no source. */
const AHEAD = 14
/** From this share of the length on a stretch reaches to the end of the pile. */
const TO_THE_END = 0.93
/** Ladder from first word to the owner: two weeks, one week, the day. */
const STEP = 7

export interface Winter {
  season: number
  freezeOn: Day
  thawOn: Day
}

const monthDay = (book: Book, name: string, fallback: string): string => {
  const value = setting(book, name, fallback)
  return /^\d{2}-\d{2}$/.test(value) ? value : fallback
}

/** The winter of a day's season: the farm's own days, or the first hard freeze where it came sooner. */
export const winterOf = (book: Book, day: Day): Winter => {
  const season = seasonOf(day)
  const dated = (md: string): Day => `${Number(md.slice(0, 2)) < 7 ? season + 1 : season}-${md}`
  const planned = dated(monthDay(book, 'freezeDay', FREEZE_DAY))
  const first = since(book, 'weather', `${season}-09-01`).find(
    t => t.event.kind === 'freeze' && (t.event.degF ?? UNTOLD_F) <= HARD_FREEZE_F && t.event.on < `${season + 1}-03-01`,
  )
  const freezeOn = first && first.event.on < planned ? first.event.on : planned
  return { season, freezeOn, thawOn: dated(monthDay(book, 'thawDay', THAW_DAY)) }
}

/** What lies on the stretch of one pile that will be fed while the ground is frozen. */
export interface Lift {
  pile: string
  fromFt: number
  toFt: number
  mesh: boolean
  tires: number
  bags: number
  /** To be lifted by. */
  by: Day
}

/** Sealed piles are left out: nobody can know yet whether they will be opened before the thaw. */
export const liftOf = (p: PileState, winter: Winter, day: Day, figures: WatchFigures): Lift | undefined => {
  if (p.stage !== 'feeding' || !isCovered(p) || !(p.mesh || p.tires || p.bags)) return undefined
  const length = lengthOf(p)
  const face = figures.faceAt?.(p.name) ?? p.face?.atFt
  const rate = figures.faceRate?.(p.name)?.inPerDay
  if (length === undefined || face === undefined || rate === undefined || rate <= 0 || face >= length) return undefined
  const after = (until: Day): number => Math.min(length, face + (rate / 12) * Math.max(0, daysBetween(day, until)))
  const fromFt = after(winter.freezeOn)
  const toFt = after(winter.thawOn)
  if (toFt - fromFt < 1) return undefined
  const share = (toFt - fromFt) / (length - face)
  return {
    pile: p.name,
    fromFt,
    toFt,
    mesh: p.mesh,
    tires: Math.round(p.tires * share),
    bags: Math.round(p.bags * share),
    by: winter.freezeOn,
  }
}

/** Somebody has lifted something there this autumn. */
const lifted = (p: PileState, winter: Winter): boolean =>
  p.covers.some(
    t =>
      t.event.change !== 'on' &&
      ['mesh', 'tires', 'gravel bags'].includes(t.event.material) &&
      daysBetween(t.event.on, winter.freezeOn) <= AHEAD &&
      t.event.on <= addDays(winter.freezeOn, AHEAD),
  )

/** Stretches to be cleared before this winter's freeze; empty outside the weeks around it. */
export const liftsDue = (book: Book, day: Day, figures: WatchFigures): Lift[] => {
  const winter = winterOf(book, day)
  if (day < addDays(winter.freezeOn, -AHEAD) || day > addDays(winter.freezeOn, STEP)) return []
  return piles(book).flatMap(p => (lifted(p, winter) ? [] : (liftOf(p, winter, day, figures) ?? [])))
}

const asks = (book: Book, m: Moment, figures: WatchFigures): Nudge[] => {
  const { season, freezeOn } = winterOf(book, m.day)
  const tasks = liftsDue(book, m.day, figures).map((lift): Task => {
    const length = lengthOf(pileState(book, lift.pile)!)
    const data = {
      ...lift,
      mesh: lift.mesh ? 'yes' : 'no',
      end: length !== undefined && lift.toFt >= length * TO_THE_END ? 'yes' : 'no',
      by: lift.by > m.day ? lift.by : '',
    }
    return {
      stem: `${season}/${lift.pile}`,
      since: addDays(freezeOn, -AHEAD),
      step: STEP,
      urgency: 70,
      line: { code: 'freeze-line', data },
    }
  })
  return climb(book, m, 'freeze', tasks, ['ask', 'again', 'owner'])
}

/** The first hard freeze of the winter: how deep one such night reaches into a wet edge, with the caution of the formula. */
const firstFreeze = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => {
  const night = recent(book, m).find(
    (t): t is Told<'weather'> & Told => isType(t, 'weather') && t.event.kind === 'freeze' && (t.event.degF ?? UNTOLD_F) <= HARD_FREEZE_F,
  )
  if (!night) return []
  const { season } = winterOf(book, night.event.on)
  const key = `freeze-first:${season}`
  const list = liftsDue(book, toldAt(m.at, m.zone).day, figures).map(l => l.pile)
  if (book.said.has(key) || !list.length) return []
  // One night as cold as was told, taken for the day's mean: more than it was, so the depth is an upper one.
  const depthIn = 12 * frostDepthFt(32 - (night.event.degF ?? UNTOLD_F))
  return [
    {
      key,
      at: night.at,
      to: 'crew',
      message: { code: 'freeze-first', data: { piles: list, degF: night.event.degF ?? UNTOLD_F, depthIn } },
    },
  ]
}

export const freezeDue = (book: Book, m: Moment, figures: WatchFigures): DueItem[] => [
  ...firstFreeze(book, m, figures),
  ...asks(book, m, figures),
]
