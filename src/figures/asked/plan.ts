import type { Answer, Ask } from '../../book/asks.ts'
import { type Book, eventsOf, setting } from '../../book/book.ts'
import { newPile } from '../../book/pile.ts'
import type { Message } from '../../book/questions.ts'
import type { Lb, Pct } from '../../units/measure.ts'
import { bagsFor, edgeFt, gravelTons, sheetNeed, tiresFor } from '../coverFit.ts'
import { cropDefaults } from '../cropDefaults.ts'
import { GOAL } from '../faceRate.ts'
import { drynessOf } from '../farm/dryness.ts'
import { herdForageDry } from '../farm/herd.ts'
import { cropNeed, headOf } from '../farm/need.ts'
import type { Now } from '../farm/now.ts'
import { LONGEST_FT, RUN_ALONG, type Sizing, sizePile, toStore } from '../sizing.ts'
import { by } from './by.ts'
import { type Refusal, refuse, slots, told } from './refusal.ts'
import { sheetInStock } from './sheets.ts'

/** What is planned to be lost on the way to the cows, percent: a well-managed pile (Hay & Forage Grower 3112). */
const PLAN_LOSS = 15
/** A pile is filled once a year. */
const YEAR = 365

/** Faster than this a face is none that anybody plans, in/day. */
const FASTEST = 96

/** What gives, in one breath: a herd too small for a fast face and a good height is told so, and what is left to do. */
const advised = ({ advice, inPerDay, heightFt }: Sizing, parts: { n: number; lengthFt: number }): Message[] => {
  const goal = GOAL.warm
  const small = advice.includes('below-least')
  const codes = small ? ['below-least', ...advice.filter(c => c === 'short-pile')] : advice
  const list = codes.map(code => told(`note-plan-${code}`, { inPerDay, goal, heightFt, ...parts }))
  return list.length > 1 ? [told('join', { list, by: 'space' })] : list
}

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
  const size = (lb: Lb) =>
    sizePile({ lbDry: lb, dryLbFt3: density, ...(lbDay !== undefined && { lbDay }), ...(widest > 0 && { widestFt: widest }) })
  const made = size(lbDry)
  if (!('shape' in made)) return refuse('plan-impossible', { what: made.outside })
  const sheet = sheetNeed(made.shape)
  const fit = sheetInStock(book, sheet, now)
  const edge = edgeFt(made.shape)
  // Too long for one: as many as fit, each with ends of its own.
  const several = made.lengthFt > LONGEST_FT ? Math.ceil(made.lengthFt / LONGEST_FT) : undefined
  const one = several === undefined ? made : size(lbDry / several)
  const each = several !== undefined && 'shape' in one ? one.lengthFt : undefined
  return slots({
    about: 'plan' as const,
    widthFt: made.widthFt,
    heightFt: made.heightFt,
    lengthFt: made.lengthFt,
    lbDry: made.lbDry,
    inPerDay: made.inPerDay !== undefined && made.inPerDay <= FASTEST ? made.inPerDay : undefined,
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
      edgeFt: edge,
      fromStock: fit !== undefined,
      ...(fit && { sheets: fit.sheets, waste: fit.waste }),
      gravelTons: gravelTons(edge),
    },
    how: [
      told('how-plan-amount', { lbDry, dmPct, days, lbDay: day, loss: ask.lb === undefined ? PLAN_LOSS : undefined }),
      ...(made.rate !== undefined ? [told('how-plan-face', { inPerDay: made.rate })] : []),
      told('how-plan-shape', { density, run: RUN_ALONG }),
      by('formula-sizing', 'formula-arc'),
    ],
    piles: several && { n: several, lengthFt: each },
    notes: [
      ...advised(made, { n: several ?? 1, lengthFt: each ?? made.lengthFt }),
      ...(days === YEAR && ask.days === undefined ? [told('note-plan-year')] : []),
    ],
  })
}
