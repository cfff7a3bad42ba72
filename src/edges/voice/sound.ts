import { OggOpusDecoder } from 'ogg-opus-decoder'
import { EarFault } from './fault.ts'

/** What every recogniser here takes: mono, samples a second. */
export const RATE = 16_000
/** Opus always comes out at this rate (RFC 7845, section 5.1). */
const OPUS_RATE = 48_000
const STEP = OPUS_RATE / RATE

/**
 * Low-pass for taking every third sample: a windowed sinc, 63 taps, cut off at 7.2 kHz (the new half rate is 8 kHz), Hamming window.
 * Oppenheim, Schafer: Discrete-Time Signal Processing, "FIR filter design by windowing".
 */
const TAPS = (() => {
  const half = 31
  const cut = 7200 / OPUS_RATE
  const h = Array.from({ length: 2 * half + 1 }, (_, k) => {
    const n = k - half
    const sinc = n === 0 ? 2 * cut : Math.sin(2 * Math.PI * cut * n) / (Math.PI * n)
    return sinc * (0.54 + 0.46 * Math.cos((Math.PI * n) / half))
  })
  const sum = h.reduce((t, x) => t + x, 0)
  return Float64Array.from(h, x => x / sum)
})()

/** 48 kHz to 16 kHz. */
export const thinned = (wide: Float32Array): Float32Array => {
  const out = new Float32Array(Math.floor(wide.length / STEP))
  const half = (TAPS.length - 1) / 2
  for (let k = 0; k < out.length; k++) {
    let sum = 0
    const mid = k * STEP
    for (let t = 0; t < TAPS.length; t++) sum += TAPS[t]! * (wide[mid + t - half] ?? 0)
    out[k] = sum
  }
  return out
}

const isOgg = (b: Uint8Array, at: number): boolean => b[at] === 0x4f && b[at + 1] === 0x67 && b[at + 2] === 0x67 && b[at + 3] === 0x53

/**
 * Length of an OGG/Opus file in seconds by its last page (RFC 7845, section 4: the granule position counts samples at 48 kHz),
 * without decoding anything; undefined where it is no such file.
 */
export const secondsOf = (b: Uint8Array): number | undefined => {
  if (!isOgg(b, 0) || !new TextDecoder('latin1').decode(b.subarray(0, 200)).includes('OpusHead')) return undefined
  for (let at = b.length - 27; at >= 0; at--) {
    if (!isOgg(b, at)) continue
    const view = new DataView(b.buffer, b.byteOffset + at, 14)
    const granule = Number(view.getBigInt64(6, true))
    if (granule >= 0) return granule / OPUS_RATE
  }
  return undefined
}

/**
 * A voice note (OGG/Opus, as messengers record it) as 16 kHz mono, decoded in this process.
 *
 * @throws EarFault `voice-unreadable`
 */
export const soundOf = async (bytes: Uint8Array): Promise<Float32Array> => {
  if (secondsOf(bytes) === undefined) throw new EarFault('voice-unreadable', { why: 'OGG/Opus?' })
  const decoder = new OggOpusDecoder()
  try {
    await decoder.ready
    const { channelData, samplesDecoded } = await decoder.decodeFile(bytes)
    if (!samplesDecoded || !channelData.length) throw new EarFault('voice-unreadable', { why: 'OGG/Opus?' })
    const [first, ...rest] = channelData
    const mono = rest.length ? first!.map((x, k) => (x + (rest[0]![k] ?? 0)) / 2) : first!
    return thinned(mono)
  } catch (error) {
    if (error instanceof EarFault) throw error
    throw new EarFault('voice-unreadable', { why: error instanceof Error ? error.message.slice(0, 80) : '?' })
  } finally {
    decoder.free()
  }
}

/** Plain 16-bit PCM in a RIFF container, the header 44 bytes long. */
export const wavOf = (sound: Float32Array, rate = RATE): Buffer => {
  const b = Buffer.alloc(44 + sound.length * 2)
  b.write('RIFF', 0)
  b.writeUInt32LE(36 + sound.length * 2, 4)
  b.write('WAVEfmt ', 8)
  b.writeUInt32LE(16, 16)
  b.writeUInt16LE(1, 20)
  b.writeUInt16LE(1, 22)
  b.writeUInt32LE(rate, 24)
  b.writeUInt32LE(rate * 2, 28)
  b.writeUInt16LE(2, 32)
  b.writeUInt16LE(16, 34)
  b.write('data', 36)
  b.writeUInt32LE(sound.length * 2, 40)
  for (let k = 0; k < sound.length; k++) b.writeInt16LE(Math.max(-32768, Math.min(32767, Math.round(sound[k]! * 32767))), 44 + k * 2)
  return b
}

/** How far below full scale the noise floor is laid, as a factor (-50 dB). */
const FLOOR = 10 ** (-50 / 20)

/**
 * Makes quiet notes as loud as others: the loudest sample stands at 0.9, but nothing is raised more than twentyfold. A floor of faint
 * noise is laid under it, always the same: the recogniser was taught on rooms, and is led astray by digital silence.
 */
export const levelled = (sound: Float32Array): Float32Array => {
  let peak = 0
  for (const x of sound) peak = Math.max(peak, Math.abs(x))
  const by = peak > 0 ? Math.min(20, 0.9 / peak) : 1
  let seed = 1
  return sound.map(x => {
    // Park and Miller's generator (CACM 31(10), 1988): the same noise under every note
    seed = (seed * 16_807) % 2_147_483_647
    return x * by + (seed / 2_147_483_647 - 0.5) * 2 * FLOOR
  })
}
