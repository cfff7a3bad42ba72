import { has, hasCat, valueOf } from '../item.ts'
import type { Pool } from '../pool.ts'
import { amount, countsUnknown, takeAmount } from './amounts.ts'
import { takeCrop } from './crop.ts'
import { type Found, hasVague, takeColour, takePile, takeVague } from './slots.ts'
import { takeWhere } from './where.ts'

/** "fed a few buckets": how many is asked, of what is told. */
const vagueUnit = (p: Pool, out: Found): void => {
  if (amount(out.slots) || !hasVague(p)) return
  if (p.sense('unit:bucket') >= 0) out.slots.unit = 'bucket'
  else if (p.sense('unit:batch') >= 0) out.slots.unit = 'batch'
}

/** "fed eleven five off shop": thousands and hundreds, as they are spoken. */
const takeThousands = (p: Pool, out: Found): void => {
  const at = p.num([undefined], (i, k) => {
    const next = p.items[k + 1]
    const words = i.tokens[0]!.kind === 'word' && next?.tokens[0]?.kind === 'word'
    return (
      words &&
      i.num! >= 5 &&
      i.num! <= 30 &&
      next!.num !== undefined &&
      next!.unit === undefined &&
      Number.isInteger(next!.num) &&
      next!.num < 10
    )
  })
  if (at < 0) return
  out.slots.lb = p.take(at)!.num! * 1000 + p.take(at + 1)!.num! * 100
}

/** Feed taken to the cows. */
export const feed = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  // "echamos al mixer 12 mil de old slab": into the mixer is to the cows
  const mixed = p.sense('unit:batch') >= 0 && p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'off') >= 0
  const toCows = p.sense('to:cows') >= 0
  // "cows got 10800"
  const got = p.find(
    (i, k) =>
      has(i, 'v:have') && /^(?:got|had)$/.test(i.text.toLowerCase()) && has(p.items[k - 1], 'animal:cow') && (p.after(k)?.num ?? 0) >= 500,
  )
  const verb = p.find(
    (i, k) => k === got || has(i, 'v:feed') || (mixed && has(i, 'v:put')) || (toCows && (has(i, 'v:put') || has(i, 'v:pitch'))),
  )
  const take = verb < 0 ? p.sense('v:take') : -1
  const base = verb < 0 && take < 0 ? p.sense('b:feed', 'b:take') : -1
  const offPile = p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'off') >= 0
  const bareOff =
    verb < 0 &&
    take < 0 &&
    base < 0 &&
    p.sense('v:put', 'v:push', 'v:pitch') < 0 &&
    p.cat('mat') < 0 &&
    p.cat('what') < 0 &&
    (p.num(['batch']) >= 0 ||
      (toCows && p.num(['bucket', 'lb', 'ton', 'load']) >= 0) ||
      (offPile && p.num(['bucket', 'lb', 'ton', 'ft', 'in', 'load', undefined]) >= 0) ||
      (p.cat('pile') >= 0 && p.num(['bucket', 'lb']) >= 0 && p.find(i => hasCat(i, 'group') || has(i, 'unit:head')) >= 0))
  if (verb < 0 && take < 0 && base < 0 && !bareOff) return undefined
  if (p.cat('per') >= 0) return undefined
  // "rolled back another 8 ft off shop": the sheet
  if (verb < 0 && p.find(i => has(i, 'v:roll') && /back|atras/.test(i.text.toLowerCase())) >= 0) return undefined
  if (bareOff && p.find(i => has(i, 'thing:left') || has(i, 'thing:face') || hasCat(i, 'dm') || hasCat(i, 'crop')) >= 0) return undefined
  if (p.find(i => has(i, 'thing:spoiled')) >= 0) return undefined
  if (take >= 0 && p.cat('mat') >= 0) return undefined
  // "had to pull 40 tires off": a bare number that somebody takes counts no feed
  if (base >= 0 && has(p.items[base], 'b:take') && p.cat('pile') < 0 && p.num(['lb', 'ton', 'ft', 'in', 'bucket', 'load', 'batch']) < 0)
    return undefined
  if (take >= 0 && !mixed && p.num(['ft', 'in', 'bucket', 'load', 'batch', 'lb', 'ton']) < 0 && !hasVague(p)) return undefined
  // "ate 3 bowls of chili"
  if (p.cat('pile') < 0 && p.find((i, k) => i.num !== undefined && i.unit === undefined && countsUnknown(p, k)) >= 0) return undefined
  p.take(verb >= 0 ? verb : take >= 0 ? take : base)
  // "took a foot off and fed 11k" is one feed
  // "put down 11,640 lb fed off north" is told to whoever writes it down
  if (verb >= 0) p.takeAll('v:take', 'v:feed', 'b:put')
  else p.takeAll('v:feed')
  out.order = base >= 0
  takeThousands(p, out)
  takeAmount(p, out, 100)
  takePile(p, out, 'pile', 'off')
  const at = p.items.findIndex(i => valueOf(i, 'pile') === out.slots.pile)
  if (
    at >= 0 &&
    p.relation(at) === 'on' &&
    (take >= 0 || verb >= 0) &&
    !p.items.slice(0, at).some(i => has(i, 'v:feed') && !has(i, 'v:put'))
  )
    out.bias! -= 2
  takeCrop(p)
  vagueUnit(p, out)
  if (takeVague(p)) out.vague = true
  p.takeAll(
    'to:cows',
    'unit:head',
    'group:milking',
    'group:dry',
    'group:heifers',
    'animal:cow',
    'animal:heifer',
    'animal:calf',
    'animal:steer',
    'thing:face',
    'b:feed',
    'unit:lb',
    'unit:load',
    'unit:batch',
    'unit:bucket',
  )
  takeWhere(p, false)
  if (p.takeAll('total') > 0) out.total = true
  takeColour(p)
  if (verb >= 0) out.bias! += 1
  if (!amount(out.slots)) {
    const small = p.num([undefined])
    if (small >= 0) {
      // "ayer di 4 mezclas y hoy 3": of what was counted before
      if (p.items[small]!.num! < 60) out.slots.bare = p.items[small]!.num
      p.take(small)
      out.vague = true
    }
    if (!out.slots.pile && !out.vague && !out.strange) out.bias! -= 2
  }
  out.full = amount(out.slots)
  return out
}

