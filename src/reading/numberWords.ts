import { EN_COUNTS, EN_HOMOPHONES, EN_SCALES, EN_TENS, EN_UNITS } from './en/numbers.ts'
import { ES_COUNTS, ES_HUNDREDS, ES_TENS, ES_UNITS } from './es/numbers.ts'
import { normAt, type Token } from './token.ts'

// maps, not objects: "constructor" is a word people may type; the English value of a word that both languages have wins
const mapOf = (...tables: Record<string, number>[]): Map<string, number> => new Map(tables.reverse().flatMap(t => Object.entries(t)))
const SMALL = mapOf(EN_UNITS, ES_UNITS)
const TENS = mapOf(EN_TENS, ES_TENS)
const HUNDREDS = mapOf(ES_HUNDREDS)
const SCALES = mapOf({ mil: 1000 }, EN_SCALES)
const COUNTS = mapOf(EN_COUNTS, ES_COUNTS)
/** A digit as dictation writes it, before a word that wants one: "point to percent". */
const spoken = (tokens: Token[], k: number): number | undefined =>
  Object.hasOwn(EN_HOMOPHONES, tokens[k]?.norm ?? '') && /^(?:percent|%|dry|dm|inches|tons|feet)$/.test(tokens[k + 1]?.norm ?? '')
    ? EN_HOMOPHONES[tokens[k]!.norm]
    : undefined

export const small = (w: string): number | undefined => SMALL.get(w)
export const tens = (w: string): number | undefined => TENS.get(w)
const hundreds = (w: string): number | undefined => HUNDREDS.get(w)
export const scaleOf = (w: string): number | undefined => SCALES.get(w)
export const counted = (w: string): number | undefined => COUNTS.get(w)
/** Words that a number in words may begin with. */
export const BEGINS = new Set(
  [SMALL, TENS, HUNDREDS, SCALES, COUNTS]
    .flatMap(m => [...m.keys()])
    .concat(Object.keys(EN_HOMOPHONES), 'a an un una one half medio media quarter inch foot pulgada pie'.split(' ')),
)
const FEET = /^(?:feet|foot|ft|pounds|lbs|loads|tires)$/
const HUNDREDFOLD = /^[cs]ient[oa]s$/

/** Homophones that are words of their own between numbers: "twenty to creek". */
const JOINING = new Set(['to', 'too', 'for'])

