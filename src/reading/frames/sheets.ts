import { has, hasCat, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'
import { type Found, takeColour } from './slots.ts'

export const HEAPED = new Set(['gravel', 'dirt'])
export const SHEETS = new Set(['plastic', 'second plastic', 'barrier film', 'tarp'])

/** The number that counts a material: right before it, or right after. */
export const countOf = (p: Pool, at: number): number | undefined => {
  for (let k = at - 1; k >= 0 && k >= at - 3; k--) {
    const i = p.items[k]!
    if (p.free(k) && i.num !== undefined && i.unit === undefined) return p.take(k)!.num
    if (!isThin(i) && !has(i, 'more') && !i.sides && i.senses.length > 0 && !has(i, 'with')) break
  }
  // "plastic 50x150, tires 265"
  const next = p.items[at + 1]
  const end = p.items[at + 2]
  if (
    next &&
    p.free(at + 1) &&
    next.num !== undefined &&
    next.unit === undefined &&
    !next.ordinal &&
    (!end || has(end, 'comma') || has(end, 'and'))
  )
    return p.take(at + 1)!.num
  return undefined
}

export const sidesBy = (p: Pool, at: number): number[] | undefined => {
  for (const dir of [-1, 1]) {
    for (let k = at + dir, n = 0; k >= 0 && k < p.items.length && n < 3; k += dir, n++) {
      const i = p.items[k]!
      if (i.sides && p.free(k)) {
        // "barrier film, 50x150 plastic": the size of what stands behind it
        const next = p.items[p.afterAt(k)]
        if (dir > 0 && k > at + 1 && next && SHEETS.has(valueOf(next, 'mat') ?? '')) return undefined
        return p.take(k)!.sides
      }
      if (!isThin(i) && !isTwin(p, k) && !(dir < 0 && i.num !== undefined)) break
    }
  }
  return undefined
}

/** "barrier film plastic": one sheet in two words. */
export const isTwin = (p: Pool, k: number): boolean => {
  const of = has(p.items[k - 1], 'off') ? k - 2 : k - 1
  return has(p.items[k], 'mat:plastic') && (has(p.items[of], 'mat:barrier film') || (of < k - 1 && has(p.items[of], 'mat:second plastic')))
}

/** "15 tires off" and nothing more. */
export const isCountedOff = (p: Pool, k: number): boolean =>
  counted(valueOf(p.items[k], 'mat')!) &&
  p.items[k - 1]?.num !== undefined &&
  /^off$/i.test(p.items[k + 1]?.text ?? '') &&
  (p.items[k + 2] === undefined || has(p.items[k + 2], 'comma'))

/** "on the fifty by one fifty": the size, with its article. */
export const isSized = (p: Pool, k: number): boolean => p.items[has(p.items[k], 'filler') ? k + 1 : k]?.sides !== undefined

/** "on it", "on north", or "on" and nothing more behind a material. */
export const isLaidOn = (p: Pool, at: number): boolean => {
  const again = has(p.items[at + 1], 'back') ? 1 : 0
  const on = p.items[at + 1 + again]
  const under = p.items[at + 2 + again]
  return (
    has(on, 'on') &&
    /^on$/.test(on!.tokens[0]!.norm) &&
    (!under ||
      has(under, 'comma') ||
      has(under, 'and') ||
      // "got the plastic on finally, 310 tires"
      (has(under, 'filler') && has(p.items[at + 3 + again], 'comma')) ||
      hasCat(under, 'pile') ||
      isSized(p, at + 2 + again) ||
      // "got the plastic on, it's the fifty by one fifty"
      (has(under, 'filler') && p.items.slice(at + 3 + again, at + 6 + again).some(i => i.sides)) ||
      /^(?:it|that|there)$/.test(under.text.toLowerCase()))
  )
}

/** "10 more tires on the tarp": what the weights lie on is laid already. */
export const isUnder = (p: Pool, k: number): boolean => {
  const on = has(p.items[k - 1], 'filler') && !has(p.items[k - 1], 'on') ? k - 2 : k - 1
  const laid = p.items[on - 1]
  // "barrier film went under the plastic"
  if (/^(?:under|underneath|beneath|debajo|abajo)$/i.test(p.items[on]?.text ?? '')) return p.items.slice(0, on).some(i => hasCat(i, 'mat'))
  return /^on$/i.test(p.items[on]?.text ?? '') && laid !== undefined && hasCat(laid, 'mat') && counted(valueOf(laid, 'mat')!)
}

export const counted = (material: string): boolean => material === 'tires' || material === 'gravel bags'

/** "moved 30 tires off shop onto barn", "took the mesh off barn and put it on shop": off the one, on the other. */
export const movedOver = (p: Pool): Found | undefined => {
  const mat = p.cat('mat')
  if (mat < 0 || p.find((i, k) => k > mat && hasCat(i, 'mat')) >= 0 || p.find(i => i.sides !== undefined) >= 0) return undefined
  const verb = p.find(i => has(i, 'v:push') || has(i, 'v:take') || PASSED.test(i.text))
  const from = p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'off')
  const to = p.find((i, k) => hasCat(i, 'pile') && k > from && p.relation(k) === 'on')
  if (verb < 0 || from < 0 || to < 0) return undefined
  // two deeds want a second verb for the second pile
  const pause = p.items.slice(from, to).some(i => has(i, 'and') || has(i, 'comma'))
  if (pause && !p.items.slice(from, to).some(i => has(i, 'v:put'))) return undefined
  const material = valueOf(p.items[mat], 'mat')!
  const n = countOf(p, mat)
  const count = n !== undefined && (counted(material) || n > 1) ? { count: n } : {}
  const pile = (at: number) => valueOf(p.take(at), 'pile')!
  const several = [
    { material, change: 'off', ...count, pile: pile(from) },
    { material, change: 'on', ...count, pile: pile(to) },
  ]
  p.take(mat)
  p.take(verb)
  p.takeAll('v:put', 'v:push', 'v:take', 'pileword')
  takeColour(p)
  return { slots: {}, full: true, bias: 2, several }
}
export const PASSED = /^(?:pase|pasamos|pasaron|paso|movi|movimos|cambie|cambiamos)$/i
