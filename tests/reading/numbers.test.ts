import { toCardinal as british } from 'n2words/en-GB'
import { toCardinal as english } from 'n2words/en-US'
import { toCardinal as mexican } from 'n2words/es-MX'
import { describe, expect, it } from 'vitest'
import { indexNames, NO_NAMES } from '../../src/reading/names.ts'
import { type NumberItem, numberAt } from '../../src/reading/numbers.ts'
import { read } from '../../src/reading/read.ts'
import { scan } from '../../src/reading/scan.ts'
import { tokenise } from '../../src/reading/tokens.ts'

// Number words come from n2words (MIT), a general-purpose library.

/** The number that a text is, from its first token to its last; undefined where it is not one number. */
const whole = (text: string): NumberItem | undefined => {
  const tokens = tokenise(text)
  const n = numberAt(tokens, 0)
  return n && n.to === tokens.length ? n : undefined
}
const valueOf = (text: string): number | undefined => whole(text)?.value

/** All of the small ones, then a prime step that meets every hundred and every thousand in many forms, then the round ones. */
const SAMPLE = [
  ...Array.from({ length: 1101 }, (_, n) => n),
  ...Array.from({ length: Math.floor((99_999 - 1101) / 37) + 1 }, (_, k) => 1101 + 37 * k),
  ...Array.from({ length: 99 }, (_, k) => (k + 1) * 1000),
  ...Array.from({ length: 899 }, (_, k) => 10_000 + k * 100),
  99_999,
]
const wrong = (say: (n: number) => string, sample = SAMPLE): string[] =>
  sample
    .flatMap(n => {
      const words = say(n)
      const got = valueOf(words)
      return got === n ? [] : [`${n}: "${words}" read ${got}`]
    })
    .slice(0, 5)

describe('number words, 0 to 99,999', () => {
  it('the sample is one', () => {
    expect(SAMPLE.length).toBeGreaterThan(4000)
    expect(english(12_345)).toBe('twelve thousand three hundred forty-five')
    expect(mexican(12_345)).toBe('doce mil trescientos cuarenta y cinco')
  })
  it('English, without "and"', () => expect(wrong(n => english(n).replaceAll('-', ' '))).toEqual([]))
  it('English, with "and"', () => expect(wrong(n => british(n).replaceAll('-', ' '))).toEqual([]))
  it('English, with its hyphens', () => expect(wrong(n => english(n))).toEqual([]))
  it('Spanish', () => expect(wrong(n => mexican(n))).toEqual([]))
  it('Spanish without accents', () => expect(wrong(n => mexican(n).normalize('NFD').replace(/\p{M}/gu, ''))).toEqual([]))
  it('capitals', () =>
    expect(
      wrong(
        n => english(n).toUpperCase().replaceAll('-', ' '),
        SAMPLE.filter((_, k) => k % 29 === 0),
      ),
    ).toEqual([]))
  it('digits, with and without the comma', () => {
    expect(wrong(String)).toEqual([])
    expect(wrong(n => n.toLocaleString('en-US'))).toEqual([])
  })
})

// What follows are the ways a crew says them; the values are arithmetic.
const VALUES: [string, number][] = [
  ['1/2', 0.5],
  ['3/4', 0.75],
  ['2 1/2', 2.5],
  ['7 3/4', 7.75],
  ['1½', 1.5],
  ['¾', 0.75],
  ['.5', 0.5],
  ['2.5', 2.5],
  ['two and a half', 2.5],
  ['2 and a half', 2.5],
  ['two and one half', 2.5],
  ['three and a quarter', 3.25],
  ['three and three quarters', 3.75],
  ['a half', 0.5],
  ['half a', 0.5],
  ['six and a half', 6.5],
  ['dos y medio', 2.5],
  ['dos y media', 2.5],
  ['tres y cuarto', 3.25],
  ['medio', 0.5],
  ['two point five', 2.5],
  ['dos punto cinco', 2.5],
  ['12k', 12_000],
  ['12K', 12_000],
  ['9.5k', 9500],
  ['12 thousand', 12_000],
  ['12 mil', 12_000],
  ['12 mil 500', 12_500],
  ['nine thousand five hundred', 9500],
  ['ninety five hundred', 9500],
  ['twelve hundred', 1200],
  ['one fifty', 150],
  ['two forty', 240],
  ['a hundred and thirty', 130],
  ['a thousand', 1000],
  ['two and a half thousand', 2500],
  ['cien', 100],
  ['ciento veinte', 120],
  ['mil', 1000],
  ['mil quinientos', 1500],
  ['once mil', 11_000],
  ['a couple', 2],
  ['a couple of', 2],
  ['a pair', 2],
  ['a dozen', 12],
  ['half a dozen', 6],
  ['half dozen', 6],
  ['two dozen', 24],
  ['un par', 2],
  ['un par de', 2],
  ['media docena', 6],
  ['una docena', 12],
  ['dos docenas', 24],
]
describe('as a crew says them', () => {
  it.each(VALUES)('%s', (text, value) => expect(valueOf(text)).toBeCloseTo(value, 9))
})

