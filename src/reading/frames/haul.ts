import { has, hasCat, valueOf } from '../item.ts'
import type { Pool } from '../pool.ts'
import { type Found, hasVague, inFt, inLb, isEach, takeColour, takeCrop, takePile, takeVague, takeWhere } from './slots.ts'

const WEIGHT = ['lb', 'ton', 'tonne', 'kg'] as const

/** Feed put on a pile. */
export const load = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  if (p.find(i => hasCat(i, 'mat') && !hasCat(i, 'crop')) >= 0 && p.cat('crop') < 0) return undefined
  const verb = p.sense('v:put')
  const base = verb < 0 ? p.sense('b:put') : -1
  const fed = p.sense('v:feed') >= 0 && (verb < 0 || (has(p.items[verb], 'v:feed') && p.cat('crop') < 0 && p.num(['load']) < 0 && p.find((i, k) => (hasCat(i, 'pile') || has(i, 'pileword')) && p.relation(k) === 'on') < 0))
  if (fed) return undefined
  const at = p.num(['load'])
  const bucket = at < 0 && (verb >= 0 || (p.cat('crop') >= 0 && p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') >= 0)) ? p.num(['bucket']) : -1
  const weight = p.num([...WEIGHT])
  const bareLoad = at < 0 && bucket < 0 ? p.find(i => i.num === undefined && hasCat(i, 'unit') && has(i, 'unit:load')) : -1
  const cropAt = p.find((i, k) => hasCat(i, 'crop') && (!has(i, 'cutword') || hasCat(p.items[k - 1], 'say')))
  // "another 14 on north": more of what is going in
  const again = at < 0 && weight < 0 && verb < 0 && p.find(i => has(i, 'more')) >= 0 && p.num([undefined], i => i.num! < 100) >= 0 && (p.cat('crop') >= 0 || p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') >= 0) && p.find(i => hasCat(i, 'what') || hasCat(i, 'mat') || hasCat(i, 'v') || hasCat(i, 'animal')) < 0
  const some = at < 0 && hasVague(p) && p.cat('crop') >= 0 && p.cat('pile') >= 0 && p.cat('v') < 0 && p.cat('what') < 0
  if (at < 0 && bucket < 0 && weight < 0 && verb < 0 && base < 0 && bareLoad < 0 && !again && !some) return undefined
  if (at < 0 && bareLoad < 0 && cropAt < 0 && verb < 0 && base < 0 && !again) return undefined
  if (p.find(i => hasCat(i, 'thing') && has(i, 'thing:spoiled')) >= 0) return undefined
  if (p.find(i => hasCat(i, 'per') || has(i, 'item:patch tape')) >= 0) return undefined
  if (verb >= 0) {
    p.take(verb)
    out.bias! += 1
  } else if (base >= 0) {
    p.take(base)
    out.order = p.items[base]!.senses.includes('b:put')
  }
  const boxAt = p.cat('box')
  if (boxAt >= 0) out.slots.box = valueOf(p.take(boxAt), 'box')
  if (at >= 0) {
    const i = p.take(at)!
    out.slots.count = i.num
    if (has(i, 'range')) out.vague = true
    out.bias! += 1
  } else if (bucket >= 0) {
    out.slots.count = p.take(bucket)!.num
    out.slots.unit = 'bucket'
  } else {
    // "5 corn on creek", "two blue boxes", "8 more haylage"
    const n = p.num([undefined], (i, k) => {
      const nx = p.after(k)
      if (countsUnknown(p, k)) return false
      return i.num! < 1000 && (hasCat(nx, 'crop') || hasCat(nx, 'box') || hasCat(nx, 'say') || boxAt >= 0 || has(nx, 'more') || again || (verb >= 0 && weight < 0))
    })
    if (n >= 0) {
      const i = p.take(n)!
      out.slots.count = i.num
      if (has(i, 'range')) out.vague = true
    }
    if (bareLoad >= 0) p.take(bareLoad)
  }
  const crop = takeCrop(p)
  if (crop.crop) out.slots.crop = crop.crop
  if (crop.cut) out.slots.cut = crop.cut
  // "2 loads of laundry": what nobody knows is no feed, unless it goes on a pile of ours
  if (!crop.crop && at >= 0) {
    let k = at + 1
    while (p.items[k] && has(p.items[k], 'off') && p.items[k]!.senses.every(s => s === 'off' || s === 'filler')) k++
    const noun = p.items[k]
    if (noun && p.free(k) && noun.senses.length === 0) {
      const ours = p.find((i, j) => hasCat(i, 'pile') && p.relation(j) === 'on') >= 0 && verb >= 0
      if (!ours) return undefined
      const two = p.free(k + 1) && p.items[k + 1]?.senses.length === 0 ? k + 1 : k
      out.slots.crop = p.items.slice(k, two + 1).map(i => i.text.toLowerCase()).join(' ')
      for (let j = k; j <= two; j++) p.take(j)
    }
  }
  const dm = takeDm(p)
  if (dm !== undefined) out.slots.dmPct = dm
  if (weight >= 0 && p.free(weight)) {
    const i = p.take(weight)!
    const lb = inLb(i)!
    out.slots.lb = isEach(p, weight) && typeof out.slots.count === 'number' ? lb * out.slots.count : lb
    if (has(i, 'range')) out.vague = true
  } else if (typeof out.slots.count === 'number') {
    // "5 loads, 14,200 each"
    const n = p.num([undefined], i => i.num! >= 1000)
    if (n >= 0 && (p.items[n - 1]?.text === '@' || isEach(p, n))) out.slots.lb = p.take(n)!.num! * out.slots.count
  }
  const field = takeField(p)
  if (field) out.slots.field = field
  takePile(p, out, 'pile', 'on')
  if (takeVague(p)) out.vague = true
  if (p.takeAll('total') > 0) out.total = true
  if (p.sense('more') >= 0) out.more = true
  takeColour(p)
  const rel = out.slots.pile !== undefined ? p.relation(p.items.findIndex(i => valueOf(i, 'pile') === out.slots.pile)) : undefined
  if (rel === 'off') out.bias! -= 3
  if (out.slots.count === undefined && out.slots.lb === undefined) {
    // a crop or a pile, and a verb of hauling: an amount is missing
    if (!out.slots.crop && !out.slots.pile && !out.strange && !out.vague) return undefined
    if (!out.slots.crop && bareLoad < 0 && !out.vague) return undefined
    if (verb < 0 && !out.vague) return undefined
    out.bias! -= 1
  }
  out.full = (out.slots.count !== undefined || out.slots.lb !== undefined) && (out.slots.crop !== undefined || out.slots.box !== undefined || verb >= 0 || again || (at >= 0 && (out.slots.pile !== undefined || out.more === true)))
  return out
}

/** "from the back 40", "off the river field": where it was cut, as said. */
const takeField = (p: Pool): string | undefined => {
  for (let k = 0; k < p.items.length; k++) {
    if (!has(p.items[k], 'off') || has(p.items[k], 'on')) continue
    let from = k + 1
    while (p.items[from] && has(p.items[from], 'filler') && p.items[from]!.senses.length === 1) from++
    let end = from
    while (p.free(end) && end - from < 4) {
      const i = p.items[end]!
      const ok = i.senses.length === 0 || has(i, 'where:place') || hasCat(i, 'person') || (hasCat(i, 'pile') && /^(field|place|farm|campo|lote)$/.test(p.items[end + 1]?.tokens[0]?.norm ?? '')) || (i.num !== undefined && i.unit === undefined && end > from) || (i.num !== undefined && i.unit === 'acre') || /^(field|forty|place|farm|ground|piece|bottom|campo|lote|parcela|potrero|terreno|rancho|milpa|back|home|east|west|far|vecino|neighbors?)$/.test(i.tokens[0]!.norm)
      const joins = end > from && has(i, 'off') && p.items[end + 1] !== undefined && (p.items[end + 1]!.senses.length === 0 || hasCat(p.items[end + 1], 'person'))
      if (joins) {
        end += 2
        continue
      }
      if (!ok) break
      end++
    }
    if (end > from && p.items.slice(from, end).some(i => i.senses.length === 0 || has(i, 'where:place') || hasCat(i, 'person') || /^(field|campo|lote|home|place|vecino|neighbors?)$/.test(i.tokens.at(-1)!.norm))) {
      for (let j = from; j < end; j++) p.used[j] = 1
      return p.items.slice(from, end).map(i => i.text.toLowerCase()).join(' ')
    }
  }
  return undefined
}

/** Dry matter said in passing: "33 dm", "34 percent dry matter", "62 moisture". */
export const takeDm = (p: Pool): number | undefined => {
  const n = p.num([undefined, 'pct'], (i, k) => {
    if (i.num! <= 0 || i.num! > 100) return false
    const a = p.items[k + 1]
    const b = p.items[k + 2]
    return hasCat(a, 'dm') || (has(a, 'unit:pct') && hasCat(b, 'dm')) || (has(a, 'off') && hasCat(b, 'dm'))
  })
  if (n < 0) return undefined
  const v = p.take(n)!.num!
  let k = n + 1
  if (!hasCat(p.items[k], 'dm')) {
    p.take(k)
    k++
  }
  const kind = valueOf(p.take(k), 'dm')
  return kind === 'wet' ? Math.round((100 - v) * 1e6) / 1e6 : v
}

const takeAmount = (p: Pool, out: Found, bareFloor: number): void => {
  const w = p.num([...WEIGHT])
  const c = p.num(['load', 'bucket', 'batch'])
  const f = p.num(['ft', 'in'])
  if (c >= 0) {
    const i = p.take(c)!
    out.slots.count = i.num
    if (i.unit !== 'load') out.slots.unit = i.unit
    if (has(i, 'range')) out.vague = true
  }
  if (f >= 0 && p.free(f)) {
    const i = p.take(f)!
    out.slots.ft = inFt(i)
    if (has(i, 'range')) out.vague = true
  }
  if (w >= 0 && p.free(w)) {
    const i = p.take(w)!
    const lb = inLb(i)!
    out.slots.lb = isEach(p, w) && typeof out.slots.count === 'number' ? lb * out.slots.count : lb
    if (has(i, 'range')) out.vague = true
  } else {
    const n = p.num([undefined], (i, k) => i.num! >= bareFloor && !countsUnknown(p, k))
    if (n >= 0) {
      const i = p.take(n)!
      out.slots.lb = isEach(p, n) && typeof out.slots.count === 'number' ? i.num! * out.slots.count : i.num
      if (has(i, 'range')) out.vague = true
    }
  }
}

/** "3 jags": a number that counts something nobody knows is no count of ours. */
const countsUnknown = (p: Pool, k: number): boolean => p.items[k + 1] !== undefined && p.items[k + 1]!.senses.length === 0 && p.items[k + 1]!.tokens[0]?.kind === 'word'

const amount = (s: Record<string, unknown>): boolean => s.lb !== undefined || s.count !== undefined || s.ft !== undefined

/** Feed taken to the cows. */
export const feed = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:feed')
  const take = verb < 0 ? p.sense('v:take') : -1
  const base = verb < 0 && take < 0 ? p.sense('b:feed', 'b:take') : -1
  const offPile = p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'off') >= 0
  const bareOff = verb < 0 && take < 0 && base < 0 && p.sense('v:put', 'v:push', 'v:pitch') < 0 && p.cat('mat') < 0 && p.cat('what') < 0 && (p.num(['batch']) >= 0 || (offPile && p.num(['bucket', 'lb', 'ton', 'ft', 'load', undefined]) >= 0))
  if (verb < 0 && take < 0 && base < 0 && !bareOff) return undefined
  if (p.cat('per') >= 0) return undefined
  if (bareOff && p.find(i => has(i, 'thing:left') || has(i, 'thing:face') || hasCat(i, 'dm') || hasCat(i, 'crop')) >= 0) return undefined
  if (p.find(i => has(i, 'thing:spoiled')) >= 0) return undefined
  if (take >= 0 && p.cat('mat') >= 0) return undefined
  if (take >= 0 && p.num(['ft', 'in', 'bucket', 'load', 'batch', 'lb', 'ton']) < 0 && !hasVague(p)) return undefined
  // "ate 3 bowls of chili"
  if (p.cat('pile') < 0 && p.find((i, k) => i.num !== undefined && i.unit === undefined && countsUnknown(p, k)) >= 0) return undefined
  p.take(verb >= 0 ? verb : take >= 0 ? take : base)
  // "took a foot off and fed 11k" is one feed
  if (verb >= 0) p.takeAll('v:take', 'v:feed')
  else p.takeAll('v:feed')
  out.order = base >= 0
  takeAmount(p, out, 100)
  takePile(p, out, 'pile', 'off')
  const at = p.items.findIndex(i => valueOf(i, 'pile') === out.slots.pile)
  if (at >= 0 && p.relation(at) === 'on' && (take >= 0 || verb >= 0) && !p.items.slice(0, at).some(i => has(i, 'v:feed') && !has(i, 'v:put'))) out.bias! -= 2
  takeCrop(p)
  if (takeVague(p)) out.vague = true
  p.takeAll('unit:head', 'group:milking', 'group:dry', 'group:heifers', 'animal:cow', 'thing:face', 'b:feed', 'unit:lb', 'unit:load', 'unit:batch', 'unit:bucket')
  takeWhere(p, false)
  if (p.takeAll('total') > 0) out.total = true
  takeColour(p)
  if (verb >= 0) out.bias! += 1
  if (!amount(out.slots)) {
    const small = p.num([undefined])
    if (small >= 0) {
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
  const bad = p.find(i => has(i, 'thing:spoiled'))
  const verb = p.find(i => has(i, 'v:pitch'))
  if (verb < 0 && bad < 0) return undefined
  const take = verb < 0 ? p.sense('v:take', 'v:put') : -1
  if (verb < 0 && take < 0) {
    if (p.num(['bucket', 'load', 'lb', 'ton', 'ft', 'in']) < 0) return undefined
  } else p.take(verb >= 0 ? verb : take)
  if (bad < 0 && (p.cat('mat') >= 0 || p.cat('crop') >= 0)) return undefined
  if (bad < 0 && p.num(['bucket', 'load', 'lb', 'ton', 'ft', 'in']) < 0) return undefined
  if (bad >= 0) {
    p.takeAll('thing:spoiled')
    out.bias! += 1
  }
  takeAmount(p, out, 200)
  takePile(p, out, 'pile', 'off')
  takeCrop(p)
  takeWhere(p, true)
  if (takeVague(p)) out.vague = true
  p.takeAll('unit:bucket', 'unit:load', 'v:pitch')
  takeColour(p)
  out.full = amount(out.slots) && (bad >= 0 || verb >= 0)
  return out
}

/** Where the face is, or what is left behind it. */
export const face = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const f = p.sense('thing:face')
  const left = p.sense('thing:left')
  if (f < 0 && left < 0) return undefined
  const n = f >= 0 ? p.num([undefined, 'ft', 'in', 'm']) : p.num(['ft', 'm'])
  if (n < 0) return undefined
  if (p.find(i => hasCat(i, 'mat') || hasCat(i, 'what')) >= 0) return undefined
  if (f >= 0 && p.relation(f) === 'off' && p.sense('v:take', 'v:feed') >= 0) return undefined
  const i = p.take(n)!
  if (has(i, 'range')) out.vague = true
  if (f >= 0) p.takeAll('thing:face')
  if (left >= 0) {
    p.takeAll('thing:left')
    out.slots.leftFt = inFt(i)
  } else out.slots.atFt = inFt(i)
  takePile(p, out)
  p.takeAll('v:have', 'unit:ft', 'v:measure', 'v:put', 'v:feed', 'v:take', 'v:break')
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
  p.takeAll('thing:gone')
  takePile(p, out)
  if (!out.slots.pile && p.items[at]!.text.split(' ').length < 2 && p.find(i => has(i, 'pileword')) < 0) return undefined
  if (!out.slots.pile) out.bias! -= 1
  p.takeAll('v:feed', 'v:have', 'thing:first', 'v:take', 'crop:corn silage', 'crop:haylage', 'thing:left', 'find:good')
  takeColour(p)
  return out
}

/** What was pushed from one pile on another. */
export const shift = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:push')
  const base = verb < 0 ? p.sense('b:push') : -1
  if (verb < 0 && base < 0) return undefined
  const first = p.cat('pile')
  if (first < 0) return undefined
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
  p.takeAll('thing:first', 'unit:ft', 'v:put', 'thing:left')
  takeCrop(p)
  takeColour(p)
  out.full = out.slots.pile !== undefined && out.slots.toPile !== undefined
  return out
}

