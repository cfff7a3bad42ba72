import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { swapsOf } from '../../hearing/swaps.ts'
import { type Pass, type Trial, textOf, weigh } from '../../hearing/weigh.ts'
import type { Ear, FarmWords, Heard } from '../../ports.ts'
import { fits, type Job, PROGRAM, pass } from './batch.ts'
import { spoken } from './model/draw.ts'
import { ENGLISH_FOLDER, modelsFor } from './models.ts'
import { levelled, wavOf } from './sound.ts'

/** Ways to look at the same sound. Where they agree, the words are rarely wrong; where they don't, the crew is asked. */
const RAW = ['-remove_noise', 'no']
const WARP = (by: number): string[] => ['-warp_type', 'inverse_linear', '-warp_params', String(by)]
const PASSES: { model: 'wide' | 'narrow'; options: string[] }[] = [
  { model: 'wide', options: RAW },
  { model: 'wide', options: WARP(1.1) },
  { model: 'narrow', options: [] },
  { model: 'narrow', options: [...RAW, ...WARP(0.92)] },
]
const TRIALS = [[], RAW, WARP(1.12)]

export interface EmbeddedOptions {
  /** Folder for the models that are made of the farm's names. */
  folder: string
  /** Folder with `en-us/` (the acoustic model) and `cmudict-en-us.dict`. */
  english?: string
  program?: string
}

/**
 * The recogniser that works out of the box: PocketSphinx as Debian has it, English only. Several passes over the note vote; then each
 * number and each of the farm's names is tried against those it is mistaken for, with grammars of one sentence each.
 */
export const embeddedEar = ({ folder, english = ENGLISH_FOLDER, program = PROGRAM }: EmbeddedOptions): Ear => ({
  name: 'embedded',
  langs: ['en'],
  hear: async (sound, farm, _lang, signal): Promise<Heard> => {
    const models = await modelsFor(folder, english, farm)
    const work = await mkdtemp(join(tmpdir(), 'pilehand-ear-'))
    try {
      await writeFile(join(work, 'note.wav'), wavOf(levelled(sound)))
      const job = { folder: work, name: 'note', hmm: join(english, 'en-us'), program, signal }
      const passes: Pass[] = []
      // one after another: the farm's computer has other things to do
      for (const [k, p] of PASSES.entries())
        passes.push({ words: await pass(job, { lm: models[p.model], dict: models.dict, options: p.options }, `p${k}`), weight: 1 })
      return { wordings: weigh(passes, await trials(job, models.dict, passes, farm)), lang: 'en' }
    } finally {
      await rm(work, { recursive: true, force: true })
    }
  },
  close: () => undefined,
})

/** The wording with most votes, against its slips of the ear. */
const trials = async (job: Job, dict: string, passes: Pass[], farm: FarmWords): Promise<Trial[]> => {
  const votes = new Map<string, { words: string[]; weight: number }>()
  for (const p of passes) {
    const text = textOf(p.words)
    const v = votes.get(text)
    if (v) v.weight += p.weight
    else if (text) votes.set(text, { words: p.words.map(w => w.word), weight: p.weight })
  }
  const top = [...votes.values()].sort((a, b) => b.weight - a.weight)[0]
  if (!top) return []
  const names = [...new Set(farm.piles.map(spoken))].filter(Boolean).map(n => n.split(' '))
  const swaps = swapsOf(top.words, names)
  if (!swaps.length) return []
  const out: Trial[] = swaps.map(words => ({ of: textOf(top.words), words, margins: [] }))
  for (const [k, options] of TRIALS.entries()) {
    const [own, ...scores] = await fits(job, dict, options, [top.words, ...swaps], `t${k}x`)
    scores.forEach((s, j) => {
      if (own !== undefined && s !== undefined) out[j]!.margins.push(s - own)
    })
  }
  return out
}
