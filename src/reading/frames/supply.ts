import { has, hasCat, type Item, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'
import { isLaidOn } from './sheets.ts'
import { type Found, takeColour, takeVague } from './slots.ts'
import { takeWhere } from './where.ts'

const ITEMS = ['plastic', 'second plastic', 'barrier film', 'mesh', 'tarp', 'tires', 'gravel bags', 'gravel', 'dirt']

/** "out of tape", "se acabó la cinta": none is left of what stands right behind, or of all of it. */
const lacking = (p: Pool): Found | undefined => {
  const out = p.sense('thing:out')
  if (out < 0 || p.cat('pile') >= 0 || p.cat('crop') >= 0 || p.find(i => (i.num !== undefined && i.num !== 0) || hasCat(i, 'v')) >= 0)
    return undefined
  const at = p.items.findIndex((i, k) => k > out && !isThin(i))
  const i = p.items[at]
  const item = i && p.free(at) ? (valueOf(i, 'item') ?? valueOf(i, 'mat')) : undefined
  if (item === undefined) return undefined
  p.take(out)
  p.take(at)
  p.take(p.num([undefined]))
  p.takeAll('item:patch tape')
  return { slots: { item, change: 'have', count: 0 }, full: true, bias: 1 }
}

const itemOf = (i: Item | undefined): string | undefined => (i ? (valueOf(i, 'mat') ?? valueOf(i, 'item')) : undefined)

const TWO = /^(?:to|too)$/
const UNSIZED = new Set(['tires', 'gravel bags', 'gravel', 'dirt'])

/** What was bought, used up, or counted in the shed. */
export const supply = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const lack = lacking(p)
  if (lack) return lack
  const buy = p.find(i => has(i, 'v:buy') && !has(i, 'v:put'))
  // "brought some bags home from the co-op"
  const brought = p.cat('pile') < 0 && p.sense('thing:home') >= 0 ? p.sense('v:put', 'v:take') : -1
  const buyish = buy >= 0 ? buy : brought >= 0 ? brought : p.find(i => has(i, 'v:buy'))
  const have = p.sense('v:have')
  const use = p.sense('v:use')
  if (buyish < 0 && have < 0 && use < 0) return undefined
  // "north got a sheet and 240 tires": laid on, not bought
  if (p.find((x, k) => hasCat(x, 'pile') && k < Math.max(buyish, have) && p.relation(k) === undefined) >= 0 && use < 0) return undefined
  const thing = p.find(i => hasCat(i, 'mat') || hasCat(i, 'item'))
  // "2 rolls of tape and a 40x100": only sheets have sides
  const sheet = p.find(i => hasCat(i, 'mat') && !UNSIZED.has(valueOf(i, 'mat')!))
  const sides = thing < 0 || sheet === thing ? p.find(i => i.sides !== undefined) : -1
  if (thing < 0 && sides < 0) return undefined
  // "a 40x100 plastic and 6 rolls of tape": an item each
  const second = p.find(
    (i, k) =>
      k > thing && (hasCat(i, 'mat') || hasCat(i, 'item')) && itemOf(i) !== itemOf(p.items[thing]) && p.items[k - 1]?.num !== undefined,
  )
  if (thing >= 0 && second > thing && p.items.slice(thing, second).some(i => has(i, 'and') || has(i, 'comma'))) return undefined
  // "used 4 rolls of tape, we have 6 left"
  const verbs = p.items.flatMap((i, k) => (has(i, 'v:use') || has(i, 'v:have') || has(i, 'v:buy') ? [k] : []))
  if (verbs.some((k, n) => n > 0 && p.items.slice(verbs[n - 1], k).some(i => has(i, 'and') || has(i, 'comma')))) out.bias! -= 3
  // "used 40 bags around the bottom" is laid on
  if (use >= 0 && p.find(x => has(x, 'prepWhere') && /^(?:around|along|alrededor)$/.test(x.text.toLowerCase())) >= 0) return undefined
  // "got the 50x150 pulled over": what was got is done
  if (buyish >= 0 && /^(?:we |i |finally )?got$/i.test(p.items[buyish]!.text)) {
    const done = p.find(
      (i, k) =>
        k > buyish &&
        /^(?:pulled|stretched|rolled|spread|laid|put|tucked|weighted|thrown|throwed|tarped|pulled over|covered)$/.test(
          i.text.toLowerCase(),
        ),
    )
    const on = p.find(i => hasCat(i, 'mat'))
    if (done >= 0 || (on > buyish && isLaidOn(p, on))) return undefined
  }
  if (p.cat('pile') >= 0 || p.sense('v:cover') >= 0) out.bias! -= 2
  const i = thing >= 0 ? p.take(thing)! : undefined
  const item = i ? (valueOf(i, 'mat') ?? valueOf(i, 'item')!) : 'plastic'
  out.slots.item = item
  // "counted the bags, we got 52 left"
  const counted = p.find(x => /^(?:counted|count|conte|contamos)$/.test(x.text.toLowerCase()) || has(x, 'thing:left')) >= 0 && have >= 0
  out.slots.change = counted
    ? 'have'
    : use >= 0 && buy < 0 && have < 0
      ? 'use'
      : buy >= 0 || (buyish >= 0 && have < 0)
        ? 'add'
        : have >= 0 && buy < 0
          ? 'have'
          : 'add'
  const n = p.num([undefined])
  if (n >= 0) {
    const c = p.take(n)!
    out.slots.count = c.num
    if (has(c, 'range')) out.vague = true
  }
  if (sides >= 0) {
    const s = p.take(sides)!.sides!
    out.slots.widthFt = Math.min(s[0]!, s[1]!)
    out.slots.lengthFt = Math.max(s[0]!, s[1]!)
    // "bought to fifty by one fifty plastics"
    const two =
      TWO.test((thing >= 0 && thing < sides ? p.items[thing - 1] : p.items[sides - 1])?.tokens[0]?.norm ?? '') &&
      /s$/.test(i?.tokens.at(-1)?.norm ?? '')
    if (n < 0) out.slots.count = two ? 2 : 1
  }
  p.takeAll(
    'v:buy',
    'v:have',
    'v:use',
    'thing:home',
    ...(brought >= 0 ? ['v:put', 'v:take'] : []),
    'item:patch tape',
    'mat:plastic',
    'unit:load',
  )
  if (ITEMS.includes(item) || item === 'patch tape') out.bias! += 0.5
  if (takeVague(p) && out.slots.count === undefined) out.vague = true
  takeWhere(p, false)
  if (p.takeAll('total') > 0) out.total = false
  takeColour(p)
  out.full = out.slots.count !== undefined
  if (!out.full && !out.vague && buyish < 0) return undefined
  return out
}
