import type { Answer } from '../../book/asks.ts'
import type { Book } from '../../book/book.ts'
import type { PileState } from '../../book/pile.ts'
import { lengthOf } from '../../book/pile.ts'
import { bagsFor, edgeFt, gravelTons, sheetNeed, tiresFor } from '../coverFit.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { formOf } from '../farm/form.ts'
import { type Filling, fillingOf } from '../farm/layers.ts'
import type { Now } from '../farm/now.ts'
import { LEAST_FT } from '../farm/position.ts'
import { mixPrice, priceOf } from '../farm/prices.ts'
import { stockOf } from '../farm/stock.ts'
import { usualDensity } from '../farm/volume.ts'
import { coverCostPerTon, feedValue } from '../money.ts'
import { arcLength, type PileShape, sectionArea, USUAL_RUN } from '../shape.ts'
import { sizePile } from '../sizing.ts'
import { savedByCover } from '../surfaceLoss.ts'
import { by } from './by.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'
import { sheetInStock, tiresOn } from './sheets.ts'

/** Long enough that its ends do not meet, ft. */
const FAR_FT = 10_000

/** A height nobody measured may be so much lower or higher, a share. Common practice, no source. */
const GUESSED: number = 0.3

/**
 * As such a pile is usually built, where nobody told its size: what went in at its crops' density. Where its width is known it is as
 * long as that makes it: volume over section, and the ends, of which half is air.
 */
const usualShape = (p: PileState, filling: Filling, widthFt: number | undefined): PileShape | undefined => {
  if (!(filling.lbDry > 0)) return undefined
  if (widthFt !== undefined && widthFt >= LEAST_FT) {
    const form = formOf(p, { ft: FAR_FT, sd: 0, from: 'planned' })!.shape
    const ends = USUAL_RUN * form.heightFt
    const lengthFt = filling.lbDry / usualDensity(filling).lbFt3 / sectionArea(form) + ends
    return { ...form, lengthFt, rampStartFt: Math.min(ends, lengthFt / 2), rampEndFt: Math.min(ends, lengthFt / 2) }
  }
  const made = sizePile({ lbDry: filling.lbDry, dryLbFt3: usualDensity(filling).lbFt3 })
  return 'shape' in made ? made.shape : undefined
}

/** The sheet and the weights a pile needs, the sheets in stock that fit, and what they waste. */
export const cover = (book: Book, p: PileState, now: Now): Answer | Refusal => {
  const length = lengthOf(p)
  const width = p.measured?.widthFt ?? p.planned.widthFt
  // A length read off a sheet would only find that sheet again; one too short to stand on is a slip of the thumb.
  const form = length && length >= LEAST_FT ? formOf(p) : undefined
  const filling = fillingOf(book, p)
  const guess = form ? undefined : usualShape(p, filling, width)
  const shape = form?.shape ?? guess
  if (!shape) return refuse('no-size-told', { pile: p.name })
  const need = sheetNeed(shape)
  const fit = sheetInStock(book, need, now)
  const edge = edgeFt(shape)
  const tires = tiresFor(need.areaFt2)
  const have = stockOf(book, now.day).find(s => s.item === 'tires')?.count
  const there = tiresOn(p)
  const sheetPrice = priceOf(book, 'plastic')
  const dmPct = filling.dmPct || cropDefaults('corn silage').dmPct.value
  // The case for a second sheet: an oxygen barrier under the plastic, where the pile is not covered with one yet.
  const saved = savedByCover(need.areaFt2, usualDensity(filling).lbFt3, 'plastic', 'barrier film')
  const second = p.sheets.some(s => s.material === 'barrier film')
    ? undefined
    : slots({ lbDry: saved.lbDry, value: feedValue((saved.lbDry * 100) / dmPct, mixPrice(book, filling.layers)), cost: sheetPrice })
  const across = (heightFt: number): number => arcLength({ ...shape, heightFt }) + need.widthFt - arcLength(shape)
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
    spacedTires: tiresFor(need.areaFt2, 'spaced'),
    tiresShort: have !== undefined && have + there < tires ? tires - have - there : undefined,
    second,
    cost: sheetPrice,
    costPerTon: coverCostPerTon(sheetPrice, filling.lb),
    how: [
      told('how-cover', { widthFt: shape.widthFt, lengthFt: shape.lengthFt, heightFt: shape.heightFt, assumed: form?.assumed[0] }),
      told('how-sheet', { widthFt: need.widthFt, lengthFt: need.lengthFt }),
      told('how-tires', { areaFt2: need.areaFt2, tires, spaced: tiresFor(need.areaFt2, 'spaced') }),
      told('how-edge', { edgeFt: edge }),
      by('formula-arc', 'formula-tires', 'formula-second-sheet'),
      ...(form?.assumed.length
        ? [told('how-cover-height', { low: across(shape.heightFt * (1 - GUESSED)), high: across(shape.heightFt * (1 + GUESSED)) })]
        : []),
    ],
    notes: [
      ...(guess ? [told('note-size-assumed', { widthFt: guess.widthFt, lengthFt: guess.lengthFt })] : []),
      ...(form?.assumed.length ? [told('note-height-assumed', { ft: shape.heightFt })] : []),
      ...(form?.problems ?? []).map(code => told(`note-${code}`)),
    ],
  })
}
