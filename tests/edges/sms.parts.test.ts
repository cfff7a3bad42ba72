import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { plainly, septets } from '../../src/edges/sms/alphabet.ts'
import { smsParts } from '../../src/edges/sms/parts.ts'

// 3GPP TS 23.038, 6.2.1 (GSM 7 bit default alphabet), by columns of sixteen as its table has them, 0/0 to 7/15; 1/11 is the escape.
const TABLE = [
  '@£$¥èéùìòÇ\nØø\rÅå',
  'Δ_ΦΓΛΩΠΨΣΘΞ\u001bÆæßÉ',
  ' !"#¤%&\'()*+,-./',
  '0123456789:;<=>?',
  '¡ABCDEFGHIJKLMNO',
  'PQRSTUVWXYZÄÖÑÜ§',
  '¿abcdefghijklmno',
  'pqrstuvwxyzäöñüà',
]
// 6.2.1.1: what stands behind the escape, and so takes two septets.
const EXTENDED = '\f^{}\\[~]|€'

describe('the alphabet of TS 23.038', () => {
  it('counts one septet for each of the 127 characters of the table, two for the extension, none for all else', () => {
    const all = TABLE.join('').replace('\u001b', '')
    expect([...all]).toHaveLength(127)
    for (const c of all) expect(septets(c), c).toBe(1)
    for (const c of EXTENDED) expect(septets(c), c).toBe(2)
    for (const c of 'áíóúçêïõ`’“—…≈°½×·🚜ж') expect(septets(c), c).toBeUndefined()
    expect(septets('5 € [north]')).toBe(14)
  })

  it.each([
    ['¿Cuántos viajes de maíz? Según José: ñandú, pingüino, café', '¿Cuantos viajes de maiz? Segun José: ñandu, pingüino, café'],
    ['ÁÍÓÚ ÉÑÜ', 'AIOU ÉÑÜ'],
    ['24 °F — not “warm”…', '24 F - not "warm"...'],
    ['24°F, 3½ ft, ¾ in, 60×130, ft³', '24 F, 3 1/2 ft, 3/4 in, 60x130, ft3'],
    ['≈ 40 days, total ≈12', 'about 40 days, total about 12'],
    ['a\u00a0b\u200bc\r\nd · e', 'a bc\nd - e'],
    ['cafe\u0301 n\u0303', 'café ñ'],
    ['ﬁne, Ｆull', 'fine, Full'],
  ])('%s', (said, plain) => {
    expect(plainly(said, 'about')).toBe(plain)
    expect(septets(plainly(said, 'about'))).toBeDefined()
  })

  it('leaves what nothing stands for', () => {
    expect(plainly('поле 🚜', 'about')).toBe('поле 🚜')
  })

  it('changes nothing that is in the alphabet', () => {
    const chars = [...TABLE.join(''), ...EXTENDED].filter(c => !'\u001b\r\f'.includes(c))
    fc.assert(fc.property(fc.array(fc.constantFrom(...chars)), list => plainly(list.join(''), 'about') === list.join('')))
  })
})

// TS 23.040, 9.2.3.24: 140 octets of user data; TS 23.038, 6.2.1 and 6.2.3: 160 characters of 7 bits, 70 of UCS2.
describe('parts', () => {
  it('are one where 160 septets hold the text, and a character of the extension takes two', () => {
    expect(smsParts('a'.repeat(160))).toHaveLength(1)
    expect(smsParts('a'.repeat(161))).toHaveLength(2)
    expect(smsParts('€'.repeat(80))).toHaveLength(1)
    expect(smsParts(`${'€'.repeat(80)}a`)).toHaveLength(2)
    expect(smsParts('ж'.repeat(70))).toHaveLength(1)
    expect(smsParts('ж'.repeat(71))).toHaveLength(2)
    expect(smsParts('')).toEqual([])
  })

  it('end with words, and say their place', () => {
    const text = Array.from({ length: 60 }, (_, i) => `word${i}`).join(' ')
    const list = smsParts(text)
    expect(list).toHaveLength(3)
    expect(list.map(p => p.slice(-6))).toEqual([' (1/3)', ' (2/3)', ' (3/3)'])
    expect(list.map(p => p.slice(0, -6)).join(' ')).toBe(text)
  })

  it('keep lines whole where they can, and more than nine are counted with two digits', () => {
    const list = smsParts(Array.from({ length: 40 }, (_, i) => `line ${i} ${'x'.repeat(40)}`).join('\n'))
    expect(list.length).toBeGreaterThan(9)
    expect(list[0]).toMatch(/^line 0 x+\nline 1 x+\nline 2 x+ \(1\/1\d\)$/)
  })

  it('never are too long, lose nothing, and cut no character in half, whatever the text', () => {
    const char = fc.constantFrom(...'abc é€[]ñ \n', '🚜', 'ж', ' ', 'word ')
    fc.assert(
      fc.property(fc.array(char, { maxLength: 700 }), chars => {
        const text = chars.join('')
        const list = smsParts(text)
        const bare = list.length > 1 ? list.map(p => p.replace(/ \(\d+\/\d+\)$/, '')) : list
        expect(bare.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''))
        for (const part of list) {
          expect(septets(part) ?? 0).toBeLessThanOrEqual(160)
          if (septets(part) === undefined) expect(part.length).toBeLessThanOrEqual(70)
          // half a pair of UTF-16 becomes the replacement character
          expect(Buffer.from(part).toString()).toBe(part)
        }
      }),
      { numRuns: 200 },
    )
  })
})
