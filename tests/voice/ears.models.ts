import { type Bytes, FLOAT, INT32, INT64, model, node, tensor, value } from './ears.onnx.ts'

// Tiny models of each kind, written by hand: they "hear" a sentence that is built into them, whatever the sound. The recogniser's
// package loads and decodes them as it does real ones. Names of inputs, outputs and properties are those that it asks for.

const BANDS = 80
/** Logit of the token that follows; the others have 0. */
export const LOGIT = 5

export interface Sentence {
  tokens: string[]
  /** After token `from` (0: at the beginning) the token `to` has this logit. */
  next: { from: number; to: number; logit: number }[]
}

const tableOf = (s: Sentence, bias = 0): Float32Array => {
  const v = s.tokens.length
  const table = new Float32Array(v * v).fill(bias)
  for (const { from, to, logit } of s.next) table[from * v + to] = logit
  return table
}

/** Decoder and joiner of a transducer without a memory: what follows is told by the last token alone. */
const decoderAndJoiner = (s: Sentence): { decoder: Bytes; joiner: Bytes } => {
  const v = s.tokens.length
  const decoder = model({
    nodes: [node('Gather', ['y', 'one'], ['last'], { axis: 1 }), node('Gather', ['table', 'last'], ['decoder_out'], { axis: 0 })],
    constants: [tensor('one', [], new BigInt64Array([1n])), tensor('table', [v, v], tableOf(s))],
    inputs: [value('y', INT64, ['N', 2])],
    outputs: [value('decoder_out', FLOAT, ['N', v])],
    properties: { context_size: 2, vocab_size: v },
  })
  const joiner = model({
    nodes: [node('MatMul', ['encoder_out', 'zero'], ['nothing']), node('Add', ['nothing', 'decoder_out'], ['logit'])],
    constants: [tensor('zero', [BANDS, v], new Float32Array(BANDS * v))],
    inputs: [value('encoder_out', FLOAT, ['N', BANDS]), value('decoder_out', FLOAT, ['N', v])],
    outputs: [value('logit', FLOAT, ['N', v])],
    properties: { joiner_dim: BANDS },
  })
  return { decoder, joiner }
}

const pass = (from: string, to: string): Bytes => node('Identity', [from], [to])

export const offlineTransducer = (s: Sentence): Record<string, Bytes> => ({
  ...decoderAndJoiner(s),
  encoder: model({
    nodes: [pass('x', 'encoder_out'), pass('x_lens', 'encoder_out_lens')],
    inputs: [value('x', FLOAT, ['N', 'T', BANDS]), value('x_lens', INT64, ['N'])],
    outputs: [value('encoder_out', FLOAT, ['N', 'T', BANDS]), value('encoder_out_lens', INT64, ['N'])],
  }),
})

/** An encoder of the LSTM kind, the one with the fewest states. */
export const streamingTransducer = (s: Sentence): Record<string, Bytes> => ({
  ...decoderAndJoiner(s),
  encoder: model({
    nodes: [node('Slice', ['x', 'zero', 'four', 'axis'], ['encoder_out']), pass('state0', 'next_state0'), pass('state1', 'next_state1')],
    constants: [
      tensor('zero', [1], new BigInt64Array([0n])),
      tensor('four', [1], new BigInt64Array([4n])),
      tensor('axis', [1], new BigInt64Array([1n])),
    ],
    inputs: [value('x', FLOAT, ['N', 9, BANDS]), value('state0', FLOAT, [1, 'N', 4]), value('state1', FLOAT, [1, 'N', 4])],
    outputs: [
      value('encoder_out', FLOAT, ['N', 4, BANDS]),
      value('next_state0', FLOAT, [1, 'N', 4]),
      value('next_state1', FLOAT, [1, 'N', 4]),
    ],
    properties: { model_type: 'lstm', num_encoder_layers: 1, T: 9, decode_chunk_len: 4, rnn_hidden_size: 4, d_model: 4 },
  }),
})

export const tokenLines = (tokens: string[]): string => tokens.map((t, k) => `${t} ${k}\n`).join('')

/** Ids of the marks in the tokens below; a model of English only has them too, but for the languages. */
const W = { eot: 5, sot: 6, transcribe: 7, translate: 8, noTimes: 9, noSpeech: 10, en: 11, es: 12 }

