/** A word piece with its score (natural logarithm of its probability, for the unigram kind). */
export interface Piece {
  piece: string
  score: number
}

/** A varint at a place: its value and where the next field begins. (Protocol Buffers, "Encoding".) */
const varint = (b: Uint8Array, at: number): [value: number, next: number] => {
  let value = 0
  for (let k = 0; k < 10; k++) {
    const byte = b[at + k]
    if (byte === undefined) throw new RangeError('the file ends within a number')
    value += (byte & 0x7f) * 2 ** (7 * k)
    if (byte < 0x80) return [value, at + k + 1]
  }
  throw new RangeError('a number too long')
}

type Visit = (field: number, from: number, to: number) => void

/** Goes over the fields of a message; those of a fixed size are 4 or 8 bytes. */
const fields = (b: Uint8Array, from: number, to: number, visit: Visit): void => {
  let at = from
  while (at < to) {
    const [key, next] = varint(b, at)
    let start = next
    let end: number
    const wire = key % 8
    if (wire === 0) end = varint(b, next)[1]
    else if (wire === 1) end = next + 8
    else if (wire === 5) end = next + 4
    else if (wire === 2) {
      const [size, body] = varint(b, next)
      start = body
      end = body + size
    } else throw new RangeError(`a field of wire type ${wire}`)
    if (end > to) throw new RangeError('a field runs over its message')
    visit(Math.floor(key / 8), start, end)
    at = end
  }
}

/**
 * The pieces of a SentencePiece model (`bpe.model`), in their order: `ModelProto.pieces` is field 1, in it `piece` 1 and `score` 2
 * (sentencepiece_model.proto).
 *
 * @throws RangeError where the file is none
 */
export const piecesOf = (b: Uint8Array): Piece[] => {
  const out: Piece[] = []
  const view = new DataView(b.buffer, b.byteOffset, b.byteLength)
  fields(b, 0, b.length, (field, from, to) => {
    if (field !== 1) return
    let piece = ''
    let score = 0
    fields(b, from, to, (f, start, end) => {
      if (f === 1) piece = new TextDecoder().decode(b.subarray(start, end))
      else if (f === 2 && end - start === 4) score = view.getFloat32(start, true)
    })
    out.push({ piece, score })
  })
  if (!out.length) throw new RangeError('no pieces')
  return out
}

/** The pieces as the text file that the recogniser reads beside its hot words. */
export const pieceLines = (pieces: Piece[]): string => pieces.map(p => `${p.piece}\t${p.score}\n`).join('')

/** Letters of the model's tokens: only upper case, only lower case, or both. */
export const casing = (pieces: string[]): 'upper' | 'lower' | 'both' => {
  // marks like "<blk>" are no words
  const text = pieces.filter(p => !/^<.*>$/.test(p)).join('')
  const upper = /\p{Lu}/u.test(text)
  const lower = /\p{Ll}/u.test(text)
  return upper === lower ? 'both' : upper ? 'upper' : 'lower'
}

const MOST_HOT = 200

/**
 * The farm's names as hot words, one a line, in the letters that the model has; names with other signs are left out, for they would be
 * refused one by one at each load.
 */
export const hotLines = (names: string[], pieces: string[]): string => {
  const letters = new Set(pieces.join(''))
  const how = casing(pieces)
  const out = new Set<string>()
  for (const name of names) {
    const plain = name
      .normalize('NFC')
      .replace(/[^\p{L}\p{M}\p{N}' ]+/gu, ' ')
      .trim()
      .replace(/\s+/g, ' ')
    const cased = how === 'upper' ? plain.toUpperCase() : how === 'lower' ? plain.toLowerCase() : plain
    if (cased && [...cased.replaceAll(' ', '')].every(c => letters.has(c))) out.add(cased)
  }
  return [...out]
    .slice(0, MOST_HOT)
    .map(l => `${l}\n`)
    .join('')
}
