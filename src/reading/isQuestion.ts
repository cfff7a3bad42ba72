import { has, hasCat, type Item } from './item.ts'
import { speaksOf } from './lexicon.ts'
import { isThin } from './pool.ts'
import { asksAnyway } from './whatIf.ts'

const ASKS = new Set(['question', 'pregunta', 'preguntita'])
const isOr = (i: Item): boolean => i.tokens.length === 1 && (i.tokens[0]!.norm === 'o' || i.tokens[0]!.norm === 'or')
const OR_YET = /^(?:todavia|aun|le falta|le seguimos|still|do we|should we|not yet)/i
const PRONOUN =
  /^(we|i|you|he|she|they|it|anybody|anyone|somebody|someone|u|ya|there|that|this|any|the|all|everything|anything|something|todo|everyone)$/

const SAYS = new Set(['tell', 'know', 'dime', 'decime', 'diga', 'decir', 'decirme', 'sabe', 'sabes'])
/** "would you tell me how", "me puedes decir cuanto". */
const TELL_ME =
  /^(?:(?:hey|hi|ok|okay|so|please|pls|oye|bueno) )*(?:(?:can|could|would|will|do) (?:you|u|somebody|anybody|anyone) )?(?:please )?(?:tell me|know|me puedes? decir|puedes? decirme|dime|decime|sabes?) (?:how|what|when|where|which|who|if|are|is|did|do|does|can|will|have|has|should|cuant\w+|como|que|cuando|donde|si)\b/

/** Words of courtesy that come before a question. */
const GREETING = /^(?:sorry|hi|hey|hello|yo|please|pls|plz|ok|okay|hola|oye|oiga|disculpa|disculpe|perdon|porfa|por favor|buenas)$/

/** Words that may make a question of a sentence without a mark; only with one of them is it worth a closer look. */
const TELLING = new Set(
  'bien tan if si suppose supposing say lets about supon supongamos suponiendo digamos imagina imaginate enough enuf bastante suficiente'.split(
    ' ',
  ),
)

const WOULD_SAY = /(?:would (?:you|u|ya) say|(?:do )?(?:you|u|ya) (?:think|figure|reckon)|no crees|tu que dices|que dices)$/
/** The words that such a phrase ends with. */
const SAYING = new Set(['say', 'think', 'figure', 'reckon', 'crees', 'dices'])
const lastWords = (items: Item[]): string =>
  items
    .slice(-4)
    .flatMap(i => i.tokens.map(t => t.norm))
    .join(' ')

const cuesIn = (items: Item[]): { says: boolean; telling: boolean } => {
  const out = { says: false, telling: false }
  for (const i of items)
    for (const t of i.tokens) {
      if (SAYS.has(t.norm)) out.says = true
      if (TELLING.has(t.norm)) out.telling = true
    }
  return out
}

