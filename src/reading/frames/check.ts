import { has, hasCat } from '../item.ts'
import type { Pool } from '../pool.ts'
import { type Found, takeColour, takePile } from './slots.ts'
import { takeWhere } from './where.ts'

/** "no holes": nothing was walked, only harm is denied. */
export const NO_HARM = /\b(?:holes?|tears?|rips?|damage|hoyos?|agujeros?|rajadas?|danos?)\b/i

/** Covers walked. */
export const check = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:check')
  const base = verb < 0 ? p.sense('b:check') : -1
  const good = p.sense('find:good')
  const bad = p.sense('find:trouble')
  const all = p.sense('thing:covers')
  const pile = p.cat('pile')
  if (verb < 0 && base < 0 && !(good >= 0 || bad >= 0)) return undefined
  if (verb < 0 && all < 0 && pile < 0) return undefined
  // "revise barn y todo bien, pero shop": the pile behind it is another matter
  if (verb < 0 && good >= 0 && pile > good && p.items.slice(good, pile).some(i => has(i, 'but'))) return undefined
  if (p.find(i => i.num !== undefined || i.sides !== undefined) >= 0) return undefined
  // "todo bien ahi, la que anda mal es mi rodilla"
  if (good >= 0 && bad > good && p.items.slice(good, bad).some(i => has(i, 'comma') || has(i, 'but'))) return undefined
  if (verb < 0 && p.find(i => hasCat(i, 'crop') || hasCat(i, 'v') || (hasCat(i, 'mat') && !has(i, 'thing:covers'))) >= 0) {
    const v = p.find(i => hasCat(i, 'v') && !hasCat(i, 'find') && !has(i, 'v:hold') && !has(i, 'v:have'))
    if (v >= 0) return undefined
  }
  if (verb >= 0) p.take(verb)
  else if (base >= 0) {
    p.take(base)
    out.order = true
  }
  // "the cover don't look good at all"
  const not = good > 0 && p.items.slice(Math.max(0, good - 2), good).some(i => has(i, 'm:no')) && p.items[good]!.tokens.length < 3
  // "nothin wrong"
  const none = bad > 0 && /^(?:nothin|nothing|nuthin|no|not|nada|ni)$/i.test(p.items[bad - 1]!.text)
  if ((bad >= 0 && !none) || not) out.slots.finding = 'trouble'
  else if (good >= 0 || none) out.slots.finding = 'good'
  if (verb < 0 && base < 0 && good >= 0 && NO_HARM.test(p.items[good]!.text)) out.implied = true
  p.takeAll('find:good', 'find:trouble', 'v:check')
  takePile(p, out)
  const rest = p.takeAll('thing:covers', 'mat:plastic', 'mat:mesh', 'mat:tarp', 'mat:tires')
  if (!out.slots.pile && !out.strange) {
    const words = p.items
      .filter((_, k) => p.used[k])
      .map(i => i.tokens.map(t => t.norm).join(' '))
      .join(' ')
    if (
      (all >= 0 || rest > 0 || p.items.some(i => has(i, 'mat:plastic'))) &&
      !/\b(cover|plastic|sheet|plastico|lona|hule|pila|monton|silo)\b/.test(words)
    )
      out.slots.pile = 'all'
    else if (all >= 0 && /\b(covers|piles|plastics|all|plasticos|pilas|lonas|todo|todas|todos|everything|rounds?)\b/.test(words))
      out.slots.pile = 'all'
  }
  takeWhere(p, false)
  p.takeAll('v:lift', 'v:hold', 'why:feed', 'thing:face', 'sky:wind', 'what:loose edge', 'm:no')
  takeColour(p)
  out.full = out.slots.finding !== undefined
  return out
}
