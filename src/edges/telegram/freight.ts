import { type Book, eventsFrom, type Logged, type Member, setting } from '../../book/book.ts'
import type { Incoming, Lang } from '../../ports.ts'
import type { Desk } from './desk.ts'
import type { Heard } from './heard.ts'
import { CHANNEL, type Core } from './options.ts'
import { langOf } from './people.ts'

/** A picture without words goes with the sender's own record of this chat, where that is not older, ms. From trying, no source. */
const WITH_MS = 15 * 60_000

/** What the house reads a place by, in the language that its sender is then answered in. */
const WE_ARE_AT: Record<Lang, string> = { en: 'we are at', es: 'estamos en' }

export interface Freight {
  /** What came without words; hands back what the house is to read instead. */
  wordless(heard: Heard, member: Member): Incoming | undefined
  /** A message with words was taken: its pictures are kept with it, and so are those of its album. */
  captioned(heard: Heard): void
}

export interface FreightOptions extends Core {
  desk: Desk
  /** Keeps pictures with a message of their chat. */
  keep(heard: Heard, message: string): void
  /** Whether voice notes can be heard at all. */
  hears: boolean
}

/** The message whose record a picture without words belongs to. */
const recordFor = (book: Book, { message }: Heard): string | undefined => {
  const { chat, from } = message
  if (message.replyTo !== undefined) {
    const told = eventsFrom(book, { channel: CHANNEL, chat, id: message.replyTo })
    return told.length ? message.replyTo : undefined
  }
  const fits = (l: Logged): boolean =>
    l.withdrawnBy === undefined && l.by === from && l.source?.chat === chat && l.source.channel === CHANNEL
  const last = book.logged.findLast(fits)
  const age = last ? Date.parse(message.at) - Date.parse(last.at) : Number.POSITIVE_INFINITY
  return age >= 0 && age <= WITH_MS ? last?.source?.id : undefined
}

/**
 * What has no words. A picture goes with what it shows, where that was told: by a reply to it, or just before; the pictures of an
 * album go with its words. The owner's place becomes the farm's, where none is known. Talk is left alone. All else hears, in its
 * own chat only, that it was not understood.
 */
export const makeFreight = (o: FreightOptions): Freight => {
  /** Albums by the message that carries their words, and pictures that came before it. */
  const albums = new Map<string, { anchor?: string; waiting: Heard[] }>()

  const albumOf = (h: Heard) => {
    const key = `${h.message.chat}/${h.album}`
    const known = albums.get(key) ?? { waiting: [] }
    albums.set(key, known)
    // Its pictures come within seconds of one another; this is only a bound.
    for (const old of albums.keys()) if (albums.size > 20) albums.delete(old)
    return known
  }

  const shot = (h: Heard, member: Member): void => {
    if (member.role === 'viewer') {
      if (h.message.private) o.desk.refuse(h, 'refused-viewer')
      return
    }
    const album = h.album === undefined ? undefined : albumOf(h)
    const first = album === undefined || album.waiting.length === 0
    const target = album?.anchor ?? recordFor(o.book(), h)
    if (target !== undefined) {
      o.keep(h, target)
      if (first && album?.anchor === undefined) o.desk.answer(h, 'telegram-picture-kept', {}, [], 'answered', { plain: true })
      album?.waiting.push(h)
      return
    }
    album?.waiting.push(h)
    if (h.message.private && first) o.desk.refuse(h, 'telegram-picture-words')
  }

  const place = (h: Heard, member: Member): Incoming | undefined => {
    const { lat, lon } = h.cargo.place!
    if (!h.message.private) return undefined
    const known = Number.isFinite(setting(o.book(), 'lat', Number.NaN))
    if (member.role !== 'owner' || known) {
      o.desk.refuse(h, known && member.role === 'owner' ? 'telegram-place-known' : 'telegram-words-only')
      return undefined
    }
    // Four decimals are some ten metres; a whole number would be no place to the reader.
    return { ...h.message, text: `${WE_ARE_AT[langOf(o.book(), h.user)]} ${lat.toFixed(4)}, ${lon.toFixed(4)}` }
  }

  const voice = (h: Heard): Incoming | undefined => {
    if (o.hears) return { ...h.message, text: '', voice: h.cargo.voice! }
    const key = `no-ear:${h.message.from}`
    if (h.message.private) o.desk.refuse(h, 'telegram-no-ear')
    else if (!o.book().said.has(key)) o.desk.refuse(h, 'telegram-no-ear', [{ kind: 'said', key }])
    return undefined
  }

  return {
    wordless: (h, member) => {
      switch (h.cargo.kind) {
        case 'shot':
          shot(h, member)
          return undefined
        case 'place':
          return place(h, member)
        case 'voice':
          return voice(h)
        case 'contact':
        case 'other':
          if (h.message.private) o.desk.refuse(h, 'telegram-words-only')
          return undefined
        default:
          return undefined
      }
    },
    captioned: h => {
      const { id } = h.message
      if (h.cargo.shots.length) o.keep(h, id)
      if (h.album === undefined) return
      const album = albumOf(h)
      for (const earlier of album.waiting.splice(0)) o.keep(earlier, id)
      album.anchor = id
    },
  }
}
