import { inLb } from './frames/slots.ts'
import { has, hasCat, type Item, valueOf } from './item.ts'
import { speaksOf } from './lexicon.ts'
import { weightOf } from './pool.ts'
import type { AskSaid, FrameName } from './reading.ts'
import { mayWe, supposes, whatIfIn } from './whatIf.ts'

/** In a sentence that asks, these words ask for what was photographed. */
const PICTURE = /\b(?:pictures?|photos?|pics?|fotos?|imagen(?:es)?)\b/
const SHOW = /\b(?:show|see|ensename|ensenanos|muestrame|muestranos|ver)\b/
const WORTH = /\b(?:worth|value|vale|valor)\b/

/** Things of the yard that no pile has: "who left the gate open". */
const AROUND = /\b(?:gates?|doors?|lights?|fridge|radio|heater|porton|puertas?|luz|luces|cerco)\b/

const LOGGED = /\b(?:log|logged|apunt\w*|registr\w*|wrote|entered|reported|dijo)\b/
const DONE = /\b(?:said|put|puso|hizo|did|sent|rompio|parcho|tapo|reviso)\b/

/** "quien trae las tortillas": what is asked about is no thing of the trade. */
const ofOtherThings = (x: Seen): boolean =>
  !['pile', 'crop', 'mat', 'box', 'unit', 'what'].some(x.c) &&
  !x.s('date') &&
  x.items.some(i => !i.senses.length && i.num === undefined && i.text.length > 3)

interface Seen {
  items: Item[]
  s: (sense: string) => boolean
  c: (cat: string) => boolean
  text: string
  numbers: boolean
}

const VERB_TYPES: [string, FrameName][] = [
  ['v:cover', 'cover'],
  ['v:patch', 'patch'],
  ['v:check', 'check'],
  ['v:feed', 'feed'],
  ['v:open', 'open'],
  ['v:pack', 'pack'],
  ['v:put', 'load'],
  ['b:cover', 'cover'],
  ['b:check', 'check'],
  ['b:feed', 'feed'],
  ['b:open', 'open'],
  ['b:patch', 'patch'],
]

const asksIf = (text: string): boolean => supposes(text) || /\bwhat if\b|\by si\b/.test(text)
const changes = (x: Seen): boolean => Object.keys(whatIfIn(x.items, x.text)).length > 0 || x.s('date')

