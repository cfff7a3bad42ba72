import { spawn } from 'node:child_process'
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type NeuralEar, type NeuralOptions, neuralEar } from '../../src/edges/voice/ears/neural.ts'
import type { FarmWords, Heard } from '../../src/ports.ts'
import * as models from './ears.models.ts'
import * as onnx from './ears.onnx.ts'

// No weights of a real model can be shipped here. What runs are tiny models with a sentence built into them, through the real package:
// loading, search, hot words, tokens, times and probabilities are its own; how well a real model hears is not shown.

let root: string
let ears: NeuralEar[]
let options: string | undefined
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'pilehand-neural-'))
  ears = []
  options = process.env.NODE_OPTIONS
})
afterEach(() => {
  for (const e of ears) e.close()
  if (options === undefined) delete process.env.NODE_OPTIONS
  else process.env.NODE_OPTIONS = options
  rmSync(root, { recursive: true, force: true })
})

const NONE: FarmWords = { piles: [], boxes: [], people: [], words: [] }
const SOUND = Float32Array.from({ length: 32_000 }, (_, k) => Math.sin(k / 9) * 0.3)

const folder = (name: string, files: Record<string, Uint8Array | string>): string => {
  const at = join(root, name)
  mkdirSync(at)
  for (const [file, body] of Object.entries(files)) writeFileSync(join(at, file), body)
  return at
}
const ear = (at: string, o: Partial<NeuralOptions> = {}): NeuralEar => {
  const e = neuralEar({ folder: at, threads: 1, ...o })
  ears.push(e)
  return e
}
const said = (h: Heard): string => h.wordings[0]?.words.map(w => w.word).join(' ') ?? ''

/** "put seven loads on query", where "quarry" is nearly as likely. */
const TOKENS = ['<blk>', '<sos/eos>', '<unk>', '▁PUT', '▁SE', 'VEN', '▁LOADS', '▁ON', '▁QU', 'ERY', 'ARRY', 'Q', 'U', 'A', 'R', 'Y', 'E']
const SENTENCE: models.Sentence = {
  tokens: TOKENS,
  next: [
    ...[0, 3, 4, 5, 6, 7].map((from, k) => ({ from, to: [3, 4, 5, 6, 7, 8][k]!, logit: models.LOGIT })),
    { from: 8, to: 9, logit: models.LOGIT },
    { from: 8, to: 10, logit: models.LOGIT - 0.5 },
    { from: 9, to: 0, logit: models.LOGIT },
    { from: 10, to: 0, logit: models.LOGIT },
  ],
}
/** The probability of the favoured token among the others, which have logit 0 (softmax). */
const P = Math.exp(models.LOGIT) / (Math.exp(models.LOGIT) + TOKENS.length - 1)

const named = (parts: Record<string, Uint8Array>): Record<string, Uint8Array> =>
  Object.fromEntries(Object.entries(parts).map(([k, b]) => [`${k}.onnx`, b]))
/** A SentencePiece model: pieces 1 (piece 1, score 2). */
const bpeModel = (): Uint8Array =>
  onnx.joined(...TOKENS.slice(3).map((t, k) => onnx.block(1, onnx.joined(onnx.block(1, t), onnx.float(2, -1 - k / 10)))))
const transducer = (kind: 'offline' | 'streaming', more: Record<string, Uint8Array | string> = {}): string =>
  folder(`speech-${kind}`, {
    ...named(kind === 'offline' ? models.offlineTransducer(SENTENCE) : models.streamingTransducer(SENTENCE)),
    'tokens.txt': models.tokenLines(TOKENS),
    ...more,
  })

describe.each(['offline', 'streaming'] as const)('a transducer (%s)', kind => {
  it('is loaded and heard, word by word with times', async () => {
    const e = ear(transducer(kind))
    expect(e.langs).toEqual(['en'])
    await e.ready()
    const h = await e.hear(SOUND, NONE, 'en')
    expect(h).toMatchObject({ lang: 'en' })
    expect(said(h)).toBe('put seven loads on query')
    const w = h.wordings[0]!.words
    expect(w.map(x => x.from)).toEqual([...w.map(x => x.from)].sort((a, b) => a - b))
    expect(w.every(x => x.to > x.from && x.to <= 2 && x.sure > 0 && x.sure < 1)).toBe(true)
    // the streaming search flattens its distribution first; there only the order is checked
    if (kind === 'offline') expect(w[0]!.sure).toBeCloseTo(P, 4)
    expect(w[4]!.sure).toBeLessThan(w[0]!.sure)
  })
  it.each([
    ['bpe.model', bpeModel()],
    [
      'bpe.vocab',
      TOKENS.slice(3)
        .map((t, k) => `${t}\t${-1 - k / 10}\n`)
        .join(''),
    ], // prettier-ignore
  ])('hears the name of a pile before what sounds like it, with %s', async (file, body) => {
    const e = ear(transducer(kind, { [file]: body }))
    expect(said(await e.hear(SOUND, { ...NONE, piles: ['Quarry'] }, 'en'))).toBe('put seven loads on quarry')
    // and no more where the pile is gone
    expect(said(await e.hear(SOUND, NONE, 'en'))).toBe('put seven loads on query')
  })
  it('without word pieces hears without hot words', async () => {
    const e = ear(transducer(kind, { 'bpe.model': 'no such thing' }))
    expect(said(await e.hear(SOUND, { ...NONE, piles: ['Quarry'] }, 'en'))).toBe('put seven loads on query')
  })
})

