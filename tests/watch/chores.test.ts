import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { eventsOf, pileState } from '../../src/book/book.ts'
import { Yard } from './yard.ts'

let y: Yard
beforeEach(() => {
  y = new Yard()
  y.say('2026-06-01 07:00', 'ada', 'new pile called glen, 40 by 120, 10 high')
  y.say('2026-06-01 07:01', 'lenny', 'hello')
  y.say('2026-06-01 07:02', 'gus', 'hello')
})
afterEach(() => y.close())
const reminds = () => eventsOf(y.house.core.book('home'), 'remind').map(t => t.event)
const last = () => y.came.at(-1)!

describe('reminders told', () => {
  it.each([
    ['every tuesday check the tires', { about: 'check the tires', every: 'week', on: '2026-06-02' }],
    ['check the tires every tuesday', { about: 'check the tires', every: 'week', on: '2026-06-02' }],
    ['cada martes revisar las llantas', { about: 'revisar las llantas', every: 'week', on: '2026-06-02' }],
    ['remind lenny to grease the blade tomorrow at 6', { about: 'grease the blade', who: 'lenny', on: '2026-06-02', time: '06:00' }],
    ['recuérdale a lenny mañana engrasar la hoja', { about: 'engrasar la hoja', who: 'lenny', on: '2026-06-02' }],
    ['recuérdame el viernes pedir cinta', { about: 'pedir cinta', on: '2026-06-05' }],
    ['remind me in 3 days to call the vet', { about: 'call the vet', on: '2026-06-04' }],
    ['remind me at 6 to shut the gate', { about: 'shut the gate', on: '2026-06-01', time: '18:00' }],
    ['remind me every day at 4 pm to look at the face', { about: 'look at the face', every: 'day', on: '2026-06-01', time: '16:00' }],
    ['remind me the first of every month to pay the custom crew', { about: 'pay the custom crew', every: 'month', on: '2026-07-01' }],
    ['remind us every other friday to test the corn', { about: 'test the corn', every: 'week', step: 2, who: 'us', on: '2026-06-05' }],
    ['remind everyone on friday to bring knives', { about: 'bring knives', who: 'everyone', on: '2026-06-05' }],
  ])('%s', (text, slots) => {
    expect(y.say('2026-06-01 08:00', 'ada', text).outcome).toBe('recorded')
    expect(reminds()).toMatchObject([slots])
    if (!('who' in slots)) expect(reminds()[0]).not.toHaveProperty('who')
  })
  it('of two weekdays are two', () => {
    y.say('2026-06-01 08:00', 'ada', 'remind me every tuesday and friday to feed the dogs')
    expect(reminds().map(r => [r.about, r.on])).toEqual([
      ['feed the dogs', '2026-06-02'],
      ['feed the dogs', '2026-06-05'],
    ])
  })
  it('ask for a day that was not said, and take it', () => {
    expect(y.say('2026-06-01 08:00', 'ada', 'remind me to call the seed guy').outcome).toBe('asked')
    y.say('2026-06-01 08:01', 'ada', 'thursday at 7')
    expect(reminds()).toMatchObject([{ about: 'call the seed guy', on: '2026-06-04', time: '07:00' }])
  })
  it.each(['every tuesday we feed 9000 off glen', 'every load was 14000', 'we check glen every tuesday', 'they haul every friday'])(
    'are not in "%s"',
    text => {
      y.say('2026-06-01 08:00', 'ada@crew', text)
      expect(reminds()).toEqual([])
    },
  )
})

