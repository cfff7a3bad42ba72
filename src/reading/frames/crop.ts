import { has, hasCat, valueOf } from '../item.ts'
import { isThin, type Pool } from '../pool.ts'

export interface CropSaid {
  crop?: string
  cut?: number
}

/** No field is cut more often in a year. Common practice, no source. */
const MOST_CUTS = 6

const cropIn = (p: Pool): CropSaid => {
  const out: CropSaid = {}
  const ord = p.find((i, k) => {
    if (!hasCat(i, 'say')) return false
    const n = p.items[k + 1]
    return n !== undefined && (has(n, 'cutword') || hasCat(n, 'crop'))
  })
  if (ord >= 0) {
    out.cut = Number(valueOf(p.take(ord), 'say')!.split(':')[1])
    out.crop = 'haylage'
    const n = p.items[ord + 1]!
    p.take(ord + 1)
    if (!has(n, 'cutword')) {
      out.crop = valueOf(n, 'crop')!
      if (p.items[ord + 2] && has(p.items[ord + 2], 'cutword')) p.take(ord + 2)
    } else {
      let k = ord + 2
      while (p.items[k] && (has(p.items[k], 'off') || isThin(p.items[k]!)) && k < ord + 4) k++
      if (p.free(k) && hasCat(p.items[k], 'crop') && !has(p.items[k], 'cutword')) out.crop = valueOf(p.take(k), 'crop')!
      else {
        // "alfalfa del tercer corte"
        const named = p.items.findLastIndex((x, j) => j < ord && p.free(j) && hasCat(x, 'crop') && !has(x, 'cutword'))
        const other = p.find((x, j) => j > ord && hasCat(x, 'crop') && !has(x, 'cutword'))
        if (named >= 0 && other < 0 && p.items.slice(named + 1, ord).every(x => isThin(x) || hasCat(x, 'pile')))
          out.crop = valueOf(p.take(named), 'crop')!
      }
    }
    return out
  }
  // "hay, third cut": crop first, cut after it
  const at = p.find(i => hasCat(i, 'crop') && !has(i, 'cutword'))
  if (at >= 0) {
    out.crop = valueOf(p.take(at), 'crop')
    const k = p.find((i, j) => (j > at && i.ordinal === true) || (hasCat(i, 'say') && has(p.items[j + 1], 'cutword')))
    // "hlg 3rd"
    const behind = k === at + 1 && out.crop === 'haylage' && p.items[k]!.ordinal === true && p.items[k]!.num! <= MOST_CUTS
    if (behind && !has(p.items[k + 1], 'cutword')) {
      out.cut = p.items[k]!.num
      p.take(k)
    } else if (k >= 0 && p.items[k + 1] && has(p.items[k + 1], 'cutword')) {
      out.cut = p.items[k]!.num ?? Number(valueOf(p.items[k], 'say')!.split(':')[1])
      p.take(k)
      p.take(k + 1)
    }
  }
  return out
}

/** Takes a crop with its cut: "third crop hay", "2nd cutting", "corn". */
export const takeCrop = (p: Pool): CropSaid => {
  const out = cropIn(p)
  // "silo de maíz": two words for one feed
  if (out.crop) p.takeAll(`crop:${out.crop}`)
  return out
}
