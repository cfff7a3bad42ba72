import { has, hasCat, type Item, valueOf } from '../item.ts'
import { LEAST_PILE_FT } from '../join.ts'
import { isThin, type Pool } from '../pool.ts'
import { takeCrop } from './crop.ts'
import { takeDm } from './dryMatter.ts'
import { type Found, inFt, inLb, takeColour, takePile } from './slots.ts'
import { takeWhere } from './where.ts'

/** Sizes said with their dimension: "45 wide", "138 ft long", "10 and a half high", "de ancho 43". */
const takeDims = (p: Pool, out: Record<string, unknown>): number => {
  let n = 0
  const key = { width: 'widthFt', length: 'lengthFt', height: 'heightFt', top: 'topWidthFt', wall: 'wallFt' } as Record<string, string>
  // "width 43, height 8": the words stand before their numbers
  // "30 by 90 w 6 ft walls": with them
  const named = p.find(i => hasCat(i, 'dim') && !has(i, 'with'))
  const before = named >= 0 && named < p.find(i => i.num !== undefined && !i.ordinal)
  for (let k = 0; k < p.items.length; k++) {
    const i = p.items[k]!
    if (!p.free(k) || i.num === undefined || i.ordinal) continue
    const v = inFt(i)
    if (v === undefined) continue
    let at = before ? p.items.length : k + 1
    while (p.items[at] && isThin(p.items[at]!) && !hasCat(p.items[at], 'dim')) at++
    const next = p.items[at]
    if (next && hasCat(next, 'dim') && p.free(at)) {
      // "24 across the top"
      const after = p.items.findIndex((x, j) => j > at && !(isThin(x) && !has(x, 'comma')))
      const led = topBefore(p, k)
      const top = valueOf(next, 'dim') !== 'width' ? -1 : led >= 0 ? led : after
      const isTop = top >= 0 && p.free(top) && isTopWord(p.items[top])
      const d = isTop ? 'top' : valueOf(next, 'dim')!
      if (!key[d] || out[key[d]!] !== undefined) continue
      out[key[d]!] = v
      p.take(k)
      p.take(at)
      if (isTop) p.take(top)
      n++
      continue
    }
    const prevAt = p.items.findLastIndex((x, j) => j < k && !isThin(x))
    const prev = p.items[prevAt]
    if (prev && hasCat(prev, 'dim') && p.free(prevAt) && !(has(prev, 'with') && (hasCat(next, 'dim') || hasCat(next, 'mat')))) {
      const d = valueOf(prev, 'dim')!
      if (!key[d] || out[key[d]!] !== undefined) continue
      out[key[d]!] = v
      p.take(k)
      p.take(prevAt)
      n++
    }
  }
  const s = p.find(i => i.sides !== undefined)
  if (s >= 0) {
    const d = p.take(s)!.sides!
    out.widthFt ??= d[0]
    out.lengthFt ??= d[1]
    if (d[2] !== undefined) out.heightFt ??= d[2]
    n += d.length
    // "40 by 120 by 10 high"
    p.takeAll('unit:ft')
  }
  return n
}

/** "top 22 wide", "arriba mide 20 de ancho": the word before the number that makes it the top's width; -1 where none does. */
const topBefore = (p: Pool, k: number): number => {
  let j = k - 1
  while (
    j > 0 &&
    (has(p.items[j], 'v:measure') ||
      /^(?:is|was|es|era|esta)$/i.test(p.items[j]!.text) ||
      (isThin(p.items[j]!) && !has(p.items[j], 'comma')))
  )
    j--
  return j >= 0 && p.free(j) && isTopWord(p.items[j]) ? j : -1
}

const isTopWord = (i: Item | undefined): boolean => /^(?:top|on top|at the top|up top|arriba)$/.test(i?.text.toLowerCase() ?? '')

const textOf = (items: Item[]): string => items.map(i => i.text.toLowerCase()).join(' ')

const NOT_NAME = /^(the|a|an|la|el|al|del|los|las|uh|um|so|ok|okay|its|it|is|un|una)$/
const PLAIN_PILE = /^(?:piles?|pilas?|monton|montones)$/
const HESITATES = /^(uh|um|er|eh|este|thats|thatll|itll|its|gonna)$/

const isBeforeName = (i: Item): boolean => has(i, 'on') || NOT_NAME.test(i.tokens[0]!.norm) || PLAIN_PILE.test(i.tokens[0]!.norm)

/** Whether nothing of a name can stand there: the end, a comma, the sizes, or another name. */
const endsName = (p: Pool, at: number): boolean => {
  const i = p.items[at]
  return !i || !p.free(at) || i.sides !== undefined || has(i, 'comma') || has(i, 'v:alias') || has(i, 'and')
}

