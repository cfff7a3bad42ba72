import { describe, expect, it } from 'vitest'
import { cutAtQuiet } from '../../src/edges/voice/ears/neural/cut.ts'
import { type Folder, langsByName, type Model, modelIn } from '../../src/edges/voice/ears/neural/kinds.ts'
import { optionsFor, takesHotWords } from '../../src/edges/voice/ears/neural/options.ts'
import { casing, hotLines, pieceLines, piecesOf } from '../../src/edges/voice/ears/neural/pieces.ts'
import { wordsIn } from '../../src/edges/voice/ears/neural/results.ts'
import { bareWord, wordsOf } from '../../src/edges/voice/ears/words.ts'

/** Made by the reference library: sentencepiece 0.2.2 (PyPI), a unigram model of 40 pieces, normalisation "identity", from shuffled words. */
const TINY =
  'Cg4KBTx1bms+FQAAAAAYAgoMCgM8cz4VAAAAABgDCg0KBDwvcz4VAAAAABgDCg4KBTxibGs+FQAAAAAYBAoNCgbiloFUSEUVIjQAwAoOCgfiloFQSUxFFXwlM8AKDgoH4paBRlJPTRVwJTXACgwKBeKWgUlUFeYMPcAKDgoH4paBVEhFThUP5z/ACg4KB+KWgU9WRVIV6RhBwAoMCgXiloFPRhWw0kHACg4KB+KWgUNPUk4VI9ZBwAoNCgbiloFQVVQVaqlCwAoPCgjiloFDT01FUxXUq0LAChAKCeKWgUJFRk9SRRVtrELAChAKCeKWgVFVQVJSWRX2g0PACgwKBeKWgU9OFbM4RcAKDQoG4paBQU5EFVbjR8AKCgoD4paBFVfr4MAKCAoBVxVhzwzBCggKAVkVys8MwQoICgFRFTLQDMEKCAoBQhWb0AzBCggKAUQVBNEMwQoICgFVFW3RDMEKCAoBTBXW0QzBCggKAU0VP9IMwQoICgFQFajSDMEKCAoBVhUQ0wzBCggKAUMVedMMwQoICgFGFeLTDMEKCAoBSRVL1AzBCggKAVMVtNQMwQoICgFBFR3VDMEKCAoBSBWG1QzBCggKAVQV7tUMwQoICgFSFVfWDMEKCAoBTxXA1gzBCggKAUUVKdcMwQoICgFOFSnXDMESDBgBICj6AQU8YmxrPhoMCghpZGVudGl0eRIA'

const folder = (name: string, files: string[], within: Record<string, string> = {}): Folder => ({ name, files, peek: f => within[f] ?? '' })
const kindOf = (f: Folder): unknown => {
  const r = modelIn(f)
  return 'model' in r ? r.model : r
}

