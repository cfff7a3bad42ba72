import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import type { Ear, FarmWords, Heard, HeardWord, Lang } from '../../../ports.ts'
import { EarFault } from '../fault.ts'
import { RATE } from '../sound.ts'
import { piecesIn, readModel } from './neural/folder.ts'
import { type HotWords, optionsFor, takesHotWords } from './neural/options.ts'
import { hotLines } from './neural/pieces.ts'
import { Ended, type Recogniser, startRecogniser } from './neural/process.ts'
import { wordsIn } from './neural/results.ts'
import { wordingOf } from './words.ts'

export interface NeuralOptions {
  /** Folder of the model that the owner has downloaded. */
  folder: string
  /** The languages that the model hears, where its name says it wrong. */
  langs?: Lang[]
  /** Processor cores to use. */
  threads?: number
  /** For one note, ms, the loading not counted. */
  timeoutMs?: number
  /** For loading the model, ms. */
  loadMs?: number
}

/** An ear that can be asked at the start whether it works. */
export type NeuralEar = Ear & {
  /** Loads the model now, with a farm's names. Rejects as `hear` does. */
  ready(farm?: FarmWords): Promise<void>
}

const THREADS = 2
/** A large model hears a minute in about a minute on a small computer. Common practice, no source. */
const TIMEOUT_MS = 120_000
/** Two gigabytes from a memory card at 20 MB/s. Common practice, no source. */
const LOAD_MS = 120_000

/** A promise, or the signal's reason where that comes first; the promise goes on. */
const until = <T>(promise: Promise<T>, signal: AbortSignal): Promise<T> =>
  new Promise((done, fail) => {
    const aborted = (): void => fail(signal.reason)
    if (signal.aborted) return aborted()
    signal.addEventListener('abort', aborted, { once: true })
    promise.then(done, fail).finally(() => signal.removeEventListener('abort', aborted))
  })

const NO_NAMES: FarmWords = { piles: [], boxes: [], people: [], words: [] }

/** The system's code for what went wrong, or what is said of it. */
const whyOf = (error: unknown): string => (error as NodeJS.ErrnoException).code ?? (error instanceof Error ? error.message : '?')

const namesOfPieces = (lines: string): string[] => lines.split('\n').map(l => l.split(/[\t ]/)[0]!)

const namesOf = (farm: FarmWords): string[] => [...farm.piles, ...farm.boxes, ...farm.people, ...farm.words]

/**
 * A recogniser of the package `sherpa-onnx-node` with a model folder that the owner has downloaded. It runs in a process of its own,
 * started and loaded at the first note, loaded again where another language or other names are wanted, ended by `close`.
 *
 * @throws EarFault at once where the folder holds no model: `ear-model-folder` (`folder`, `why`), `ear-model-files` (`folder`, `missing`),
 * `ear-model-unknown` (`folder`). `hear` and `ready` reject with `ear-package-missing` (`why`), `ear-model-broken` (`folder`, `why`),
 * `voice-slow`, `ear-died` (`why`); with the signal's reason where `signal` ended it.
 */
