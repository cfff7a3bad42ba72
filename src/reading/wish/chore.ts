import { ANY_CUE, CUE } from '../cues.ts'
import { findDates } from '../dates.ts'
import type { DateItem } from '../item.ts'
import { plainText } from '../plainText.ts'
import { tokenise } from '../tokens.ts'

/** A word about the reminders themselves. `about` is what one is about, as said; `number` its place in the list. */
export type Chore =
  | { kind: 'list' }
  | { kind: 'done'; about?: string }
  | { kind: 'snooze'; date?: DateItem }
  | { kind: 'cancel'; about?: string; number?: number; all?: boolean }
  /** Where what covers the piles lies; `item` where one was named. */
  | { kind: 'where'; item?: string }
  /** The last load of a pile is in; the pile as it was said, where it was. */
  | { kind: 'filled'; pile?: string }

const LIST =
  /^(?:(?:what|which|any|list|show|show me|read|see|do i have|do we have|are there|tell me|what are|what're|que|cuales|dime|muestra|muestrame|ver|hay|tengo|cuales son)? ?)?(?:any |all |the |my |our |me |los |mis |algun |todos )*(?:reminders?|recordatorios?)(?: (?:do (?:i|we) have|have (?:i|we)(?: got)?|(?:i|we) have|are (?:there|set|open|left)|there are|tengo|tenemos|hay|quedan|pendientes|list|set))?$|^what are you (?:going to )?remind(?:ing)? (?:me|us)(?: (?:of|about))?$/
const CANCEL =
  /^(?:cancel|delete|drop|remove|kill|scratch|clear|skip|forget|turn off|stop|cancela|borra|quita|elimina|olvida)(?: (?:the|that|this|my|all|all the|all my|el|ese|este|la|mi|los|todos los|todos mis))? (?:reminders?|recordatorios?)(?: (?:number |no\.? |#)?(\d{1,2})| (?:about|to|for|of|on|that|de|del|sobre|para)(?: (?:the|el|la|los|las))? (.{2,80}))?$/
const CANCEL_NAMED = /^(?:cancel|delete|drop|remove|kill|scratch|turn off|stop)(?: (?:the|that|my))? (.{2,60}) reminders?$/
const STOP =
  /^(?:(?:stop|quit) reminding (?:me|us)|no more reminders?|sin mas recordatorios|(?:don't|dont|do not|no need to) remind (?:me|us)|ya no (?:me|nos) recuerdes|no (?:me|nos) recuerdes(?: mas)?)(?: (?:about|to|of|that|de|lo del?|del|sobre|que))?(?: (?:the|el|la|los|las))? (.{2,80}?)(?: any ?more| mas)?$/
const DONE =
  /^(?:(?:it's|its|it is|that's|thats|that is|all|we|i|already|ya|ya esta|ya lo|ya la|ya se|eso)[, ]+)?(?:done|did (?:it|that)|got it done|taken care of|took care of (?:it|that)|finished|handled|hecho|hecha|listo|lista|hice|hicimos|hizo|quedo|terminado|terminamos)(?: (?:it|that|already|now|ya))?$/
const DONE_ABOUT =
  /^(?:(?:it's|all|i'm|we're|i am|we are) )?(?:done|finished|taken care of|handled|listo|lista|ya quedo|hecho)(?: with| con)?(?: (?:the|that|el|la|lo de))? (.{3,60})$/
const SNOOZE =
  /^(?:snooze|snooze it|snooze that|later|not now|not yet|remind me (?:again|later)|remind me again later|ask me (?:again|later)|again later|in a bit|in a while|mas tarde|luego|al rato|despues|ahorita no|todavia no|aun no|recuerdame (?:luego|mas tarde|despues|al rato)|posponer|pospon|pospon(?:lo|er))$/
/** What may stand before the time in "remind me again tomorrow". */
const BEFORE_TIME =
  /^(?:(?:snooze it|snooze|remind me again|remind me|again|push it|put it off|ask me again|make it|not now|later|recuerdame otra vez|recuerdame de nuevo|recuerdame|otra vez|posponlo|mejor)(?:,)?(?: (?:for|to|a|para|by))? )?(.+)$/
const JOINS = new Set([
  'for',
  'until',
  'till',
  'to',
  'at',
  'para',
  'hasta',
  'a',
  'the',
  'la',
  'las',
  'el',
  'en',
  'in',
  'for about',
  'about',
])

const ITEMS: [RegExp, string][] = [
  [/^(?:tires?|llantas?)$/, 'tires'],
  [/^(?:mesh|nets?|mallas?)$/, 'mesh'],
  [/^(?:(?:gravel |sand )?bags?|bolsas?|costales)$/, 'gravel bags'],
  [/^(?:plastics?|sheets?|covers?|plasticos?|lonas?)$/, 'plastic'],
  [/^(?:tarps?)$/, 'tarp'],
]
const WHERE = [
  /^(?:where (?:are|is|did) (?:all )?(?:the |our |my )*([a-z ]{3,16}?)(?: (?:now|at|go|gone))?|where'?s (?:the |our )*([a-z ]{3,16}))$/,
  /^(?:donde (?:estan|esta|quedaron|quedo) (?:las? |los? |el |nuestras? )*([a-z ]{3,16}))$/,
  /^how old (?:is|are) (?:the |our )*([a-z]{3,10})(?: (?:on|at|of) .{2,40})?$/,
  /^(?:que tan viej[oa]s? (?:es|son|esta) (?:el |la |los |las )*([a-z]{3,10})(?: (?:de|en) .{2,40})?)$/,
]
const ALL_WHERE =
  /^(?:what(?: stuff| supplies| cover)?(?: is|'s|s)? in use|what(?: is|'s|s) (?:on|lying on) (?:the piles|each pile|all the piles)|supplies in use|que hay (?:en uso|puesto)|que hay (?:en|sobre) (?:las pilas|los montones))$/

const FILLED = [
  /^(?:(?:that's|thats|that was|that is|this is|this was|here comes|it was|just dumped|dumped|put)(?: in)? )?(?:the |our |my )?last (?:load|one|truck|wagon)(?: (?:is )?(?:in|dumped|up))?(?: (?:for|on|onto|of) (?:the )?(.{2,40}?)(?: pile)?)?$/,
  /^(?:(?:we're|we are|all|that's it,?|i'm) )?(?:done|finished) (?:filling|chopping|hauling|putting up)(?: (?:on |for |onto )?(?:the )?(.{2,40}?)(?: pile)?)?$/,
  /^(.{2,40}?) is (?:full|topped off|filled|all filled)(?: now)?$/,
  /^(?:(?:ya |ese |este |eso )*(?:fue|es|era) )?(?:el |nuestro )?ultimo (?:viaje|carro|camion)(?: (?:ya )?(?:entro|subio))?(?: (?:de|en|para) (?:la |el )?(.{2,40}))?$/,
  /^ya (?:acabamos|terminamos) de (?:llenar|picar|acarrear)(?: (?:la |el |en )?(.{2,40}))?$/,
  /^(?:ya )?(?:se lleno|esta llena|esta lleno) (?:la |el )?(.{2,40})$/,
]

/** "in half an hour", "media hora": the date reader wants minutes. */
const spelled = (text: string): string =>
  text
    .replace(/\b(?:half an hour|a half hour|half hour)\b/g, '30 minutes')
    .replace(/\ban? (?=hour|minute|week|day)/g, '1 ')
    .replace(/\b(?:until|till) (?=\d)/g, 'at ')
    .replace(/\bhasta (?=las? )/g, 'a ')
    .replace(/\bafter (?:lunch|dinner)\b/g, 'at 1 pm')
    .replace(/\bdespues de comer\b/g, 'a las 2 de la tarde')
    .replace(/\bmedia hora\b/g, '30 minutos')
    .replace(/\buna (?=hora|semana)/g, '1 ')
    .replace(/\bfor (?=\d+ (?:minutes?|hours?|days?|weeks?))/g, 'in ')
    .replace(/\b(\d+) (?:mins?|min)\b/g, '$1 minutes')
    .replace(/\b(\d+) hrs?\b/g, '$1 hours')
    .replace(/^(?=\d+ (?:minutes|hours?|days?|weeks?)$)/, 'in ')
    .replace(/^(?=\d+ (?:minutos?|horas?|dias?|semanas?)$)/, 'en ')

const laterDate = (plain: string, now: { day: string; hour: number }): DateItem | undefined => {
  const said = BEFORE_TIME.exec(plain)?.[1]
  if (!said || said.split(' ').length > 10) return undefined
  // "remind" tells the date reader that it looks forward
  const tokens = tokenise(`remind ${spelled(said)}`)
  const dates = findDates(tokens, () => false, now)
  const covered = (k: number) =>
    k === 0 || dates.some(d => k >= d.from && k < d.to) || JOINS.has(tokens[k]!.norm) || tokens[k]!.kind === 'mark'
  if (!dates.length || !tokens.every((_, k) => covered(k))) return undefined
  const day = dates.find(d => d.explicit) ?? dates[0]!
  const time = dates.map(d => d.time).find(Boolean)
  return { ...day, ...(time && { time }) }
}

/** The day, and hour, that a whole message names, looking forward: "friday", "tomorrow at 6", "el viernes". */
export const dateIn = (text: string, now: { day: string; hour: number }): DateItem | undefined => laterDate(plainText(text), now)

/** No word about a reminder is longer. */
const MOST = 120

export const REMINDERS = CUE.reminder | CUE.where | CUE.filled | CUE.done | CUE.later | CUE.time

/**
 * A word about the reminders themselves, where the whole message is one; undefined for all else. Whether a "done" has a reminder to
 * belong to, the book knows.
 * @param cues the kinds of phrases that its words may be, see `cuesOf`
 * @param plain the text as `plainText` makes it
 */
export const choreIn = (
  text: string,
  now: { day: string; hour: number },
  cues: number = ANY_CUE,
  plain: string = plainText(text),
): Chore | undefined => {
  if (!(cues & REMINDERS) || text.length > MOST) return undefined
  if (cues & CUE.reminder) {
    const word = aboutReminders(plain)
    if (word) return word
  }
  if (cues & CUE.where) {
    const item = WHERE.map(w => w.exec(plain)?.slice(1).find(Boolean)).find(Boolean)
    const known = item === undefined ? undefined : ITEMS.find(([like]) => like.test(item))?.[1]
    if (known !== undefined) return { kind: 'where', item: known }
    if (ALL_WHERE.test(plain)) return { kind: 'where' }
  }
  if (/[?¿]/.test(text)) return undefined
  if (cues & CUE.filled)
    for (const way of FILLED) {
      const hit = way.exec(plain)
      if (hit) return { kind: 'filled', ...(hit[1] && { pile: hit[1] }) }
    }
  if (cues & CUE.done && DONE.test(plain)) return { kind: 'done' }
  if (cues & (CUE.later | CUE.reminder) && SNOOZE.test(plain)) return { kind: 'snooze' }
  const date = cues & (CUE.time | CUE.later | CUE.reminder) ? laterDate(plain, now) : undefined
  if (date) return { kind: 'snooze', date }
  const done = cues & CUE.done ? DONE_ABOUT.exec(plain)?.[1] : undefined
  return done ? { kind: 'done', about: done } : undefined
}

/** The list of reminders asked for, or one of them called off. */
const aboutReminders = (plain: string): Chore | undefined => {
  if (LIST.test(plain)) return { kind: 'list' }
  const cancel = CANCEL.exec(plain)
  if (cancel) {
    const all = /\b(?:all|todos)\b/.test(plain) && !cancel[1] && !cancel[2]
    return { kind: 'cancel', ...(cancel[1] && { number: Number(cancel[1]) }), ...(cancel[2] && { about: cancel[2] }), ...(all && { all }) }
  }
  const about = CANCEL_NAMED.exec(plain)?.[1] ?? STOP.exec(plain)?.[1]
  return about ? { kind: 'cancel', about } : undefined
}