describe('a reminder that was said', () => {
  const ring = () => {
    y.say('2026-06-01 08:00', 'lenny', 'remind me at 9 to check the pump')
    return y.until('2026-06-01 08:00', '2026-06-01 09:00').at(-1)!
  }
  it('stands with its buttons, to the one it is for', () => {
    expect(ring()).toMatchObject({ to: 'lenny', text: 'Reminder: check the pump.', choices: ['Done', 'In an hour', 'Tomorrow'] })
  })
  it('is done by a tap, once', () => {
    const { question } = ring()
    expect(y.tap('2026-06-01 09:05', 'lenny', question, 0)).toMatchObject({ outcome: 'answered', recorded: [] })
    expect(y.tap('2026-06-01 09:06', 'lenny', question, 1).recorded).toEqual([])
    expect(y.until('2026-06-01 09:06', '2026-06-03 12:00').filter(c => /pump/.test(c.text))).toEqual([])
  })
  it('is put off by a tap: an hour, or to the next morning', () => {
    const { question } = ring()
    expect(y.tap('2026-06-01 09:05', 'lenny', question, 1).recorded).toMatchObject([
      { type: 'remind', about: 'check the pump', on: '2026-06-01', time: '10:05' },
    ])
    const again = y.until('2026-06-01 09:06', '2026-06-01 12:00').at(-1)!
    expect(again.at).toBe(y.at('2026-06-01 10:05'))
    y.tap('2026-06-01 10:10', 'lenny', again.question, 2)
    expect(
      y
        .until('2026-06-01 10:10', '2026-06-02 12:00')
        .filter(c => /pump/.test(c.text))
        .map(c => c.at),
    ).toEqual([y.at('2026-06-02 06:00')])
  })
  it.each([
    ['snooze', '2026-06-01 10:02'],
    ['in half an hour', '2026-06-01 09:32'],
    ['más tarde', '2026-06-01 10:02'],
    ['remind me again tomorrow at 7', '2026-06-02 07:00'],
    ['a las 4', '2026-06-01 16:00'],
    ['mañana', '2026-06-02 06:00'],
  ])('is put off by "%s"', (text, when) => {
    ring()
    expect(y.say('2026-06-01 09:02', 'lenny', text).outcome).toBe('recorded')
    expect(
      y
        .until('2026-06-01 09:02', '2026-06-03 12:00')
        .filter(c => /pump/.test(c.text))
        .map(c => c.at),
    ).toEqual([y.at(when)])
  })
  it.each(['done', 'listo', 'did it', 'ya quedó'])('is done by "%s"', text => {
    ring()
    expect(y.say('2026-06-01 09:02', 'lenny', text)).toMatchObject({ outcome: 'answered' })
    expect(y.until('2026-06-01 09:02', '2026-06-03 12:00').filter(c => /pump/.test(c.text))).toEqual([])
  })
  it('put off late in the evening keeps the quiet hours', () => {
    y.say('2026-06-01 08:00', 'lenny', 'remind me at 20:30 to check the pump')
    y.until('2026-06-01 08:00', '2026-06-01 20:30')
    y.say('2026-06-01 20:40', 'lenny', 'snooze')
    expect(
      y
        .until('2026-06-01 20:40', '2026-06-03 12:00')
        .filter(c => /pump/.test(c.text))
        .map(c => c.at),
    ).toEqual([y.at('2026-06-02 06:00')])
  })
  it('leaves words alone that answer another question', () => {
    ring()
    expect(y.say('2026-06-01 09:03', 'lenny', 'remind me to call the seed guy').outcome).toBe('asked')
    y.say('2026-06-01 09:04', 'lenny', 'friday')
    expect(reminds().map(r => [r.about, r.on])).toEqual([
      ['check the pump', '2026-06-01'],
      ['call the seed guy', '2026-06-05'],
    ])
  })
  it('is not answered by words where none was said', () => {
    for (const text of ['done', 'snooze', 'later', 'tomorrow', 'in an hour'])
      expect(y.say('2026-06-01 09:03', 'lenny', text).recorded ?? []).toEqual([])
  })
})

describe('whose reminder it is', () => {
  beforeEach(() => {
    y.say('2026-06-01 08:00', 'ada', 'remind lenny to grease the blade at 9')
    y.say('2026-06-01 08:01', 'ada', 'remind me friday to order plastic')
    y.say('2026-06-01 08:02', 'gus@crew', 'remind everyone on friday to bring knives')
  })
  it('shows in the lists of those it is for', () => {
    expect(y.say('2026-06-01 08:10', 'gus', 'what reminders do I have?').text).toMatch(/knives/)
    expect(y.say('2026-06-01 08:10', 'gus', 'what reminders do I have?').text).not.toMatch(/plastic|blade/)
    expect(y.say('2026-06-01 08:10', 'lenny', 'reminders').text.split('\n')).toHaveLength(2)
    expect(y.say('2026-06-01 08:10', 'ada', 'reminders').text.split('\n')).toHaveLength(3)
  })
  it('decides who may cancel it: the one it is for, who set it, and the owner', () => {
    expect(y.say('2026-06-01 08:10', 'gus', 'cancel the reminder about the plastic').outcome).toBe('refused')
    expect(y.say('2026-06-01 08:10', 'gus', 'cancel the reminder about the hay rake').outcome).toBe('refused')
    expect(reminds()).toHaveLength(3)
    expect(y.say('2026-06-01 08:11', 'lenny', 'stop reminding me about the blade').withdrawn).toHaveLength(1)
    expect(y.say('2026-06-01 08:12', 'ada', 'cancel reminder 2').withdrawn).toMatchObject([{ about: 'bring knives' }])
    expect(reminds()).toMatchObject([{ about: 'order plastic' }])
    expect(y.until('2026-06-01 08:12', '2026-06-01 12:00').filter(c => /blade/.test(c.text))).toEqual([])
  })
  it('decides who may say that it is done', () => {
    const one = y.until('2026-06-01 08:10', '2026-06-01 09:00').find(c => /blade/.test(c.text))!
    expect(one).toMatchObject({ to: 'lenny', text: 'Reminder: grease the blade, from ada.' })
    expect(y.tap('2026-06-01 09:01', 'gus', one.question, 0).outcome).not.toBe('answered')
    expect(y.tap('2026-06-01 09:02', 'lenny', one.question, 0).outcome).toBe('answered')
  })
  it('comes in the group with a name where its person has no chat of their own', () => {
    y.say('2026-06-01 08:20', 'rosa@crew', 'remind me at 9 to turn the pump off')
    y.until('2026-06-01 08:21', '2026-06-01 09:00')
    expect(y.came.find(c => /pump/.test(c.text))).toMatchObject({ to: 'crew', text: 'Reminder for rosa: turn the pump off.' })
  })
})

