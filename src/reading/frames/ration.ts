import { has, hasCat, valueOf } from '../item.ts'
import type { Pool } from '../pool.ts'
import { takeCrop } from './crop.ts'
import { type Found, inLb, takeColour, takePile } from './slots.ts'

/** True where no herd is counted. */
const isUncounted = (p: Pool): boolean => p.num(['head']) < 0

/** Heads and daily amounts. */
export const ration = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const milk = p.sense('v:milk')
  const perDay = p.sense('per:day')
  const perHead = p.sense('per:head')
  const group = p.find(i => hasCat(i, 'group'))
  // "22 lb haylage ea as fed": a basis is told of rations alone
  const based = p.sense('basis:as fed') >= 0 && p.sense('each') >= 0
  if (milk < 0 && perDay < 0 && perHead < 0 && group < 0 && !based) return undefined
  // "viernes y sábado les di 10 mil cada día": fed on those days, no ration
  if (p.sense('v:feed') >= 0 && p.find(i => i.date?.explicit === true && !i.date.ahead) >= 0 && p.sense('per:day') >= 0) return undefined
  if (p.find(i => i.unit === 'load' || i.unit === 'ft' || i.unit === 'in' || hasCat(i, 'mat') || hasCat(i, 'what')) >= 0) return undefined
  // "46 lb corn silage and 20 lb haylage a head": a feed each
  const fed =
    perHead >= 0 && isUncounted(p)
      ? p.items
          .map((i, k) => ({ i, k }))
          .filter(({ i, k }) => i.unit === 'lb' && hasCat(p.items[k + (has(p.items[k + 1], 'off') ? 2 : 1)], 'crop'))
      : []
  if (fed.length === 2) {
    for (const { i, k } of fed) {
      const of = has(p.items[k + 1], 'off') ? k + 2 : k + 1
      out.several = [...(out.several ?? []), { lbPerHead: inLb(i), crop: valueOf(p.items[of], 'crop') }]
      p.take(k)
      p.take(of)
    }
    p.takeAll('per:head', 'and')
  } else if (perHead >= 0) {
    const n = p.num(['lb', undefined, 'kg'])
    if (n >= 0) {
      const i = p.take(n)!
      out.slots.lbPerHead = i.unit === undefined ? i.num : inLb(i)
      p.take(perHead)
      p.takeAll('per:head')
    }
  }
  // "milking 119, 46 lb corn silage each"
  const each = perHead < 0 && (milk >= 0 || based || group >= 0) && p.sense('each') >= 0 ? p.num(['lb', 'kg']) : -1
  if (each >= 0) {
    out.slots.lbPerHead = inLb(p.take(each)!)
    p.takeAll('each')
  }
  if (perDay >= 0) {
    const n = p.num(['lb', 'ton', undefined, 'tonne', 'kg'], i => i.unit !== undefined || i.num! >= 100)
    if (n >= 0) {
      const i = p.take(n)!
      const lb = i.unit === undefined ? i.num! : inLb(i)!
      // "6 batches a day at 1900 lb each"
      const count = p.sense('each') >= 0 ? p.num(['batch', 'bucket']) : -1
      out.slots.lbPerDay = count >= 0 ? lb * p.take(count)!.num! : lb
      if (count >= 0) p.takeAll('each')
    }
    p.takeAll('per:day')
  }
  const head = p.num(['head', undefined], (i, k) => i.unit === 'head' || milk >= 0 || hasCat(p.after(k), 'group'))
  if (head >= 0) {
    out.slots.head = p.take(head)!.num
    if (milk >= 0) out.slots.group = 'milking'
  }
  if (group >= 0) {
    const g = valueOf(p.items[group], 'group')!
    if (out.slots.head !== undefined || out.slots.lbPerHead !== undefined) out.slots.group ??= g
    p.takeAll(...['milking', 'dry', 'heifers', 'calves', 'fresh', 'high', 'low'].map(x => `group:${x}`))
  } else if (milk >= 0 && out.slots.head !== undefined) out.slots.group = 'milking'
  if (out.slots.head === undefined && out.slots.lbPerHead === undefined && out.slots.lbPerDay === undefined && !out.several)
    return undefined
  p.takeAll(
    'v:milk',
    'v:feed',
    'b:feed',
    'v:have',
    'v:take',
    'v:put',
    'unit:head',
    'animal:cow',
    'animal:heifer',
    'animal:calf',
    'animal:steer',
    'v:use',
  )
  const basis =
    p.sense('basis:dry') >= 0 && p.sense('basis:dry') !== p.sense('dm:wet') ? 'dry' : p.sense('basis:as fed') >= 0 ? 'as fed' : undefined
  if (basis && (out.slots.lbPerDay !== undefined || out.slots.lbPerHead !== undefined)) {
    out.slots.basis = basis
    p.takeAll('basis:dry', 'basis:as fed', 'dm:dry')
  }
  const crop = takeCrop(p)
  if (crop.crop) out.slots.crop = crop.crop
  takePile(p, out, 'pile', 'off')
  takeColour(p)
  out.bias! += 1
  out.full = true
  return out
}
