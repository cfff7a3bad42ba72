import { has, hasCat, valueOf } from '../item.ts'
import type { Pool } from '../pool.ts'

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
