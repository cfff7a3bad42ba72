import { FIELD_WORD } from './frames/field.ts'
import { altered, type Change, has, hasCat, type Item, isVerb } from './item.ts'

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
    .slice(Math.max(0, k - 4), k)
    .map(x => x.text.toLowerCase())
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

/** What becomes of the item at `k` beside its neighbours; undefined where it stays as it is. */
type Ruling = (items: Item[], k: number, i: Item) => Change | undefined

const UNCOUNTED = { num: undefined, unit: undefined }

const FILLER: Change = { senses: ['filler'] }
const FED: Change = { senses: ['v:feed'] }
const PLAN: Change = { senses: ['m:plan'] }
const A_HEAD: Change = { senses: ['per:head'] }
const FILM: Change = { senses: ['mat:barrier film'] }
const PATCHED: Change = { senses: ['v:patch'] }
const ROLLED: Change = { senses: ['v:roll'] }
const LABEL: Change = { senses: ['label'], ...UNCOUNTED }
const STUTTER: Change = { senses: ['filler'], ...UNCOUNTED }
const OF_EACH: Change = { senses: ['each'], ...UNCOUNTED }
const GOT: Change = { senses: ['v:buy'] }
const PUT: Change = { senses: ['v:put'] }
const PLACE: Change = { senses: ['where:place'] }
const ON_TOP: Change = { senses: ['where:place'], text: 'top' }
const DRY: Change = { senses: ['group:dry'] }
const BUT: Change = { senses: ['but'] }
const MESH: Change = { senses: ['mat:mesh'] }
const TIRES: Change = { senses: ['mat:tires'] }

const textAt = (items: Item[], k: number): string => items[k]?.text.toLowerCase() ?? ''

const A_DOG = /^(?:el|los|un|unos|otro|otros|del|al|su|sus|mi|ese|esos)$/
const OF_WHOLE = /^(?:way|time|day|night|week|morning|bunch|family|place|crew|herd|house|farm|world|couch|load|damn|darn)$/
const OF_THINGS = /^(?:cosas?|things?|stuff)$/
const EATERS = new Set(['they', 'herd', 'cows', 'heifers', 'group', 'girls', 'milkers'])
const OFF_OR_ON = new Set(['off', 'off of', 'back', 'on', 'up', 'over'])
const TRACKS = /^(?:tracks?|prints?|poop|huellas?)$/

/** "hice el plastico pa atras 4 pies" */
const backInSpanish: Ruling = (items, k) =>
  items.slice(k + 1, k + 4).some(x => hasCat(x, 'mat')) && items.slice(k + 1, k + 6).some(x => has(x, 'back')) ? ROLLED : undefined
/** "okay creek is covered": a word to begin with. */
const courtesy: Ruling = (items, k, i) =>
  k === 0 && has(i, 'find:good') && items.slice(2).some(x => isVerb(x) && !has(x, 'v:check')) ? FILLER : undefined
/** "a whole bag of", "the whole sheet": all of it. */
const isAllOf = (items: Item[], k: number): boolean => {
  const next = items[k + 1]
  return (
    /^whole$/i.test(items[k]!.text) &&
    /^(?:an?|the|this|that|my|our)$/i.test(items[k - 1]?.text ?? '') &&
    next !== undefined &&
    !has(next, 'on') &&
    (next.senses.length === 0 || hasCat(next, 'mat') || hasCat(next, 'box') || hasCat(next, 'item') || hasCat(next, 'unit'))
  )
}
/** "the whole north edge is loose", heard as a hole. */
const whole: Ruling = (items, k) =>
  has(items[k - 1], 'filler') &&
  ((has(items[k + 1], 'where:place') && items.slice(k + 2).some(x => has(x, 'what:loose edge'))) ||
    OF_WHOLE.test(textAt(items, k + 1)) ||
    isAllOf(items, k))
    ? FILLER
    : undefined

/** "a 40x100 plastic came today": into the shed. */
const delivered: Ruling = (items, k) =>
  k < 5 &&
  (hasCat(items[k - 1], 'mat') || hasCat(items[k - 1], 'item')) &&
  items.slice(0, k).some(x => x.num !== undefined || x.sides) &&
  (items[k + 1] === undefined ||
    items[k + 1]!.date !== undefined ||
    has(items[k + 1], 'unit:in') ||
    has(items[k + 1], 'and') ||
    has(items[k + 1], 'comma') ||
    has(items[k + 1], 'stop'))
    ? GOT
    : undefined