/** A whole number in words, from token i; undefined where none starts there. */
export const words = (tokens: Token[], i: number): { to: number; value: number } | undefined => {
  let k = i
  let total = 0
  let group: number | undefined
  for (;;) {
    const w = normAt(tokens, k)
    const digits = tokens[k]?.kind === 'number' ? tokens[k]!.value : undefined
    const s = small(w) ?? undefined
    const t = tens(w)
    const h = hundreds(w)
    if (s !== undefined) {
      if (group === undefined) group = s
      else if (group % 10 === 0 && group % 100 !== 0 && s < 10 && group >= 20) group += s
      else if (group >= 100 && group % 100 === 0 && s < 100) group += s
      else if (group < 10 && group > 0 && s >= 10 && total === 0) group = group * 100 + s
      else if (group < 10 && group > 0 && s > 0 && total === 0 && tokens[k - 1]?.norm === 'oh') group = group * 100 + s
      else break
      k++
    } else if (t !== undefined) {
      if (group === undefined) group = t
      else if (group >= 100 && group % 100 === 0) group += t
      // "eleven thousand one fifty"
      else if (group > 0 && group < (total === 0 ? 20 : 10)) group = group * 100 + t
      else break
      k++
    } else if (h !== undefined) {
      if (group !== undefined) break
      group = h
      k++
    } else if (scaleOf(w) !== undefined) {
      const scale = scaleOf(w)!
      if (group === undefined && k === i && w !== 'mil') return undefined
      if (scale === 100) {
        if (group === undefined || group >= 100) break
        group *= 100
      } else {
        total += (group ?? 1) * 1000
        group = undefined
      }
      k++
    } else if (
      w === 'oh' &&
      group !== undefined &&
      group < 10 &&
      group > 0 &&
      total === 0 &&
      (small(tokens[k + 1]?.norm ?? '') ?? 0) > 0 &&
      small(tokens[k + 1]!.norm)! < 10
    ) {
      // "one oh five"
      k++
    } else if (
      w === 'y' &&
      /^una?$/.test(tokens[k + 1]?.norm ?? '') &&
      group !== undefined &&
      group >= 20 &&
      group % 10 === 0 &&
      group % 100 !== 0
    ) {
      group += 1
      k += 2
    } else if ((w === 'and' || w === 'y') && group !== undefined && k > i) {
      // "a hundred and thirty", "treinta y dos"; never "five and two"
      const next = tokens[k + 1]?.norm ?? ''
      const joins =
        (w === 'and' &&
          group >= 100 &&
          group % 100 === 0 &&
          (small(next) !== undefined ||
            tens(next) !== undefined ||
            (Object.hasOwn(EN_HOMOPHONES, next) && FEET.test(normAt(tokens, k + 2)))) &&
          !/^(?:dozen|doz)$/.test(normAt(tokens, k + 2))) ||
        (w === 'y' &&
          group >= 20 &&
          group % 10 === 0 &&
          group % 100 !== 0 &&
          (ES_UNITS[next] ?? 99) < 10 &&
          !HUNDREDFOLD.test(normAt(tokens, k + 2)))
      if (!joins) break
      k++
    } else if (
      w === '-' &&
      group !== undefined &&
      group >= 20 &&
      group % 10 === 0 &&
      group % 100 !== 0 &&
      (small(tokens[k + 1]?.norm ?? '') ?? 99) < 10
    )
      k++
    else if (
      group !== undefined &&
      group >= 20 &&
      group % 10 === 0 &&
      group % 100 !== 0 &&
      Object.hasOwn(EN_HOMOPHONES, w) &&
      (!JOINING.has(w) ||
        (tokens[k + 1]?.norm === 'and' && tokens[k + 3]?.norm === 'half') ||
        /^(feet|foot|loads|tons|buckets|percent|tires|pounds|inches|gravel|bags|plastics|sheets|wide|long|high|tall|mph|head|cows|holes|batches|degrees|deg|ton|lb|lbs|inch|moisture|dry|dm|as|now|today|milking|thousand|by|buy|x)$/.test(
          tokens[k + 1]?.norm ?? '',
        ) ||
        // "we have fifty for", "fifty to of them"
        (tokens[k + 1] === undefined && k > 1) ||
        (tokens[k + 1]?.norm === 'of' && /^(?:them|em|those)$/.test(tokens[k + 2]?.norm ?? '')))
    ) {
      // "thirty too feet"
      group += EN_HOMOPHONES[w]!
      k++
    } else if (
      group !== undefined &&
      group >= 100 &&
      group % 100 === 0 &&
      normAt(tokens, k - 1) === 'and' &&
      Object.hasOwn(EN_HOMOPHONES, w)
    ) {
      // "two hundred and ate feet"
      group += EN_HOMOPHONES[w]!
      k++
    } else if (group !== undefined && group > 1 && group < 10 && HUNDREDFOLD.test(w)) {
      // "tres cientas", written apart
      group *= 100
      k++
    } else if (total > 0 && group === undefined && Object.hasOwn(EN_HOMOPHONES, w) && tokens[k + 1]?.norm === 'hundred') {
      group = EN_HOMOPHONES[w]!
      k++
    } else if (
      w === 'and' &&
      group === undefined &&
      total > 0 &&
      (small(tokens[k + 1]?.norm ?? '') !== undefined || tens(tokens[k + 1]?.norm ?? '') !== undefined)
    )
      k++
    else if (digits !== undefined && total > 0 && group === undefined && digits! < 1000 && Number.isInteger(digits!)) {
      group = digits!
      k++
    } else break
  }
  if (k === i) return undefined
  let value = total + (group ?? 0)
  if (
    (tokens[k]?.norm === 'point' || tokens[k]?.norm === 'punto') &&
    (small(tokens[k + 1]?.norm ?? '') ?? spoken(tokens, k + 1) ?? 99) < 10
  ) {
    let place = 0.1
    k++
    const heard = spoken(tokens, k)
    if (heard !== undefined) {
      value += heard * place
      k++
    }
    // "thirty three point to percent"
    while ((small(tokens[k]?.norm ?? '') ?? 99) < 10) {
      value += small(tokens[k]!.norm)! * place
      place /= 10
      k++
    }
    value = Math.round(value * 1e6) / 1e6
  }
  return { to: k, value }
}
