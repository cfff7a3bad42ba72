import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Readable } from 'node:stream'
import { afterAll, describe, expect, it } from 'vitest'
import { inPassing, listenerFor, openHouse } from '../../src/compose.ts'
import { type LineOut, runLines } from '../../src/edges/lines.ts'
import { missing, noteOf } from './synth.ts'

const lacking = missing('pocketsphinx_batch', 'flite', 'opusenc')
const folder = mkdtempSync(join(tmpdir(), 'pilehand-voice-lines-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const play = async (lines: object[]): Promise<LineOut[]> => {
  const out: LineOut[] = []
  await inPassing(async data => {
    const config = { data, zone: 'America/Chicago' }
    const house = openHouse(config, { firstOwns: true, passing: true })
    const listener = await listenerFor(config, house)
    try {
      await runLines(house.core, Readable.from(lines.map(l => `${JSON.stringify(l)}\n`)), l => out.push(JSON.parse(l)), 'r', { listener })
    } finally {
      await listener.close()
      house.store.close()
    }
  })
  return out
}
const at = (minute: number): string => new Date(Date.parse('2026-09-14T14:00:00Z') + minute * 60_000).toISOString()

describe.skipIf(lacking.length > 0)(
  `voice on the line channel${lacking.length ? ` (skipped: not installed: ${lacking.join(', ')})` : ''}`,
  () => {
    it('a note is heard, recorded and answered with its words, and can be corrected by text', async () => {
      const file = join(folder, 'note.ogg')
      writeFileSync(file, noteOf('put seven loads of corn on quarry', 'kal16'))
      const out = await play([
        { at: at(0), from: 'lea', text: 'new pile called quarry, 40 by 130' },
        { at: at(1), from: 'lea', text: 'put 2 loads corn on quarry' },
        { at: at(2), from: 'lea', id: 9, voice: file },
        { at: at(3), from: 'lea', text: 'make that 6' },
      ])
      const lines = out.filter(o => 'line' in o)
      expect(lines[2]).toMatchObject({ line: 3, outcome: 'recorded', recorded: [{ type: 'load', count: 7, pile: 'quarry' }] })
      expect(JSON.stringify(lines[2])).toContain('put seven loads of corn on quarry')
      expect(lines[3]).toMatchObject({ recorded: [{ count: 6 }], withdrawn: [{ count: 7 }] })
    })
  },
)

it('a file that is not there, and words beside a note, are said; the next line goes on', async () => {
  const out = await play([
    { at: at(0), from: 'lea', voice: join(folder, 'none.ogg') },
    { at: at(1), from: 'lea', voice: 'a.ogg', text: 'and words' },
    { at: at(2), from: 'lea', text: 'help' },
  ])
  expect(out).toMatchObject([
    { line: 1, outcome: 'refused', replies: [{ text: expect.stringMatching(/could not be fetched/) }] },
    { line: 2, error: expect.stringMatching(/^voice: /) },
    { line: 3, outcome: 'answered' },
  ])
})