/** A pile opened, to feed from it or to add to it. */
export const open = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const verb = p.sense('v:open')
  const base = verb < 0 ? p.sense('b:open') : -1
  if (verb < 0 && base < 0) return undefined
  const i = p.take(verb >= 0 ? verb : base)!
  out.order = base >= 0
  takePile(p, out)
  const why = p.find(x => hasCat(x, 'why'))
  const put = p.find(x => has(x, 'v:put') || has(x, 'b:put'))
  const fed = p.find(x => has(x, 'v:feed') || has(x, 'b:feed'))
  if (why >= 0) out.slots.why = valueOf(p.take(why), 'why')
  else if (/feed|dar|sacar/.test(i.text.toLowerCase()) || fed >= 0) out.slots.why = 'feed'
  else if (put >= 0 || p.find(x => hasCat(x, 'crop')) >= 0) out.slots.why = 'add'
  p.takeAll('v:put', 'b:put', 'v:feed', 'b:feed', 'why:add', 'why:feed', 'back', 'v:take', 'mat:plastic', 'unit:head', 'animal:cow', 'group:milking', 'm:plan', 'thing:face', 'v:roll')
  takeCrop(p)
  takeWhere(p, false)
  takeColour(p)
  if (p.find(x => x.num !== undefined) >= 0) out.bias! -= 2
  out.full = out.slots.pile !== undefined && out.slots.why !== undefined
  return out
}
