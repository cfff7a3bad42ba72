import { describe, expect, test } from 'vitest'
import { type FoundDate, findDates } from '../../src/reading/dates.ts'
import { tokenise } from '../../src/reading/tokens.ts'

// Expected days are counted off a printed calendar. July 2026 and its neighbours:
//      June 2026               July 2026              August 2026
// Mo Tu We Th Fr Sa Su    Mo Tu We Th Fr Sa Su    Mo Tu We Th Fr Sa Su
//  1  2  3  4  5  6  7           1  2  3  4  5                    1  2
//  8  9 10 11 12 13 14     6  7  8  9 10 11 12     3  4  5  6  7  8  9
// 15 16 17 18 19 20 21    13 14 15 16 17 18 19    10 11 12 13 14 15 16
// 22 23 24 25 26 27 28    20 21 22 23 24 25 26    17 18 19 20 21 22 23
// 29 30                   27 28 29 30 31          24 25 26 27 28 29 30
const NOW = { day: '2026-07-15', hour: 14.5 }
const found = (text: string, now = NOW) => {
  const tokens = tokenise(text)
  return findDates(tokens, () => false, now).map(d => ({ ...d, text: text.slice(tokens[d.from]!.from, tokens[d.to - 1]!.to) }))
}
const only = (text: string, now = NOW) => {
  const list = found(text, now)
  expect(
    list.map(d => d.text),
    text,
  ).toHaveLength(1)
  return list[0]!
}
/** "12" is a day of July 2026, "09-03" of 2026, the rest as it stands. */
const full = (day: string) => (day.length === 2 ? `2026-07-${day}` : day.length === 5 ? `2026-${day}` : day)

type Row = [text: string, past: string, future: string, more?: Partial<FoundDate> & { text?: string }]
const rows = (list: Row[]) =>
  test.each(list)('%s', (text, past, future, more = {}) => {
    const d = only(text)
    const { span, ...rest } = more
    expect({ past: d.past, future: d.future, explicit: d.explicit }).toEqual({ past: full(past), future: full(future), explicit: true })
    expect(d).toMatchObject(rest)
    if (span) expect(d.span).toEqual({ from: full(span.from), to: full(span.to) })
    if (!('time' in more)) expect(d.time).toBeUndefined()
    if (!('part' in more)) expect(d.part).toBeUndefined()
    if (!('ahead' in more)) expect(d.ahead).toBeUndefined()
  })