/** The rules, most particular first. Each says which question it hears, or nothing. */
const RULES: [string, (x: Seen) => boolean][] = [
  ['help', x => x.s('q:help') && !/\b(thanks|thank|thx|gracias)\b/.test(x.text)],
  ['why', x => x.s('q:why') && !x.c('crop') && !x.c('mat')],
  ['reach', x => asksIf(x.text) && !x.c('mat') && !x.s('v:pack') && !speaksOf('qt:plan', x.text) && changes(x)],
  ['reach', x => mayWe(x.text) && !x.c('mat')],
  ['checks', x => (x.s('q:when') || x.s('q:howlong')) && (x.s('v:check') || x.s('b:check') || x.s('qt:checks')) && !x.s('qt:ready')],
  // "has anyone checked lane" wants the last time
  ['checks', x => /\b(anyone|anybody|somebody|alguien)\b/.test(x.text) && (x.s('v:check') || x.s('b:check'))],
  [
    'who',
    x =>
      x.s('q:who') &&
      !(AROUND.test(x.text) && !x.c('mat')) &&
      // "who took my cap"
      !x.items.some((i, k) => /^(?:my|mi|mis)$/.test(i.text.toLowerCase()) && x.items[k + 1]?.senses.length === 0) &&
      (((x.s('v:take') || x.s('v:roll') || x.s('v:uncover')) &&
        (x.c('mat') || (x.c('pile') && !x.items.some(i => i.senses.length === 0)))) ||
        (VERB_TYPES.some(([s]) => x.s(s)) && !ofOtherThings(x)) ||
        LOGGED.test(x.text) ||
        (DONE.test(x.text) && !ofOtherThings(x))),
  ],
  [
    'checks',
    x =>
      (x.s('q:when') ||
        x.s('q:yesno') ||
        x.s('q:who') ||
        x.s('q:howlong') ||
        /\b(last|ultima|due|toca|pendientes?|doing?|(?:falta|queda)(?: por)? hacer|hay que (?:hacer|revisar|checar|ver))\b/.test(x.text)) &&
      (x.s('v:check') || x.s('b:check') || x.s('qt:checks')) &&
      !x.s('qt:ready'),
  ],
  ['face', x => x.s('q:howmany') && x.s('thing:face') && (x.s('per:day') || x.s('unit:in'))],
  // "good for how many days"
  [
    'left',
    x =>
      x.s('q:howmany') &&
      x.s('unit:day') &&
      !x.c('mat') &&
      !x.s('unit:load') &&
      !x.s('date') &&
      !/\b(?:since|desde|ago|late)\b/.test(x.text),
  ],
  ['picture', x => PICTURE.test(x.text) || (SHOW.test(x.text) && x.c('what') && !x.c('mat'))],
  // "what's the feed worth": of every pile, where none is named
  ['status', x => WORTH.test(x.text) && !x.c('mat') && !x.c('item')],
  ['history', x => x.s('q:happened') && !x.s('qt:mix')],
  ['density', x => x.c('pile') && x.items.some(i => i.unit === 'tractor' || has(i, 'unit:tractor')) && (x.s('q:what') || x.s('q:how'))],
  ['density', x => x.s('qt:density') || ((x.s('v:pack') || x.s('b:pack')) && /\b(enough|good|ok|bien|tight)\b/.test(x.text))],
  [
    'face',
    x => x.s('qt:face') || (/\b(enough|enuf|suficiente|bastante)\b/.test(x.text) && x.s('per:day') && (x.s('v:take') || x.s('v:feed'))),
  ],
  ['mix', x => x.s('qt:mix') && (!x.s('unit:batch') || !x.numbers)],
  // "how much of north is corn"
  ['mix', x => x.c('pile') && x.c('crop') && /\b(how much|what part|cuanto|que tanto) (of|de|del)\b.*\b(is|es)\b/.test(x.text)],
  ['mix', x => x.s('qt:mix') && (x.s('q:what') || x.s('q:how')) && !x.s('v:feed')],
  ['loss', x => x.s('qt:loss') && (x.s('q:what') || x.s('q:howmany') || x.s('q:how') || x.s('q:yesno'))],
  ['plan', x => x.s('qt:plan') && !x.c('mat') && !(x.s('v:measure') && x.c('pile'))],
  [
    'reach',
    x =>
      asksIf(x.text) ||
      (x.s('qt:reach') &&
        !(x.s('q:howlong') && !x.c('cutword') && !x.s('date')) &&
        (x.c('crop') ||
          x.c('cutword') ||
          x.c('say') ||
          x.s('date') ||
          /\b(spring|winter|harvest|cosecha|primavera|invierno|corte|make it|alcanza\w*|llegamos|short|crop|cutting)\b/.test(x.text)) &&
        !x.c('mat') &&
        !x.s('q:howmany')),
  ],
  [
    'cover',
    x =>
      (x.c('mat') || x.s('v:cover') || x.s('b:cover')) &&
      (x.s('q:what') || x.s('q:howmany') || x.s('q:how')) &&
      (x.s('qt:cover') ||
        x.s('v:cover') ||
        x.s('b:cover') ||
        x.s('m:plan') ||
        /\b(need|take|ocup\w*|necesit\w*|for|para|tapar|medida|lleva)\b/.test(x.text)) &&
      !/\b(have|left|got|hay|tenemos|quedan?)\b/.test(x.text),
  ],
  [
    'supplies',
    x =>
      (x.c('mat') || x.c('item') || /\b(supplies|inventory|inventario|stock)\b/.test(x.text)) &&
      (x.s('q:howmany') || x.s('q:what') || x.s('q:yesno') || x.s('v:have') || x.s('q:how') || x.s('thing:left')) &&
      !x.s('v:cover') &&
      // "did you get that mesh back on barn"
      !(x.c('pile') && x.s('q:yesno') && !x.s('q:howmany')) &&
      !x.s('v:break') &&
      // "anybody know a guy with a load of gravel"
      !/\b(?:know|knows|sabe|saben|conoce|conocen) (?:a|an|of|any|some|somebody|someone|alguien|un|una)\b/.test(x.text),
  ],
  [
    'ready',
    x =>
      (x.s('qt:ready') || x.s('v:open') || x.s('b:open')) &&
      (x.s('q:yesno') || x.s('q:when') || x.s('q:how') || /\b(yet|ready|ya|lista|listo)\b/.test(x.text) || x.s('m:plan')) &&
      !x.s('q:howmany') &&
      !x.s('q:who') &&
      !x.s('q:howlong'),
  ],
  [
    'left',
    x =>
      x.s('q:howlong') ||
      ((x.s('q:howmany') || x.s('q:how') || x.s('q:when') || x.s('q:what')) && (x.s('thing:left') || x.s('qt:last')) && !x.c('mat')),
  ],
  ['loads', x => x.s('unit:load') && x.s('date') && !x.c('mat')],
  [
    'loads',
    x =>
      x.s('q:howmany') &&
      /\b(so far|in there|in it|on there|on it|llevamos|van hoy|is that|that make|that makes|does that make|son ya|van ya)\b/.test(
        x.text,
      ) &&
      !x.c('mat'),
  ],
  [
    'loads',
    x =>
      (x.s('q:howmany') || x.s('total')) &&
      !x.c('what') &&
      (x.s('unit:load') || x.c('crop') || x.s('unit:ton') || x.s('unit:lb') || x.c('pile') || x.s('v:put') || x.s('v:feed')),
  ],
  [
    'status',
    x =>
      (x.s('q:how') || x.s('q:what') || x.s('q:where') || x.s('q:yesno') || (x.c('what') && x.c('pile'))) &&
      // "can somebody stack those pallets behind the shop"
      !/^(?:we |you |u )?(?:oughta|ought to|better|might wanna|might want to)\b|\b(?:can|could|would|will) (?:somebody|someone|anybody|anyone|one of you|you|u|y?all)\b(?! (?:please )?(?:tell|let))|\b(?:alguien|me|nos) (?:puede|podria|ayuda)n?\b/.test(
        x.text,
      ) &&
      (x.c('pile') || /\b(everything|things|piles|pilas|todo)\b|^(status|estado)$/.test(x.text)) &&
      // "who left the gate by the creek open, heifers are out"
      !(x.s('q:who') && AROUND.test(x.text)) &&
      !x.c('person'),
  ],
]

