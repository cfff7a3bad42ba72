import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { apply, type Book, eventsFrom, eventsOf, foldBook, newBook, pileNames, pileState, piles, setting } from '../../src/book/book.ts'
import type { Body, Entry } from '../../src/book/entries.ts'
import { EVENTS, type Event } from '../../src/book/events.ts'
import { hasFeed, isCovered } from '../../src/book/pile.ts'

/** Entries in the order of the log; each event is checked, so that no test tells what nobody could. */
const log = (...bodies: (Body | Record<string, unknown>)[]): Entry[] =>
  bodies.map((b, k) => {
    const body: Body =
      'kind' in b && b.kind !== undefined && !('type' in b)
        ? (b as Body)
        : { kind: 'event', id: `e${k + 1}`, event: EVENTS[b.type as Event['type']].parse(b) as Event }
    return {
      v: 1,
      n: k + 1,
      at: new Date(Date.UTC(2026, 8, 1, 12, k)).toISOString(),
      by: 'lea',
      source: { channel: 'lines', chat: 'crew', id: `m${k + 1}`, edit: '' },
      body,
    }
  })
const drop = (id: string): Body => ({ kind: 'withdraw', id, why: 'undo' })

const quarry = { type: 'pile', name: 'quarry', widthFt: 38, lengthFt: 110, on: '2026-09-01' }
const load = (count: number, on = '2026-09-02') => ({ type: 'load', pile: 'quarry', crop: 'corn silage', count, on })
const sheet = (on = '2026-09-03', change = 'on') => ({ type: 'cover', pile: 'quarry', material: 'plastic', change, on })
const stateOf = (book: Book) => pileState(book, 'quarry')!
const counts = (book: Book): (number | undefined)[] => stateOf(book).loads.map(l => l.event.count)

describe('taking back', () => {
  it('takes the event out of every view and keeps it in the log', () => {
    const book = foldBook(log(quarry, load(6), load(7), drop('e2')))
    expect(counts(book)).toEqual([7])
    expect(eventsOf(book, 'load').map(t => t.id)).toEqual(['e3'])
    expect(book.byId.get('e2')).toMatchObject({ withdrawnBy: 4 })
    expect(book.logged).toHaveLength(3)
    expect(eventsFrom(book, { channel: 'lines', chat: 'crew', id: 'm2' })).toEqual([])
  })

  it('twice is once, and what was never there takes nothing back', () => {
    const book = foldBook(log(quarry, load(6), drop('e2'), drop('e2'), drop('nothing')))
    expect(book.byId.get('e2')).toMatchObject({ withdrawnBy: 3 })
    expect(counts(book)).toEqual([])
  })

  it('goes step by step, in whatever order', () => {
    const steps = log(quarry, load(6), load(7), sheet(), drop('e4'), drop('e3'))
    const book = newBook()
    const seen = steps.map(e => {
      apply(book, e)
      const p = pileState(book, 'quarry')
      return [p?.stage, p?.loads.length]
    })
    expect(seen).toEqual([
      ['planned', 0],
      ['filling', 1],
      ['filling', 2],
      ['sealed', 2],
      ['filling', 2],
      ['filling', 1],
    ])
  })

  it('of a pile takes its names with it', () => {
    const book = foldBook(log({ ...quarry, alsoCalled: ['Cantera'] }))
    expect(pileNames(book).get('cantera')).toBe('quarry')
    for (const e of log(quarry, drop('e1')).slice(1)) apply(book, e)
    expect([...pileNames(book)]).toEqual([])
    expect(pileState(book, 'quarry')).toBeUndefined()
  })

  it('of a walk over all piles reaches each of them', () => {
    const book = foldBook(log(quarry, { ...quarry, name: 'ridge' }, { type: 'check', pile: 'all', finding: 'good', on: '2026-09-05' }))
    expect(piles(book).map(p => p.lastCheck)).toEqual(['2026-09-05', '2026-09-05'])
    apply(book, { ...log(drop('e3'))[0]!, n: 4 })
    expect(piles(book).map(p => p.lastCheck)).toEqual([undefined, undefined])
  })
})

describe('what is told late', () => {
  it('stands where it happened', () => {
    const book = foldBook(log(quarry, load(5, '2026-09-04'), sheet('2026-09-05'), load(3, '2026-09-02')))
    expect(counts(book)).toEqual([3, 5])
    // a load told after the sheet went on, of a day before it, opens nothing
    expect(stateOf(book)).toMatchObject({ stage: 'sealed', sealedOn: '2026-09-05' })
  })

  it('of the same day stands as it was told', () => {
    expect(counts(foldBook(log(quarry, load(5), load(3), load(9))))).toEqual([5, 3, 9])
  })

  it('of one face leaves a later face where it is', () => {
    const face = (atFt: number, on: string) => ({ type: 'face', pile: 'quarry', atFt, on })
    expect(stateOf(foldBook(log(quarry, load(5), face(30, '2026-11-20'), face(22, '2026-11-10'))))).toMatchObject({
      face: { atFt: 30, on: '2026-11-20' },
      openedOn: '2026-11-10',
    })
  })
})