/** A sentence that asks: by its mark, by its first word, or by a phrase that only questions have. */
export const isQuestion = (items: Item[], mark: boolean): boolean => {
  if (mark) return true
  if (/^(?:no|not|que)$/.test(items.at(-1)?.tokens.at(-1)?.norm ?? '')) {
    const text = items.map(i => i.tokens.map(t => t.norm).join(' ')).join(' ')
    if (/ (?:or not|or not yet|o (?:todavia )?no|o que)$/.test(text) && items.some(i => hasCat(i, 'pile') || hasCat(i, 'q'))) return true
  }
  if (
    SAYING.has(items.at(-1)?.tokens.at(-1)?.norm ?? '') &&
    WOULD_SAY.test(lastWords(items)) &&
    items.some(i => hasCat(i, 'pile') || has(i, 'pileword') || hasCat(i, 'crop'))
  )
    return true
  // "una pregunta, ya esta bien apretado el arroyo"
  for (let k = 0; k < 4 && k < items.length; k++) if (ASKS.has(items[k]!.tokens.at(-1)?.norm ?? '')) return true
  // "ya se podra abrir barn o todavia le falta"
  const or = items.findIndex((i, k) => k > 1 && isOr(i) && OR_YET.test(items[k + 1]?.text ?? ''))
  if (or > 0 && items.some(i => hasCat(i, 'pile'))) return true
  // "any tires on creek"
  const any = items.find(i => !isThin(i) || i.tokens[0]?.norm === 'any')
  if (any?.tokens[0]?.norm === 'any' && !items.some(i => hasCat(i, 'v') && !has(i, 'v:break') && !has(i, 'v:have'))) return true
  const { says, telling } = cuesIn(items)
  if (says) {
    const text = items.map(i => i.tokens.map(t => t.norm).join(' ')).join(' ')
    if (TELL_ME.test(text)) return true
  }
  if (telling) {
    const text = items.map(i => i.tokens.map(t => t.norm).join(' ')).join(' ')
    if (asksAnyway(text)) return true
    if (
      /\b(enough|enuf|bastante|suficiente)\b/.test(text) &&
      (speaksOf('qt:face', text) || speaksOf('qt:density', text)) &&
      !items.some(i => i.num !== undefined || has(i, 'find:good'))
    )
      return true
  }
  const all: { i: Item; k: number }[] = []
  for (let k = 0; k < items.length; k++) {
    const i = items[k]!
    if (!isThin(i) || hasCat(i, 'q')) all.push({ i, k })
  }
  // "hi please how's north"
  const greeted = all.findIndex(
    x => !GREETING.test(x.i.text.toLowerCase()) && !has(x.i, 'and') && !hasCat(x.i, 'person') && !has(x.i, 'comma'),
  )
  const content = all.slice(Math.max(0, greeted))
  for (const [n, { i, k }] of content.entries()) {
    if (n > 5) break
    if (has(i, 'm:tell') && n < 2) return false
    // "somebody left the mesh off" tells; "pushed what was left" too
    if (has(i, 'q:who') && /^(?:somebody|someone|alguien)(?:s|d|ll)?$/.test(i.tokens[0]!.norm)) continue
    if (has(i, 'q:what') && n > 0 && hasCat(content[0]!.i, 'v')) continue
    // Spanish "como" is "like" as often as "how"
    if (i.tokens.length === 1 && i.tokens[0]!.norm === 'como' && n > 0) continue
    if (has(i, 'q:howmany') || has(i, 'q:howlong') || has(i, 'q:happened')) return true
    if (
      (has(i, 'q:how') || has(i, 'q:why') || has(i, 'q:help') || has(i, 'q:when') || has(i, 'q:where')) &&
      (n <= 1 || /^(status|last time|estado)/.test(i.text.toLowerCase()))
    )
      return true
    // Spanish "que" joins clauses; it asks only before a thing
    // "de que esta hecho"
    if (has(i, 'q:what') && n === 0 && /^de$/.test(items[k - 1]?.tokens[0]?.norm ?? '')) return true
    // "el maiz que falta"
    if (
      n > 0 &&
      has(i, 'q:what') &&
      /^(?:que|q|ke|k)$/.test(i.text.toLowerCase()) &&
      (hasCat(items[k - 1], 'crop') || hasCat(items[k - 1], 'pile') || hasCat(items[k - 1], 'mat'))
    )
      continue
    // "que nos falta"
    const thing = items.slice(k + 1).find(x => !/^(?:nos|me|te|les?|se)$/.test(x.text.toLowerCase()))
    if (
      has(i, 'q:what') &&
      /^(que|q|ke|k)$/.test(i.tokens[0]!.norm) &&
      i.tokens.length === 1 &&
      !(
        n <= 1 &&
        thing &&
        (hasCat(thing, 'mat') ||
          hasCat(thing, 'unit') ||
          hasCat(thing, 'dim') ||
          /^(tan|tanto|mezcla|tamano|ancho|hay|tal|medida|porcentaje|proporcion|perdida|merma|densidad|necesitamos|necesito|ocupamos|ocupo|falta|queda|toca|sigue)$/.test(
            thing.tokens[0]!.norm,
          ))
      )
    )
      continue
    if ((has(i, 'q:what') || has(i, 'q:who')) && (n <= 1 || (n <= 3 && hasCat(items[k + 1], 'mat')))) return true
    // "the thing is we put some loads on"
    if (has(i, 'q:yesno') && /^(?:thing|deal|point|problem|trouble)$/.test(items[k - 1]?.tokens[0]?.norm ?? '')) continue
    if (has(i, 'q:yesno') && n <= 1) {
      const word = i.tokens[0]!.norm
      const next = items[k + 1]
      const first = next?.tokens[0]?.norm ?? ''
      if (
        /^(should|can|could|would|shall|podemos|puedo|se|debemos|ya|alcanza|nos|alcanzara|hay|llegaremos|llegamos|sera|si|shd|am)$/.test(
          word,
        )
      )
        // "we should check the covers" tells
        return (
          (n === 0 && !PRONOUN.test(items[k - 1]?.tokens[0]?.norm ?? '')) ||
          (hasCat(content[n - 1]?.i, 'pile') && (!/^(?:can|could|should|would|shall)$/.test(word) || PRONOUN.test(first)))
        )
      if (n === 0 && (PRONOUN.test(first) || hasCat(next, 'pile') || hasCat(next, 'person'))) return true
    }
  }
  return false
}
