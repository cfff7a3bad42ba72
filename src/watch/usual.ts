import { type Book, eventsOf } from '../book/book.ts'
import type { Told } from '../book/pile.ts'
import { daysBetween } from '../units/calendar.ts'
import type { CoverNeed, WatchFigures } from './item.ts'

/** A weight is put on over so many days at most to be one covering. Common practice, no source. */
const ONE_JOB_DAYS = 3
/** The last coverings that count. */
const LAST = 3

const WEIGHTS = ['tires', 'gravel bags'] as const
type Weight = (typeof WEIGHTS)[number]

/** The farm has such weights: it told of them in stock or on a pile. */
export const uses = (book: Book, item: string): boolean =>
  eventsOf(book, 'supply').some(t => t.event.item === item) || eventsOf(book, 'cover').some(t => t.event.material === item)

/** The coverings of the farm in which so many weights were told, oldest first. */
const coverings = (book: Book, item: Weight): { pile: string; count: number }[] => {
  const jobs: { pile: string; first: Told<'cover'>; count: number }[] = []
  for (const t of eventsOf(book, 'cover')) {
    const { material, change, count, pile, on } = t.event
    if (material !== item || change !== 'on' || count === undefined) continue
    const job = jobs.findLast(j => j.pile === pile && daysBetween(j.first.event.on, on) <= ONE_JOB_DAYS)
    if (job) job.count += count
    else jobs.push({ pile, first: t, count })
  }
  return jobs
}

const middle = (list: number[]): number | undefined => {
  const sorted = [...list].sort((a, b) => a - b)
  const n = sorted.length
  return n === 0 ? undefined : n % 2 ? sorted[(n - 1) / 2] : (sorted[n / 2 - 1]! + sorted[n / 2]!) / 2
}

/** Weights a square foot of sheet, as this farm laid them at its last coverings; undefined where that was never told. */
const perFt2 = (book: Book, figures: WatchFigures, item: Weight): number | undefined =>
  middle(
    coverings(book, item)
      .flatMap(({ pile, count }) => {
        const need = figures.need?.(pile)
        return need ? [count / (need.widthFt * need.lengthFt)] : []
      })
      .slice(-LAST),
  )

/** Handbooks have tires touch; crews lay about a third of that. Where a farm never told its own count, only less than this share is short. Common practice, no source. */
const SPARSE = 0.4
/** The least of an item with which a covering can be done. */
export const leastOf = (book: Book, figures: WatchFigures, item: Weight, need: number): number =>
  perFt2(book, figures, item) === undefined ? need * SPARSE : need

/**
 * What a covering wants, with the weights that this farm has: as many as it laid on its last ones, where that was told, else
 * those of the handbook. Handbooks have tires touch; crews use hundreds fewer, and know what held.
 */
export const usualNeed = (book: Book, figures: WatchFigures, pile: string): CoverNeed | undefined => {
  const need = figures.need?.(pile)
  if (!need) return undefined
  const area = need.widthFt * need.lengthFt
  const of = (item: Weight, handbook: number | undefined): number | undefined => {
    const learned = perFt2(book, figures, item)
    if (learned !== undefined) return Math.round(learned * area)
    return uses(book, item) ? handbook : undefined
  }
  const tires = of('tires', need.tires)
  const bags = of('gravel bags', need.bags)
  const { tires: _, bags: __, fromStock, ...rest } = need
  // Who never told of sheets in stock need not hear that none fits.
  const told = eventsOf(book, 'supply').some(t => t.event.item === 'plastic')
  // Of a farm that never told of weights the handbook's tires are said: something must hold the sheet.
  const either = tires !== undefined || bags !== undefined
  const all = { ...rest, fromStock: told ? fromStock : undefined, tires: either ? tires : need.tires, bags }
  return Object.fromEntries(Object.entries(all).filter(([, v]) => v !== undefined)) as unknown as CoverNeed
}
