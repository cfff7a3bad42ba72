import { HOUR, hourOf } from '../plainText.ts'
import type { Made } from './made.ts'

const COVERS =
  '(?:the |our |all |las |los |todas |todos |a )*(?:covers?|piles?|plastics?|sheets?|tarps?|tapas?|cubiertas?|lonas?|plasticos?|pilas?|montones)'
const INTERVAL =
  '((?:every|each|cada|todos los|todas las) (?:other |second |tercer )?(?:\\d+ )?(?:days?|weeks?|dias?|semanas?)|daily|weekly|diario|diariamente|(?:\\d+ (?:times?|vez|veces)|una vez) (?:a|per|each|por|a la|al|cada) (?:week|semana|day|dia|month|mes)|every ?day|un dia si y otro no)'

/** "every 5 days", "2 times a week", "weekly", "cada tercer dia": the days between, or undefined. */
const intervalOf = (said: string): number | undefined => {
  const weeks = /(\d+) (?:weeks?|semanas?)/.exec(said)
  if (weeks) return Number(weeks[1]) * 7
  const times = /(\d+|una) (?:times?|veces|vez) (?:a la|por|al|a|per|each|cada) (week|semana|month|mes|day|dia)/.exec(said)
  if (times) {
    const days = /week|semana/.test(times[2]!) ? 7 : /day|dia/.test(times[2]!) ? 1 : 30
    return Math.max(1, Math.round(days / (times[1] === 'una' ? 1 : Number(times[1]))))
  }
  const days = /(\d+) ?(?:days?|dias?)/.exec(said)
  if (days) return Number(days[1])
  if (/other day|second day|tercer dia|un dia si/.test(said)) return 2
  if (/other week/.test(said)) return 14
  if (/daily|every ?day|each day|diari|todos los dias|cada dia/.test(said)) return 1
  return /week|seman/.test(said) ? 7 : undefined
}

const CHECKS = [
  new RegExp(
    `^(?:we )?(?:check|walk|look at|look over|inspect|revisar?|revisen|revisamos|revisemos|checar|checa|checamos|checken|chequear) ${COVERS} ${INTERVAL}$`,
  ),
  new RegExp(`^${COVERS} (?:get |are |should be |need to be |have to be |must be )?(?:checked|walked|se revisan|se checan) ${INTERVAL}$`),
  new RegExp(
    `^(?:set |make |change )?(?:the )?(?:cover |pile )?(?:checks?|walks?|revision(?:es)?)(?: of ${COVERS}| de ${COVERS})?(?: are| is| to| be)?:? ${INTERVAL}$`,
  ),
  /^(?:set |make |change )?(?:the )?(?:cover )?check (?:interval|days)(?: is| to| at)?:? (?:every )?(\d+ days)$/,
]
const NUDGE = '(?:nudges?|pings?|askings?|nags?|follow-?ups?|questions?|avisos?|preguntas?|insistencias?)'
const A_DAY = '(?:a|per|each|al|por) (?:day|dia)'
const AT_MOST = '(?:no more than|not more than|at most|max(?:imum)?(?: of)?|only|up to|no mas de|maximo|solo|a lo mas|cuando mucho)'
const NUDGES = [
  new RegExp(`^${AT_MOST} (\\d+) ${NUDGE} ${A_DAY}$`),
  new RegExp(`^(\\d+) ${NUDGE} ${A_DAY}(?: max(?:imum|imo)?| at most)?$`),
  new RegExp(`^(?:nudge|nag|ask|bug|avisa|avisame|avisanos|pregunta)(?: me| us)? ${AT_MOST} (\\d+) (?:times?|veces|vez) ${A_DAY}$`),
]
const NO_NUDGES = /^(?:no nudges|no nagging|(?:don't|dont) nag(?: me| us)?|stop (?:nagging|nudging)(?: me| us)?|sin avisos|no insistas)$/
const SPAN = '(\\d+ (?:days?|weeks?|dias?|semanas?))'
const WAITS = [
  new RegExp(
    `^(?:(?:we )?(?:wait|leave|keep|let|give) )(?:the piles|piles|every pile|a pile|them)? ?(?:closed|shut|sealed|covered|alone|sit|work|ferment)? ?(?:for |at least )*${SPAN} (?:before|after)\\b.*$`,
  ),
  new RegExp(
    `^(?:leave|keep|let) (?:the piles|piles|every pile) (?:closed|shut|sealed|covered|alone|sit|work|ferment) (?:for |at least )*${SPAN}$`,
  ),
  new RegExp(`^(?:set )?(?:the )?wait(?:ing)?(?: time| days)?(?: is| are| to| at|:)+ ?${SPAN}$`),
  new RegExp(`^waiting (?:time|days) ${SPAN}$`),
  new RegExp(`^piles (?:sit|wait|ferment|work|stay shut|stay closed) (?:for |at least )*${SPAN}(?: before\\b.*)?$`),
  new RegExp(`^(?:hay que )?espera[rn]? (?:por lo menos |al menos )?${SPAN} (?:antes|despues)\\b.*$`),
  new RegExp(`^(?:dias|tiempo) de espera:? ${SPAN}$`),
  new RegExp(
    `^(?:dejar|deja|dejen) (?:las pilas |cada pila |los montones )(?:tapad[ao]s?|cerrad[ao]s?) (?:por lo menos |al menos )?${SPAN}(?: antes\\b.*)?$`,
  ),
]
const SAY = '(?:say|tell|give|post|show|send|di|dime|dinos|dale|da|pon|manda)'
const TOTALS = [
  new RegExp(
    `^(?:${SAY} )?(?:(?:me|us|nos) )?(?:(?:the|a|your|el|un) )?(?:running )?totals? (?:after )?(?:every|each|cada) (?:(\\d+) )?(?:loads?|viajes?)$`,
  ),
]
const NO_TOTALS =
  /^(?:no (?:running )?totals|(?:don't|dont) (?:say|tell|give|post) (?:us |me )?(?:the )?(?:running )?totals?|sin totales|no digas (?:el total|totales))$/
const ASK = new RegExp(
  `^(?:ask|nudge|follow up|ask about open things|pregunta(?:r)?)(?: (?:us|me|the crew|what is open|what's open|lo pendiente))? (?:at|a)(?: las?)? ${HOUR}$`,
)

const first = (patterns: RegExp[], text: string): string | undefined => {
  for (const p of patterns) {
    const hit = p.exec(text)?.[1]
    if (hit !== undefined) return hit
  }
  return undefined
}

/** How often covers are walked, how often the crew is nudged, how long a pile waits. */
export const numberWish = (text: string): Made | undefined => {
  const check = first(CHECKS, text)
  if (check) return { sets: [['checkDays', intervalOf(check)]] }
  const most = NO_NUDGES.test(text) ? '0' : first(NUDGES, text)
  if (most) return { sets: [['nudgesPerDay', Number(most)]] }
  if (NO_TOTALS.test(text)) return { sets: [['totalEvery', 0]] }
  const total = TOTALS.map(p => p.exec(text)).find(Boolean)
  if (total) return { sets: [['totalEvery', Number(total[1] ?? 1)]] }
  const wait = first(WAITS, text)
  if (wait) return { sets: [['waitDays', intervalOf(wait)]] }
  const ask = ASK.exec(text)
  return ask ? { sets: [['askHour', hourOf(ask[1]!)]] } : undefined
}
