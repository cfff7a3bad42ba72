import { describe, expect, it } from 'vitest'
import { indexNames, NO_NAMES } from '../../src/reading/names.ts'
import { read } from '../../src/reading/read.ts'

// Hail by the usual objects, inches: the National Weather Service's chart of estimated hail sizes ("Estimating Hail Size"),
// from memory. The chart gives a diameter for each; nickel is 7/8 in, which its tables also round to 0.88.
const CHART: [inches: number, ...objects: string[]][] = [
  [0.25, 'pea'],
  [0.5, 'marble', 'mothball'],
  [0.7, 'dime'],
  [0.75, 'penny'],
  [0.88, 'nickel'],
  [1, 'quarter'],
  [1.25, 'half dollar'],
  [1.5, 'walnut', 'ping pong ball'],
  [1.75, 'golf ball'],
  [2, 'hen egg'],
  [2.5, 'tennis ball'],
  [2.75, 'baseball'],
  [3, 'teacup'],
  [4, 'grapefruit'],
  [4.5, 'softball'],
]

const names = indexNames({ ...NO_NAMES, piles: new Map([['quarry', 'quarry']]) })
/** The size of the hail that a message tells, in. */
const inches = (text: string, lang: 'en' | 'es' = 'en'): unknown => {
  const { acts } = read(text, { names, now: { day: '2026-07-03', hour: 10 }, lang })
  const hail = acts.filter(a => a.frame === 'weather' && a.mood === 'fact' && a.slots.kind === 'hail')
  expect(hail, text).toHaveLength(1)
  return hail[0]!.slots.inches
}

describe('hail by the object', () => {
  for (const [size, ...objects] of CHART) {
    for (const object of objects) {
      it(`${object}: ${size} in`, () => {
        for (const text of [
          `${object} size hail last night`,
          `had ${object} sized hail`,
          `hail the size of a ${object} last night`,
          `hail last night, ${object} size`,
          `it hailed, ${object}s`,
        ])
          expect.soft(inches(text), text).toBe(size)
      })
    }
  }
})

describe('hail by its measure', () => {
  it.each([
    ['inch and a half hail last night', 1.5],
    ['1.75 inch hail last night', 1.75],
    ['hail last night, 1 in', 1],
    ['1" hail', 1],
    ['3/4 inch hail yesterday', 0.75],
    ['quarter inch hail', 0.25],
    ['half inch hail', 0.5],
    ['two inch hail last night', 2],
  ])('%s', (text, size) => expect(inches(text)).toBe(size))
})

describe('granizo por su tamaño', () => {
  it.each([
    ['cayó granizo anoche del tamaño de una canica', 0.5],
    ['granizo como pelota de golf', 1.75],
    ['granizo del tamaño de pelotas de golf', 1.75],
    ['cayó granizo de una pulgada', 1],
    ['granizo tamaño nuez anoche', 1.5],
    ['granizo como huevo de gallina', 2],
    ['granizo del tamaño de una pelota de béisbol', 2.75],
    ['granizo de pulgada y media', 1.5],
  ])('%s', (text, size) => expect(inches(text, 'es')).toBe(size))
})

it('hail without a size has none', () => {
  for (const text of ['hail last night', 'it hailed', 'some hail yesterday']) expect(inches(text)).toBeUndefined()
  expect(inches('granizo anoche', 'es')).toBeUndefined()
})
