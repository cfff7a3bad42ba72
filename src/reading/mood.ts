import type { Segment } from './clauses.ts'
import { has, hasCat, type Item, isVerb } from './item.ts'
import { TO_LOG } from './logs.ts'
import { isThin } from './pool.ts'
import type { Mood } from './reading.ts'

const wordsOf = (items: Item[]): string => items.flatMap(i => i.tokens.map(t => t.norm)).join(' ')

const LOOKS_LIKE = /^(?:looks?|lookin|looking|feels?) (?:like|to be)\b|^parece\b/
const CAME = /\b(?:hail|rain|snow|thaw|ic)ed\b|\b(?:blew|froze|came|got|had|was|were|cayo|llovio|nevo|helo|hubo)\b/

/** Words that begin with what the sky looks like, with nothing in them that came already. */
const looksAhead = (items: Item[]): boolean => {
  const run = wordsOf(items)
  return (
    LOOKS_LIKE.test(run) &&
    !CAME.test(run) &&
    items.every(i => !i.date || i.date.ahead === true || /^(?:tonight|tonite|tnite|hoy|esta)/.test(i.tokens[0]!.norm))
  )
}

const TELLING =
  /^(?:log|logged|loggd|write|wrote|written|record|recorded|enter|entered|text|texted|report|reported|apunt\w*|anot\w*|registr\w*|avis\w*|say|said|tell|told|mention|mentioned|dije|dijo|dijimos)$/

/** "never logged it", "no lo apunté": not the deed is denied but that it was told. */
const deniesTelling = (items: Item[], at: number): boolean =>
  items.slice(at + 1, at + 4).some(i => TELLING.test(i.tokens[0]!.norm)) ||
  // "never told nobody"
  (TELLING.test(items[at - 1]?.tokens[0]?.norm ?? '') && items.slice(0, at - 1).some(i => has(i, 'm:no')))

/** Words before a deed or an end that did not quite come: "bout dumped a load", "shop is about gone". */
export const ALMOST = /^(?:(?:is|was|its) )?(?:bout|about|almost|nearly|just about|near|pretty near|damn near|casi|ya casi|por poco)$/

/** A word of denial that denies nothing of the deed. */
const affirms = (items: Item[], at: number, seg: Segment): boolean => {
  const word = items[at]!.text.toLowerCase()
  // "there's nothing left of it" is what empty means; "el maíz que falta" is to come
  if (seg.act?.frame === 'empty' && (/^(?:nothing|nada)$/.test(word) || items.slice(seg.from, at).some(i => has(i, 'thing:gone'))))
    return true
  if (seg.act?.frame === 'harvest' && /^faltan?$/.test(word)) return true
  // "no le vi ni un hoyo, esta bien": the harm is denied
  if (
    seg.act?.frame === 'check' &&
    seg.act.slots.finding === 'good' &&
    items.slice(at + 1, seg.to).some(i => hasCat(i, 'what') || (has(i, 'find:good') && NONE_OF.test(i.text)))
  )
    return true
  return deniesTelling(items, at)
}

/** "no, gauge says 1.4": what was said before is wrong; nothing is denied of what follows. */
const isAnswer = (items: Item[], k: number): boolean =>
  k === 0 && has(items[1], 'comma') && /^(?:no|nope|nah|nel|nop)$/.test(items[0]!.tokens[0]!.norm) && items[0]!.tokens.length === 1

const NONE_OF = /^(?:ni |no )/i

/** A word of condition that rules the clause: in it, or at the head of the sentence. "25 more tires on, in case it blows" is done. */
const isCondition = (items: Item[], k: number, seg: Segment): boolean => {
  const inside = k >= seg.from
  if (!inside) return k === 0 && !items.slice(0, seg.from).some(i => has(i, 'comma'))
  return !(JUST_IN_CASE.test(items[k]!.text) && items.slice(seg.from, k).some(isVerb))
}
export const JUST_IN_CASE = /^(?:(?:just )?in case|por si|x si|por si acaso|por si llueve|x si llueve)$/i

/** Spanish "sí" typed as "si": behind "pero" and its day it affirms, "pero anoche si llovio". */
const isYes = (items: Item[], k: number): boolean => {
  const i = items[k]!
  if (i.tokens[0]?.norm !== 'si') return false
  if (k === 0) return has(items[1], 'comma') || /í/.test(i.text)
  // "viento si, 45 millas", "shop si lo chequie"
  const before = items[k - 1]
  const named = hasCat(before, 'sky') || hasCat(before, 'pile') || hasCat(before, 'crop') || hasCat(before, 'mat')
  if (named && (has(items[k + 1], 'comma') || /^l[oae]s?$/i.test(items[k + 1]?.text ?? '') || hasCat(items[k + 1], 'v'))) return true
  let at = k - 1
  while (at > 0 && items[at]!.date) at--
  return has(items[at], 'but') || /í/.test(i.text)
}

