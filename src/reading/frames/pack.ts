import { has, hasCat, type Item } from '../item.ts'
import type { Pool } from '../pool.ts'
import { type Found, inLb, takeColour, takePile, takeVague } from './slots.ts'

const AT_WORK = /^(?:ran|run|running|had|have|got|kept|tuvimos|anduvo|anduvieron)$/i

/** "both tractors", "los dos tractores" */
const BOTH = /^(?:both|both of the|ambos|los dos|las dos)$/i

const hasWeight = (i: Item | undefined): boolean => i !== undefined && inLb(i) !== undefined

/** Tractors on the pile. */
export const pack = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  // "rolled creek 4 hours with the 38,000 lb tractor"
  const rolled = p.num(['hour', 'tractor']) >= 0 || (p.sense('unit:tractor') >= 0 && p.num(['lb', 'ton']) >= 0) ? p.sense('v:roll') : -1
  // "2 tractors on creek 5 hrs": what else would they do there
  const busy =
    p.find(i => hasCat(i, 'v') && !AT_WORK.test(i.text)) < 0 && p.cat('pile') >= 0 && p.num(['hour']) >= 0 ? p.num(['tractor']) : -1
  const told = p.sense('v:pack') >= 0 ? p.sense('v:pack') : rolled >= 0 ? rolled : busy
  // "creek pack 6in layers 1 tractor"
  const base = told < 0 && p.cat('pile') >= 0 && p.num(['tractor', 'hour']) >= 0 ? p.sense('b:pack') : -1
  const verb = base >= 0 && !/^to$/.test(p.items[base - 1]?.text.toLowerCase() ?? '') ? base : told
  if (verb < 0) return undefined
  if (p.cat('mat') >= 0) return undefined
  // "esta bien pisado north": how it is, not that it was done
  if (p.sense('find:good') >= 0 && p.find(i => i.num !== undefined) < 0) return undefined
  if (verb !== busy) p.take(verb)
  const t = p.num(['tractor'])
  // "two 32,000 pound tractors"
  const apart =
    t < 0
      ? p.find(
          (i, k) =>
            i.num !== undefined && i.unit === undefined && i.num < 10 && hasWeight(p.items[k + 1]) && has(p.items[k + 2], 'unit:tractor'),
        )
      : -1
  const both = t < 0 ? p.find((i, k) => has(i, 'unit:tractor') && i.num === undefined && BOTH.test(p.items[k - 1]?.text ?? '')) : -1
  if (both >= 0) out.slots.tractors = 2
  // "a 36k tractor": what it weighs
  if (t >= 0 && p.items[t]!.num! >= 5000) {
    out.slots.tractorLb = p.take(t)!.num
    // "one 38k tractor"
    const many = p.items[t - 1]
    if (many?.num !== undefined && many.unit === undefined && many.num < 10) out.slots.tractors = p.take(t - 1)!.num
    else if (/^one$/i.test(many?.text ?? '')) out.slots.tractors = 1
  }
  if (out.slots.tractorLb !== undefined) {
    // said with its weight
  } else if (t >= 0) out.slots.tractors = p.take(t)!.num
  else if (apart >= 0) out.slots.tractors = p.take(apart)!.num
  else if (
    p.find(i => has(i, 'unit:tractor') && i.num === undefined && /^(tractor|packer|trator|trctr)$/.test(i.tokens.at(-1)!.norm)) >= 0 &&
    p.items.some(i => /^(a|one|un|1)$/.test(i.text.toLowerCase()))
  )
    out.slots.tractors = 1
  // "packing w 2"
  const with2 =
    out.slots.tractors === undefined
      ? p.find(
          (i, k) =>
            i.num !== undefined && i.unit === undefined && i.num < 10 && has(p.items[k - 1], 'with') && !hasCat(p.items[k + 1], 'dim'),
        )
      : -1
  if (with2 >= 0) out.slots.tractors = p.take(with2)!.num
  const h = p.num(['hour'])
  if (h >= 0) out.slots.hours = p.take(h)!.num
  const layer = p.num(
    ['in', 'ft', undefined],
    (i, k) => i.unit === 'in' || has(p.items[k + 1], 'dim:layer') || (i.unit === undefined && hasCat(p.items[k + 1], 'dim')),
  )
  if (layer >= 0 && p.cat('dim') >= 0) {
    const i = p.take(layer)!
    out.slots.layerIn = i.unit === 'ft' ? i.num! * 12 : i.num
    p.takeAll('dim:layer')
  } else if (layer >= 0 && p.items[layer]!.unit === 'in') out.slots.layerIn = p.take(layer)!.num
  const w = p.num(['lb', 'ton', 'tonne', undefined], i => i.unit !== undefined || i.num! >= 5000)
  if (w >= 0) {
    const i = p.take(w)!
    out.slots.tractorLb = i.unit === undefined ? i.num : inLb(i)
    p.takeAll('each')
  }
  if (takeVague(p) && out.slots.tractors === undefined) out.vague = true
  takePile(p, out)
  p.takeAll('unit:tractor', 'v:pack', 'v:put', 'dim:layer', 'cause:machine', 'v:have', 'with', 'animal:cat')
  takeColour(p)
  out.full = Object.keys(out.slots).some(k => k !== 'pile')
  if (!out.full && out.slots.pile === undefined) return undefined
  return out
}