/** Questions about one pile. */
const OF_A_PILE = new Set(['left', 'status', 'density', 'cover', 'ready', 'mix', 'loss', 'face', 'checks'])
const LEADS = /^(?:on|onto|for|in|off|into|at|is|hows|en|de|del|para|pa|al)$/
const NO_PILE =
  /^(?:winter|spring|summer|fall|autumn|now|good|certain|sure|real|example|once|ever|there|here|work|you|me|us|it|this|that|comida|alimento|forraje|pastura|feed|food|silage|silo|invierno|verano|primavera|otono|ahora|siempre|seguro|favor)$/

/** A name nobody knows where the name of a pile belongs: "what plastic for bank", "how is the mill pile". */
const strangeIn = (items: Item[]): string | undefined => {
  for (const [k, i] of items.entries()) {
    const word = i.tokens.length === 1 && i.tokens[0]!.kind === 'word' ? i.tokens[0]!.norm : ''
    if (i.senses.length || word.length < 3 || NO_PILE.test(word)) continue
    let at = k - 1
    while (at >= 0 && /^(?:the|el|la|los|las)$/.test(items[at]!.tokens[0]?.norm ?? '')) at--
    const led = LEADS.test(items[at]?.tokens.at(-1)?.norm ?? '')
    const last = items.slice(k + 1).every(x => has(x, 'pileword') || has(x, 'ask?') || has(x, 'mark'))
    if (has(items[k + 1], 'pileword') || (led && last)) return i.text.toLowerCase()
  }
  return undefined
}