/** "didnt touch barn, fed 2 batches off shop": what is denied is told before the pause, and a deed of its own behind it. */
const isLeftBehind = (items: Item[], at: number, seg: Segment): boolean => {
  const pause = items.findIndex((i, k) => k > at && has(i, 'comma'))
  return (
    pause > at + 1 &&
    pause < seg.from + 1 &&
    items.slice(at + 1, pause).some(i => !i.senses.length || hasCat(i, 'pile') || hasCat(i, 'animal')) &&
    items.slice(pause, seg.to).some(i => isVerb(i))
  )
}

const METER = /^(?:la|el|the) (?:cinta|bascula|báscula|metro|medidor|pluviometro|laboratorio|tape|scale|gauge|meter|lab|ticket)/i
const SAYS = /^(?:says?|said|tells?|told|reports?|dice|dijo|dicen|avisa|aviso)$/i

/** A word of telling that makes the clause somebody else's: "neighbor says", "forecast"; not "from the neighbor", which says where. */
const isHearsay = (items: Item[], at: number, seg: Segment): boolean => {
  // "the lab says 34"
  if (seg.act?.frame === 'test') return false
  // "the scale said 14,200 lb": nobody's word but a meter's
  if (/\b(?:scale|scales|ticket|gauge|meter|monitor|bascula|medidor)$/i.test(items[at - 1]?.text ?? '')) return false
  // "quedan 45 pies segun la cinta"
  if (METER.test(`${items[at + 1]?.text} ${items[at + 2]?.text}`)) return false
  // "i never said": it was not told before
  if (has(items[at - 1], 'm:no')) return false
  // "bo says they took 1,200 lb": of the crew
  if (hasCat(items[at - 1], 'person') && seg.act?.frame !== 'weather' && SAYS.test(items[at]!.text)) return false
  // "7 loads, i guess": only a little unsure
  const guess = /^(?:i )?(?:guess|think|reckon)$/.test(items[at]!.text.toLowerCase())
  if (guess && items.slice(seg.from, at).some(x => x.num !== undefined)) return false
  return !items.slice(Math.max(0, at - 2), at).some(x => has(x, 'off'))
}

/** "7 in snow yesterday and more coming": what is to come is said behind it, and what came was told before. */
const isAfterthought = (items: Item[], k: number, seg: Segment): boolean =>
  /^more /.test(items[k]!.text.toLowerCase()) &&
  has(items[k - 1], 'and') &&
  items.slice(seg.from, k).some(i => i.num !== undefined) &&
  items.slice(k + 1, seg.to).every(isThin)

/** "putting the net on after lunch": on the way, not done. */
const going = (i: Item): boolean => hasCat(i, 'v') && /ing?$/.test(i.tokens[0]!.norm)

const OURS = /^(?:gauge|farm|place|yard|field|fields|piles?|covers?|rancho|casa|house|lluviometro|pluviometro)$/
/** "my mom's garden up in Duluth got hail": on somebody else, or in a place that nobody here knows. */
const isElsewhere = (items: Item[]): boolean => {
  const sky = items.findIndex(i => hasCat(i, 'sky'))
  const before = items.slice(0, Math.max(sky, 0))
  return before.some((i, k) => {
    const next = before[k + 1]
    if (!next) return false
    if (/^(?:my|his|her|their|mi|tu)$/i.test(i.text)) return !OURS.test(next.tokens[0]!.norm)
    return /^(?:in|up in|down in|over in|en|alla en)$/i.test(i.text) && next.senses.length === 0 && next.num === undefined && !next.date
  })
}

/** A verb that tells what was done, and how much. */
const tellsAmount = (items: Item[]): boolean => items.some(i => isVerb(i) || hasCat(i, 'sky')) && items.some(i => i.num !== undefined)

/** A form that orders nothing and plans nothing: "went on", "hauled", "echamos". */
export const isPast = (i: Item): boolean =>
  isVerb(i) && /(?:ed|went|took|got|came|brought|threw|amos|imos|aron|ieron)$/.test(i.tokens[0]!.norm)

/** A plan that came to something else, told behind it: "wanted 3 ft, only took 2". */
const MEANT_TO =
  /^(?:wanted(?: to)?|meant to.*|should of|should have|shoulda|was gonna|were gonna|was going to|were going to|iba a|ibamos a|iban a|hiba a|queria|queriamos|querian)$/i

