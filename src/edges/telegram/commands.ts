import type { Lang } from '../../ports.ts'

/** One line of the menu, with its name in each language; both names are understood from everybody. */
interface Command {
  names: Record<Lang, string>
  /** What it says to the house; without it the channel itself carries it out. */
  words?: Record<Lang, string>
  /** Who sees it in the menu. */
  menu?: 'all' | 'owner'
}

/** The commands by what they do. Any other is taken for words: `/status_creek` is "status creek". */
export const COMMANDS = {
  today: { names: { en: 'today', es: 'hoy' }, words: { en: 'what happened today', es: 'qué pasó hoy' }, menu: 'all' },
  left: { names: { en: 'left', es: 'quedan' }, words: { en: 'how many days left', es: 'cuántos días quedan' }, menu: 'all' },
  covers: { names: { en: 'covers', es: 'tapas' }, words: { en: 'when did we last check', es: 'cuándo revisamos' }, menu: 'all' },
  stock: {
    names: { en: 'stock', es: 'material' },
    words: { en: 'what supplies do we have', es: 'cuánto inventario tenemos' },
    menu: 'all',
  },
  undo: { names: { en: 'undo', es: 'deshacer' }, words: { en: 'undo', es: 'deshacer' }, menu: 'all' },
  help: { names: { en: 'help', es: 'ayuda' }, words: { en: 'help', es: 'ayuda' }, menu: 'all' },
  start: { names: { en: 'start', es: 'start' } },
  invite: { names: { en: 'invite', es: 'invitar' }, menu: 'owner' },
  crew: { names: { en: 'crew', es: 'cuadrilla' }, menu: 'owner' },
  remove: { names: { en: 'remove', es: 'quitar' } },
  role: { names: { en: 'role', es: 'papel' } },
  leave: { names: { en: 'leave', es: 'salir' } },
  here: { names: { en: 'here', es: 'aqui' } },
  away: { names: { en: 'away', es: 'fuera' } },
  export: { names: { en: 'export', es: 'exportar' }, menu: 'owner' },
} as const satisfies Record<string, Command>

export type CommandId = keyof typeof COMMANDS
const TABLE: [CommandId, Command][] = Object.entries(COMMANDS) as [CommandId, Command][]

const BY_NAME = new Map<string, { id: CommandId; lang: Lang }>()
for (const [id, c] of TABLE) for (const lang of ['es', 'en'] as const) BY_NAME.set(c.names[lang], { id, lang })

/** The command of a name, with or without accents, and the language of the name. */
export const commandNamed = (name: string): { id: CommandId; lang: Lang } | undefined =>
  BY_NAME.get(name.normalize('NFD').replace(/\p{M}/gu, ''))

/** What a command says, with what was typed behind it; undefined for the channel's own. */
export const wordsOf = (id: CommandId, lang: Lang, rest: string): string | undefined => {
  const words = (COMMANDS[id] as Command).words?.[lang]
  return words === undefined ? undefined : `${words} ${rest}`.trim()
}

/** The menu of one language: the crew's lines, and the owner's after them. */
export const menuOf = (lang: Lang, owner: boolean): { command: string; code: string }[] =>
  TABLE.filter(([, c]) => c.menu === 'all' || (owner && c.menu === 'owner')).map(([id, c]) => ({
    command: c.names[lang],
    code: `menu-${id}`,
  }))

/** The owner's words for the whole book as a file. */
const BOOK = [
  /^(?:please )?(?:send|give|export) (?:me )?(?:the|my|our) (?:whole |entire )?book(?: please)?$/,
  /^(?:por favor )?(?:mandame|enviame|pasame|dame|exporta) (?:el|todo el) libro(?: por favor)?$/,
]
export const asksForBook = (text: string): boolean => {
  const plain = text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[.,!?¡¿]/g, '')
    .trim()
  return BOOK.some(like => like.test(plain))
}