describe('English, on Wednesday 15 July 2026 at half past two', () => {
  rows([
    ['today', '15', '15'],
    ['6 loads so far today', '15', '15', { text: 'today' }],
    ['tonight', '15', '15', { part: 'night' }],
    ['tonite', '15', '15', { part: 'night' }],
    ['yesterday', '14', '15'],
    ['yest', '14', '15'],
    ['yday', '14', '15'],
    ['ystrday', '14', '15'],
    ["yesterday's loads", '14', '15', { text: "yesterday's" }],
    ['yesterday morning', '14', '15', { part: 'morning' }],
    ['yest pm', '14', '15', { part: 'afternoon' }],
    ['day before yesterday', '13', '15'],
    ['the day before yesterday', '13', '15', { text: 'the day before yesterday' }],
    ['hail last night', '14', '15', { part: 'night' }],
    ['last nite', '14', '15', { part: 'night' }],
    ['last nght', '14', '15', { part: 'night' }],
    ['overnight', '14', '15', { part: 'night' }],
    ['night before last', '13', '15', { part: 'night' }],
    ['this morning', '15', '15', { part: 'morning' }],
    ['fed off lane this am', '15', '15', { part: 'morning', text: 'this am' }],
    ['this pm', '15', '15', { part: 'afternoon' }],
    ['this aft', '15', '15', { part: 'afternoon' }],
    ['3 days ago', '12', '15'],
    ['two weeks ago', '01', '15'],
    ['a week ago', '08', '15'],
    ['a couple days ago', '13', '15'],
    ['a couple of days ago', '13', '15'],
    ['couple days back', '13', '15'],
    ['a few days ago', '12', '15', { span: { from: '11', to: '13' } }],
    ['twenty one days ago', '06-24', '15'],
    ['a month ago', '06-15', '15'],
    ['two and a half weeks ago', '06-27', '15'],
    ['3 nights ago', '12', '15', { part: 'night' }],
    ['a week ago friday', '03', '15'],
    ['fed 9000 mon', '13', '20', { text: 'mon' }],
    ['tues', '14', '21'],
    ['wed', '15', '22'],
    ['thurs', '09', '16'],
    ['fri', '10', '17'],
    ['wensday', '15', '22'],
    ['on monday', '13', '20', { text: 'on monday' }],
    ['last friday', '10', '15'],
    ['last wednesday', '08', '15'],
    ['this past sunday', '12', '15'],
    ['this friday', '10', '17'],
    ['next friday', '15', '24', { ahead: true }],
    ['this coming friday', '15', '17', { ahead: true }],
    ['friday of last week', '10', '15'],
    ['friday last week', '10', '15'],
    ['friday night', '10', '17', { part: 'night' }],
    ['the night of the 12th', '12', '08-12', { part: 'night', text: 'the night of the 12th' }],
    ["tuesday's loads", '14', '21', { text: "tuesday's" }],
    ['the 12th', '12', '08-12'],
    ['12th', '12', '08-12'],
    ['on the 3rd we put 5 loads', '03', '08-03', { text: 'on the 3rd' }],
    ['put 5 loads on lane the 3rd', '03', '08-03', { text: 'the 3rd' }],
    ['on the 31st', '05-31', '31'],
    ['the 12th of last month', '06-12', '15'],
    ['friday the 10th', '10', '08-10'],
    ['sept 3', '2025-09-03', '09-03'],
    ['Sept. 3', '2025-09-03', '09-03'],
    ['3 sept', '2025-09-03', '09-03'],
    ['3rd of september', '2025-09-03', '09-03'],
    ['may 28', '05-28', '2027-05-28'],
    ['figure on first crop around may 28', '05-28', '2027-05-28', { text: 'may 28' }],
    ['may twenty eighth', '05-28', '2027-05-28'],
    ['first of june', '06-01', '2027-06-01'],
    ['june first', '06-01', '2027-06-01'],
    ['may 28, 2027', '15', '2027-05-28', { ahead: true }],
    ['12 sept 2025', '2025-09-12', '2025-09-12'],
    ['covered on 7/10', '10', '2027-07-10'],
    ['7/10 put 5 loads', '10', '2027-07-10', { text: '7/10' }],
    ['covered lane 6/30', '06-30', '2027-06-30'],
    ['9/3/25', '2025-09-03', '2025-09-03'],
    ['on 7-10', '10', '2027-07-10'],
    ['28/5', '05-28', '2027-05-28'],
    ['2026-07-04 walked covers', '04', '04'],
    ['mon, july 13', '13', '2027-07-13'],
    ['end of the month', '06-30', '31'],
    ['end of next month', '15', '08-31', { ahead: true }],
    ['end of may', '05-31', '2027-05-31'],
    ['early june', '06-05', '2027-06-05', { span: { from: '06-01', to: '06-10' } }],
    ['first week of june', '06-04', '2027-06-04', { span: { from: '06-01', to: '06-07' } }],
    ['in may', '05-31', '2027-05-01', { span: { from: '05-01', to: '05-31' } }],
    ['in 3 days', '15', '18', { ahead: true }],
    ['in 2 weeks', '15', '29', { ahead: true }],
    ['in about a month', '15', '08-15', { ahead: true }],
    ['3 weeks from now', '15', '08-05', { ahead: true }],
    ['a week from friday', '15', '24', { ahead: true }],
    ['two weeks from tomorrow', '15', '30', { ahead: true }],
    ['tomorrow', '15', '16', { ahead: true }],
    ['tmrw', '15', '16', { ahead: true }],
    ['tmw morning', '15', '16', { ahead: true, part: 'morning' }],
    ['day after tomorrow', '15', '17', { ahead: true }],
    ['next week', '15', '20', { ahead: true, span: { from: '20', to: '26' } }],
    ['early next week', '15', '20', { ahead: true }],
    ['next month', '15', '08-01', { ahead: true, span: { from: '08-01', to: '08-31' } }],
    ['this week', '15', '15', { span: { from: '13', to: '19' } }],
    ['last week', '12', '15', { span: { from: '06', to: '12' } }],
    ['since friday', '10', '15', { span: { from: '10', to: '15' } }],
    ['since wednesday', '08', '15', { span: { from: '08', to: '15' } }],
    ['since july 1', '01', '15', { span: { from: '01', to: '15' } }],
    ['the past 3 days', '15', '15', { span: { from: '13', to: '15' } }],
    ['last 2 weeks', '15', '15', { span: { from: '02', to: '15' } }],
    ['so far this month', '15', '15', { span: { from: '01', to: '31' }, text: 'this month' }],
    ['last month', '06-30', '15', { span: { from: '06-01', to: '06-30' } }],
    ['over the weekend', '12', '18', { span: { from: '11', to: '12' } }],
    ['last weekend', '12', '15', { span: { from: '11', to: '12' } }],
    ['next weekend', '15', '25', { ahead: true, span: { from: '25', to: '26' } }],
    ['july 3-9', '09', '2027-07-03', { span: { from: '03', to: '09' } }],
    ['from july 3 to july 9', '09', '2027-07-03', { span: { from: '03', to: '09' }, text: 'from july 3 to july 9' }],
    ['mon thru tues', '14', '20', { span: { from: '13', to: '14' } }],
    ['7/3-7/9', '09', '2027-07-03', { span: { from: '03', to: '09' } }],
    ['around christmas', '2025-12-25', '12-25', { text: 'christmas' }],
    ['4th of july', '04', '2027-07-04'],
    ['last fall', '2025-11-30', '15', { span: { from: '2025-09-01', to: '2025-11-30' } }],
    ['in the spring', '05-31', '2027-03-01', { span: { from: '03-01', to: '05-31' } }],
    ['2 weeks and 3 days ago', '06-28', '15', { text: '2 weeks and 3 days ago' }],
  ])
})

