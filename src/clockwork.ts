import type { Book } from './book/book.ts'
import { type Body, ENTRY_VERSION } from './book/entries.ts'
import type { Message, Question } from './book/questions.ts'
import type { Desks } from './desk.ts'
import type { CoreParts } from './pipeline.ts'
import type { Due, Reply } from './ports.ts'
import { type Instant, localTime } from './units/calendar.ts'
import { isPhone } from './units/phone.ts'
import { due } from './watch/due.ts'
import { figuresFrom } from './watch/figures.ts'
import { type DueItem, TAPPED } from './watch/item.ts'
import { type Landing, landing } from './watch/people.ts'

/** What a reminder, and what an asking after something undone, can be answered with by a tap; in this order. */
const ANSWERS = {
  reminder: ['done', 'hour', 'tomorrow'],
  patched: ['patched', 'later'],
  walked: ['walked', 'later'],
  hail: ['hail', 'none', 'walked'],
  wind: ['wind', 'none', 'walked'],
  // inches: whoever types "2" means as much by it as who takes the second choice
  rain: [1, 2, 3, 'none'],
} as const

const labelOf = (value: string | number): Message =>
  typeof value === 'number' ? { code: 'choice-inches', data: { inches: value } } : { code: `choice-${value}`, data: {} }

/** What can be answered by a tap stands as an open question until it is, or comes again. */
const buttonsOf = (item: DueItem, { chat, person, lang }: Landing, channel: string, at: Instant): Question | undefined => {
  const ask = [item.message].flat()[0]
  const kind = item.reminder === undefined ? item.offer?.did : 'reminder'
  if (!kind || chat === undefined || !ask) return undefined
  return {
    id: item.key,
    chat,
    to: person ?? '',
    lang,
    at,
    source: { channel, chat, id: '', edit: '' },
    ask: { code: ask.code, data: { ...ask.data, ...(item.reminder ? { id: item.reminder } : { piles: item.offer!.piles }) } },
    choices: ANSWERS[kind].map(value => ({ label: labelOf(value), act: 'fill', value })),
    slot: TAPPED,
    drafts: [],
  }
}

/** The buttons of an earlier asking of the same thing. */
const earlierOf = (book: Book, q: Question): Body[] =>
  [...book.questions.values()]
    .filter(o => o.slot === TAPPED && o.chat === q.chat && sameThing(o, q))
    .map(o => ({ kind: 'close', question: o.id, how: 'lapsed' }))

const sameThing = (a: Question, b: Question): boolean =>
  a.ask.data.id !== undefined || b.ask.data.id !== undefined ? a.ask.data.id === b.ask.data.id : a.choices[0]?.value === b.choices[0]?.value

/**
 * The clock's way through the house: due, append, say. What was said is an entry, so that nothing is said twice. What goes to
 * a telephone goes by text message, whatever the farm's channel is.
 */
export const makeTick =
  ({ log, zone, say, answer, alerts }: CoreParts, desks: Desks) =>
  (farm: string, channel: string, at: Instant): Due[] => {
    const { book } = desks.of(farm)
    const { day } = localTime(at, zone)
    const out: Due[] = []
    for (const item of due(book, { at, zone }, { ...figuresFrom(book, { day, at, zone }, answer), ...(alerts && { alerts }) })) {
      const where = landing(book, item.to)
      const text = [item.message].flat().map(x => say(x, where.lang))
      const by = isPhone(where.chat ?? '') ? 'sms' : channel
      const q = buttonsOf(item, where, by, at)
      const replies: Reply[] =
        where.chat === undefined
          ? []
          : [
              {
                to: where.chat,
                text: text.join('\n'),
                ...(q && { choices: q.choices.map(c => say(c.label as never, where.lang)), question: q.id }),
              },
            ]
      const bodies: Body[] = [
        ...[item.key, ...(item.also ?? [])].map((key): Body => ({ kind: 'said', key })),
        ...(item.lapses ?? []).map((question): Body => ({ kind: 'close', question, how: 'lapsed' })),
        ...(q ? [...earlierOf(book, q), { kind: 'ask', question: q } as const] : []),
      ]
      const entries = bodies.map((body, k) => ({ v: ENTRY_VERSION, n: book.last + 1 + k, at, by: 'clock', body }))
      desks.keep(farm, entries, () => log.append(farm, by, entries, replies))
      if (replies.length) out.push({ due: item.at, farm, replies })
    }
    return out
  }
