import { execFileSync, spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chance } from '../../src/edges/voice/model/draw.ts'
import { wavOf } from '../../src/edges/voice/sound.ts'

/** Twelve synthetic voices: espeak-ng's formant voices and flite's from recorded speech. Those of the second row were not tuned on. */
export const VOICES = [
  'en-us',
  'en-us+m3',
  'en-us+m7',
  'en-us+f1',
  'en-us+f4',
  'kal16',
  'slt',
  'awb',
  'en-us+m2',
  'en-us+m5',
  'en-us+f3',
  'rms',
] as const // prettier-ignore
export const UNTUNED: ReadonlySet<string> = new Set(VOICES.slice(8))

const there = (program: string): boolean => spawnSync('which', [program]).status === 0
/** What is not installed of what speaking and hearing need; empty where nothing is missing. */
export const missing = (...programs: string[]): string[] => [
  ...programs.filter(p => !there(p)),
  ...(programs.includes('pocketsphinx_batch') && !existsSync('/usr/share/pocketsphinx/model/en-us/cmudict-en-us.dict')
    ? ['pocketsphinx-en-us']
    : []),
]

/** The samples of a RIFF file of 16-bit mono, and their rate. Synthesisers that write to a pipe leave the lengths open. */
export const samplesIn = (b: Buffer): { sound: Float32Array; rate: number } => {
  const data = b.indexOf('data')
  const end = b.length - ((b.length - data - 8) % 2)
  const sound = new Float32Array((end - data - 8) / 2)
  for (let k = 0; k < sound.length; k++) sound[k] = b.readInt16LE(data + 8 + k * 2) / 32768
  return { sound, rate: b.readUInt32LE(24) }
}

/** flite writes to no pipe. */
const flite = (text: string, voice: string): Buffer => {
  const folder = mkdtempSync(join(tmpdir(), 'pilehand-say-'))
  try {
    execFileSync('flite', ['-voice', voice, '-t', text, '-o', join(folder, 'said.wav')])
    return readFileSync(join(folder, 'said.wav'))
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

const said = (text: string, voice: string): { sound: Float32Array; rate: number } =>
  samplesIn(
    voice.startsWith('en-us')
      ? execFileSync('espeak-ng', ['-v', voice, '-s', '160', '--stdout', text], { maxBuffer: 1 << 26 })
      : flite(text, voice),
  )

const power = (x: Float32Array): number => x.reduce((t, v) => t + v * v, 0) / Math.max(1, x.length)

/** Brown noise (its power falls with the square of the frequency), like wind and engines far off; the same seed gives the same. */
const brown = (length: number, seed: number): Float32Array => {
  const next = chance(seed)
  const out = new Float32Array(length)
  let at = 0
  for (let k = 0; k < length; k++) {
    at = 0.998 * at + (next() - 0.5)
    out[k] = at
  }
  return out
}

/** A sentence as a messenger would record it: said, a quarter of a second of room before and after, noise at `snr` dB, Opus at 24 kbit/s. */
export const noteOf = (text: string, voice: string, snr?: number, seed = 1): Uint8Array => {
  const { sound, rate } = said(text, voice)
  const pad = Math.round(rate / 4)
  const peak = sound.reduce((m, v) => Math.max(m, Math.abs(v)), 1e-6)
  const whole = new Float32Array(sound.length + 2 * pad)
  whole.set(
    sound.map(v => (v * 0.6) / peak),
    pad,
  )
  if (snr !== undefined) {
    const noise = brown(whole.length, seed)
    const by = Math.sqrt(power(whole) / power(noise) / 10 ** (snr / 10))
    for (let k = 0; k < whole.length; k++) whole[k]! += noise[k]! * by
  }
  return execFileSync('opusenc', ['--quiet', '--bitrate', '24', '-', '-'], { input: wavOf(whole, rate), maxBuffer: 1 << 26 })
}

/** 16-bit mono without a header at 16 kHz, or a RIFF file of the same: the recordings that packages ship. */
export const recorded = (file: string): Float32Array => {
  const b = readFileSync(file)
  if (b.toString('latin1', 0, 4) === 'RIFF') return samplesIn(b).sound
  return samplesIn(Buffer.concat([Buffer.from(wavOf(new Float32Array(0))), b])).sound
}
