import { createHash } from 'node:crypto'
import { mkdir, readFile, rename, rm, stat, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { FarmWords } from '../../ports.ts'
import { EarFault } from './fault.ts'
import { arpaOf, type Leaning } from './model/arpa.ts'
import { dictionaryOf, pickFrom } from './model/dictionary.ts'
import { drawSentences, spoken } from './model/draw.ts'
import { NO_GENERAL, readGeneral } from './model/general.ts'

/** Where Debian's `pocketsphinx-en-us` puts its model. */
export const ENGLISH_FOLDER = '/usr/share/pocketsphinx/model/en-us'

/** Two language models and the dictionary of both. `wide` knows everyday English beside the trade; `narrow` the trade alone. */
export interface Models {
  wide: string
  narrow: string
  dict: string
}

/** The number of sentences drawn, and how the models lean; all set on the development half of the spoken notes. */
const SENTENCES = 10_000
const GENERAL_WORDS = 600
const WIDE: Leaning = { words: 0.05, pairs: 0.5, open: 2 }
const NARROW: Leaning = { words: 0, pairs: 0, open: 1 }
/** Raised with every change of templates or leaning, so that models made before are made again. */
const EDITION = 1

const GENERAL = new URL('../../../shared/voice/english.txt', import.meta.url)

/**
 * Language models and dictionary for one farm's names. They are kept in `folder` under a name made of the farm's words, so a pile
 * that is added or renamed gets new ones at the next note, and a restart finds the old ones.
 */
export const modelsFor = async (folder: string, english: string, farm: FarmWords): Promise<Models> => {
  const names = { piles: farm.piles, boxes: farm.boxes, people: farm.people, words: farm.words }
  const key = createHash('sha256')
    .update(JSON.stringify([EDITION, english, names]))
    .digest('hex')
    .slice(0, 16)
  const home = join(folder, key)
  const models: Models = { wide: join(home, 'wide.lm'), narrow: join(home, 'narrow.lm'), dict: join(home, 'words.dict') }
  if (await stat(models.dict).catch(() => undefined)) return models
  const known = await readFile(join(english, 'cmudict-en-us.dict'), 'latin1').catch((error: NodeJS.ErrnoException) => {
    throw new EarFault('ear-model-missing', { folder: english, why: error.code ?? error.message })
  })
  const general = readGeneral(await readFile(GENERAL, 'utf8'), GENERAL_WORDS)
  const talk = [...general.words].slice(0, 400).map(([word, weight]) => ({ word, weight }))
  const sentences = drawSentences(farm, talk, SENTENCES, 1)
  const vocabulary = new Set([
    ...sentences.flat(),
    ...general.words.keys(),
    ...Object.values(names).flatMap(l => l.flatMap(n => spoken(n).split(' '))),
  ])
  vocabulary.delete('')
  const { text } = dictionaryOf(vocabulary, pickFrom(known, vocabulary))
  // made beside and moved: a process that dies in between leaves nothing half done
  const passing = `${home}.${process.pid}`
  await mkdir(passing, { recursive: true })
  await writeFile(join(passing, 'wide.lm'), arpaOf(sentences, general, WIDE))
  await writeFile(join(passing, 'narrow.lm'), arpaOf(sentences, NO_GENERAL, NARROW))
  await writeFile(join(passing, 'words.dict'), text)
  await rename(passing, home).catch(async error => {
    await rm(passing, { recursive: true, force: true })
    if (!(await stat(models.dict).catch(() => undefined))) throw error
  })
  return models
}
