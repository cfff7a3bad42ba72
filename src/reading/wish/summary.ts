import { type Half, HOUR, hourOf } from '../plainText.ts'
import { isWho, type Made, type WishName, whoOf } from './made.ts'

type Name = 'morning' | 'evening' | 'weekly'
const words = (list: string): Set<string> => new Set(list.split(' '))

const WHICH: [Name, Set<string>][] = [
  ['morning', words('morning daily dawn manana matutino madrugada diario mananero')],
  ['evening', words('evening nightly night tarde noche vespertino')],
  ['weekly', words("weekly week's week semanal semana")],
]
const SUMMARY = words('summary summaries report reports rundown update 1 ones resumen resumenes reporte reportes informe informes mensaje')
const ALL = words('summaries resumenes')
const VERB = words(
  'send sending give giving post posting want wants make put set move have text texting get gets getting need needs do sign gets should would like manda mandale mandame mandanos mandes manden envia enviale enviame envies quiero quiere queremos pon ponme ponlo cambia pasa pasame dame',
)
const OFF = words("don't dont no not never stop quit unsubscribe sin doesn't doesnt quita para-de deja")
const FILLER = words(
  "the a an to for at on too out also any more up off from be is goes comes el la los las de para le les nos un una del ya i'd only tambien then anymore every cada take do",
)
/** Words that make it another sentence. */
const BLOCK = words('in with and if when about en con y si cuando that')
const MINE = /^(?:mandame|enviame|ponme|dame|pasame|quiero)$/
const DAYS = ['sun|domingo', 'mon|lunes', 'tue|martes', 'wed|miercoles', 'thu|jueves', 'fri|viernes', 'sat|sabado']
const DAY =
  /\b(?:(?:sun|mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?)(?:days?)?|lunes|martes|miercoles|jueves|viernes|sabados?|domingos?)\b/
const HALF: Record<Name, Half | undefined> = { morning: 'am', evening: 'pm', weekly: 'pm' }

/** "no summary when there is nothing to say" and its opposite. */
const ofNothing = (text: string): Made | undefined => {
  if (!/\b(?:if|when|unless|si|cuando|even|aunque)\b.*\b(?:nothing|something|nada|algo)\b/.test(text)) return undefined
  if (!/\b(?:summary|summaries|report|message|send|write|text|resumen|reporte|mensaje|mandes?|manda|escrib\w*)\b/.test(text))
    return undefined
  if (text.split(' ').length > 14) return undefined
  return { sets: [['emptySummaries', /\b(?:even|aunque|incluso|always|siempre)\b/.test(text)]] }
}

/** Who gets which summary, and when. Every word must be one of those that say so; one may be left over, and is a name. */
export const summaryWish = (text: string): Made | undefined => {
  const nothing = ofNothing(text)
  if (nothing) return nothing
  const clock = new RegExp(`\\b(?:at|to|by|around|for|a|para|be)(?: las?)? ${HOUR}(?= |$)`).exec(text)
  let rest = clock ? text.replace(clock[0], ' ') : text
  const day = DAY.exec(rest)?.[0]
  if (day) rest = rest.replace(day, ' ')
  const found = { off: false, verb: false, summary: false, all: false, mine: false, which: new Set<Name>(), who: [] as string[] }
  const list = rest.split(/[\s,]+/).filter(Boolean)
  if (list.length > 14) return undefined
  for (const word of list) {
    const which = WHICH.find(([, set]) => set.has(word))?.[0]
    if (BLOCK.has(word)) return undefined
    if (which) found.which.add(which)
    else if (SUMMARY.has(word)) {
      found.summary = true
      found.all ||= ALL.has(word)
    } else if (OFF.has(word)) found.off = true
    else if (VERB.has(word)) {
      found.verb = true
      found.mine ||= MINE.test(word)
    } else if (isWho(word)) found.who.push(whoOf(word))
    else if (!FILLER.has(word)) found.who.push(word)
  }
  const names: Name[] = found.which.size ? [...found.which] : found.all && found.off ? ['morning', 'evening', 'weekly'] : []
  const one = names[0]
  const said = new Set(found.who)
  if (!one || said.size > 1 || !(found.summary || (found.verb && one === 'weekly'))) return undefined
  if (!found.verb && !found.off && !clock && !day) return undefined
  const who = [...said][0] ?? (found.mine || /\bno me\b/.test(text) ? 'me' : undefined)
  if (found.off) return clock || day ? undefined : { sets: names.map(n => [n, false] as [WishName, boolean]), ...(who && { who }) }
  const sets: Made['sets'] = []
  if (clock) sets.push([`${one}Hour`, hourOf(clock[1]!, HALF[one])])
  if (day) {
    if (one !== 'weekly') return undefined
    sets.push(['weeklyDay', DAYS.findIndex(d => new RegExp(`^(?:${d})`).test(day))])
  }
  // An hour alone moves the summary; a person, or no hour, asks for it.
  if (!sets.length || (who !== undefined && who !== 'crew')) sets.unshift(...names.map(n => [n, true] as [WishName, boolean]))
  return { sets, ...(who && { who }) }
}
