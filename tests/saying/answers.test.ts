import { describe, expect, it } from 'vitest'
import { type Answer, ASKS } from '../../src/book/asks.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { tell } from '../../src/saying/answers.ts'
import { examples } from '../../src/saying/examples.ts'
import { lines, makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const both = (a: Answer): string[] => (['en', 'es'] as const).map(l => say(lines(tell(a)), l))

const SAID: [Answer, string, string][] = [
  [
    {
      about: 'density',
      pile: 'knoll',
      dryLbFt3: 12.3,
      bulkLbFt3: 35.1,
      porosity: 0.47,
      basis: 'packing',
      enough: false,
      targetDryLbFt3: 15,
      mend: { tractorLb: 46_300, tonsHour: 41.2 },
      notes: [{ code: 'note-density-guide', data: {} }],
    },
    'Knoll: 12.3 lb dry matter a cubic foot, 35 as it lies, 47% air.\nToo loose, 15 is wanted. It takes tractors of 46,000 lb or hauling at 41 tons an hour.\nWorked out from the packing told, so a guide only.',
    'Knoll: 12.3 lb de materia seca por pie cúbico, 35 tal como está, 47 % de aire.\nEstá floja, conviene 15. Hacen falta tractores de 46,000 lb o acarreo a 41 toneladas por hora.\nSale del pisado que se anotó, es solo una guía.',
  ],
  [
    {
      about: 'plan',
      widthFt: 36,
      heightFt: 9,
      lengthFt: 104,
      lbDry: 320_000,
      inPerDay: 6.1,
      cover: { widthFt: 46, lengthFt: 120, tires: 210, bags: 60 },
      notes: [{ code: 'note-plan-year', data: {} }],
    },
    '36 ft wide, 9 ft high, 104 ft long.\nHolds about 160 tons dry matter, face 6.1 inches a day.\nTo cover it: plastic 46 by 120 ft, 210 tires, 60 gravel bags.\nSized for a year.',
    '36 pies de ancho, 9 de alto, 104 de largo.\nLe caben unas 160 toneladas de materia seca, cara a 6.1 pulgadas al día.\nPara taparla: plástico de 46 por 120 pies, 210 llantas, 60 bolsas de grava.\nPara un año.',
  ],
  [
    { about: 'loss', pile: 'knoll', pct: 14.2, lbDry: 58_000, cost: 4_180 },
    'Knoll: about 14% lost, 29 tons dry matter.\nAbout $4,200 at the price set.',
    'Knoll: como 14 % perdido, 29 toneladas de materia seca.\nUnos $4,200 al precio puesto.',
  ],
  [
    {
      about: 'left',
      pile: 'lane',
      days: 34.2,
      daysLow: 28.4,
      daysHigh: 41,
      runsOut: '2026-10-18',
      lbDry: 140_000,
      lbAsFed: 408_300,
      lbDayAsFed: 11_960,
    },
    'Lane: 34 days left (28 to 41), to about Oct 18.\nAbout 204 tons there, 12,000 lb fed a day.',
    'Lane: quedan 34 días (28 a 41), hasta como el 18 de octubre.\nHay unas 204 toneladas, se dan 12,000 lb al día.',
  ],
  [
    { about: 'reach', until: '2027-05-28', days: 268, spareDays: 12.4, spareLbDry: 84_200, whatIf: {} },
    'Yes, to May 28 with 12 days to spare, about 42.1 tons dry matter over.',
    'Sí alcanza hasta el 28 de mayo, sobran 12 días, quedan unas 42.1 toneladas de materia seca.',
  ],
  [
    {
      about: 'reach',
      until: '2027-05-28',
      days: 228,
      spareDays: -28,
      spareLbDry: -84_200,
      ranOutOn: '2027-04-30',
      whatIf: { head: 130 },
      gap: { lbDayAsFed: 10_420, head: 108, lbAsFed: 168_400 },
    },
    'With 130 head: no, out by Apr 30, 28 days before May 28. About 42.1 tons dry matter short.\nTo make it: 10,400 lb a day, 108 head or 84.2 tons more feed.',
    'Con 130 cabezas: no alcanza, se acaba el 30 de abril, 28 días antes del 28 de mayo. Faltan unas 42.1 toneladas de materia seca.\nPara llegar: 10,400 lb al día, 108 cabezas u 84.2 toneladas más de comida.',
  ],
  [
    { about: 'reach', until: '2027-05-28', days: 256, spareLbDry: -84_200, ranOutOn: '2027-04-30' },
    'No, not to May 28, out by Apr 30. About 42.1 tons dry matter short.',
    'No alcanza hasta el 28 de mayo, se acaba el 30 de abril. Faltan unas 42.1 toneladas de materia seca.',
  ],
  [
    {
      about: 'status',
      pile: 'creek',
      stage: 'sealed',
      crops: [
        { crop: 'corn silage', count: 42, lbAsFed: 1_190_000, lbDry: 410_000 },
        { crop: 'haylage', lbAsFed: 40_000, lbDry: 16_000 },
      ],
      openDamage: 2,
      sealedOn: '2026-09-10',
    },
    'Creek: covered. 42 loads corn silage, about 595 tons; haylage, about 20 tons.\nCovered Sep 10.\n2 places not patched yet.',
    'Creek: tapada. 42 viajes de ensilaje de maíz, unas 595 toneladas; haylage, unas 20 toneladas.\nTapada el 10 de septiembre.\nFaltan 2 lugares por parchar.',
  ],
  [{ about: 'status', pile: 'creek', stage: 'planned', crops: [], openDamage: 0 }, 'Creek: nothing on it yet.', 'Creek: todavía sin nada.'],
  [
    { about: 'loads', pile: 'creek', crop: 'corn silage', from: '2026-09-14', to: '2026-09-14', count: 7, lbAsFed: 196_000 },
    '7 loads corn silage on creek, Sep 14, about 98 tons.',
    '7 viajes de ensilaje de maíz en creek, el 14 de septiembre, unas 98 toneladas.',
  ],
  [
    {
      about: 'status',
      pile: 'lane',
      stage: 'feeding',
      crops: [{ crop: 'haylage', cut: 2, count: 30, lbAsFed: 600_000 }],
      openDamage: 1,
      sealedOn: '2026-06-10',
      faceFt: 40,
      faceOn: '2026-09-10',
      faceTodayFt: 43.1,
      days: 34.2,
      daysLow: 28,
      daysHigh: 41,
      lbAsFed: 408_000,
    },
    'Lane: feeding. 30 loads second-crop haylage, about 300 tons.\nCovered Jun 10. Face at 40 ft Sep 10, about 43 now.\n34 days left (28 to 41), about 204 tons there.\n1 place not patched yet.',
    'Lane: abierta. 30 viajes de haylage de segundo corte, unas 300 toneladas.\nTapada el 10 de junio. Cara en 40 pies el 10 de septiembre, ahora como en 43.\nQuedan 34 días (28 a 41), hay unas 204 toneladas.\nFalta 1 lugar por parchar.',
  ],
  [
    { about: 'loads', pile: 'creek', count: 7, buckets: 2, lbAsFed: 200_000 },
    '7 loads, 2 buckets on creek so far, about 100 tons.',
    '7 viajes, 2 cucharones en creek hasta ahora, unas 100 toneladas.',
  ],
  [
    { about: 'loads', from: '2026-09-08', to: '2026-09-14', count: 0, lbAsFed: 0 },
    'No loads, Sep 8 to Sep 14.',
    'Ningún viaje, del 8 de septiembre al 14 de septiembre.',
  ],
  [
    { about: 'density', pile: 'creek', dryLbFt3: 15.24, bulkLbFt3: 44.2, porosity: 0.38, basis: 'packing' },
    'Creek: 15.2 lb dry matter a cubic foot, 44 as it lies, 38% air.\nWorked out from the packing told.',
    'Creek: 15.2 lb de materia seca por pie cúbico, 44 tal como está, 38 % de aire.\nSale del pisado que se anotó.',
  ],
  [
    { about: 'face', pile: 'lane', inPerDay: 4.46, minInPerDay: 6, enough: false },
    'Lane: 4.5 inches a day, 6 needed. Too slow.',
    'Lane: 4.5 pulgadas al día, hacen falta 6. Va muy despacio.',
  ],
  [
    { about: 'face', pile: 'lane', inPerDay: 4.46, minInPerDay: 6, enough: false, mend: { lbDayAsFed: 16_130, widthFt: 28.3 } },
    'Lane: 4.5 inches a day, 6 needed. Too slow.\nFast enough with 16,100 lb a day or a face 28 ft wide.',
    'Lane: 4.5 pulgadas al día, hacen falta 6. Va muy despacio.\nVa bien con 16,100 lb al día o una cara de 28 pies de ancho.',
  ],
  [
    { about: 'face', pile: 'lane', inPerDay: 7.2, minInPerDay: 6, enough: true },
    'Lane: 7.2 inches a day, 6 needed. Fast enough.',
    'Lane: 7.2 pulgadas al día, hacen falta 6. Va bien.',
  ],
  [
    {
      about: 'cover',
      pile: 'knoll',
      widthFt: 46,
      lengthFt: 120,
      tires: 210,
      fromStock: true,
      sheets: [{ widthFt: 50, lengthFt: 130 }],
      tiresShort: 90,
      notes: [{ code: 'note-height-assumed', data: { ft: 8.2 } }],
    },
    'For knoll: plastic 46 by 120 ft, 210 tires.\nIn stock: 50 by 130 ft, 90 tires short.\nNo height told: 8 ft was taken.',
    'Para knoll: plástico de 46 por 120 pies, 210 llantas.\nEn existencia: 50 por 130 pies, faltan 90 llantas.\nSin altura anotada: se tomaron 8 pies.',
  ],
  [
    { about: 'cover', pile: 'creek', widthFt: 46, lengthFt: 120, tires: 210, bags: 0, edgeFt: 332.4, gravelTons: 5.04, fromStock: true },
    'For creek: plastic 46 by 120 ft, 210 tires, 332 ft of edge, 5 tons gravel.\nA sheet that fits is in stock.',
    'Para creek: plástico de 46 por 120 pies, 210 llantas, 332 pies de orilla, 5 toneladas de grava.\nHay un plástico que alcanza.',
  ],
  [
    { about: 'plan', widthFt: 40, heightFt: 9.6, lengthFt: 118.2, lbDry: 480_000, inPerDay: 7.25 },
    '40 ft wide, 9.6 ft high, 118 ft long.\nHolds about 240 tons dry matter, face 7.3 inches a day.',
    '40 pies de ancho, 9.6 de alto, 118 de largo.\nLe caben unas 240 toneladas de materia seca, cara a 7.3 pulgadas al día.',
  ],
  [
    { about: 'ready', pile: 'creek', sealedOn: '2026-09-10', readyOn: '2026-10-01', ready: false },
    'Creek is not ready: covered Sep 10, leave it shut until Oct 1.',
    'Creek no está lista: tapada el 10 de septiembre, mejor cerrada hasta el 1 de octubre.',
  ],
  [
    { about: 'ready', pile: 'creek', sealedOn: '2026-09-10', readyOn: '2026-10-01', ready: true },
    'Creek can be opened, ready since Oct 1.',
    'Creek ya se puede abrir, lista desde el 1 de octubre.',
  ],
  [
    { about: 'ready', pile: 'lane', readyOn: '2026-08-01', ready: true, openedOn: '2026-08-01' },
    'Lane is open already, since Aug 1.',
    'Lane ya está abierta, desde el 1 de agosto.',
  ],
  [
    {
      about: 'mix',
      pile: 'lane',
      shares: [{ crop: 'haylage', cut: 1, share: 1 }],
      dmPct: 38,
      faceFt: 40,
      face: [{ crop: 'haylage', cut: 1, share: 1 }],
    },
    'Lane: 100% first-crop haylage. About 38% dry matter.\nAt the face now, 40 ft: 100% first-crop haylage.',
    'Lane: 100 % haylage de primer corte. Como 38 % de materia seca.\nEn la cara ahora, 40 pies: 100 % haylage de primer corte.',
  ],
  [
    {
      about: 'mix',
      pile: 'creek',
      shares: [
        { crop: 'corn silage', share: 0.6 },
        { crop: 'haylage', share: 0.4, atFt: 60 },
      ],
      dmPct: 34.4,
    },
    'Creek: 60% corn silage, 40% haylage (from 60 ft). About 34% dry matter.',
    'Creek: 60 % ensilaje de maíz, 40 % haylage (desde 60 pies). Como 34 % de materia seca.',
  ],
  [
    { about: 'checks', pile: 'creek', last: '2026-09-07', next: '2026-09-14', openDamage: 1 },
    'Creek: last walked Sep 7, next Sep 14.\n1 place not patched yet.',
    'Creek: última revisión 7 de septiembre, la próxima 14 de septiembre.\nFalta 1 lugar por parchar.',
  ],
  [
    { about: 'loss', pile: 'creek', pct: 14.2, pctLow: 10.3, pctHigh: 18, lbDry: 58_000 },
    'Creek: about 14% lost (10 to 18), 29 tons dry matter.',
    'Creek: como 14 % perdido (10 a 18), 29 toneladas de materia seca.',
  ],
  [
    {
      about: 'supplies',
      items: [
        { item: 'tires', count: 340 },
        { item: 'plastic', count: 2, widthFt: 46, lengthFt: 120 },
      ],
    },
    'In stock: 340 tires, 2 plastics 46 by 120 ft.',
    'En existencia: 340 llantas, 2 plásticos de 46 por 120 pies.',
  ],
  [{ about: 'supplies', items: [] }, 'Nothing in stock that was told.', 'No hay nada anotado en existencia.'],
  [
    { about: 'who', events: [{ type: 'cover', on: '2026-09-10', by: 'bo', pile: 'creek', material: 'plastic', change: 'on' }] },
    'Sep 10, bo: plastic on creek.',
    '10 de septiembre, bo: plástico en creek.',
  ],
  [
    {
      about: 'picture',
      pile: 'creek',
      events: [{ type: 'damage', on: '2026-09-10', by: 'bo', pile: 'creek', cause: 'hail', what: 'hole' }],
    },
    'Sep 10, bo: a hole on creek (hail).',
    '10 de septiembre, bo: un hoyo en creek (granizo).',
  ],
  [
    { about: 'picture', events: [] },
    'No picture was sent. Send one with words below it, like: two holes by the wall.',
    'Nadie mandó ninguna foto. Se manda con palabras abajo, como: dos hoyos junto a la pared.',
  ],
  [{ about: 'history', events: [] }, 'Nothing in the book about that.', 'En el libro no hay nada de eso.'],
]

describe('answers', () => {
  for (const [answer, en, es] of SAID) it(en, () => expect(both(answer)).toEqual([en, es]))

  it('say how they were worked out, a line each', () => {
    const how = [
      { code: 'how-in', data: { lb: 1_190_000, loads: 42, from: 'box, usual', boxes: 'green wagon' } },
      { code: 'how-loss', data: { pct: 13.7, low: 10, high: 17.6 } },
    ]
    expect(both({ about: 'why', how })).toEqual([
      'Went in: 595 tons, 42 loads, by what the box is told to hold, a usual box (green wagon).\nLost on the way, about 14% (10 to 18).',
      'Entró: 595 toneladas, 42 viajes, según lo que se dijo que le cabe, una caja normal (green wagon).\nPerdido en el camino, como 14 % (10 a 18).',
    ])
    expect(both({ about: 'why' })).toEqual(['There was no figure to work out.', 'No había cuenta que hacer.'])
  })

  it('show what would work when asked for help', () => {
    expect(both({ about: 'help', examples: examples({ feeding: 'lane', pile: 'lane' }).slice(0, 2) })).toEqual([
      'Try "fed 12,000 lb off lane" or "how long will lane last".',
      'Por ejemplo: "dimos 12,000 libras de lane" o "cuántos días quedan en lane".',
    ])
    expect(both({ about: 'help' })[0]).toContain('new pile called north')
  })

  it('name only the latest of many events', () => {
    const events = Array.from({ length: 12 }, (_, i) => ({
      type: 'empty' as const,
      on: `2026-09-${String(i + 1).padStart(2, '0')}`,
      pile: 'lane',
    }))
    const text = both({ about: 'history', events })[0]!.split('\n')
    expect(text).toHaveLength(9)
    expect(text.at(-2)).toBe('Sep 12: lane is empty.')
    expect(text.at(-1)).toBe('And 4 more.')
  })

  it('tell every kind of ask', () => {
    const here = new Set([...SAID.map(([a]) => a.about), 'help', 'why'])
    expect([...here].sort()).toEqual([...ASKS].sort())
  })
})