describe('Spanish, the same day', () => {
  rows([
    ['hoy', '15', '15'],
    ['oy le dimos 9000', '15', '15', { text: 'oy' }],
    ['esta manana', '15', '15', { part: 'morning' }],
    ['esta mañana', '15', '15', { part: 'morning' }],
    ['hoy en la mañana', '15', '15', { part: 'morning' }],
    ['esta tarde', '15', '15', { part: 'afternoon' }],
    ['esta noche', '15', '15', { part: 'night' }],
    ['ayer', '14', '15'],
    ['ayer en la mañana', '14', '15', { part: 'morning', text: 'ayer en la mañana' }],
    ['ayer por la tarde', '14', '15', { part: 'afternoon', text: 'ayer por la tarde' }],
    ['ayer tarde', '14', '15', { part: 'afternoon' }],
    ['granizo anoche', '14', '15', { part: 'night', text: 'anoche' }],
    ['ayer en la noche', '14', '15', { part: 'night' }],
    ['antenoche', '13', '15', { part: 'night' }],
    ['antier', '13', '15'],
    ['anteayer', '13', '15'],
    ['antes de ayer', '13', '15'],
    ['hace 2 dias', '13', '15'],
    ['hace dos días', '13', '15'],
    ['hace un par de dias', '13', '15'],
    ['hace unos dias', '12', '15', { span: { from: '11', to: '13' } }],
    ['hace una semana', '08', '15'],
    ['hace dos semanas', '01', '15'],
    ['hace un mes', '06-15', '15'],
    ['3 dias atras', '12', '15'],
    ['el lunes', '13', '20', { text: 'el lunes' }],
    ['lunes', '13', '20'],
    ['miércoles', '15', '22'],
    ['el sabado', '11', '18'],
    ['lunes pasado', '13', '15'],
    ['el pasado viernes', '10', '15', { text: 'el pasado viernes' }],
    ['este viernes', '10', '17'],
    ['el viernes que viene', '15', '17', { ahead: true, text: 'el viernes que viene' }],
    ['el lunes que entra', '15', '20', { ahead: true }],
    ['próximo lunes', '15', '20', { ahead: true }],
    ['el proximo lunes', '15', '20', { ahead: true }],
    ['el viernes de la semana pasada', '10', '15'],
    ['la noche del viernes', '10', '17', { part: 'night', text: 'la noche del viernes' }],
    ['el viernes en la noche', '10', '17', { part: 'night' }],
    ['el 12', '12', '08-12'],
    ['el 12 tapamos lane', '12', '08-12', { text: 'el 12' }],
    ['el dia 12', '12', '08-12'],
    ['el lunes 13', '13', '08-13', { text: 'el lunes 13' }],
    ['el 28 de mayo', '05-28', '2027-05-28', { text: 'el 28 de mayo' }],
    ['va a ser como el 28 de mayo', '05-28', '2027-05-28', { text: 'el 28 de mayo' }],
    ['veintiocho de mayo', '05-28', '2027-05-28'],
    ['3 de sept', '2025-09-03', '09-03'],
    ['3 sept', '2025-09-03', '09-03'],
    ['primero de junio', '06-01', '2027-06-01'],
    ['el 12 de septiembre del 2025', '2025-09-12', '2025-09-12'],
    ['el 15 del mes pasado', '06-15', '15'],
    ['la semana pasada', '12', '15', { span: { from: '06', to: '12' } }],
    ['esta semana', '15', '15', { span: { from: '13', to: '19' } }],
    ['la semana que entra', '15', '20', { ahead: true, span: { from: '20', to: '26' } }],
    ['el mes pasado', '06-30', '15', { span: { from: '06-01', to: '06-30' } }],
    ['los ultimos 3 dias', '15', '15', { span: { from: '13', to: '15' } }],
    ['desde el viernes', '10', '15', { span: { from: '10', to: '15' }, text: 'desde el viernes' }],
    ['desde ayer', '14', '15', { span: { from: '14', to: '15' } }],
    ['en 3 dias', '15', '18', { ahead: true }],
    ['en 2 semanas', '15', '29', { ahead: true }],
    ['dentro de una semana', '15', '22', { ahead: true }],
    ['de hoy en ocho', '15', '22', { ahead: true }],
    ['mañana', '15', '16', { ahead: true }],
    ['manana', '15', '16', { ahead: true }],
    ['mañana por la mañana', '15', '16', { ahead: true, part: 'morning' }],
    ['pasado mañana', '15', '17', { ahead: true }],
    ['fin de mes', '06-30', '31'],
    ['a mediados de mayo', '05-15', '2027-05-15', { span: { from: '05-11', to: '05-20' } }],
    ['en mayo', '05-31', '2027-05-01', { span: { from: '05-01', to: '05-31' } }],
    ['del 3 al 9', '09', '08-03', { span: { from: '03', to: '09' } }],
    ['del 3 al 9 de julio', '09', '2027-07-03', { span: { from: '03', to: '09' } }],
    ['del lunes al martes', '14', '20', { span: { from: '13', to: '14' }, text: 'del lunes al martes' }],
    ['navidad', '2025-12-25', '12-25'],
    ['el otoño pasado', '2025-11-30', '15', { span: { from: '2025-09-01', to: '2025-11-30' } }],
    ['en la primavera', '05-31', '2027-03-01', { span: { from: '03-01', to: '05-31' } }],
  ])
})

