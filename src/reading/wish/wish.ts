import type { Day } from '../../units/calendar.ts'
import { plainText } from '../plainText.ts'
import { languageWish } from './language.ts'
import type { WishName } from './made.ts'
import { numberWish } from './number.ts'
import { placeWish, seasonWish } from './place.ts'
import { quietWish } from './quiet.ts'
import { summaryWish } from './summary.ts'

/** How somebody wants the assistant to behave; `who` is `me`, `crew` or a name as it was said, and left out where nobody was named. */
export type Wish = { kind: 'list' } | { kind: 'set'; sets: { name: WishName; value: string | number | boolean }[]; who?: string }

const LIST =
  /^(?:(?:what are|whats|what's|show|show me|list|see|tell me|cuales son|muestra|muestrame|dame|ver|di|que) )?(?:the |your |my |our |all |los |mis |tus |nuestros |todos )*(?:settings|preferences|ajustes|configuracion|preferencias)(?: (?:do (?:we|you|i) have|are set|now|hay|tienes|tenemos))?$|^(?:how are you set(?: up)?|what did (?:i|we) set|como estas configurado)$/

const MOST = 140

/**
 * How somebody wants the assistant to behave, where the whole message says that and nothing else; undefined for all else.
 * @param day the farm's day, for days of the year
 * @param plain the text as `plainText` makes it
 */
export const wishIn = (text: string, day: Day, plain: string = plainText(text)): Wish | undefined => {
  if (text.length > MOST) return undefined
  if (LIST.test(plain)) return { kind: 'list' }
  // "should we check the covers every day?" only asks
  if (/[?¿\n]/.test(text.trim()) && !/^\W*(?:can|could|would|will|puedes|podr[ií]as) /i.test(text)) return undefined
  const made =
    placeWish(plain) ?? seasonWish(plain, day) ?? quietWish(plain) ?? numberWish(plain) ?? summaryWish(plain) ?? languageWish(plain)
  if (!made) return undefined
  const sets = made.sets.flatMap(([name, value]) => (value === undefined ? [] : [{ name, value }]))
  return sets.length === made.sets.length ? { kind: 'set', sets, ...(made.who && { who: made.who }) } : undefined
}