/** Names are short runs up to a number, a comma or another verb. */
const takeName = (p: Pool, from: number): string | undefined => {
  let k = from
  // "called pad 3": only the plain word for a pile is no part of a name
  // "on the tank lot": nor is the word before the place
  while (p.free(k) && (isBeforeName(p.items[k]!) || (k === from && has(p.items[k], 'comma')))) k++
  // "new pile out by the tank": where it is, not what it is called
  if (from === k && (has(p.items[k], 'prepWhere') || has(p.items[k], 'off')) && !has(p.items[from - 1], 'v:call')) return undefined
  let end = k
  while (p.free(end) && end - k < 4) {
    const i = p.items[end]!
    if (i.sides || has(i, 'comma') || has(i, 'v:alias') || has(i, 'dim:width') || has(i, 'date')) break
    // "called seventeen": a number alone may be the name
    if (i.num !== undefined && end === k && i.unit === undefined && Number.isInteger(i.num)) {
      end++
      // "dos robles": a name may begin with a number
      const next = p.items[end]
      if (next && p.free(end) && next.num === undefined && !next.sides && (next.senses.length === 0 || has(next, 'where:place'))) continue
      break
    }
    // "pad 3": the number belongs to a word of place; "back forty", "section 12": to the word before, where the name ends with it
    if (
      i.num !== undefined &&
      i.unit === undefined &&
      end > k &&
      Number.isInteger(i.num) &&
      i.num < 100 &&
      (has(p.items[end - 1], 'pileword') || endsName(p, end + 1))
    ) {
      end++
      break
    }
    if (i.num !== undefined || (HESITATES.test(i.tokens[0]!.norm) && !(end === k && endsName(p, end + 1)))) break
    if (
      end > k &&
      (has(i, 'and') ||
        has(i, 'on') ||
        has(i, 'off') ||
        has(i, 'with') ||
        has(i, 'also') ||
        has(i, 'dim:wall') ||
        /^(pile|pila)$/.test(i.tokens[0]!.norm) ||
        (i.senses.some(s => s.startsWith('v:')) && i.tokens.length > 1))
    )
      break
    end++
  }
  if (end === k) return undefined
  const name = textOf(p.items.slice(k, end))
  for (let j = from; j < end; j++) p.used[j] = 1
  return name
}

/** A new pile. */
export const pile = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 3 }
  const fresh = p.sense('v:new')
  if (fresh < 0) return undefined
  p.take(fresh)
  const called = p.sense('v:call')
  let name: string | undefined
  if (called >= 0) {
    p.take(called)
    name = takeName(p, called + 1)
  } else name = takeName(p, fresh + 1)
  // "started a new pile, 35 by 90": its name is to be asked
  if (!name) return { ...out, full: takeDims(p, out.slots) > 0, bias: 1 }
  out.slots.name = name.replace(/\s*(pile|pila)$/, '')
  takeDims(p, out.slots)
  const aliases: string[] = []
  for (let a = p.sense('v:alias'); a >= 0; a = p.sense('v:alias')) {
    p.take(a)
    const alias = takeName(p, a + 1)
    if (alias) aliases.push(alias)
    // "norte or the big one"
    for (;;) {
      const next = p.find((i, k) => k > a && (has(i, 'and') || has(i, 'v:alias')))
      if (next < 0) break
      const more = takeName(p, next + 1)
      p.take(next)
      if (!more) break
      aliases.push(more)
    }
  }
  if (aliases.length) out.slots.alsoCalled = aliases
  p.takeAll('dim:wall', 'dim:width', 'dim:length', 'unit:ft', 'pileword', 'v:call', 'v:put')
  takeColour(p)
  out.full = true
  return out
}

const WHICH = /^(?:que|esa|ese|esa que|that|which|we got|he bought)$/i

