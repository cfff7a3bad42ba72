import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { lengthOf } from '../../book/pile.ts'
import { bagsFor, edgeFt, fitFromStock, gravelTons, sheetNeed, tiresFor } from '../coverFit.ts'
import { formOf } from '../farm/form.ts'
import { fillingOf } from '../farm/layers.ts'
import type { Now } from '../farm/now.ts'
import { LEAST_FT } from '../farm/position.ts'
import { priceOf } from '../farm/prices.ts'
import { type StockItem, stockOf } from '../farm/stock.ts'
import { coverCostPerTon } from '../money.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

const sized = (s: StockItem): s is StockItem & { widthFt: number; lengthFt: number } =>
  s.item === 'plastic' && s.widthFt !== undefined && s.lengthFt !== undefined

/** The sheet and the weights a pile needs, the sheets in stock that fit, and what they waste. */
export const cover = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  const length = lengthOf(p)
  const width = p.measured?.widthFt ?? p.planned.widthFt
  // A length read off a sheet would only find that sheet again.
  const form = length ? formOf(p) : undefined
  if (!form || !length || !width)
    return refuse('no-size-known', { pile: p.name, missing: !(width && width >= LEAST_FT) ? 'width' : 'length' })
  const { shape } = form
  const need = sheetNeed(shape)
  const stock = stockOf(book, now.day)
  const fit = fitFromStock(need, stock.filter(sized))
  const edge = edgeFt(shape)
  const tires = tiresFor(need.areaFt2)
  const count = (item: string): number | undefined => stock.find(s => s.item === item)?.count
  const have = count('tires')
  const sheetPrice = priceOf(book, 'plastic')
  const under = sheetPrice === undefined ? 0 : fillingOf(book, p).lb
  return slots({
    about: 'cover' as const,
    pile: p.name,
    widthFt: need.buyWidthFt,
    lengthFt: need.buyLengthFt,
    tires,
    bags: bagsFor(shape),
    edgeFt: edge,
    gravelTons: gravelTons(edge),
    fromStock: fit !== undefined,
    sheets: fit?.sheets,
    waste: fit?.waste,
    needWidthFt: need.widthFt,
    needLengthFt: need.lengthFt,
    areaFt2: need.areaFt2,
    tiresShort: have !== undefined && have + p.tires < tires ? tires - have - p.tires : undefined,
    cost: sheetPrice,
    costPerTon: coverCostPerTon(sheetPrice, under),
    how: [
      told('how-cover', { widthFt: width, lengthFt: length, heightFt: shape.heightFt, assumed: form.assumed[0] }),
      told('how-sheet', { widthFt: need.widthFt, lengthFt: need.lengthFt }),
      told('how-tires', { areaFt2: need.areaFt2, tires }),
      told('how-edge', { edgeFt: edge }),
    ],
    notes: [
      ...(form.assumed.length ? [told('note-height-assumed', { ft: shape.heightFt })] : []),
      ...form.problems.map(code => told(`note-${code}`)),
    ],
  })
}
