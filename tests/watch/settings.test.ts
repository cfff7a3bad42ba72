import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { eventsOf } from '../../src/book/book.ts'
import { Yard } from './yard.ts'

let y: Yard
beforeEach(() => {
  y = new Yard()
  y.say('2026-06-01 07:00', 'ada', 'new pile called glen, 40 by 120, 10 high')
  y.say('2026-06-01 07:01', 'lenny@crew', 'hi all')
  y.say('2026-06-01 07:02', 'lenny', 'hello')
})
afterEach(() => y.close())
const mornings = (to?: string) => y.came.filter(c => / morning\./.test(c.text) && (to === undefined || c.to === to)).map(c => c.at)

describe('settings by message', () => {
  it('are confirmed in one line, kept in the book, and still there after a restart', () => {
    const r = y.say('2026-06-01 08:00', 'ada', 'check the covers every 5 days')
    expect(r).toMatchObject({ outcome: 'answered', text: 'Covers are walked every 5 days, sooner after a storm.' })
    y.restart()
    expect(y.house.core.book('home').settings.get('checkDays')).toBe(5)
    expect(y.say('2026-06-01 08:01', 'lenny@crew', 'settings').text.split('\n')).toContain(
      'Covers are walked every 5 days, sooner after a storm.',
    )
    expect(y.say('2026-06-01 08:02', 'ada', 'what are the settings?').text.split('\n').length).toBeLessThanOrEqual(12)
  })
  it('are the owner’s: the crew is refused in one line, and nothing changes', () => {
    for (const text of [
      'check the covers every 2 days',
      'no more than 1 nudge a day',
      'we are at 43.1, -89.4',
      'ground freezes around dec 1',
    ]) {
      const r = y.say('2026-06-01 08:00', 'lenny', text)
      expect(r.outcome, text).toBe('refused')
      expect(r.text.split('\n'), text).toHaveLength(1)
    }
    // In the group an hour is everybody's.
    expect(y.say('2026-06-01 08:01', 'lenny@crew', 'send the morning report at 5:30').outcome).toBe('refused')
    expect(y.say('2026-06-01 08:02', 'lenny', 'send ada the evening summary').outcome).toBe('refused')
    expect(y.say('2026-06-01 08:03', 'lenny', 'send everyone the evening summary').outcome).toBe('refused')
    expect([...y.house.core.book('home').settings.keys()].filter(k => !k.startsWith('asked:'))).toEqual(['crewChat'])
  })
  it('out of all range are refused with the range', () => {
    expect(y.say('2026-06-01 08:00', 'ada', 'check the covers every 500 days')).toMatchObject({ outcome: 'refused', text: /1 to 60/ })
    expect(y.house.core.book('home').settings.has('checkDays')).toBe(false)
  })
  it('record no event: a day of frost in the calendar is no frost', () => {
    y.say('2026-06-01 08:00', 'ada', 'the ground freezes around dec 1')
    y.say('2026-06-01 08:01', 'ada', 'check the covers every other day')
    const book = y.house.core.book('home')
    expect(eventsOf(book, 'weather')).toEqual([])
    expect(eventsOf(book, 'remind')).toEqual([])
    expect(book.settings.get('freezeDay')).toBe('12-01')
  })
  it('are not what an undo right after them takes back, nor is the load before', () => {
    y.say('2026-06-01 08:00', 'ada', 'put 7 loads of haylage on glen')
    y.say('2026-06-01 08:05', 'ada', 'check the covers every 5 days')
    const r = y.say('2026-06-01 08:06', 'ada', 'undo')
    expect(r.withdrawn ?? []).toEqual([])
    expect(r.text).toMatch(/stays until another/)
    y.say('2026-06-01 08:07', 'ada', 'put 3 loads of haylage on glen')
    expect(y.say('2026-06-01 08:08', 'ada', 'undo').withdrawn).toMatchObject([{ count: 3 }])
  })
  it('move the morning, and end it for the group', () => {
    y.say('2026-06-01 08:00', 'ada', 'send the morning report at 5:30')
    y.say('2026-06-01 08:01', 'ada', 'send the morning summary even when there is nothing')
    y.until('2026-06-01 08:02', '2026-06-03 12:00')
    expect(mornings()).toEqual([y.at('2026-06-02 05:30'), y.at('2026-06-03 05:30')])
    y.say('2026-06-03 12:30', 'ada', "don't send the group the morning summary")
    y.until('2026-06-03 12:31', '2026-06-05 12:00')
    expect(mornings()).toHaveLength(2)
  })
})