describe('the other kinds', () => {
  const whisper = (stem: string, multilingual: boolean): string => {
    const w = models.whisper(multilingual)
    return folder('w', {
      [`${stem}-encoder.int8.onnx`]: w.encoder,
      [`${stem}-decoder.int8.onnx`]: w.decoder,
      [`${stem}-tokens.txt`]: w.tokens,
    })
  }
  it('Whisper hears the language that it is told', async () => {
    const e = ear(whisper('small', true))
    expect(e.langs).toEqual(['en', 'es'])
    expect(said(await e.hear(SOUND, NONE, 'es'))).toBe('pon siete loads')
    expect(said(await e.hear(SOUND, NONE, 'en'))).toBe('put seven loads')
  })
  it('Whisper of English only hears English', async () => {
    const e = ear(whisper('small.en', false))
    expect(e.langs).toEqual(['en'])
    expect(said(await e.hear(SOUND, NONE, 'en'))).toBe('put seven loads')
  })
  it('Whisper hears all of a note of more than thirty seconds', async () => {
    const h = await ear(whisper('small.en', false)).hear(new Float32Array(40 * 16_000).fill(0.01), NONE, 'en')
    expect(said(h)).toBe('put seven loads put seven loads')
    expect(h.wordings[0]!.words.at(-1)!.to).toBeCloseTo(40, 3)
  })
  it('SenseVoice', async () => {
    const tokens = ['<unk>', '<|en|>', '<|NEUTRAL|>', '<|Speech|>', '<|withitn|>', '▁put', '▁seven', '▁loads']
    const model = models.senseVoice(tokens, [1, 2, 3, 4, 5, 6, 7])
    expect(said(await ear(folder('s', { 'model.onnx': model, 'tokens.txt': models.tokenLines(tokens) })).hear(SOUND, NONE, 'en'))).toBe(
      'put seven loads',
    )
  })
  it('Paraformer', async () => {
    const tokens = ['<blank>', '<s>', '</s>', 'put', 'se@@', 'ven', 'loads']
    const model = models.paraformer(tokens, [3, 4, 5, 6, 2])
    expect(said(await ear(folder('p', { 'model.onnx': model, 'tokens.txt': models.tokenLines(tokens) })).hear(SOUND, NONE, 'en'))).toBe(
      'put seven loads',
    )
  })
  it('a transducer of NeMo, with the probabilities of its tokens', async () => {
    const tokens = ['<unk>', '▁Pon', '▁si', 'ete', '▁cargas', '▁en', '▁Lona', '.', '<blk>']
    const blank = tokens.length - 1
    const chain = [blank, 1, 2, 3, 4, 5, 6, 7, blank]
    const next = chain.slice(1).map((to, k) => ({ from: chain[k]!, to, logit: models.LOGIT }))
    const at = folder('nemo-parakeet-tdt-v3', {
      ...named(models.nemoTransducer({ tokens, next })),
      'tokens.txt': models.tokenLines(tokens),
    })
    const e = ear(at)
    expect(e.langs).toEqual(['en', 'es'])
    const h = await e.hear(SOUND, { ...NONE, piles: ['Loma'] }, 'es')
    expect(said(h)).toBe('Pon siete cargas en Lona.')
    const p = Math.exp(models.LOGIT) / (Math.exp(models.LOGIT) + tokens.length - 1)
    for (const w of h.wordings[0]!.words) expect(w.sure).toBeCloseTo(p, 4)
  })
  it('CTC of NeMo', async () => {
    const tokens = ['<unk>', '▁pon', '▁si', 'ete', '▁cargas', '<blk>']
    const e = ear(folder('nemo-ctc-es', { 'model.onnx': models.nemoCtc(tokens, [1, 2, 3, 4]), 'tokens.txt': models.tokenLines(tokens) }))
    expect(e.langs).toEqual(['es'])
    expect(said(await e.hear(SOUND, NONE, 'es'))).toBe('pon siete cargas')
  })
})

