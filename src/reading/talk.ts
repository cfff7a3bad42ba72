import { has, hasCat, type Item, isVerb, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import type { Fix } from './reading.ts'
import { isReason, LEADS_FIX, misreadAt, reasonAt, withoutReason } from './reason.ts'
import { takenBack } from './takenBack.ts'
import { values, WAS } from './values.ts'

const SAID = /^(?:said|wrote|typed|dije|puse|escribi)$/
const IS = /^(?:was|were|is|era|eran|fue|fueron|son)$/
const SHOULD = /\bshould|\b(?:eran|fueron|debian)\b/i
const THOSE = /^(?:those|them|esos|esas|aquellos)$/i

const OBJECT = /^(?:se|le|les|lo|la|los|las|me|nos|te|hay|hubo|ha|han)$/i
const IN_THERE = /\b(?:in|on) (?:there|it now)\b|\bright$/
const SHORT = 6

/** How a short message may end that sets the one before right: "barn, sorry". */
const MEANT = /^(?:i mean|sorry|i meant|actually|rather|perdon|digo|mas bien)$/

/** False where nothing in a message can set right what was said before; most messages are let go here. */
const mayFix = (all: Item[]): boolean => {
  let solid = 0
  let cue = all[0]?.text === '*'
  for (const i of all) {
    if (hasCat(i, 'fix') || has(i, 'm:no') || has(i, 'v:call')) return true
    cue ||= SAID.test(i.tokens.at(-1)!.norm) || IS.test(i.tokens.at(-1)!.norm) || MEANT.test(i.text.toLowerCase())
    if (!isThin(i) && !has(i, 'stop')) solid++
  }
  return solid <= SHORT && (cue || reasonAt(all) > 0 || misreadAt(all) > 0)
}

/** True where what follows a denied value, behind a pause, has nothing to set right: "3 tractors not 2, walt just showed up". */
const isWhy = (items: Item[], not: number): boolean => {
  const pause = items.findIndex((i, k) => k > not && has(i, 'comma'))
  return (
    pause > 0 &&
    pause <= not + 3 &&
    items.slice(pause).every(i => i.num === undefined && !i.sides && !hasCat(i, 'crop') && !hasCat(i, 'pile') && !hasCat(i, 'v'))
  )
}

/** "looked closer, that was a dog not a coon": a word that sets right, and beside the denial two values of one kind. */
const turnedRound = (items: Item[], not: number): boolean => {
  const solid = (i: Item | undefined): boolean => i !== undefined && !isThin(i)
  const good = items.slice(0, not).findLast(solid)
  const bad = items.slice(not + 1).find(solid)
  return (
    items.slice(0, not).some(i => has(i, 'fix:make')) &&
    ['pile', 'crop', 'animal', 'mat', 'cause', 'what'].some(c => hasCat(good, c) && hasCat(bad, c)) &&
    items.length <= 12
  )
}

/** A message that changes what was said before; undefined where it is none. */
export const fixOf = (all: Item[]): Fix | undefined => {
  if (!mayFix(all)) return undefined
  // "make it 2. he only had 2 on the truck", "make that three, he threw one in": what follows says only why
  const led = all.slice(0, 2).some(i => has(i, 'fix:make') && LEADS_FIX.test(i.text))
  const stop = all.findIndex((i, k) => has(i, 'stop') || (led && k > 1 && has(i, 'comma') && !all.slice(k).some(x => hasCat(x, 'fix'))))
  if (stop > 0 && stop < all.length - 1) {
    const first = fixOf(all.slice(0, stop))
    if (first && (first.strength >= 2 || Object.keys(first.wrong).length > 0)) return first
  }
  // "read the tape wrong, its 24", "looked at the gauge again, inch and a quarter": why first, then what is right
  const why = misreadAt(all)
  if (why > 0) {
    const right = values(all.slice(why).filter(i => !has(i, 'stop') && !has(i, 'mark') && !has(i, 'comma')))
    if (Object.keys(right).length) return { kind: 'change', slots: right, wrong: {}, strength: 2 }
  }
  // "sorry, was counting while he was yakking at me, make that 6": how it came about stands first
  const last = all.findLastIndex((i, k) => k > 1 && has(i, 'fix:make') && LEADS_FIX.test(i.text))
  if (last > 0 && has(all[0], 'fix:no') && all.slice(0, last).every(i => !i.sides && !hasCat(i, 'pile') && !hasCat(i, 'unit'))) {
    const fix = fixOf(all.slice(last))
    if (fix) return fix
  }
  const items = all.filter(i => !has(i, 'stop') && !has(i, 'mark'))
  const said = items.filter(i => !isThin(i) || hasCat(i, 'fix'))
  // "and it was barn", "3 i mean"
  const content = has(said[0], 'and') && said.length > 1 ? said.slice(1) : said
  const first = content[0]
  if (!first) return undefined
  const dates = items.find(i => i.date)?.date
  const undo = takenBack(all, items, content, dates)
  if (undo) return undo
  // "no, that was spoiled I pitched, not fed": the same amount, another deed
  const threw = items.some(i => has(i, 'thing:spoiled') || has(i, 'v:pitch'))
  if (
    has(first, 'fix:no') &&
    threw &&
    items.some(i => has(i, 'v:feed')) &&
    items.some(i => has(i, 'm:no') && i !== first) &&
    !items.some(i => i.num !== undefined)
  )
    return { kind: 'change', slots: {}, wrong: {}, becomes: 'spoil', strength: 3 }
  // "en lane no, en old slab": a value, a no, another of its kind
  // "far corner, no north", "son 6 no 7": no pause behind the no, and the first one stands
  const denied = items.findIndex(
    (i, k) => k > 0 && has(i, 'fix:no') && /^no$/.test(i.tokens[0]!.norm) && !has(items[k + 1], 'comma') && !has(items[k + 1], 'fix:make'),
  )
  if (denied > 0 && content.length <= 6) {
    const good = values(items.slice(0, denied))
    const bad = values(items.slice(denied + 1))
    const keys = Object.keys(bad)
    if (keys.length && keys.length === Object.keys(good).length && keys.every(k => k in good && good[k] !== bad[k]))
      return { kind: 'change', slots: good, wrong: bad, strength: 2 }
  }
  const mid = items.findIndex((i, k) => k > 0 && has(i, 'fix:no') && /^no$/.test(i.tokens[0]!.norm))
  if (mid > 0 && content.length <= 5) {
    const before = values(items.slice(0, mid))
    const after = values(items.slice(mid + 1))
    const keys = Object.keys(after)
    if (keys.length && keys.length === Object.keys(before).length && keys.every(k => k in before))
      return { kind: 'change', slots: after, wrong: before, strength: 2 }
  }
  // "sorry, call it bench not flat"
  const naming = items.findIndex(i => has(i, 'v:call') && /^(?:call|name|llama|ponle)/.test(i.text.toLowerCase()))
  const name =
    naming >= 0 && content.length <= 6 && !items.some(i => has(i, 'v:new') || has(i, 'pileword'))
      ? items.slice(naming + 1).find(i => !isThin(i))
      : undefined
  if (name?.senses.every(s => s === 'where:place'))
    return { kind: 'change', slots: { strange: name.text.toLowerCase() }, wrong: {}, strength: 2 }
  // "wasn't dogs, it was coons"
  const denial = items.findIndex((i, k) => k <= 3 && has(i, 'm:no'))
  const turned = items.findLastIndex((i, k) => k > 0 && (has(i, 'fix:make') || (WAS.test(i.text) && has(items[k - 1], 'comma'))))
  if (
    denial >= 0 &&
    turned > denial &&
    (denial === 0 ? content.length <= 6 : content.length <= 12 && !items.some(i => i.num !== undefined))
  ) {
    const good = values(items.slice(turned))
    const bad = values(items.slice(denial + 1, turned))
    const keys = Object.keys(good)
    if (keys.length && keys.every(k => k in bad && bad[k] !== good[k])) return { kind: 'change', slots: good, wrong: bad, strength: 2 }
  }
  // "wasnt the dog, skunk. tracks all over"
  const pause = denial === 0 && turned < 0 ? items.findIndex(i => has(i, 'comma')) : -1
  if (pause > 1 && pause <= 4 && items.length <= 14) {
    const good = values(items.slice(pause, pause + 3))
    const bad = values(items.slice(1, pause))
    const keys = Object.keys(good)
    if (keys.length === 1 && keys.every(k => k in bad && bad[k] !== good[k]))
      return { kind: 'change', slots: good, wrong: bad, strength: 2 }
  }
  // "I said barn I meant shop"
  const saidAt = items.findIndex(i => SAID.test(i.tokens.at(-1)!.norm))
  const meantAt = items.findLastIndex((i, k) => k > saidAt + 1 && has(i, 'fix:make'))
  if (saidAt >= 0 && meantAt > 0 && content.length <= 7) {
    const good = values(items.slice(meantAt))
    const bad = values(items.slice(saidAt, meantAt))
    const keys = Object.keys(good)
    if (keys.length && keys.every(k => k in bad && bad[k] !== good[k])) return { kind: 'change', slots: good, wrong: bad, strength: 2 }
  }
  // "the haylage was 3": one of several that were told together
  const [one, two] = content.filter(i => !has(i, 'comma') && !has(i, 'filler'))
  const among = one && two && content.length <= 4 && hasCat(one, 'crop') && two.num !== undefined && !two.ordinal
  if (among && (two.unit === undefined || two.unit === 'load') && items.some(i => IS.test(i.tokens.at(-1)?.norm ?? '')))
    return { kind: 'change', slots: { number: two.num }, wrong: { crop: valueOf(one, 'crop') }, strength: 2, among: true }
  // "those 9 loads from this morning on creek, should have been 8"
  const turn = content.findIndex((i, k) => k > 0 && has(i, 'fix:make') && SHOULD.test(i.text))
  if (turn > 0 && THOSE.test(items[0]!.text) && content[turn + 1]?.num !== undefined) {
    const good = values(content.slice(turn))
    const bad = values(content.slice(0, turn))
    return { kind: 'change', slots: good, wrong: bad.count === undefined ? {} : { number: bad.count }, strength: 3, named: true }
  }
  const head = content.slice(0, 3)
  const meant = content.length <= 4 && MEANT.test(content.at(-1)!.text.toLowerCase())
  // "*barn": how a slip is set right in a chat
  const starred = all[0]?.text === '*' && content.length <= 3
  const misread = reasonAt(all) > 0
  // "haven't patched barn yet, sorry" only denies
  if (meant && items.some(i => has(i, 'm:no')) && items.some(isVerb)) return undefined
  // "no spoil to pitch off shop today": nothing is set right
  const denies =
    /^no$/i.test(items[0]?.text ?? '') &&
    !has(items[1], 'comma') &&
    !items.some(i => i.num !== undefined || hasCat(i, 'crop') || i.sides) &&
    items.slice(1, 4).some(i => hasCat(i, 'thing') || has(i, 'v:pitch') || hasCat(i, 'b'))
  if (denies) return undefined
  const no = meant || starred || misread ? 0 : head.findIndex(i => has(i, 'fix:no'))
  const make = content.findIndex(i => has(i, 'fix:make'))
  // "6 not 7", "hill not north": the second is what was wrong
  const not = items.findIndex((i, k) => k > 0 && has(i, 'm:no') && i.tokens.length === 1 && items[k + 1] !== undefined)
  if (
    no !== 0 &&
    !(no === 1 && (has(first, 'filler') || has(first, 'ans:yes'))) &&
    make !== 0 &&
    !(make > 0 && isReason(content, make)) &&
    !(make === 1 && (hasCat(first, 'fix') || hasCat(first, 'person') || isThin(first) || has(first, 'ans:yes'))) &&
    !(not > 0 && (content.length <= 5 || turnedRound(items, not) || (not <= 4 && isWhy(items, not))))
  )
    return undefined
  // "thats 32 in there now right": a sum too
  if (no !== 0 && make >= 0 && IN_THERE.test(items.map(i => i.text.toLowerCase()).join(' '))) return undefined
  // "that's 9 loads in all today": a sum, to be asked about
  if (no !== 0 && items.some(i => has(i, 'total'))) return undefined
  // "we were supposed to put 6": a plan that came to nothing
  if (no !== 0 && items.some(i => has(i, 'm:plan')) && items.some(i => hasCat(i, 'v') || hasCat(i, 'b'))) return undefined
  // "fueron 5 de maiz y 2 de alfalfa los que le vaciamos al arroyo" tells
  const only = make >= 0 && no !== 0 && WAS.test(content[make]!.text)
  if (only && content.some(i => i !== content[make] && (has(i, 'v:put') || has(i, 'v:feed')))) return undefined
  let right = misread ? withoutReason(all) : items
  let wrong: Record<string, unknown> = {}
  if (not > 0) {
    const bad = values(items.slice(not + 1))
    const good = values(items.slice(0, not))
    // "6 loads, not 7": the second number is of the first one's kind
    const counted = ['count', 'lb', 'feet', 'dmPct', 'inches', 'widthFt', 'lengthFt', 'heightFt'].find(k => k in good)
    if (counted && 'number' in bad && !('number' in good)) {
      bad[counted] = bad.number
      delete bad.number
    }
    // "11k not 10": both in thousands
    if (typeof good.number === 'number' && typeof bad.number === 'number' && good.number >= 1000 && bad.number < 100) bad.number *= 1000
    if (Object.keys(bad).length && Object.keys(bad).every(k => k in good)) {
      wrong = bad
      right = items.slice(0, not)
    } else if (Object.keys(bad).length && Object.keys(good).length === 0) right = items
  }
  // a place word alone ("north end") is no new pile
  const slots = values(right)
  // "no 7, 6"
  if (no === 0 && slots.number !== undefined && slots.number2 !== undefined && items.some(i => has(i, 'comma'))) {
    wrong = { number: slots.number }
    slots.number = slots.number2
    delete slots.number2
  }
  if (!Object.keys(slots).length && !dates) {
    const strange = items.filter(i => !i.senses.length)
    if (no === 0 && strange.length === 1 && content.length <= 3) slots.strange = strange[0]!.text.toLowerCase()
    else return undefined
  }
  const isMoved = not > 0 && items.slice(0, not).some(i => i.date) && items.slice(not).some(i => i.date)
  // "disculpa y el barn ya se puede abrir": manners; "no se suban a barn": told not to
  const polite =
    /^(?:perdon|disculpa|disculpen|sorry|sry)$/.test(first.text.toLowerCase()) &&
    !items.some((i, k) => i.num !== undefined || (k > 0 && i !== first && has(i, 'fix:make')))
  if (no === 0 && polite && content.length > 4 && !has(items[items.indexOf(first) + 1], 'comma')) return undefined
  if (no === 0 && /^no$/i.test(first.text) && OBJECT.test(items[items.indexOf(first) + 1]?.text ?? '')) return undefined
  // "make that two coffees": of something that nobody counts here
  const thing = items[items.findIndex(i => i.num !== undefined && i.unit === undefined) + 1]
  if (make === 0 && thing && !thing.senses.length && slots.number !== undefined && content.length <= 8) return undefined
  // "no we are not out of corn on shop that's just dale talking": a tale of its own
  const told = make >= 0 && LEADS_FIX.test(content[make]!.text)
  if (content.length > 8 && !told && !Object.keys(wrong).length && !has(items[items.indexOf(first) + 1], 'comma')) return undefined
  let strength = 0
  if (no === 0) strength += 1
  // "no, 96 long"
  if (no === 0 && has(first, 'fix:no') && has(items[items.indexOf(first) + 1], 'comma')) strength += 1
  // "friday not thursday"
  if (isMoved) strength += 1
  // "perdon" is one word of it, not two
  if (make >= 0 && make <= 2 && !(make === 0 && no === 0 && !LEADS_FIX.test(first.text)))
    strength += /^(make|change|cambia|cambialo|corrige|ponle)/.test(content[make]!.tokens[0]!.norm) ? 2 : 1
  if (Object.keys(wrong).length) strength += 1
  const unknown = items.filter(i => !i.senses.length).length
  if (unknown > 2) strength -= 1
  if (strength <= 0) return undefined
  return { kind: 'change', slots, wrong, date: dates, strength }
}

/** Values and nothing else, as a correction of the record that the message replies to. */
export const bareFix = (all: Item[]): Fix | undefined => {
  const items = all.filter((i, k) => !has(i, 'stop') && !has(i, 'mark') && !has(i, 'comma') && !(k === 0 && WAS.test(i.text)))
  if (items.length > 5 || items.some(i => !i.senses.length || hasCat(i, 'v') || hasCat(i, 'q') || has(i, 'm:no'))) return undefined
  const slots = values(items)
  return Object.keys(slots).length ? { kind: 'change', slots, wrong: {}, strength: 1 } : undefined
}
