import type { Answer, Ask } from './book/asks.ts'
import { apply, type Book, boxes, foldBook, lessons, nameOf, personOf, pileNames } from './book/book.ts'
import { type Body, ENTRY_VERSION, type Entry } from './book/entries.ts'
import type { Message, Question } from './book/questions.ts'
import type { Due, EventLog, Incoming, Lang, Reply, Result, Role } from './ports.ts'
import { indexNames, type NameIndex } from './reading/names.ts'
import { read } from './reading/read.ts'
import type { Act, Reading } from './reading/reading.ts'
import type { Say } from './saying/say.ts'
import { lastTold } from './settle/context.ts'
import { guessed, type Settled, settle } from './settle/settle.ts'
import { isAnswer, labelOf, type Refused, words } from './settle/wording.ts'
import { type Instant, localTime } from './units/calendar.ts'
import { due, nextDue } from './watch/due.ts'
import { figuresFrom } from './watch/figures.ts'

/** When and where a question is asked. */
export interface Moment {
  day: string
  at: Instant
  zone: string
}

export interface CoreParts {
  log: EventLog
  zone: string
  say: Say
  /** Works out one ask from the book; a failure says what is missing. */
  answer: (book: Book, ask: Ask, now: Moment) => Answer | Refused
  /** The piles a question without a name is about. */
  pilesFor: (book: Book, ask: Ask) => string[]
  /** For channels that know no members of their own: the first sender owns the farm. */
  firstOwns: boolean
}

export interface Core {
  /** One message through every room: hear, read, settle, append, fold, figure, say. The same message twice is one. */
  handle(message: Incoming): Result
  /** What is due by now, said once. */
  tick(farm: string, channel: string, now: Instant): Due[]
  /** When to look at a farm again. */
  next(farm: string, now: Instant): Instant
  /** How a text would be read, for people. */
  /** Offers somebody else's guess at a message that was not understood; it is only ever asked about. */
  offer(message: Incoming, acts: Act[], lang: Lang): Result | undefined
  explain(farm: string, text: string, at: Instant): Reading
  book(farm: string): Book
}

interface Desk {
  book: Book
  /** What each person said last in each chat and was not understood, with when. */
  missed: Map<string, number>
  names?: { at: number; index: NameIndex }
}

const MOST = 4096
const NOTHING: Omit<Result, 'outcome'> = { recorded: [], withdrawn: [], asks: [], answers: [], replies: [] }
const PER_PILE = new Set(['left', 'face', 'density', 'status', 'loss', 'mix', 'ready', 'checks', 'cover'])

