import { describe, expect, it } from 'vitest'
import { checkEvent, EVENT_TYPES } from '../../src/book/events.ts'
import { EXAMPLES } from './examples.ts'

describe.each(EVENT_TYPES)('%s', type => {
  const { good, bad } = EXAMPLES[type]

  it('takes one as it is told, and keeps every slot', () => {
    expect(checkEvent({ type, ...good })).toEqual({ ok: true, event: { type, ...good } })
  })

  it('takes who said it and the words', () => {
    expect(checkEvent({ type, ...good, by: 'lea', said: 'as typed' }).ok).toBe(true)
  })

  it.each(bad)('refuses one with %s', (_, slots) => {
    expect(checkEvent({ type, ...slots })).toMatchObject({ ok: false, code: 'event-invalid', data: { type } })
  })

  it.each<[string, Record<string, unknown>]>([
    ['a slot nobody knows', { ...good, colour: 'red' }],
    ['no day', { ...good, on: undefined }],
    ['a day that no calendar has', { ...good, on: '2026-02-30' }],
    ['an instant for a day', { ...good, on: '2026-08-20T10:00:00Z' }],
  ])('refuses one with %s', (_, slots) => {
    expect(checkEvent({ type, ...slots })).toMatchObject({ ok: false, code: 'event-invalid' })
  })
})

describe('what is no event', () => {
  it.each([null, undefined, 7, 'load', [], {}, { type: 'milk', on: '2026-08-20' }, { type: 'toString', on: '2026-08-20' }])('%j', value => {
    expect(checkEvent(value)).toMatchObject({ ok: false, code: 'event-invalid' })
  })

  it('names the slot that is wrong', () => {
    const got = checkEvent({ type: 'load', pile: 'quarry', crop: 'haylage', count: -2, on: '2026-08-20' })
    expect(got).toMatchObject({ ok: false, data: { why: expect.stringMatching(/^count: /) } })
  })
})
