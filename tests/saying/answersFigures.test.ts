import { describe, expect, it } from 'vitest'
import type { Answer } from '../../src/book/asks.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { tell } from '../../src/saying/answers.ts'
import { lines, makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const both = (a: Answer): string[] => (['en', 'es'] as const).map(l => say(lines(tell(a)), l))

const REACH: Answer = {
  about: 'reach',
  until: '2027-05-28',
  days: 268,
  spareDays: 12.4,
  spareDaysLow: -4.2,
  spareDaysHigh: 29,
  spareLbDry: 84_200,
  spareLbAsFed: 240_000,
}
const SAID: [Answer, string, string][] = [
  [
    { ...REACH, whatIf: { feed: 'corn silage', lbPerHead: 50 } },
    'With 50 lb corn silage a head: yes, to May 28 with 12 days to spare (4 short to 29), about 120 tons of feed over (42.1 tons dry).',
    'Con 50 lb de ensilaje de maíz por cabeza: sí alcanza hasta el 28 de mayo, sobran 12 días (de faltar 4 a 29), quedan unas 120 toneladas de comida (42.1 toneladas en seco).',
  ],
  [
    {
      ...REACH,
      spareDays: -28,
      spareDaysLow: -44,
      spareDaysHigh: 3,
      spareLbDry: -84_200,
      spareLbAsFed: -240_000,
      ranOutOn: '2027-04-30',
      whatIf: { pctMore: 10, perHeadMore: -5 },
    },
    'With 5 lb less a head, 10% more fed: no, out by Apr 30, 28 days before May 28 (3 to spare to 44). About 120 tons of feed short (42.1 tons dry).',
    'Con 5 lb menos por cabeza, 10 % más de comida: no alcanza, se acaba el 30 de abril, 28 días antes del 28 de mayo (de sobrar 3 a 44). Faltan unas 120 toneladas de comida (42.1 toneladas en seco).',
  ],
  [
    {
      about: 'density',
      pile: 'knoll',
      dryLbFt3: 12.1,
      dryLow: 9.8,
      dryHigh: 14.4,
      bulkLbFt3: 35.1,
      porosity: 0.51,
      basis: 'packing',
      enough: false,
      targetDryLbFt3: 15,
      lossPct: 18.4,
      overPct: 2.5,
      overLbDry: 12_100,
      cost: 970,
      ruleOf800: { wantLb: 32_000, haveLb: 28_000, tonsHour: 40 },
      mend: { tractorLb: 46_700, tonsHour: 14.2 },
      notes: [{ code: 'note-density-guide', data: {} }],
    },
    'Knoll: 12.1 lb dry matter a cubic foot (10 to 14), 35 as it lies, 51% air.\nToo loose, 15 is wanted. It takes tractors of 47,000 lb or hauling at 14 tons an hour.\nSo loose, about 18% is lost by half a year, 2.5 points more than at 15: 12,100 lb dry matter, $970.\n40 tons an hour want 32,000 lb of tractor by the rule of 800, and 28,000 packed it.',
    'Knoll: 12.1 lb de materia seca por pie cúbico (10 a 14), 35 tal como está, 51 % de aire.\nEstá floja, conviene 15. Hacen falta tractores de 47,000 lb o acarreo a 14 toneladas por hora.\nAsí de floja se pierde como 18 % en medio año, 2.5 puntos más que a 15: 12,100 lb de materia seca, $970.\n40 toneladas por hora piden 32,000 lb de tractor por la regla de 800, y pisaron 28,000.',
  ],
  [
    {
      about: 'density',
      pile: 'knoll',
      dryLbFt3: 16,
      bulkLbFt3: 46,
      porosity: 0.36,
      basis: 'measured',
      enough: true,
      targetDryLbFt3: 15,
      packingDryLbFt3: 14.2,
    },
    'Knoll: 16 lb dry matter a cubic foot, 46 as it lies, 36% air.\nPacked enough.\nWorked out from the size measured; by the packing told it would be 14.2.',
    'Knoll: 16 lb de materia seca por pie cúbico, 46 tal como está, 36 % de aire.\nBien pisada.\nSale de las medidas que se anotaron; por el pisado sería 14.2.',
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
      waste: 0.15,
      second: { lbDry: 9350, value: 550 },
      cost: 300,
      costPerTon: 0.43,
    },
    'For knoll: plastic 46 by 120 ft, 210 tires.\nIn stock: 50 by 130 ft, 15% over.\nBarrier film under it would save about 9,350 lb dry matter, $550.\nA sheet at $300 comes to $0.43 a ton under it.',
    'Para knoll: plástico de 46 por 120 pies, 210 llantas.\nEn existencia: 50 por 130 pies, sobra 15 %.\nCon película barrera debajo se salvan unas 9,350 lb de materia seca, $550.\nUn plástico de $300 sale a $0.43 por tonelada tapada.',
  ],
  [
    {
      about: 'plan',
      crop: 'haylage',
      widthFt: 44,
      heightFt: 5.7,
      lengthFt: 131,
      lbDry: 268_000,
      lbAsFed: 706_000,
      days: 200,
      lbDayAsFed: 3000,
      inPerDay: 6,
      cover: {
        widthFt: 50,
        lengthFt: 135,
        tires: 1290,
        bags: 88,
        edgeFt: 351,
        gravelTons: 8.8,
        fromStock: true,
        sheets: [{ widthFt: 50, lengthFt: 150 }],
        waste: 0.09,
      },
      notes: [{ code: 'note-plan-slower-face', data: { inPerDay: 6, goal: 10 } }],
    },
    'For haylage: 44 ft wide, 5.7 ft high, 131 ft long.\nHolds about 353 tons (134 tons dry), 200 days at 3,000 lb, face 6 inches a day.\nTo cover it: plastic 50 by 135 ft, 1,290 tires, 88 gravel bags, 351 ft of edge, 8.8 tons gravel. In stock: 50 by 150 ft, 9% over.\n6 inches a day is slow for summer, which wants 10: feed it in the cool months.',
    'Para haylage: 44 pies de ancho, 5.7 de alto, 131 de largo.\nLe caben unas 353 toneladas (134 toneladas en seco), 200 días a 3,000 lb, cara a 6 pulgadas al día.\nPara taparla: plástico de 50 por 135 pies, 1,290 llantas, 88 bolsas de grava, 351 pies de orilla, 8.8 toneladas de grava. En existencia: 50 por 150 pies, sobra 9 %.\n6 pulgadas al día es lento con calor, que pide 10: conviene darla en los meses fríos.',
  ],
  [
    {
      about: 'mix',
      pile: 'creek',
      shares: [
        { crop: 'corn silage', share: 2 / 3 },
        { crop: 'haylage', share: 1 / 3 },
      ],
      faceFt: 40,
      face: [
        { crop: 'corn silage', share: 0.64 },
        { crop: 'haylage', share: 0.36 },
      ],
      faceRatio: { more: 'corn silage', less: 'haylage', to: 1.78 },
      notes: [{ code: 'note-mix-turns', data: { atFt: 46, on: '2026-11-25', crop: 'haylage' } }],
    },
    'Creek: 67% corn silage, 33% haylage.\nAt the face now, 40 ft: 64% corn silage, 36% haylage. 1.8 corn silage to 1 haylage.\nThe mix changes at 46 ft, about Nov 25, to more haylage.',
    'Creek: 67 % ensilaje de maíz, 33 % haylage.\nEn la cara ahora, 40 pies: 64 % ensilaje de maíz, 36 % haylage. 1.8 de ensilaje de maíz por 1 de haylage.\nLa mezcla cambia en 46 pies, como el 25 de noviembre, con más haylage.',
  ],
  [
    { about: 'checks', pile: 'creek', next: '2026-09-14', late: 6, openDamage: 0 },
    'Creek: not walked yet, due since Sep 14.',
    'Creek: sin revisar todavía, toca desde el 14 de septiembre.',
  ],
  [
    { about: 'status', pile: 'creek', stage: 'sealed', crops: [], openDamage: 0, worth: true, value: 31_300, worthLb: 1_138_000 },
    'Creek: worth about $31,300 at the price told, 569 tons there.',
    'Creek: vale unos $31,300 al precio puesto, hay 569 toneladas.',
  ],
]

describe('answers with their range, their price and their case', () => {
  for (const [answer, en, es] of SAID) it(en.split('\n')[0]!, () => expect(both(answer)).toEqual([en, es]))

  it('why names formulas with their sources, and what would help most', () => {
    const how = [
      {
        code: 'how-by',
        data: {
          formulas: {
            code: 'join',
            data: {
              list: [
                { code: 'formula-measured', data: {} },
                { code: 'formula-ruppel', data: {} },
              ],
              by: 'semicolon',
            },
          },
        },
      },
      { code: 'how-narrow', data: { what: 'face', half: 9.2, after: 4.1, pile: 'lane' } },
    ]
    expect(both({ about: 'why', how } as Answer)).toEqual([
      'By: weight in over volume; loss by density, 180 days (Ruppel 1992).\nRead the face in feet, for lane, and the range comes down, from 9 to 4 days either way.',
      'Según: peso que entró entre el volumen; pérdida según la densidad en 180 días (Ruppel 1992).\nCon una lectura de la cara en pies, en lane, el margen baja, de 9 a 4 días para cada lado.',
    ])
  })
})