describe('what a folder holds is told by its files', () => {
  // the names of files and folders are those under which such models are published (from memory)
  it('a streaming transducer, the smaller file of each part but for the decoder', () => {
    const parts = ['encoder', 'decoder', 'joiner'].map(p => `${p}-epoch-99-avg-1-chunk-16-left-128`)
    const files = [...parts.flatMap(p => [`${p}.onnx`, `${p}.int8.onnx`]), 'tokens.txt', 'bpe.model', 'README.md', 'test_wavs']
    expect(kindOf(folder('sherpa-onnx-streaming-zipformer-en-2023-06-26', files))).toEqual({
      kind: 'streaming',
      encoder: `${parts[0]}.int8.onnx`,
      decoder: `${parts[1]}.onnx`,
      joiner: `${parts[2]}.int8.onnx`,
      tokens: 'tokens.txt',
      nemo: false,
      langs: ['en'],
    })
  })
  it('streaming also where only the properties within the encoder say so', () => {
    const files = ['encoder.onnx', 'decoder.onnx', 'joiner.onnx', 'tokens.txt']
    expect(kindOf(folder('speech', files))).toMatchObject({ kind: 'transducer' })
    expect(kindOf(folder('speech', files, { 'encoder.onnx': '..r\x14\n\x10decode_chunk_len\x1232' }))).toMatchObject({ kind: 'streaming' })
  })
  it('an offline transducer, of the NeMo kind by its name', () => {
    const files = ['encoder.int8.onnx', 'decoder.int8.onnx', 'joiner.int8.onnx', 'tokens.txt']
    expect(kindOf(folder('sherpa-onnx-nemo-parakeet-tdt-0.6b-v3-int8', files))).toMatchObject({
      kind: 'transducer',
      nemo: true,
      langs: ['en', 'es'],
    })
    expect(kindOf(folder('sherpa-onnx-zipformer-gigaspeech-2023-12-12', files))).toMatchObject({ kind: 'transducer', nemo: false })
  })
  it('Whisper, with the languages by its name, and the one whose tokens are there', () => {
    const files = (stem: string): string[] =>
      ['encoder.onnx', 'decoder.onnx', 'encoder.int8.onnx', 'decoder.int8.onnx'].map(f => `${stem}-${f}`)
    expect(kindOf(folder('sherpa-onnx-whisper-small', [...files('small'), 'small-tokens.txt']))).toEqual({
      kind: 'whisper',
      encoder: 'small-encoder.int8.onnx',
      decoder: 'small-decoder.int8.onnx',
      tokens: 'small-tokens.txt',
      langs: ['en', 'es'],
    })
    for (const stem of ['base.en', 'distil-small.en', 'distil-large-v3.5'])
      expect(kindOf(folder('w', [...files(stem), `${stem}-tokens.txt`]))).toMatchObject({ kind: 'whisper', langs: ['en'] })
    expect(kindOf(folder('w', [...files('base'), ...files('tiny'), 'tiny-tokens.txt']))).toMatchObject({
      encoder: 'tiny-encoder.int8.onnx',
    })
  })
  it('SenseVoice, Paraformer and CTC, which look alike, by name, tokens or properties', () => {
    const files = ['model.int8.onnx', 'model.onnx', 'tokens.txt']
    expect(kindOf(folder('sherpa-onnx-sense-voice-zh-en-ja-ko-yue-2024-07-17', files))).toMatchObject({
      kind: 'senseVoice',
      model: 'model.int8.onnx',
    })
    expect(kindOf(folder('m', files, { 'tokens.txt': '<|zh|> 24884\n<|en|> 24885\n' }))).toMatchObject({
      kind: 'senseVoice',
      langs: ['en'],
    })
    expect(kindOf(folder('sherpa-onnx-paraformer-en-2024-03-09', files))).toMatchObject({ kind: 'paraformer' })
    expect(kindOf(folder('m', files, { 'model.int8.onnx': 'model_type\x12\x0aparaformer' }))).toMatchObject({ kind: 'paraformer' })
    expect(kindOf(folder('sherpa-onnx-nemo-fast-conformer-ctc-es-1424', files))).toMatchObject({ kind: 'nemoCtc', langs: ['es'] })
  })
  it('or what is missing', () => {
    expect(kindOf(folder('m', []))).toEqual({ missing: '*.onnx' })
    expect(kindOf(folder('m', ['notes.txt', 'tokens.txt']))).toEqual({ missing: '*.onnx' })
    expect(kindOf(folder('m', ['encoder.onnx', 'decoder.onnx', 'joiner.onnx']))).toEqual({ missing: 'tokens.txt' })
    expect(kindOf(folder('m', ['encoder.onnx', 'decoder.onnx', 'tokens.txt']))).toEqual({ missing: 'joiner.onnx' })
    expect(kindOf(folder('m', ['encoder.onnx', 'joiner.onnx', 'tokens.txt']))).toEqual({ missing: 'decoder.onnx' })
    expect(kindOf(folder('m', ['tiny-encoder.onnx', 'tiny-tokens.txt']))).toEqual({ missing: 'tiny-decoder.onnx' })
    expect(kindOf(folder('m', ['model.onnx', 'tokens.txt']))).toEqual({ unknown: true })
    expect(kindOf(folder('m', ['silero_vad.onnx', 'tokens.txt']))).toEqual({ unknown: true })
  })
  it('languages stand between the dashes of a name', () => {
    expect(langsByName('sherpa-onnx-streaming-zipformer-es-kroko-2025-08-06')).toEqual(['es'])
    expect(langsByName('sherpa-onnx-nemo-fast-conformer-transducer-en-de-es-fr-14288')).toEqual(['en', 'es'])
    expect(langsByName('speech-model')).toEqual(['en'])
  })
})