const PASSED_BY =
  /\b(?:went|slid|passed|stayed|slipped|tracked|headed|split|skirted)\b.*\b(?:of us|around us|past us|by us|other way|across the (?:river|road|valley))\b|\bse fue\b.*\b(?:lado|lejos|largo)\b/
const PASSES = new Set(['us', 'way', 'across', 'fue'])
const passesBy = (items: Item[]): boolean => items.some(i => i.tokens.some(t => PASSES.has(t.norm))) && PASSED_BY.test(wordsOf(items))

const MISSED_US = /^(?:went|missed|skipped|passed|slid|skirted|split)\b.*\bus\b/i

const CONTENT = ['pile', 'crop', 'mat', 'box', 'what', 'animal', 'sky', 'item', 'group', 'find', 'thing'] as const
const isContent = (i: Item): boolean =>
  i.num !== undefined || i.sides !== undefined || CONTENT.some(cat => hasCat(i, cat)) || i.date !== undefined
const PLEASE = /^(?:please|pls|plz|will|would|por favor|porfa)$/i
const WHEN = /^(?:when|once|cuando)\b/i
const JOKE = /\b(?:jk|kidding|joke|broma)\b/i

/** "rolled it back 5 ft on shop dont nobody go any farther": what is said behind all that was told is about something else. */
const isTrailing = (items: Item[], k: number, seg: Segment): boolean => {
  if (!has(items[k], 'm:no') && !has(items[k], 'm:tell') && !has(items[k], 'm:plan')) return false
  if (JOKE.test(items[k]!.text)) return false
  const rest = items.slice(k, seg.to)
  // "opened barn to feed, haven't took any out yet": behind the pause, and nothing is counted or named there
  const pause = items.findLastIndex((i, j) => j > seg.from && j < k && has(i, 'comma'))
  const told = pause > 0 ? items.slice(seg.from, pause) : []
  if (
    told.some(isPast) &&
    told.some(i => i.num !== undefined || hasCat(i, 'pile')) &&
    !items.slice(pause, seg.to).some(i => i.date === undefined && isContent(i))
  )
    return true
  return (
    !rest.some(isContent) &&
    rest.slice(1).some(x => !x.senses.length) &&
    items.slice(seg.from, k).some(isContent) &&
    items.slice(seg.from, k).some(isVerb)
  )
}

