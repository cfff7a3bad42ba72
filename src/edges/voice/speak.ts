import { spawn } from 'node:child_process'
import { mkdir, readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import type { Lang } from '../../ports.ts'

/** Replies beyond this are read, not listened to. */
const MOST_SPOKEN = 220
const VOICES: Record<Lang, string> = { en: 'en-us', es: 'es-419' }

/** Runs `first | second`; true where both ended well. A program that is not there is no fault: the reply is text all the same. */
const piped = (first: [string, string[]], second: [string, string[]], input: string): Promise<boolean> =>
  new Promise(resolve => {
    const a = spawn(first[0], first[1], { stdio: ['pipe', 'pipe', 'ignore'], timeout: 20_000 })
    const b = spawn(second[0], second[1], { stdio: ['pipe', 'ignore', 'ignore'], timeout: 20_000 })
    let left = 2
    let good = true
    const done = (well: boolean): void => {
      good &&= well
      if (!well) {
        a.kill()
        b.kill()
      }
      if (--left === 0) resolve(good)
    }
    for (const p of [a, b]) {
      let told = false
      const once = (well: boolean): void => {
        if (!told) done(well)
        told = true
      }
      p.on('error', () => once(false))
      p.on('close', code => once(code === 0))
      p.stdin?.on('error', () => undefined)
    }
    a.stdout.pipe(b.stdin)
    a.stdin.end(input)
  })

/** Spoken replies are kept so long for their channel to send them, ms. */
const KEPT = 2 * 24 * 3_600_000
const tidy = async (folder: string): Promise<void> => {
  for (const name of await readdir(folder)) {
    const at = await stat(join(folder, name)).catch(() => undefined)
    if (at && Date.now() - at.mtimeMs > KEPT) await rm(join(folder, name), { force: true })
  }
}

/** Units that a synthesiser stumbles over, as they are said. */
const UNITS: Record<Lang, Record<string, string>> = { en: { lb: 'pounds', ft: 'feet' }, es: { lb: 'libras', ft: 'pies' } }
/** The line that repeats what was heard (`voice-heard`): whoever spoke knows it. */
const HEARD = /^(Heard|Oí): ".*"$/m

const sayable = (text: string, lang: Lang): string =>
  text
    .replace(HEARD, '')
    .replace(/\b(lb|ft)\b/g, unit => UNITS[lang][unit]!)
    .trim()

/**
 * Short replies as voice notes, by the synthesiser espeak-ng and the encoder opusenc where both are installed. Resolves with the path
 * of an OGG/Opus file; undefined where the text is long or a program is missing.
 */
export const makeSpeaker =
  (folder: string, programs = { say: 'espeak-ng', encode: 'opusenc' }) =>
  async (text: string, lang: Lang, name: string): Promise<string | undefined> => {
    const words = sayable(text, lang)
    if (!words || words.length > MOST_SPOKEN) return undefined
    await mkdir(folder, { recursive: true })
    await tidy(folder)
    const file = join(folder, `${name.replace(/[^\w-]/g, '_')}.ogg`)
    const said = await piped(
      [programs.say, ['-v', VOICES[lang], '-s', '155', '--stdin', '--stdout']],
      [programs.encode, ['--quiet', '--bitrate', '24', '-', file]],
      words,
    )
    return said ? file : undefined
  }
