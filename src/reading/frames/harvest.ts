import { hasCat, valueOf } from '../item.ts'
import type { Pool } from '../pool.ts'
import { takeCrop } from './crop.ts'
import { type Found, takeColour } from './slots.ts'

/** When a crop is expected. The day is the clause's date. */
export const harvest = (p: Pool): Found | undefined => {
  const out: Found = { slots: {}, full: false, bias: 0 }
  const expect = p.sense('harv:expect')
  const date = p.find(i => i.date !== undefined)
  // "first cutting about may 28": about a day that is not past is expected
  const about =
    p.sense('approx') >= 0 &&
    p.sense('cutword') >= 0 &&
    p.items[date]?.date?.past !== p.items[date]?.date?.future &&
    p.find(i => i.num !== undefined && !i.ordinal) < 0
  if ((expect < 0 && p.num(['acre']) < 0 && !about) || date < 0) return undefined
  if (p.find(i => hasCat(i, 'mat') || i.unit === 'load' || i.unit === 'lb' || i.unit === 'ton') >= 0) return undefined
  const crop = takeCrop(p)
  // "first crop about may 26, second around june 30"
  const leans = expect >= 0 && p.items[expect]!.ghost === true
  const nth = leans && !crop.crop ? p.cat('say') : -1
  if (nth >= 0) Object.assign(crop, { crop: 'haylage', cut: Number(valueOf(p.take(nth), 'say')!.split(':')[1]) })
  if (!crop.crop || (leans && crop.cut === undefined)) return undefined
  out.slots.crop = crop.crop
  if (crop.cut) out.slots.cut = crop.cut
  const ac = p.num(['acre'])
  if (ac >= 0) out.slots.acres = p.take(ac)!.num
  p.takeAll('harv:expect', 'b:feed', 'v:take', 'v:cover')
  takeColour(p)
  out.bias! += 2
  out.full = true
  return out
}
