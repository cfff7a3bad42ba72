import { has, hasCat, type Item, isVerb } from './item.ts'
import { isThin } from './pool.ts'

/** Whether what begins at `at` is a list of sheets and weights, without a verb, up to the next stop. */
const listsCover = (items: Item[], at: number): boolean => {
  let k = at
  while (items[k] && (has(items[k], 'stop') || isThin(items[k]!))) k++
  const first = items[k]
  if (!first || !(first.sides || hasCat(first, 'mat') || (first.num !== undefined && hasCat(items[k + 1], 'mat')))) return false
  for (; items[k] && !has(items[k], 'stop') && !has(items[k], 'comma'); k++) if (isVerb(items[k]!)) return false
  return true
}

const COMMA = ['comma']

/** An animal and a pile, and no deed: who was where. */
const tellsWho = (run: Item[]): boolean =>
  run.some(i => hasCat(i, 'animal')) &&
  run.some(i => hasCat(i, 'pile')) &&
  !run.some(i => isVerb(i) || has(i, 'm:no') || hasCat(i, 'what') || i.num !== undefined)

/** A number of holes or tears begins there, and ends. */
const countsHarm = (items: Item[], at: number): boolean => {
  const i = items[at]
  const next = items[at + 1]
  return i?.num !== undefined && hasCat(i, 'what') && (next === undefined || has(next, 'stop') || has(next, 'comma'))
}

/** Sentences: runs of items between full stops. A stop behind a short measure ("12 ft. wide") is none. */
export const sentences = (items: Item[]): { items: Item[]; mark: boolean }[] => {
  const out: { items: Item[]; mark: boolean }[] = []
  let run: Item[] = []
  const close = (mark: boolean) => {
    if (run.length) out.push({ items: run, mark })
    run = []
  }
  for (const [k, i] of items.entries()) {
    if (has(i, 'ask?')) {
      // "¿" opens, "?" closes
      if (i.text === '¿') continue
      close(true)
    } else if (has(i, 'stop')) {
      const prev = items[k - 1]
      // "creek covered. 50x150, 275 tires": the second says with what
      if (i.text !== '?' && run.some(x => has(x, 'v:cover')) && listsCover(items, k + 1)) {
        run.push({ ...i, senses: COMMA })
        continue
      }
      // "dogs on shop again. 4 holes": the second says what came of it
      if (i.text === '.' && tellsWho(run) && countsHarm(items, k + 1)) {
        run.push({ ...i, senses: COMMA })
        continue
      }
      if (prev && i.text === '.' && /^(lb|lbs|ft|in|hrs?|approx|no|st|mr|mrs)$/i.test(prev.tokens.at(-1)?.text ?? '') && items[k + 1])
        continue
      close(false)
    } else run.push(i)
  }
  close(false)
  return out
}
