import type { BotCommand, User } from 'grammy/types'
import { makeFiles } from './botApiFiles.ts'
import { ApiError, bad, type Payload } from './botApiParts.ts'

/** The calls beside messages: menus, reactions, signs of work, files, membership. */
export const makeExtras = (bot: User, blocked: Set<number>) => {
  const reactions = new Map<string, string[]>()
  const noReactions = new Set<number>()
  const menus = new Map<string, BotCommand[]>()
  const actions: string[] = []
  const admin = new Set<number>()
  const files = makeFiles()

  const menuKey = (p: Payload): string => {
    const scope = (p.scope ?? { type: 'default' }) as { type: string; chat_id?: number }
    return [scope.type, scope.chat_id, p.language_code].filter(x => x !== undefined && x !== '').join(' ')
  }

  const methods: Record<string, (p: Payload) => unknown> = {
    setMyCommands: p => {
      for (const c of p.commands as BotCommand[]) {
        if (!/^[a-z0-9_]{1,32}$/.test(c.command)) throw bad('BOT_COMMAND_INVALID')
        if (c.description.length < 1 || c.description.length > 256) throw bad('BOT_COMMAND_DESCRIPTION_INVALID')
      }
      menus.set(menuKey(p), p.commands as BotCommand[])
      return true
    },
    deleteMyCommands: p => {
      menus.delete(menuKey(p))
      return true
    },
    sendChatAction: p => {
      if (blocked.has(Number(p.chat_id))) throw new ApiError(403, 'Forbidden: bot was blocked by the user')
      actions.push(`${p.chat_id} ${p.action}`)
      return true
    },
    setMessageReaction: p => {
      if (noReactions.has(Number(p.chat_id))) throw bad('REACTION_INVALID')
      const list = p.reaction as { type: string; emoji: string }[]
      reactions.set(
        `${p.chat_id}/${p.message_id}`,
        list.map(r => r.emoji),
      )
      return true
    },
    getFile: files.get,
    getChatMember: p => ({ user: bot, status: admin.has(Number(p.chat_id)) ? 'administrator' : 'member' }),
  }

  return {
    methods,
    download: files.download,
    api: {
      reactions: (chat: number, id: number): string[] => reactions.get(`${chat}/${id}`) ?? [],
      noReactions,
      menus,
      actions,
      file: files.add,
      admin,
    },
  }
}
