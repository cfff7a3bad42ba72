import { has, hasCat } from '../item.ts'
import type { Pool } from '../pool.ts'

/** Words for where a crop grew, though one of them may name the crop too. */
export const FIELD_WORD = /^(?:milpa|labor|tabla|parcela|potrero|lote|campo|terreno)$/

/** "la parcela grande": which of them. */
const WHICH_FIELD = /^(?:grande|chic[oa]|nuev[oa]|viej[oa]|alt[oa]|baj[oa]|larg[oa]|de (?:arriba|abajo|atras|en medio))$/i

/** "from the back 40", "off the river field": where it was cut, as said. */
export const takeField = (p: Pool): string | undefined => {
  // "river bottom fld": named before the word, without a "from"
  const word = p.find(i => /^(?:field|fld)$/.test(i.text.toLowerCase()))
  // "field 12"
  const n = word >= 0 ? p.items[word + 1] : undefined
  if (n && p.free(word + 1) && n.num !== undefined && n.unit === undefined && Number.isInteger(n.num)) {
    p.used[word] = 1
    p.take(word + 1)
    return `field ${n.num}`
  }
  if (word > 0) {
    let from = word
    while (
      from > 0 &&
      word - from < 3 &&
      p.free(from - 1) &&
      (p.items[from - 1]!.senses.length === 0 || has(p.items[from - 1], 'where:place'))
    )
      from--
    if (from < word) {
      for (let j = from; j <= word; j++) p.used[j] = 1
      return p.items
        .slice(from, word + 1)
        .map(i => i.text.toLowerCase())
        .join(' ')
    }
  }
  for (let k = 0; k < p.items.length; k++) {
    // "la pila del cerrito" is a pile, not a field
    if (!has(p.items[k], 'off') || has(p.items[k], 'on') || has(p.items[k - 1], 'pileword')) continue
    let from = k + 1
    while (p.items[from] && has(p.items[from], 'filler') && p.items[from]!.senses.length === 1) from++
    let end = from
    while (p.free(end) && end - from < 4) {
      const i = p.items[end]!
      const ok =
        i.senses.length === 0 ||
        has(i, 'where:place') ||
        hasCat(i, 'person') ||
        (hasCat(i, 'pile') && /^(field|place|farm|campo|lote)$/.test(p.items[end + 1]?.tokens[0]?.norm ?? '')) ||
        (end > from && FIELD_WORD.test(p.items[from]!.tokens[0]!.norm) && WHICH_FIELD.test(i.text)) ||
        (i.num !== undefined && i.unit === undefined && end > from) ||
        (i.num !== undefined && i.unit === 'acre') ||
        (end === from && FIELD_WORD.test(i.tokens[0]!.norm)) ||
        /^(field|fld|forty|eighty|quarter|section|place|farm|ground|piece|bottom|campo|lote|parcela|potrero|terreno|rancho|milpa|back|home|east|west|far|vecino|neighbors?)$/.test(
          i.tokens[0]!.norm,
        )
      // "campo de los Meyer"
      const owner = has(p.items[end + 1], 'filler') && p.items[end + 1]!.senses.length === 1 ? end + 2 : end + 1
      const joins =
        end > from &&
        has(i, 'off') &&
        p.free(owner) &&
        (p.items[owner]!.senses.length === 0 ||
          hasCat(p.items[owner], 'person') ||
          (FIELD_WORD.test(p.items[from]!.tokens[0]!.norm) && has(p.items[owner], 'where:place')))
      if (joins) {
        end = owner + 1
        continue
      }
      if (!ok) break
      end++
    }
    if (
      end > from &&
      p.items
        .slice(from, end)
        .some(
          i =>
            i.senses.length === 0 ||
            has(i, 'where:place') ||
            hasCat(i, 'person') ||
            /^(field|campo|lote|home|place|vecino|neighbors?)$/.test(i.tokens.at(-1)!.norm),
        )
    ) {
      for (let j = from; j < end; j++) p.used[j] = 1
      return p.items
        .slice(from, end)
        .map(i => i.text.toLowerCase())
        .join(' ')
    }
  }
  return undefined
}
