import type { Ft, Pct, Share } from '../../units/measure.ts'
import { byCrop, type Layer } from './layers.ts'

/** How much of each crop stands in the section at one foot of the pile. */
export interface MixAt {
  shares: { crop: string; cut?: number; share: Share }[]
  dmPct: Pct
}

export interface MixAlong {
  at(ft: Ft): MixAt
  /** First foot from which a layer of the crop is met. */
  startsFt(crop: string, cut?: number): Ft | undefined
}

/** Share of a crowned section that lies below `t` of its height: a parabola, 1 - (1 - t)^1.5. */
const below = (t: number): Share => 1 - (1 - Math.min(1, Math.max(0, t))) ** 1.5

const STEPS = 120

/**
 * Layers spread level over the whole pile, one on the other: within a ramp the lower ones come out first, so the mix at the face
 * turns with every foot until the full height stands. `front` and `back` are the ramps as shares of the length. Nobody tells
 * how the layers really run; level ones are the usual way on a pile that is driven over.
 */
export const mixAlong = (layers: readonly Layer[], lengthFt: Ft, front: Share, back: Share): MixAlong => {
  const height = (u: number): Share => Math.min(1, front > 0 ? u / front : 1, back > 0 ? (1 - u) / back : 1)
  const heights = Array.from({ length: STEPS }, (_, i) => height((i + 0.5) / STEPS))
  const areas = heights.map(h => h ** 1.5)
  const all = areas.reduce((a, b) => a + b, 0)
  const lb = layers.reduce((s, l) => s + l.lb, 0)
  // The height up to which a layer reaches: what lies below it is what went in up to it.
  const tops: number[] = []
  let sum = 0
  for (const l of layers) {
    sum += l.lb
    let a = 0
    let b = 1
    for (let i = 0; i < 30; i++) {
      const z = (a + b) / 2
      const share = heights.reduce((s, h, k) => s + areas[k]! * below(z / Math.max(1e-9, h)), 0) / all
      if (share < sum / lb) a = z
      else b = z
    }
    tops.push((a + b) / 2)
  }
  tops[tops.length - 1] = 1
  const at = (ft: Ft): MixAt => {
    const h = Math.max(1e-3, height(Math.min(1, Math.max(0, ft / lengthFt))))
    const parts = layers.map((l, i) => ({ ...l, lb: below(tops[i]! / h) - (i ? below(tops[i - 1]! / h) : 0) }))
    const rows = byCrop(parts.filter(p => p.lb > 1e-6))
    // Dry matter of the section: by weight of what stands in it.
    const wet = parts.reduce((s, p) => s + p.lb, 0)
    const dry = parts.reduce((s, p, i) => s + (p.lb * layers[i]!.lbDry) / layers[i]!.lb, 0)
    return {
      shares: rows.map(({ crop, cut, share }) => ({ crop, ...(cut !== undefined && { cut }), share })),
      dmPct: wet > 0 ? (100 * dry) / wet : 0,
    }
  }
  return {
    at,
    startsFt: (crop, cut) => {
      const i = layers.findIndex(l => l.crop === crop && l.cut === cut)
      if (i < 0) return undefined
      return i === 0 ? 0 : front * tops[i - 1]! * lengthFt
    },
  }
}
