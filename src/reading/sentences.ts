import { altered, has, hasCat, type Item, isVerb } from './item.ts'
import { TO_LOG } from './logs.ts'
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

/** "plastic on": a sheet and nothing of how big or how many. */
const laysSheet = (run: Item[]): boolean =>
  hasCat(run[0], 'mat') && has(run[1], 'on') && run.every(i => i.num === undefined || i.sides !== undefined)

/** "covers checked. tight everywhere": what was found stands behind the stop. */
const findsWhat = (items: Item[], at: number): boolean => {
  let k = at
  while (items[k] && !has(items[k], 'stop')) {
    if (!isThin(items[k]!) && !hasCat(items[k], 'find') && !has(items[k], 'thing:covers') && !has(items[k], 'comma')) return false
    k++
  }
  return k > at && items.slice(at, k).some(i => hasCat(i, 'find'))
}

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

/** "fed 10k off shop and remind me thursday to call": another matter; so is what is to be written down behind a reminder. */
const beginsReminder = (items: Item[], k: number, run: Item[]): boolean => {
  if (run.length < 2 || !(has(run.at(-1), 'and') || has(run.at(-1), 'comma'))) return false
  const rest = items.slice(k + 1)
  const end = rest.findIndex(x => has(x, 'stop'))
  const mine = end < 0 ? rest : rest.slice(0, end)
  if (has(items[k], 'v:remind'))
    return run.some(x => x.num !== undefined || isVerb(x)) && mine.some(x => !x.date && !isThin(x)) && !run.some(x => has(x, 'm:plan'))
  return TO_LOG.test(items[k]!.text) && run.some(x => has(x, 'v:remind')) && mine.some(x => x.num !== undefined)
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
      if (i.text !== '?' && (run.some(x => has(x, 'v:cover')) || laysSheet(run)) && listsCover(items, k + 1)) {
        run.push(altered(i, { senses: COMMA }))
        continue
      }
      // "dogs on shop again. 4 holes": the second says what came of it
      const found = run.some(x => has(x, 'v:check')) && !run.some(x => hasCat(x, 'find') || hasCat(x, 'what') || x.num !== undefined)
      if (i.text === '.' && ((tellsWho(run) && countsHarm(items, k + 1)) || (found && findsWhat(items, k + 1)))) {
        run.push(altered(i, { senses: COMMA }))
        continue
      }
      if (prev && i.text === '.' && /^(lb|lbs|ft|in|hrs?|approx|no|st|mr|mrs)$/i.test(prev.tokens.at(-1)?.text ?? '') && items[k + 1])
        continue
      close(false)
    } else if (beginsReminder(items, k, run)) {
      while (has(run.at(-1), 'and') || has(run.at(-1), 'comma')) run.pop()
      close(false)
      run.push(i)
    } else run.push(i)
  }
  close(false)
  return out
}
