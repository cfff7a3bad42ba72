import { describe, expect, it } from 'vitest'
import { checkEvent, EVENT_TYPES, type Event } from '../../src/book/events.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import {
  corrected,
  type Extra,
  echo,
  echoAll,
  tookBack,
  totalLeft,
  totalLoads,
  totalOpenDamage,
  totalWeight,
} from '../../src/saying/echo.ts'
import { makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const day = '2026-09-14'
type Loose = Record<string, unknown>
const event = (e: Loose): Event => {
  const r = checkEvent({ on: day, ...e })
  if (!r.ok) throw new Error(r.data.why)
  return r.event
}
const both = (e: Loose, extra: Extra = {}): string[] => (['en', 'es'] as const).map(l => say(echo(event(e), { day, ...extra }), l))

/** What was told, and how it is said back in both languages. */
const SAID: [Loose, string, string][] = [
  [
    { type: 'pile', name: 'creek', widthFt: 36, lengthFt: 110, heightFt: 9, wallFt: 8, alsoCalled: ['arroyo'] },
    'New pile creek, 36 by 110 ft, 9 ft high, walls 8 ft, also called arroyo.',
    'Pila nueva creek, 36 por 110 pies, 9 pies de alto, paredes de 8 pies, también arroyo.',
  ],
  [{ type: 'pile', name: 'creek' }, 'New pile creek.', 'Pila nueva creek.'],
  [
    { type: 'box', name: 'green wagon', lb: 11_000, crop: 'haylage' },
    'Green wagon holds 5.5 tons haylage.',
    'A green wagon le caben 5.5 toneladas de haylage.',
  ],
  [
    { type: 'load', pile: 'creek', crop: 'corn silage', count: 7 },
    '7 loads corn silage on creek.',
    '7 viajes de ensilaje de maíz en creek.',
  ],
  [
    { type: 'load', pile: 'creek', crop: 'haylage', cut: 3, lb: 26_000 },
    '13 tons third-crop haylage on creek.',
    '13 toneladas de haylage de tercer corte en creek.',
  ],
  [
    { type: 'load', pile: 'creek', crop: 'corn silage', count: 3, lb: 42_600, said: '3 loads, 14,200 lb each' },
    '3 loads, 42,600 lb corn silage on creek.',
    '3 viajes, 42,600 lb de ensilaje de maíz en creek.',
  ],
  [
    { type: 'load', pile: 'creek', crop: 'beet pulp', count: 2, unit: 'bucket', dmPct: 24, box: 'green wagon', field: 'the knoll' },
    '2 buckets beet pulp on creek, 24% dry matter, green wagon, from the knoll.',
    '2 cucharones de beet pulp en creek, 24 % de materia seca, green wagon, de the knoll.',
  ],
  [
    { type: 'pack', pile: 'creek', tractors: 2, tractorLb: 31_000, layerIn: 6, hours: 3 },
    'Packing creek, 2 tractors at 31,000 lb, 6 inch layers, 3 hours.',
    'Pisando creek, 2 tractores de 31,000 lb, capas de 6 pulgadas, 3 horas.',
  ],
  [{ type: 'pack', pile: 'creek' }, 'Packing creek.', 'Pisando creek.'],
  [
    { type: 'size', pile: 'creek', widthFt: 37, heightFt: 9.5 },
    'Creek is 37 ft wide, 9.5 ft high.',
    'Creek mide 37 pies de ancho, 9.5 pies de alto.',
  ],
  [
    { type: 'cover', pile: 'creek', material: 'plastic', change: 'on', widthFt: 46, lengthFt: 120 },
    '46 by 120 ft plastic on creek.',
    'Plástico de 46 por 120 pies en creek.',
  ],
  [{ type: 'cover', pile: 'creek', material: 'tires', change: 'on', count: 210 }, '210 tires on creek.', '210 llantas en creek.'],
  [{ type: 'cover', pile: 'creek', material: 'mesh', change: 'off' }, 'Mesh off creek.', 'Se quitó de creek: malla.'],
  [
    { type: 'cover', pile: 'creek', material: 'plastic', change: 'back', ft: 6 },
    'Plastic rolled back 6 ft on creek.',
    'Se enrollaron 6 pies de plástico en creek.',
  ],
  [
    { type: 'damage', pile: 'creek', cause: 'animal', animal: 'raccoon', what: 'hole', count: 2, where: 'n end' },
    '2 holes on creek, n end (raccoon).',
    '2 hoyos en creek, n end (mapache).',
  ],
  [
    { type: 'damage', pile: 'creek', cause: 'unknown', what: 'tear' },
    'A tear on creek (cause not known).',
    'Una rotura en creek (no se sabe la causa).',
  ],
  [{ type: 'damage', pile: 'creek', cause: 'hail' }, 'Damage on creek (hail).', 'Daño en creek (granizo).'],
  [{ type: 'patch', pile: 'creek', count: 2, where: 'n end' }, 'Patched 2 places on creek, n end.', '2 parches en creek, n end.'],
  [{ type: 'patch', pile: 'creek' }, 'Patched creek.', 'Creek parchada.'],
  [{ type: 'check', pile: 'all', finding: 'good' }, 'Walked the covers, all good.', 'Tapas revisadas, todo bien.'],
  [{ type: 'check', pile: 'creek', finding: 'trouble' }, 'Walked creek, trouble found.', 'Creek revisada, hay problema.'],
  [{ type: 'weather', kind: 'hail', inches: 1.75 }, 'Hail, 1.75 inches.', 'Granizo, 1.75 pulgadas.'],
  [{ type: 'weather', kind: 'wind', mph: 55 }, 'Wind, 55 mph.', 'Viento, 55 millas por hora.'],
  [{ type: 'weather', kind: 'freeze', degF: -4 }, 'Freeze, -4 °F.', 'Helada, -4 °F.'],
  [{ type: 'open', pile: 'creek', why: 'feed' }, 'Opened creek to feed.', 'Creek abierta para dar de comer.'],
  [{ type: 'open', pile: 'creek', why: 'add' }, 'Opened creek to put more on.', 'Creek abierta para echarle más.'],
  [{ type: 'feed', pile: 'creek', lb: 12_000 }, 'Fed 12,000 lb off creek.', 'Se dieron 12,000 lb de creek.'],
  [{ type: 'feed', pile: 'creek', count: 1, unit: 'batch' }, 'Fed 1 batch off creek.', 'Se dio 1 mezcla de creek.'],
  [{ type: 'feed', pile: 'creek', ft: 2, lb: 11_000 }, 'Took 2 ft, 11,000 lb off creek.', 'Se sacaron 2 pies, 11,000 lb de creek.'],
  [{ type: 'feed', pile: 'creek', lb: 12_000, said: 'fed 6 tons off creek' }, 'Fed 6 tons off creek.', 'Se dieron 6 toneladas de creek.'],
  [{ type: 'face', pile: 'creek', atFt: 40 }, 'Face of creek at 40 ft.', 'Cara de creek en 40 pies.'],
  [{ type: 'face', pile: 'creek', leftFt: 60 }, '60 ft left on creek.', 'Quedan 60 pies en creek.'],
  [{ type: 'spoil', pile: 'creek', count: 2, unit: 'bucket' }, 'Pitched 2 buckets off creek.', 'Se tiraron 2 cucharones de creek.'],
  [{ type: 'shift', pile: 'knoll', toPile: 'creek', ft: 20 }, 'Pushed 20 ft of knoll onto creek.', 'Se pasaron 20 pies de knoll a creek.'],
  [{ type: 'shift', pile: 'knoll', toPile: 'creek' }, 'Pushed feed from knoll onto creek.', 'Se pasaron restos de knoll a creek.'],
  [{ type: 'empty', pile: 'creek' }, 'Creek is empty.', 'Creek se acabó.'],
  [
    { type: 'test', crop: 'corn silage', dmPct: 34 },
    'Corn silage tested 34% dry matter.',
    'Ensilaje de maíz salió en 34 % de materia seca.',
  ],
  [{ type: 'test', pile: 'creek', dmPct: 38.5 }, 'Creek tested 38.5% dry matter.', 'Creek salió en 38.5 % de materia seca.'],
  [
    { type: 'ration', group: 'milking', head: 118, lbPerHead: 45, crop: 'corn silage' },
    'Ration: 118 head (milking), 45 lb corn silage a head.',
    'Ración: 118 cabezas (en ordeño), 45 lb de ensilaje de maíz por vaca.',
  ],
  [
    { type: 'ration', pile: 'creek', lbPerDay: 9000, basis: 'dry' },
    'Ration: 9,000 lb a day, dry, off creek.',
    'Ración: 9,000 lb al día, en seco, de creek.',
  ],
  [
    { type: 'supply', item: 'plastic', change: 'add', count: 2, widthFt: 46, lengthFt: 120 },
    '2 plastics 46 by 120 ft added to stock.',
    '2 plásticos de 46 por 120 pies más en existencia.',
  ],
  [{ type: 'supply', item: 'tires', change: 'have', count: 340 }, '340 tires in stock.', '340 llantas en existencia.'],
  [
    { type: 'supply', item: 'patch tape', change: 'use', count: 1 },
    '1 roll patch tape used from stock.',
    '1 rollo de cinta para parchar menos en existencia.',
  ],
  [
    { type: 'harvest', crop: 'haylage', cut: 1, on: '2027-05-28', acres: 80 },
    'First-crop haylage around May 28, 80 acres.',
    'Haylage de primer corte como el 28 de mayo, 80 acres.',
  ],
  [
    { type: 'remind', about: 'order plastic', on: '2026-09-18' },
    'Reminder Fri Sep 18: order plastic.',
    'Recordatorio viernes 18 de septiembre: order plastic.',
  ],
  [
    { type: 'remind', about: 'walk the covers', on: '2026-09-18', time: '06:30', who: 'ana', every: 'week' },
    'Reminder for ana every week from Fri Sep 18 at 6:30 am: walk the covers.',
    'Recordatorio para ana cada semana desde viernes 18 de septiembre a las 6:30 am: walk the covers.',
  ],
  [{ type: 'note', text: 'neighbour has the blade' }, 'Note: neighbour has the blade.', 'Nota: neighbour has the blade.'],
]

describe('echo', () => {
  for (const [e, en, es] of SAID) it(en, () => expect(both(e)).toEqual([en, es]))

  it('knows every event type', () => {
    expect([...new Set(SAID.map(([e]) => e.type))].sort()).toEqual([...EVENT_TYPES].sort())
  })

  it('shows the day only where it is another', () => {
    expect(both({ type: 'weather', kind: 'hail', on: '2026-09-13' })).toEqual(['Hail, Sep 13.', 'Granizo, 13 de septiembre.'])
    expect(say(echo(event({ type: 'weather', kind: 'hail', on: '2026-09-13' })), 'en')).toBe('Hail.')
  })

  it('says what it adds up to', () => {
    const load = { type: 'load', pile: 'creek', crop: 'corn silage', count: 7 }
    expect(both(load, { total: totalLoads(42) })).toEqual([
      '7 loads corn silage on creek. 42 so far.',
      '7 viajes de ensilaje de maíz en creek. Van 42.',
    ])
    expect(both(load, { total: totalWeight(84_000) })).toEqual([
      '7 loads corn silage on creek. 42 tons so far.',
      '7 viajes de ensilaje de maíz en creek. Van 42 toneladas.',
    ])
    expect(both({ type: 'feed', pile: 'creek', lb: 12_000 }, { total: totalLeft(33.7) })[0]).toBe(
      'Fed 12,000 lb off creek. About 34 days left.',
    )
    expect(both({ type: 'patch', pile: 'creek', count: 1 }, { total: totalOpenDamage(1) })).toEqual([
      'Patched 1 place on creek. 1 open now.',
      '1 parche en creek. Queda 1 sin parchar.',
    ])
  })

  it('does not call a known pile new', () => {
    expect(both({ type: 'pile', name: 'creek', alsoCalled: ['arroyo'] }, { known: true })).toEqual([
      'Creek, also called arroyo.',
      'Creek, también arroyo.',
    ])
  })

  it('clips a long note', () => {
    const text = both({ type: 'note', text: 'the sheet on the east side '.repeat(30) })[0]!
    expect(text.length).toBeLessThan(110)
    expect(text.endsWith(' ….')).toBe(true)
  })
})

describe('several events', () => {
  it('puts one cover and its weights in one breath', () => {
    const list = [
      event({ type: 'cover', pile: 'creek', material: 'plastic', change: 'on', widthFt: 46, lengthFt: 120 }),
      event({ type: 'cover', pile: 'creek', material: 'tires', change: 'on', count: 210 }),
    ]
    expect(say(echoAll(list), 'en')).toBe('46 by 120 ft plastic and 210 tires on creek.')
    expect(say(echoAll(list), 'es')).toBe('Plástico de 46 por 120 pies y 210 llantas en creek.')
  })

  it('says the others after each other, with their own totals', () => {
    const list = [
      event({ type: 'load', pile: 'creek', crop: 'haylage', count: 2 }),
      event({ type: 'damage', pile: 'knoll', cause: 'wind', what: 'tear' }),
    ]
    expect(
      say(
        echoAll(list, (_, i) => (i === 0 ? { total: totalLoads(9) } : {})),
        'en',
      ),
    ).toBe('2 loads haylage on creek. 9 so far. A tear on knoll (wind).')
  })
})

describe('corrections', () => {
  const was = event({ type: 'load', pile: 'creek', crop: 'corn silage', count: 7 })

  it('say what was taken back', () => {
    expect(say(tookBack([was]), 'en')).toBe('Took back: 7 loads corn silage on creek.')
    expect(say(tookBack([was, event({ type: 'empty', pile: 'knoll' })]), 'es')).toBe(
      'Se quitó: 7 viajes de ensilaje de maíz en creek y knoll se acabó.',
    )
  })

  it('say the one thing that changed', () => {
    const now = (slots: Loose): Event => event({ ...was, ...slots })
    expect(say(corrected(now({ count: 6 }), was), 'en')).toBe('Now 6 loads corn silage on creek (was 7).')
    expect(say(corrected(now({ count: 6 }), was), 'es')).toBe('Ahora 6 viajes de ensilaje de maíz en creek (antes 7).')
    expect(say(corrected(now({ pile: 'knoll' }), was, { total: totalLoads(12) }), 'en')).toBe(
      'Now 7 loads corn silage on knoll (was creek). 12 so far.',
    )
    expect(say(corrected(now({ crop: 'haylage' }), was), 'es')).toBe('Ahora 7 viajes de haylage en creek (antes ensilaje de maíz).')
    expect(say(corrected(now({ on: '2026-09-13' }), was), 'en')).toBe('Now 7 loads corn silage on creek, Sep 13 (was Sep 14).')
  })

  it('say the old one whole where more changed', () => {
    expect(say(corrected(event({ type: 'load', pile: 'knoll', crop: 'haylage', count: 7 }), was), 'en')).toBe(
      'Now 7 loads haylage on knoll (was 7 loads corn silage on creek).',
    )
  })
})
