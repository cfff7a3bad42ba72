import { has, hasCat, valueOf } from '../item.ts'
import { ALMOST } from '../mood.ts'
import type { Pool } from '../pool.ts'
import { amount, takeAmount } from './amounts.ts'
import { takeCrop } from './crop.ts'
import { type Found, inFt, isPileToPile, takeColour, takePile, takeStrange, takeVague } from './slots.ts'
import { takeWhere } from './where.ts'

const MOVED = /^(?:avanz|advanc|mov(?:ed|io|imos)|gain)/

/** Where the face is, or what is left behind it. */
export const face = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const left = p.sense('thing:left')
  const named = p.sense('thing:face')
  // "we are at 52 feet on lane": only feet make that a face
  const f = named < 0 && left < 0 && p.num(['ft', 'm']) >= 0 ? p.sense('thing:at') : named
  if (f < 0 && left < 0) return undefined
  const n = f >= 0 ? p.num([undefined, 'ft', 'in', 'm']) : p.num(['ft', 'm'])
  if (n < 0) return undefined
  // "the face moved 3 feet since monday" is no place
  if (p.find(i => hasCat(i, 'mat') || hasCat(i, 'what') || has(i, 'v:push') || MOVED.test(i.tokens[0]?.norm ?? '')) >= 0) return undefined
  if (f >= 0 && p.relation(f) === 'off' && p.sense('v:take', 'v:feed') >= 0) return undefined
  // "took the face back another 2 feet"
  const took = p.sense('v:take')
  if (f >= 0 && took >= 0 && took < f && p.find((i, k) => k > took && (has(i, 'back') || has(i, 'more') || /^off/i.test(i.text))) >= 0)
    return undefined
  const i = p.take(n)!
  if (has(i, 'range')) out.vague = true
  if (f >= 0) p.takeAll('thing:face', 'thing:at')
  if (left >= 0) {
    p.takeAll('thing:left')
    out.slots.leftFt = inFt(i)
    // "face 29 so 41 left"
    const rest = f >= 0 && n < left ? p.num([undefined, 'ft', 'm'], (_, k) => k > n && k < left) : -1
    if (rest >= 0) Object.assign(out.slots, { atFt: inFt(i), leftFt: inFt(p.take(rest)!) })
  } else out.slots.atFt = inFt(i)
  takePile(p, out)
  p.takeAll('v:have', 'unit:ft', 'v:measure', 'v:put', 'v:feed', 'v:take', 'v:break', 'v:test')
  takeColour(p)
  out.bias! += 1
  out.full = true
  return out
}

/** Nothing left. */
export const empty = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: true, bias: 0 }
  const at = p.sense('thing:gone')
  if (at < 0) return undefined
  if (p.find(i => i.num !== undefined || i.sides !== undefined || hasCat(i, 'mat') || hasCat(i, 'what')) >= 0) return undefined
  // "shop is about gone", "casi vacia": not yet
  if (p.items.slice(Math.max(0, at - 2), at).some(i => ALMOST.test(i.text.toLowerCase()))) return undefined
  // "the end of that field"
  if (p.find(i => /^(?:field|fld|day|week|night|job|load|story|line|row)s?$/.test(i.text.toLowerCase())) >= 0) return undefined
  // "shop vac is all gone": a thing with the pile's name before it
  const named = p.cat('pile')
  const thing = named >= 0 && named < at ? p.items[named + 1] : undefined
  if (thing && !thing.senses.length && named + 1 < at) return undefined
  p.takeAll('thing:gone')
  takePile(p, out)
  // "feeding is done", "used up the tape": of what, is said
  if (
    !out.slots.pile &&
    out.strange === undefined &&
    /^(?:is done|done|finished|finished up|used up|all used up|all done|cleaned up)$/i.test(p.items[at]!.text)
  )
    return undefined
  if (!out.slots.pile && p.items[at]!.text.split(' ').length < 2 && p.find(i => has(i, 'pileword')) < 0) return undefined
  if (!out.slots.pile) out.bias! -= 1
  p.takeAll('v:feed', 'v:have', 'thing:first', 'v:take', 'crop:corn silage', 'crop:haylage', 'thing:left', 'find:good')
  takeColour(p)
  return out
}

