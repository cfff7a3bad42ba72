import { has, hasCat } from '../item.ts'
import type { Pool } from '../pool.ts'
import { type Found, takeColour, takePile, takeVague } from './slots.ts'
import { takeWhere } from './where.ts'

/** Holes closed. */
export const patch = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:patch')
  const base = verb < 0 ? p.sense('b:patch') : -1
  if (verb < 0 && base < 0) return undefined
  // Spanish "tapar" is to cover and to patch: only holes or tape make it a patch
  const covers = verb >= 0 && has(p.items[verb], 'v:cover')
  const what = p.find(i => has(i, 'what:hole') || has(i, 'what:tear') || has(i, 'what:loose edge'))
  const tape = p.find(i => has(i, 'item:patch tape'))
  if (covers && what < 0 && tape < 0) return undefined
  // "put the tape on the face": to measure it
  if (base >= 0 && tape === base && what < 0 && p.sense('thing:face', 'dim:width', 'dim:length', 'dim:height') >= 0) return undefined
  if (p.find(i => i.sides !== undefined || has(i, 'mat:tires')) >= 0) return undefined
  // "patched 3 holes and put the mesh back on" is two deeds
  const relaid = p.find(
    (i, k) => has(i, 'v:put') && k > Math.max(verb, base) && p.items.slice(k).some(x => has(x, 'mat:mesh') || has(x, 'mat:tires')),
  )
  // "patched shop, found 2 more holes on barn": the second is told anew
  const anew = p.find(
    (i, k) => has(i, 'v:break') && k > Math.max(verb, base) && p.items.slice(Math.max(verb, base), k).some(x => has(x, 'comma')),
  )
  // "cats clawed a dozen holes in barn and I taped em all up": the harm is told before
  const told =
    verb > 1 &&
    p.items.slice(0, verb).some(i => has(i, 'v:break') || hasCat(i, 'animal')) &&
    p.items.slice(0, verb).some(i => has(i, 'and') || has(i, 'comma'))
  // "one tear by the gate and I patched it"
  const it =
    verb > 2 &&
    /^(?:it|them|em|that|those)$/i.test(p.items[verb + 1]?.text ?? '') &&
    p.items.slice(0, verb).some(i => has(i, 'and') || has(i, 'comma')) &&
    p.items.slice(0, verb).some(i => hasCat(i, 'what'))
  if (verb >= 0 && (relaid >= 0 || anew >= 0 || told || it)) out.bias! -= 4
  // "patched 1 hole in my truck tire"
  if (p.cat('pile') < 0 && p.find((i, k) => /^(?:my|mi|mis|his|her)$/i.test(i.text) && has(p.items[k - 1], 'on')) >= 0) return undefined
  p.take(verb >= 0 ? verb : base)
  // "put tape on 3 holes"
  out.order = base >= 0 && !(has(p.items[base], 'item:patch tape') && p.sense('v:put', 'v:have', 'v:buy') >= 0)
  if (what < 0 && (tape >= 0 || /^taped$/.test(p.items[Math.max(verb, base)]!.text.toLowerCase()))) out.tape = true
  const n = p.find(i => i.num !== undefined && (hasCat(i, 'what') || i.unit === undefined))
  if (n >= 0) {
    const i = p.take(n)!
    out.slots.count = i.num
    if (has(i, 'range')) out.vague = true
  }
  if (takeVague(p)) out.vague = out.slots.count === undefined ? undefined : out.vague
  takePile(p, out)
  const where = takeWhere(p)
  if (where) out.slots.where = where
  p.takeAll(
    'what:hole',
    'what:tear',
    'what:loose edge',
    'item:patch tape',
    'mat:plastic',
    'mat:mesh',
    'v:put',
    'with',
    'v:cover',
    'sky:hail',
    'each',
    'thing:covers',
    'v:patch',
    'cause:hail',
    'cause:wind',
    'sky:wind',
    'v:break',
    'find:good',
  )
  p.takeCat('animal')
  takeColour(p)
  out.full = true
  out.bias! += 0.5
  return out
}
