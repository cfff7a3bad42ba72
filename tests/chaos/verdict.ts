import Database from 'better-sqlite3'
import { eventsOf, foldBook, type Logged } from '../../src/book/book.ts'
import { makeSay } from '../../src/compose.ts'
import { openStore } from '../../src/edges/store.ts'
import type { BotApi } from '../support/botApi.ts'
import { GROUP, type Sent, STRANGERS } from './traffic.ts'

/** New messages that went out, in the order of the outbox; edits and signs are none. */
const sentIn = (file: string): { id: number; chat: string; message: number }[] => {
  const db = new Database(file, { readonly: true })
  try {
    return db
      .prepare(
        "select id, chat, cast(message_id as integer) as message from outbox where instead is null and message_id glob '[0-9]*' order by id",
      )
      .all() as { id: number; chat: string; message: number }[]
  } finally {
    db.close()
  }
}

/** What is wrong with a farm after the storm; empty where nothing is. */
export const faultsOf = (folder: string, api: BotApi, sent: Map<string, Sent>): string[] => {
  const wrong: string[] = []
  const store = openStore(folder, { durable: ['telegram'] })
  try {
    const book = foldBook(store.entries('home'))
    const said = new Map<string, Logged[]>()
    for (const l of book.logged) {
      if (l.withdrawnBy !== undefined || !l.source) continue
      const key = `${l.source.chat}/${l.source.id}`
      said.set(key, [...(said.get(key) ?? []), l])
    }
    for (const [key, s] of sent) {
      const got = said.get(key) ?? []
      if (got.length !== 1) wrong.push(`${key} "${s.text}" stands ${got.length} times in the book`)
      else if (got[0]!.event.said !== s.text) wrong.push(`${key} says "${got[0]!.event.said}", not "${s.text}"`)
    }
    // Order: the first record of each message, as the log has them, is the order of sending; and each has its own time.
    let before = 0
    const seen = new Set<string>()
    for (const l of book.logged) {
      const key = `${l.source?.chat}/${l.source?.id}`
      const s = sent.get(key)
      if (!s || seen.has(key)) continue
      seen.add(key)
      if (s.order < before) wrong.push(`${key} came after what was sent later`)
      before = s.order
      if (Date.parse(l.at) !== s.date * 1000) wrong.push(`${key} is dated ${l.at}`)
    }
    const taps = eventsOf(book, 'load')
      .filter(l => l.event.pile === 'ridge')
      .map(l => book.byId.get(l.id)!.source!.id)
    if (new Set(taps).size !== taps.length) wrong.push('a tap counted twice')
    if (book.logged.some(l => STRANGERS.some(x => String(x.id) === l.by))) wrong.push('a stranger is in the book')
    // Words come in the order they were put in the outbox, in each chat.
    const last = new Map<string, number>()
    for (const r of sentIn(store.file)) {
      if (r.message < (last.get(r.chat) ?? 0)) wrong.push(`reply ${r.id} overtook another in ${r.chat}`)
      last.set(r.chat, r.message)
    }
    if (store.unsettled().length) wrong.push(`${store.unsettled().length} messages are not settled`)
    if (store.queued('telegram').length) wrong.push(`${store.queued('telegram').length} replies are unsent`)

    const say = makeSay()
    const lines = new Set((['en', 'es'] as const).map(lang => say({ code: 'telegram-stranger', data: {} }, lang)))
    for (const who of STRANGERS) for (const m of api.shown(who.id)) if (!lines.has(m.text)) wrong.push(`a stranger was told "${m.text}"`)
    // Everybody of the crew hears of each of their messages: by words under it, or by a sign.
    const under = new Set(
      api.calls
        .filter(c => c.method === 'sendMessage')
        .map(c => (c.payload.reply_parameters as { message_id?: number } | undefined)?.message_id),
    )
    for (const s of sent.values())
      if (s.chat === GROUP.id && !under.has(s.id) && !api.reactions(GROUP.id, s.id).length)
        wrong.push(`${s.id} in the group was not answered`)
    return wrong
  } finally {
    store.close()
  }
}