describe('the options of each kind', () => {
  const trio = { encoder: 'e.onnx', decoder: 'd.onnx', joiner: 'j.onnx', tokens: 'tokens.txt' }
  const hot = { file: '/w/names.txt', pieces: '/w/pieces.txt' }
  const common = { tokens: '/m/tokens.txt', numThreads: 2, provider: 'cpu', debug: 0 }
  const featConfig = { sampleRate: 16_000, featureDim: 80 }
  const three = { encoder: '/m/e.onnx', decoder: '/m/d.onnx', joiner: '/m/j.onnx' }
  it('streaming transducer', () => {
    const m: Model = { kind: 'streaming', ...trio, nemo: false, langs: ['en'] }
    expect(optionsFor(m, '/m', 'en', 2, hot)).toEqual({
      online: true,
      config: {
        featConfig,
        modelConfig: { transducer: three, ...common, modelingUnit: 'bpe', bpeVocab: '/w/pieces.txt' },
        decodingMethod: 'modified_beam_search',
        maxActivePaths: 4,
        hotwordsFile: '/w/names.txt',
        hotwordsScore: 1.5,
        enableEndpoint: 0,
      },
    })
    expect(optionsFor(m, '/m', 'en', 2).config).not.toHaveProperty('hotwordsFile')
  })
  it('offline transducer', () => {
    expect(optionsFor({ kind: 'transducer', ...trio, nemo: false, langs: ['en'] }, '/m', 'en', 2, hot)).toEqual({
      online: false,
      config: {
        featConfig,
        modelConfig: { transducer: three, modelType: 'transducer', ...common, modelingUnit: 'bpe', bpeVocab: '/w/pieces.txt' },
        decodingMethod: 'modified_beam_search',
        maxActivePaths: 4,
        hotwordsFile: '/w/names.txt',
        hotwordsScore: 1.5,
      },
    })
  })
  it('transducer of NeMo: without hot words, which would hide its doubts', () => {
    const m: Model = { kind: 'transducer', ...trio, nemo: true, langs: ['en', 'es'] }
    expect(takesHotWords(m)).toBe(false)
    expect(optionsFor(m, '/m', 'es', 2, hot)).toEqual({
      online: false,
      config: { featConfig, modelConfig: { transducer: three, modelType: 'nemo_transducer', ...common }, decodingMethod: 'greedy_search' },
    })
  })
  it('Whisper: the language, which the English-only models are not asked for', () => {
    const m: Model = { kind: 'whisper', encoder: 'e.onnx', decoder: 'd.onnx', tokens: 'tokens.txt', langs: ['en', 'es'] }
    const whisper = { encoder: '/m/e.onnx', decoder: '/m/d.onnx', language: 'es', task: 'transcribe', tailPaddings: -1 }
    expect(optionsFor(m, '/m', 'es', 2, hot)).toEqual({
      online: false,
      config: { featConfig, modelConfig: { whisper, ...common }, decodingMethod: 'greedy_search' },
    })
    expect(optionsFor({ ...m, langs: ['en'] }, '/m', 'es', 2).config.modelConfig).toMatchObject({ whisper: { language: 'en' } })
  })
  it('SenseVoice, Paraformer, CTC of NeMo', () => {
    const single = { model: 'model.onnx', tokens: 'tokens.txt', langs: ['en'] } satisfies Partial<Model>
    const part = (kind: 'senseVoice' | 'paraformer' | 'nemoCtc') => optionsFor({ kind, ...single }, '/m', 'en', 2, hot)
    const whole = (modelConfig: object) => ({
      online: false,
      config: { featConfig, modelConfig: { ...modelConfig, ...common }, decodingMethod: 'greedy_search' },
    })
    expect(part('senseVoice')).toEqual(whole({ senseVoice: { model: '/m/model.onnx', language: 'en', useInverseTextNormalization: 1 } }))
    expect(part('paraformer')).toEqual(whole({ paraformer: { model: '/m/model.onnx' } }))
    expect(part('nemoCtc')).toEqual(whole({ nemoCtc: { model: '/m/model.onnx' } }))
  })
})

