import { join } from 'node:path'
import type { Lang } from '../../../../ports.ts'
import { RATE } from '../../sound.ts'
import type { Model } from './kinds.ts'

/** What the recogniser's package is given; each model kind fills in its own part of it. */
export interface Options {
  /** Which of the package's two recognisers takes it. */
  online: boolean
  config: {
    featConfig: { sampleRate: number; featureDim: number }
    modelConfig: Record<string, unknown> & { tokens: string }
    decodingMethod: string
    maxActivePaths?: number
    hotwordsFile?: string
    hotwordsScore?: number
    enableEndpoint?: number
  }
}

/** Names to be heard sooner than what sounds like them. */
export interface HotWords {
  /** A file with one name a line. */
  file: string
  /** The pieces of the model's words with their scores, `piece TAB score` a line. */
  pieces: string
}

/** Log-mel bands that the models of these kinds take; those of NeMo say their own in the model. */
const BANDS = 80
/** Weight added to a token that carries a hot word on; the package's own example. */
const HOT_SCORE = 1.5
/** Hypotheses kept at a time, the package's default. */
const PATHS = 4

/**
 * Whether the model kind can be told names. Those of NeMo could be, but their probabilities then come with the names' own weight added
 * (measured with a made-up model), and a doubt that is hidden does more harm than a name misspelt.
 */
export const takesHotWords = (m: Model): boolean => (m.kind === 'streaming' || m.kind === 'transducer') && !m.nemo

const partOf = (m: Model, lang: Lang, at: (file: string) => string): Record<string, unknown> => {
  switch (m.kind) {
    case 'streaming':
    case 'transducer':
      return {
        transducer: { encoder: at(m.encoder), decoder: at(m.decoder), joiner: at(m.joiner) },
        // left out, the package guesses by the encoder's properties, which older exports do not have
        ...(m.kind === 'transducer' && { modelType: m.nemo ? 'nemo_transducer' : 'transducer' }),
      }
    case 'whisper':
      // English-only models refuse to be told a language
      return {
        whisper: {
          encoder: at(m.encoder),
          decoder: at(m.decoder),
          language: m.langs.includes('es') ? lang : 'en',
          task: 'transcribe',
          tailPaddings: -1,
        },
      }
    case 'senseVoice':
      return { senseVoice: { model: at(m.model), language: lang, useInverseTextNormalization: 1 } }
    case 'paraformer':
      return { paraformer: { model: at(m.model) } }
    case 'nemoCtc':
      return { nemoCtc: { model: at(m.model) } }
  }
}

/** The options for a model in `folder`. `hot` is left out by the kinds that do not take hot words. */
export const optionsFor = (m: Model, folder: string, lang: Lang, threads: number, hot?: HotWords): Options => {
  const at = (file: string): string => join(folder, file)
  const beam = takesHotWords(m)
  const told = beam ? hot : undefined
  return {
    online: m.kind === 'streaming',
    config: {
      featConfig: { sampleRate: RATE, featureDim: BANDS },
      modelConfig: {
        ...partOf(m, lang, at),
        tokens: at(m.tokens),
        numThreads: threads,
        provider: 'cpu',
        debug: 0,
        ...(told && { modelingUnit: 'bpe', bpeVocab: told.pieces }),
      },
      decodingMethod: beam ? 'modified_beam_search' : 'greedy_search',
      ...(beam && { maxActivePaths: PATHS }),
      ...(told && { hotwordsFile: told.file, hotwordsScore: HOT_SCORE }),
      ...(m.kind === 'streaming' && { enableEndpoint: 0 }),
    },
  }
}
