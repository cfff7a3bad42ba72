import { has, hasCat, type Item, isVerb } from './item.ts'

const MISREAD =
  /\b(?:misread|miscounted|mistyped|typo|fat ?finger(?:ed)?|(?:read|looked at|counted|typed) (?:the |it |at the )?wrong|lei mal|conte mal|escribi mal|went back and (?:re)?measured|measured (?:it )?again|counted (?:it |them |em )?again|recounted|looked (?:at (?:the |my )?\w+ )?again|checked (?:the |it )?\w* ?again|remeasured|double checked)\b/
/** How a correction begins that says at once what is right. */
export const LEADS_FIX = /^(?:make|mk|change|should|cambia\w*|ponle)/i

/** Where "26, read the wrong end of the tape" begins to say how the slip came about; -1 where a message does not. */
export const reasonAt = (items: Item[]): number => {
  if (items.length > 12 || items[0]?.num === undefined) return -1
  // "112 sorry, fat thumbs"
  const sorry = has(items[1], 'fix:no') && has(items[2], 'comma') && items.slice(3).every(i => i.num === undefined && !hasCat(i, 'pile'))
  if (sorry) return 1
  return has(items[1], 'comma') && MISREAD.test(items.map(i => i.text.toLowerCase()).join(' ')) ? 1 : -1
}

/** Where what is right begins, behind the pause, in "read the tape wrong, its 24"; -1 where a message does not begin so. */
export const misreadAt = (items: Item[]): number => {
  const pause = items.length > 12 ? -1 : items.findIndex(i => has(i, 'comma'))
  if (pause < 2) return -1
  const why = items.slice(0, pause)
  if (why.some(i => i.num !== undefined || hasCat(i, 'pile') || hasCat(i, 'crop'))) return -1
  return MISREAD.test(why.map(i => i.text.toLowerCase()).join(' ')) ? pause + 1 : -1
}

/** The items of a value without the reason why another was told before. */
export const withoutReason = (items: Item[]): Item[] => {
  const at = reasonAt(items)
  return at > 0 ? items.slice(0, at) : items
}

/** "fat thumbs, make that 9": how it came about stands first. */
export const isReason = (items: Item[], make: number): boolean =>
  has(items[make - 1], 'comma') &&
  LEADS_FIX.test(items[make]!.text) &&
  items
    .slice(0, make)
    .every(i => i.num === undefined && !i.sides && !isVerb(i) && !hasCat(i, 'pile') && !hasCat(i, 'crop') && !hasCat(i, 'mat'))