describe('ranges keep their two ends', () => {
  it.each([
    ['10-12', 10, 12],
    ['10 - 12', 10, 12],
    ['10 to 12', 10, 12],
    ['ten to twelve', 10, 12],
    ['2 or 3', 2, 3],
    ['two or three', 2, 3],
    ['dos o tres', 2, 3],
    ['5 a 6', 5, 6],
    ['1,000 to 1,200', 1000, 1200],
  ])('%s', (text, low, high) => expect(whole(text)?.range).toEqual([low, high]))
  it.each(['2 to 1', '9 - 2', '12 to 100'])('%s is none', text => expect(whole(text)?.range).toBeUndefined())
})

describe('what is no number by itself', () => {
  it.each(['to', 'for', 'a', 'one', 'won', 'ate', 'once'])('%s is one only beside a unit', text => expect(whole(text)?.weak).toBe(true))
  it.each(['five and two', 'seven eight', 'treinta y cuarenta', 'corn', 'and', 'hundred'])('%s', text =>
    expect(whole(text)).toBeUndefined(),
  )
  it.each([
    ['12th', 12],
    ['2nd', 2],
    ['2da', 2],
    ['3er', 3],
  ])('%s is an ordinal', (text, value) => expect(whole(text)).toMatchObject({ value, ordinal: true }))
})

/** The first quantity of a text, with its unit. */
const quantity = (text: string) => {
  const item = scan(tokenise(text), indexNames(NO_NAMES), () => [], 'en').items.find(i => i.num !== undefined)
  return item && { num: item.num, unit: item.unit }
}
describe('feet and inches', () => {
  it.each([
    ["22'6", 22.5],
    ['22\'6"', 22.5],
    ['22\' 6"', 22.5],
    ['6\'3"', 6.25],
    ["6'", 6],
    ['6’3”', 6.25],
    ['12 ft 6', 12.5],
    ['12 ft 6 in', 12.5],
    ['12 feet 6 inches', 12.5],
    ['12 foot 6', 12.5],
    ['twelve feet six inches', 12.5],
    ['12 ft', 12],
    ['12ft', 12],
    ['12 and a half feet', 12.5],
    ['12 1/2 ft', 12.5],
    ['a foot and a half', 1.5],
    ['12 pies', 12],
  ])('%s', (text, ft) => {
    const q = quantity(text)
    expect(q?.unit).toBe('ft')
    expect(q?.num).toBeCloseTo(ft, 9)
  })
  it.each([
    ['6"', 6],
    ['6 in', 6],
    ['six inches', 6],
    ['1 3/4 in', 1.75],
    ['1.75 inch', 1.75],
    ['2 pulgadas', 2],
  ])('%s', (text, inches) => expect(quantity(text)).toEqual({ num: inches, unit: 'in' }))
})

describe('other units', () => {
  it.each([
    ['14 ton', 14, 'ton'],
    ['9,800 lb', 9800, 'lb'],
    ['9800#', 9800, 'lb'],
    ['12k lbs', 12_000, 'lb'],
    ['34 %', 34, 'pct'],
    ['34 percent', 34, 'pct'],
    ['60 mph', 60, 'mph'],
    ['7lds', 7, 'load'],
    ['siete viajes', 7, 'load'],
    ['half a load', 0.5, 'load'],
    ['a load and a half', 1.5, 'load'],
    ['dos toneladas y media', 2.5, 'ton'],
  ])('%s', (text, num, unit) => expect(quantity(text)).toEqual({ num, unit }))
})

it('a number in a message is the same in digits and in words', () => {
  const names = indexNames({ ...NO_NAMES, piles: new Map([['quarry', 'quarry']]) })
  const count = (n: string, lang: 'en' | 'es') =>
    read(lang === 'en' ? `put ${n} loads corn on quarry` : `echamos ${n} viajes de maiz en quarry`, {
      names,
      now: { day: '2026-09-14', hour: 10 },
      lang,
    }).acts[0]?.slots.count
  for (let n = 2; n <= 200; n++) {
    expect.soft(count(String(n), 'en'), String(n)).toBe(n)
    expect.soft(count(english(n).replaceAll('-', ' '), 'en'), english(n)).toBe(n)
    expect.soft(count(english(n), 'en'), english(n)).toBe(n)
    expect.soft(count(mexican(n), 'es'), mexican(n)).toBe(n)
  }
})
