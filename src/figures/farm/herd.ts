import type { Lb } from '../../units/measure.ts'
import { type Group, herdForage } from '../intake.ts'

const WORDS: [Group, RegExp][] = [
  ['dry', /dry|seca|close-?up|far-?off/i],
  ['heifers', /heif|novill|vaquill|replac|steer|young/i],
  ['milking', /milk|cow|herd|fresh|lact|high|low|orde|vaca/i],
]

/**
 * Forage dry matter a herd takes out of the piles a day, lb, from its head counts by group alone: the usual cow of each group.
 * Undefined without a head; calves eat none.
 */
export const herdForageDry = (heads: ReadonlyMap<string, number>): Lb | undefined => {
  const groups: Partial<Record<Group, number>> = {}
  for (const [name, head] of heads) {
    const group = WORDS.find(([, words]) => words.test(name))?.[0]
    if (group) groups[group] = (groups[group] ?? 0) + head
  }
  const lb = herdForage(groups)
  return lb > 0 ? lb : undefined
}
