import { has, hasCat } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'

/** A place on a pile, kept as said: "by the wall", "n end", "del lado norte". */
export const takeWhere = (p: Pool, allowUnknown = true, not?: RegExp, start = 0): string | undefined => {
  for (let k = start; k < p.items.length; k++) {
    if (p.used[k]) continue
    const i = p.items[k]!
    // "w tape" is with it, "w side" the west
    // where only a place in passing is looked for, a pile's name is the pile
    const place =
      has(i, 'where:place') &&
      (allowUnknown || !hasCat(i, 'pile')) &&
      !(has(i, 'with') && (hasCat(p.items[k + 1], 'item') || hasCat(p.items[k + 1], 'mat')))
    // "w skidsteer" is with it
    if (/^w$/i.test(i.text) && !has(p.items[k + 1], 'where:place')) continue
    const led = has(i, 'prepWhere')
    // "left two holes by the wall": made them
    if (
      /^(?:left|leaves)$/.test(i.text.toLowerCase()) &&
      (p.items[k + 1]?.num !== undefined || hasCat(p.items[k + 1], 'what') || has(p.items[k + 1], 'filler'))
    )
      continue
    // "out n stomped 5 holes": and
    if (i.text.toLowerCase() === 'n' && p.items[k + 1] && !has(p.items[k + 1], 'where:place') && !has(p.items[k + 1], 'comma')) continue
    // "2 tears n | a loose edge"
    if (/^n$/i.test(i.text) && p.items[k + 1] === undefined && hasCat(p.items[k - 1], 'what')) continue
    // "walked right up on it"
    if (i.text.toLowerCase() === 'right' && (has(p.items[k + 1], 'on') || has(p.items[k + 1], 'off') || has(p.items[k + 1], 'prepWhere')))
      continue
    if (!place && !led) continue
    let from = k
    let end = k
    if (led && !place) {
      from = k + 1
      while (p.items[from] && isThin(p.items[from]!)) from++
      if (!p.free(from)) continue
      // "by the feed lane"
      if (
        p.items[from]!.text.toLowerCase() === 'feed' &&
        p.free(from + 1) &&
        (p.items[from + 1]!.senses.length === 0 || has(p.items[from + 1], 'where:place'))
      ) {
        for (let j = k; j <= from + 1; j++) p.used[j] = 1
        return `feed ${p.items[from + 1]!.text.toLowerCase()}`
      }
      const head = p.items[from]!
      const ok =
        has(head, 'where:place') ||
        (allowUnknown &&
          (head.senses.length === 0 ||
            /^(?:piso|suelo|floor|ground)$/.test(head.text.toLowerCase()) ||
            hasCat(head, 'mat') ||
            has(head, 'thing:face') ||
            has(head, 'ordinal')))
      if (!ok || head.num !== undefined) continue
      end = from + 1
    } else {
      // a place word that stands in a pile's room is a place only beside another place word or a relation
      end = k + 1
      const prev = p.items[k - 1]
      const lead = prev && p.free(k - 1) && prev.senses.length === 0 && k >= 1 ? k - 1 : k
      from = lead
    }
    while (p.free(end) && (has(p.items[end], 'where:place') || (p.items[end]!.senses.length === 0 && has(p.items[end + 1], 'where:place'))))
      end++
    // "corner of the feed end"
    while (
      p.free(end) &&
      p.items[end]!.senses.every(s => s === 'off' || s === 'filler') &&
      p.free(end + 1) &&
      has(p.items[end + 1], 'where:place')
    ) {
      end += 2
    }
    // "along the top", "under the tires": how it lies there is kept, "by" and "at" say nothing more
    const lies =
      from > k &&
      /^(?:along|around|under|underneath|behind|beside|below|above|between|across|inside|outside|debajo|detras|atras|alrededor)$/.test(
        i.text.toLowerCase(),
      )
    const text = p.items
      .slice(lies ? k : from, end)
      .map(x => x.text.toLowerCase())
      .join(' ')
    if (not?.test(text)) continue
    for (let j = Math.min(k, from); j < end; j++) p.used[j] = 1
    return text
  }
  return undefined
}
