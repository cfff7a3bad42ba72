import { has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import type { Bare } from './reading.ts'

const KNOWN = new Set(['pileword', 'on', 'off', 'and'])
const KNOWN_CATS = /^(?:unit|fix|dm|mat|box|find):/

/** Notes what one sense says to an open question; false where it says nothing to it. */
const says = (out: Bare, sense: string): boolean => {
  switch (sense) {
    case 'ans:yes':
      out.yes = true
      return true
    case 'ans:no':
      out.no = true
      return true
    case 'ans:drop':
      out.drop = true
      return true
    case 'ans:same':
      out.same = true
      return true
    case 'ans:more':
    case 'more':
      out.more = true
      return true
    case 'ans:all':
    case 'total':
      out.all = true
      return true
    case 'find:good':
      out.good = true
      return true
    case 'find:trouble':
      out.trouble = true
      return true
    case 'vague':
      out.vague = true
      return true
    default:
      return KNOWN.has(sense) || (sense !== 'filler' && KNOWN_CATS.test(sense))
  }
}

/** What a message holds as an answer to an open question. */
export const bareOf = (items: Item[]): Bare => {
  const out: Bare = {
    numbers: [],
    piles: [],
    crops: [],
    yes: false,
    no: false,
    drop: false,
    same: false,
    more: false,
    all: false,
    good: false,
    trouble: false,
    vague: false,
    rest: 0,
    size: 0,
  }
  for (let k = 0; k < items.length; k++) {
    const i = items[k]!
    if (has(i, 'stop') || has(i, 'comma') || has(i, 'mark') || has(i, 'ask?')) continue
    out.size++
    if (out.size === 1) out.leads = has(i, 'ans:drop') ? 'drop' : has(i, 'ans:same') ? 'same' : has(i, 'ans:yes') ? 'yes' : undefined
    let known = isThin(i)
    if (i.num !== undefined && !i.ordinal) {
      // "60 i said sixty": one number
      if (has(items[k - 1], 'm:no')) out.denied = i.num
      else if (!out.numbers.some(x => x.num === i.num && (i.unit === undefined || x.unit === i.unit))) out.numbers.push(i)
      known = true
    }
    if (i.sides) known = true
    if (hasCat(i, 'pile')) {
      out.piles.push(valueOf(i, 'pile')!)
      known = true
    }
    if (hasCat(i, 'say') && (has(items[k + 1], 'cutword') || hasCat(items[k + 1], 'crop'))) {
      const next = items[k + 1]!
      const after = items[k + 2]
      // "3rd cut haylage" is one
      const named = has(next, 'cutword') && hasCat(after, 'crop') && !has(after, 'cutword') ? valueOf(after, 'crop') : undefined
      const crop = named ?? (has(next, 'cutword') ? 'haylage' : valueOf(next, 'crop')!)
      const last = out.crops.at(-1)
      // "haylage 3rd cut" is one
      if (last && last.cut === undefined && has(next, 'cutword') && named === undefined) {
        last.cut = Number(valueOf(i, 'say')!.split(':')[1])
        k++
        continue
      }
      out.crops.push({ crop, cut: Number(valueOf(i, 'say')!.split(':')[1]) })
      k += named === undefined ? 1 : 2
      continue
    }
    if (hasCat(i, 'crop') && !has(i, 'cutword')) {
      out.crops.push({ crop: valueOf(i, 'crop')! })
      known = true
    }
    // "hay, third"
    const named = out.crops.at(-1)
    if (named && named.cut === undefined && hasCat(i, 'say') && items.slice(k + 1).every(x => has(x, 'stop') || has(x, 'mark'))) {
      named.cut = Number(valueOf(i, 'say')!.split(':')[1])
      continue
    }
    const pick = valueOf(i, 'pick')
    if (pick) {
      out.pick = pick === 'last' ? 'last' : Number(pick)
      known = true
    }
    if (has(i, 'where:place') && !hasCat(i, 'pile'))
      out.where = out.where === undefined ? i.text.toLowerCase() : `${out.where} ${i.text.toLowerCase()}`
    let add = false
    for (const s of i.senses) {
      if (says(out, s)) known = true
      if (s === 'why:feed' || s === 'b:feed' || s === 'v:feed') out.why ??= 'feed'
      else if (s === 'why:add' || s === 'v:put' || s === 'b:put') add = true
      else continue
      known = true
    }
    if (add) out.why ??= 'add'
    if (i.date) known = true
    if (!known) {
      out.rest++
      if (!i.senses.length) out.strange = out.strange ? `${out.strange} ${i.text.toLowerCase()}` : i.text.toLowerCase()
    }
  }
  return out
}