/** What a box holds. */
export const box = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 1 }
  const hold = p.sense('v:hold')
  if (hold < 0) return undefined
  const w = p.num(['lb', 'ton', 'tonne', 'kg', undefined], i => i.unit !== undefined || i.num! >= 1000)
  if (w < 0) return undefined
  const known = p.cat('box')
  if (known >= 0 && known < hold) out.slots.name = valueOf(p.take(known), 'box')
  else {
    // the words before the verb, with a word for a box among them
    let k = 0
    while (k < hold && (NOT_NAME.test(p.items[k]!.tokens[0]!.norm) || has(p.items[k], 'and') || has(p.items[k], 'comma'))) k++
    // "la caja roja esa que trajo mi cuñado": its name ends where it is said which one
    const which = p.items.findIndex((i, j) => j > k && j < hold && WHICH.test(i.text))
    const run = p.items.slice(k, which > k ? which : hold).filter(i => !has(i, 'comma'))
    const boxed = run.some(i => has(i, 'unit:load') || has(i, 'unit:bucket'))
    if (!run.length || (!boxed && !run.every(i => i.senses.length === 0)) || run.some(i => i.num !== undefined || hasCat(i, 'pile')))
      return undefined
    if (run.length > 4) return undefined
    out.slots.name = textOf(
      run.filter(
        i =>
          !(
            i.senses.length > 0 &&
            i.senses.every(s => s === 'filler') &&
            /^(the|la|el|a|my|our|is|that|yeah|yes|ok|okay|so|uh|um|well|pues|oye|este|mira|mire|fijate)$/.test(i.tokens[0]!.norm)
          ),
      ),
    )
    for (let j = k; j < hold; j++) p.used[j] = 1
  }
  p.takeAll('v:hold')
  const i = p.take(w)!
  out.slots.lb = i.unit === undefined ? i.num : inLb(i)
  const crop = takeCrop(p)
  if (crop.crop) out.slots.crop = crop.crop
  p.takeAll('unit:load', 'total')
  takeColour(p)
  out.full = true
  return out
}

/** The pile measured. */
export const size = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:measure')
  if (p.cat('mat') >= 0 || p.sense('v:new', 'v:cover', 'b:cover') >= 0) return undefined
  if (p.items.some(i => i.sides) && verb < 0 && p.cat('dim') < 0) {
    // "north is 41 by 118"
    if (p.cat('pile') < 0 || p.find(i => hasCat(i, 'v')) >= 0) return undefined
    // "over barn, 50 x 120": the sheet's
    if (p.items.slice(0, p.cat('pile')).some(i => /^(?:over|on|onto|sobre|encima)$/i.test(i.text))) return undefined
  }
  const n = takeDims(p, out.slots)
  if (!n || (out.slots.wallFt !== undefined && p.cat('pile') >= 0)) return undefined
  takePile(p, out)
  if (verb >= 0) p.takeAll('v:measure')
  p.takeAll('v:have', 'dim:height', 'dim:width', 'v:call')
  const where = takeWhere(p, false)
  // "a tear 2 ft long by the ramp": kept for what was torn
  if (
    where &&
    n === 1 &&
    Object.values(out.slots).every(v => typeof v !== 'number' || v < LEAST_PILE_FT) &&
    out.slots.heightFt === undefined
  )
    out.slots.where = where
  takeColour(p)
  out.bias! += n >= 2 ? 1 : 0
  out.full = true
  return out
}

/** Dry matter or moisture of a feed. */
export const test = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:test')
  const dm = p.cat('dm')
  if (dm < 0 && verb < 0) return undefined
  if (dm >= 0 && has(p.items[dm], 'dm:wet')) out.wet = true
  if (p.find(i => i.unit !== undefined && i.unit !== 'pct') >= 0 || p.items.some(i => i.sides)) return undefined
  const v = takeDm(p)
  if (v !== undefined) out.slots.dmPct = v
  else {
    // "dry matter 34", "moisture came back 62", "tested 34 %"
    const n = p.num([undefined, 'pct'], i => i.num! > 0 && i.num! <= 100)
    if (n < 0) return undefined
    const kind = dm >= 0 ? valueOf(p.items[dm], 'dm') : undefined
    const x = p.items[n]!.num!
    if (kind === undefined) {
      if (verb < 0 || (p.cat('crop') < 0 && !(p.items[verb]!.ghost && p.cat('pile') >= 0))) return undefined
      // "the corn 33 dry matter, the alfalfa 39": of what kind is lent by the clause before
      if (p.items[verb]?.ghost) out.slots.bare = x
      out.vague = true
    } else out.slots.dmPct = kind === 'wet' ? Math.round((100 - x) * 1e6) / 1e6 : x
    p.take(n)
  }
  p.takeAll('dm:dry', 'dm:wet', 'v:test', 'unit:pct')
  const crop = takeCrop(p)
  if (crop.crop) out.slots.crop = crop.crop
  takePile(p, out, 'pile')
  if (out.slots.pile === undefined && p.items.some(i => /\b(?:there|it)$/i.test(i.text) && !has(i, 'v:test'))) out.there = true
  p.takeAll('v:test', 'v:measure', 'v:hold', 'v:have', 'v:put')
  takeColour(p)
  if (!out.slots.crop && !out.slots.pile && !out.strange) out.bias! -= 1
  out.full = out.slots.dmPct !== undefined
  if (verb >= 0 || dm >= 0) out.bias! += 0.5
  return out
}