describe('what goes wrong is a fault with its code', () => {
  const thrown = (at: string): unknown => {
    try {
      return ear(at)
    } catch (error) {
      return error
    }
  }
  it('a folder that is not there, or is none', () => {
    const at = join(root, 'nowhere')
    expect(thrown(at)).toMatchObject({ name: 'EarFault', code: 'ear-model-folder', data: { folder: at, why: 'ENOENT' } })
    writeFileSync(at, '')
    expect(thrown(at)).toMatchObject({ code: 'ear-model-folder', data: { why: 'ENOTDIR' } })
  })
  it('a folder with other things', () => {
    const at = folder('m', { 'song.mp3': 'x' })
    expect(thrown(at)).toMatchObject({ code: 'ear-model-files', data: { folder: at, missing: '*.onnx' } })
    writeFileSync(join(at, 'model.onnx'), 'x')
    expect(thrown(at)).toMatchObject({ code: 'ear-model-files', data: { folder: at, missing: 'tokens.txt' } })
    writeFileSync(join(at, 'tokens.txt'), 'x 0\n')
    expect(thrown(at)).toMatchObject({ code: 'ear-model-unknown', data: { folder: at } })
  })

  const rubbish = Buffer.alloc(5000, 'rubbish ')
  const broken = async (at: string, why: RegExp): Promise<void> => {
    const error = await ear(at)
      .hear(SOUND, NONE, 'en')
      .catch(e => e)
    expect(error).toMatchObject({ name: 'EarFault', code: 'ear-model-broken', data: { folder: at, why: expect.stringMatching(why) } })
  }
  // the native code ends its process over each of these
  it.each([
    ['streaming', { 'encoder.onnx': rubbish, 'decoder.onnx': rubbish, 'joiner.onnx': rubbish, 'tokens.txt': 'a 0\n' }],
    ['transducer', { 'encoder.onnx': rubbish, 'decoder.onnx': rubbish, 'joiner.onnx': rubbish, 'tokens.txt': 'a 0\n' }],
    ['whisper', { 'tiny-encoder.onnx': rubbish, 'tiny-decoder.onnx': rubbish, 'tiny-tokens.txt': 'a 0\n' }],
    ['sense-voice', { 'model.onnx': rubbish, 'tokens.txt': 'a 0\n' }],
    ['paraformer', { 'model.onnx': rubbish, 'tokens.txt': 'a 0\n' }],
    ['nemo-ctc', { 'model.onnx': rubbish, 'tokens.txt': 'a 0\n' }],
  ])('corrupt files (%s)', async (name, files) => {
    await broken(folder(name, files), /protobuf/i)
  })
  it('files cut short, empty ones, and a model without its properties', async () => {
    const parts = named(models.offlineTransducer(SENTENCE))
    const tokens = { 'tokens.txt': models.tokenLines(TOKENS) }
    await broken(folder('cut', { ...parts, 'decoder.onnx': parts['decoder.onnx']!.subarray(0, 300), ...tokens }), /\S/)
    await broken(folder('empty', { ...parts, 'encoder.onnx': '', ...tokens }), /\S/)
    await broken(folder('bare', { ...parts, 'decoder.onnx': parts['encoder.onnx']!, ...tokens }), /\S/)
  })
  it('tokens that are none', async () => {
    await broken(transducer('offline', { 'tokens.txt': 'not a token list\n' }), /\S/)
  })
  it('a model that breaks off within a note; the next note is tried again', async () => {
    // the joiner wants another width than the encoder gives
    const narrow = onnx.model({
      nodes: [onnx.node('MatMul', ['encoder_out', 'w'], ['a']), onnx.node('Add', ['a', 'decoder_out'], ['logit'])],
      constants: [onnx.tensor('w', [3, TOKENS.length], new Float32Array(3 * TOKENS.length))],
      inputs: [onnx.value('encoder_out', onnx.FLOAT, ['N', 'D']), onnx.value('decoder_out', onnx.FLOAT, ['N', TOKENS.length])],
      outputs: [onnx.value('logit', onnx.FLOAT, ['N', TOKENS.length])],
      properties: { joiner_dim: 3 },
    })
    const at = transducer('offline', { 'joiner.onnx': narrow })
    const e = ear(at)
    for (const _ of [1, 2]) await expect(e.hear(SOUND, NONE, 'en')).rejects.toMatchObject({ name: 'EarFault', code: 'ear-died' })
    writeFileSync(join(at, 'joiner.onnx'), models.offlineTransducer(SENTENCE).joiner!)
    expect(said(await e.hear(SOUND, NONE, 'en'))).toBe('put seven loads on query')
  })

  /** Node's own hook: what is named in `blocked` is not found. */
  const without = (blocked: string): void => {
    const hook = `export const resolve=(s,c,n)=>{if(s===${JSON.stringify(blocked)})throw Object.assign(new Error('gone'),{code:'ERR_MODULE_NOT_FOUND'});return n(s,c)}`
    const code = `import{register}from'node:module';register(${JSON.stringify(`data:text/javascript,${encodeURIComponent(hook)}`)})`
    process.env.NODE_OPTIONS = `--import=data:text/javascript,${encodeURIComponent(code)}`
  }
  it('a package that is not installed, for hearing as for the check at the start', async () => {
    without('sherpa-onnx-node')
    const fault = { name: 'EarFault', code: 'ear-package-missing', data: { why: 'ERR_MODULE_NOT_FOUND' } }
    const e = ear(transducer('offline'))
    await expect(e.ready()).rejects.toMatchObject(fault)
    await expect(e.hear(SOUND, NONE, 'en')).rejects.toMatchObject(fault)
  })
  it('a process that cannot even start', async () => {
    process.env.NODE_OPTIONS = '--import=data:text/javascript,process.exit(3)'
    await expect(ear(transducer('offline')).hear(SOUND, NONE, 'en')).rejects.toMatchObject({
      code: 'ear-model-broken',
      data: { why: 'exit 3' },
    })
  })
  it('a note that takes too long', async () => {
    const e = ear(transducer('streaming'), { timeoutMs: 1 })
    await e.ready()
    await expect(e.hear(new Float32Array(120 * 16_000), NONE, 'en')).rejects.toMatchObject({ code: 'voice-slow' })
  })
  it('a model that takes too long to load', async () => {
    await expect(ear(transducer('offline'), { loadMs: 1 }).ready()).rejects.toMatchObject({
      code: 'ear-model-broken',
      data: { why: 'time' },
    })
  })
})

