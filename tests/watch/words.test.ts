import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const D = '2026-11-03'

type Row = [string, Record<string, string | number | string[]>, string[]]

/** One example of every message of the watch, and what must be heard in both languages. */
const TABLE: Row[] = [
  ['morning-head', { day: D }, ['3']],
  ['morning-nothing', { day: D }, ['3']],
  ['summary-more', { count: 4 }, ['4']],
  [
    'morning-pile',
    { pile: 'glen', days: 41.6, low: 36.4, high: 49, runsOut: D, inPerDay: 6.66, minInPerDay: 3, enough: 'yes' },
    ['Glen', '42', '36', '49', '6.7'],
  ],
  [
    'morning-pile',
    { pile: 'glen', days: 1, low: '', high: '', runsOut: '', inPerDay: 2, minInPerDay: 4, enough: 'no' },
    ['Glen', '1', '2', '4'],
  ],
  ['morning-pile-days', { pile: 'glen', days: 12, low: '', high: '', runsOut: '' }, ['Glen', '12']],
  ['morning-pile-face', { pile: 'glen', inPerDay: 6, minInPerDay: 3, enough: 'yes' }, ['Glen', '6']],
  ['morning-pile-bare', { pile: 'glen' }, ['Glen']],
  ['morning-damage', { pile: 'glen', count: 2, days: 3, where: 'n end', what: 'hole' }, ['Glen', '2', '3', 'n end']],
  ['morning-damage', { pile: 'glen', count: 1, days: 0, where: '', what: '' }, ['Glen', '1']],
  ['morning-uncovered', { pile: 'glen', days: 1, depthFt: 0 }, ['Glen', '1']],
  ['morning-uncovered', { pile: 'glen', days: 30, depthFt: 2 }, ['Glen', '30', 'Kansas State', '1991']],
  ['morning-pile-out', { pile: 'glen' }, ['Glen', 'glen']],
  ['morning-mix', { pile: 'glen', atFt: 61.2, on: D, crop: 'haylage' }, ['Glen', '61', '3', 'haylage']],
  ['morning-mix', { pile: 'glen', atFt: 61.2, on: '', crop: '' }, ['Glen', '61']],
  ['morning-round', { on: D, piles: ['glen', 'hill'] }, ['3', 'glen', 'hill']],
  ['morning-check-due', { pile: 'glen', why: 'plain', last: D, late: 0 }, ['Glen', '3']],
  ['morning-roll', { pile: 'glen', ft: 2.5, tires: 25, bags: 0, edgeTires: 12, stackTires: 13 }, ['Glen', '3', '25', '12']],
  ['morning-bare', { pile: 'glen', ft: 9.2, days: 6 }, ['Glen', '9', '6']],
  ...['plain', 'sealed', 'hail', 'wind', 'rain', 'thaw', 'animal'].map(
    (why): Row => ['check-line', { pile: 'glen', why, last: '', late: 2 }, ['Glen', '2']],
  ),
  ['check-again', { count: 1 }, []],
  ['check-owner', { count: 1 }, []],
  ['repair-advice', { pile: 'glen' }, []],
  ['repair-risk', {}, ['3 mm', 'Teagasc']],
  ['repair-ask', { count: 1 }, []],
  ['repair-again', { count: 1 }, []],
  ['repair-owner', { count: 1 }, []],
  ['repair-line', { pile: 'glen', count: 1, days: 5, where: '', what: 'tear', depthFt: 0 }, ['Glen', '1', '5']],
  ...[1, 2, 3].map(
    (depthFt): Row => [
      'repair-line',
      { pile: 'glen', count: 1, days: 20, where: '', what: '', depthFt },
      ['Glen', '20', 'Kansas State', '1991'],
    ],
  ),
  ['round-start', { on: D, inches: 1.75, piles: ['glen', 'hill', 'lot'], count: 3 }, ['1.75', 'glen, hill', 'lot']],
  ['round-start', { on: D, inches: 1, piles: ['glen'], count: 1 }, ['1', 'glen']],
  ['round-start', { on: D, inches: 0, piles: ['glen'], count: 1 }, ['3', 'glen']],
  ['round-again', { count: 1 }, []],
  ['round-owner', { count: 1 }, []],
  ['round-line', { on: D, inches: 0, piles: ['glen'], count: 3 }, ['Glen', '3']],
  ['round-good', { count: 3, piles: [] }, ['3']],
  ['round-trouble', { count: 3, piles: ['glen'] }, ['glen']],
  ['freeze-ask', { count: 1 }, []],
  ['freeze-again', { count: 1 }, []],
  ['freeze-owner', { count: 1 }, []],
  [
    'freeze-line',
    { pile: 'glen', fromFt: 29.6, toFt: 89.6, end: 'no', mesh: 'yes', tires: 300, bags: 14, by: '2026-11-20' },
    ['Glen', '30', '90', '300', '14', '20'],
  ],
  [
    'freeze-line',
    { pile: 'glen', fromFt: 29.6, toFt: 89.6, end: 'yes', mesh: 'no', tires: 300, bags: 0, by: '2026-11-20' },
    ['Glen', '30', '300', '20'],
  ],
  ['freeze-first', { piles: ['glen'], degF: 20, depthIn: 5.57 }, ['20', '6', 'glen']],
  ['edge-spring', { pile: 'glen', days: 3 }, ['glen', '3']],
  ['edge-idle', { pile: 'glen', last: D, days: 5 }, ['glen', '3']],
  ['edge-leftover', { pile: 'glen', crop: 'haylage', on: '2027-05-28', daysOver: 12 }, ['Glen', '12', '28']],
  ['pace-high', { pile: 'glen', tonsHour: 62.3, lb: 40000, okTonsHour: 50, needLb: 49840 }, ['Glen', '62', '40,000', '50', '50,000']],
  ['evening-head', { day: D }, ['3']],
  ['evening-nothing', { day: D }, ['3']],
  ['evening-load', { pile: 'glen', crop: 'corn silage', count: 12, lb: 144000 }, ['Glen', '12', '72']],
  ['evening-load', { pile: 'glen', crop: 'haylage', count: 0, lb: '' }, ['Glen', 'haylage']],
  ['evening-driver', { by: 'Gus', count: 1 }, ['Gus', '1']],
  [
    'cover-tonight',
    { pile: 'glen', widthFt: 50, lengthFt: 130, tires: 1300, bags: 0, people: 5, minutes: 163, fromStock: 'no' },
    ['glen', '50', '130', '1,300', '5', '160'],
  ],
  [
    'cover-tonight',
    { pile: 'glen', widthFt: 50, lengthFt: 130, tires: 0, bags: 40, people: 5, minutes: 163, fromStock: '' },
    ['glen', '50', '130', '40'],
  ],
  ['cover-tonight-bare', { pile: 'glen' }, ['glen']],
  [
    'cover-now',
    { pile: 'glen', widthFt: 50, lengthFt: 130, tires: 340, bags: 0, people: 5, minutes: 84, fromStock: 'yes' },
    ['glen', '50', '130', '340', '5', '84'],
  ],
  ['cover-now-bare', { pile: 'glen' }, ['glen']],
  ['cover-sun-today', { from: '10:30', to: '15:20' }, ['10:30', '3:20']],
  ['cover-sun', { from: '10:30', to: '15:20' }, ['10:30', '3:20']],
  ['supply-head', { pile: 'glen', by: '2026-08-27', on: '2026-09-10', now: 'no', filling: 'no' }, ['glen', '27', '10']],
  ['supply-head', { pile: 'glen', by: '2026-08-27', on: '2026-09-01', now: 'yes', filling: 'no' }, ['glen', '1']],
  ['supply-head', { pile: 'glen', by: '2026-08-27', on: '2026-09-01', now: 'yes', filling: 'yes' }, ['glen']],
  ['supply-short', { item: 'plastic', need: 1, have: 0, widthFt: 50, lengthFt: 130 }, ['50', '130']],
  ['supply-short', { item: 'tires', need: 300, have: 240, widthFt: '', lengthFt: '' }, ['300', '240']],
  ['weekly-head', { day: D }, ['3']],
  ['weekly-nothing', { day: D }, ['3']],
  ['weekly-fed', { pile: 'glen', lb: 61000, days: 42, runsOut: '2026-12-15' }, ['Glen', '30.5', '42', '15']],
  ['weekly-fed', { pile: 'glen', lb: '', days: '', runsOut: '' }, ['Glen']],
  ['weekly-loads', { count: 40, piles: ['glen', 'hill'] }, ['40', 'glen', 'hill']],
  ['weekly-walks', { count: 7 }, ['7']],
  ['weekly-check', { pile: 'glen', why: 'plain', last: D }, ['Glen', '3']],
  ['weekly-check', { pile: 'glen', why: 'hail', last: '' }, ['Glen']],
  ['reminder', { about: 'order plastic', who: '', by: '' }, ['order plastic']],
  ['reminder', { about: 'order plastic', who: 'Gus', by: 'Lea' }, ['order plastic', 'Gus', 'Lea']],
  ['early-open', { pile: 'glen', sealedOn: '2026-09-20', readyOn: '2026-10-11', days: 10 }, ['Glen', '11']],
  ['caution-face', { pile: 'glen', heightFt: 9, awayFt: 27 }, []],
  ['caution-face', { pile: 'glen', heightFt: 0, awayFt: 0 }, []],
  ['caution-gas', { pile: 'glen', days: 21, until: D }, []],
  ['caution-slope', { pile: 'glen' }, ['3']],
  ['caution-sheet-wind', { pile: 'glen' }, []],
  ['caution-knife', { pile: 'glen' }, []],
  ['caution-ice', {}, []],
  ['caution-defer', {}, []],
  ['lapsed', { what: 'put 7 on the lower pile' }, ['put 7 on the lower pile']],
  ['lapsed-many', { what: 'put 7 on the lower pile', count: 3 }, ['put 7 on the lower pile', '3']],
  ...(['yes', 'no'] as const).flatMap((you): Row[] => [
    ['set-total', { count: 20 }, ['20']],
    ['set-total', { count: 0 }, []],
    ['set-morning', { time: '05:30', you, who: '' }, ['5:30']],
    ['set-evening', { time: '20:00', you, who: you === 'no' ? 'Gus' : '' }, ['8:00', you === 'no' ? 'Gus' : '']],
    ['set-weekly', { weekday: 'sat', time: '18:00', you, who: '' }, ['6:00']],
    ['set-quiet', { from: '21:00', to: '05:00', you, who: '' }, ['9:00', '5:00']],
    ['set-quiet-none', { you, who: '' }, []],
    ['set-lang', { lang: you === 'yes' ? 'es' : 'en', you, who: '' }, []],
    ...['morning', 'evening', 'weekly'].flatMap((kind): Row[] => [
      ['set-gets', { kind, you, who: you === 'no' ? 'Gus' : '' }, [you === 'no' ? 'Gus' : '']],
      ['set-gets-not', { kind, you, who: '' }, []],
    ]),
  ]),
  ...['yes', 'no'].map((always): Row => ['set-empty', { always }, []]),
  ...[1, 5].map((days): Row => ['set-check', { days }, days === 5 ? ['5'] : []]),
  ...[0, 1, 3].map((count): Row => ['set-nudges', { count }, count ? [String(count)] : []]),
  ['set-ask', { time: '12:00' }, ['12:00']],
  ['set-wait', { days: 30 }, ['30']],
  ['set-freeze', { on: '2000-12-01' }, ['1']],
  ['set-thaw', { on: '2000-03-25' }, ['25']],
  ['set-place', { lat: 43.1, lon: 89.4, south: 'no', west: 'yes' }, ['43.1', '89.4', 'N']],
  ['set-place-none', {}, []],
]

