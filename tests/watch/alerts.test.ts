import { expect, it } from 'vitest'
import { apply, newBook } from '../../src/book/book.ts'
import type { Event } from '../../src/book/events.ts'
import { type Alert, alertsDue } from '../../src/watch/alerts.ts'
import { momentOf } from '../../src/watch/hours.ts'

const ZONE = 'America/Chicago'
const bookOf = (...events: Event[]) => {
  const book = newBook()
  for (const [k, event] of events.entries())
    apply(book, { v: 1, n: k + 1, at: `${event.on}T12:00:00.000Z`, by: 'ada', body: { kind: 'event', id: `e${k}`, event } })
  return book
}
const COVERED: Event[] = [
  { type: 'pile', name: 'ridge', on: '2026-09-01' },
  { type: 'load', pile: 'ridge', crop: 'corn silage', count: 40, on: '2026-09-10' },
  { type: 'cover', pile: 'ridge', material: 'plastic', change: 'on', on: '2026-09-11' },
]
/** Half past eight to ten of the evening of the 20th, by the farm's clock (UTC-5). */
const HAIL: Alert = { id: 'a', kind: 'hail', from: '2026-09-21T01:30:00.000Z', to: '2026-09-21T03:00:00.000Z' }
const due = (alerts: Alert[], at: string, ...more: Event[]) =>
  alertsDue(bookOf(...COVERED, ...more), momentOf(bookOf(), { at, zone: ZONE }), { alerts: () => alerts })

it('asks once it is over, once a night whatever the number of alerts, and offers the walk', () => {
  expect(due([HAIL], '2026-09-21T02:00:00.000Z')).toEqual([])
  const items = due(
    [HAIL, { ...HAIL, id: 'b', from: '2026-09-21T07:00:00.000Z', to: '2026-09-21T08:00:00.000Z' }],
    '2026-09-21T11:30:00.000Z',
  )
  expect(items).toMatchObject([
    { key: 'alert:hail:2026-09-20', to: 'crew', message: { code: 'alert-past' }, offer: { did: 'walked', piles: ['ridge'] } },
  ])
})
it('is silent where somebody told of it, where nothing is covered, and when it is long past', () => {
  expect(due([HAIL], '2026-09-21T11:30:00.000Z', { type: 'weather', kind: 'hail', on: '2026-09-20' })).toEqual([])
  expect(due([HAIL], '2026-09-21T11:30:00.000Z', { type: 'empty', pile: 'ridge', on: '2026-09-20' })).toEqual([])
  expect(due([HAIL], '2026-09-24T11:30:00.000Z')).toEqual([])
})
it('warns of a freeze before it comes, and never after', () => {
  const freeze: Alert = { id: 'f', kind: 'freeze', from: '2026-10-03T05:00:00.000Z', to: '2026-10-03T14:00:00.000Z' }
  expect(due([freeze], '2026-10-01T11:00:00.000Z')).toEqual([])
  expect(due([freeze], '2026-10-02T17:00:00.000Z')).toMatchObject([{ key: 'alert:freeze:2026-10-02', message: { code: 'alert-ahead' } }])
  expect(due([freeze], '2026-10-03T15:00:00.000Z')).toEqual([])
})