describe('runs', () => {
  it('one note after another, in the order that they came', async () => {
    const e = ear(transducer('offline', { 'bpe.model': bpeModel() }))
    const order: number[] = []
    const heard = await Promise.all(
      [['Quarry'], [], ['Quarry']].map((piles, k) =>
        e.hear(SOUND, { ...NONE, piles }, 'en').then(h => {
          order.push(k)
          return said(h).split(' ').at(-1)
        }),
      ),
    )
    expect(heard).toEqual(['quarry', 'query', 'quarry'])
    expect(order).toEqual([0, 1, 2])
  })
  it('no further where the signal ends it, and hears the next note', async () => {
    const e = ear(transducer('streaming'))
    await e.ready()
    const control = new AbortController()
    const going = e.hear(new Float32Array(120 * 16_000), NONE, 'en', control.signal)
    setImmediate(() => control.abort())
    await expect(going).rejects.toMatchObject({ name: 'AbortError' })
    await expect(e.hear(SOUND, NONE, 'en', AbortSignal.abort())).rejects.toMatchObject({ name: 'AbortError' })
    expect(said(await e.hear(SOUND, NONE, 'en'))).toBe('put seven loads on query')
  })
  it('until it is closed, also while it loads', async () => {
    const e = ear(transducer('offline'))
    const going = e.hear(SOUND, NONE, 'en')
    e.close()
    await expect(going).rejects.toMatchObject({ name: 'AbortError' })
    await expect(e.hear(SOUND, NONE, 'en')).rejects.toMatchObject({ name: 'AbortError' })
  })
  it('hears a click, and no sound at all', async () => {
    const e = ear(transducer('offline'))
    for (const length of [0, 1, 160]) await expect(e.hear(new Float32Array(length), NONE, 'en')).resolves.toMatchObject({ lang: 'en' })
  })
  it('keeps nobody from ending who forgets to close it', async () => {
    const script = join(root, 'forgets.mts')
    const source = new URL('../../src/edges/voice/ears/neural.ts', import.meta.url).pathname
    writeFileSync(
      script,
      `import { neuralEar } from ${JSON.stringify(source)}
       const h = await neuralEar({ folder: ${JSON.stringify(transducer('offline'))} }).hear(new Float32Array(16000), ${JSON.stringify(NONE)}, 'en')
       process.stdout.write(String(h.wordings.length))`,
    )
    const child = spawn(process.execPath, ['--import', 'tsx', script], { stdio: ['ignore', 'pipe', 'inherit'] })
    let out = ''
    child.stdout.on('data', d => {
      out += d
    })
    expect(await new Promise(done => child.on('close', done))).toBe(0)
    expect(out).toBe('1')
  })
})