describe('word pieces', () => {
  const b = Buffer.from(TINY, 'base64')
  it('of a SentencePiece model are as its own library gives them', () => {
    const pieces = piecesOf(b)
    expect(pieces).toHaveLength(40)
    // id_to_piece and get_score of sentencepiece 0.2.2
    const is = (id: number, piece: string, score: number): void => {
      expect(pieces[id]!.piece).toBe(piece)
      expect(pieces[id]!.score).toBeCloseTo(score, 4)
    }
    is(0, '<unk>', 0)
    is(3, '<blk>', 0)
    is(4, '▁THE', -2.0032)
    is(15, '▁QUARRY', -3.0549)
    is(18, '▁', -7.0287)
    is(39, 'N', -8.8025)
    expect(pieceLines(pieces).split('\n')[4]).toMatch(/^▁THE\t-2\.003/)
  })
  it('of a file that is none, or is cut short, are refused', () => {
    for (const bad of [Buffer.from('not a model'), b.subarray(0, 77), Buffer.alloc(0), Buffer.alloc(64, 0xff)])
      expect(() => piecesOf(bad)).toThrow(RangeError)
  })
  it('tell the letters that hot words must have', () => {
    const pieces = piecesOf(b).map(p => p.piece)
    expect(casing(pieces)).toBe('upper')
    expect(casing(['<blk>', '▁the'])).toBe('lower')
    expect(casing(['▁The'])).toBe('both')
    expect(hotLines(['Quarry', 'quarry', 'over the  creek', 'pile #2', 'año', '...'], pieces)).toBe('QUARRY\n')
    expect(hotLines(['Over-the pond'], pieces)).toBe('OVER THE POND\n')
    expect(hotLines(['Loma'], ['▁loma'])).toBe('loma\n')
  })
})

describe('a long note', () => {
  it('is cut where it is quiet, and nothing of it is lost', () => {
    const rate = 1000
    const sound = Float32Array.from({ length: 70 * rate }, (_, k) => Math.sin(k))
    sound.fill(0, 24.5 * rate, 25 * rate)
    sound.fill(0, 5 * rate, 6 * rate)
    const parts = cutAtQuiet(sound, rate, 28)
    expect(parts[0]!.length / rate).toBeGreaterThan(24.5)
    expect(parts[0]!.length / rate).toBeLessThan(25)
    expect(parts.every(p => p.length <= 28 * rate && p.length > 0)).toBe(true)
    expect(Float32Array.from(parts.flatMap(p => [...p]))).toEqual(sound)
  })
  it('that is short enough stays whole', () => {
    const sound = new Float32Array(28_000)
    expect(cutAtQuiet(sound, 1000, 28)).toEqual([sound])
  })
})

describe('words', () => {
  it('of a result run together from tokens', () => {
    const w = wordsIn(
      { text: ' PUT SEVEN', tokens: [' PUT', ' SE', 'VEN'], timestamps: [0.4, 0.8, 1], ys_probs: [-0.1, -0.2, -0.9] },
      10,
      12,
    )!
    expect(w.map(x => [x.word, x.from, x.to])).toEqual([
      ['put', 10.4, 10.8],
      ['seven', 10.8, 11.6],
    ])
    expect(w[0]!.sure).toBeCloseTo(Math.exp(-0.1), 9)
    expect(w[1]!.sure).toBeCloseTo(Math.exp(-0.9), 9)
  })
  it('of a result without text are none, and of no result undefined', () => {
    expect(wordsIn({ text: '' }, 0, 1)).toEqual([])
    expect(wordsIn({ text: ' <unk> ' }, 0, 1)).toEqual([])
    expect(wordsIn({ words: 7 }, 0, 1)).toBeUndefined()
    expect(wordsIn(null, 0, 1)).toBeUndefined()
  })
  it('bare of what stands around them', () => {
    expect(['Quarry,', '¿Dónde?', '34.5%', '"north"', "don't", '—', '1,200', '$55.', '-'].map(bareWord)).toEqual([
      'quarry',
      'dónde',
      '34.5%',
      'north',
      "don't",
      '',
      '1,200',
      '$55',
      '',
    ])
  })
  it('are those of the text, whatever was timed', () => {
    const timed = [{ word: 'zebra', from: 0, to: 1, sure: 0.1 }]
    expect(wordsOf('seven loads', timed, { from: 0, to: 2 }, 0.6)).toEqual([
      { word: 'seven', from: 0, to: 1, sure: 0.6 },
      { word: 'loads', from: 1, to: 2, sure: 0.6 },
    ])
    expect(wordsOf('', timed, { from: 0, to: 2 })).toEqual([])
  })
})
