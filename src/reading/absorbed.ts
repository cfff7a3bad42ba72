import { has, hasCat, type Item } from './item.ts'
import { isPast } from './mood.ts'

const SINCE = /^(?:since|desde|desde las|till|until|hasta|hasta las)$/
const CLOCK_LEAD = /^(?:around|about|at|like|by|como|a las|a la|las|la)$/
const SHORT_TIME = /^(?:minutes?|mins?|minutos?|seconds?|segundos?)$/

const FEEDING = /^(?:feeding|feedin|feed|chores)$/i
const FOR_TOMORROW = /^(?:para|pa|for) (?:ma(?:ñ|n)ana|tomorrow)$/i

/** Times that tell nothing the book keeps: "last night around eight", "lasted ten minutes". Their numbers are no amounts. */
export const absorbed = (items: Item[]): Item[] => {
  const gone = new Set<Item>()
  // "took 18 tires off so we can get at the face": what it was done for is not told as done
  const why = items.findIndex((i, k) => k > 0 && has(i, 'so') && items.slice(0, k).some(x => hasCat(x, 'v')))
  if (why > 0 && !items.slice(0, why).some(x => has(x, 'v:open') || has(x, 'v:uncover'))) {
    for (const i of items.slice(why)) {
      if (has(i, 'stop') || has(i, 'comma') || has(i, 'ask?')) break
      gone.add(i)
    }
  }
  for (const [k, i] of items.entries()) {
    // "peeled the plastic back 4 ft for tomorrow's feed": what it is for, not when
    const isFor = i.date
      ? i.date.future !== i.date.past && /^(?:for|para|pa)$/i.test(items[k - 1]?.text ?? '')
      : i.tokens.length > 1 && FOR_TOMORROW.test(i.text)
    if (k > 0 && isFor && items.slice(0, k).some(isPast)) {
      gone.add(i)
      if (i.date) gone.add(items[k - 1]!)
      continue
    }
    // "rolled the plastic back 4 ft for mornin feeding"
    if (FEEDING.test(i.text)) {
      const purpose = items.findLastIndex((x, j) => j < k && j >= k - 3 && /^(?:for|pa|para)$/i.test(x.text))
      if (
        purpose > 0 &&
        items.slice(0, purpose).some(isPast) &&
        !items.slice(purpose, k + 1).some(x => x.num !== undefined || hasCat(x, 'pile'))
      ) {
        for (const x of items.slice(purpose, k + 1)) gone.add(x)
        continue
      }
    }
    // "took me an hour", "took us all morning"
    if (/^took$/i.test(i.text) && /^(?:me|us|him|them|forever)$/i.test(items[k + 1]?.text ?? '')) {
      gone.add(i).add(items[k + 1]!)
      const spent = items[k + 2]
      if (spent && (spent.unit === 'hour' || spent.unit === 'day' || has(spent, 'vague'))) gone.add(spent)
    }
    if (i.num === undefined || i.unit !== undefined || i.ordinal) continue
    const next = items[k + 1]
    if (next && SHORT_TIME.test(next.tokens[0]?.norm ?? '')) {
      gone.add(i).add(next)
      continue
    }
    const lead = items[k - 1]
    // "eran como las seis cuando"
    if (
      lead &&
      /^(?:las|la)$/.test(lead.text.toLowerCase()) &&
      i.num <= 12 &&
      /^(?:cuando|y|,)$/.test(next?.text.toLowerCase() ?? '') &&
      items.slice(0, k).some(x => /^(?:eran|era|serian|seria)$/.test(x.tokens[0]?.norm ?? ''))
    ) {
      for (const x of items.slice(0, k + 1)) if (!x.date && !hasCat(x, 'pile')) gone.add(x)
      gone.add(next!)
      continue
    }
    const hour = Number.isInteger(i.num) && ((i.num >= 1 && i.num <= 12) || (i.num >= 100 && i.num < 1260 && i.num % 100 < 60))
    const counts =
      next &&
      (hasCat(next, 'crop') ||
        hasCat(next, 'box') ||
        hasCat(next, 'mat') ||
        hasCat(next, 'unit') ||
        has(next, 'more') ||
        !next.senses.length)
    if (hour && lead && !counts && SINCE.test(lead.text.toLowerCase())) gone.add(i)
    if (hour && lead && CLOCK_LEAD.test(lead.text.toLowerCase()) && items[k - 2]?.date && !counts) gone.add(i)
  }
  return gone.size ? items.filter(i => !gone.has(i)) : items
}