test('the two languages say the same', () => {
  const pairs: [string, string][] = [
    ['yesterday afternoon', 'ayer en la tarde'],
    ['last night', 'anoche'],
    ['day before yesterday', 'antier'],
    ['this morning', 'esta mañana'],
    ['two weeks ago', 'hace dos semanas'],
    ['last friday', 'el viernes pasado'],
    ['friday night', 'el viernes en la noche'],
    ['since friday', 'desde el viernes'],
    ['the 12th', 'el 12'],
    ['may 28', 'el 28 de mayo'],
    ['in 3 days', 'en 3 dias'],
    ['day after tomorrow', 'pasado mañana'],
    ['last week', 'la semana pasada'],
    ['next week', 'la semana que viene'],
    ['the last 3 days', 'los ultimos 3 dias'],
    ['end of the month', 'fin de mes'],
    ['tomorrow at 6 am', 'mañana a las 6 de la mañana'],
    ['half an hour ago', 'hace media hora'],
    ['friday at noon', 'el viernes al mediodia'],
  ]
  for (const [en, es] of pairs) {
    const bare = (text: string) => {
      const { from, to, text: said, part, ...rest } = only(text)
      return rest
    }
    expect(bare(es), `${en} / ${es}`).toEqual(bare(en))
  }
})

