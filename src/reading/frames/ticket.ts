import type { Pool } from '../pool.ts'
import { WEIGHT } from './amounts.ts'
import { type Found, inLb } from './slots.ts'

/** No box of feed is lighter, lb. Common practice, no source. */
const LEAST_LB = 2000

/** "it weighed in at 14,200": what the load that was told before came to, and nothing else; undefined where more is told. */
export const weighedAlone = (p: Pool): Found | undefined => {
  if (p.cat('box') >= 0 || p.cat('crop') >= 0 || p.cat('pile') >= 0 || p.sense('each') >= 0 || p.num(['load']) >= 0) return undefined
  const verb = p.sense('v:weigh')
  const heft = verb < 0 ? -1 : p.num([undefined, ...WEIGHT], i => i.unit !== undefined || i.num! >= LEAST_LB)
  if (heft < 0) return undefined
  const i = p.take(heft)!
  p.take(verb)
  return { slots: { lb: i.unit === undefined ? i.num : inLb(i) }, full: false, weighed: true, bias: -0.5 }
}