export const neuralEar = (o: NeuralOptions): NeuralEar => {
  const folder = resolve(o.folder)
  const model = readModel(folder)
  const langs = o.langs ?? model.langs
  const pieces = takesHotWords(model) ? piecesIn(folder) : undefined
  const closed = new AbortController()
  let loaded: { key: string; recogniser: Promise<Recogniser> } | undefined
  let last: Promise<unknown> = Promise.resolve()

  /** @throws EarFault */
  const load = async (lang: Lang, hot: string): Promise<Recogniser> => {
    const limit = AbortSignal.timeout(o.loadMs ?? LOAD_MS)
    const recogniser = startRecogniser()
    let work: string | undefined
    try {
      let files: HotWords | undefined
      if (hot) {
        work = await mkdtemp(join(tmpdir(), 'pilehand-hot-'))
        files = { file: join(work, 'names.txt'), pieces: join(work, 'pieces.txt') }
        await writeFile(files.file, hot)
        await writeFile(files.pieces, pieces!)
      }
      const open = optionsFor({ ...model, langs }, folder, lang, o.threads ?? THREADS, files)
      const report = await recogniser.ask({ open }, AbortSignal.any([limit, closed.signal]))
      if ('ready' in report) return recogniser
      const { failed, why } = 'failed' in report ? report : { failed: 'model', why: '?' }
      throw failed === 'package'
        ? new EarFault('ear-package-missing', { why: why.slice(0, 80) })
        : new EarFault('ear-model-broken', { folder, why })
    } catch (error) {
      recogniser.stop()
      if (closed.signal.aborted || error instanceof EarFault) throw error
      throw new EarFault('ear-model-broken', { folder, why: limit.aborted ? 'time' : whyOf(error) })
    } finally {
      // both files are read by now
      if (work) await rm(work, { recursive: true, force: true })
    }
  }

  /** The process that has this model with these names, started where there is none. */
  const recogniserFor = async (lang: Lang, farm: FarmWords): Promise<Recogniser> => {
    const hot = pieces === undefined ? '' : hotLines(namesOf(farm), namesOfPieces(pieces))
    // only Whisper is told the language when it is loaded
    const key = JSON.stringify([model.kind === 'whisper' ? lang : '', hot])
    const now = await loaded?.recogniser.catch(() => undefined)
    if (now && !now.ended && loaded?.key === key) return now
    // two models at a time would not fit into a small computer
    now?.stop()
    closed.signal.throwIfAborted()
    const recogniser = load(lang, hot)
    recogniser.catch(() => undefined)
    loaded = { key, recogniser }
    return recogniser
  }

  const listen = async (sound: Float32Array, farm: FarmWords, lang: Lang, signal: AbortSignal): Promise<Heard> => {
    const recogniser = await until(recogniserFor(lang, farm), signal)
    const limit = AbortSignal.timeout(o.timeoutMs ?? TIMEOUT_MS)
    try {
      const report = await recogniser.ask({ sound }, AbortSignal.any([limit, signal]))
      if (!('parts' in report)) throw new EarFault('ear-died', { why: 'failed' in report ? report.why : '?' })
      const words = report.parts.flatMap((p): HeardWord[] => wordsIn(p.answer, p.from, p.to) ?? [])
      return { wordings: words.length ? [wordingOf(words)] : [], lang }
    } catch (error) {
      if (error instanceof Ended) throw new EarFault('ear-died', { why: error.message })
      if (limit.aborted && !signal.aborted) throw new EarFault('voice-slow')
      throw error
    }
  }

  /** Farms may ask at the same time; the process hears one note after another. */
  const inTurn = <T>(work: () => Promise<T>, signal: AbortSignal): Promise<T> => {
    const turn = last.then(() => {
      signal.throwIfAborted()
      return work()
    })
    last = turn.catch(() => undefined)
    return until(turn, signal)
  }

  return {
    name: 'neural',
    langs,
    hear: (sound, farm, lang, signal) => {
      const ended = signal ? AbortSignal.any([signal, closed.signal]) : closed.signal
      return inTurn(() => listen(sound.length < LEAST ? padded(sound) : sound, farm, lang, ended), ended)
    },
    ready: (farm = NO_NAMES) =>
      inTurn(async () => {
        await recogniserFor(langs[0] ?? 'en', farm)
      }, closed.signal),
    close: () => {
      closed.abort()
      void loaded?.recogniser.then(
        p => p.stop(),
        () => undefined,
      )
    },
  }
}

/** Some models fail over less than this, samples. */
const LEAST = RATE / 2

const padded = (sound: Float32Array): Float32Array => {
  const out = new Float32Array(LEAST)
  out.set(sound)
  return out
}