test('several dates in one message, in order', () => {
  expect(found('sat fed 10400 sun 10900 lane').map(d => [d.text, d.past])).toEqual([
    ['sat', '2026-07-11'],
    ['sun', '2026-07-12'],
  ])
  expect(found('on the 5th and 6th').map(d => d.past)).toEqual(['2026-07-05', '2026-07-06'])
  expect(found('ayer granizo. hoy revise todo').map(d => d.past)).toEqual(['2026-07-14', '2026-07-15'])
  expect(found('friday morning and sat nite').map(d => [d.past, d.part])).toEqual([
    ['2026-07-10', 'morning'],
    ['2026-07-11', 'night'],
  ])
})

test('what is claimed is never used', () => {
  const tokens = tokenise('put 6 loads on friday pile yesterday')
  const list = findDates(tokens, i => tokens[i]!.norm === 'friday', NOW)
  expect(list.map(d => d.past)).toEqual(['2026-07-14'])
  const named = tokenise('6 loads on march since may 28')
  expect(findDates(named, i => named[i]!.norm === 'march', NOW).map(d => d.span)).toEqual([{ from: '2026-05-28', to: '2026-07-15' }])
})

describe('times', () => {
  const times: [text: string, past: string, future: string, time: string, explicit: boolean][] = [
    ['thurs 7am', '09', '16', '07:00', true],
    ['7am thursday', '09', '16', '07:00', true],
    ['remind me friday at 6 to order plastic', '10', '17', '06:00', true],
    ['tomorrow at 5:30 am', '15', '16', '05:30', true],
    ['yesterday at noon', '14', '15', '12:00', true],
    ['yesterday around 4', '14', '15', '16:00', true],
    ['tonight at 8', '15', '15', '20:00', true],
    ['last night at 10', '14', '15', '22:00', true],
    ['around 5 this morning', '15', '15', '05:00', true],
    ['six in the evening tomorrow', '15', '16', '18:00', true],
    ['ayer a las 5 y media de la tarde', '14', '15', '17:30', true],
    ['mañana a las 6', '15', '16', '06:00', true],
    ['el sabado a las 7 y cuarto de la mañana', '11', '18', '07:15', true],
    ['half an hour ago', '15', '15', '14:00', true],
    ['2 hours ago', '15', '15', '12:30', true],
    ['16 hours ago', '14', '15', '22:30', true],
    ['remind me in 2 hours', '15', '15', '16:30', true],
    ['remind me in 12 hours', '15', '16', '02:30', true],
    ['6am', '15', '16', '06:00', false],
    ['6 a.m.', '15', '16', '06:00', false],
    ['6a', '15', '16', '06:00', false],
    ['7 pm', '14', '15', '19:00', false],
    ['18:00', '14', '15', '18:00', false],
    ['0600', '15', '16', '06:00', false],
    ['430 pm', '14', '15', '16:30', false],
    ['noon', '15', '16', '12:00', false],
    ['6 in the morning', '15', '16', '06:00', false],
    ['half past six in the morning', '15', '16', '06:30', false],
    ['quarter to 7 pm', '14', '15', '18:45', false],
    ['hail at 6', '15', '16', '06:00', false],
    ['broke down at 3', '15', '15', '15:00', false],
    ['remind me at 6 to shut the gate', '15', '15', '18:00', false],
    ['remind me at 2 to shut the gate', '15', '16', '14:00', false],
    ['recuerdame a las 6 pedir cinta', '15', '15', '18:00', false],
    ['a las 6 pm', '14', '15', '18:00', false],
    ['a las 6 de la tarde', '14', '15', '18:00', false],
    ['a las seis y media de la mañana', '15', '16', '06:30', false],
    ['6 de la mañana', '15', '16', '06:00', false],
    ['a la una de la tarde', '15', '16', '13:00', false],
    ['al mediodia', '15', '16', '12:00', false],
    ['a las 12 de la noche', '15', '16', '00:00', false],
    ['a las 12 del dia', '15', '16', '12:00', false],
  ]
  test.each(times)('%s', (text, past, future, time, explicit) => {
    expect(only(text)).toMatchObject({ past: full(past), future: full(future), time, explicit })
  })

  test('a part of the day alone takes the day of writing, a plan the next such part', () => {
    expect(only('hauled all am')).toMatchObject({ past: '2026-07-15', future: '2026-07-16', part: 'morning', explicit: false })
    expect(only('le dimos 9000 en la manana')).toMatchObject({ past: '2026-07-15', future: '2026-07-16', part: 'morning', explicit: false })
    expect(only('coons get in at night')).toMatchObject({ past: '2026-07-14', future: '2026-07-15', part: 'night', explicit: false })
  })

  test('a time that stands apart belongs to the day of its sentence', () => {
    const [day, time] = found('hail yesterday golf ball size around 6pm')
    expect(day).toMatchObject({ past: '2026-07-14', time: '18:00', explicit: true })
    expect(time).toMatchObject({ past: '2026-07-14', time: '18:00', explicit: false })
    expect(found('hail yesterday. fed at 6am').map(d => d.past)).toEqual(['2026-07-14', '2026-07-15'])
  })
})

