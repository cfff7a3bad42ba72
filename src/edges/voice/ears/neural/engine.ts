// @ts-expect-error it brings no types of its own, and need not be installed
import sherpa from 'sherpa-onnx-node'
import { RATE } from '../../sound.ts'
import { cutAtQuiet } from './cut.ts'
import type { Options } from './options.ts'

interface Stream {
  acceptWaveform(wave: { samples: Float32Array; sampleRate: number }): void
  /** The streaming ones only. */
  inputFinished(): void
}
interface Recogniser {
  createStream(): Stream
  decode(stream: Stream): void
  getResult(stream: Stream): unknown
  /** The streaming ones only. */
  isReady(stream: Stream): boolean
}
/** What is used of the package; its own description stands in its `types.js`. */
const { OfflineRecognizer, OnlineRecognizer } = sherpa as Record<
  'OfflineRecognizer' | 'OnlineRecognizer',
  new (
    config: object,
  ) => Recogniser
>

/** What was heard of a part of a note, which stands from `from` to `to`, in seconds: the package's own answer. */
export interface Part {
  answer: unknown
  from: number
  to: number
}

export type Engine = (sound: Float32Array) => Part[]

/** Whisper hears thirty seconds at a time; the others only get slower with length. */
const MOST_S = 28
/** Silence after the note, so that a streaming model brings its last words; the package's examples use this length. */
const TAIL_S = 0.66

const offline = (config: object): Engine => {
  const recognizer = new OfflineRecognizer(config)
  return sound => {
    let at = 0
    return cutAtQuiet(sound, RATE, MOST_S).map(samples => {
      const stream = recognizer.createStream()
      stream.acceptWaveform({ samples, sampleRate: RATE })
      recognizer.decode(stream)
      const from = at / RATE
      at += samples.length
      return { answer: recognizer.getResult(stream), from, to: at / RATE }
    })
  }
}

const online = (config: object): Engine => {
  const recognizer = new OnlineRecognizer(config)
  return sound => {
    const stream = recognizer.createStream()
    stream.acceptWaveform({ samples: sound, sampleRate: RATE })
    stream.acceptWaveform({ samples: new Float32Array(TAIL_S * RATE), sampleRate: RATE })
    stream.inputFinished()
    while (recognizer.isReady(stream)) recognizer.decode(stream)
    return [{ answer: recognizer.getResult(stream), from: 0, to: sound.length / RATE }]
  }
}

/**
 * Loads a model. Beware: the native code ends the whole process over a file that it does not like.
 *
 * Run so far with tiny made-up models of each kind only, never with the weights of a real one; the TDT search of NeMo not at all.
 */
export const openEngine = (o: Options): Engine => (o.online ? online(o.config) : offline(o.config))