describe('the words of the watch', () => {
  it.each(TABLE)('%s', (code, data, heard) => {
    const en = say({ code, data }, 'en')
    const es = say({ code, data }, 'es')
    for (const text of [en, es]) {
      for (const part of heard) expect(text).toContain(part)
      expect(text).not.toMatch(/[{}]|undefined|NaN| {2}| [.,:]/)
      expect(text).not.toContain(code)
    }
    expect(es).not.toBe(en)
  })
  it('give the advice and the cautions of the trade their sense', () => {
    // Purpose-made tape on a clean, dry sheet, never grey duct tape: Mickan, Victoria DPI, 2005.
    expect(say({ code: 'repair-advice', data: { pile: 'glen' } }, 'en')).toMatch(/silage tape.*clean.*dry.*[Dd]uct tape/)
    // Three times the height of the face, and nobody alone: Bolsen & Bolsen.
    expect(say({ code: 'caution-face', data: { pile: 'glen', heightFt: 9, awayFt: 27 } }, 'en')).toMatch(/three times its height.*alone/)
    expect(say({ code: 'caution-defer', data: {} }, 'en')).toMatch(/[Ll]ocal.*licensed/)
    // The published clock is of a top that lay wholly open, and says so.
    expect(say({ code: 'repair-line', data: { pile: 'glen', count: 1, days: 20, where: '', what: '', depthFt: 1 } }, 'en')).toMatch(
      /wholly open.*alfalfa.*hole goes slower/,
    )
  })
  it('exist for every code that the watch can say', () => {
    const folder = new URL('../../src/watch/', import.meta.url)
    const codes = new Set<string>()
    for (const name of readdirSync(folder)) {
      const text = readFileSync(new URL(name, folder), 'utf8')
      for (const m of text.matchAll(
        /'((?:morning|evening|weekly|summary|repair|round|check|freeze|edge|pace|cover|supply|caution|early|set|lapsed)-[a-z-]+)'/g,
      ))
        codes.add(m[1]!)
      for (const m of text.matchAll(/climb\(book, m, '([a-z]+)', .*\[([^\]]*)\]\)/gs))
        for (const rung of m[2]!.matchAll(/'(\w+)'/g)) codes.add(`${m[1]}-${rung[1]}`)
    }
    for (const name of ['morning', 'evening', 'weekly']) codes.add(`${name}-head`).add(`${name}-nothing`)
    const shown = new Set(TABLE.map(t => t[0]))
    expect(codes.size).toBeGreaterThan(60)
    expect([...codes].filter(c => !shown.has(c))).toEqual([])
  })
})
