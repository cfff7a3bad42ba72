import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Lang } from '../ports.ts'

/** The package's own `prompts` folder, from the sources as from the built files. Throws where it is missing: nothing could be said. */
export const promptsFolder = (): string => {
  let at = dirname(fileURLToPath(import.meta.url))
  for (;;) {
    if (existsSync(join(at, 'package.json')) && existsSync(join(at, 'prompts'))) return join(at, 'prompts')
    const up = dirname(at)
    if (up === at) throw new Error('the folder "prompts" is missing beside package.json')
    at = up
  }
}

/** The text of every Fluent file `*.en.ftl` and `*.es.ftl`, in the order of their names. */
export const loadPrompts = (folder: string = promptsFolder()): Record<Lang, string[]> => {
  const names = readdirSync(folder).sort()
  const of = (lang: Lang): string[] => names.filter(n => n.endsWith(`.${lang}.ftl`)).map(n => readFileSync(join(folder, n), 'utf8'))
  return { en: of('en'), es: of('es') }
}
