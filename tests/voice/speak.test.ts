import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { makeSpeaker, secondsOf } from '../../src/edges/voice.ts'
import { missing } from './synth.ts'

const folder = mkdtempSync(join(tmpdir(), 'pilehand-speak-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const lacking = missing('espeak-ng', 'opusenc')

describe.skipIf(lacking.length > 0)(`spoken answers${lacking.length ? ` (skipped: not installed: ${lacking.join(', ')})` : ''}`, () => {
  it.each(['en', 'es'] as const)('are OGG/Opus files of a few seconds: %s', async lang => {
    const file = await makeSpeaker(folder)('Heard: "put 7 loads"\n7 loads corn silage on quarry, 14,000 lb.', lang, `lea-${lang}/..`)
    expect(file).toMatch(/lea-e[ns]_+\.ogg$/)
    const seconds = secondsOf(readFileSync(file!))!
    expect(seconds).toBeGreaterThan(1.5)
    expect(seconds).toBeLessThan(12)
  })
})

it('long answers, and none at all, are left to be read', async () => {
  expect(await makeSpeaker(folder)('x'.repeat(400), 'en', 'long')).toBeUndefined()
  expect(await makeSpeaker(folder)('Heard: "well"', 'en', 'none')).toBeUndefined()
})

it('where a program is missing there is no voice, and no fault', async () => {
  expect(await makeSpeaker(folder, { say: 'no-such-voice', encode: 'no-such-encoder' })('Seven loads.', 'en', 'mute')).toBeUndefined()
})
