import { spawn } from 'node:child_process'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { HeardWord } from '../../ports.ts'
import { EarFault } from './fault.ts'

export const PROGRAM = 'pocketsphinx_batch'

/** Frames a second of the recogniser's front end (`-frate`). */
const FRAMES = 100

/** One way of looking at the sound: a model, and options of the front end. */
export interface View {
  lm: string
  dict: string
  options: string[]
}

const NO_WORD = /^(<s>|<\/s>|<sil>|\[.*\]|\+\+.*\+\+)$/

/** A line of `-hypseg`: `id S scale T score A acoustic L language (frame acoustic language word)* last`. */
export const readSegments = (line: string): { acoustic: number; words: HeardWord[] } | undefined => {
  const m = /^\S+ S -?\d+ T -?\d+ A (-?\d+) L -?\d+ (.*)$/.exec(line.trim())
  if (!m) return undefined
  const parts = m[2]!.split(' ')
  const words: HeardWord[] = []
  for (let k = 0; k + 3 < parts.length; k += 4) {
    const word = parts[k + 3]!.replace(/\(\d+\)$/, '')
    if (!NO_WORD.test(word)) words.push({ word, from: Number(parts[k]) / FRAMES, to: Number(parts[k + 4] ?? parts[k]) / FRAMES, sure: 0 })
  }
  return { acoustic: Number(m[1]), words }
}

/**
 * Runs the recogniser to its end.
 *
 * @throws EarFault `ear-program-missing`, or `voice-trouble` with the last line of its log; an AbortError where `signal` ended it
 */
const run = (args: string[], signal: AbortSignal | undefined, program: string): Promise<void> =>
  new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: ['ignore', 'ignore', 'pipe'], signal, killSignal: 'SIGKILL' })
    let log = ''
    child.stderr.on('data', (d: Buffer) => {
      log = (log + d.toString('latin1')).slice(-4000)
    })
    child.on('error', (error: NodeJS.ErrnoException) =>
      reject(error.code === 'ENOENT' ? new EarFault('ear-program-missing', { name: program }) : error),
    )
    child.on('close', code => {
      if (code === 0) return resolve()
      const why = log.split('\n').findLast(l => /ERROR|FATAL/.test(l)) ?? `exit ${code}`
      reject(new EarFault('voice-trouble', { why: why.replace(/^.*?(ERROR|FATAL)\S*:?\s*/, '').slice(0, 120) }))
    })
  })

/** One note laid ready for the recogniser. */
export interface Job {
  /** Folder that holds `name`.wav and takes the results. */
  folder: string
  name: string
  hmm: string
  program: string
  signal?: AbortSignal
}

const common = ({ folder, hmm }: Job, dict: string, tag: string): string[] =>
  [
    '-hmm',
    hmm,
    '-dict',
    dict,
    '-adcin',
    'yes',
    '-adchdr',
    '44',
    '-cepdir',
    folder,
    '-cepext',
    '.wav',
    '-ctl',
    join(folder, `${tag}.ctl`),
  ].concat(['-hyp', join(folder, `${tag}.hyp`), '-hypseg', join(folder, `${tag}.seg`)])

/** One pass over the note with a language model. No words: nothing was understood. */
export const pass = async (job: Job, view: View, tag: string): Promise<HeardWord[]> => {
  await writeFile(join(job.folder, `${tag}.ctl`), `${job.name}\n`)
  await run([...common(job, view.dict, tag), '-lm', view.lm, ...view.options], job.signal, job.program)
  return readSegments((await readFile(join(job.folder, `${tag}.seg`), 'latin1')).split('\n')[0] ?? '')?.words ?? []
}

/** The grammar of one sentence, as the recogniser's finite state file. */
export const sentenceGrammar = (words: string[]): string =>
  [
    'FSG_BEGIN sentence',
    `NUM_STATES ${words.length + 1}`,
    'START_STATE 0',
    `FINAL_STATE ${words.length}`,
    ...words.map((w, k) => `TRANSITION ${k} ${k + 1} 1.0 ${w}`),
    'FSG_END',
    '',
  ].join('\n')

/**
 * How well the sound fits each of several sentences, by the acoustic score alone, all in one run of the program; undefined for
 * a sentence that the sound cannot be laid along.
 */
export const fits = async (
  job: Job,
  dict: string,
  options: string[],
  sentences: string[][],
  tag: string,
): Promise<(number | undefined)[]> => {
  if (!sentences.length) return []
  await Promise.all(sentences.map((s, k) => writeFile(join(job.folder, `${tag}${k}.fsg`), sentenceGrammar(s))))
  // each line: file, first and last frame, the utterance's own name
  await writeFile(join(job.folder, `${tag}.ctl`), sentences.map((_, k) => `${job.name} 0 -1 u${k}\n`).join(''))
  await writeFile(join(job.folder, `${tag}.fsgs`), sentences.map((_, k) => `${tag}${k}\n`).join(''))
  const grammars = [
    '-fsg',
    join(job.folder, `${tag}0.fsg`),
    '-fsgctl',
    join(job.folder, `${tag}.fsgs`),
    '-fsgdir',
    job.folder,
    '-fsgext',
    '.fsg',
  ]
  await run([...common(job, dict, tag), ...grammars, ...options], job.signal, job.program)
  const lines = new Map((await readFile(join(job.folder, `${tag}.seg`), 'latin1')).split('\n').map(l => [l.split(' ')[0]!, l]))
  return sentences.map((s, k) => {
    const got = readSegments(lines.get(`u${k}`) ?? '')
    return got && got.words.map(w => w.word).join(' ') === s.join(' ') ? got.acoustic : undefined
  })
}