/** Says "put seven loads" where it is told English, "pon siete loads" where Spanish: it looks at the largest id that it is given. */
export const whisper = (multilingual: boolean): { encoder: Bytes; decoder: Bytes; tokens: string } => {
  const words = [' put', ' pon', ' seven', ' siete', ' loads']
  const v = 13
  const follow: [number, number][] = [
    [0, 2],
    [1, 3],
    [2, 4],
    [3, 4],
    [4, W.eot],
  ] // prettier-ignore
  const start: [number, number][] = multilingual
    ? [
        [W.en, 0],
        [W.es, 1],
      ]
    : [[W.noTimes, 0]] // prettier-ignore
  const table = (rows: [number, number][]): Float32Array => {
    const t = new Float32Array(v * v)
    for (const [from, to] of rows) t[from * v + to] = LOGIT
    return t
  }
  const properties = {
    model_type: multilingual ? 'whisper-tiny' : 'whisper-tiny.en',
    n_mels: 80,
    n_audio_ctx: 1500,
    n_audio_state: 4,
    n_audio_head: 1,
    n_audio_layer: 1,
    n_vocab: v,
    n_text_ctx: 448,
    n_text_state: 4,
    n_text_head: 1,
    n_text_layer: 1,
    sot_sequence: multilingual ? `${W.sot},${W.en},${W.transcribe}` : `${W.sot}`,
    all_language_tokens: `${W.en},${W.es}`,
    all_language_codes: 'en,es',
    sot: W.sot,
    sot_index: 0,
    eot: W.eot,
    blank_id: 4,
    is_multilingual: multilingual ? 1 : 0,
    no_speech: W.noSpeech,
    non_speech_tokens: `${W.noSpeech}`,
    transcribe: W.transcribe,
    translate: W.translate,
    sot_prev: W.noSpeech,
    sot_lm: W.noSpeech,
    no_timestamps: W.noTimes,
  }
  const encoder = model({
    nodes: [
      node('ReduceMean', ['mel'], ['m'], { axes: [1, 2], keepdims: 1 }),
      node('Expand', ['m', 'shape'], ['e']),
      node('Unsqueeze', ['e', 'first'], ['n_layer_cross_k']),
      pass('n_layer_cross_k', 'n_layer_cross_v'),
    ],
    constants: [tensor('shape', [3], new BigInt64Array([1n, 1500n, 4n])), tensor('first', [1], new BigInt64Array([0n]))],
    inputs: [value('mel', FLOAT, ['N', 80, 'T'])],
    outputs: ['k', 'v'].map(x => value(`n_layer_cross_${x}`, FLOAT, [1, 'N', 1500, 4])),
    properties,
  })
  const decoder = model({
    nodes: [
      node('Gather', ['follow', 'tokens'], ['a'], { axis: 0 }),
      node('ReduceMax', ['tokens'], ['most'], { axes: [1], keepdims: 1 }),
      node('Gather', ['start', 'most'], ['b'], { axis: 0 }),
      node('Add', ['a', 'b'], ['logits']),
      pass('in_n_layer_self_k_cache', 'out_n_layer_self_k_cache'),
      pass('in_n_layer_self_v_cache', 'out_n_layer_self_v_cache'),
    ],
    constants: [tensor('follow', [v, v], table(follow)), tensor('start', [v, v], table(start))],
    inputs: [
      value('tokens', INT64, ['N', 'n']),
      ...['k', 'v'].map(x => value(`in_n_layer_self_${x}_cache`, FLOAT, [1, 'N', 448, 4])),
      ...['k', 'v'].map(x => value(`n_layer_cross_${x}`, FLOAT, [1, 'N', 1500, 4])),
      value('offset', INT64, [1]),
    ],
    outputs: [value('logits', FLOAT, ['N', 'n', v]), ...['k', 'v'].map(x => value(`out_n_layer_self_${x}_cache`, FLOAT, [1, 'N', 448, 4]))],
    properties,
  })
  return { encoder, decoder, tokens: words.map((w, k) => `${Buffer.from(w).toString('base64')} ${k}\n`).join('') }
}

/** One network of frames to tokens (CTC), as SenseVoice is exported: the first frames say the sentence, all the others the blank. */
export const senseVoice = (tokens: string[], said: number[]): Bytes => {
  const v = tokens.length
  const frames = 8
  const logits = new Float32Array(frames * v)
  for (let k = 0; k < frames; k++) logits[k * v + (said[k] ?? 0)] = LOGIT
  return model({
    nodes: [pass('constant', 'logits')],
    constants: [tensor('constant', [1, frames, v], logits)],
    inputs: [
      value('x', FLOAT, ['N', 'T', 560]),
      value('x_length', INT32, ['N']),
      value('language', INT32, ['N']),
      value('text_norm', INT32, ['N']),
    ],
    outputs: [value('logits', FLOAT, [1, frames, v])],
    properties: {
      model_type: 'sense_voice_ctc',
      vocab_size: v,
      normalize_samples: 0,
      lfr_window_size: 7,
      lfr_window_shift: 6,
      lang_auto: 0,
      lang_zh: 3,
      lang_en: 4,
      lang_yue: 7,
      lang_ja: 11,
      lang_ko: 12,
      with_itn: 14,
      without_itn: 15,
      neg_mean: Array(560).fill('0').join(','),
      inv_stddev: Array(560).fill('1').join(','),
    },
  })
}

