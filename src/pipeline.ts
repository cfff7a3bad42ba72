import type { Answer, Ask } from './book/asks.ts'
import { type Book, nameOf } from './book/book.ts'
import type { Body } from './book/entries.ts'
import type { Message, Question } from './book/questions.ts'
import { makeTick } from './clockwork.ts'
import { type Desk, makeDesks } from './desk.ts'
import type { Due, EventLog, Incoming, Lang, Reply, Result, Role } from './ports.ts'
import type { Act, Reading } from './reading/reading.ts'
import type { Say } from './saying/say.ts'
import type { Context } from './settle/context.ts'
import { settleAny } from './settle/heard.ts'
import { isPlain } from './settle/plain.ts'
import { guessed, type Settled } from './settle/settle.ts'
import { isAnswer, labelOf, type Refused, words } from './settle/wording.ts'
import { type Instant, localTime } from './units/calendar.ts'
import type { Alert } from './watch/alerts.ts'
import { nextDue } from './watch/due.ts'
import { ofPerson } from './watch/settings.ts'

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
  /** What a weather feed warned of, where one is set up. */
  alerts?: () => Alert[]
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
  /** Offers somebody else's guess at a message that was not understood; it is only ever asked about. */
  offer(message: Incoming, acts: Act[], lang: Lang): Result | undefined
  /** How a text would be read, for people. */
  explain(farm: string, text: string, at: Instant): Reading
  book(farm: string): Book
}

/** Longer texts are turned away, characters: a message of the Telegram Bot API has no more. */
const MOST = 4096
/** So long after a message that was not understood the next may be the same one said better, ms. */
const SAID_AGAIN = 600_000
const NOTHING: Omit<Result, 'outcome'> = { recorded: [], withdrawn: [], asks: [], answers: [], replies: [] }
/** Questions that are about each pile, where none is named. */
const PER_PILE = new Set(['left', 'face', 'density', 'status', 'loss', 'mix', 'ready', 'checks', 'cover'])

/** The language somebody is to be answered in, where that was set. */
const setLang = (book: Book, person: string): Lang | undefined => {
  const set = book.settings.get(ofPerson(person, 'lang'))
  return set === 'en' || set === 'es' ? set : undefined
}

/** The pictures that an answer shows: the first with its words, the others after it. */
const withPictures = (reply: Reply, answers: Answer[]): Reply[] => {
  const [first, ...rest] = answers.flatMap(a => (Array.isArray(a.pictures) ? (a.pictures as string[][]).flat() : []))
  return first === undefined ? [reply] : [{ ...reply, picture: first }, ...rest.map(picture => ({ to: reply.to, text: '', picture }))]
}

/** It spoke of the work, with a number, and nothing came of it. */
const wasMissed = (settled: Settled, reading: Reading): boolean =>
  (settled.outcome === 'ignored' || settled.outcome === 'puzzled') &&
  reading.bare.numbers.length > 0 &&
  reading.trade >= 2 &&
  !settled.word?.code.startsWith('noted')

export const makeCore = (parts: CoreParts): Core => {
  const { log, zone, say } = parts
  const desks = makeDesks(log, zone)

  const contextOf = ({ book }: Desk, message: Incoming, lang: Lang, role: Role): Context => {
    const { day, hour } = localTime(message.at, zone)
    let n = 0
    return {
      book,
      message,
      day,
      hour,
      zone,
      lang,
      role,
      name: nameOf(book, message.from),
      missed: false,
      id: () => `${book.last + 1}.${++n}`,
    }
  }

  const handle = (message: Incoming): Result => {
    const taken = log.take(message)
    if (taken.result) return taken.result
    const d = desks.of(message.farm)
    const { book } = d
    const known = book.members.get(message.from)
    const role: Role = message.role ?? known?.role ?? (parts.firstOwns ? (book.members.size ? 'crew' : 'owner') : 'stranger')
    const reading = desks.read(d, message.text, message.at, known?.lang ?? 'en', message.from)
    const lang =
      setLang(book, message.from) ??
      (reading.words >= 2 || known?.lang === undefined || reading.asks.length > 0 || reading.wish !== undefined ? reading.lang : known.lang)
    const c = contextOf(d, message, lang, role)
    const moment: Moment = { day: c.day, at: message.at, zone }
    const who = `${message.chat}\n${message.from}`
    const settled: Settled =
      message.text.length > MOST
        ? { outcome: 'refused', entries: [], recorded: [], withdrawn: [], asks: [], word: { code: 'too-long', data: {} } }
        : settleAny(reading, {
            ...c,
            missed: Date.parse(message.at) - (d.missed.get(who) ?? Number.NEGATIVE_INFINITY) < SAID_AGAIN,
            read: text => desks.read(d, text, message.at, lang, message.from),
          })
    if (wasMissed(settled, reading)) d.missed.set(who, Date.parse(message.at))
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
    const entries = desks.entries(book, bodies, message, settled.raised)
    return desks.keep(message.farm, entries, () => {
      const text = words(
        book,
        settled,
        told.map(t => t.got),
        c.day,
      )
      const q = settled.question
      const reply = {
        to: message.chat,
        // who asks for another language hears the answer in it
        text: text.map(t => say(t, setLang(book, message.from) ?? lang)).join('\n'),
        under: message.edits ?? message.id,
        ...(q && asked(q, lang)),
        ...(isPlain(book, settled, reading, message, c.day) && { plain: true }),
      }
      const { outcome, recorded, withdrawn } = settled
      const answers = told.flatMap(t => (isAnswer(t.got) ? [t.got] : []))
      const result: Result = { outcome, recorded, withdrawn, asks, answers, replies: text.length ? withPictures(reply, answers) : [] }
      log.settle(message, entries, result)
      return result
    })
  }

  const asked = (q: Question, lang: Lang) => ({ choices: q.choices.map(ch => labelOf(ch, say, lang)), question: q.id })

  const whyOf = (book: Book, chat: string, moment: Moment): Answer | Refused => {
    const last = book.settings.get(`asked:${chat}`)
    if (typeof last !== 'string') return { code: 'nothing-to-explain', data: {} }
    const how: Message[] = []
    const asks = JSON.parse(last) as Ask[]
    for (const ask of asks) {
      const got = parts.answer(book, ask, moment)
      if (asks.length > 1 && ask.pile !== undefined) how.push({ code: 'how-of', data: { pile: ask.pile } })
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

  const offer = (message: Incoming, acts: Act[], lang: Lang): Result | undefined => {
    const d = desks.of(message.farm)
    const { book } = d
    // the guess settles as a message of its own, beside the one it is a guess at
    const own: Incoming = { ...message, edit: `${message.edit}?` }
    const taken = log.take(own)
    if (taken.result) return taken.result
    const role = message.role ?? book.members.get(message.from)?.role ?? 'stranger'
    const settled = guessed(acts, contextOf(d, message, lang, role))
    const q = settled?.question
    const result: Result = {
      ...NOTHING,
      outcome: settled?.outcome ?? 'ignored',
      replies: q ? [{ to: message.chat, text: say(q.ask, lang), under: message.id, ...asked(q, lang) }] : [],
    }
    const entries = desks.entries(book, settled?.entries ?? [], own)
    desks.keep(message.farm, entries, () => log.settle(own, entries, result))
    return q ? result : undefined
  }

  return {
    handle,
    tick: makeTick(parts, desks),
    offer,
    next: (farm, now) => nextDue(desks.of(farm).book, { at: now, zone }),
    explain: (farm, text, at) => desks.read(desks.of(farm), text, at, 'en'),
    book: farm => desks.of(farm).book,
  }
}
