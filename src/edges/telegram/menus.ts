import type { Api } from 'grammy'
import type { BotCommandScope } from 'grammy/types'
import type { Logger } from 'pino'
import type { Lang } from '../../ports.ts'
import { menuOf } from './commands.ts'
import type { Core } from './options.ts'
import { said } from './sending.ts'

/** The menus: a short one for everybody, in both languages, and the owners' in their own chats. */
export const makeMenus = ({ say }: Core, api: Api, logger: Logger) => {
  const set = async (lang: Lang, owner: boolean, code: 'es' | undefined, scope?: BotCommandScope): Promise<void> => {
    const commands = menuOf(lang, owner).map(c => ({ command: c.command, description: say({ code: c.code, data: {} }, lang) }))
    await api.setMyCommands(commands, { ...(code && { language_code: code }), ...(scope && { scope }) })
  }
  /** A menu is a help, and no reason to stop. */
  const quietly = async (work: Promise<unknown>): Promise<void> => {
    await work.catch(error => logger.warn({ why: said(error) }, 'the menu could not be set'))
  }
  return {
    everybody: async (): Promise<void> => {
      await quietly(set('en', false, undefined))
      await quietly(set('es', false, 'es'))
    },
    owner: async (chat: string): Promise<void> => {
      const scope: BotCommandScope = { type: 'chat', chat_id: Number(chat) }
      await quietly(set('en', true, undefined, scope))
      await quietly(set('es', true, 'es', scope))
    },
    /** Of one who owns the farm no more. */
    former: async (chat: string): Promise<void> => {
      const scope: BotCommandScope = { type: 'chat', chat_id: Number(chat) }
      for (const language_code of [undefined, 'es'] as const) {
        await quietly(api.deleteMyCommands({ scope, ...(language_code && { language_code }) }))
      }
    },
  }
}
