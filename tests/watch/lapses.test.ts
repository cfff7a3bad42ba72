import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { Yard } from './yard.ts'

let y: Yard
beforeEach(() => {
  y = new Yard()
  y.say('2026-06-01 07:00', 'ada', 'new pile called glen, 40 by 120')
  y.say('2026-06-01 07:01', 'ada', 'new pile called ridge, 40 by 120')
  y.say('2026-06-01 07:02', 'lenny@crew', 'hi')
})
afterEach(() => y.close())
const ask = (when: string, who = 'lenny@crew', text = 'put 7 loads of haylage on the lower pile') =>
  expect(y.say(when, who, text).outcome).toBe('asked')
const heard = () => y.came.filter(c => /I let/.test(c.text))

describe('a question nobody answered', () => {
  it('is let go with one short line where it was asked, on the first morning after a day and a half', () => {
    ask('2026-06-01 10:00')
    y.until('2026-06-01 10:00', '2026-06-10 12:00')
    expect(heard()).toHaveLength(1)
    // 36 hours end at ten in the evening: the next morning.
    expect(heard()[0]).toMatchObject({ to: 'crew', at: y.at('2026-06-03 06:00') })
    expect(heard()[0]!.text).toMatch(/^I let the question about "put 7 loads of haylage on the lower pile" go/)
    expect(heard()[0]!.text.split('\n')).toHaveLength(1)
    expect(y.house.core.book('home').questions.size).toBe(0)
  })
  it('waits for the next morning where the day and a half end after this one’s', () => {
    ask('2026-06-01 19:00')
    y.until('2026-06-01 19:00', '2026-06-05 12:00')
    // 36 hours end at seven: an hour too late for that morning.
    expect(heard().map(h => h.at)).toEqual([y.at('2026-06-04 06:00')])
  })
  it('stands in the morning summary where one goes there', () => {
    y.say('2026-06-01 09:00', 'ada@crew', 'put 7 loads of haylage on glen')
    ask('2026-06-01 10:00')
    y.until('2026-06-01 10:00', '2026-06-05 12:00')
    expect(heard()).toHaveLength(1)
    expect(heard()[0]!.text).toMatch(/morning\.\n[\s\S]*lies open[\s\S]*I let/)
  })
  it('is one line a chat, however many there were', () => {
    ask('2026-06-01 10:00')
    ask('2026-06-01 10:30', 'gus@crew', 'put 3 loads of corn on the far pile')
    ask('2026-06-01 11:00', 'gus', 'put 3 loads of corn on the far pile')
    y.until('2026-06-01 11:00', '2026-06-10 12:00')
    expect(
      heard()
        .map(h => h.to)
        .sort(),
    ).toEqual(['crew', 'gus'])
    expect(heard().find(h => h.to === 'crew')!.text).toMatch(/^I let 2 questions go/)
  })
  it('is not spoken of where it was told again since, nor where it was answered', () => {
    ask('2026-06-01 10:00')
    y.say('2026-06-01 15:00', 'lenny@crew', 'put 7 loads of haylage on ridge')
    y.say('2026-06-02 15:00', 'lenny@crew', 'covered ridge with plastic')
    ask('2026-06-02 16:00', 'gus', 'put 3 loads of corn on the far pile')
    y.say('2026-06-02 16:01', 'gus', 'never mind')
    y.until('2026-06-02 16:01', '2026-06-10 12:00')
    expect(heard()).toEqual([])
  })
  it('is spoken of although somebody wrote in the chat before the morning', () => {
    ask('2026-06-01 10:00')
    y.say('2026-06-03 02:00', 'gus@crew', 'long night')
    y.until('2026-06-03 02:00', '2026-06-04 12:00')
    expect(heard()).toHaveLength(1)
  })
})