describe('a person’s own settings', () => {
  it('send a copy of one’s own, at an hour of one’s own, in one’s own language', () => {
    y.say('2026-06-01 08:00', 'ada', 'send the morning summary even when there is nothing')
    expect(y.say('2026-06-01 08:01', 'lenny', 'mándame el resumen de la mañana a las 5').outcome).toBe('answered')
    y.until('2026-06-01 08:02', '2026-06-02 12:00')
    const copies = y.came.filter(c => c.at >= y.at('2026-06-02 00:00'))
    expect(copies.map(c => [c.to, c.at])).toEqual([
      ['lenny', y.at('2026-06-02 05:00')],
      ['crew', y.at('2026-06-02 06:00')],
    ])
    expect(copies[0]!.text).toMatch(/mañana/)
    expect(copies[1]!.text).toMatch(/morning/)
    y.say('2026-06-02 12:30', 'lenny', 'ya no me mandes el resumen de la mañana')
    y.until('2026-06-02 12:31', '2026-06-03 12:00')
    expect(mornings('lenny').length + y.came.filter(c => c.to === 'lenny' && c.at > y.at('2026-06-02 13:00')).length).toBe(0)
  })
  it('are set for others by the owner only, who must be of the farm and reachable', () => {
    expect(y.say('2026-06-01 08:00', 'ada', 'send lenny the evening summary')).toMatchObject({ text: 'Lenny gets the evening summary.' })
    expect(y.say('2026-06-01 08:01', 'ada', 'send pedro the evening summary')).toMatchObject({
      outcome: 'refused',
      text: /nobody called pedro/,
    })
    y.say('2026-06-01 08:02', 'gus@crew', 'hey')
    expect(y.say('2026-06-01 08:03', 'ada', 'send gus the morning summary').text).toMatch(/write to me in private once/)
    y.say('2026-06-01 18:00', 'lenny@crew', 'put 7 loads haylage on glen')
    y.until('2026-06-01 18:01', '2026-06-01 20:00')
    expect(y.came.filter(c => / evening\./.test(c.text)).map(c => c.to)).toEqual(['crew', 'lenny'])
  })
  it('end for who has left', () => {
    y.say('2026-06-01 08:00', 'ada', 'send the morning summary even when there is nothing')
    y.say('2026-06-01 08:01', 'ada', 'send lenny the morning summary')
    y.say('2026-06-01 09:00', 'lenny', 'bye', { role: 'stranger' })
    y.house.core.book('home').members.get('lenny')!.role = 'stranger'
    y.until('2026-06-01 09:01', '2026-06-02 12:00')
    expect(mornings('lenny')).toEqual([])
    expect(mornings('crew')).toHaveLength(1)
  })
  it('keep quiet by one’s own clock', () => {
    y.say('2026-06-01 08:00', 'lenny', 'no messages between 7pm and 8am')
    y.say('2026-06-01 08:01', 'lenny', 'send me the morning summary')
    y.say('2026-06-01 08:02', 'lenny', 'remind me tonight to shut the gate')
    y.until('2026-06-01 08:03', '2026-06-02 12:00')
    const own = y.came.filter(c => c.to === 'lenny' && /gate/.test(c.text)).map(c => c.at)
    // Seven in the evening is within the quiet: it comes when that ends, and the summary one asked for moves the end to its hour.
    expect(own).toEqual([y.at('2026-06-02 06:00')])
  })
  it('fix the language, whatever one writes', () => {
    y.say('2026-06-01 08:00', 'lenny', 'en español por favor')
    expect(y.say('2026-06-01 08:05', 'lenny', 'put 7 loads haylage on glen').text).toMatch(/viajes/)
    expect(y.say('2026-06-01 08:06', 'ada', 'lenny speaks english').outcome).toBe('answered')
    expect(y.say('2026-06-01 08:40', 'lenny', 'pon 3 viajes de haylage en glen').text).toMatch(/loads/)
  })
})
