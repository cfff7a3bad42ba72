import { describe, expect, it } from 'vitest'
import { indexNames } from '../../src/reading/names.ts'
import { read } from '../../src/reading/read.ts'

const names = indexNames({
  piles: new Map([
    ['ridge', 'ridge'],
    ['loma', 'ridge'],
    ['swale', 'swale'],
  ]),
  boxes: [],
  words: new Map(),
  people: [],
})
const heard = (text: string) => read(text, { names, now: { day: '2026-11-20', hour: 12 }, lang: 'en' })

type Slots = Record<string, unknown>
/** What is supposed, and the ways to say it in both languages. None has a question mark: a crew types without. */
const SAID: [string, Slots, string[], string[]][] = [
  [
    'ten more cows',
    { headMore: 10 },
    [
      'what if we milk 10 more',
      'do we make it with 10 more cows',
      'what if we add 10 cows',
      'suppose we buy 10 heifers',
      'could we carry 10 more cows',
    ],
    [
      'y si ordeñamos 10 más',
      'nos alcanza con 10 vacas más',
      'y si metemos 10 vacas',
      'qué pasa si compramos 10 vaquillas',
      'y si tenemos 10 vacas más',
    ],
  ],
  [
    'twelve fewer',
    { headMore: -12 },
    ['what if we cull 12', 'how about 12 fewer cows', 'what if we sell 12 cows', 'what happens if we ship 12 cows'],
    ['y si desechamos 12', 'y si tenemos 12 vacas menos', 'y si vendemos 12 vacas', 'qué pasa si vendemos 12 vacas'],
  ],
  [
    'a herd of 130',
    { head: 130 },
    ['what if we milk 130', 'say we go to 130 head', 'if we milk 130 do we make it', 'would we make it with 130 cows'],
    ['y si ordeñamos 130', 'alcanza con 130 vacas', 'llegamos si ordeñamos 130', 'qué pasa si ordeñamos 130'],
  ],
  [
    'another ration a head',
    { lbPerHead: 50 },
    [
      'what if we go to 50 lb a head',
      'what if we feed 50 pounds a head',
      'what if we drop to 50 lb a cow',
      'do we make it at 50 lb a head',
    ],
    [
      'y si damos 50 libras por vaca',
      'y si le bajamos a 50 libras por cabeza',
      'alcanza con 50 libras por vaca',
      'qué pasa si damos 50 libras por cabeza',
    ],
  ],
  [
    'another ration of one feed',
    { lbPerHead: 50, crop: 'corn silage' },
    [
      'what if we feed 50 lb corn silage a head',
      'what if we cut the corn back to 50 lb a head',
      'what if we drop corn silage to 50 lb',
      'suppose we feed 50 lb of corn a head',
    ],
    [
      'y si damos 50 libras de maíz por vaca',
      'y si le bajamos al maíz a 50 libras por cabeza',
      'qué pasa si damos 50 libras de maíz por cabeza',
      'y si damos 50 libras de ensilaje de maíz por vaca',
    ],
  ],
  [
    'another day',
    { lbPerDay: 9000 },
    ['what if we feed 9000 a day', 'do we make it at 9k a day', 'suppose we feed 9,000 a day', 'what if we fed 9,000 lb a day'],
    [
      'y si damos 9000 al día',
      'alcanza si damos 9 mil por día',
      'y si subimos a 9 mil libras al día',
      'qué pasa si damos 9,000 libras diarias',
    ],
  ],
  [
    'five pounds more a head',
    { perHeadMore: 5 },
    [
      'what if we feed 5 lb more a head',
      'what if we give 5 pounds more a cow',
      'what if we add 5 lb a head',
      'suppose we feed 5 lb more a head',
    ],
    [
      'y si damos 5 libras más por vaca',
      'y si damos 5 libras más por cabeza',
      'qué pasa si damos 5 libras más por vaca',
      'y si subimos 5 libras por vaca',
    ],
  ],
  [
    'a tenth less',
    { pctMore: -10 },
    ['what if we feed 10% less', 'what if we cut feeding 10 percent', 'suppose we feed 10% less', 'what if we drop 10 percent'],
    ['y si damos 10 por ciento menos', 'y si bajamos 10 por ciento', 'qué pasa si damos 10% menos', 'y si damos 10 % menos'],
  ],
  [
    'two weeks late',
    { delayDays: 14 },
    [
      'what if harvest is two weeks late',
      'what if harvest is 2 weeks later',
      'say harvest slips two weeks',
      'do we make it if harvest is 14 days behind',
    ],
    [
      'y si la cosecha se atrasa dos semanas',
      'y si la cosecha viene dos semanas tarde',
      'qué pasa si la cosecha se retrasa 14 días',
      'alcanza si la cosecha llega dos semanas después',
    ],
  ],
  [
    'fifty tons sold',
    { addLb: -100_000 },
    ['what if we sell 50 tons', 'could we sell 50 tons', 'can we spare 50 ton', 'what if I sold 50 ton to the neighbor'],
    ['y si vendemos 50 toneladas', 'podemos vender 50 toneladas', 'qué pasa si vendo 50 toneladas', 'puedo vender 50 toneladas'],
  ],
  [
    'forty tons bought',
    { addLb: 80_000 },
    [
      'what if we buy 40 ton of hay',
      'if we buy 40 tons do we make it',
      'what if we bought in 40 tons',
      'what if we buy 40 tons at 70 a ton',
    ],
    [
      'y si compramos 40 toneladas de heno',
      'alcanza si compramos 40 toneladas',
      'qué pasa si compramos 40 toneladas',
      'y si compramos 40 toneladas a 70 la tonelada',
    ],
  ],
  [
    'both piles, none named',
    { together: [] },
    [
      'what if we feed from both piles',
      'what if we feed out of both at once',
      'suppose we feed both',
      'what if we feed both piles together',
    ],
    ['y si damos de las dos pilas', 'y si sacamos de las dos pilas al mismo tiempo', 'qué pasa si damos de las dos', 'y si damos de ambas'],
  ],
  [
    'both piles by name',
    { together: ['ridge', 'swale'] },
    [
      'what if we feed ridge and swale together',
      'what if we fed half and half from ridge and swale',
      'what if we feed off ridge and swale at the same time',
      'suppose we feed ridge and swale',
    ],
    [
      'y si damos de loma y swale juntas',
      'y si damos mitad de loma y mitad de swale',
      'qué pasa si damos de loma y swale',
      'y si sacamos de loma y de swale',
    ],
  ],
]

