import type { Answer } from '../book/asks.ts'
import { type Book, piles } from '../book/book.ts'
import type { Event } from '../book/events.ts'
import { isCovered } from '../book/pile.ts'
import type { Choice, Message } from '../book/questions.ts'
import type { Lang } from '../ports.ts'
import { tell } from '../saying/answers.ts'
import { puzzled } from '../saying/ask.ts'
import { corrected, echoAll, tookBack, totalLoads, totalWeight } from '../saying/echo.ts'
import { examples } from '../saying/examples.ts'
import type { Say } from '../saying/say.ts'
import type { Settled } from './settle.ts'

/** Why a question cannot be answered. */
export interface Refused {
  code: string
  data: Message['data']
}

export const isAnswer = (x: Answer | Refused): x is Answer => !('code' in x)

/** What stands on a button. */
export const labelOf = (ch: Choice, say: Say, lang: Lang): string => (typeof ch.label === 'string' ? ch.label : say(ch.label, lang))

/** The lines of one reply: what was taken back, what was understood, what is answered, what is asked. */
export const words = (book: Book, s: Settled, got: (Answer | Refused)[], day: string): Message[] => {
  const out: Message[] = s.heard ? [{ code: 'voice-heard', data: { text: s.heard } }] : []
  if (s.withdrawn.length === 1 && s.recorded.length === 1 && s.withdrawn[0]!.type === s.recorded[0]!.type)
    out.push(corrected(s.recorded[0]!, s.withdrawn[0]!, { day, total: totalOf(book, s.recorded[0]!) }))
  else {
    if (s.withdrawn.length) out.push(tookBack(s.withdrawn))
    if (s.recorded.length)
      out.push(
        echoAll(s.recorded, (e, k) => ({
          day,
          total: s.recorded.slice(k + 1).some(x => x.type === e.type && 'pile' in x && 'pile' in e && x.pile === e.pile)
            ? undefined
            : totalOf(book, e),
          known: e.type === 'pile' && (book.byPile.get(e.name)?.length ?? 0) > 1,
        })),
      )
  }
  for (const a of got)
    out.push(...(isAnswer(a) ? tell({ ...a, ...(a.about === 'help' ? { examples: examplesFor(book) } : {}) } as Answer) : [a]))
  if (s.question) out.push(s.question.ask)
  if (s.cut && s.outcome !== 'ignored') out.push({ code: 'read-first-words', data: {} })
  if (s.word) out.push(s.word.code === 'puzzled' ? puzzled(examplesFor(book).slice(0, 2)) : s.word)
  return out
}

/** A pile's running total, in the measure it is counted in. */
const totalOf = (book: Book, e: Event): Message | undefined => {
  if (e.type !== 'load') return undefined
  const p = piles(book).find(x => x.name === e.pile)
  if (!p) return undefined
  const count = p.loads.reduce((t, l) => t + (l.event.count ?? 0), 0)
  const lb = p.loads.reduce((t, l) => t + (l.event.count === undefined ? (l.event.lb ?? 0) : 0), 0)
  if (count && !lb) return p.loads.length > 1 ? totalLoads(Math.round(count * 100) / 100) : undefined
  return lb && !count && p.loads.length > 1 ? totalWeight(lb) : undefined
}

const examplesFor = (book: Book): Message[] => {
  const all = piles(book)
  const name = (fits: (p: (typeof all)[number]) => boolean) => all.find(fits)?.name
  return examples({
    filling: name(p => p.stage === 'filling'),
    feeding: name(p => p.stage === 'feeding'),
    covered: name(isCovered),
    pile: all.at(-1)?.name,
  })
}
