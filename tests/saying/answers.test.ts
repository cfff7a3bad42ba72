import { describe, expect, it } from 'vitest'
import { type Answer, ASKS } from '../../src/book/asks.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import { tell } from '../../src/saying/answers.ts'
import { lines, makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const both = (a: Answer): string[] => (['en', 'es'] as const).map(l => say(lines(tell(a)), l))

const SAID: [Answer, string, string][] = [
  [{ about: 'left', pile: 'lane', days: 34.2, daysLow: 28.4, daysHigh: 41, runsOut: '2026-10-18', lbDry: 140_000, lbAsFed: 408_300, lbDayAsFed: 11_960 },
    'Lane: 34 days left (28 to 41), to about Oct 18.\nAbout 204 tons there, 12,000 lb fed a day.',
    'Lane: quedan 34 días (28 a 41), hasta como el 18 de octubre.\nHay unas 204 toneladas, se dan 12,000 lb al día.'],
  [{ about: 'reach', until: '2027-05-28', days: 256, spareLbDry: 84_200 }, 'Yes, to May 28 with about 42.1 tons dry matter to spare.', 'Sí alcanza hasta el 28 de mayo, sobran unas 42.1 toneladas de materia seca.'],
  [{ about: 'reach', until: '2027-05-28', days: 256, spareLbDry: -84_200, ranOutOn: '2027-04-30' },
    'No, not to May 28. About 42.1 tons dry matter short, out by Apr 30.', 'No alcanza hasta el 28 de mayo. Faltan unas 42.1 toneladas de materia seca, se acaba el 30 de abril.'],
  [{ about: 'status', pile: 'creek', stage: 'sealed', crops: [{ crop: 'corn silage', count: 42, lbAsFed: 1_190_000, lbDry: 410_000 }, { crop: 'haylage', lbAsFed: 40_000, lbDry: 16_000 }], openDamage: 2, sealedOn: '2026-09-10' },
    'Creek: covered. 42 loads corn silage, about 595 tons; haylage, about 20 tons.\nCovered Sep 10.\n2 places not patched yet.',
    'Creek: tapada. 42 viajes de ensilaje de maíz, unas 595 toneladas; haylage, unas 20 toneladas.\nTapada el 10 de septiembre.\nFaltan 2 lugares por parchar.'],
  [{ about: 'status', pile: 'creek', stage: 'planned', crops: [], openDamage: 0 }, 'Creek: nothing on it yet.', 'Creek: todavía sin nada.'],
  [{ about: 'loads', pile: 'creek', crop: 'corn silage', from: '2026-09-14', to: '2026-09-14', count: 7, lbAsFed: 196_000 },
    '7 loads corn silage on creek, Sep 14, about 98 tons.', '7 viajes de ensilaje de maíz en creek, el 14 de septiembre, unas 98 toneladas.'],
  [{ about: 'loads', from: '2026-09-08', to: '2026-09-14', count: 0, lbAsFed: 0 }, 'No loads, Sep 8 to Sep 14.', 'Ningún viaje, del 8 de septiembre al 14 de septiembre.'],
  [{ about: 'density', pile: 'creek', dryLbFt3: 15.24, bulkLbFt3: 44.2, porosity: 0.38, basis: 'packing' },
    'Creek: 15.2 lb dry matter a cubic foot, 44 as it lies, 38% air.\nWorked out from the packing told.', 'Creek: 15.2 lb de materia seca por pie cúbico, 44 tal como está, 38 % de aire.\nSale del pisado que se anotó.'],
  [{ about: 'face', pile: 'lane', inPerDay: 4.46, minInPerDay: 6, enough: false }, 'Lane: 4.5 inches a day, 6 needed. Too slow.', 'Lane: 4.5 pulgadas al día, hacen falta 6. Va muy despacio.'],
  [{ about: 'cover', pile: 'creek', widthFt: 46, lengthFt: 120, tires: 210, bags: 0, edgeFt: 332.4, gravelTons: 5.04, fromStock: true },
    'For creek: plastic 46 by 120 ft, 210 tires, 332 ft of edge, 5 tons gravel.\nA sheet that fits is in stock.', 'Para creek: plástico de 46 por 120 pies, 210 llantas, 332 pies de orilla, 5 toneladas de grava.\nHay un plástico que alcanza.'],
  [{ about: 'plan', widthFt: 40, heightFt: 9.6, lengthFt: 118.2, lbDry: 480_000, inPerDay: 7.25 },
    '40 ft wide, 9.6 ft high, 118 ft long.\nHolds about 240 tons dry matter, face 7.3 inches a day.', '40 pies de ancho, 9.6 de alto, 118 de largo.\nLe caben unas 240 toneladas de materia seca, cara a 7.3 pulgadas al día.'],
  [{ about: 'ready', pile: 'creek', sealedOn: '2026-09-10', readyOn: '2026-10-01', ready: false }, 'Creek is not ready: covered Sep 10, leave it shut until Oct 1.', 'Creek no está lista: tapada el 10 de septiembre, mejor cerrada hasta el 1 de octubre.'],
  [{ about: 'ready', pile: 'creek', sealedOn: '2026-09-10', readyOn: '2026-10-01', ready: true }, 'Creek can be opened, ready since Oct 1.', 'Creek ya se puede abrir, lista desde el 1 de octubre.'],
  [{ about: 'mix', pile: 'creek', shares: [{ crop: 'corn silage', share: 0.6 }, { crop: 'haylage', share: 0.4, atFt: 60 }], dmPct: 34.4 },
    'Creek: 60% corn silage, 40% haylage (from 60 ft). About 34% dry matter.', 'Creek: 60 % ensilaje de maíz, 40 % haylage (desde 60 pies). Como 34 % de materia seca.'],
  [{ about: 'checks', pile: 'creek', last: '2026-09-07', next: '2026-09-14', openDamage: 1 }, 'Creek: last walked Sep 7, next Sep 14.\n1 place not patched yet.', 'Creek: última revisión 7 de septiembre, la próxima 14 de septiembre.\nFalta 1 lugar por parchar.'],
  [{ about: 'loss', pile: 'creek', pct: 14.2, lbDry: 58_000 }, 'Creek: about 14% lost, 29 tons dry matter.', 'Creek: como 14 % perdido, 29 toneladas de materia seca.'],
  [{ about: 'supplies', items: [{ item: 'tires', count: 340 }, { item: 'plastic', count: 2, widthFt: 46, lengthFt: 120 }] }, 'In stock: 340 tires, 2 plastics 46 by 120 ft.', 'En existencia: 340 llantas, 2 plásticos de 46 por 120 pies.'],
  [{ about: 'supplies', items: [] }, 'Nothing in stock that was told.', 'No hay nada anotado en existencia.'],
  [{ about: 'who', events: [{ type: 'cover', on: '2026-09-10', by: 'bo', pile: 'creek', material: 'plastic', change: 'on' }] }, 'Sep 10, bo: plastic on creek.', '10 de septiembre, bo: plástico en creek.'],
  [{ about: 'history', events: [] }, 'Nothing in the book about that.', 'En el libro no hay nada de eso.'],
]

describe('answers', () => {
  for (const [answer, en, es] of SAID) it(en, () => expect(both(answer)).toEqual([en, es]))

  it('tell every kind of ask', () => {
    const here = new Set([...SAID.map(([a]) => a.about), 'help', 'why'])
    expect([...here].sort()).toEqual([...ASKS].sort())
  })
})
