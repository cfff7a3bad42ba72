import type { Lang } from '../../../../ports.ts'

/** What a folder holds, with the names of its files. */
export type Model = { langs: Lang[] } & (
  | { kind: 'streaming' | 'transducer'; encoder: string; decoder: string; joiner: string; tokens: string; nemo: boolean }
  | { kind: 'whisper'; encoder: string; decoder: string; tokens: string }
  | { kind: 'senseVoice' | 'paraformer' | 'nemoCtc'; model: string; tokens: string }
)

/** What can be asked of the folder. */
export interface Folder {
  name: string
  files: string[]
  /** Some of a file's bytes as text: its end, where ONNX keeps its properties (field 14 of ModelProto comes last), or its beginning. */
  peek(file: string): string
}

export type Found = { model: Model } | { missing: string } | { unknown: true }

const ONNX = /\.(?:onnx|ort)$/i
const SMALL = /\bint8\b/i

/** Of several files for one part the one in 8-bit numbers, which a small computer runs twice as fast, or the other where `large`. */
const pick = (files: string[], like: RegExp, large = false): string | undefined => {
  const all = files.filter(f => ONNX.test(f) && like.test(f)).sort((a, b) => a.length - b.length || (a < b ? -1 : 1))
  return all.find(f => SMALL.test(f) !== large) ?? all[0]
}

/**
 * Languages by the folder's public name, in whose parts they stand ("…-zipformer-en-2023-06-26", "…-transducer-es-1424"). Models that say
 * nothing of themselves are taken for English. The third generation of Parakeet hears 25 languages, Spanish among them (from memory).
 */
export const langsByName = (name: string): Lang[] => {
  const parts = new Set(name.toLowerCase().split(/[-_.]/))
  if (parts.has('parakeet') && parts.has('v3')) return ['en', 'es']
  const said = (['en', 'es'] as const).filter(l => parts.has(l) || parts.has(l === 'en' ? 'english' : 'spanish'))
  return said.length ? said : parts.has('multilingual') || parts.has('multi') ? ['en', 'es'] : ['en']
}

/** English only are the models with `.en` in their name, and the distilled ones. */
const whisperLangs = (stem: string): Lang[] => (/\.en$/i.test(stem) || /^distil/i.test(stem) ? ['en'] : ['en', 'es'])

const whisperIn = (f: Folder): Found | undefined => {
  const stems = f.files.flatMap(n => /^(.+)-encoder(?:\.int8)?\.(?:onnx|ort)$/i.exec(n)?.[1] ?? []).sort()
  for (const stem of stems) {
    const tokens = `${stem}-tokens.txt`
    if (!f.files.includes(tokens)) continue
    const own = f.files.filter(n => n.startsWith(`${stem}-`))
    const encoder = pick(own, /-encoder\b/)
    const decoder = pick(own, /-decoder\b/)
    if (!decoder) return { missing: `${stem}-decoder.onnx` }
    return { model: { kind: 'whisper', encoder: encoder!, decoder, tokens, langs: whisperLangs(stem) } }
  }
  return undefined
}

/** Only a streaming encoder has a chunk to decode at a time; its export says so among its properties. */
const isStreaming = (f: Folder, encoder: string): boolean =>
  /streaming/i.test(f.name) || /chunk-\d+/i.test(encoder) || f.peek(encoder).includes('decode_chunk_len')

const transducerIn = (f: Folder): Found | undefined => {
  const encoder = pick(f.files, /^encoder/i)
  if (!encoder) return undefined
  // a decoder in 8-bit numbers saves nothing and loses a little
  const decoder = pick(f.files, /^decoder/i, true)
  const joiner = pick(f.files, /^joiner/i)
  if (!decoder) return { missing: 'decoder.onnx' }
  if (!joiner) return { missing: 'joiner.onnx' }
  const kind = isStreaming(f, encoder) ? 'streaming' : 'transducer'
  const nemo = /nemo|parakeet/i.test(f.name) || f.peek(encoder).includes('EncDecRNNTBPEModel')
  return { model: { kind, encoder, decoder, joiner, tokens: 'tokens.txt', nemo, langs: langsByName(f.name) } }
}

const singleIn = (f: Folder): Found | undefined => {
  const model = pick(f.files, /^model/i)
  if (!model) return undefined
  const within = `${f.name}\n${f.peek(model)}`
  const tokens = 'tokens.txt'
  // its tokens name the languages that it tells apart
  if (/sense[-_]?voice/i.test(within) || f.peek(tokens).includes('<|en|>'))
    return { model: { kind: 'senseVoice', model, tokens, langs: ['en'] } }
  if (/paraformer/i.test(within)) return { model: { kind: 'paraformer', model, tokens, langs: ['en'] } }
  if (/nemo|EncDecCTC/i.test(within)) return { model: { kind: 'nemoCtc', model, tokens, langs: langsByName(f.name) } }
  return { unknown: true }
}

/** What model a folder holds, by its files. `missing` names the file that is not there. */
export const modelIn = (f: Folder): Found => {
  const whisper = whisperIn(f)
  if (whisper) return whisper
  if (!f.files.some(n => ONNX.test(n))) return { missing: '*.onnx' }
  if (!f.files.includes('tokens.txt')) return { missing: 'tokens.txt' }
  return transducerIn(f) ?? singleIn(f) ?? { unknown: true }
}
