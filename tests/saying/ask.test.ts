import { describe, expect, it } from 'vitest'
import type { Message } from '../../src/book/questions.ts'
import { loadPrompts } from '../../src/edges/prompts.ts'
import {
  askAmount,
  askCount,
  askCrop,
  askFaceBack,
  askImplausible,
  askInAll,
  askMeant,
  askOthers,
  askPile,
  askSame,
  askSlot,
  askUnknownPile,
  choice,
  hello,
  notYours,
  puzzled,
  undone,
} from '../../src/saying/ask.ts'
import { makeSayer } from '../../src/saying/say.ts'

const say = makeSayer(loadPrompts(), { strict: true })
const load = { type: 'load' as const, pile: 'creek', crop: 'corn silage', count: 7 }

const SAID: [Message, string, string][] = [
  [askPile(load), '7 loads corn silage: which pile?', '7 viajes de ensilaje de maíz: ¿en qué pila?'],
  [askPile({ type: 'patch' }), 'Patched: which pile?', 'Parches: ¿en qué pila?'],
  [
    askPile({ type: 'damage', what: 'hole', count: 2, cause: 'unknown' }),
    '2 holes (cause not known): which pile?',
    '2 hoyos (no se sabe la causa): ¿en qué pila?',
  ],
  [askCrop('creek'), 'What feed went on creek?', '¿Qué se echó en creek?'],
  [askCount('corn silage', 'creek'), 'How many loads of corn silage on creek?', '¿Cuántos viajes de ensilaje de maíz en creek?'],
  [askCount(), 'How many loads?', '¿Cuántos viajes?'],
  [askAmount('feed', 'lane'), 'How much was fed off lane?', '¿Cuánto se dio de lane?'],
  [askAmount('spoil'), 'How much was pitched?', '¿Cuánto se tiró?'],
  [
    askUnknownPile('crek', ['creek', 'knoll']),
    'No pile is called crek. Is it creek or knoll?',
    'Ninguna pila se llama crek. ¿Es creek o knoll?',
  ],
  [askUnknownPile('barnyard'), 'No pile is called barnyard. Which one is it?', 'Ninguna pila se llama barnyard. ¿Cuál es?'],
  [
    askImplausible('count', 700),
    '700 loads? That is far from what this farm sees. Say the number again, or that it is right.',
    '¿700 viajes? Eso queda lejos de lo que se ve en este rancho. Falta el número otra vez, o la confirmación.',
  ],
  [
    askImplausible('atFt', 900, { pile: 'lane', most: 120 }),
    'Face at 900 ft? Lane is 120 ft long. Say the number again, or that it is right.',
    '¿Cara en 900 pies? Lane mide 120 pies de largo. Falta el número otra vez, o la confirmación.',
  ],
  [
    askImplausible('dmPct', 95),
    '95% dry matter? That is far from what this farm sees. Say the number again, or that it is right.',
    '¿95 % de materia seca? Eso queda lejos de lo que se ve en este rancho. Falta el número otra vez, o la confirmación.',
  ],
  [
    askSame('bo', load),
    'Bo logged that already: 7 loads corn silage on creek. Same ones, or more?',
    'Eso ya lo anotó bo: 7 viajes de ensilaje de maíz en creek. ¿Los mismos, o más?',
  ],
  [
    askFaceBack(46, 40),
    'The face was at 46 ft, now 40 ft? A face does not go back. Which is right?',
    'La cara iba en 46 pies, ¿y ahora en 40? La cara no regresa. ¿Cuál es la buena?',
  ],
  [
    askOthers('bo', [load]),
    'Bo logged that one: 7 loads corn silage on creek. Bo or the owner has to say yes. Change it?',
    'Eso lo anotó bo: 7 viajes de ensilaje de maíz en creek. Falta el sí de bo o del dueño. ¿Se cambia?',
  ],
  [
    askInAll(9, 12),
    '9 logged already. Is 12 the count in all, or that many more?',
    'Ya hay 9 anotados. ¿12 es el total, o son otros tantos?',
  ],
  [askMeant({ code: 'did-empty', data: { pile: 'lane' } }), 'Did you mean: lane is empty?', '¿Es esto: lane se acabó?'],
  [askSlot('time'), 'What time?', '¿A qué hora?'],
  [askSlot('lbPerHead'), 'How much was it?', '¿Cuánto fue?'],
  [choice.newPile('crek'), 'New pile crek', 'Pila nueva crek'],
  [choice.asSaid(700), '700, as said', '700, así es'],
  [choice.moreOf(3), '3 more', '3 más'],
  [choice.inAll(12), '12 in all', '12 en total'],
  [choice.neverMind, 'Never mind', 'No importa'],
  [undone([load]), 'Took back: 7 loads corn silage on creek.', 'Se quitó: 7 viajes de ensilaje de maíz en creek.'],
  [notYours('bo'), 'That one is from bo. Only bo or the owner can change it.', 'Eso es de bo. Solo bo o el dueño lo puede cambiar.'],
  [
    puzzled(['fed 12k off lane', 'days left on lane']),
    'Could not make that out. Try "fed 12k off lane" or "days left on lane".',
    'Eso no se entendió. Por ejemplo: "fed 12k off lane" o "days left on lane".',
  ],
  [
    hello(),
    'I keep the book of your silage piles. Three things to type:\nnew pile called north, 40 by 120\nput 7 loads corn on north\nhow long will north last',
    'Aquí se lleva el libro de las pilas de silo. Tres cosas para escribir:\npila nueva norte, 40 por 120\n7 viajes de maíz en norte\ncuántos días quedan en norte',
  ],
]

describe('questions and short lines', () => {
  for (const [message, en, es] of SAID) it(en, () => expect([say(message, 'en'), say(message, 'es')]).toEqual([en, es]))
})
