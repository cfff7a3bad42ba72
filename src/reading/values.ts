import { inLb } from './frames/slots.ts'
import { has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'

const SLOT_CATS: [string, string][] = [
  ['pile', 'pile'],
  ['mat', 'material'],
  ['animal', 'animal'],
  ['box', 'box'],
  ['item', 'item'],
]

/** "was 8" */
export const WAS = /^(?:(?:it|they|that) )?(?:was|were)$|^(?:era|eran|fue|fueron)$/i

/** "make the loads 7", "los viajes eran 7": what is counted stands before its number. */
const isCountedBefore = (items: Item[], k: number): boolean => {
  const at = items.findLastIndex((i, j) => j < k && !isThin(i) && !has(i, 'fix:make'))
  const i = items[at]
  return i !== undefined && i.num === undefined && ['unit:load', 'unit:bucket', 'unit:batch'].some(s => has(i, s)) && !hasCat(i, 'box')
}

/** What a share is of, behind it and a word of being: "46 was the moisture". */
const shareOf = (items: Item[], k: number): string | undefined => {
  let at = k + 1
  while (at < k + 4 && items[at] && (WAS.test(items[at]!.text) || isThin(items[at]!) || has(items[at], 'fix:make'))) at++
  return valueOf(items[at], 'dm')
}

/** Values that could be put into an earlier event. */
export const values = (items: Item[]): Record<string, unknown> => {
  const slots: Record<string, unknown> = {}
  for (let k = 0; k < items.length; k++) {
    const i = items[k]!
    for (const [cat, slot] of SLOT_CATS) {
      const v = valueOf(i, cat)
      // "pero" is heard for a dog
      if (v !== undefined && !(cat === 'animal' && has(i, 'but'))) slots[slot] ??= v
    }
    if (hasCat(i, 'say') && (has(items[k + 1], 'cutword') || hasCat(items[k + 1], 'crop'))) {
      const next = items[k + 1]!
      slots.cut = Number(valueOf(i, 'say')!.split(':')[1])
      slots.crop ??= has(next, 'cutword') ? 'haylage' : valueOf(next, 'crop')
      k++
      continue
    }
    if (hasCat(i, 'crop') && !has(i, 'cutword')) slots.crop = valueOf(i, 'crop')
    if (hasCat(i, 'what')) slots.what ??= valueOf(i, 'what')
    if (hasCat(i, 'sky')) slots.kind ??= valueOf(i, 'sky')
    if (hasCat(i, 'stone')) slots.inches ??= Number(valueOf(i, 'stone'))
    if (hasCat(i, 'cause') && !hasCat(i, 'sky')) slots.cause ??= valueOf(i, 'cause')
    if (has(i, 'why:feed') || has(i, 'b:feed')) slots.why ??= 'feed'
    if (has(i, 'why:add') || has(i, 'b:put')) slots.why ??= 'add'
    if (has(i, 'find:good')) slots.finding ??= 'good'
    if (has(i, 'find:trouble') && !has(i, 'fix:no')) slots.finding ??= 'trouble'
    if (i.sides) {
      slots.sides = i.sides
      continue
    }
    if (i.num === undefined && (has(i, 'unit:bucket') || has(i, 'unit:batch') || has(i, 'unit:load')) && !hasCat(i, 'box'))
      slots.unit ??= valueOf(i, 'unit')
    if (i.num === undefined || i.ordinal) continue
    // "thats a load of bull"
    if (i.num === 1 && /^an?$|^una?$/.test(i.tokens[0]!.norm) && items.slice(k + 1, k + 4).some(x => !x.senses.length)) continue
    let d = k + 1
    while (items[d] && isThin(items[d]!) && !hasCat(items[d], 'dim')) d++
    const dim = valueOf(items[d], 'dim')
    const lb = inLb(i)
    if (dim && ['width', 'length', 'height'].includes(dim)) slots[`${dim}Ft`] = i.num
    else if (lb !== undefined) slots.lb = lb
    else if (i.unit === 'load' || i.unit === 'bucket' || i.unit === 'batch') {
      slots.count = i.num
      slots.unit = i.unit
    } else if (i.unit === undefined && slots.count === undefined && isCountedBefore(items, k)) slots.count = i.num
    else if (i.unit === 'ft') slots.feet = i.num
    else if (i.unit === 'in') slots.inches = i.num
    else if (i.unit === 'mph') slots.mph = i.num
    else if (i.unit === 'hour') slots.hours = i.num
    else if (i.unit === 'pct' || shareOf(items, k) !== undefined) {
      const wet = shareOf(items, k) === 'wet'
      slots.dmPct = wet ? 100 - i.num : i.num
    } else if (slots.number === undefined) slots.number = i.num
    else slots.number2 = i.num
  }
  return slots
}