/** How a clause was meant, by the words of mood in it and before it. `told`: something was told before it in the same message. */
export const moodOf = (items: Item[], from: number, seg: Segment, carried: Mood | undefined, told = false): Mood => {
  // "that hail looked nasty but it went right around us"
  if (
    seg.act?.frame === 'weather' &&
    Object.keys(seg.act.slots).length === 1 &&
    (items.some(i => MISSED_US.test(i.text)) || passesBy(items.slice(seg.from, seg.to)))
  )
    return 'denial'
  if (seg.act?.frame === 'weather' && isElsewhere(items.slice(from, seg.to))) return 'hearsay'
  // "hope the rain holds off, got 9 loads on creek"
  const own = items.slice(seg.from, seg.to)
  const done =
    (carried === 'hope' || (carried === 'plan' && (own.some(isPast) || items.slice(0, seg.from).some(i => MEANT_TO.test(i.text))))) &&
    tellsAmount(own) &&
    has(items[seg.from - 1], 'comma')
  let mood: Mood = done ? 'fact' : (carried ?? 'fact')
  for (let k = from; k < seg.to; k++) {
    const i = items[k]!
    // "nothing wrong" finds; "nothing fed yet" denies
    if (has(i, 'find:good') && !(has(i, 'm:no') && seg.act !== undefined && seg.act.frame !== 'check' && seg.act.frame !== 'damage'))
      continue
    const inside = k >= seg.from
    // "apúntenle 4 viajes, por favor": told to whoever writes it down
    if (has(i, 'm:plan') && PLEASE.test(i.text) && items.slice(seg.from, seg.to).some(x => TO_LOG.test(x.text))) continue
    if (inside && !has(i, 'm:hope') && isTrailing(items, k, seg)) continue
    // "was gonna feed 12k but the mixer broke": what is told behind it sets nothing right
    if (has(i, 'but') && !(inside && items.slice(seg.from, k).some(x => hasCat(x, 'v') || hasCat(x, 'b')))) mood = 'fact'
    // "bout dumped a load on barn": it did not come to that
    if (inside && ALMOST.test(i.text.toLowerCase()) && hasCat(items[k + 1], 'v')) mood = 'denial'
    if (has(i, 'so') && inside && seg.act?.frame !== 'open' && items.slice(0, k).some(x => hasCat(x, 'v'))) return 'plan'
    if (has(i, 'm:hope')) return 'hope'
    // "it was dark when we got done": a time, no condition
    if (
      has(i, 'm:if') &&
      inside &&
      WHEN.test(i.text) &&
      (items[k + 1] === undefined || isPast(items[k + 1]!) || has(items[k + 1], 'filler')) &&
      !items.slice(k + 1, seg.to).some(isContent) &&
      items.slice(seg.from, k).some(isVerb)
    )
      continue
    // "si, di 11 mil": yes, not if
    if (has(i, 'm:if') && isCondition(items, k, seg) && !isYes(items, k) && seg.act?.frame !== 'open') return 'if'
    if (has(i, 'm:no') && !isAnswer(items, k) && !affirms(items, k, seg) && !(!inside && isLeftBehind(items, k, seg))) mood = 'denial'
    // "from the neighbor" says where, "neighbor says" who
    if (has(i, 'm:tell') && mood === 'fact' && !hasCat(items[k + 1], 'animal') && isHearsay(items, k, seg)) mood = 'hearsay'
    // "5 loads, luego otros 3": then, not later
    const then =
      told && has(i, 'and') && (from > 0 || has(items[k + 1], 'more')) && items.slice(from, k).every(x => has(x, 'and') || has(x, 'comma'))
    // "we should be feeding 80 a head"
    if (mood === 'fact' && /^should/.test(i.tokens[0]?.norm ?? '') && (hasCat(items[k + 1], 'v') || hasCat(items[k + 1], 'b')))
      mood = 'plan'
    // "looks like rain", "looks like hail tonight" look ahead; "looks like it hailed last night" looks back
    if (mood === 'fact' && inside && seg.act?.frame === 'weather' && looksAhead(items.slice(k, seg.to))) mood = 'plan'
    // "opened lane, going to feed out of it": opened already
    const purpose = seg.act?.frame === 'open' && seg.act.slots.why !== undefined && items.slice(seg.from, k).some(x => has(x, 'v:open'))
    if (purpose) continue
    if (has(i, 'm:plan') && mood === 'fact' && !has(i, 'approx') && !then && !isAfterthought(items, k, seg)) mood = 'plan'
    if (i.date?.ahead && mood === 'fact') mood = 'plan'
  }
  if (mood === 'fact' && items.some((i, k) => k >= seg.from && k < seg.to && going(i))) {
    const run = items
      .slice(seg.from, seg.to)
      .flatMap(i => i.tokens.map(t => t.norm))
      .join(' ')
    if (/\b\w+in[g]?\b.*\b(after (lunch|dinner|supper|chores|milking)|later|this afternoon|in a bit|in a minute)\b/.test(run)) return 'plan'
  }
  return mood
}

/** Frames that look forward by nature: their plans are what they record. */
const FORWARD = new Set(['remind', 'harvest', 'note', 'pile', 'box'])

/** "had to open barn back up": the bare verb behind it tells, and orders nothing. */
const HAD_TO = /\b(?:had to|did|tuvimos que|tuve que|tuvo que|tuvieron que)\b/

const MAYBE = /^(?:might|may|maybe|could|thinking of|thinking about|quiza|quizas|a lo mejor|tal vez)$/i

/** The mood of a clause's act: some frames look forward by nature, and a bare verb may order what is to be done. */
export const moodOfAct = (mood: Mood, seg: Segment, items: Item[], from: number): Mood => {
  const act = seg.act!
  // "might start another pile next week"
  if (mood === 'plan' && (act.frame === 'pile' || act.frame === 'box') && items.slice(from, seg.to).some(i => MAYBE.test(i.text)))
    return 'plan'
  // "lo espero pal 25"
  if (act.frame === 'harvest' && mood === 'hope' && act.date && items.slice(from, seg.to).some(i => /^esper(?:o|amos)$/i.test(i.text)))
    return 'fact'
  if (FORWARD.has(act.frame) && mood !== 'denial' && mood !== 'hope' && mood !== 'hearsay') return 'fact'
  const said = () =>
    items
      .slice(from, seg.to)
      .map(i => i.text.toLowerCase())
      .join(' ')
  // "feed fri 9.8k": pounds to a named day are told; "open spring friday" may still be to come, and a bill "this month" names no day
  const { date } = act
  const weighed = date?.explicit === true && date.ahead !== true && date.past !== date.future && act.slots.lb !== undefined
  return mood === 'fact' && seg.order && !weighed && !HAD_TO.test(said()) ? 'order' : mood
}