describe.each(SAID)('%s', (_, slots, en, es) => {
  it.each([...en, ...es])('%s', text => {
    const r = heard(text)
    expect(r.acts).toEqual([])
    const ask = r.asks[0]!
    expect(ask.about).toBe('reach')
    // An old crop or a group may be named beside it.
    expect(ask.slots).toMatchObject(slots)
    const numbers = Object.entries(ask.slots).filter(([k, v]) => !(k in slots) && typeof v === 'number')
    expect(numbers).toEqual([])
  })
})

describe('several at once', () => {
  it.each([
    ['what if we milk 130 and buy 40 tons', { head: 130, addLb: 80_000 }],
    ['y si ordeñamos 130 y compramos 40 toneladas', { head: 130, addLb: 80_000 }],
    ['what if we sell 10 cows and harvest is a week late', { headMore: -10, delayDays: 7 }],
    ['what if we sell 80 ton off swale', { addLb: -160_000, pile: 'swale' }],
  ])('%s', (text, slots) => {
    expect(heard(text).acts).toEqual([])
    expect(heard(text).asks[0]!.slots).toMatchObject(slots)
  })
})

describe('what only sounds like supposing tells all the same', () => {
  it.each([
    ['I suppose so, put 5 loads corn on ridge', 'load'],
    ['put 10 more loads corn on ridge', 'load'],
    ['milking 10 more, 128 now', 'ration'],
    ['sold 3 loads, put 5 loads corn on ridge', 'load'],
    ['put about 8 loads corn on ridge', 'load'],
  ])('%s', (text, frame) => {
    const r = heard(text)
    expect(r.asks).toEqual([])
    expect(r.acts.map(a => a.frame)).toContain(frame)
  })
})
