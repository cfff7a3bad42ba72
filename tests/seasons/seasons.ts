import { play } from './play.ts'
import { HORIZONS, type Score, score } from './score.ts'
import { WORLDS } from './worlds.ts'

const count = Number(process.argv[2] ?? 60)
const f = (x: number, digits = 1): string => (Number.isFinite(x) ? x.toFixed(digits) : '-').padStart(6)
const row = (s: Score): string =>
  `${String(s.n).padStart(5)} ${f(s.median)} ${f(s.p90)} ${f(s.held, 0)}% ${f(s.half)} ${f(s.lean)} | ${f(s.notebookMedian)} ${f(s.notebookP90)}`

console.log(`${'world'.padEnd(20)} days left     n median    p90   held   half   lean | notebook: median, p90`)
for (const world of WORLDS) {
  const guesses = Array.from({ length: count }, (_, i) => play(world, i + 1)).flat()
  for (const [from, to] of HORIZONS) {
    const s = score(guesses.filter(g => g.truth >= from && g.truth < to))
    console.log(`${world.name.padEnd(20)} ${String(from).padStart(3)} to ${String(to).padEnd(3)} ${row(s)}`)
  }
}
