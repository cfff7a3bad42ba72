import { describe, expect, test } from 'vitest'
import { findDates } from '../../src/reading/dates.ts'
import { tokenise } from '../../src/reading/tokens.ts'

// What a general date library made of field messages, tried on Wednesday 16 September 2026 at half past two in the afternoon with
// chrono-node 2.10.3; each is a test here so that it cannot come back. Nothing is claimed: dates must hold their own.
const NOW = { day: '2026-09-16', hour: 14.5 }
const found = (text: string, now = NOW) => findDates(tokenise(text), () => false, now)
const one = (text: string, now = NOW) => {
  const list = found(text, now)
  expect(list, text).toHaveLength(1)
  return list[0]!
}

describe('words that are no date', () => {
  test.each([
    // a ratio, read as two o'clock
    '2 to 1 mix',
    'mix is 2 to 1 corn to haylage',
    'mezcla 2 a 1',
    '2:1',
    // a place on the pile, read as an hour
    'face at 12',
    'face at 22',
    'face is at 8 on lane',
    'face at 8 ft',
    'set at 7',
    'face was left at 12 on lane',
    'la cara esta a 23 pies',
    // verbs and weather
    'sat the tires on',
    'it just sat there',
    'the plastic sat open all week',
    'lane sat 3 weeks before we opened it',
    'sun came out',
    'the sun is hot today'.replace(' today', ''),
    'sun damage on the plastic',
    'left it in the sun',
    // names of months that are verbs or names of piles
    'load 12 may be wet',
    'may be wet',
    'may be 6 loads',
    'may 6 to 7 loads go on lane',
    'may one of you check lane',
    'we may feed off lane',
    'put 12 loads on march pile',
    'march pile',
    'august pile',
    'el mar esta feo',
    // fractions and mixes
    '3/4 load',
    '1/2 load',
    'put 1/2 load on lane',
    'bunker is 7/8 full',
    '7/8 full',
    'hail 3/4 inch',
    'hail was 3/4',
    '12/10 mix',
    '12/10 loads',
    'put 9/12 loads',
    // rates and spans of feed
    '120 a day',
    '2 a day',
    'fed 9000 a day',
    'need enough for 120 days',
    '70 loads in an hour',
    '5 viajes en 2 dias',
    // ranges
    'from 9 to 12 feet',
    '10-15 loads',
    '36-40',
    'de 3 a 5 viajes',
    // greetings and the like
    'good morning',
    'buenos dias',
    'buenas noches',
    'weekend feeding',
    'now',
    // plain trade
    'put 7 loads corn on north',
    'face at 40',
    '12k',
    'second crop',
    '3rd crop',
    '2nd cutting',
    'el primer corte',
    'el segundo corte',
    '35.2 dm',
    'corn tested 34',
    // picks
    'the 2nd',
    'the first one',
    'undo the 2nd',
    'borra el 2',
    'el 2',
    // numbers that belong to something else
    'a las 6 vacas',
    'le di 9000 a las 12 vacas secas',
    'el 12 por ciento',
    'en el silo 4',
    'call 555-0142',
    'hace calor',
    'hace mucho viento',
    'domingo puso 5 viajes',
    'los viernes le damos menos',
    'constructor',
    '',
  ])('%s', text => {
    expect(found(text)).toEqual([])
  })
})

describe('words that are a date beside their doubles', () => {
  test.each([
    ['sat nite', '2026-09-12'],
    ['sat fed 10400', '2026-09-12'],
    ['hail sat', '2026-09-12'],
    ['hail sat on lane', '2026-09-12'],
    ['chkd barn sat ok', '2026-09-12'],
    ['sun fed 10900', '2026-09-13'],
    ['covered lane sun', '2026-09-13'],
    ['fri', '2026-09-11'],
    ['2nd crop may 28', '2026-05-28'],
    ['march 12', '2026-03-12'],
    ['on 9/12', '2026-09-12'],
    ['9/12: put 6 loads', '2026-09-12'],
    ['covered lane 9/12', '2026-09-12'],
    ['put 6 loads 9/13 on lane', '2026-09-13'],
    ['12 loads sept 3', '2026-09-03'],
    ['el domingo puso 5 viajes', '2026-09-13'],
  ])('%s', (text, past) => {
    expect(one(text).past).toBe(past)
  })
})