/** Spoiled feed thrown away. */
export const spoil = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  if (p.sense('to:cows') >= 0) return undefined
  const bad = p.find(i => has(i, 'thing:spoiled'))
  // Spanish "quitamos" is taken off as often as thrown away: then what was bad must be said
  const verb = p.find(i => has(i, 'v:pitch') && (bad >= 0 || !has(i, 'v:take')))
  if (verb < 0 && bad < 0) return undefined
  const take = verb < 0 ? p.sense('v:take', 'v:put') : -1
  if (verb < 0 && take < 0) {
    if (p.num(['bucket', 'load', 'lb', 'ton', 'ft', 'in']) < 0) return undefined
  } else p.take(verb >= 0 ? verb : take)
  if (bad < 0 && (p.cat('mat') >= 0 || p.cat('crop') >= 0)) return undefined
  // "3 buckets of spoiled yesterday and today another 2"
  const leans = verb >= 0 && p.items[verb]!.ghost === true
  if (bad < 0 && p.num(['bucket', 'load', 'lb', 'ton', 'ft', 'in']) < 0 && !(leans && p.sense('more') >= 0)) return undefined
  // "took 2' off, 1 bkt spoild": what was taken before the pause was not spoiled
  const ft = p.num(['ft', 'in'])
  const counted = p.num(['bucket', 'load'])
  if (ft >= 0 && counted > ft && p.items.slice(ft, counted).some(i => has(i, 'comma'))) out.bias! -= 4
  if (bad >= 0) {
    p.takeAll('thing:spoiled')
    out.bias! += 1
  }
  takeAmount(p, out, 200)
  takePile(p, out, 'pile', 'off')
  takeCrop(p)
  takeWhere(p, true)
  vagueUnit(p, out)
  if (takeVague(p)) out.vague = true
  // "di 6 cucharones y tire 1 podrido": of what was counted before
  const bare = amount(out.slots) || (bad < 0 && !leans) ? -1 : p.num([undefined], i => i.num! < 100)
  if (bare >= 0) {
    out.slots.bare = p.take(bare)!.num
    out.vague = true
  }
  p.takeAll('unit:bucket', 'unit:load', 'v:pitch')
  takeColour(p)
  out.full = amount(out.slots) && (bad >= 0 || verb >= 0)
  return out
}
