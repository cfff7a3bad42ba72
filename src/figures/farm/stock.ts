import { type Book, eventsOf } from '../../book/book.ts'
import type { Told } from '../../book/pile.ts'
import type { Day } from '../../units/calendar.ts'
import type { Ft } from '../../units/measure.ts'

/** Something that lies free on the farm. */
export interface StockItem {
  item: string
  count: number
  widthFt?: Ft
  lengthFt?: Ft
}

/** What comes back into the stock when it is taken off a pile. Plastic and film have had their day. */
const COMES_BACK = new Set(['mesh', 'tarp', 'tires', 'gravel bags'])
/** Told by the piece; of gravel and dirt nobody counts the stock through a covering. */
const BY_PIECE = new Set(['plastic', 'second plastic', 'barrier film', 'mesh', 'tarp', 'tires', 'gravel bags'])
/** A second sheet comes off the same roll. */
const shelf = (item: string): string => (item === 'second plastic' ? 'plastic' : item)

type Move = Told<'supply'> | Told<'cover'>

/**
 * What lies free: what was told as there, bought and used, less what coverings took, and what came back when they were
 * taken off. An item never told stands nowhere, not even below zero; a count told anew (`have`) puts everything before it right.
 */
export const stockOf = (book: Book, until: Day): StockItem[] => {
  const stock: StockItem[] = []
  const slot = (item: string, widthFt?: Ft, lengthFt?: Ft): StockItem | undefined =>
    stock.find(s => s.item === item && s.widthFt === widthFt && s.lengthFt === lengthFt) ??
    (widthFt === undefined && lengthFt === undefined ? stock.find(s => s.item === item && s.count > 0) : undefined)
  const change = (item: string, by: number, widthFt?: Ft, lengthFt?: Ft): void => {
    const s = slot(item, widthFt, lengthFt)
    if (s) s.count = Math.max(0, s.count + by)
    else if (by > 0) stock.push({ item, count: by, ...(widthFt !== undefined && { widthFt }), ...(lengthFt !== undefined && { lengthFt }) })
  }
  const moves: Move[] = [...eventsOf(book, 'supply'), ...eventsOf(book, 'cover')]
  const ends = eventsOf(book, 'empty').filter(t => t.event.on <= until)
  const known = new Set(eventsOf(book, 'supply').map(t => shelf(t.event.item)))
  const steps: { on: Day; n: number; run: () => void }[] = moves
    .filter(t => t.event.on <= until)
    .map(t => ({
      on: t.event.on,
      n: t.n,
      run: () => (t.event.type === 'supply' ? supply(t as Told<'supply'>) : cover(t as Told<'cover'>)),
    }))
  const supply = ({ event: e }: Told<'supply'>): void => {
    const item = shelf(e.item)
    if (e.change === 'have') {
      const s = stock.find(x => x.item === item && x.widthFt === e.widthFt && x.lengthFt === e.lengthFt)
      if (s) s.count = e.count
      else
        stock.push({
          item,
          count: e.count,
          ...(e.widthFt !== undefined && { widthFt: e.widthFt }),
          ...(e.lengthFt !== undefined && { lengthFt: e.lengthFt }),
        })
    } else change(item, e.change === 'add' ? e.count : -e.count, e.widthFt, e.lengthFt)
  }
  const on = new Map<string, number>()
  const cover = ({ event: e }: Told<'cover'>): void => {
    const item = shelf(e.material)
    if (!BY_PIECE.has(e.material) || !known.has(item) || e.change === 'back') return
    const key = `${e.pile}\n${item}`
    const there = on.get(key) ?? 0
    const count = e.count ?? (e.change === 'on' ? (item === 'tires' || item === 'gravel bags' ? 0 : 1) : there)
    on.set(key, Math.max(0, there + (e.change === 'on' ? count : -count)))
    if (e.change === 'on') change(item, -count, e.widthFt, e.lengthFt)
    else if (COMES_BACK.has(item)) change(item, count, e.widthFt, e.lengthFt)
  }
  for (const t of ends) {
    // At the end of a pile its weights and its mesh lie free again.
    steps.push({
      on: t.event.on,
      n: t.n,
      run: () => {
        for (const item of COMES_BACK) {
          const key = `${t.event.pile}\n${item}`
          const there = on.get(key) ?? 0
          if (there > 0) change(item, there)
          on.delete(key)
        }
      },
    })
  }
  steps.sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.n - b.n))
  for (const s of steps) s.run()
  return stock
}

/** The smallest free sheet that covers so many feet, turned either way; undefined where none does. */
export const sheetFor = (stock: readonly StockItem[], widthFt: Ft, lengthFt: Ft): StockItem | undefined => {
  const short = Math.min(widthFt, lengthFt)
  const long = Math.max(widthFt, lengthFt)
  const fits = stock.filter(s => {
    if (s.item !== 'plastic' || s.count < 1 || s.widthFt === undefined || s.lengthFt === undefined) return false
    return Math.min(s.widthFt, s.lengthFt) >= short && Math.max(s.widthFt, s.lengthFt) >= long
  })
  return fits.reduce<StockItem | undefined>((a, b) => (a && a.widthFt! * a.lengthFt! <= b.widthFt! * b.lengthFt! ? a : b), undefined)
}
