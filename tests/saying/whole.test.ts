import { describe, expect, it } from 'vitest'
import { ASKS, type Ask } from '../../src/book/asks.ts'
import { type Book, foldBook } from '../../src/book/book.ts'
import type { Entry } from '../../src/book/entries.ts'
import { checkEvent } from '../../src/book/events.ts'
import type { Message } from '../../src/book/questions.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { answer, isRefusal } from '../../src/figures/asked/answer.ts'
import { tell } from '../../src/saying/answers.ts'
import { makeSayer } from '../../src/saying/say.ts'

// The answers as the figures really give them: a slot or a note under another name than the sentence asks for throws here.

const say = makeSayer(loadPrompts(), { strict: true })

const bookOf = (events: Record<string, unknown>[]): Book =>
  foldBook(
    events.map((e, i): Entry => {
      const r = checkEvent(e)
      if (!r.ok) throw new Error(r.data.why)
      return {
        v: 1,
        n: i + 1,
        at: `${r.event.on}T15:${String(i % 60).padStart(2, '0')}:00.000Z`,
        by: 'ana',
        body: { kind: 'event', id: `e${i}`, event: r.event },
      }
    }),
  )

const days = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, i) => `2026-10-${String(from + i).padStart(2, '0')}`)

const BOOKS: Record<string, Record<string, unknown>[]> = {
  'an empty book': [],
  'a pile by name only': [{ type: 'pile', on: '2026-08-01', name: 'creek' }],
  'a pile being filled, boxes told': [
    { type: 'pile', on: '2026-08-01', name: 'creek', widthFt: 36, lengthFt: 110 },
    { type: 'box', on: '2026-08-01', name: 'green wagon', lb: 14_000 },
    { type: 'load', on: '2026-09-14', pile: 'creek', crop: 'corn silage', count: 30, box: 'green wagon' },
    { type: 'load', on: '2026-09-15', pile: 'creek', crop: 'corn silage', count: 12, lb: 171_000 },
    { type: 'pack', on: '2026-09-14', pile: 'creek', tractors: 1, tractorLb: 14_000, layerIn: 12 },
    { type: 'supply', on: '2026-09-01', item: 'tires', change: 'have', count: 60 },
    { type: 'supply', on: '2026-09-01', item: 'plastic', change: 'have', count: 2, widthFt: 60, lengthFt: 160 },
  ],
  'a pile being fed, much told': [
    { type: 'pile', on: '2026-05-01', name: 'lane', widthFt: 30, lengthFt: 90, heightFt: 8 },
    { type: 'load', on: '2026-05-28', pile: 'lane', crop: 'haylage', cut: 1, count: 40 },
    { type: 'load', on: '2026-07-02', pile: 'lane', crop: 'haylage', cut: 2, count: 14, dmPct: 38 },
    { type: 'size', on: '2026-07-02', pile: 'lane', widthFt: 31, lengthFt: 92, heightFt: 8 },
    { type: 'cover', on: '2026-07-02', pile: 'lane', material: 'plastic', change: 'on', widthFt: 40, lengthFt: 105 },
    { type: 'ration', on: '2026-09-20', group: 'milking', head: 90, lbPerHead: 55, pile: 'lane' },
    { type: 'open', on: '2026-09-25', pile: 'lane', why: 'feed' },
    ...days(1, 12).map(on => ({ type: 'feed', on, pile: 'lane', lb: 5200 })),
    { type: 'face', on: '2026-10-02', pile: 'lane', atFt: 4 },
    { type: 'face', on: '2026-10-12', pile: 'lane', atFt: 9 },
    { type: 'spoil', on: '2026-10-05', pile: 'lane', count: 2, unit: 'bucket' },
    { type: 'damage', on: '2026-10-06', pile: 'lane', cause: 'animal', animal: 'raccoon', what: 'hole', count: 2 },
    { type: 'check', on: '2026-10-06', pile: 'lane', finding: 'trouble' },
    { type: 'harvest', on: '2027-05-28', crop: 'haylage', cut: 1 },
  ],
  'a pile known by its size, fed without a word': [
    { type: 'pile', on: '2026-08-01', name: 'knoll', widthFt: 30, lengthFt: 90, heightFt: 20 },
    { type: 'cover', on: '2026-08-01', pile: 'knoll', material: 'plastic', change: 'on' },
    { type: 'open', on: '2026-09-25', pile: 'knoll', why: 'feed' },
    { type: 'face', on: '2026-10-10', pile: 'knoll', atFt: 100 },
    { type: 'ration', on: '2026-09-20', group: 'milking', head: 90 },
  ],
  'a pile that is gone': [
    { type: 'pile', on: '2026-08-01', name: 'hollow', widthFt: 30, lengthFt: 90 },
    { type: 'load', on: '2026-08-02', pile: 'hollow', crop: 'beet pulp', count: 10 },
    { type: 'empty', on: '2026-09-25', pile: 'hollow' },
  ],
}

const MORE: Ask[] = [
  { about: 'reach', head: 130 },
  { about: 'reach', until: '2027-09-01', lbPerDay: 14_000, addLb: -20_000, delayDays: 10 },
  { about: 'plan', lb: 1_200_000 },
  { about: 'plan', days: 200, head: 40, lbPerHead: 30 },
  { about: 'loads', from: '2026-09-14', to: '2026-09-15' },
  { about: 'left', pile: 'nowhere' },
]

describe('answers from the figures', () => {
  for (const [name, events] of Object.entries(BOOKS)) {
    it(`are said of ${name}`, () => {
      const book = bookOf(events)
      const pile = (events[0]?.name as string | undefined) ?? undefined
      const asks: Ask[] = [...ASKS.map(about => ({ about, ...(pile && about !== 'plan' && about !== 'supplies' && { pile }) })), ...MORE]
      for (const ask of asks) {
        const got = answer(book, ask, { day: '2026-10-13', at: '2026-10-13T15:00:00.000Z', zone: 'America/Chicago' } as never)
        const said: Message[] = isRefusal(got)
          ? [got]
          : [...tell(got), ...((got.how as Message[] | undefined) ?? []), ...((got.notes as Message[] | undefined) ?? [])]
        for (const line of said) {
          for (const lang of ['en', 'es'] as const) {
            const text = say(line, lang)
            expect(text, `${ask.about}: ${line.code}`).toMatch(/^[^a-z].*[.?]$/)
            expect(text, line.code).not.toMatch(/[{}]|undefined|NaN|null|\[object| {2}| [,.;:]/)
            expect(text.length, line.code).toBeLessThanOrEqual(300)
          }
        }
      }
    })
  }
})