describe('stages', () => {
  const feed = { type: 'feed', pile: 'quarry', lb: 9000, on: '2026-11-02' }
  const empty = { type: 'empty', pile: 'quarry', on: '2027-05-01' }

  it.each<[string, Record<string, unknown>[], object]>([
    ['begun', [], { stage: 'planned' }],
    ['loads went in', [load(4)], { stage: 'filling' }],
    ['a sheet went on', [load(4), sheet()], { stage: 'sealed', sealedOn: '2026-09-03' }],
    [
      'tires alone seal nothing',
      [load(4), { type: 'cover', pile: 'quarry', material: 'tires', change: 'on', count: 90, on: '2026-09-03' }],
      { stage: 'filling', tires: 90 },
    ],
    ['opened to add', [load(4), sheet(), { type: 'open', pile: 'quarry', why: 'add', on: '2026-09-20' }], { stage: 'filling' }],
    ['covered again', [load(4), sheet(), load(2, '2026-09-20'), sheet('2026-09-21')], { stage: 'sealed', sealedOn: '2026-09-21' }],
    [
      'opened to feed',
      [load(4), sheet(), { type: 'open', pile: 'quarry', why: 'feed', on: '2026-11-01' }],
      { stage: 'feeding', openedOn: '2026-11-01' },
    ],
    ['fed without a word of opening', [load(4), sheet(), feed], { stage: 'feeding', openedOn: '2026-11-02' }],
    [
      'a sheet drawn over the face leaves it feeding',
      [load(4), sheet(), feed, sheet('2026-12-01')],
      { stage: 'feeding', sealedOn: '2026-09-03' },
    ],
    ['all gone', [load(4), sheet(), feed, empty], { stage: 'empty', emptyOn: '2027-05-01', sheets: [] }],
  ])('%s', (_, events, want) => {
    expect(stateOf(foldBook(log(quarry, ...events)))).toMatchObject(want)
  })

  it('an emptied pile that is filled again is a new one on the old slab', () => {
    const book = foldBook(
      log(
        { ...quarry, alsoCalled: ['cantera'] },
        load(4),
        sheet(),
        feed,
        { type: 'face', pile: 'quarry', atFt: 60, on: '2027-04-01' },
        empty,
        load(9, '2027-09-04'),
      ),
    )
    const p = stateOf(book)
    expect(p).toMatchObject({
      stage: 'filling',
      alsoCalled: ['cantera'],
      planned: { widthFt: 38, lengthFt: 110 },
      feeds: [],
      covers: [],
      sheets: [],
    })
    expect([p.sealedOn, p.openedOn, p.emptyOn, p.face, p.measured]).toEqual([undefined, undefined, undefined, undefined, undefined])
    expect(counts(book)).toEqual([9])
    expect(hasFeed(p)).toBe(true)
    expect(isCovered(p)).toBe(false)
    // the history keeps all of it
    expect(eventsOf(book, 'load')).toHaveLength(2)
  })

  it('feed pushed onto another pile shows on both', () => {
    const book = foldBook(
      log(quarry, { ...quarry, name: 'ridge' }, load(4), { type: 'shift', pile: 'quarry', toPile: 'ridge', ft: 20, on: '2026-10-01' }),
    )
    expect(stateOf(book)).toMatchObject({ shiftsOut: [{ event: { ft: 20 } }], shiftsIn: [] })
    expect(pileState(book, 'ridge')).toMatchObject({ stage: 'filling', shiftsIn: [{ event: { ft: 20 } }], shiftsOut: [] })
  })
})

describe('damage and patches', () => {
  const hurt = (count: number | undefined, where?: string) => ({
    type: 'damage',
    pile: 'quarry',
    cause: 'animal',
    animal: 'raccoon',
    ...(count && { count }),
    ...(where && { where }),
    on: '2026-10-01',
  })
  const mend = (count?: number, where?: string) => ({
    type: 'patch',
    pile: 'quarry',
    ...(count && { count }),
    ...(where && { where }),
    on: '2026-10-02',
  })
  const open = (...events: Record<string, unknown>[]): number[] =>
    stateOf(foldBook(log(quarry, load(4), sheet(), ...events))).open.map(o => o.left)

  it.each<[string, Record<string, unknown>[], number[]]>([
    ['each hole is open', [hurt(2), hurt(3)], [2, 3]],
    ['no number is one', [hurt(undefined)], [1]],
    ['a patch without a number closes all', [hurt(2), hurt(3), mend()], []],
    ['a number closes so many, the oldest first', [hurt(2), hurt(3), mend(3)], [2]],
    ['a patch at a place closes that place first', [hurt(2, 'n end'), hurt(3, 's end'), mend(undefined, 's end')], [2]],
    ['a patch where nobody told of harm closes what there is', [hurt(2, 'n end'), mend(1, 'by the wall')], [1]],
    ['more patches than holes leave none', [hurt(2), mend(5)], []],
    ['a patch before the harm closes nothing', [{ ...mend(), on: '2026-09-30' }, hurt(2)], [2]],
  ])('%s', (_, events, want) => {
    expect(open(...events)).toEqual(want)
  })
})

