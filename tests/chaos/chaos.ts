import { storm } from './storm.ts'

// `npm run chaos [updates] [kills] [seed]`: the long storm; a short one is in the suite.

const [updates = 10_000, kills = 40, seed = 20_260_914] = process.argv.slice(2).map(Number)
const { wrong, counts, sent, seconds } = await storm({ updates, kills, seed, lifeMs: 1500 })
process.stdout.write(`${updates} updates, ${sent} of them to be recorded, in ${seconds.toFixed(0)} s, seed ${seed}\n`)
for (const [what, n] of Object.entries(counts).sort()) process.stdout.write(`  ${what}: ${n}\n`)
for (const line of wrong.slice(0, 20)) process.stdout.write(`WRONG ${line}\n`)
process.stdout.write(wrong.length ? `${wrong.length} faults\n` : 'no event lost, none twice, no word to a stranger, the order kept\n')
process.exitCode = wrong.length ? 1 : 0
