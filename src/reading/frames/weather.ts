import { has, hasCat, type Item, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'
import { type Found, takeColour } from './slots.ts'

const INDOORS = /^(?:in there|in here|inside|indoors|adentro)$/i
const ONLY = /^(?:just|jst|only|nomas|solo|solamente|nada mas)$/i
const SIZES = /^stone:/

/** "12 below", "10 grados bajo cero" lie on the other side of zero, °F. */
const degrees = (i: Item, before?: Item): number => (/\b(below|bajo)\b/i.test(i.text) || before?.text === '-' ? -Math.abs(i.num!) : i.num!)

/** "5 mas pero llovio": a number with a pause or a word between is none of the rain's. */
const isBeside = (p: Pool, a: number, b: number): boolean =>
  p.items.slice(Math.min(a, b) + 1, Math.max(a, b)).every(i => isThin(i) && !has(i, 'comma') && !has(i, 'but'))

/** Weather that came. */
export const weather = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: true, bias: 0 }
  const sky = p.find(i => hasCat(i, 'sky'))
  const warm = sky < 0 ? p.num(['degF']) : -1
  // "got up to 97 degrees", "down to 18": heat and frost by the number
  if (
    warm >= 0 &&
    (p.items[warm]!.num! >= 85 || p.items[warm]!.num! <= 32) &&
    p.cat('pile') < 0 &&
    p.cat('crop') < 0 &&
    !p.items.some(i => INDOORS.test(i.text))
  ) {
    const degF = degrees(p.take(warm)!)
    p.takeAll('v:put', 'v:measure', 'v:have')
    return { slots: { kind: degF >= 85 ? 'heat' : 'freeze', degF }, full: true, bias: 1 }
  }
  if (sky < 0) return undefined
  if (
    p.find(i => hasCat(i, 'pile') && !has(i, 'where:place')) >= 0 ||
    p.find(i => hasCat(i, 'mat') || hasCat(i, 'crop') || (hasCat(i, 'what') && !hasCat(i, 'sky')) || hasCat(i, 'animal')) >= 0
  )
    out.bias! -= 2
  const kind = valueOf(p.items[sky], 'sky')!
  // "no hail, just 2 inches of rain" is two
  if (
    p.find(
      (i, k) => k > sky && hasCat(i, 'sky') && !has(i, `sky:${kind}`) && p.items.slice(sky, k).some(x => has(x, 'comma') || has(x, 'but')),
    ) >= 0
  )
    out.bias! -= 2
  // "an inch of rain and no wind to speak of", "no granizo nomas llovio"
  const apart = p.find((i, k) => k > sky && hasCat(i, 'sky') && !has(i, `sky:${kind}`))
  if (apart > sky && p.items.slice(sky + 1, apart).some(i => has(i, 'm:no') || ONLY.test(i.text))) return undefined
  if (apart > sky && has(p.items[sky - 1], 'm:no') && p.num(['in', 'mph', 'ft', undefined]) > sky) return undefined
  // "esta saliendo caliente el shop": the feed, not the day
  if (kind === 'heat' && p.cat('pile') >= 0 && p.num(['degF', undefined]) < 0) return undefined
  // "blowing": a verb alone is not yet weather without a speed or a time
  out.slots.kind = kind
  p.takeAll(`sky:${kind}`)
  const stone = p.find(i => i.senses.some(s => SIZES.test(s) && s !== 'stone:size'))
  // "60 mph wind with hail like quarters": the stones are the hail's
  if (stone >= 0 && (kind === 'hail' || p.sense('sky:hail') < 0)) {
    const inches = Number(valueOf(p.take(stone), 'stone'))
    if (kind === 'hail') out.slots.inches = inches
    p.takeAll('stone:size')
  }
  // "3/4 of an inch of rain and wind got to 48 mph" is two: each measures its own
  const other = p.find(i => hasCat(i, 'sky') && !has(i, `sky:${kind}`))
  const mph = p.num(['mph'])
  // "quarter size hail and half an inch of rain": the inches are the rain's
  if (other >= 0 && kind === 'hail' && out.slots.inches !== undefined && p.num(['in']) >= 0) return undefined
  // "inch of rain and 45 mph wind": each measures its own
  if (other >= 0 && ((mph >= 0 && kind !== 'wind' && has(p.items[other], 'sky:wind')) || (p.num(['in']) >= 0 && kind === 'wind')))
    return undefined
  if (other >= 0 && p.items.filter(i => i.num !== undefined).length > 1) out.bias! -= 2
  if (mph >= 0 && kind !== 'wind' && other >= 0 && has(p.items[other], 'sky:wind')) out.bias! -= 2
  const inch = p.num(['in'])
  if (inch >= 0 && kind === 'wind' && other >= 0) out.bias! -= 2
  if (inch >= 0) out.slots.inches = p.take(inch)!.num
  // "inch of rain"
  const bareInch = inch < 0 && (kind === 'rain' || kind === 'snow') ? p.find(i => i.num === undefined && has(i, 'unit:in')) : -1
  if (bareInch >= 0 && has(p.items[bareInch + 1], `sky:${kind}`)) {
    p.take(bareInch)
    out.slots.inches = 1
  }
  const ft = p.num(['ft'])
  if (ft >= 0) out.slots.inches = p.take(ft)!.num! * 12
  // rain and hail have no speed: it is the wind's, told beside them
  if (mph >= 0 && kind === 'wind') out.slots.mph = p.take(mph)!.num
  const deg = p.num(['degF'])
  if (deg >= 0) out.slots.degF = degrees(p.take(deg)!, p.items[deg - 1])
  const bare = p.num([undefined])
  if (bare >= 0) {
    const clock =
      // "about 3 tenths of rain" is no hour
      Number.isInteger(p.items[bare]!.num) &&
      p.items[bare]!.num! <= 12 &&
      has(p.items[bare - 1], 'approx') &&
      (kind === 'hail' || p.items[bare + 1] === undefined || !hasCat(p.items[bare + 1], 'unit'))
    if (clock) p.take(bare)
    // "12 llantas con el aire": what it took, not how fast it blew
    else if (kind === 'wind' && mph < 0 && !hasCat(p.items[bare + 1], 'mat')) out.slots.mph = p.take(bare)!.num
    else if (kind === 'freeze' || kind === 'heat' || kind === 'thaw') out.slots.degF = degrees(p.take(bare)!, p.items[bare - 1])
    else if ((kind === 'rain' || kind === 'snow') && isBeside(p, bare, sky)) {
      // "rained 2": inches are how rain is told here
      out.slots.inches = p.take(bare)!.num
    }
  }
  if (out.slots.inches !== undefined && p.items[inch]?.num !== undefined && has(p.items[inch], 'range')) out.vague = true
  p.takeAll(
    'v:have',
    'v:break',
    'v:put',
    'vague',
    'sky:wind',
    'sky:rain',
    'v:lift',
    'thing:first',
    'find:trouble',
    'unit:in',
    'v:take',
    'sky:snow',
    'cause:wind',
    'cause:hail',
    'v:measure',
    'v:pitch',
    'why:feed',
    'ground',
  )
  for (let k = 0; k < p.items.length; k++) if (has(p.items[k], 'where:place') && !hasCat(p.items[k], 'pile')) p.take(k)
  takeColour(p)
  return out
}