it('settings, people and questions are as last told', () => {
  const member = (role: 'crew' | 'viewer', more: object): Body => ({ kind: 'member', person: 'lea', role, ...more })
  const question = { id: 'q1' } as Extract<Body, { kind: 'ask' }>['question']
  const book = foldBook(
    log(
      member('crew', { name: 'Lea', lang: 'es' }),
      member('viewer', {}),
      { kind: 'setting', name: 'checkDays', value: 5 },
      { kind: 'setting', name: 'checkDays', value: 4 },
      { kind: 'ask', question },
    ),
  )
  expect(book.members.get('lea')).toEqual({ person: 'lea', role: 'viewer', name: 'Lea', lang: 'es' })
  expect([setting(book, 'checkDays', 7), setting(book, 'else', 7)]).toEqual([4, 7])
  expect([...book.questions.keys()]).toEqual(['q1'])
  apply(book, { ...log({ kind: 'close', question: 'q1', how: 'answered' })[0]!, n: 6 })
  expect(book.questions.size).toBe(0)
})

const dayArb = fc.integer({ min: 0, max: 400 }).map(k => new Date(Date.UTC(2026, 7, 1) + k * 86_400_000).toISOString().slice(0, 10))
const nameArb = fc.constantFrom('quarry', 'ridge')
const eventArb: fc.Arbitrary<Record<string, unknown>> = fc.oneof(
  fc.record({ type: fc.constant('pile'), name: nameArb, widthFt: fc.integer({ min: 20, max: 60 }), on: dayArb }),
  fc.record({
    type: fc.constant('load'),
    pile: nameArb,
    crop: fc.constantFrom('corn silage', 'haylage'),
    count: fc.integer({ min: 1, max: 20 }),
    on: dayArb,
  }),
  fc.record({
    type: fc.constant('cover'),
    pile: nameArb,
    material: fc.constantFrom('plastic', 'mesh', 'tires'),
    change: fc.constantFrom('on', 'off', 'back'),
    count: fc.integer({ min: 1, max: 200 }),
    on: dayArb,
  }),
  fc.record({ type: fc.constant('damage'), pile: nameArb, cause: fc.constant('hail'), count: fc.integer({ min: 1, max: 5 }), on: dayArb }),
  fc.record({ type: fc.constant('patch'), pile: nameArb, count: fc.integer({ min: 1, max: 5 }), on: dayArb }),
  fc.record({ type: fc.constant('check'), pile: fc.constantFrom('quarry', 'all'), finding: fc.constant('good'), on: dayArb }),
  fc.record({ type: fc.constant('feed'), pile: nameArb, lb: fc.integer({ min: 1, max: 20_000 }), on: dayArb }),
  fc.record({ type: fc.constant('face'), pile: nameArb, leftFt: fc.integer({ min: 0, max: 90 }), on: dayArb }),
  fc.record({
    type: fc.constant('shift'),
    pile: fc.constant('quarry'),
    toPile: fc.constant('ridge'),
    ft: fc.integer({ min: 1, max: 20 }),
    on: dayArb,
  }),
  fc.record({ type: fc.constant('empty'), pile: nameArb, on: dayArb }),
)
const bodiesArb = fc.array(
  fc.oneof({ weight: 5, arbitrary: eventArb }, { weight: 1, arbitrary: fc.integer({ min: 1, max: 40 }).map(k => drop(`e${k}`)) }),
  { maxLength: 40 },
)
/** What a book shows: its piles and what is in force. The order numbers say where an event stood in its own log. */
const shown = (book: Book) => ({ piles: piles(book), loads: eventsOf(book, 'load'), names: [...pileNames(book)] })

describe('whatever is told', () => {
  it('folding in two parts, with looks between, is folding at once', () => {
    fc.assert(
      fc.property(bodiesArb, fc.nat(), (bodies, at) => {
        const entries = log(quarry, ...bodies)
        const cut = at % (entries.length + 1)
        const book = foldBook(entries.slice(0, cut))
        shown(book) // views kept from here must not outlive what changes them
        for (const e of entries.slice(cut)) apply(book, e)
        const whole = foldBook(entries)
        expect(shown(book)).toEqual(shown(whole))
        expect(book).toEqual({ ...whole, views: book.views, names: book.names })
      }),
      { numRuns: 200 },
    )
  })

  it('an event taken back might as well never have been told', () => {
    fc.assert(
      fc.property(fc.array(eventArb, { minLength: 1, maxLength: 30 }), fc.nat(), (events, at) => {
        const entries = log(quarry, ...events)
        const gone = entries[1 + (at % events.length)]!
        const book = foldBook(entries)
        shown(book)
        apply(book, { ...gone, n: entries.length + 1, body: drop((gone.body as { id: string }).id) })
        expect(shown(book)).toEqual(shown(foldBook(entries.filter(e => e !== gone))))
      }),
      { numRuns: 200 },
    )
  })
})
