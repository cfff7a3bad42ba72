import { readFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { FARM, leave, openForReading } from './compose.ts'
import type { Config } from './config.ts'
import { explained } from './edges/console.ts'
import { EarFault, farmWords, LIMITS, makeEar, secondsOf, soundOf } from './edges/voice.ts'
import { noteOf } from './hearing/note.ts'
import { textOf } from './hearing/weigh.ts'

const share = (x: number): string => `${Math.round(x * 100)} %`.padStart(5)

/** `hear file.ogg`: the wordings with their weights, the words with times and confidences, the reading, and how long it took. */
export const hearFile = async (config: Config, [file]: string[]): Promise<void> => {
  const out = (line: string): void => void process.stdout.write(`${line}\n`)
  if (file === undefined) return leave({ code: 'config-wrong', data: { name: 'hear', why: 'name a voice note, like note.ogg' } })
  const { core, note, close } = openForReading(config)
  try {
    if (note) out(note)
    // without a book there is no folder of the book either
    const home = note ? join(tmpdir(), 'pilehand-hear') : config.data
    const ear = makeEar(config.ear, home)
    if (!ear) return leave({ code: 'voice-off', data: {} })
    const bytes = await readFile(file).catch((error: Error) => leave({ code: 'voice-unreadable', data: { why: error.message } }))
    const seconds = secondsOf(bytes) ?? 0
    if (seconds > LIMITS.seconds) return leave({ code: 'voice-too-long', data: { most: LIMITS.seconds } })
    const farm = farmWords(core.book(FARM))
    const from = Date.now()
    const sound = await soundOf(bytes)
    const decoded = Date.now()
    const heard = await ear.hear(sound, farm, ear.langs[0] ?? 'en')
    const done = Date.now()
    for (const w of heard.wordings.slice(0, 6)) out(`${share(w.weight)}  ${textOf(w.words)}`)
    const got = noteOf(heard, [...farm.piles, ...farm.boxes])
    if (got) {
      out('Words:')
      for (const w of heard.wordings[0]!.words) out(`  ${w.from.toFixed(2)} to ${w.to.toFixed(2)} s ${share(w.sure)}  ${w.word}`)
      process.stdout.write(explained(core.explain(FARM, got.text, new Date().toISOString())))
    } else out('Nothing was heard in it.')
    const took = (done - from) / 1000
    out(
      `${ear.name}: ${seconds.toFixed(1)} s of sound in ${took.toFixed(1)} s, ${(took / Math.max(0.1, seconds)).toFixed(2)} of its length; decoding ${decoded - from} ms.`,
    )
    ear.close()
  } catch (error) {
    if (error instanceof EarFault) leave({ code: error.code, data: error.data })
    throw error
  } finally {
    close()
  }
}
