import { has, hasCat, type Item, valueOf } from './item.ts'
import { isThin } from './pool.ts'
import type { Bare } from './reading.ts'

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
    let known = isThin(i)
    if (i.num !== undefined && !i.ordinal) {
      out.numbers.push(i)
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
    const pick = valueOf(i, 'pick')
    if (pick) {
      out.pick = pick === 'last' ? 'last' : Number(pick)
      known = true
    }
    if (has(i, 'ans:yes')) out.yes = known = true
    if (has(i, 'ans:no')) out.no = known = true
    if (has(i, 'ans:drop')) out.drop = known = true
    if (has(i, 'ans:same')) out.same = known = true
    if (has(i, 'ans:more') || has(i, 'more')) out.more = known = true
    if (has(i, 'ans:all') || has(i, 'total')) out.all = known = true
    if (has(i, 'find:good')) out.good = known = true
    if (has(i, 'find:trouble')) out.trouble = known = true
    if (has(i, 'why:feed') || has(i, 'b:feed') || has(i, 'v:feed')) {
      out.why ??= 'feed'
      known = true
    }
    if (has(i, 'why:add') || has(i, 'v:put') || has(i, 'b:put')) {
      out.why ??= 'add'
      known = true
    }
    if (has(i, 'vague')) {
      out.vague = true
      known = true
    }
    if (
      hasCat(i, 'unit') ||
      has(i, 'pileword') ||
      has(i, 'on') ||
      has(i, 'off') ||
      has(i, 'and') ||
      hasCat(i, 'fix') ||
      hasCat(i, 'dm') ||
      i.date ||
      hasCat(i, 'mat') ||
      hasCat(i, 'box') ||
      hasCat(i, 'find')
    )
      known = true
    if (!known) {
      out.rest++
      if (!i.senses.length) out.strange = out.strange ? `${out.strange} ${i.text.toLowerCase()}` : i.text.toLowerCase()
    }
  }
  return out
}