describe('twenty to one in the morning of Tuesday 14 July', () => {
  const night = { day: '2026-07-14', hour: 40 / 60 }
  test.each([
    ['hail last night', '2026-07-13', '2026-07-14'],
    ['granizo anoche', '2026-07-13', '2026-07-14'],
    ['hail tonight', '2026-07-13', '2026-07-14'],
    ['put 6 loads on lane today', '2026-07-13', '2026-07-14'],
    ['hoy le dimos 9000', '2026-07-13', '2026-07-14'],
    ['this evening', '2026-07-13', '2026-07-14'],
    ['esta tarde', '2026-07-13', '2026-07-14'],
    ['yesterday', '2026-07-13', '2026-07-14'],
    ['monday', '2026-07-13', '2026-07-20'],
    ['2 hours ago', '2026-07-13', '2026-07-14'],
    ['hail at 11 pm', '2026-07-13', '2026-07-14'],
    // after the night's sleep
    ['tomorrow', '2026-07-14', '2026-07-14'],
    ['mañana', '2026-07-14', '2026-07-14'],
  ])('%s', (text, past, future) => {
    expect(only(text, night)).toMatchObject({ past, future })
  })
  test('from three on it is the new day', () => {
    expect(only('today', { day: '2026-07-14', hour: 2.99 }).past).toBe('2026-07-13')
    expect(only('today', { day: '2026-07-14', hour: 3 }).past).toBe('2026-07-14')
    expect(only('last night', { day: '2026-07-14', hour: 3 }).past).toBe('2026-07-13')
    expect(only('at 1 this morning', { day: '2026-07-14', hour: 2 })).toMatchObject({ past: '2026-07-14', time: '01:00' })
  })
})

describe('turns of the year and the leap day', () => {
  test.each([
    ['2027-01-02', 'dec 28', '2026-12-28', '2027-12-28'],
    ['2027-01-02', '28 de dic', '2026-12-28', '2027-12-28'],
    ['2027-01-02', 'the 31st', '2026-12-31', '2027-01-31'],
    ['2027-01-02', 'monday', '2026-12-28', '2027-01-04'],
    ['2027-01-01', 'last night', '2026-12-31', '2027-01-01'],
    ['2027-01-01', 'last month', '2026-12-31', '2027-01-01'],
    ['2026-12-31', 'tomorrow', '2026-12-31', '2027-01-01'],
    ['2026-12-31', 'jan 2', '2026-01-02', '2027-01-02'],
    ['2026-12-31', 'end of the month', '2026-12-31', '2026-12-31'],
    ['2026-12-31', 'in 2 weeks', '2026-12-31', '2027-01-14'],
    ['2028-02-29', 'yesterday', '2028-02-28', '2028-02-29'],
    ['2028-02-29', 'tomorrow', '2028-02-29', '2028-03-01'],
    ['2028-02-29', 'the 31st', '2028-01-31', '2028-03-31'],
    ['2028-02-29', 'a year ago', '2027-02-28', '2028-02-29'],
    ['2028-03-01', 'last night', '2028-02-29', '2028-03-01'],
    ['2026-07-15', 'feb 29', '2024-02-29', '2028-02-29'],
    ['2026-07-15', 'feb 28', '2026-02-28', '2027-02-28'],
    ['2026-03-31', 'a month ago', '2026-02-28', '2026-03-31'],
  ])('%s: %s', (day, text, past, future) => {
    expect(only(text, { day, hour: 9 })).toMatchObject({ past, future })
  })
  test.each(['sept 31', '9/31', 'feb 30', 'el 31 de abril', '2026-02-29', '13/13'])('%s is no day', text => {
    expect(found(text)).toEqual([])
  })
})
