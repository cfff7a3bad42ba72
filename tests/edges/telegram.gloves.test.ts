import { beforeEach, describe, expect, it } from 'vitest'
import { eventsOf } from '../../src/book/book.ts'
import { alone, INES, TOMAS, user, YARD } from './telegramBench.ts'
import { api, book, house, ines, quiet, run, settleIn, start, stop, tell, texts, useHouse, yard } from './telegramHouse.ts'

useHouse()
beforeEach(settleIn)

const HOUR = 3_600_000
const counts = (): (number | undefined)[] => eventsOf(book(), 'load').map(l => l.event.count)
/** The last message with buttons. */
const asked = (chat: number) => api.shown(chat).findLast(m => m.reply_markup)!
const rowsOf = (chat: number): string[][] => asked(chat).reply_markup!.inline_keyboard.map(r => r.map(b => b.text))
const shown = (chat: number, id: number) => api.shown(chat).find(m => m.message_id === id)!
const ask = () => yard(TOMAS, 'put some loads of corn on creek')

describe('buttons', () => {
  it('for a count are what this farm usually tells, likeliest first, two to a row', async () => {
    await ask()
    expect(rowsOf(YARD.id)).toEqual([
      ['1', '2'],
      ['3', '4'],
      ['5', '6'],
    ])
    await yard(TOMAS, '7')
    for (const n of [12, 7, 9, 12, 12, 7, 10, 14]) await ines(`put ${n} loads corn on creek`)
    await ask()
    expect(rowsOf(YARD.id)[0]).toEqual(['12', '7'])
    expect(
      rowsOf(YARD.id)
        .flat()
        .slice(2)
        .map(Number)
        .sort((a, b) => a - b),
    ).toEqual([1, 9, 10, 14])
    // Another farm's usual is a pair of loads on another pile.
    await ines('new pile called ridge, 20 by 40')
    for (const n of [2, 2, 2, 2, 2, 2, 2]) await ines(`put ${n} loads haylage on ridge`)
    await yard(TOMAS, 'put some loads of haylage on ridge')
    expect(rowsOf(YARD.id)[0]![0]).toBe('2')
  })

  it('for a weight are the usual feedings', async () => {
    await ines('opened creek to feed')
    for (const lb of [11_200, 11_200, 11_500]) await ines(`fed ${lb} off creek`)
    await ines('fed some off creek')
    expect(rowsOf(501)).toEqual([['11,200 lb', '11,500 lb']])
    api.press(alone(INES), INES, asked(501).message_id, '11,500 lb')
    await quiet()
    expect(eventsOf(book(), 'feed').map(l => l.event.lb)).toEqual([11_200, 11_200, 11_500, 11_500])
  })

  it('for tires and the like are what was told of them before', async () => {
    await ines('put 7 loads corn on creek')
    await ines('covered creek with plastic and 240 tires')
    await ines('bought 60 tires')
    await ines('put some tires on creek')
    expect(rowsOf(501).flat()).toContain('240')
    await ines('bought some tires')
    expect(rowsOf(501).flat()).toContain('60')
  })

  it('go when the question is answered by typing, and the answer stands below', async () => {
    await ask()
    const { message_id } = asked(YARD.id)
    await yard(TOMAS, '6')
    await api.until('the buttons are gone', () => shown(YARD.id, message_id).reply_markup === undefined)
    expect(shown(YARD.id, message_id).text).toContain('How many')
    expect(counts()).toEqual([6])
  })

  it('go when nobody answered in a day and a half, also after a restart', async () => {
    await ask()
    const { message_id } = asked(YARD.id)
    await stop()
    start()
    await quiet()
    expect(shown(YARD.id, message_id).reply_markup).toBeDefined()
    // it is let go at the first morning a day and a half after it was asked: asked at any hour, that is within 60 hours, and one more where clocks change
    const later = new Date(Date.now() + 61 * HOUR).toISOString()
    for (let k = 0; k < 20 && book().questions.size; k++) house.core.tick('home', 'telegram', later)
    expect(book().questions.size).toBe(0)
    run.wake()
    await api.until('the buttons are gone', () => shown(YARD.id, message_id).reply_markup === undefined)
  })
})

describe('a tap', () => {
  it('turns the question into its answer, and the chat stays short', async () => {
    await ask()
    const { message_id } = asked(YARD.id)
    const before = texts(YARD).length
    api.press(YARD, TOMAS, message_id, '6')
    await quiet()
    expect(shown(YARD.id, message_id)).toMatchObject({ text: '6 loads corn silage on creek.' })
    expect(shown(YARD.id, message_id).reply_markup).toBeUndefined()
    expect(texts(YARD)).toHaveLength(before)
  })

  it('by somebody else of the crew counts, and the record is of who was asked', async () => {
    await ask()
    api.press(YARD, INES, asked(YARD.id).message_id, '4')
    await quiet()
    expect(eventsOf(book(), 'load').map(l => [l.event.count, l.event.by])).toEqual([[4, 'Tomás']])
  })

  it('on what is the owner\u2019s or the recorder\u2019s to say does nothing for a third, and says so', async () => {
    const code = /\b[A-HJ-NP-Z2-9]{8}\b/.exec((await ines('/invite')).said[0]!)![0]
    const walt = user(503, 'Walt')
    await tell(alone(walt), walt, code)
    await yard(INES, 'put 7 loads corn on creek')
    await yard(TOMAS, 'make that 6')
    const { message_id } = asked(YARD.id)
    api.press(YARD, walt, message_id, 'Yes')
    await quiet()
    expect(api.toasts.at(-1)).toContain('Only they or the owner')
    expect(counts()).toEqual([7])
    expect(shown(YARD.id, message_id).reply_markup).toBeDefined()
    api.press(YARD, INES, message_id, 'Yes')
    await quiet()
    expect(counts()).toEqual([6])
  })

  it('a second time, and by two at once, counts once', async () => {
    await ask()
    const { message_id } = asked(YARD.id)
    api.press(YARD, TOMAS, message_id, '6')
    api.press(YARD, INES, message_id, '5')
    await api.until('the second is told', () => api.toasts.length === 1)
    await quiet()
    expect(counts()).toEqual([6])
    expect(api.toasts).toEqual(['That is settled already.'])
    expect(shown(YARD.id, message_id).text).toBe('6 loads corn silage on creek.')
  })

  it('after a week records nothing and takes the buttons off', async () => {
    await ask()
    const { message_id } = asked(YARD.id)
    await stop()
    start({ now: () => new Date(Date.now() + 7 * 24 * HOUR).toISOString() })
    api.press(YARD, TOMAS, message_id, '6')
    await api.until('it is told', () => api.toasts.length === 1)
    await quiet()
    expect(api.toasts).toEqual(['That is settled already.'])
    expect([counts(), shown(YARD.id, message_id).reply_markup]).toEqual([[], undefined])
  })
})
