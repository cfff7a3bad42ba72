import { HOUR, hourOf } from '../plainText.ts'
import type { Made } from './made.ts'

const HEAD =
  "(?:no (?:more )?(?:messages?|texts?|pings?|notifications?|noise)|(?:set )?(?:my |the )?quiet (?:hours?|time)(?: is| are| to)?:?|(?:keep |be |stay )?(?:it )?quiet|(?:don't|dont|do not) (?:text|message|bother|ping|bug|wake|write|send|buzz)(?: me| us| anyone| anybody| anything| nothing| messages)*|leave (?:me|us) alone|nada de mensajes|sin mensajes|no (?:me |nos )?(?:mandes|manden|envies|envien|escribas|escriban|molestes|molesten)(?: mensajes| nada)*|(?:mis )?horas? de silencio:?|silencio:?|no quiero mensajes)"
const BETWEEN = new RegExp(
  `^${HEAD} (?:between |from |entre |de |desde )?(?:las? )?${HOUR} ?(?:and|to|until|till|through|y|a|hasta|-)(?: las?)? ?${HOUR}$`,
)
const AFTER = new RegExp(`^${HEAD} (?:after|past|from|despues de|desde)(?: las?)? ${HOUR}$`)
const BEFORE = new RegExp(`^${HEAD} (?:before|until|till|antes de|hasta)(?: las?)? ${HOUR}$`)
const NONE =
  /^(?:no (?:more )?quiet (?:hours|time)|sin horas de silencio|(?:text|write|message) (?:me|us) (?:any ?time|day or night)|(?:escribe|escribeme) a cualquier hora)$/
const MINE = /\b(?:me|my|mis|quiero|escribeme)\b/

/** "no messages between 9pm and 5am": a bare hour is an evening one where the quiet begins and a morning one where it ends. */
export const quietWish = (text: string): Made | undefined => {
  const who = MINE.test(text) ? { who: 'me' } : {}
  if (NONE.test(text))
    return {
      sets: [
        ['quietFrom', '00:00'],
        ['quietTo', '00:00'],
      ],
      ...who,
    }
  const both = BETWEEN.exec(text)
  if (both)
    return {
      sets: [
        ['quietFrom', hourOf(both[1]!, 'pm')],
        ['quietTo', hourOf(both[2]!, 'am')],
      ],
      ...who,
    }
  const from = AFTER.exec(text)
  if (from) return { sets: [['quietFrom', hourOf(from[1]!, 'pm')]], ...who }
  const to = BEFORE.exec(text)
  return to ? { sets: [['quietTo', hourOf(to[1]!, 'am')]], ...who } : undefined
}
