import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, eventsOf, setting } from '../../book/book.ts'
import { newPile } from '../../book/pile.ts'
import type { Lb, Pct } from '../../units/measure.ts'
import { bagsFor, edgeFt, gravelTons, sheetNeed, tiresFor } from '../coverFit.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { drynessOf } from '../farm/dryness.ts'
import { herdForageDry } from '../farm/herd.ts'
import { cropNeed, headOf } from '../farm/need.ts'
import type { Now } from '../farm/now.ts'
import { sizePile, toStore } from '../sizing.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'

/** What is planned to be lost on the way to the cows, percent: a well-managed pile (Hay & Forage Grower 3112). */
const PLAN_LOSS = 15
/** A pile is filled once a year. */
const YEAR = 365

/** What so many head want of a crop a day, lb as fed: by the ration of those there are now, else as such a group eats. */
const headNeed = (book: Book, now: Now, crop: string, dmPct: Pct, { head, group, lbPerHead }: Ask): Lb | undefined => {
  if (head === undefined || lbPerHead !== undefined) return undefined
  const headNow = headOf(book, now.day, group)
  const today = headNow ? cropNeed(book, now.day, crop, dmPct) : undefined
  if (today !== undefined && headNow) return (today * head) / headNow
  const dry = herdForageDry(new Map([[group ?? 'milking', head]]))
  return dry === undefined ? undefined : (dry * 100) / dmPct
}

/** Width, height and length of a pile for so many tons, or for so many days of the ration; what covers it. */
export const plan = (book: Book, ask: Ask, now: Now): Answer | Refusal => {
  const crop =
    ask.crop ??
    eventsOf(book, 'harvest').find(t => t.event.on >= now.day)?.event.crop ??
    eventsOf(book, 'load').at(-1)?.event.crop ??
    'corn silage'
  const dmPct = drynessOf(book, newPile(''))(crop, now.day).pct
  const density = cropDefaults(crop).dryLbFt3.value
  const { lbPerDay, lbPerHead, head, group } = ask
  const day =
    lbPerDay ??
    headNeed(book, now, crop, dmPct, ask) ??
    cropNeed(book, now.day, crop, dmPct, {
      ...(lbPerHead !== undefined && { lbPerHead }),
      ...(head !== undefined && { head }),
      ...(group && { group }),
    })
  const lbDay = day === undefined ? undefined : (day * dmPct) / 100
  const days = ask.days ?? (ask.lb === undefined && lbDay !== undefined ? YEAR : undefined)
  const lbDry =
    ask.lb !== undefined ? (ask.lb * dmPct) / 100 : days !== undefined && lbDay !== undefined ? toStore(lbDay, days, PLAN_LOSS) : undefined
  if (lbDry === undefined) return refuse('no-amount-known', { missing: ask.days !== undefined ? 'ration' : 'tons' })
  const widest = setting(book, 'slabFt', 0)
  const made = sizePile({ lbDry, dryLbFt3: density, ...(lbDay !== undefined && { lbDay }), ...(widest > 0 && { widestFt: widest }) })
  if (!('shape' in made)) return refuse('plan-impossible', { what: made.outside })
  const sheet = sheetNeed(made.shape)
  const edge = edgeFt(made.shape)
  return slots({
    about: 'plan' as const,
    widthFt: made.widthFt,
    heightFt: made.heightFt,
    lengthFt: made.lengthFt,
    lbDry: made.lbDry,
    inPerDay: made.inPerDay,
    crop,
    topWidthFt: made.topWidthFt,
    sideDeg: made.sideDeg,
    ratePlanned: made.rate,
    lbAsFed: (made.lbDry * 100) / dmPct,
    lbDayAsFed: day,
    days,
    advice: made.advice,
    cover: {
      widthFt: sheet.buyWidthFt,
      lengthFt: sheet.buyLengthFt,
      tires: tiresFor(sheet.areaFt2),
      bags: bagsFor(made.shape),
      gravelTons: gravelTons(edge),
    },
    how: [
      told('how-plan-amount', { lbDry, dmPct, days, lbDay: day, loss: ask.lb === undefined ? PLAN_LOSS : undefined }),
      ...(made.rate !== undefined ? [told('how-plan-face', { inPerDay: made.rate })] : []),
      told('how-plan-shape', { density, run: 3 }),
    ],
    notes: [
      ...made.advice.map(code => told(`note-plan-${code}`)),
      ...(days === YEAR && ask.days === undefined ? [told('note-plan-year')] : []),
    ],
  })
}
