import { addDays, addMonths, type Day, dayOf, weekday } from '../units/calendar.ts'
import { has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import type { Act } from './reading.ts'
import { foldWord } from './tokens.ts'

/** How a thing comes back. */
interface Again {
  every: 'day' | 'week' | 'month'
  /** Every so many of them. */
  step?: number
  /** Days of the month or of the week it falls on, as first days. */
  from: Day[]
  /** Items that said so. */
  items: Set<Item>
}

const EVERY = /^(?:every|each|cada|todos|todas)$/
const UNITS: [RegExp, Again['every']][] = [
  [/^(?:days?|dias?|mornings?|evenings?|nights?|mananas?|tardes?|noches?)$/, 'day'],
  [/^(?:weeks?|semanas?)$/, 'week'],
  [/^(?:months?|mes|meses)$/, 'month'],
]
const WEEKDAYS: Record<string, number> = Object.fromEntries(
  [
    'sunday sundays sun domingo domingos',
    'monday mondays mon lunes',
    'tuesday tuesdays tue tues martes',
    'wednesday wednesdays wed miercoles',
    'thursday thursdays thu thur thurs jueves',
    'friday fridays fri viernes',
    'saturday saturdays sat sabado sabados',
  ].flatMap((names, n) => names.split(' ').map(name => [name, n])),
)
const PLURAL = /^(?:sun|mon|tues|wednes|thurs|fri|satur)days$/
const ORDINALS: Record<string, number> = { first: 1, '1st': 1, primero: 1, '1': 1, last: 0, ultimo: 0, '15th': 15, '15': 15 }

const normOf = (i: Item | undefined): string => i?.tokens[0]?.norm ?? ''
const textOf = (i: Item | undefined): string => i?.tokens.map(t => t.norm).join(' ') ?? ''
const nextWeekday = (day: Day, wd: number): Day => addDays(day, (wd - weekday(day) + 7) % 7)
const nextOfMonth = (day: Day, n: number): Day => {
  const [y, m] = day.split('-').map(Number) as [number, number]
  const inMonth = (first: Day): Day => (n === 0 ? addDays(addMonths(first, 1), -1) : addDays(first, n - 1))
  const first = dayOf(y, m, 1)
  return inMonth(first) >= day ? inMonth(first) : inMonth(addMonths(first, 1))
}

/** False where no word says that a thing comes back; most messages are let go here. */
export const mayComeBack = (items: Item[]): boolean => {
  for (const i of items) for (const t of i.tokens) if (RETURNS.has(t.norm)) return true
  return false
}
const RETURNS = new Set('every each cada todos todas los sundays mondays tuesdays wednesdays thursdays fridays saturdays'.split(' '))

/** "every other friday", "each month", "los martes", "the first of every month"; a weekday's plural alone says it too. */
const againIn = (items: Item[], day: Day): Again | undefined => {
  const norms = items.map(normOf)
  const at = norms.findIndex((w, k) => EVERY.test(w) && items[k]!.tokens.length <= 3)
  const taken = new Set<Item>()
  const take = (from: number, to: number) => {
    for (let k = from; k < to; k++) taken.add(items[k]!)
  }
  if (at < 0) {
    const plural = items.findIndex(i => i.date && i.tokens.some(t => PLURAL.test(t.norm)))
    const los = items.findIndex(
      (i, k) =>
        /^los (?:lunes|martes|miercoles|jueves|viernes|sabados|domingos)$/.test(`${norms[k - 1] ?? ''} ${textOf(i)}`) ||
        /^los (?:lunes|martes|miercoles|jueves|viernes|sabados|domingos)\b/.test(textOf(i)),
    )
    const k = plural >= 0 ? plural : los
    if (k < 0) return undefined
    const wds = items[k]!.tokens.flatMap(t => WEEKDAYS[t.norm] ?? [])
    if (!wds.length) return undefined
    take(k, k + 1)
    return { every: 'week', from: wds.map(wd => nextWeekday(day, wd)), items: taken }
  }
  const words = items.slice(at, at + 9).flatMap((i, k) => i.tokens.map(t => ({ norm: t.norm, value: t.value, item: at + k })))
  let w = 1
  if (/^(?:los|las)$/.test(words[w]?.norm ?? '')) w++
  let step = 1
  if (/^(?:other|second)$/.test(words[w]?.norm ?? '')) {
    step = 2
    w++
  } else if (words[w]?.value !== undefined || /^(?:two|three|four|six|dos|tres|cuatro|seis)$/.test(words[w]?.norm ?? '')) {
    step =
      words[w]!.value ??
      ({ two: 2, dos: 2, three: 3, tres: 3, four: 4, cuatro: 4, six: 6, seis: 6 } as Record<string, number>)[words[w]!.norm]!
    w++
  }
  const unit = UNITS.find(([like]) => like.test(words[w]?.norm ?? ''))?.[1]
  const wds: number[] = []
  let end = w
  if (!unit) {
    for (; end < words.length; end++) {
      const wd = WEEKDAYS[words[end]!.norm]
      if (wd !== undefined) wds.push(wd)
      else if (!(wds.length && /^(?:,|and|y|&)$/.test(words[end]!.norm) && WEEKDAYS[words[end + 1]?.norm ?? ''] !== undefined)) break
    }
    if (!wds.length) return undefined
  } else end = w + 1
  if (!Number.isInteger(step) || step < 1 || step > 52) return undefined
  take(at, words[end - 1]!.item + 1)
  // "the first of every month"
  const before = items.slice(Math.max(0, at - 3), at)
  const nth = before.findLast(
    i => ORDINALS[textOf(i)] !== undefined || (i.ordinal && i.num !== undefined) || ORDINALS[i.tokens.at(-1)?.norm ?? ''] !== undefined,
  )
  const from: Day[] = []
  if (unit === 'month' && nth) {
    take(items.indexOf(nth), at)
    from.push(nextOfMonth(day, nth.num ?? ORDINALS[nth.tokens.at(-1)!.norm] ?? 1))
  } else if (!unit) from.push(...wds.map(wd => nextWeekday(day, wd)))
  return { every: unit ?? 'week', ...(step > 1 && { step }), from, items: taken }
}

const LEADING = /^(?:to|that|on|about|de|que|for|at|a|el|the|por|para|en|of|y|and|la|las|los)$/
const TRAILING = /^(?:on|at|el|la|a|for|para|the|por|en|by|los|las|de|y|and)$/
const CREW_WORD = /\b(?:everybody|everyone|crew|us|all|todos|nosotros|recuerdanos|acuerdanos|recuerdenos)\b/

/** What is left when dates and repeats are out, as it was written. */
const wordsOf = (items: Item[], skip: (i: Item) => boolean, text: string, keepArticle: boolean): string => {
  let rest = items
  const empty = (i: Item) => skip(i) || has(i, 'comma') || has(i, 'mark')
  while (
    rest[0] &&
    (empty(rest[0]) || (LEADING.test(textOf(rest[0])) && !(keepArticle && /^(?:the|el|la|las|los)$/.test(textOf(rest[0])))))
  )
    rest = rest.slice(1)
  while (rest.at(-1) && (empty(rest.at(-1)!) || TRAILING.test(textOf(rest.at(-1))))) rest = rest.slice(0, -1)
  const parts: string[] = []
  let run: Item[] = []
  const flush = () => {
    if (run.length) parts.push(text.slice(run[0]!.tokens[0]!.from, run.at(-1)!.tokens.at(-1)!.to))
    run = []
  }
  for (const i of rest) {
    if (skip(i)) flush()
    else run.push(i)
  }
  flush()
  return (
    parts
      .join(' ')
      .replace(/\s+/g, ' ')
      .replace(/^[\s,:]+|[\s,]+$/g, '')
      // "to feed" is one phrase to the trade
      .replace(/^(?:to|that|de|que)\s+(?=\S)/i, '')
  )
}

/** Whom it is for, and how many items that took: "remind walt to", "recuérdale a walt". */
const whoIn = (items: Item[], verb: Item): { who?: string; used: number } => {
  if (CREW_WORD.test(textOf(verb))) return { who: /\bus\b|nos$/.test(textOf(verb)) ? 'us' : 'everyone', used: 0 }
  let k = 0
  if (/^(?:me)$/.test(textOf(items[k]))) return { used: 1 }
  if (/^(?:a|to)$/.test(textOf(items[k]))) k++
  const i = items[k]
  if (!i || i.date) return { used: 0 }
  if (/^(?:us|everyone|everybody|all|todos|the crew|la cuadrilla)$/.test(textOf(i))) return { who: textOf(i), used: k + 1 }
  if (hasCat(i, 'person')) return { who: valueOf(i, 'person')!, used: k + 1 }
  // a name that the farm does not have: only where "to" or a Spanish "a" says that it is one
  const next = textOf(items[k + 1])
  const named = !i.senses.length && i.tokens.length === 1 && i.tokens[0]!.kind === 'word'
  if (named && textOf(verb) === 'remind' && (/^(?:to|about)\b/.test(next) || items[k + 1]?.date))
    return { who: i.text.toLowerCase(), used: k + 1 }
  if (named && k === 1 && /^(?:recuerdale|recuerda|acuerdale)$/.test(textOf(verb))) return { who: i.text.toLowerCase(), used: 2 }
  return { used: 0 }
}

const next = ({ every, step = 1 }: Again, day: Day): Day =>
  every === 'month' ? addMonths(day, step) : addDays(day, (every === 'week' ? 7 : 1) * step)

const actsOf = (slots: Record<string, unknown>, again: Again | undefined, date: Item['date'], today: Day): Act[] => {
  const act = (d: Item['date']): Act => ({
    frame: 'remind',
    mood: 'fact',
    slots: { ...slots, ...(again && { every: again.every, ...(again.step && { step: again.step }) }) },
    ...(d && { date: d }),
    used: 5,
    left: 0,
    leftWords: [],
    leftNumbers: 0,
    full: slots.about !== undefined && (d !== undefined || slots.time !== undefined || again !== undefined),
  })
  if (!again?.from.length) return [act(again ? undefined : date)]
  return again.from.map(first => {
    // without an hour it comes in the morning, and this one's is over
    const day = first === today && slots.time === undefined ? next(again, first) : first
    return act({ from: 0, to: 0, past: day, future: day, explicit: true })
  })
}

/** The reminders that a sentence with a word like "remind" sets; `at` is where that word stands. */
export const remindActs = (items: Item[], at: number, text: string, day: Day): Act[] => {
  const again = againIn(items, day)
  const dates = items.filter(i => i.date && !again?.items.has(i))
  const date = dates.find(i => i.date!.explicit)?.date ?? dates[0]?.date
  const time = items.map(i => i.date?.time).find(Boolean)
  const after = items.slice(at + 1)
  const { who, used } = whoIn(after, items[at]!)
  const skip = (i: Item) => i.date !== undefined || again?.items.has(i) === true
  // "we need to order plastic, remind me on monday"
  const about =
    wordsOf(after.slice(used), skip, text, false) ||
    wordsOf(items.slice(0, at), skip, text, false).replace(
      /^(?:we |i |you )?(?:need to|have to|gotta|got to|must|should|hay que|tenemos que|tengo que)\s+/i,
      '',
    )
  return actsOf({ ...(about && { about }), ...(time && { time }), ...(who && { who }) }, again, date, day)
}

/** Bare verbs of chores that the trade's own tables do not have. */
const CHORES = new Set(
  'grease clean order call haul wash sweep sharpen empty fill look walk check change rotate move bring take test sample measure scrape mow spray read weigh pick drop inspect tighten replace restock count pay buy get top service oil fuel plow plough lock shut close turn run pump flush rinse drain bed scrub email text ring phone clear trim cut rake'.split(
    ' ',
  ),
)
const INFINITIVE = /^[a-z]{3,}(?:ar|er|ir)(?:l[oae]s?)?$/
const SPOKEN =
  /^(?:revisa|revisen|checa|checen|limpia|limpien|engrasa|engrasen|pide|pidan|llama|llamen|lava|laven|barre|barran|mide|midan)$/

const isChore = (i: Item | undefined): boolean => {
  const word = i?.tokens[0]?.norm ?? ''
  return hasCat(i, 'b') || CHORES.has(word) || INFINITIVE.test(foldWord(word)) || SPOKEN.test(word)
}

/**
 * "every tuesday check the tires", "check the tires every tuesday": a thing to be done again and again, without the word
 * remind. The rest must begin with a bare verb and count nothing, else it tells of the work.
 */
export const standingActs = (items: Item[], text: string, day: Day): Act[] | undefined => {
  const again = againIn(items, day)
  if (!again) return undefined
  const skip = (i: Item) => i.date !== undefined || again.items.has(i)
  const rest = items.filter(i => !skip(i) && !isThin(i) && !has(i, 'comma') && !/^(?:at|a|on|los|las|por|en)$/.test(textOf(i)))
  if (rest.length < 2 || !isChore(rest[0]) || rest.some(i => i.num !== undefined || i.sides || has(i, 'ask?') || hasCat(i, 'm')))
    return undefined
  // "we check it every tuesday" tells of a custom
  if (/^(?:we|i|they|he|she|you|it|nosotros|ellos|yo|se|ya)$/.test(textOf(items[0]))) return undefined
  const first = items.findIndex(i => !isThin(i))
  // the repeat stands at the head or at the end
  const head = items[first] !== undefined && (again.items.has(items[first]!) || /^(?:on|los)$/.test(textOf(items[first])))
  const said = items.filter(i => !has(i, 'mark'))
  const tail = said.findLast(i => !i.date || again.items.has(i))
  if (!head && !(tail && again.items.has(tail))) return undefined
  const time = items.map(i => i.date?.time).find(Boolean)
  const about = wordsOf(items, skip, text, false)
  return about ? actsOf({ about, ...(time && { time }) }, again, undefined, day) : undefined
}
