import { FIELD_WORD } from './frames/field.ts'
import { has, hasCat, type Item, isVerb } from './item.ts'

const CUT_IS = new Set(['v:take', 'v:break', 'what:tear'])
const GOT_TO = /^g[eo]ts? to$/

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
    .slice(Math.max(0, k - 3), k)
    .map(x => x.text.toLowerCase())
    .join(' ')
  return /(?:^| )(?:before|ahead of|antes de|antes que)(?: (?:the|that|this|it|el|la|que))?$/.test(lead)
}

const LEANING = new Set(['cutword', 'm:plan', 'v:check', 'v:roll', 'v:pitch', 'what:loose edge', 'thing:gone'])
const WORDS = new Set([
  'were',
  'dry',
  'off',
  'mess',
  'tired',
  'ok',
  'okay',
  'alright',
  'ate',
  'hole',
  'whole',
  'hice',
  'hicimos',
  'film',
  'through',
  'hizo',
  'hicieron',
])

/** What the word at `k` means beside what stands around it; undefined where nothing is ruled out. */
const meant = (items: Item[], k: number): string[] | undefined => {
  const i = items[k]!
  // most words mean the same whatever stands beside them
  if (
    i.num === undefined &&
    !i.senses.some(s => LEANING.has(s)) &&
    !WORDS.has(i.tokens[0]?.norm ?? '') &&
    !hasCat(i, 'crop') &&
    !hasCat(i, 'animal') &&
    !hasCat(i, 'sky')
  )
    return undefined
  // "3rd cut": which one it is, not what was done
  if (has(i, 'cutword') && i.senses.some(s => CUT_IS.has(s)) && (hasCat(items[k - 1], 'say') || items[k - 1]?.ordinal))
    return i.senses.filter(s => !CUT_IS.has(s))
  // "de la milpa de atras": where it grew, after the feed was named
  const grew = hasCat(i, 'crop') && FIELD_WORD.test(i.text.toLowerCase())
  if (grew && comesFrom(items, k) && items.slice(0, k).some(x => hasCat(x, 'crop'))) return i.senses.filter(s => !s.startsWith('crop:'))
  // "went over on the creek": hauled there; "went over creek" looked at it
  if (has(i, 'v:check') && /^went over$/.test(i.text.toLowerCase()) && has(items[k + 1], 'on')) return PUT
  // "im not walkin to the creek": only on the way
  if (has(i, 'v:check') && /^walk(?:ed|in|ing|s)?$/i.test(i.text) && /^to$/i.test(items[k + 1]?.text ?? '')) return FILLER
  // "a couple loads before the rain": when, not what fell
  if (hasCat(i, 'sky') && k > 1 && isUntil(items, k) && !items.slice(k + 1).some(x => x.num !== undefined)) return FILLER
  // "while you guys ate": no cows
  if (
    k > 0 &&
    /^ate$/i.test(i.text) &&
    has(i, 'v:feed') &&
    !hasCat(items[k - 1], 'animal') &&
    !/^(?:they|herd|cows|heifers|group|girls|milkers)$/i.test(items[k - 1]!.text)
  )
    return FILLER
  // "the whole north edge is loose", heard as a hole
  if (
    /^w?hole$/i.test(i.text) &&
    has(items[k - 1], 'filler') &&
    has(items[k + 1], 'where:place') &&
    items.slice(k + 2).some(x => has(x, 'what:loose edge'))
  )
    return FILLER
  // "hice el plastico pa atras 4 pies"
  if (
    /^(?:hice|hicimos|hizo|hicieron)$/i.test(i.text) &&
    items.slice(k + 1, k + 4).some(x => hasCat(x, 'mat')) &&
    items.slice(k + 1, k + 6).some(x => has(x, 'back'))
  )
    return ROLLED
  // "scraped the dirt off the end of the barn pile": where
  if (has(i, 'thing:gone') && /^(?:the )?end of/i.test(i.text) && (has(items[k - 1], 'off') || has(items[k - 1], 'on'))) return FILLER
  // "through sixteen tires off", heard for threw
  if (/^through$/i.test(i.text) && items[k + 1]?.num !== undefined && hasCat(items[k + 2], 'mat')) return PUT
  // "film n plastic on creek": the one under the other
  if (/^film$/i.test(i.text) && has(items[k + 1], 'and') && has(items[k + 2], 'mat:plastic')) return FILM
  // "les tire seis cucharones": thrown to the cows
  if (has(i, 'v:pitch') && /^les$/i.test(items[k - 1]?.text ?? '')) return FED
  if (/^we['’]re$/i.test(i.text)) return FILLER
  // "okay creek is covered": a word to begin with
  if (k === 0 && has(i, 'find:good') && /^(?:ok|okay|alright)$/i.test(i.text) && items.slice(2).some(x => isVerb(x) && !has(x, 'v:check')))
    return FILLER
  // "load 15 was wet": which one it was
  if (
    i.num !== undefined &&
    i.unit === undefined &&
    /^(?:load|viaje)$/i.test(items[k - 1]?.text ?? '') &&
    !hasCat(items[k + 1], 'crop') &&
    k > 0
  )
    return LABEL
  // "fed 4 batches, about 2800 a batch": of each
  if (i.num === 1 && HAULS.has(i.unit ?? '') && EACH.test(i.tokens[0]!.norm) && (items[k - 1]?.num ?? 0) >= 100) return OF_EACH
  // "126 milking and 18 dry"
  if (/^dry$/i.test(i.text) && items[k - 1]?.num !== undefined && items.slice(0, k).some(x => has(x, 'v:milk') || has(x, 'group:milking')))
    return DRY
  // "40 bags round the edge": where they lie
  if (has(i, 'what:loose edge') && has(i, 'where:place') && isLedTo(items, k)) return PLACE
  // "tires rolled off": nobody rolled a sheet
  if (has(i, 'v:roll') && has(items[k - 1], 'mat:tires') && /^off$/i.test(items[k + 1]?.text ?? '')) return FILLER
  if (/^off$/i.test(i.text) && has(items[k - 1], 'v:roll') && has(items[k - 2], 'mat:tires')) return FILLER
  // "coon tracks all over": nobody did harm
  if (hasCat(i, 'animal') && /^(?:tracks?|prints?|poop|huellas?)$/.test(items[k + 1]?.text.toLowerCase() ?? '')) return FILLER
  // dictation's "mess" is the mesh where it is laid or lifted, and "tired" are tires where they are counted
  if (
    /^mess$/i.test(i.text) &&
    /^(?:off|off of|back|on|up|over)$/.test(items[k + 1]?.text.toLowerCase() ?? '') &&
    items.slice(0, k).some(x => hasCat(x, 'v'))
  )
    return MESH
  if (/^tired$/i.test(i.text) && items[k - 1]?.num !== undefined) return TIRES
  // "la cara va a 8 metros"
  if (has(i, 'm:plan') && /^van? a$/.test(i.text.toLowerCase()) && items[k + 1]?.num !== undefined) return FILLER
  // "wind got to 48": reached, no plan
  if (has(i, 'm:plan') && items[k + 1]?.num !== undefined && GOT_TO.test(i.text.toLowerCase())) return FILLER
  return undefined
}
const FILLER = ['filler']
const FED = ['v:feed']
const FILM = ['mat:barrier film']
const ROLLED = ['v:roll']
const LABEL = ['label']
const OF_EACH = ['each']
const PUT = ['v:put']
const PLACE = ['where:place']
const DRY = ['group:dry']
const HAULS = new Set(['load', 'bucket', 'batch'])
const EACH = /^(?:an?|per|el|la|cada)$/
const TEMPERATURE = /^(?:temps?|temperature|mercury|thermometer|temperatura|termometro)$/
const MESH = ['mat:mesh']
const TIRES = ['mat:tires']

const isBare = (i: Item): boolean => i.num !== undefined && i.unit === undefined && !i.ordinal

/** What the item at `k` is beside its neighbours; undefined where it stays as it is. */
const changed = (items: Item[], k: number): Item | undefined => {
  const i = items[k]!
  // "temp dropped to 14 last night"
  if (isBare(i) && items.slice(Math.max(0, k - 4), k).some(x => TEMPERATURE.test(x.text.toLowerCase()))) return { ...i, unit: 'degF' }
  const senses = isOutOf(items, k) ? LABEL : meant(items, k)
  if (!senses) return undefined
  // a label and "a batch" behind an amount count nothing
  const uncounted = senses === LABEL || senses === OF_EACH ? { num: undefined, unit: undefined } : undefined
  return { ...i, ...uncounted, senses, meaning: undefined, weight: undefined }
}

/** "patched 2 of the 3": how many there are is no count of what was done. */
const isOutOf = (items: Item[], k: number): boolean => {
  const of = has(items[k - 1], 'filler') && !has(items[k - 1], 'off') ? k - 2 : k - 1
  return (
    isBare(items[k]!) &&
    of > 0 &&
    /^(?:of|out of|de)$/i.test(items[of]!.text) &&
    isBare(items[of - 1]!) &&
    items[of - 1]!.num! <= items[k]!.num!
  )
}

/** The items with the senses gone that their neighbours rule out. */
export const narrowed = (items: Item[]): Item[] => {
  let out = items
  for (let k = 0; k < items.length; k++) {
    const item = changed(items, k)
    if (!item) continue
    if (out === items) out = [...items]
    out[k] = item
  }
  return out
}
