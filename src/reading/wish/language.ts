import type { Made } from './made.ts'
import { whoOf } from './made.ts'

const TONGUE = '(?:english|spanish|ingles|espanol|castellano)'
const NAME = '((?:the |el |al )?[a-z]+)'
const WAYS = [
  new RegExp(
    `^(?:speak|talk|write|answer|reply|text|send)(?: everything| all)?(?: (?:to )?${NAME})?(?: everything)? (?:in )?${TONGUE}(?: only)?$`,
  ),
  new RegExp(`^(?:in |only )?${TONGUE}(?: only)?(?: for ${NAME})?$`),
  new RegExp(`^${NAME} (?:speaks?|reads?|prefers?|wants?|habla|lee|prefiere)(?: it in| only)? ${TONGUE}$`),
  new RegExp(`^(?:habla|escribe|contesta|responde|manda)(me|le|nos)?(?: todo)? (?:solo )?en ${TONGUE}(?: a ${NAME})?$`),
  new RegExp(`^(?:en |solo en |todo en )${TONGUE}(?: para ${NAME})?$`),
  new RegExp(`^(?:al |para el |el |to the |the )?(grupo|group|crew) (?:en|in) ${TONGUE}$`),
]

/** Which language somebody, or the common chat, is to be answered in, whatever they write. */
export const languageWish = (text: string): Made | undefined => {
  if (text.length > 60) return undefined
  for (const way of WAYS) {
    const m = way.exec(text)
    if (!m) continue
    const named = m
      .slice(1)
      .find(Boolean)
      ?.replace(/^(?:the|el|al) /, '')
    const who = named === undefined || named === 'le' ? 'me' : named === 'nos' ? 'crew' : whoOf(named)
    return { sets: [['lang', /english|ingles/.test(text) ? 'en' : 'es']], who }
  }
  return undefined
}
