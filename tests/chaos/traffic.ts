import type { Chat, User } from 'grammy/types'
import type { BotApi } from '../support/botApi.ts'
import type { Random } from './random.ts'

export const OWNER_CODE = 'GATEPOST'
export const GROUP: Chat = { id: -4001, type: 'supergroup', title: 'yard' }
const person = (id: number, first_name: string, language_code = 'en'): User => ({ id, is_bot: false, first_name, language_code })
export const OWNER = person(801, 'Ines')
export const CREW = [person(802, 'Tomas', 'es'), person(803, 'Walt'), person(804, 'Lupe', 'es')]
export const STRANGERS = [person(861, 'Nobody'), person(862, 'Somebody'), person(863, 'Anybody', 'es')]
export const alone = (u: User): Chat => ({ id: u.id, type: 'private', first_name: u.first_name })
/** The day the traffic begins; a message each second. */
const FROM = Date.parse('2026-09-14T12:00:00Z') / 1000

/** What was sent that must stand in the book: by `chat/id`, the words that hold in the end, when, and the place in the order of sending. */
export interface Sent {
  chat: number
  id: number
  text: string
  date: number
  order: number
}

/** Sends what a crew sends, and strangers in between. Every text is like no other. */
export const makeTraffic = (api: BotApi, random: Random) => {
  const sent = new Map<string, Sent>()
  let n = 0
  const pick = <T>(list: T[]): T => list[Math.floor(random() * list.length)]!

  const say = (chat: Chat, from: User, text: string, counts: boolean): void => {
    const date = FROM + ++n
    const { message_id: id } = api.say(chat, from, text, { date })
    if (counts) sent.set(`${chat.id}/${id}`, { chat: chat.id, id, text, date, order: n })
  }
  const stranger = (): void => {
    const who = pick(STRANGERS)
    if (random() < 0.3) say(GROUP, who, `@chaos_bot put ${n} loads corn on creek`, false)
    else say(alone(who), who, pick(['hello', '/start', '/today', 'note: let me in', "how's creek", '/invite']), false)
  }
  const edit = (): void => {
    const old = pick([...sent.values()].slice(-50).filter(s => s.text.startsWith('note')))
    if (!old) return
    n++
    old.text = `note: changed ${n} gates`
    const from = old.chat === GROUP.id ? CREW[0]! : [OWNER, ...CREW].find(u => u.id === old.chat)!
    api.edit(old.chat === GROUP.id ? GROUP : alone(from), from, old.id, old.text)
  }
  const tap = (): void => {
    const asked = api.shown(GROUP.id).findLast(m => m.reply_markup)
    const label = asked?.reply_markup?.inline_keyboard[0]?.[0]?.text
    if (asked && label !== undefined) api.press(GROUP, pick([OWNER, ...CREW]), asked.message_id, label)
  }

  return {
    sent,
    /** The next update, or what comes of it. */
    next: (): void => {
      const r = random()
      if (r < 0.12) stranger()
      else if (r < 0.2) edit()
      else if (r < 0.24) tap()
      else if (r < 0.27) say(GROUP, CREW[1]!, 'put some loads of corn on ridge', false)
      // one person's loads: the same told by two would be asked about
      else if (r < 0.45) say(GROUP, CREW[0]!, `put ${2 + Math.floor(random() * 5)} loads corn on creek`, true)
      else if (r < 0.7) say(GROUP, CREW[0]!, `note: order ${n} bolts`, true)
      else {
        const who = pick([OWNER, ...CREW])
        say(alone(who), who, `note: neighbour wants ${n} bales`, true)
      }
    },
  }
}