/** What was pushed from one pile on another. */
export const shift = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const push = p.sense('v:push')
  if (push < 0 && p.sense('b:push', 'off') < 0) return undefined
  const verb = push < 0 && isPileToPile(p) ? p.sense('v:put') : push
  const base = verb < 0 ? p.sense('b:push') : -1
  if (verb < 0 && base < 0) return undefined
  const first = p.cat('pile')
  if (first < 0) return undefined
  // "moved 2 feet" with no other pile in it is no feed pushed over
  if (/^mov/.test(p.items[Math.max(verb, base)]!.tokens[0]!.norm) && p.items.filter(i => hasCat(i, 'pile')).length < 2) return undefined
  // tires moved from pile to pile, and a face that moved, are no feed pushed over
  if (p.find(i => hasCat(i, 'mat')) >= 0 || (p.sense('thing:face') >= 0 && p.find((i, k) => k > first && hasCat(i, 'pile')) < 0))
    return undefined
  p.take(verb >= 0 ? verb : base)
  out.order = base >= 0
  const at = p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on')
  if (at >= 0) out.slots.toPile = valueOf(p.take(at), 'pile')
  takePile(p, out)
  if (out.slots.toPile === undefined) {
    const other = p.cat('pile')
    if (other >= 0) out.slots.toPile = valueOf(p.take(other), 'pile')
  }
  takeAmount(p, out, 100)
  const n = p.num([undefined])
  if (n >= 0 && !amount(out.slots)) out.slots.ft = p.take(n)!.num
  if (takeVague(p)) out.vague = true
  const rest = p.sense('thing:first', 'thing:left') >= 0
  p.takeAll('thing:first', 'unit:ft', 'v:put', 'thing:left')
  takeCrop(p)
  takeColour(p)
  if (out.slots.toPile === out.slots.pile) delete out.slots.toPile
  // "onto the knob pile"
  if (out.slots.toPile === undefined && out.slots.pile !== undefined) {
    const name = takeStrange(p, 'on')
    if (name) return { ...out, strange: name, full: true }
  }
  // "changed over to lane": what goes from nowhere, and is not the rest of anything, is no feed pushed over
  if (out.slots.pile === undefined && !rest && out.slots.ft === undefined) return undefined
  out.full = out.slots.pile !== undefined && out.slots.toPile !== undefined
  return out
}

/** A pile opened, to feed from it or to add to it. */
export const open = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  // "uncovered north to put corn on"
  const verb = p.find(x => has(x, 'v:open') || (has(x, 'v:uncover') && p.cat('why') >= 0 && p.cat('mat') < 0))
  const base = verb < 0 ? p.sense('b:open') : -1
  if (verb < 0 && base < 0) return undefined
  const i = p.take(verb >= 0 ? verb : base)!
  // "lane is open to feed", "cut lane open": said of the pile, not to somebody
  const state = base > 0 && p.items.slice(0, base).some(x => hasCat(x, 'pile'))
  out.order = base >= 0 && !state
  takePile(p, out)
  const why = p.find(x => hasCat(x, 'why'))
  const put = p.find(x => has(x, 'v:put') || has(x, 'b:put'))
  const fed = p.find(x => has(x, 'v:feed') || has(x, 'b:feed'))
  if (why >= 0) out.slots.why = valueOf(p.take(why), 'why')
  else if (/feed|dar|sacar/.test(i.text.toLowerCase()) || fed >= 0) out.slots.why = 'feed'
  else if (put >= 0 || p.find(x => hasCat(x, 'crop')) >= 0) out.slots.why = 'add'
  p.takeAll(
    'v:put',
    'b:put',
    'v:feed',
    'b:feed',
    'why:add',
    'why:feed',
    'back',
    'v:take',
    'mat:plastic',
    'unit:head',
    'animal:cow',
    'animal:heifer',
    'animal:calf',
    'animal:steer',
    'group:milking',
    'm:plan',
    ...(put >= 0 ? ['vague', 'more'] : []),
    'thing:face',
    'v:roll',
  )
  takeCrop(p)
  takeWhere(p, false)
  takeColour(p)
  if (p.find(x => x.num !== undefined) >= 0) out.bias! -= 2
  if (verb >= 0 && has(i, 'v:uncover')) out.bias! += 1.5
  out.full = out.slots.pile !== undefined && out.slots.why !== undefined
  return out
}
