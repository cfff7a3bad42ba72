import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { levelled, RATE, secondsOf, soundOf, thinned, wavOf } from '../../src/edges/voice/sound.ts'
import { missing, samplesIn } from './synth.ts'

const tone = (hz: number, rate: number, seconds = 1, height = 0.5): Float32Array =>
  Float32Array.from({ length: rate * seconds }, (_, k) => height * Math.sin((2 * Math.PI * hz * k) / rate))
/** Strength of one frequency in a sound (a single bin of the Fourier transform), as the height of its sine. */
const strength = (x: Float32Array, hz: number, rate: number): number => {
  let re = 0
  let im = 0
  for (let k = 0; k < x.length; k++) {
    re += x[k]! * Math.cos((2 * Math.PI * hz * k) / rate)
    im += x[k]! * Math.sin((2 * Math.PI * hz * k) / rate)
  }
  return (2 * Math.hypot(re, im)) / x.length
}
const lacking = missing('opusenc', 'opusdec')

describe('taking every third sample', () => {
  it.each([200, 1000, 4000, 6000])('keeps %s Hz', hz => {
    expect(strength(thinned(tone(hz, 48_000)), hz, RATE)).toBeGreaterThan(0.45)
  })
  it.each([9000, 12_000, 15_000])('lets nothing of %s Hz fold down', hz => {
    const got = thinned(tone(hz, 48_000)).slice(100, -100)
    expect(Math.max(...got.map(Math.abs))).toBeLessThan(0.01)
  })
  it('gives a third as many', () => expect(thinned(new Float32Array(48_000))).toHaveLength(RATE))
})

describe.skipIf(lacking.length > 0)(`OGG/Opus${lacking.length ? ` (skipped: not installed: ${lacking.join(', ')})` : ''}`, () => {
  const encoded = (hz: number): Buffer =>
    execFileSync('opusenc', ['--quiet', '--bitrate', '24', '-', '-'], { input: wavOf(tone(hz, 48_000, 2), 48_000) })

  it('comes out as long and as loud as the reference decoder has it', async () => {
    const file = encoded(440)
    expect(secondsOf(file)).toBeCloseTo(2, 1)
    const sound = await soundOf(file)
    const reference = samplesIn(
      execFileSync('opusdec', ['--quiet', '--force-wav', '--rate', String(RATE), '-', '-'], {
        input: file,
        maxBuffer: 1 << 24,
        stdio: ['pipe', 'pipe', 'ignore'],
      }),
    )
    expect(reference.rate).toBe(RATE)
    // opusdec writes a header that a pipe leaves open, and resamples with another filter
    expect(Math.abs(sound.length - reference.sound.length)).toBeLessThan(200)
    const [a, b] = [strength(sound, 440, RATE), strength(reference.sound, 440, RATE)]
    expect(a / b).toBeGreaterThan(0.97)
    expect(a / b).toBeLessThan(1.03)
  })

  it('cut off in the middle is read as far as it goes, or refused', async () => {
    const file = encoded(440)
    for (const at of [50, 300, 2000]) {
      const got = await soundOf(file.subarray(0, at)).then(
        s => s.length,
        e => e.code,
      )
      expect(typeof got === 'number' || got === 'voice-unreadable', String(got)).toBe(true)
    }
  })
})

describe('what is no voice note', () => {
  it.each<[string, Uint8Array]>([
    ['nothing', new Uint8Array()],
    ['text', Buffer.from('put 7 loads on north')],
    ['an OGG of something else', Buffer.concat([Buffer.from('OggS'), Buffer.alloc(24), Buffer.from('vorbis'), Buffer.alloc(300)])],
  ])('%s', async (_, bytes) => {
    expect(secondsOf(bytes)).toBeUndefined()
    await expect(soundOf(bytes)).rejects.toMatchObject({ code: 'voice-unreadable' })
  })

  it('an Opus head with rubbish behind it', async () => {
    const bytes = Buffer.from(readFileSync(new URL('silence.ogg', import.meta.url)))
    bytes.fill(0x55, 200)
    const got = await soundOf(bytes).then(
      s => s.length,
      e => e.code,
    )
    expect(got === 'voice-unreadable' || typeof got === 'number').toBe(true)
  })
})

it('quiet notes are raised, but not without end', () => {
  const peak = (x: Float32Array): number => Math.max(...x.map(Math.abs))
  expect(peak(levelled(tone(100, RATE, 0.1, 0.1)))).toBeCloseTo(0.9, 1)
  expect(peak(levelled(tone(100, RATE, 0.1, 0.001)))).toBeCloseTo(0.02, 2)
})

it('under silence lies a floor of faint noise, always the same, at most 50 dB below full scale', () => {
  const [a, b] = [levelled(new Float32Array(RATE)), levelled(new Float32Array(RATE))]
  expect(a).toEqual(b)
  expect(20 * Math.log10(Math.max(...a.map(Math.abs)))).toBeCloseTo(-50, 0)
  const mean = a.reduce((t, x) => t + x, 0) / a.length
  expect(Math.abs(mean)).toBeLessThan(1e-4)
})
