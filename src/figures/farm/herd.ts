import type { Lb } from '../../units/measure.ts'
export const herdForageDry = (heads: ReadonlyMap<string, number>): Lb | undefined => {
  let n = 0
  for (const [, h] of heads) n += h
  return n > 0 ? n * 28 : undefined
}
