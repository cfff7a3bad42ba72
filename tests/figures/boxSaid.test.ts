import { describe, expect, it } from 'vitest'
import { indexNames } from '../../src/reading/names.ts'
import { read } from '../../src/reading/read.ts'

const names = (boxes: string[], piles: string[] = ['ridge']) =>
  indexNames({ piles: new Map(piles.map(p => [p, p])), boxes, words: new Map(), people: [] })
const loadOf = (text: string, boxes: string[], piles?: string[]) => {
  const { acts } = read(text, { names: names(boxes, piles), now: { day: '2026-09-14', hour: 12 }, lang: 'en' })
  return acts.map(a => ({ frame: a.frame, ...a.slots }))
}
const FARM = ['red box', 'green truck', 'carreta amarilla']

describe('a box called by a part of its name', () => {
  it.each([
    ['put 7 red loads of corn on ridge', 7, 'red box'],
    ['put 7 red on ridge', 7, 'red box'],
    ['4 green loads corn on ridge', 4, 'green truck'],
    ['3 loads of corn in the green on ridge', 3, 'green truck'],
    ['echamos 4 viajes de la amarilla de maíz en ridge', 4, 'carreta amarilla'],
  ])('%s', (text, count, box) => {
    const [load] = loadOf(text, FARM)
    expect(load).toMatchObject({ frame: 'load', count, box })
  })
})

describe('is none', () => {
  it('where two boxes share it', () => {
    expect(loadOf('put 7 red loads of corn on ridge', ['red box', 'red wagon'])[0]).not.toHaveProperty('box')
  })
  it('where a pile has it', () => {
    expect(loadOf('put 7 loads of corn on blue', ['blue wagon'], ['ridge', 'blue'])[0]).toMatchObject({ pile: 'blue', count: 7 })
  })
  it('before a thing', () => {
    expect(loadOf('put 7 red tires on ridge', FARM).some(a => 'box' in a)).toBe(false)
  })
})

describe('what a ton cost, said in passing, counts nothing', () => {
  it.each([
    ['bought 40 tons hay at 70 a ton', 'haylage', 80_000],
    ['bought 40 tons of haylage for $70 a ton', 'haylage', 80_000],
    ['compramos 40 toneladas de alfalfa a 70 la tonelada', 'haylage', 80_000],
    ['put 12 ton corn on ridge at 55 per ton', 'corn silage', 24_000],
  ])('%s', (text, crop, lb) => {
    const acts = loadOf(text, [])
    expect(acts).toHaveLength(1)
    expect(acts[0]).toMatchObject({ frame: 'load', crop, lb })
  })
  it('while a real ton still does', () => {
    expect(loadOf('put 3 loads corn on ridge, 8 tons each', [])[0]).toMatchObject({ count: 3, lb: 48_000 })
  })
})

describe('prices', () => {
  const price = (text: string) => read(text, { names: names([]), now: { day: '2026-09-14', hour: 12 }, lang: 'en' }).price
  it.each([
    ['corn silage is worth 55 a ton', 'corn silage', 55],
    ['corn silage 55 a ton', 'corn silage', 55],
    ['set corn silage at 55 a ton', 'corn silage', 55],
    ['we get 60 a ton for haylage', 'haylage', 60],
    ['haylage sells for $70/ton', 'haylage', 70],
    ['price of corn silage is 48', 'corn silage', 48],
    ['plastic costs 300', 'plastic', 300],
    ['plastic is 310 a sheet', 'plastic', 310],
    ['we pay 300 for a sheet of plastic', 'plastic', 300],
    ['a sheet of plastic is 310', 'plastic', 310],
    ['el ensilaje de maíz vale 55 la tonelada', 'corn silage', 55],
    ['maíz a 55 la tonelada', 'corn silage', 55],
    ['precio del haylage 70 la tonelada', 'haylage', 70],
    ['la alfalfa está a 70 por tonelada', 'haylage', 70],
    ['nos pagan 60 por tonelada de haylage', 'haylage', 60],
    ['el plástico cuesta 300', 'plastic', 300],
    ['cada plástico sale en 310', 'plastic', 310],
    ['un plástico cuesta 300 dólares', 'plastic', 300],
  ])('%s', (text, of, amount) => expect(price(text)).toEqual({ of, amount }))
  it.each(['put 55 ton corn on ridge', 'corn tested 34', 'is corn silage worth 55 a ton?', 'we have 300 tires', 'fed 12k off ridge'])(
    '%s is none',
    text => expect(price(text)).toBeUndefined(),
  )
})
