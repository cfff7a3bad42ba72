import type { Day } from '../../units/calendar.ts'
import { findDates } from '../dates.ts'
import { tokenise } from '../tokens.ts'
import type { Made } from './made.ts'

const AT =
  /^(?:(?:we are|we're|i'm|the farm is|farm is|our farm is|the place is|our place is|location|the farm|place|estamos|la granja esta|el rancho esta|el establo esta|ubicacion|lugar|coordinates|coordenadas)(?: (?:at|located at|is|en|es))?:? )?(lat(?:itude|itud)?\.?:? ?)?(-?\d{1,2}(?:\.\d+)?) ?(?:deg|°|grados)? ?(n|s|north|south|norte|sur)?\b[ ,]*(?:and |y )?(?:lon(?:g|gitude|gitud)?\.?:? ?)?(-?\d{1,3}(?:\.\d+)?) ?(?:deg|°|grados)? ?(w|e|o|west|east|oeste|este)?$/

/** "we are at 43.1, -89.4": degrees north and east. A pair without a decimal point is no place, and without a word before it only where it says "lat". */
export const placeWish = (text: string): Made | undefined => {
  const m = AT.exec(text)
  if (!m || !(m[2]!.includes('.') && m[4]!.includes('.'))) return undefined
  if (/^[-\d]/.test(text)) return undefined
  const lat = Number(m[2]) * (/^s/.test(m[3] ?? '') ? -1 : 1)
  const lon = Number(m[4]) * (/^(?:w|o)/.test(m[5] ?? '') ? -1 : 1)
  return Math.abs(lat) <= 90 && Math.abs(lon) <= 180
    ? {
        sets: [
          ['lat', lat],
          ['lon', lon],
        ],
      }
    : undefined
}

const FREEZE = [
  /^(?:the )?ground(?: usually| normally| generally| mostly)? freezes(?: up| solid)?(?: here)? (.+)$/,
  /^(?:the )?(?:freeze(?:-?up)?|frost|hard freeze)(?: (?:day|date))(?: usually)?(?: is| comes| starts)?:? (.+)$/,
  /^(?:the )?(?:freeze-?up|hard freeze) (?:usually |normally )?(?:is|comes|starts) (.+)$/,
  /^(?:we|things) (?:usually |normally )?freeze up (.+)$/,
  /^(?:el suelo|la tierra|el piso|aqui)(?: normalmente| por lo general)?(?: aqui)? se (?:congela|hiela)(?: aqui)? (.+)$/,
  /^(?:el )?(?:dia de )(?:la helada|las heladas|heladas?|hielo)(?: es)?:? (.+)$/,
]
const THAW = [
  /^(?:the )?ground(?: usually| normally| generally)? thaws(?: out)?(?: here)? (.+)$/,
  /^(?:the )?(?:thaw|frost is out|frost goes out)(?: day| date)?(?: usually)?(?: is| comes| starts)?:? (.+)$/,
  /^(?:el suelo|la tierra|aqui)(?: normalmente)? (?:se )?deshiela (.+)$/,
  /^(?:el )?(?:dia de(?:l)? )?deshielo(?: es)?:? (.+)$/,
]
const NEAR = /^(?:around|about|by|on|near|like|roughly|usually|como|alrededor del?|por|el|a|hacia)\s+/
const MONTHS =
  /\b(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec|ene|enero|febrero|marzo|abr|abril|mayo|junio|julio|ago|agosto|octubre|dic)[a-z]*\b|\bthanksgiving\b|\b\d{1,2}\/\d{1,2}\b/

/** "the ground freezes around dec 1". A day that comes back each year is named by its month: "freeze tonight" is weather. */
export const seasonWish = (text: string, day: Day): Made | undefined => {
  const said = (patterns: RegExp[]): string | undefined => patterns.map(p => p.exec(text)?.[1]).find(Boolean)
  const freeze = said(FREEZE)
  const thaw = freeze === undefined ? said(THAW) : undefined
  let when = freeze ?? thaw
  if (!when || !MONTHS.test(when)) return undefined
  while (NEAR.test(when)) when = when.replace(NEAR, '')
  const tokens = tokenise(when)
  const date = findDates(tokens, () => false, { day, hour: 12 })[0]
  // nothing but the date: "frost in april killed the alfalfa" tells of something else
  if (!date || date.from > 0 || date.to < tokens.length) return undefined
  return { sets: [[freeze !== undefined ? 'freezeDay' : 'thawDay', date.future.slice(5)]] }
}
