import fc from 'fast-check'
import { expect, it } from 'vitest'
import { bounds, outsideOf } from '../../src/figures/result.ts'

it('holds what cannot be to what can, names what is out of range, once', () => {
  const b = bounds()
  expect(b.hold('depth', 3, [5, 20], [1, 60])).toBe(3)
  expect(b.hold('depth', 100, [5, 20], [1, 60])).toBe(60)
  expect(b.hold('width', 7, [5, 20])).toBe(7)
  expect(b.figure(4)).toEqual({ value: 4, outside: ['depth'] })
  expect(bounds().figure(4)).toEqual({ value: 4 })
})

it('gives a number within what can be for every number', () => {
  fc.assert(
    fc.property(fc.double(), x => {
      const held = bounds().hold('x', x, [2, 5], [0, 9])
      expect(held >= 0 && held <= 9).toBe(true)
    }),
  )
})

it('gathers the codes of several figures', () => {
  expect(outsideOf({ outside: ['a'] }, {}, { outside: ['b', 'a'] })).toEqual({ outside: ['a', 'b'] })
  expect(outsideOf({})).toEqual({})
})
