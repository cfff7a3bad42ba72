/**
 * Plays seasons and prints how far the days left were off, beside the notebook way.
 *
 *   npx tsx tests/seasons/seasons.ts [seasons of each farm, 60] [--first SEED, 1] [--no-lines | --all-lines] [--farm NAME] [--held | --seen]
 *
 * The first farm is played as words through the line channel (with `--all-lines` all of them are); all of them, itself too, as events
 * straight into the book. `--held` takes only farms that were never looked at while the priors were set, `--seen` only the others.
 * A `!` marks what misses its aim: 20 to 45 days median 2.7 and 90th percentile 8, 45 to 90 median 4, held 74 to 88 %, and never a
 * worse median than the notebook.
 */
import { FARMS } from './farms.ts'
import { type Guess, play } from './play.ts'
import { HORIZONS, type Score, score } from './score.ts'
import { playThroughLines } from './throughLines.ts'

const args = process.argv.slice(2)
const after = (flag: string): string | undefined => (args.includes(flag) ? args[args.indexOf(flag) + 1] : undefined)
const count = Number(args.find((a, i) => /^\d+$/.test(a) && args[i - 1] !== '--first') ?? 60)
const first = Number(after('--first') ?? 1)
const only = after('--farm')
const farms = FARMS.filter(
  f => (only === undefined || f.name === only) && !(args.includes('--held') && !f.heldOut) && !(args.includes('--seen') && f.heldOut),
)
const seeds = Array.from({ length: count }, (_, i) => i + first)

const f = (x: number, miss = false, digits = 1): string => (Number.isFinite(x) ? x.toFixed(digits) : '-').padStart(6) + (miss ? '!' : ' ')

/** Fewer answers than this tell nothing of a share. */
const ENOUGH = 40

const row = (s: Score, from: number): string => {
  const most = from === 20 ? 2.7 : from === 45 ? 4 : Number.POSITIVE_INFINITY
  const tells = s.n >= ENOUGH
  return [
    String(s.n).padStart(5),
    f(s.median, tells && (s.median > most || s.median > s.notebookMedian)),
    f(s.p90, tells && from === 20 && s.p90 > 8),
    f(s.held, tells && (s.held < 74 || s.held > 88), 0),
    f(s.half),
    f(s.lean),
    '  ',
    f(s.notebookMedian),
    f(s.notebookP90),
  ].join('')
}

const table = (name: string, guesses: readonly Guess[]): void => {
  for (const [from, to] of HORIZONS) {
    const s = score(guesses.filter(g => g.truth >= from && g.truth < to))
    console.log(`${name.padEnd(26)}${`${from} to ${to}`.padEnd(10)}${row(s, from)}`)
  }
}

console.log(`${count} seasons of each farm. Errors in days; "held": how often the 80 % interval held the truth, %; "half": half its width;`)
console.log('"lean": mean error, above 0 too many days. Notebook: loads x said box weight x 0.85, less days x the daily figure.\n')
console.log(`${'farm'.padEnd(26)}${'days left'.padEnd(10)}    n median   90 %   held   half   lean    notebook  90 %`)
const inWords = args.includes('--no-lines') ? [] : args.includes('--all-lines') ? farms : farms.slice(0, 1)
for (const farm of inWords) {
  const { guesses, lost } = await playThroughLines(farm, seeds)
  table(`${farm.name}, in words`, guesses)
  if (lost.length) console.log(`  not recorded: ${lost.length}, as: ${[...new Set(lost)].slice(0, 5).join('; ')}`)
}
if (args.includes('--all-lines')) process.exit(0)
const all: Record<'seen' | 'held out', Guess[]> = { seen: [], 'held out': [] }
for (const farm of farms) {
  const guesses = seeds.flatMap(seed => play(farm, seed))
  all[farm.heldOut ? 'held out' : 'seen'].push(...guesses)
  table(`${farm.name}${farm.heldOut ? ' *' : ''}`, guesses)
}
for (const [name, guesses] of Object.entries(all)) if (guesses.length) table(`all farms ${name}`, guesses)
console.log('\n* held out: never looked at while the priors were set.')
