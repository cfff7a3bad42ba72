import { closeSync, fstatSync, openSync, readdirSync, readFileSync, readSync } from 'node:fs'
import { basename, join } from 'node:path'
import { EarFault } from '../../fault.ts'
import { type Folder, type Model, modelIn } from './kinds.ts'
import { pieceLines, piecesOf } from './pieces.ts'

const HEAD = 65_536
const TAIL = 262_144

/** The first and the last bytes of a file; nothing where it cannot be read. */
const ends = (file: string): string => {
  let fd: number | undefined
  try {
    fd = openSync(file, 'r')
    const { size } = fstatSync(fd)
    const read = (from: number, length: number): string => {
      const b = Buffer.alloc(length)
      return b.toString('latin1', 0, readSync(fd!, b, 0, length, from))
    }
    return size <= HEAD + TAIL ? read(0, size) : `${read(0, HEAD)}\n${read(size - TAIL, TAIL)}`
  } catch {
    return ''
  } finally {
    if (fd !== undefined) closeSync(fd)
  }
}

/**
 * The model in a folder.
 *
 * @throws EarFault `ear-model-folder`, `ear-model-files`, `ear-model-unknown`
 */
export const readModel = (folder: string): Model => {
  let files: string[]
  try {
    files = readdirSync(folder)
  } catch (error) {
    throw new EarFault('ear-model-folder', { folder, why: (error as NodeJS.ErrnoException).code ?? '?' })
  }
  const f: Folder = { name: basename(folder), files, peek: file => (files.includes(file) ? ends(join(folder, file)) : '') }
  const found = modelIn(f)
  if ('missing' in found) throw new EarFault('ear-model-files', { folder, missing: found.missing })
  if ('unknown' in found) throw new EarFault('ear-model-unknown', { folder })
  return found.model
}

/** The word pieces of a model, `piece TAB score` a line, from `bpe.vocab` or else `bpe.model`; undefined where it has neither. */
export const piecesIn = (folder: string): string | undefined => {
  const tried = [() => readFileSync(join(folder, 'bpe.vocab'), 'utf8'), () => pieceLines(piecesOf(readFileSync(join(folder, 'bpe.model'))))]
  for (const read of tried)
    try {
      return read()
    } catch {
      // without them names are heard as well as any other word, no better
    }
  return undefined
}
