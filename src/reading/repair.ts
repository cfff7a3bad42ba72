import { altered, has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import { LEADS_FIX } from './reason.ts'
import type { Lang } from './scan.ts'

const KINDS = ['pile', 'crop', 'mat', 'animal', 'what', 'box', 'sky', 'stone', 'say'] as const

/** What an item is for the purpose of replacing it. */
const kindOf = (i: Item | undefined): string | undefined => {
  if (!i) return undefined
  if (i.sides) return 'sides'
  if (i.num !== undefined && !i.ordinal) return 'num'
  if (i.date) return 'date'
  return KINDS.find(k => hasCat(i, k))
}

const ends = (items: Item[], k: number): boolean => items[k] === undefined || has(items[k], 'stop')

/** "3 holes on shop. make that 4": it begins a sentence of the same message. */
const isMadeAnew = (items: Item[], k: number): boolean =>
  k > 1 && has(items[k], 'fix:make') && LEADS_FIX.test(items[k]!.text) && (has(items[k - 1], 'stop') || has(items[k - 1], 'comma'))

/** A word that sets right what was said before it, and denies nothing by itself. */
const isMended = (i: Item): boolean => has(i, 'fix:no') && !has(i, 'm:no') && !has(i, 'find:trouble')

/** True where such a word stands in the run with a number behind it. */
export const setsRight = (items: Item[], from: number, to: number): boolean => {
  const at = items.findIndex((i, k) => k >= from && k < to && isMended(i))
  return at >= 0 && items.slice(at + 1, to).some(i => i.num !== undefined)
}

/** "six loads of corn six loads of corn on creek", the first one mended: it is said anew with what was mended, and the first goes. */
const saidAgain = (items: Item[], at: number): { from: number; to: number } | undefined => {
  const to = items.findIndex((i, k) => k > at && k <= at + 4 && i.num !== undefined)
  const from = items.findLastIndex((i, k) => k < at && k >= at - 3 && i.num !== undefined)
  if (to < 0 || from < 0 || items[to]!.num !== items[from]!.num || items[to]!.unit !== items[from]!.unit) return undefined
  const crop = valueOf(items[at], 'crop')
  return crop !== undefined && items.slice(to + 1, to + 4).some(i => valueOf(i, 'crop') === crop) ? { from, to } : undefined
}

/**
 * Somebody mends their own words in mid-sentence: "eight no wait nine loads", "barn no shop", "six, I mean seven". The first
 * value goes, the second stands; a unit said with the first is kept where the second has none.
 */
export const repair = (items: Item[], trace: string[], lang: Lang = 'en'): Item[] => {
  if (!items.some((i, k) => has(i, 'fix:no') || isMadeAnew(items, k))) return items
  let out = items
  for (let guard = 0; guard < 4; guard++) {
    const at = out.findIndex(
      (i, k) => k > 0 && (has(i, 'fix:no') || isMadeAnew(out, k)) && !hasCat(i, 'q') && out.slice(0, k).some(x => kindOf(x)),
    )
    if (at < 0) return out
    // "hay, no not hay, I mean corn": what is denied goes, and what is meant comes behind it
    const denied = /^not$/i.test(out[at + 1]?.text ?? '')
      ? out.findIndex((i, k) => k > at + 1 && k <= at + 4 && kindOf(i) !== undefined)
      : -1
    const meant =
      denied > 0 && out.slice(denied + 1, denied + 4).some(i => has(i, 'fix:no') || has(i, 'fix:make')) ? kindOf(out[denied]) : undefined
    if (meant && out.slice(denied + 1).some(i => kindOf(i) === meant)) {
      out = [...out.slice(0, at), ...out.slice(denied + 1)]
      continue
    }
    // Spanish "18 viajes, no 16": the first stands, and what is denied behind the pause goes
    if (lang === 'es' && has(out[at - 1], 'comma') && out[at]!.tokens.length === 1 && kindOf(out[at + 1]) && ends(out, at + 2)) {
      out = [...out.slice(0, at - 1), ...out.slice(at + 2)]
      continue
    }
    let end = at + 1
    while (
      out[end] &&
      (has(out[end], 'fix:no') ||
        has(out[end], 'fix:make') ||
        // "across shop no across barn"
        out.slice(Math.max(0, at - 3), at).some(x => x.text === out[end]!.text && !kindOf(x)) ||
        (isThin(out[end]!) && !kindOf(out[end])) ||
        has(out[end], 'comma'))
    )
      end++
    const next = out[end]
    const kind = kindOf(next)
    let old = -1
    for (let k = at - 1; k >= Math.max(0, at - 9) && kind; k--) {
      if (has(out[k], 'stop') && k < at - 1) break
      if (
        kindOf(out[k]) === kind &&
        (kind !== 'num' || out[k]!.unit === undefined || next!.unit === undefined || out[k]!.unit === next!.unit)
      ) {
        old = k
        break
      }
    }
    if (old < 0 || !next) {
      // nothing to replace: it is an ordinary "no"; look no further at this one
      const rest = out.slice(at + 1)
      if (!rest.some(i => has(i, 'fix:no'))) return out
      const fixed = repair(rest, trace, lang)
      return [...out.slice(0, at + 1), ...fixed]
    }
    // "got the plastic on, no tires on it yet"
    if (kind === 'mat' && /^no$/i.test(out[at]!.text) && !ends(out, end + 1)) return out
    // "an inch of rain, no hail"
    if (kind === 'sky' && out[at]!.tokens.length === 1 && /^no$/.test(out[at]!.text.toLowerCase())) return out
    // "no" between a value and another of its kind may deny the second: "2 holes in barn no holes in shop"
    if (
      next.senses.some(s => s.startsWith('what')) &&
      has(out[at], 'm:no') &&
      out[at]!.tokens.length === 1 &&
      !has(out[at - 1], 'comma') &&
      next.num === undefined
    )
      return out
    const merged: Item =
      kind === 'num' && next.unit === undefined && out[old]!.unit !== undefined
        ? altered(next, { unit: out[old]!.unit, senses: [...new Set([...next.senses, ...out[old]!.senses])] })
        : next
    // "zacate de segundo corte... perdón, de segundo corte de alfalfa": the whole feed is said anew
    const crop = out.findLastIndex((i, k) => k < old && !isThin(i))
    if (kind === 'say' && hasCat(out[crop], 'crop') && out.slice(end + 1, end + 4).some(i => hasCat(i, 'crop') && !has(i, 'cutword'))) {
      trace.push(`mended: ${out[crop]!.text} → ${next.text}`)
      out = [...out.slice(0, crop), ...out.slice(end)]
      continue
    }
    trace.push(`mended: ${out[old]!.text} → ${next.text}`)
    out = [...out.slice(0, old), ...(end - old > 1 ? [merged] : []), ...out.slice(old + 1, at), ...out.slice(end + 1)]
    // "third crop, no, that was corn"
    if (kind === 'crop' && hasCat(out[old - 1], 'say')) {
      out = [...out.slice(0, old - 1), ...out.slice(old)]
      old--
    }
    const again = saidAgain(out, old)
    if (again && out.slice(again.from, again.to).some(i => hasCat(i, 'pile'))) {
      const crop = out.findIndex((i, k) => k > again.to && hasCat(i, 'crop'))
      out = [...out.slice(0, again.to), ...out.slice(crop + 1)]
    } else if (again) out = [...out.slice(0, again.from), ...out.slice(again.to)]
  }
  return out
}