/** "we'll", "he'll": typed with its apostrophe it is no other word. */
const willDo: Ruling = (_, __, i) => (/['’]ll$/i.test(i.text) ? PLAN : undefined)

/** Rulings on a single word. */
const BY_WORD = new Map<string, Ruling>(
  Object.entries({
    ok: courtesy,
    okay: courtesy,
    alright: courtesy,
    hole: whole,
    whole,
    hice: backInSpanish,
    hicimos: backInSpanish,
    hizo: backInSpanish,
    hicieron: backInSpanish,
    well: willDo,
    hell: willDo,
    shell: willDo,
    were: (_, __, i) => (/['’]/.test(i.text) ? FILLER : undefined),
    // "while you guys ate": no cows
    ate: (items, k, i) =>
      k > 0 && has(i, 'v:feed') && !hasCat(items[k - 1], 'animal') && !EATERS.has(textAt(items, k - 1)) ? FILLER : undefined,
    // "48 pounds of corn silage ahead", heard for a head
    ahead: (items, k) => (items.slice(Math.max(0, k - 4), k).some(x => x.unit === 'lb') ? A_HEAD : undefined),
    // "film n plastic on creek": the one under the other
    film: (items, k) => (has(items[k + 1], 'and') && has(items[k + 2], 'mat:plastic') ? FILM : undefined),
    // "through sixteen tires off", heard for threw
    through: (items, k) => (items[k + 1]?.num !== undefined && items.slice(k + 2, k + 4).some(x => hasCat(x, 'mat')) ? PUT : undefined),
    // "30 gravel bags came"
    came: delivered,
    // "126 milking and 18 dry"
    dry: (items, k) =>
      items[k - 1]?.num !== undefined && items.slice(0, k).some(x => has(x, 'v:milk') || has(x, 'group:milking')) ? DRY : undefined,
    // "tires rolled off": nobody rolled a sheet
    off: (items, k) => (has(items[k - 1], 'v:roll') && has(items[k - 2], 'mat:tires') ? FILLER : undefined),
    // "un pero" is heard for a dog; "pero el aire" is but
    pero: (items, k) => (A_DOG.test(textAt(items, k - 1)) ? undefined : BUT),
    // dictation's "mess" is the mesh where it is laid or lifted, and "tired" are tires where they are counted
    mess: (items, k) => (OFF_OR_ON.has(textAt(items, k + 1)) && items.slice(0, k).some(x => hasCat(x, 'v')) ? MESH : undefined),
    tired: (items, k) => (items[k - 1]?.num !== undefined ? TIRES : undefined),
  } satisfies Record<string, Ruling>),
)

/** Rulings on one of an item's senses, or on their category. */
const BY_SENSE = new Map<string, Ruling>(
  Object.entries({
    // "3rd cut": which one it is, not what was done
    cutword: (items, k, i) =>
      i.senses.some(s => CUT_IS.has(s)) && (hasCat(items[k - 1], 'say') || items[k - 1]?.ordinal)
        ? { senses: i.senses.filter(s => !CUT_IS.has(s)) }
        : undefined,
    // "de la milpa de atras": where it grew, after the feed was named
    crop: (items, k, i) =>
      FIELD_WORD.test(textAt(items, k)) && comesFrom(items, k) && items.slice(0, k).some(x => hasCat(x, 'crop'))
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

// the same senses come in every message
const known = new Map<string, Ruling[]>()
const MOST_KNOWN = 5000

/** The rulings on a sense and on its category. */
const rulingsOn = (sense: string): Ruling[] => {
  let rulings = known.get(sense)
  if (!rulings) {
    const at = sense.indexOf(':')
    rulings = [BY_SENSE.get(sense), at > 0 ? BY_SENSE.get(sense.slice(0, at)) : undefined].filter(r => r !== undefined)
    if (known.size >= MOST_KNOWN) known.clear()
    known.set(sense, rulings)
  }
  return rulings
}

const HAULS = new Set(['load', 'bucket', 'batch'])
const EACH = /^(?:an?|per|el|la|cada)$/
const TEMPERATURE = /^(?:temps?|temperature|mercury|thermometer|temperatura|termometro)$/

/** Rulings on a number. */
const ofNumber: Ruling = (items, k, i) => {
  // "temp dropped to 14 last night"
  if (isBare(i) && items.slice(Math.max(0, k - 4), k).some(x => TEMPERATURE.test(x.text.toLowerCase()))) return { unit: 'degF' }
  if (isOutOf(items, k)) return LABEL
  // "apunta 2 cosas"
  if (isBare(i) && OF_THINGS.test(textAt(items, k + 1))) return LABEL
  // "no eleven eleven loads": said twice over
  if (i.unit === undefined && i.tokens[0]?.kind === 'word' && items[k + 1]?.num === i.num && items[k + 1]?.unit !== undefined)
    return STUTTER
  // "load 15 was wet": which one it was
  if (i.unit === undefined && k > 0 && /^(?:load|viaje)$/.test(textAt(items, k - 1)) && !hasCat(items[k + 1], 'crop')) return LABEL
  // "fed 4 batches, about 2800 a batch": of each
  return i.num === 1 && HAULS.has(i.unit ?? '') && EACH.test(i.tokens[0]!.norm) && (items[k - 1]?.num ?? 0) >= 100 ? OF_EACH : undefined
}

/** What the item at `k` becomes beside what stands around it; most mean the same wherever they stand. */
const changed = (items: Item[], k: number): Change | undefined => {
  const i = items[k]!
  const counted = i.num === undefined ? undefined : ofNumber(items, k, i)
  if (counted) return counted
  const word = i.tokens.length === 1 ? BY_WORD.get(i.tokens[0]!.norm)?.(items, k, i) : undefined
  if (word) return word
  for (const s of i.senses)
    for (const ruling of rulingsOn(s)) {
      const ruled = ruling(items, k, i)
      if (ruled) return ruled
    }
  return undefined
}

const isBare = (i: Item): boolean => i.num !== undefined && i.unit === undefined && !i.ordinal

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
    const change = changed(items, k)
    if (!change) continue
    if (out === items) out = [...items]
    out[k] = altered(items[k]!, change)
  }
  return out
}
