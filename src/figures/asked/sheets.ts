import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { fitFromStock, type SheetFit, type SheetNeed } from '../coverFit.ts'
import type { Now } from '../farm/now.ts'
import { type StockItem, stockOf } from '../farm/stock.ts'

const sized = (s: StockItem): s is StockItem & { widthFt: number; lengthFt: number } =>
  s.item === 'plastic' && s.widthFt !== undefined && s.lengthFt !== undefined

/** The smallest sheet that lies free and fits, or two of them; undefined where none do. */
export const sheetInStock = (book: Book, need: SheetNeed, now: Now): SheetFit | undefined =>
  fitFromStock(need, stockOf(book, now.day).filter(sized))

const SHEETS = new Set(['plastic', 'second plastic', 'barrier film', 'tarp', 'mesh'])

/** Tires that lie on a pile: where the last sheet comes off its tires come off with it, whether that is told or not. */
export const tiresOn = (p: PileState): number => {
  let sheets = 0
  let tires = 0
  for (const { event: e } of p.covers) {
    const step = e.change === 'on' ? 1 : e.change === 'off' ? -1 : 0
    if (SHEETS.has(e.material)) {
      sheets = Math.max(0, sheets + step)
      if (step < 0 && sheets === 0) tires = 0
    } else if (e.material === 'tires') tires = Math.max(0, step < 0 && e.count === undefined ? 0 : tires + step * (e.count ?? 0))
  }
  return tires
}
