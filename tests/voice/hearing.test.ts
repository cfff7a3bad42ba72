import { describe, expect, it } from 'vitest'
import { isNumberWord, nearNumbers } from '../../src/hearing/near.ts'
import { noteOf } from '../../src/hearing/note.ts'
import { swapsOf } from '../../src/hearing/swaps.ts'
import { type Pass, weigh } from '../../src/hearing/weigh.ts'
import type { Heard } from '../../src/ports.ts'

const words = (text: string, sure = 1) => text.split(' ').map((word, k) => ({ word, from: k, to: k + 1, sure }))
const pass = (text: string, weight = 1): Pass => ({ words: text ? words(text) : [], weight })
const texts = (list: { words: { word: string }[]; weight: number }[]) => list.map(w => [w.words.map(x => x.word).join(' '), w.weight])
const sum = (list: { weight: number }[]) => list.reduce((t, w) => t + w.weight, 0)

describe('numbers near to one another', () => {
  it('have every teen beside its ten, both ways', () => {
    const tens = ['thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety']
    const teens = ['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen']
    for (const [k, ten] of tens.entries()) {
      expect(nearNumbers(ten)).toContain(teens[k])
      expect(nearNumbers(teens[k]!)).toContain(ten)
    }
  })

  it('are numbers, and nothing else has any', () => {
    for (const w of ['constructor', 'loads', 'toString', '']) expect(nearNumbers(w)).toEqual([])
    for (const w of ['fourteen', 'veinte', 'hundred']) expect(isNumberWord(w)).toBe(true)
    expect(isNumberWord('loads')).toBe(false)
  })
})

describe('slips of the ear', () => {
  it('change one number at a time, and names that are alike', () => {
    const got = swapsOf('put forty loads on ridge'.split(' '), [['ridge'], ['bridge'], ['quarry'], ['big', 'ridge']]).map(s => s.join(' '))
    expect(got).toContain('put fourteen loads on ridge')
    expect(got).toContain('put forty loads on bridge')
    expect(got).not.toContain('put forty loads on quarry')
    expect(got.every(t => t !== 'put forty loads on ridge')).toBe(true)
  })

  it('are bounded', () => {
    expect(
      swapsOf(
        Array.from({ length: 400 }, () => 'four'),
        [],
        16,
      ),
    ).toHaveLength(16)
  })
})

describe('weighing', () => {
  it('counts votes: what all passes heard has it all', () => {
    expect(texts(weigh([pass('seven loads'), pass('seven loads')], []))).toEqual([['seven loads', 1]])
    const [first, second] = weigh([pass('seven loads'), pass('eleven loads'), pass('seven loads')], [])
    expect(first!.weight).toBeCloseTo(2 / 3)
    expect(second!.weight).toBeCloseTo(1 / 3)
  })

  it('gives each word the share of the passes that have it there', () => {
    const [w] = weigh([pass('put seven loads'), pass('put eleven loads'), pass('put seven loads'), pass('but seven loads')], [])
    expect(w!.words.map(x => x.sure)).toEqual([0.75, 0.75, 1])
  })

  it('a pass that heard nothing votes for nothing', () => {
    expect(sum(weigh([pass('seven loads'), pass('')], []))).toBeCloseTo(0.5)
    expect(weigh([pass(''), pass('')], [])).toEqual([])
    expect(weigh([], [])).toEqual([])
  })

  it('on trial the better wording wins, and the weights still add up to 1', () => {
    const trial = (margin: number) => weigh([pass('forty loads')], [{ of: 'forty loads', words: ['fourteen', 'loads'], margins: [margin] }])
    expect(texts(trial(2000))[0]![0]).toBe('fourteen loads')
    expect(texts(trial(-2000))[0]![0]).toBe('forty loads')
    expect(trial(0).map(w => w.weight)).toEqual([0.5, 0.5])
    for (const m of [-300, -40, 0, 40, 300]) expect(sum(trial(m))).toBeCloseTo(1)
    const clear = (list: ReturnType<typeof trial>) => list.find(w => w.words[0]!.word === 'forty')!.weight
    expect(clear(trial(-400))).toBeGreaterThan(clear(trial(-100)))
  })

  it('a number that nobody would say gives way to the one that sounds like it', () => {
    const got = weigh(
      [pass('at thirteen two feet')],
      [{ of: 'at thirteen two feet', words: 'at thirty two feet'.split(' '), margins: [-60] }],
    )
    expect(texts(got)[0]![0]).toBe('at thirty two feet')
    expect(sum(got)).toBeLessThan(0.92)
  })

  it('one doubting trial is a doubt', () => {
    const got = weigh([pass('forty loads')], [{ of: 'forty loads', words: ['fourteen', 'loads'], margins: [-900, 0, -900] }])
    expect(got[0]!.weight).toBeCloseTo(0.5)
  })
})

describe('from an ear to a message', () => {
  const one = (text: string, sure: number[]): Heard => ({
    lang: 'en',
    wordings: [{ words: words(text).map((w, k) => ({ ...w, sure: sure[k]! })), weight: 0.7 }],
  })

  it('takes the only wording whole where its numbers and names are sure', () => {
    expect(noteOf(one('um 7 loads on ridge', [0.1, 0.9, 0.3, 0.3, 0.9]), ['ridge'])).toEqual({
      text: 'um 7 loads on ridge',
      wordings: [{ text: 'um 7 loads on ridge', weight: 1 }],
    })
  })

  it.each([
    ['a figure', [0.9, 0.3, 0.9, 0.9, 0.9]],
    ['a name', [0.9, 0.9, 0.9, 0.9, 0.3]],
  ])('doubts it where %s is not', (_, sure) => {
    expect(noteOf(one('put 7 loads on Ridge,', sure), ['ridge'])!.wordings[0]!.weight).toBe(0.3)
  })

  it('is nothing where nothing was heard', () => {
    expect(noteOf({ lang: 'en', wordings: [] }, [])).toBeUndefined()
    expect(noteOf({ lang: 'en', wordings: [{ words: [], weight: 1 }] }, [])).toBeUndefined()
  })
})