describe('English dates a library has wrong or not at all', () => {
  test('last night is the evening before, in the small hours too', () => {
    expect(one('last night')).toMatchObject({ past: '2026-09-15', part: 'night' })
    expect(one('last night', { day: '2026-09-16', hour: 2 })).toMatchObject({ past: '2026-09-15', part: 'night' })
  })
  test.each(['since friday', 'friday', 'on friday'])('%s: the past one in a report, the coming one in a plan', text => {
    expect(one(text)).toMatchObject({ past: '2026-09-11', future: text === 'since friday' ? '2026-09-16' : '2026-09-18' })
  })
  test('a report of this morning or of six is of today', () => {
    expect(one('this morning').past).toBe('2026-09-16')
    expect(one('hail at 6')).toMatchObject({ past: '2026-09-16', time: '06:00' })
  })
  test('a week from friday keeps the week', () => {
    expect(one('a week from friday').future).toBe('2026-09-25')
  })
  test('day before yesterday without its article', () => {
    expect(one('day before yesterday').past).toBe('2026-09-14')
  })
  test('bare hours', () => {
    expect(one('hail at 6').time).toBe('06:00')
    expect(one('broke down at 3').time).toBe('15:00')
    expect(one('done by 8').time).toBe('08:00')
  })
  test.each([
    ['around christmas', '2025-12-25', '2026-12-25'],
    ['before thanksgiving', '2025-11-27', '2026-11-26'],
    ['last fall', '2025-11-30', '2026-09-16'],
    ['in the spring', '2026-05-31', '2027-03-01'],
    ['put 5 loads on lane the 3rd', '2026-09-03', '2026-10-03'],
    ['on the 12th', '2026-09-12', '2026-10-12'],
    ['since march', '2026-03-31', '2026-09-16'],
    ['in march', '2026-03-31', '2027-03-01'],
  ])('%s', (text, past, future) => {
    expect(one(text)).toMatchObject({ past, future })
  })
  test.each([
    ['0600', '06:00'],
    ['6a', '06:00'],
    ['7p', '19:00'],
  ])('%s', (text, time) => {
    expect(one(text).time).toBe(time)
  })
})

describe('Spanish dates a library has wrong or not at all', () => {
  test.each([
    ['anoche', '2026-09-15', '2026-09-16'],
    ['anteayer', '2026-09-14', '2026-09-16'],
    ['antier', '2026-09-14', '2026-09-16'],
    ['hace dos días', '2026-09-14', '2026-09-16'],
    ['hace 2 días', '2026-09-14', '2026-09-16'],
    ['hace una semana', '2026-09-09', '2026-09-16'],
    ['la semana pasada', '2026-09-13', '2026-09-16'],
    ['el mes pasado', '2026-08-31', '2026-09-16'],
    ['3 de sept', '2026-09-03', '2027-09-03'],
    ['3 sept', '2026-09-03', '2027-09-03'],
    ['navidad', '2025-12-25', '2026-12-25'],
    ['hace media hora', '2026-09-16', '2026-09-16'],
    ['pasado mañana', '2026-09-16', '2026-09-18'],
    ['ayer por la tarde', '2026-09-15', '2026-09-16'],
    ['el lunes que viene', '2026-09-16', '2026-09-21'],
    ['el martes pasado', '2026-09-15', '2026-09-16'],
    // the month first, as on the farms of the States
    ['el 9/3', '2026-09-03', '2027-09-03'],
  ])('%s', (text, past, future) => {
    expect(one(text)).toMatchObject({ past, future })
  })
  test('del 3 al 9 is both ends', () => {
    expect(one('del 3 al 9')).toMatchObject({ past: '2026-09-09', span: { from: '2026-09-03', to: '2026-09-09' } })
  })
  test('a las 6 de la tarde is six in the evening', () => {
    expect(one('a las 6 de la tarde').time).toBe('18:00')
  })
  test('mañana is tomorrow, la mañana is the morning', () => {
    expect(one('mañana').future).toBe('2026-09-17')
    for (const text of ['ayer en la mañana', 'ayer por la mañana']) expect(one(text)).toMatchObject({ past: '2026-09-15', part: 'morning' })
    expect(one('en la mañana')).toMatchObject({ past: '2026-09-16', part: 'morning' })
    expect(one('a las 6 de la mañana')).toMatchObject({ past: '2026-09-16', time: '06:00' })
  })
})
