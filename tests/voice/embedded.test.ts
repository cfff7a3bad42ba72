import { mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readSegments, sentenceGrammar } from '../../src/edges/voice/batch.ts'
import { embeddedEar } from '../../src/edges/voice/embedded.ts'
import { chance } from '../../src/edges/voice/model/draw.ts'
import { modelsFor } from '../../src/edges/voice/models.ts'
import { RATE, soundOf } from '../../src/edges/voice/sound.ts'
import { noteOf } from '../../src/hearing/note.ts'
import { farm } from '../bench/voiceFarm.ts'
import { missing, noteOf as noteSaid, recorded } from './synth.ts'

const FARM = { piles: ['quarry', 'ridge', 'willow', 'loma'], boxes: [], people: ['lea'], words: [] }
const folder = mkdtempSync(join(tmpdir(), 'pilehand-embedded-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const ear = embeddedEar({ folder })

const settled = async (sound: Float32Array) => {
  const note = noteOf(await ear.hear(sound, FARM, 'en'), FARM.piles)
  return { text: note?.text, r: note ? farm().tell(note.text, { heard: { wordings: note.wordings } }) : undefined }
}

const lacking = missing('pocketsphinx_batch', 'espeak-ng', 'flite', 'opusenc')
const titled = (title: string): string => (lacking.length ? `${title} (skipped: not installed: ${lacking.join(', ')})` : title)

describe.skipIf(lacking.length > 0)(titled('the embedded ear'), () => {
  it('hears a synthetic voice through Opus and noise, and it is recorded', async () => {
    const { text, r } = await settled(await soundOf(noteSaid('put seven loads of corn on quarry', 'kal16', 20)))
    expect(text).toBe('put seven loads of corn on quarry')
    expect(r).toMatchObject({ outcome: 'recorded', recorded: [{ type: 'load', count: 7, pile: 'quarry', crop: 'corn silage' }] })
  })

  it('weighs a teen against its ten: what is not clear is asked, what is recorded is right', async () => {
    for (const [said, n] of [
      ['we put fifteen loads of corn on quarry', 15],
      ['we put fifty loads of corn on quarry', 50],
    ] as const) {
      // prettier-ignore
      const note = noteOf(await ear.hear(await soundOf(noteSaid(said, 'kal16', 20)), FARM, 'en'), FARM.piles)!
      expect(note.wordings.map(w => w.text)).toContain(said)
      const r = farm().tell(note.text, { heard: { wordings: note.wordings } })
      if (r.recorded.length) expect(r.recorded).toMatchObject([{ count: n }])
      else expect(r.replies[0]!.choices!.some(c => c.startsWith(`${n} `))).toBe(true)
    }
  })

  it('makes its models anew for new names, and keeps those of the old', async () => {
    const own = join(folder, 'names')
    const first = await modelsFor(own, '/usr/share/pocketsphinx/model/en-us', FARM)
    const made = statSync(first.dict).mtimeMs
    const second = await modelsFor(own, '/usr/share/pocketsphinx/model/en-us', { ...FARM, piles: [...FARM.piles, 'peña alta'] })
    expect(second.dict).not.toBe(first.dict)
    expect(await modelsFor(own, '/usr/share/pocketsphinx/model/en-us', FARM)).toEqual(first)
    expect(statSync(first.dict).mtimeMs).toBe(made)
    expect(readdirSync(own).filter(n => n.includes('.'))).toEqual([])
  })

  it('hears nothing in silence, and nothing of the book in noise', async () => {
    expect(await settled(new Float32Array(RATE))).toEqual({ text: undefined, r: undefined })
    const next = chance(7)
    const hiss = Float32Array.from({ length: RATE * 2 }, () => (next() - 0.5) * 0.4)
    expect((await settled(hiss)).r?.recorded ?? []).toEqual([])
  })

  it('what ends early is ended: no process stays behind', async () => {
    await expect(ear.hear(new Float32Array(RATE * 20), FARM, 'en', AbortSignal.timeout(5))).rejects.toThrow()
  })
})

const data = '/usr/share/pocketsphinx/test/data'
const noData = missing('pocketsphinx_batch').concat(statSync(data, { throwIfNoEntry: false }) ? [] : ['pocketsphinx-testdata'])
describe.skipIf(noData.length > 0)(
  `people's voices (Debian's pocketsphinx-testdata)${noData.length ? ` (skipped: not installed: ${noData.join(', ')})` : ''}`,
  () => {
    it.each(['cards/001.wav', 'goforward.raw', 'librivox/sense_and_sensibility_01_austen_64kb-0880.wav'])(
      '%s is not about piles: nothing is recorded',
      async file => {
        expect((await settled(recorded(join(data, file)))).r?.recorded ?? []).toEqual([])
      },
    )
  },
)

describe('without the program', () => {
  it.skipIf(missing('pocketsphinx_batch').includes('pocketsphinx-en-us'))('says which is missing', async () => {
    const deaf = embeddedEar({ folder: join(folder, 'deaf'), program: 'no-such-recogniser' })
    await expect(deaf.hear(new Float32Array(RATE), FARM, 'en')).rejects.toMatchObject({
      code: 'ear-program-missing',
      data: { name: 'no-such-recogniser' },
    })
  })
  it('without its model says where it looked', async () => {
    const deaf = embeddedEar({ folder: join(folder, 'deaf'), english: join(folder, 'nowhere') })
    await expect(deaf.hear(new Float32Array(RATE), FARM, 'en')).rejects.toMatchObject({
      code: 'ear-model-missing',
      data: { why: 'ENOENT' },
    })
  })
})

describe('the recogniser’s own files', () => {
  it('its segments are words with times, without silence and fillers', () => {
    const line = 'note S 0 T -6777 A -6103 L -674 0 -163 -337 <sil> 24 -389 0 hey 52 -145 0 put(2) 67 -9 0 [NOISE] 80 -185 -337 </s> 90'
    expect(readSegments(line)).toEqual({
      acoustic: -6103,
      words: [
        { word: 'hey', from: 0.24, to: 0.52, sure: 0 },
        { word: 'put', from: 0.52, to: 0.67, sure: 0 },
      ],
    })
    expect(readSegments('')).toBeUndefined()
  })

  it('the grammar of a sentence has a state between any two words', () => {
    expect(sentenceGrammar(['put', 'seven']).split('\n').slice(1, 6)).toEqual([
      'NUM_STATES 3',
      'START_STATE 0',
      'FINAL_STATE 2',
      'TRANSITION 0 1 1.0 put',
      'TRANSITION 1 2 1.0 seven',
    ])
  })
})