export const makeCore = (parts: CoreParts): Core => {
  const { log, zone, say } = parts
  const desks = new Map<string, Desk>()
  const deskOf = (farm: string): Desk => {
    let d = desks.get(farm)
    if (!d) {
      d = { book: foldBook(log.entries(farm)), missed: new Map() }
      desks.set(farm, d)
    }
    return d
  }
  const namesOf = (d: Desk): NameIndex => {
    if (d.names?.at !== d.book.naming) {
      const people = [...d.book.members.keys()].map(p => nameOf(d.book, p))
      d.names = {
        at: d.book.naming,
        index: indexNames({ piles: pileNames(d.book), boxes: [...boxes(d.book).keys()], words: lessons(d.book), people }),
      }
    }
    return d.names.index
  }
  const entriesOf = (
    book: Book,
    bodies: Body[],
    message: Pick<Incoming, 'channel' | 'chat' | 'id' | 'edit' | 'edits' | 'at' | 'from'>,
  ): Entry[] =>
    bodies.map((body, k) => ({
      v: ENTRY_VERSION,
      n: book.last + 1 + k,
      at: message.at,
      by: body.kind === 'event' ? personOf(book, body.event.by, message.from) : message.from,
      source: { channel: message.channel, chat: message.chat, id: message.edits ?? message.id, edit: message.edit },
      body,
    }))
  const readFor = (d: Desk, text: string, at: Instant, lang: Lang, from?: string): Reading => {
    const now = localTime(at, zone)
    return read(text, {
      names: namesOf(d),
      now: { day: now.day, hour: now.hour },
      lang,
      last: from === undefined ? undefined : lastTold(d.book, from, at),
      explain: from === undefined,
    })
  }

  const handle = (message: Incoming): Result => {
    const taken = log.take(message)
    if (taken.result) return taken.result
    const d = deskOf(message.farm)
    const { book } = d
    const known = book.members.get(message.from)
    const role: Role = message.role ?? known?.role ?? (parts.firstOwns ? (book.members.size ? 'crew' : 'owner') : 'stranger')
    const reading = readFor(d, message.text, message.at, known?.lang ?? 'en', message.from)
    const lang = reading.words >= 2 || known?.lang === undefined ? reading.lang : known.lang
    const now = localTime(message.at, zone)
    const moment: Moment = { day: now.day, at: message.at, zone }
    let n = 0
    const settled: Settled =
      message.text.length > MOST
        ? { outcome: 'refused', entries: [], recorded: [], withdrawn: [], asks: [], word: { code: 'too-long', data: {} } }
        : settle(reading, {
            book,
            message,
            day: now.day,
            hour: now.hour,
            lang,
            role,
            name: known?.name ?? message.from,
            missed: Date.parse(message.at) - (d.missed.get(`${message.chat}\n${message.from}`) ?? Number.NEGATIVE_INFINITY) < 600_000,
            id: () => `${book.last + 1}.${++n}`,
          })
    const who = `${message.chat}\n${message.from}`
    if (
      (settled.outcome === 'ignored' || settled.outcome === 'puzzled') &&
      reading.bare.numbers.length > 0 &&
      reading.trade >= 2 &&
      !settled.word?.code.startsWith('noted')
    )
      d.missed.set(who, Date.parse(message.at))
    else d.missed.delete(who)
    const bodies: Body[] = []
    if (
      role !== 'stranger' &&
      (known === undefined ||
        known.lang !== lang ||
        (known.role !== role && message.role !== undefined) ||
        (message.private && known.address === undefined))
    ) {
      bodies.push({ kind: 'member', person: message.from, role, lang, ...(message.private ? { address: message.chat } : {}) })
    }
    if (!message.private && role !== 'stranger' && book.settings.get('crewChat') === undefined && parts.firstOwns)
      bodies.push({ kind: 'setting', name: 'crewChat', value: message.chat })
    const asks = expand(book, settled.asks)
    const told = asks.map(ask => ({ ask, got: ask.about === 'why' ? whyOf(book, message.chat, moment) : parts.answer(book, ask, moment) }))
    if (asks.length && asks[0]!.about !== 'why')
      bodies.push({ kind: 'setting', name: `asked:${message.chat}`, value: JSON.stringify(asks) })
    bodies.push(...settled.entries)
    const entries = entriesOf(book, bodies, message)
    return keep(message.farm, entries, () => {
      const text = words(
        book,
        settled,
        told.map(t => t.got),
        now.day,
      )
      const q = settled.question
      const reply = {
        to: message.chat,
        text: text.map(t => say(t, lang)).join('\n'),
        under: message.edits ?? message.id,
        ...(q && asked(q, lang)),
      }
      const { outcome, recorded, withdrawn } = settled
      const answers = told.flatMap(t => (isAnswer(t.got) ? [t.got] : []))
      const result: Result = { outcome, recorded, withdrawn, asks, answers, replies: text.length ? [reply] : [] }
      log.settle(message, entries, result)
      return result
    })
  }

  /** Takes entries into the book and stores them, all or nothing: the book in memory must not run ahead of the log. */
  const keep = <T>(farm: string, entries: Entry[], store: () => T): T => {
    const { book } = deskOf(farm)
    for (const e of entries) apply(book, e)
    try {
      return store()
    } catch (error) {
      desks.delete(farm)
      throw error
    }
  }
  const asked = (q: Question, lang: Lang) => ({ choices: q.choices.map(ch => labelOf(ch, say, lang)), question: q.id })

  const whyOf = (book: Book, chat: string, moment: Moment): Answer | Refused => {
    const last = book.settings.get(`asked:${chat}`)
    if (typeof last !== 'string') return { code: 'nothing-to-explain', data: {} }
    const how: Message[] = []
    for (const ask of JSON.parse(last) as Ask[]) {
      const got = parts.answer(book, ask, moment)
      if (isAnswer(got)) how.push(...((got.how as Message[] | undefined) ?? []))
      else how.push(got)
    }
    return { about: 'why', how }
  }

  /** A question about no pile in particular is about each that it fits. */
  const expand = (book: Book, asks: Ask[]): Ask[] =>
    asks.flatMap(a => {
      const names = a.pile === undefined && PER_PILE.has(a.about) ? parts.pilesFor(book, a) : []
      return names.length ? names.map(pile => ({ ...a, pile })) : [a]
    })

  const tick = (farm: string, channel: string, at: Instant): Due[] => {
    const d = deskOf(farm)
    const book = d.book
    const now = localTime(at, zone)
    const items = due(book, { at, zone }, figuresFrom(book, { day: now.day, at, zone }, parts.answer))
    const out: Due[] = []
    for (const item of items) {
      const owner = [...book.members.values()].find(x => x.role === 'owner')
      const member = item.to === 'owner' ? owner : book.members.get(item.to)
      const crew = book.settings.get('crewChat')
      const to =
        item.to === 'crew' && typeof crew === 'string'
          ? crew
          : (member?.address ?? (typeof crew === 'string' ? crew : (owner?.address ?? owner?.person)))
      const lang = (item.to === 'crew' ? owner?.lang : member?.lang) ?? 'en'
      const replies: Reply[] =
        to === undefined
          ? []
          : [
              {
                to,
                text: [item.message]
                  .flat()
                  .map(x => say(x, lang))
                  .join('\n'),
              },
            ]
      const entries = [{ v: ENTRY_VERSION, n: book.last + 1, at, by: 'clock', body: { kind: 'said' as const, key: item.key } }]
      keep(farm, entries, () => log.append(farm, channel, entries, replies))
      if (replies.length) out.push({ due: item.at, farm, replies })
    }
    return out
  }

  const offer = (message: Incoming, acts: Act[], lang: Lang): Result | undefined => {
    const d = deskOf(message.farm)
    const { book } = d
    const now = localTime(message.at, zone)
    // the guess settles as a message of its own, beside the one it is a guess at
    const own: Incoming = { ...message, edit: `${message.edit}?` }
    const taken = log.take(own)
    if (taken.result) return taken.result
    let n = 0
    const role = message.role ?? book.members.get(message.from)?.role ?? 'stranger'
    const settled = guessed(acts, {
      book,
      message,
      day: now.day,
      hour: now.hour,
      lang,
      role,
      name: nameOf(book, message.from),
      missed: false,
      id: () => `${book.last + 1}.${++n}`,
    })
    const q = settled?.question
    const result: Result = {
      ...NOTHING,
      outcome: settled?.outcome ?? 'ignored',
      replies: q ? [{ to: message.chat, text: say(q.ask, lang), under: message.id, ...asked(q, lang) }] : [],
    }
    const entries = entriesOf(book, settled?.entries ?? [], own)
    keep(message.farm, entries, () => log.settle(own, entries, result))
    return q ? result : undefined
  }

  return {
    handle,
    tick,
    offer,
    next: (farm, now) => nextDue(deskOf(farm).book, { at: now, zone }),
    explain: (farm, text, at) => readFor(deskOf(farm), text, at, 'en'),
    book: farm => deskOf(farm).book,
  }
}
