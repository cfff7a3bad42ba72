import { FIELD_WORD } from './frames/field.ts'
import { has, hasCat, type Item } from './item.ts'
import { isThin } from './pool.ts'
import { FED, FILLER, NOTHING, ON_TOP, PATCHED, PLACE, PUT, type Ruling, textAt } from './ruling.ts'

const CUT_IS = new Set(['v:take', 'v:break', 'what:tear'])
const GOT_TO = /^g[eo]ts? to$/
const OF_TRADE = /^(?:tire|machine|body|welding|parts|repair|muffler|coffee|barber|pawn|sale|auction|show|horse|donut|gift|thrift|paint)$/
const IN_BAGS = /^(?:pea gravel|gravel|sand|stones?|rocks?|dirt|grava|graba|arena|piedra|tierra)$/i
const BAGS = /^(?:bags?|bolsas?|bolsitas?|sacos?|costal(?:es)?|bultos?)$/
const TRACKS = /^(?:tracks?|prints?|poop|droppings|mess|feathers|nests?|huellas?|plumas|nidos?)$/

/** True behind "from" and its articles. */
const comesFrom = (items: Item[], k: number): boolean => {
  let j = k - 1
  while (j > 0 && has(items[j], 'filler') && !has(items[j], 'off')) j--
  return has(items[j], 'off')
}

/** True behind a word of place and its article: "round the edge". */
const isLedTo = (items: Item[], k: number): boolean => {
  const at = has(items[k - 1], 'filler') && !has(items[k - 1], 'prepWhere') ? k - 2 : k - 1
  return has(items[at], 'prepWhere')
}

/** True behind "before the", "ahead of the", "antes de la". */
const isUntil = (items: Item[], k: number): boolean => {
  const lead = items
    .slice(Math.max(0, k - 4), k)
    .flatMap(x => x.tokens.map(t => t.norm))
    .join(' ')
  return /(?:^| )(?:before|ahead of|antes de|antes que)(?: (?:the|that|this|it|el|la|que))?(?: (?:got|gets|came|comes|started|starts|hit|hits))?$/.test(
    lead,
  )
}

/** True behind "after the", "since that", "despues de la", where neither a day nor a size is told with it. */
const isSince = (items: Item[], k: number): boolean => {
  const from = items.findLastIndex((x, j) => j < k && j >= k - 3 && AFTER.test(x.text.toLowerCase()))
  return (
    from > 0 &&
    items.slice(from + 1, k).every(x => has(x, 'filler') && !x.date) &&
    items[k + 1]?.date === undefined &&
    !items.slice(from, k + 3).some(x => hasCat(x, 'stone'))
  )
}
const AFTER = /^(?:after|since|despues de|despues del|tras|luego de)(?: (?:the|that|all that|this|la|el|esa|ese))?$/

/** "traje tamales de elote": behind a thing that nobody counts, it says what that is made of. */
const isMadeOf = (items: Item[], k: number): boolean => {
  const thing = items[k - 2]
  return (
    /^(?:de|d|of)$/.test(textAt(items, k - 1)) &&
    thing !== undefined &&
    thing.senses.length === 0 &&
    thing.num === undefined &&
    /^\p{L}{4,}$/u.test(thing.text) &&
    items[k - 3]?.num === undefined
  )
}

/** Rulings on one of an item's senses, or on their category. */
export const BY_SENSE = new Map<string, Ruling>(
  Object.entries({
    // "3rd cut": which one it is, not what was done
    cutword: (items, k, i) =>
      i.senses.some(s => CUT_IS.has(s)) && (hasCat(items[k - 1], 'say') || items[k - 1]?.ordinal)
        ? { senses: i.senses.filter(s => !CUT_IS.has(s)) }
        : undefined,
    // "de la milpa de atras": where it grew, after the feed was named
    // "the tire shop", "the sale barn": somebody's place of business
    pile: (items, k, i) => (OF_TRADE.test(textAt(items, k - 1)) && i.tokens.length === 1 ? FILLER : undefined),
    // "tamales de elote": what it is made of
    crop: (items, k, i) =>
      isMadeOf(items, k) || (FIELD_WORD.test(textAt(items, k)) && comesFrom(items, k) && items.slice(0, k).some(x => hasCat(x, 'crop')))
        ? { senses: i.senses.filter(s => !s.startsWith('crop:')) }
        : undefined,
    'v:check': (items, k) => {
      const text = textAt(items, k)
      // "went over on the creek": hauled there; "went over creek" looked at it
      if (text === 'went over' && has(items[k + 1], 'on')) return PUT
      // "im not walkin to the creek": only on the way
      return /^walk(?:ed|in|ing|s)?$/.test(text) && textAt(items, k + 1) === 'to' ? FILLER : undefined
    },
    // "hizo dos hoyos y yo los tapé": the holes, not the pile
    'v:cover': (items, k) =>
      /^tap(?:e|amos|o|aron)$/.test(items[k]!.tokens[0]!.norm) &&
      /^l[oa]s$/.test(textAt(items, k - 1)) &&
      items.slice(0, k).some(x => hasCat(x, 'what'))
        ? PATCHED
        : undefined,
    // "a couple loads before the rain": when, not what fell
    // "walked the covers after that rain"
    sky: (items, k) =>
      k > 1 && (isUntil(items, k) || isSince(items, k)) && !items.slice(k + 1).some(x => x.num !== undefined) ? FILLER : undefined,
    // "scraped the dirt off the end of the barn pile": where
    'thing:gone': (items, k) =>
      /^(?:the )?end of/.test(textAt(items, k)) && (has(items[k - 1], 'off') || has(items[k - 1], 'on')) ? FILLER : undefined,
    // "les tire seis cucharones": thrown to the cows
    'v:pitch': (items, k) => (textAt(items, k - 1) === 'les' ? FED : undefined),
    // "3 bags of ice"
    'mat:gravel bags': (items, k) => {
      if (!BAGS.test(textAt(items, k)) || !/^(?:of|de|d)$/.test(textAt(items, k + 1))) return undefined
      const of = items[k + 2]
      return of && of.num === undefined && !(of.senses.length > 0 && isThin(of)) && !IN_BAGS.test(of.text) ? NOTHING : undefined
    },
    // "40 bags round the edge": where they lie
    'what:loose edge': (items, k, i) => (has(i, 'where:place') && isLedTo(items, k) ? PLACE : undefined),
    // "1 tear on top": where
    'dim:top': (items, k) =>
      /^on top$/.test(textAt(items, k)) && items.slice(0, k).some(x => hasCat(x, 'what') || has(x, 'v:patch')) ? ON_TOP : undefined,
    // "tires rolled off"
    'v:roll': (items, k) => (has(items[k - 1], 'mat:tires') && textAt(items, k + 1) === 'off' ? FILLER : undefined),
    // "coon tracks all over": nobody did harm
    animal: (items, k) => (TRACKS.test(textAt(items, k + 1)) ? FILLER : undefined),
    'm:plan': (items, k) => {
      const text = textAt(items, k)
      // "la comida de la mañana"
      if (/^ma(?:ñ|n)ana$/.test(text) && textAt(items, k - 1) === 'la') return FILLER
      // "la cara va a 8 metros"; "wind got to 48": reached, no plan
      return items[k + 1]?.num !== undefined && (/^van? a$/.test(text) || GOT_TO.test(text)) ? FILLER : undefined
    },
  } satisfies Record<string, Ruling>),
)
