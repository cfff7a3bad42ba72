import { has, hasCat, valueOf } from '../item.ts'
import { TO_LOG } from '../logs.ts'
import { isThin, type Pool } from '../pool.ts'
import { countsUnknown, WEIGHT } from './amounts.ts'
import { takeCrop } from './crop.ts'
import { takeDm } from './dryMatter.ts'
import { takeField } from './field.ts'
import { type Found, hasVague, inLb, isEach, isPileToPile, takeColour, takePile, takeVague } from './slots.ts'
import { weighedAlone } from './ticket.ts'

const THEM = /^(?:them|em|it|los|las|lo|la)$/i

/** Feed put on a pile. */
export const load = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  if (isPileToPile(p)) return undefined
  const alone = weighedAlone(p)
  if (alone) return alone
  const bare = p.cat('crop') < 0 && p.cat('box') < 0
  // "threw 40 back on": of what was told before
  if (bare && p.sense('back') >= 0 && p.cat('pile') < 0 && p.num(['load', ...WEIGHT]) < 0) return undefined
  // "tiramos 3 botes": thrown away, unless it goes on a pile
  if (bare && p.num(['bucket']) >= 0 && p.sense('v:pitch') >= 0 && p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') < 0)
    return undefined
  if (p.find(i => hasCat(i, 'mat') && !hasCat(i, 'crop')) >= 0 && p.cat('crop') < 0) return undefined
  // "north took 9 ton of haylage": the pile is who took it
  const took = p.sense('v:take')
  // "bought 30 ton haylage": feed that is bought goes on a pile
  const bought = p.cat('crop') >= 0 && p.num([...WEIGHT]) >= 0 ? p.sense('v:buy') : -1
  // "orange truck weighed 17,240": a load with its scale ticket
  const ticket =
    p.cat('box') >= 0 && p.num([undefined, ...WEIGHT], i => i.unit !== undefined || i.num! >= 2000) >= 0 ? p.sense('v:weigh') : -1
  const eats =
    took > 0 && p.cat('crop') >= 0 && hasCat(p.before(took), 'pile') && p.relation(p.items.indexOf(p.before(took)!)) === undefined
  // "al arroyo le dimos 5 viajes de alfalfa": given to the pile, not to the cows
  const given =
    p.num(['load']) >= 0 && p.cat('crop') >= 0 && p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') >= 0
      ? p.find(i => has(i, 'v:feed') && /di(?:mos|eron|o)?$|echa?mos|eche$/.test(i.text.toLowerCase()))
      : -1
  const verb = given >= 0 ? given : eats ? took : ticket >= 0 ? ticket : bought >= 0 ? bought : p.sense('v:put')
  // "echamos al mixer 12 mil de old slab": what goes into the mixer is fed
  if (p.sense('to:cows') >= 0) return undefined
  // "their pile" is none of ours
  if (p.find((i, k) => has(i, 'pileword') && /^(?:their|his|her|hers|su|sus)$/.test(p.items[k - 1]?.tokens[0]?.norm ?? '')) >= 0)
    return undefined
  if (!eats && p.sense('unit:batch') >= 0 && p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'off') >= 0) return undefined
  const base = verb < 0 ? p.sense('b:put') : -1
  const fed =
    given < 0 &&
    p.sense('v:feed') >= 0 &&
    (verb < 0 ||
      (p.cat('crop') < 0 &&
        p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'off') >= 0 &&
        p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') < 0) ||
      (has(p.items[verb], 'v:feed') &&
        p.cat('crop') < 0 &&
        p.num(['load']) < 0 &&
        p.find((i, k) => (hasCat(i, 'pile') || has(i, 'pileword')) && p.relation(k) === 'on') < 0))
  if (fed) return undefined
  const at = p.num(['load'])
  const bucket =
    at < 0 && (verb >= 0 || (p.cat('crop') >= 0 && p.find((i, k) => hasCat(i, 'pile') && p.relation(k) !== 'off') >= 0))
      ? p.num(['bucket'])
      : -1
  const weight = p.num([...WEIGHT])
  const bareLoad = at < 0 && bucket < 0 ? p.find(i => i.num === undefined && hasCat(i, 'unit') && has(i, 'unit:load')) : -1
  const cropAt = p.find((i, k) => hasCat(i, 'crop') && (!has(i, 'cutword') || hasCat(p.items[k - 1], 'say')))
  // "another 14 on north": more of what is going in
  const again =
    at < 0 &&
    weight < 0 &&
    verb < 0 &&
    p.find(i => has(i, 'more')) >= 0 &&
    p.num([undefined], i => i.num! < 100) >= 0 &&
    (p.cat('crop') >= 0 || p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') >= 0) &&
    p.find(i => hasCat(i, 'what') || hasCat(i, 'mat') || hasCat(i, 'v') || hasCat(i, 'animal')) < 0
  // "4 de maiz y 2 de alfalfa en el azul"
  const bareCrop =
    at < 0 &&
    p.cat('v') < 0 &&
    p.num(
      [undefined],
      (i, k) =>
        i.num! < 60 &&
        (hasCat(p.items[k + 1], 'crop') ||
          (has(p.items[k + 1], 'off') &&
            (hasCat(p.items[k + 2], 'crop') || (hasCat(p.items[k + 2], 'say') && hasCat(p.items[k + 3], 'crop'))))),
    ) >= 0 &&
    (p.find((i, k) => hasCat(i, 'pile') && p.relation(k) !== 'off') >= 0 || p.items.length <= 4)
  const some = at < 0 && hasVague(p) && p.cat('crop') >= 0 && p.cat('pile') >= 0 && p.cat('v') < 0 && p.cat('what') < 0
  // "12 en total hoy en back lot"
  const inAll =
    at < 0 &&
    p.sense('total') >= 0 &&
    p.cat('v') < 0 &&
    p.num([undefined], i => i.num! < 300) >= 0 &&
    p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') >= 0 &&
    p.find(i => hasCat(i, 'mat') || hasCat(i, 'what') || hasCat(i, 'group') || hasCat(i, 'item')) < 0
  // "corn pad 3": how much is to be asked
  const bareThing =
    cropAt >= 0 &&
    p.cat('pile') >= 0 &&
    p.items.length <= 5 &&
    p.items.every(i => isThin(i) || hasCat(i, 'crop') || hasCat(i, 'pile') || hasCat(i, 'say'))
  // "9 tons on north": of what will be asked
  const bareWeight =
    weight >= 0 &&
    verb < 0 &&
    base < 0 &&
    cropAt < 0 &&
    p.cat('v') < 0 &&
    p.find((i, k) => hasCat(i, 'pile') && p.relation(k) === 'on') >= 0 &&
    p.items.length <= 7
  if (at < 0 && bucket < 0 && weight < 0 && verb < 0 && base < 0 && bareLoad < 0 && !again && !some && !bareCrop && !inAll && !bareThing)
    return undefined
  if (at < 0 && bareLoad < 0 && cropAt < 0 && verb < 0 && base < 0 && !again && !inAll && !bareWeight) return undefined
  // "3 loads to go on north"
  if (p.sense('thing:left') >= 0 && verb < 0) return undefined
  if (p.find(i => hasCat(i, 'thing') && has(i, 'thing:spoiled')) >= 0) return undefined
  if (p.find(i => hasCat(i, 'per') || has(i, 'item:patch tape')) >= 0) return undefined
  if (verb >= 0) {
    p.take(verb)
    // "trajo 10 loads de maíz, los dejó en creek": the same ones
    p.take(
      p.find((i, k) => has(i, 'v:put') && k > verb && (THEM.test(p.items[k - 1]?.text ?? '') || THEM.test(p.items[k + 1]?.text ?? ''))),
    )
    out.bias! += 1
  } else if (base >= 0) {
    p.take(base)
    // "log 7 loads": told to whoever writes it down, no order to the crew
    out.order = has(p.items[base], 'b:put') && !TO_LOG.test(p.items[base]!.text)
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
      if (countsUnknown(p, k) || hasCat(nx, 'mat') || hasCat(nx, 'item')) return false
      return (
        i.num! < 1000 &&
        (hasCat(nx, 'crop') ||
          hasCat(nx, 'box') ||
          hasCat(nx, 'say') ||
          boxAt >= 0 ||
          has(nx, 'more') ||
          has(p.before(k), 'more') ||
          again ||
          inAll ||
          (verb >= 0 && weight < 0))
      )
    })
    // "dumped 18k of haylage": nobody counts that many loads
    const heavy = n < 0 && verb >= 0 && weight < 0 && cropAt >= 0 ? p.num([undefined], i => i.num! >= 2000) : -1
    if (n >= 0) {
      const i = p.take(n)!
      out.slots.count = i.num
      out.noUnit = boxAt < 0
      if (has(i, 'range')) out.vague = true
    } else if (heavy >= 0) {
      const i = p.take(heavy)!
      out.slots.lb = i.num
      if (has(i, 'range')) out.vague = true
    }
    if (bareLoad >= 0) p.take(bareLoad)
  }
  if (ticket >= 0) {
    const n = p.num([undefined, ...WEIGHT], i => i.unit !== undefined || i.num! >= 2000)
    if (n >= 0) {
      const i = p.take(n)!
      out.slots.lb ??= i.unit === undefined ? i.num : inLb(i)
      out.slots.count ??= 1
    }
  }
  // "3 loads, 17,240 16,900 17,100": a ticket for each
  const tickets = p.items
    .map((i, k) => ({ i, k }))
    .filter(({ i, k }) => p.free(k) && i.num !== undefined && i.unit === undefined && !i.ordinal && i.num >= 2000)
  if (tickets.length > 1 && tickets.length === out.slots.count && weight < 0) {
    out.slots.lb = tickets.reduce((t, { i }) => t + i.num!, 0)
    for (const { k } of tickets) p.take(k)
  }
  // "me and bo each put 4 loads": four apiece
  const each = p.find(
    (i, k) =>
      has(i, 'each') &&
      k < Math.max(verb, 0) &&
      /^(?:me|i|him|her|us|yo)$/i.test(p.items[0]?.text ?? '') &&
      p.items.slice(0, k).some(x => has(x, 'and')),
  )
  if (each >= 0 && typeof out.slots.count === 'number') {
    out.slots.count *= 2
    p.take(each)
    p.takeCat('person')
    p.takeAll('and')
  }
  const crop = takeCrop(p)
  if (crop.crop) out.slots.crop = crop.crop
  if (crop.cut) out.slots.cut = crop.cut
  // "2 loads of laundry": what nobody knows is no feed, unless it goes on a pile of ours
  const bareAt =
    at >= 0 || boxAt >= 0
      ? at
      : p.items.findIndex(
          (i, k) =>
            i.num !== undefined &&
            i.unit === undefined &&
            !p.free(k) &&
            (has(p.items[k + 1], 'off') || (i.tokens.length > 1 && /^(?:de|of)$/.test(i.tokens.at(-1)!.norm))),
        )
  if (!crop.crop && (at >= 0 || bareAt >= 0)) {
    let k = (at >= 0 ? at : bareAt) + 1
    while (p.items[k] && has(p.items[k], 'off') && p.items[k]!.senses.every(s => s === 'off' || s === 'filler')) k++
    const noun = p.items[k]
    if (noun && p.free(k) && noun.senses.length === 0) {
      const ours = p.find((i, j) => hasCat(i, 'pile') && p.relation(j) === 'on') >= 0 && verb >= 0
      if (!ours) return undefined
      const two = p.free(k + 1) && p.items[k + 1]?.senses.length === 0 ? k + 1 : k
      out.slots.crop = p.items
        .slice(k, two + 1)
        .map(i => i.text.toLowerCase())
        .join(' ')
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
  // "4 lds cs cedar": what nobody knows stands where the pile does
  const last = p.items.findLastIndex(i => !isThin(i) && !has(i, 'comma'))
  const cedar = p.items[last]
  if (
    out.slots.pile === undefined &&
    out.strange === undefined &&
    verb < 0 &&
    base < 0 &&
    cedar !== undefined &&
    cedar.senses.length === 0 &&
    cedar.text.length > 3 &&
    p.items.length <= 6 &&
    out.slots.crop !== undefined &&
    p.free(last)
  )
    out.strange = p.take(last)!.text.toLowerCase()
  if (takeVague(p)) out.vague = true
  if (p.takeAll('total') > 0) out.total = true
  if (p.sense('more') >= 0) out.more = true
  takeColour(p)
  // "3 boxes on the bench in the shop": on what nobody knows, and no feed is named
  if (
    verb < 0 &&
    base < 0 &&
    !crop.crop &&
    boxAt < 0 &&
    out.slots.pile !== undefined &&
    p.find((i, k) => !i.senses.length && p.relation(k) === 'on') >= 0
  )
    return undefined
  const rel = out.slots.pile !== undefined ? p.relation(p.items.findIndex(i => valueOf(i, 'pile') === out.slots.pile)) : undefined
  if (rel === 'off') out.bias! -= 3
  if (out.slots.count === undefined && out.slots.lb === undefined) {
    // a crop or a pile, and a verb of hauling: an amount is missing
    if (!out.slots.crop && !out.slots.pile && !out.strange && !out.vague) return undefined
    if (!out.slots.crop && bareLoad < 0 && !out.vague) return undefined
    if (verb < 0 && !out.vague && !(bareLoad >= 0 && out.slots.crop && out.slots.pile)) return undefined
    out.bias! -= 1
  }
  out.full =
    (out.slots.count !== undefined || out.slots.lb !== undefined) &&
    (out.slots.crop !== undefined ||
      out.slots.box !== undefined ||
      verb >= 0 ||
      again ||
      bareWeight ||
      (at >= 0 && (out.slots.pile !== undefined || out.more === true)))
  return out
}
