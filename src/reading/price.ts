import { LEXICON } from './lexicon.ts'
import { foldWord } from './tokens.ts'

/** A price as the farm told it, in its own money. */
export interface Price {
  /** A crop by its canonical name, or `plastic`. */
  of: string
  /** Undefined where the price is taken back. */
  amount?: number
}

const N = String.raw`(?:about |around |como |unos )?\$? ?(\d+(?:\.\d+)?)(?: ?(?:dollars|bucks|usd|dolares|pesos))?`
const A_TON = String.raw`(?: an?| per| the| la| por| cada| por cada|\/) ?(?:ton|tonelada)`
const IS =
  '(?:is|costs?|sells? for|goes for|is going for|is worth|is at|runs|brings|vale|cuesta|esta a|esta en|sale a|sale en|se vende a|anda en)'
/** Ways to tell the price of a ton; the groups are the feed and the amount. */
const FEED = [
  new RegExp(`^(?:the |el |la )?(.{3,30}?) ${IS} ${N}${A_TON}(?: as fed)?$`),
  new RegExp(`^(?:the )?price (?:of|for) (?:the )?(.{3,30}?)(?: is|:)? ${N}(?:${A_TON})?$`),
  new RegExp(`^(?:an? |one |una |la )?(?:ton|tonelada) (?:of|de|del) (.{3,30}?) ${IS} ${N}$`),
  new RegExp(`^(?:the )?(.{3,30}?)(?: at| a| en)? ${N}${A_TON}$`),
  new RegExp(
    `^(?:we |i )?(?:get|pay|set|put|price|call it|cobramos|pagamos|pon|ponle)(?: the| el| la)? (.{3,30}?) (?:at|a|en) ${N}${A_TON}$`,
  ),
  new RegExp(`^(?:el )?precio (?:del?|de la|de el) (.{3,30}?)(?: es|:)?(?: de)? ${N}(?:${A_TON})?$`),
]
const SHEET = new RegExp(
  `^(?:an? |one |each |un |cada )?(?:sheet of |roll of |rollo de |hoja de )?(?:the |an? |each |one |el |un |cada )?(?:\\d+ ?(?:x|by|por) ?\\d+ )?(?:plastic|sheet|cover|plastico|hule|nylon|lona)s?(?: de \\d+ ?(?:x|por) ?\\d+)? (?:costs?|is|runs|runs us|ran|was|cost us|costs us|at|cuesta|costo|vale|sale en|salio en|a|en) ${N}(?: each| apiece| a sheet| a roll| per sheet| per roll| a piece| cada uno| cada una| por pieza| el rollo| la pieza| cada plastico)?$`,
)
/** The amount before the feed, or before the sheet. */
const TURNED = new RegExp(
  `^(?:we |i )?(?:get|pay|gave|paid|nos pagan|pagamos|cobramos|sacamos) ${N}(?:${A_TON}| por tonelada)? (?:for|por|de|del) (?:the |an? |one |each |el |la |un |cada )?(.{3,30}?)$`,
)
const SHEET_OF = /^(?:sheets? of |rolls? of |rollo de |hoja de )?(?:plastic|sheet|cover|plastico|hule|nylon|lona)s?$/
const FORGET = /^(?:forget|drop|olvida|quita) (?:the |el )?(?:price of |price for |precio del? |precio de la )(?:the )?(.{3,30})$/

/** The crop that some words name, or undefined. */
const cropOf = (said: string): string | undefined => {
  const words = said.split(' ')
  const p = LEXICON.byFirst.get(words[0]!)?.find(x => x.words.length === words.length && x.words.every((w, k) => w === words[k]))
  return p && [...p.en, ...p.es].find(s => s.startsWith('crop:'))?.slice(5)
}

/** The price that a whole message tells, or takes back; undefined for all else. */
export const priceIn = (text: string): Price | undefined => {
  if (text.length > 90 || !/\d|price|precio/.test(text)) return undefined
  if (/[?¿]/.test(text)) return undefined
  const plain = text
    .trim()
    .replace(/[.!\s]+$/, '')
    .replace(/(\d),(\d{3})/g, '$1$2')
    .split(/\s+/)
    .map(foldWord)
    .join(' ')
  const sheet = SHEET.exec(plain)
  if (sheet) return { of: 'plastic', amount: Number(sheet[1]) }
  const forget = FORGET.exec(plain)
  if (forget) {
    const of = /^(?:plastic|plastico|sheet)s?$/.test(forget[1]!) ? 'plastic' : cropOf(forget[1]!)
    return of === undefined ? undefined : { of }
  }
  const turned = TURNED.exec(plain)
  if (turned) {
    const of = SHEET_OF.test(turned[2]!) ? 'plastic' : cropOf(turned[2]!)
    // "paid 300 for corn silage" says the whole, not the ton
    if (of !== undefined && (of === 'plastic' || /\b(?:ton|tonelada)\b/.test(plain))) return { of, amount: Number(turned[1]) }
  }
  for (const like of FEED) {
    const m = like.exec(plain)
    const of = m && cropOf(m[1]!)
    if (of) return { of, amount: Number(m[2]) }
  }
  return undefined
}
