/**
 * Plays seasons and prints how far the days left were off, beside the notebook way.
 *
 *   npx tsx tests/seasons/seasons.ts [seasons of each world, 60] [--no-lines] [--world NAME]
 *
 * The first world is played as words through the line channel; all of them, itself too, as events straight into the book.
 */
import { type Guess, play } from './play.ts'
import { HORIZONS, type Score, score } from './score.ts'
import { playThroughLines } from './throughLines.ts'
import { WORLDS } from './worlds.ts'

const args = process.argv.slice(2)
const count = Number(args.find(a => /^\d+$/.test(a)) ?? 60)
const only = args.includes('--world') ? args[args.indexOf('--world') + 1] : undefined
const worlds = WORLDS.filter(w => only === undefined || w.name === only)
const seeds = Array.from({ length: count }, (_, i) => i + 1)

const f = (x: number, digits = 1): string => (Number.isFinite(x) ? x.toFixed(digits) : '-').padStart(7)
const row = (s: Score): string =>
  `${String(s.n).padStart(5)}${f(s.median)}${f(s.p90)}${f(s.held, 0)}%${f(s.half)}${f(s.lean)}   ${f(s.notebookMedian)}${f(s.notebookP90)}`

const table = (name: string, guesses: readonly Guess[]): void => {
  for (const [from, to] of HORIZONS) {
    const s = score(guesses.filter(g => g.truth >= from && g.truth < to))
    console.log(`${name.padEnd(22)}${`${from} to ${to}`.padEnd(10)}${row(s)}`)
  }
}

console.log(`${count} seasons of each world. Errors in days; "held": how often the 80 % interval held the truth; "half": half its width;`)
console.log('"lean": mean error, above 0 too many days. Notebook: loads x said box weight x 0.85, less days x the daily figure.\n')
console.log(`${'world'.padEnd(22)}${'days left'.padEnd(10)}    n median    90 %    held   half   lean    notebook  90 %`)
if (!args.includes('--no-lines') && worlds[0]) {
  const { guesses, lost } = await playThroughLines(worlds[0], seeds)
  table(`${worlds[0].name}, in words`, guesses)
  if (lost.length) console.log(`  not recorded: ${lost.length}, as: ${[...new Set(lost)].slice(0, 5).join('; ')}`)
}
for (const world of worlds)
  table(
    world.name,
    seeds.flatMap(seed => play(world, seed)),
  )
