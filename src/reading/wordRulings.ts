import { has, hasCat, type Item, isVerb } from './item.ts'
import { A_HEAD, BUT, DRY, FILLER, FILM, GOT, MESH, PLAN, PUT, ROLLED, type Ruling, TIRES, textAt, WIND } from './ruling.ts'

const A_DOG = /^(?:el|los|un|unos|otro|otros|del|al|su|sus|mi|ese|esos)$/
const OF_WHOLE = /^(?:way|time|day|night|week|morning|bunch|family|place|crew|herd|house|farm|world|couch|load|damn|darn)$/
const EATERS = new Set(['they', 'herd', 'cows', 'heifers', 'group', 'girls', 'milkers'])
const OFF_OR_ON = new Set(['off', 'off of', 'back', 'on', 'up', 'over'])

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
    isAllOf(items, k) ||
    (hasCat(items[k + 1], 'pile') && /^the$/.test(textAt(items, k - 1)) && items.slice(0, k).some(x => has(x, 'v:check'))))
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

/** "through sixteen tires off", heard for threw */
const threw: Ruling = (items, k) =>
  items[k + 1]?.num !== undefined && items.slice(k + 2, k + 4).some(x => hasCat(x, 'mat')) ? PUT : undefined

/** "we'll", "he'll": typed with its apostrophe it is no other word. */
const willDo: Ruling = (_, __, i) => (/['’]ll$/i.test(i.text) ? PLAN : undefined)

/** "wanted 3 ft off shop", "I want 6 loads put on creek" */
const wishes: Ruling = (items, k) =>
  items[k + 1]?.num !== undefined || /^(?:it|them|em|us|me)$/.test(textAt(items, k + 1)) ? PLAN : undefined

/** "starting thursday": a day to come. */
const begins: Ruling = (items, k) => {
  const date = items[k + 1]?.date
  return date && date.past !== date.future ? PLAN : undefined
}

/** Rulings on a single word. */
export const BY_WORD = new Map<string, Ruling>(
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
    thru: threw,
    through: threw,
    // "30 gravel bags came"
    came: delivered,
    delivered: (items, k) =>
      !items.some(x => hasCat(x, 'pile')) && items.slice(0, k).some(x => hasCat(x, 'mat') || hasCat(x, 'item')) ? GOT : undefined,
    // "ran a second sheet over barn"
    ran: (items, k) => (items.slice(k + 1, k + 4).some(x => hasCat(x, 'mat')) ? PUT : undefined),
    // "126 milking and 18 dry"
    dry: (items, k) =>
      items[k - 1]?.num !== undefined && items.slice(0, k).some(x => has(x, 'v:milk') || has(x, 'group:milking')) ? DRY : undefined,
    // "tires rolled off": nobody rolled a sheet
    off: (items, k) => (has(items[k - 1], 'v:roll') && has(items[k - 2], 'mat:tires') ? FILLER : undefined),
    // "un pero" is heard for a dog; "pero el aire" is but
    pero: (items, k) => (A_DOG.test(textAt(items, k - 1)) ? undefined : BUT),
    // "the win got under the plastic"
    win: (items, k) => (/^the$/.test(textAt(items, k - 1)) && items.slice(k + 1, k + 3).some(x => hasCat(x, 'v')) ? WIND : undefined),
    // "skid steer blew a hose"
    blew: (items, k) =>
      /^(?:an?|the|my|his|out)$/.test(textAt(items, k + 1)) &&
      items[k + 2] &&
      !hasCat(items[k + 2], 'mat') &&
      !hasCat(items[k + 2], 'what') &&
      !hasCat(items[k + 2], 'pile')
        ? FILLER
        : undefined,
    // "wanted 3 ft off shop"
    wanted: wishes,
    want: wishes,
    wants: wishes,
    starting: begins,
    beginning: begins,
    empezando: begins,
    // dictation's "mess" is the mesh where it is laid or lifted, and "tired" are tires where they are counted
    mess: (items, k) => (OFF_OR_ON.has(textAt(items, k + 1)) && items.slice(0, k).some(x => hasCat(x, 'v')) ? MESH : undefined),
    tired: (items, k) => (items[k - 1]?.num !== undefined ? TIRES : undefined),
  } satisfies Record<string, Ruling>),
)
