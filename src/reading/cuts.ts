import { has, hasCat, type Item, isVerb } from './item.ts'
import { JUST_IN_CASE } from './mood.ts'

const START = ['v:', 'b:', 'sky:', 'stone:', 'fix:make']

const OF_PLACE = /^(?:field|fld|farm|place)$/i

/** Words that begin an aside. */
const ASIDE = new Set('while because cuz coz bc becuz which whereas anyway anyways anyhow mientras porque pq porq'.split(' '))

/** Positions where a new clause may begin, with what a cut there costs. */
export const cuts = (items: Item[]): Map<number, number> => {
  const at = new Map<number, number>()
  // "sat fed 10k sun 11k": days lead; else a day ends what was told before it
  const lead = items.findIndex(i => i.date !== undefined || i.num !== undefined || isVerb(i))
  const ends = lead >= 0 && items[lead]!.date === undefined
  for (let k = 1; k < items.length; k++) {
    const i = items[k]!
    const prev = items[k - 1]!
    // "3rd cut" stays whole, and with the crop before it
    if (has(i, 'cutword') && hasCat(prev, 'say')) continue
    // "3 plasticos de 50x130"
    if (i.sides && has(prev, 'off') && hasCat(items[k - 2], 'mat')) continue
    if (has(i, 'so') || has(i, 'but') || (has(i, 'm:if') && JUST_IN_CASE.test(i.text))) at.set(k, 0.1)
    else if (has(prev, 'comma')) at.set(k, 0.2)
    else if (ASIDE.has(i.tokens[0]?.norm ?? '')) at.set(k, 0.3)
    else if (has(prev, 'and')) at.set(k, has(items[k - 2], 'comma') ? 0.2 : 0.4)
    else if (
      i.senses.some(s => START.some(p => s.startsWith(p))) ||
      (i.date && !(ends && has(items[k + 1], 'and'))) ||
      // "rain since yesterday no damage"
      (hasCat(i, 'find') && prev.date) ||
      (i.num !== undefined && i.unit !== undefined) ||
      // "11k yesterday 10.6k today"
      (i.num !== undefined && i.num >= 1000 && prev.date !== undefined) ||
      // "6 corn 2 hay"
      (i.num !== undefined && hasCat(prev, 'crop') && hasCat(items[k + 1], 'crop')) ||
      // "3 holes barn 1 shop"
      (i.num !== undefined &&
        hasCat(prev, 'pile') &&
        (hasCat(items[k + 1], 'pile') || (has(items[k + 1], 'on') && hasCat(items[k + 2], 'pile')))) ||
      // "on north dry matter was 40"
      (hasCat(i, 'dm') && items[k - 1]?.num === undefined && !has(prev, 'off')) ||
      hasCat(i, 'animal') ||
      hasCat(i, 'what') ||
      // "off spring": a pile behind its little word belongs to what went before
      (hasCat(i, 'pile') && !(has(prev, 'off') && !hasCat(prev, 'v')) && !has(prev, 'on')) ||
      has(i, 'thing:face') ||
      i.sides ||
      hasCat(i, 'mat') ||
      (hasCat(i, 'crop') && items[k - 1]?.num === undefined)
    ) {
      // moods and articles go with what follows them, and "3 tenths rain" keeps its measure
      const counted =
        (hasCat(i, 'sky') || hasCat(i, 'mat') || hasCat(i, 'item')) &&
        prev.num !== undefined &&
        prev.unit === undefined &&
        !prev.ordinal &&
        k > 1
      // "traje 3 plasticos": the verb, its number and what is counted stay together
      if (counted && isVerb(items[k - 2]!)) continue
      let b = counted ? k - 1 : k
      while (
        b > 1 &&
        items[b - 1]!.senses.every(
          s => s === 'filler' || s.startsWith('m:') || s === 'approx' || s === 'q:yesno' || s === 'fix:no' || s === 'ans:no',
        ) &&
        items[b - 1]!.senses.length > 0 &&
        // "from the church field | running 33 % dry matter"
        !OF_PLACE.test(items[b - 1]!.text) &&
        items[b - 1]!.num === undefined
      )
        b--
      if (!at.has(b)) at.set(b, i.date && ends ? 1.2 : 0.9)
      if (b !== k && !at.has(k)) at.set(k, 1.4)
    }
  }
  return at
}