/** Which question a sentence asks, with what it names; undefined where it asks something else. */
export const readAsk = (items: Item[]): AskSaid | undefined => {
  const senses = new Set<string>()
  const cats = new Set<string>()
  for (const i of items) {
    for (const s of i.senses) {
      senses.add(s)
      const c = s.indexOf(':')
      if (c > 0) cats.add(s.slice(0, c))
      else cats.add(s)
    }
    if (i.date) senses.add('date')
    if (i.unit) senses.add(`unit:${i.unit}`)
    if (i.sides) senses.add('sides')
  }
  const text = items.map(i => i.tokens.map(t => t.norm).join(' ')).join(' ')
  const seen: Seen = {
    items,
    s: s => (s.startsWith('qt:') ? speaksOf(s, text) : senses.has(s)),
    c: c => cats.has(c),
    text,
    numbers: items.some(i => i.num !== undefined),
  }
  const rule = RULES.find(([, fits]) => fits(seen))
  if (!rule) return undefined
  // "show me lane this week": a pile over some days is its history
  const about = rule[0] === 'status' && items.some(i => i.date?.span) ? 'history' : rule[0]
  const slots: Record<string, unknown> = {}
  const pile = items.find(i => hasCat(i, 'pile'))
  if (pile) slots.pile = valueOf(pile, 'pile')
  else if (OF_A_PILE.has(about)) {
    const strange = strangeIn(items)
    if (strange) slots.pile = strange
  }
  const cropAt = items.findIndex((i, k) => hasCat(i, 'crop') && (!has(i, 'cutword') || hasCat(items[k - 1], 'say')))
  const crop = cropAt >= 0 ? items[cropAt]! : undefined
  const ordinal = items.find((i, k) => hasCat(i, 'say') && (has(items[k + 1], 'cutword') || hasCat(items[k + 1], 'crop')))
  if (ordinal) slots.cut = Number(valueOf(ordinal, 'say')!.split(':')[1])
  if (crop && (about === 'loads' || about === 'reach' || about === 'plan' || about === 'left' || about === 'who')) {
    const next = items[cropAt + 1]
    slots.crop = has(crop, 'cutword') && hasCat(next, 'crop') && !has(next, 'cutword') ? valueOf(next, 'crop') : valueOf(crop, 'crop')
  }
  for (const i of items) {
    if (i.date) {
      slots.date = i.date
      continue
    }
    if (i.num === undefined || i.ordinal || about === 'reach') continue
    const lb = inLb(i)
    if (lb !== undefined && items.some(x => hasCat(x, 'per') && has(x, 'per:day'))) slots.lbPerDay = lb
    else if (lb !== undefined && items.some(x => has(x, 'per:head'))) slots.lbPerHead = lb
    else if (lb !== undefined) slots.lb = lb
    else if (i.unit === 'day') slots.days = i.num
    else if (i.unit === 'month') slots.days = i.num * 30
    else if (i.unit === 'head' || (i.unit === undefined && senses.has('v:milk') && i.num < 20_000)) slots.head = i.num
    else if (i.unit === undefined && senses.has('per:day')) slots.lbPerDay = i.num
  }
  if (about === 'status' && WORTH.test(text)) slots.worth = true
  if (about === 'reach') {
    Object.assign(slots, whatIfIn(items, text))
    // feed that is bought is not the harvest that is waited for
    if (slots.addLb !== undefined && !cats.has('cutword')) delete slots.crop
    if (slots.together !== undefined) delete slots.pile
  }
  const group = items.find(i => hasCat(i, 'group'))
  if (slots.head !== undefined && group) slots.group = valueOf(group, 'group')
  const verb = VERB_TYPES.find(([s]) => senses.has(s))
  if (verb && (about === 'who' || about === 'history')) slots.type = verb[1]
  if (about === 'picture' && cats.has('what')) slots.type = 'damage'
  const mat = items.find(i => hasCat(i, 'mat') || hasCat(i, 'item'))
  if (mat && about === 'supplies') slots.item = valueOf(mat, 'mat') ?? valueOf(mat, 'item')
  const person = items.find(i => hasCat(i, 'person'))
  if (person) slots.by = valueOf(person, 'person')
  let left = 0
  let used = 0
  for (const i of items) {
    const w = weightOf(i)
    if (i.senses.length === 0) left += 1
    else used += w
  }
  return { about, slots, used, left }
}
