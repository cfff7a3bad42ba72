import { has, hasCat, type Item, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'
import { counted, HEAPED, isCountedOff, isLaidOn, SHEETS } from './sheets.ts'

/** A material where it stands in its clause. */
export interface Mat {
  i: Item
  k: number
}

/** What stands right behind what was laid, and says that it lies there. */
const LAID = /^(?:on|on top|up|down|over|along|around|across|all along|all around|encima|sobre|arriba)$/i

/** "50x150 plastic and 295 tires on": nothing but what is laid, how big and how many, and "on" behind it. */
const isListOn = (p: Pool, last: Mat | undefined): boolean =>
  last !== undefined &&
  p.items[last.k + 1] !== undefined &&
  LAID.test(p.items[last.k + 1]?.text ?? '') &&
  p.items.slice(last.k + 2).every(i => isThin(i) || hasCat(i, 'pile') || has(i, 'where:place') || has(i, 'back') || i.date !== undefined) &&
  p.items
    .slice(0, last.k + 1)
    .every(i => isThin(i) || has(i, 'and') || i.ghost || hasCat(i, 'mat') || i.sides !== undefined || isBareNumber(i)) &&
  p.items.slice(0, last.k).some(i => i.sides !== undefined || i.num !== undefined)

const isBareNumber = (i: Item): boolean => i.num !== undefined && i.unit === undefined && !i.ordinal

/**
 * Whether a clause tells without a verb of its own that something lies on a pile, or off it: "mesh off lane", "sheet is on", "30 bags on
 * lane edge".
 * @param trailing the items right behind the first material
 * @param idle the clause has no verb of laying, taking or rolling
 */
export const laidWithout = (
  p: Pool,
  mats: Mat[],
  trailing: Item[],
  idle: boolean,
): { isOn: boolean; gotOn: boolean; verbless: boolean } => {
  const first = mats[0]
  const pileAt = p.cat('pile')
  // "barrier film + plastic on": the last of what is laid together
  let chain = first?.k ?? 0
  while (has(p.items[chain + 1], 'and') && hasCat(p.items[chain + 2], 'mat') && SHEETS.has(valueOf(p.items[chain + 2], 'mat')!)) chain += 2
  const behind = first === undefined ? [] : p.items.slice(chain + 1, chain + 4).filter(i => !has(i, 'back'))
  const isOn =
    first !== undefined &&
    idle &&
    behind.slice(0, 2).some(
      (i, n) =>
        /^on$/.test(i.text.toLowerCase()) &&
        (n > 0
          ? has(behind[0], 'filler')
          : has(p.items[first.k + 1], 'back') ||
            /s$/.test(first.i.tokens.at(-1)!.text) ||
            // "plastic on, 50x150"
            ((has(behind[1], 'comma') || behind[1]?.sides) && (p.find(x => x.sides !== undefined) >= 0 || chain > first.k))),
    ) &&
    p.items.slice(0, first.k).every(i => isThin(i) || has(i, 'm:no'))
  const given =
    first !== undefined &&
    pileAt >= 0 &&
    p.find((i, k) => (has(i, 'v:buy') || has(i, 'v:have')) && k > pileAt && k < first.k) >= 0 &&
    p.relation(pileAt) === undefined
  // "we got the barrier film on it"
  const gotOn = first !== undefined && p.find((i, k) => (has(i, 'v:buy') || has(i, 'v:have')) && k < first.k) >= 0 && isLaidOn(p, first.k)
  const second =
    first !== undefined && pileAt > first.k && has(first.i, 'mat:second plastic') && p.relation(pileAt) === 'on' && p.cat('v') < 0
  // "barrier film and 50x150 plastic on creek, done"
  const laid = mats.at(-1)
  const listed =
    laid !== undefined &&
    pileAt > laid.k &&
    p.relation(pileAt) === 'on' &&
    p.cat('v') < 0 &&
    (mats.length > 1 || p.find(i => i.sides !== undefined) >= 0) &&
    mats.every(x => SHEETS.has(valueOf(x.i, 'mat')!) || valueOf(x.i, 'mat') === 'mesh' || counted(valueOf(x.i, 'mat')!))
  const verbless =
    given ||
    listed ||
    isListOn(p, laid) ||
    gotOn ||
    second ||
    (first !== undefined &&
      p.find(i => hasCat(i, 'v') || has(i, 'm:plan')) < 0 &&
      (isOn || pileAt >= 0 || p.num(['ft']) >= 0 || isCountedOff(p, first.k)) &&
      (isOn ||
        trailing.some(i => has(i, 'off') && !has(i, 'on') && /^off/.test(i.tokens[0]!.norm)) ||
        (trailing.some(i => has(i, 'back')) && p.num(['ft']) >= 0) ||
        // "dirt on creek edges"
        (HEAPED.has(valueOf(first.i, 'mat')!) && first.k === 0 && has(p.items[1], 'on') && pileAt > 0) ||
        (counted(valueOf(first.i, 'mat')!) &&
          p.items[has(p.items[first.k - 1], 'more') ? first.k - 2 : first.k - 1]?.num !== undefined &&
          trailing.some(i => has(i, 'on')))))
  return { isOn, gotOn, verbless }
}
