import { describe, expect, it } from 'vitest'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { lines, makeSayer } from '../../src/saying/say.ts'

const small = {
  en: ['hi = Hi { $name }\nmaybe = Face{ HAS($ft) ->\n    [yes] {" "}at { $ft }\n   *[no] {""}\n}\nlist = { $list }'],
  es: ['hi = Buenas { $name }'],
}
const say = makeSayer(loadPrompts(), { strict: true })

describe('say', () => {
  it('throws for a missing code or variable where strict', () => {
    const strict = makeSayer(small, { strict: true })
    expect(() => strict({ code: 'nothing', data: {} }, 'en')).toThrow('nothing')
    expect(() => strict({ code: 'hi', data: {} }, 'en')).toThrow('name')
    expect(() => strict({ code: 'maybe', data: {} }, 'es')).toThrow('maybe')
  })

  it('says the code itself otherwise', () => {
    const lax = makeSayer(small)
    expect(lax({ code: 'nothing', data: {} }, 'en')).toBe('nothing')
    expect(lax({ code: 'hi', data: {} }, 'en')).toBe('hi')
  })

  it('lets a variable be left out where the sentence asks for it', () => {
    const strict = makeSayer(small, { strict: true })
    expect(strict({ code: 'maybe', data: {} }, 'en')).toBe('Face')
    expect(strict({ code: 'maybe', data: { ft: '' } }, 'en')).toBe('Face')
    expect(strict({ code: 'maybe', data: { ft: 0 } }, 'en')).toBe('Face at 0')
  })

  it('says messages inside of messages first, and joins lists', () => {
    const lax = makeSayer(small)
    const list = [{ code: 'hi', data: { name: 'bo' } }, 'lane', 3]
    expect(lax({ code: 'list', data: { list } }, 'en')).toBe('Hi bo, lane and 3')
    expect(lax({ code: 'join', data: { list: ['a', '', 'b'], by: 'comma' } }, 'en')).toBe('a, b')
    expect(lax({ code: 'join', data: { list: ['a', 'b', 'c'], by: 'or' } }, 'en')).toBe('a, b or c')
    expect(
      lax(
        lines([
          { code: 'hi', data: { name: 'a' } },
          { code: 'hi', data: { name: 'b' } },
        ]),
        'es',
      ),
    ).toBe('Buenas a\nBuenas b')
  })

  // Unicode CLDR, list patterns: Spanish "y" is "e" before an i that is heard first; an English h is not silent.
  it('joins Spanish names as they are spoken', () => {
    expect(say({ code: 'join', data: { list: ['north', 'lane', 'hill'], by: 'and' } }, 'es')).toBe('north, lane y hill')
    expect(say({ code: 'join', data: { list: ['norte', 'iglesia'], by: 'and' } }, 'es')).toBe('norte e iglesia')
    expect(say({ code: 'join', data: { list: ['norte', 'home'], by: 'or' } }, 'es')).toBe('norte o home')
  })

  // Unicode CLDR, numbers of es-MX: a comma between thousands and a point before the decimals, unlike es-ES.
  it('writes numbers as in Mexico and the United States', () => {
    for (const lang of ['en', 'es'] as const) expect(say({ code: 'weight-lb', data: { lb: 12_345.6 } }, lang)).toBe('12,345.6 lb')
    expect(say({ code: 'weight-lb', data: { lb: -0.001 } }, 'en')).toBe('0 lb')
  })

  it('puts no marks of its own round what people said', () => {
    expect(say({ code: 'did-note', data: { text: 'Hügel {x} "y"' } }, 'en')).toBe('note: Hügel {x} "y"')
  })

  it('says days without the host time zone', () => {
    expect(say({ code: 'day', data: { on: '2026-03-01' } }, 'en')).toBe('Mar 1')
    expect(say({ code: 'day', data: { on: '2026-12-31' } }, 'es')).toBe('31 de diciembre')
    // 2026-09-14 is a Monday: ISO 8601 week 38, day 1.
    expect(say({ code: 'morning-head', data: { day: '2026-09-14' } }, 'en')).toBe('Mon Sep 14, morning.')
    expect(say({ code: 'morning-head', data: { day: '2026-09-16' } }, 'es')).toBe('Miércoles 16 de septiembre, mañana.')
  })

  it('says weights in tons only where they come out even or are large', () => {
    expect(say({ code: 'weight', data: { lb: 28_000 } }, 'en')).toBe('14 tons')
    expect(say({ code: 'weight', data: { lb: 2000 } }, 'es')).toBe('1 tonelada')
    expect(say({ code: 'weight', data: { lb: 2204.62 } }, 'en')).toBe('2,204.62 lb')
    expect(say({ code: 'about', data: { lb: 1_194_321 } }, 'en')).toBe('597 tons')
    expect(say({ code: 'about', data: { lb: 11_960 } }, 'es')).toBe('12,000 lb')
  })

  it('says one and many', () => {
    expect(say({ code: 'n-load', data: { count: 1 } }, 'en')).toBe('1 load')
    expect(say({ code: 'n-load', data: { count: 0.5 } }, 'en')).toBe('0.5 loads')
    expect(say({ code: 'n-bucket', data: { count: 1 } }, 'es')).toBe('1 cucharón')
    expect(say({ code: 'n-days', data: { days: 1.2 } }, 'en')).toBe('1 day')
    expect(say({ code: 'n-days', data: { days: 1.6 } }, 'es')).toBe('2 días')
  })

  it('says the hour as people do', () => {
    const at = (time: string): string => say({ code: 'did-remind', data: { time, every: '', about: 'x' } }, 'en')
    expect(at('00:05')).toBe('reminder at 12:05 am: x')
    expect(at('12:00')).toBe('reminder at 12:00 pm: x')
    expect(at('18:30')).toBe('reminder at 6:30 pm: x')
  })

  it('leaves unknown feeds and animals as said', () => {
    expect(say({ code: 'crop-said', data: { crop: 'beet pulp' } }, 'es')).toBe('beet pulp')
    expect(say({ code: 'did-damage', data: { kind: 'hole', pile: 'lane', animal: 'llama' } }, 'es')).toBe('un hoyo en lane (llama)')
  })
})