describe('what is asked after', () => {
  beforeEach(() => {
    y.say('2026-06-01 08:00', 'ada@crew', 'put 20 loads of haylage on glen')
    y.say('2026-06-01 09:00', 'ada@crew', 'covered glen with plastic')
    y.say('2026-06-01 09:30', 'lenny@crew', 'coons got in glen, two holes')
    y.until('2026-06-01 09:30', '2026-06-02 12:00')
  })
  it('is settled by one tap', () => {
    expect(last()).toMatchObject({ to: 'crew', text: /^Patched yet\?/, choices: ['Patched', 'Not yet'] })
    expect(y.tap('2026-06-02 12:10', 'gus@crew', last().question, 0).recorded).toMatchObject([
      { type: 'patch', pile: 'glen', on: '2026-06-02', by: 'gus' },
    ])
    expect(pileState(y.house.core.book('home'), 'glen')!.open).toEqual([])
    const after = y.until('2026-06-02 12:10', '2026-06-05 12:30')
    expect(after.filter(c => /hole|atch/.test(c.text))).toEqual([])
    expect(y.tap('2026-06-02 12:20', 'gus@crew', last().question, 0).recorded).toEqual([])
  })
  it('is not settled by a yes that somebody else was given', () => {
    y.say('2026-06-02 12:10', 'gus@crew', 'yes')
    y.say('2026-06-02 12:11', 'gus@crew', 'done')
    expect(pileState(y.house.core.book('home'), 'glen')!.open).toHaveLength(1)
  })
})

describe('the last load', () => {
  it('is answered at once with what the cover takes', () => {
    y.say('2026-06-01 07:30', 'ada', 'we are at 42.9, -75.6')
    y.say('2026-06-01 08:00', 'lenny@crew', 'put 20 loads of haylage on glen')
    y.say('2026-06-01 16:00', 'lenny@crew', 'that was the last load')
    expect(last()).toMatchObject({
      to: 'crew',
      text: /^Cover glen tonight: plastic \d+ by \d+ ft, [\d,]+ tires, \d people about \d+ minutes/,
    })
    expect(last().text).toMatch(/best sun \d+:\d\d am to \d:\d\d pm/)
    const evening = y.until('2026-06-01 16:00', '2026-06-01 20:00').find(c => / evening\./.test(c.text))!
    expect(evening.text).toMatch(/20 loads/)
    expect(evening.text).not.toMatch(/tires/)
  })
})

describe('what covers the piles', () => {
  it('is told by place, with the age of the sheets, to whoever asks', () => {
    y.say('2026-06-01 07:30', 'ada', 'we have 900 tires')
    y.say('2026-06-01 08:00', 'ada', 'put 20 loads of haylage on glen')
    y.say('2026-06-01 09:00', 'ada', 'covered glen with a 60x150 plastic, mesh and 340 tires')
    expect(y.say('2026-07-01 09:00', 'gus', 'where are the tires?').text.split('\n')).toEqual(['Glen: 340 tires.', 'Free: 560 tires.'])
    expect(y.say('2026-07-01 09:01', 'gus', 'how old is the plastic on glen').text).toMatch(/60 by 150 ft plastic \(30 days on\)/)
    expect(y.say('2026-07-01 09:02', 'gus', '¿qué hay en uso?').text).toMatch(/malla.*340 llantas/)
    expect(y.say('2026-07-01 09:03', 'vet', 'where is the mesh', { role: 'viewer' }).outcome).toBe('answered')
    expect(y.say('2026-07-01 09:04', 'vet', 'check the covers every 5 days', { role: 'viewer' }).outcome).not.toBe('answered')
    expect(y.say('2026-07-01 09:05', 'gus', 'where are the gravel bags').text).toBe('Nothing of that is in the book.')
  })
})
