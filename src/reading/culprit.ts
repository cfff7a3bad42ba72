import { has, hasCat, type Item } from './item.ts'

const TOOL = /^(?:cuchara|cucharon|bote|pala|bucket|forks?|blade)$/i
const HIT = /^le d(?:i|io|imos)$/

/** Who did the harm that the next clause tells: an animal, or what somebody hit it with. */
export const culpritIn = (clause: Item[]): Item | undefined => {
  const animal = clause.find(i => hasCat(i, 'animal') && !has(i, 'animal:animal') && i.unit === undefined)
  if (animal) return animal
  const hit = clause.some(i => has(i, 'v:break')) || HIT.test(clause[0]?.text.toLowerCase() ?? '')
  return hit
    ? clause.find((i, k) => has(i, 'cause:machine') || (TOOL.test(i.text) && clause.slice(Math.max(0, k - 2), k).some(x => has(x, 'with'))))
    : undefined
}
