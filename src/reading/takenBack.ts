import { type DateItem, has, hasCat, type Item } from './item.ts'
import { isThin } from './pool.ts'
import type { Fix } from './reading.ts'
import { values } from './values.ts'

const SETS_RIGHT = /^(?:make|mk|change|only|just|cambia\w*|ponle|solo|solamente|nomas|nada)$/

/**
 * A message that takes back what was recorded: "scratch that", "undo the haylage"; undefined where it does not.
 * @param items without stops and marks
 * @param content of them, what is no filler
 */
export const takenBack = (all: Item[], items: Item[], content: Item[], dates: DateItem | undefined): Fix | undefined => {
  const first = content[0]!
  // "never mind that, he sold em to somebody else. undo"
  const letGo = has(all[0], 'ans:drop') && all.length > 2 && has(all.at(-1), 'fix:undo')
  if (letGo) return { kind: 'undo', slots: {}, wrong: {}, many: false, date: undefined, strength: 2 }
  // "that last one was meant for marta, scratch it"
  const last = all.findLastIndex(i => !has(i, 'stop') && !has(i, 'mark'))
  const scratched = last > 1 && has(all[last], 'fix:undo') && has(all[last - 1], 'comma')
  if (scratched && all.slice(0, last).every(i => i.num === undefined && !hasCat(i, 'pile') && !hasCat(i, 'crop') && !hasCat(i, 'mat')))
    return { kind: 'undo', slots: {}, wrong: {}, many: false, date: undefined, strength: 2 }
  const undo = content.findIndex(i => has(i, 'fix:undo'))
  if (undo >= 0 && undo <= 1) {
    // the reason after a comma is only a reason: "cancel that one, read the tape wrong"
    const pause = items.findIndex((i, k) => has(i, 'comma') && k > items.indexOf(content[undo]!))
    const told = pause < 0 ? content.slice(undo + 1) : items.slice(items.indexOf(content[undo]!) + 1, pause).filter(i => !isThin(i))
    const rest = told.filter(i => !hasCat(i, 'fix') && !has(i, 'ans:drop') && !has(i, 'comma'))
    const slots = values(rest)
    // "scratch that, make it 5", "scratch that we only brought 5": not taken back but set right
    const after = items.slice(items.indexOf(content[undo]!) + 1)
    const setRight = after.some(i => i.num !== undefined) && after.some(i => has(i, 'fix:make') || SETS_RIGHT.test(i.tokens[0]!.norm))
    // "scratch that I was looking at the wrong line": only why
    const why =
      (content[undo] === first || (undo === 1 && has(first, 'fix:no'))) &&
      !after.some(i => i.num !== undefined || hasCat(i, 'pile') || hasCat(i, 'crop') || hasCat(i, 'mat'))
    const known =
      why ||
      (!setRight &&
        rest.every(
          i =>
            i.num !== undefined ||
            hasCat(i, 'pile') ||
            hasCat(i, 'crop') ||
            hasCat(i, 'unit') ||
            hasCat(i, 'v') ||
            hasCat(i, 'b') ||
            hasCat(i, 'sky') ||
            hasCat(i, 'what') ||
            hasCat(i, 'thing') ||
            has(i, 'and') ||
            hasCat(i, 'pick') ||
            hasCat(i, 'm') ||
            i.senses.some(s => s === 'filler') ||
            hasCat(i, 'mat'),
        ))
    if (known) {
      return {
        kind: 'undo',
        slots,
        wrong: {},
        many: /\b(both|all|dos|todo)\b/.test(first.text.toLowerCase() + content[undo]!.text.toLowerCase()),
        date: dates,
        strength: 2,
      }
    }
  }
  return undefined
}