/** Paraformer tells how many tokens there are beside them. */
export const paraformer = (tokens: string[], said: number[]): Bytes => {
  const v = tokens.length
  const logits = new Float32Array(said.length * v)
  for (const [k, id] of said.entries()) logits[k * v + id] = LOGIT
  return model({
    nodes: [pass('constant', 'logits'), pass('count', 'token_num')],
    constants: [tensor('constant', [1, said.length, v], logits), tensor('count', [1], new BigInt64Array([BigInt(said.length)]))],
    inputs: [value('speech', FLOAT, ['N', 'T', 560]), value('speech_lengths', INT32, ['N'])],
    outputs: [value('logits', FLOAT, [1, said.length, v]), value('token_num', INT64, [1])],
    properties: {
      model_type: 'paraformer',
      vocab_size: v,
      lfr_window_size: 7,
      lfr_window_shift: 6,
      neg_mean: Array(560).fill('0').join(','),
      inv_stddev: Array(560).fill('1').join(','),
    },
  })
}

/** The CTC models of NeMo; their blank is the last token. */
export const nemoCtc = (tokens: string[], said: number[]): Bytes => {
  const v = tokens.length
  const frames = 8
  const logits = new Float32Array(frames * v).fill(-LOGIT)
  for (let k = 0; k < frames; k++) logits[k * v + (said[k] ?? v - 1)] = 0
  return model({
    nodes: [pass('constant', 'logprobs')],
    constants: [tensor('constant', [1, frames, v], logits)],
    inputs: [value('audio_signal', FLOAT, ['N', BANDS, 'T']), value('length', INT64, ['N'])],
    outputs: [value('logprobs', FLOAT, [1, frames, v])],
    properties: { model_type: 'EncDecCTCModelBPE', vocab_size: v - 1, subsampling_factor: 4, normalize_type: 'per_feature' },
  })
}

/** The transducers of NeMo have a memory and other names; their blank is the last token, which also comes before the first. */
export const nemoTransducer = (s: Sentence): Record<string, Bytes> => {
  const v = s.tokens.length
  const states = (prefix: string): Bytes[] => ['1', '2'].map(k => value(`${prefix}${k}`, FLOAT, [1, 'N', 4]))
  const encoder = model({
    nodes: [pass('audio_signal', 'outputs'), pass('length', 'encoded_lengths')],
    inputs: [value('audio_signal', FLOAT, ['N', BANDS, 'T']), value('length', INT64, ['N'])],
    outputs: [value('outputs', FLOAT, ['N', BANDS, 'T']), value('encoded_lengths', INT64, ['N'])],
    properties: {
      model_type: 'EncDecRNNTBPEModel',
      vocab_size: v - 1,
      subsampling_factor: 8,
      normalize_type: 'per_feature',
      pred_rnn_layers: 1,
      pred_hidden: 4,
    },
  })
  const decoder = model({
    nodes: [
      node('Gather', ['table', 'targets'], ['row'], { axis: 0 }),
      node('Transpose', ['row'], ['outputs'], { perm: [0, 2, 1] }),
      pass('target_length', 'prednet_lengths'),
      pass('states.1', 'states_1'),
      pass('states.2', 'states_2'),
    ],
    constants: [tensor('table', [v, v], tableOf(s))],
    inputs: [value('targets', INT32, ['N', 'n']), value('target_length', INT32, ['N']), ...states('states.')],
    outputs: [value('outputs', FLOAT, ['N', v, 'n']), value('prednet_lengths', INT32, ['N']), ...states('states_')],
  })
  const joiner = model({
    nodes: [
      node('Transpose', ['encoder_outputs'], ['e'], { perm: [0, 2, 1] }),
      node('MatMul', ['e', 'zero'], ['nothing']),
      node('Transpose', ['decoder_outputs'], ['d'], { perm: [0, 2, 1] }),
      node('Add', ['nothing', 'd'], ['sum']),
      node('Unsqueeze', ['sum', 'one'], ['outputs']),
    ],
    constants: [tensor('zero', [BANDS, v], new Float32Array(BANDS * v)), tensor('one', [1], new BigInt64Array([1n]))],
    inputs: [value('encoder_outputs', FLOAT, ['N', BANDS, 't']), value('decoder_outputs', FLOAT, ['N', v, 'u'])],
    outputs: [value('outputs', FLOAT, ['N', 't', 'u', v])],
  })
  return { encoder, decoder, joiner }
}
