import type { Token } from './token.ts'

/** Kinds of phrases that only a whole message is, a bit each. */
export const CUE = {
  wish: 1,
  reminder: 2,
  where: 4,
  filled: 8,
  done: 16,
  later: 32,
  time: 64,
  price: 128,
  alias: 256,
  lesson: 512,
  ownWords: 1024,
} as const

/** Every kind: what a caller says who has not looked. */
export const ANY_CUE = -1

/** A word that a phrase of each kind cannot do without. It may let too much through, never too little. */
const WORDS: [keyof typeof CUE, RegExp][] = [
  [
    'wish',
    /total|check|walk|look|inspect|summar|report|weekly|resum|quiet|messag|text|nudg|nag|wait|ferment|leave|keep|let$|piles|freez|thaw|frost|setting|preferenc|^set$|lat|^(?:are|were)$|farm|place|location|coord|spanish|english|espanol|ingles|ask|bug|ping|dont|unsubs|send|write|revis|checa|checken|chequ|informe|silenc|mensaj|avis|pregunt|insist|esper|dej|congel|hiel|helad|deshiel|ajust|config|estamos|granja|rancho|ubicac|establo|molest|escrib|manda|nothing/,
  ],
  ['reminder', /remind|record|recuerd/],
  ['where', /where|^old$|dond|viej|^us[eo]$|^what|^hay$/],
  ['filled', /^last$|full|topped|filled|filling|chopping|hauling|putting|^ultimo$|acabamos|terminamos|llen/],
  ['done', /done|^did$|finish|handled|taken|^took$|hech|^list|hice|hici|hizo|quedo|termin/],
  ['later', /snooze|later|^not$|again|^bit$|while|tarde|luego|^rato$|despues|ahorita|todavia|^aun$|pospon/],
  [
    'time',
    /^(?:in|at|mins?|las?|until|till|hasta|para|mejor|next)$|tomorrow|tonight|noon|(?:mon|tues|wednes|thurs|fri|satur|sun)day|week|seman|manana|lunes|martes|miercoles|jueves|viernes|sabado|domingo|mediodia|noche|hour|hora|minut|evening|lunch|comer/,
  ],
  ['price', /price|precio|^a?ton$|tonelada|plastic|sheet|cover|hule|nylon|lona/],
  ['alias', /^calls?$|^called$|^known$|^aka$|^k$|^same$|^name$|dec|dic|llama|conocid|^mism/],
  ['lesson', /^says?$|^means?$|^stands$|^counts$|^equals$|^same$|^is$|dec|dig|dic|signific|quier|^mismo$|equival|cuenta|^es$|^son$/],
  ['ownWords', /^words$|palabras/],
]

// the same words come in every message
const known = new Map<string, number>()
const MOST_KNOWN = 20_000

const cueOf = (word: string): number => {
  const at = known.get(word)
  if (at !== undefined) return at
  const bits = WORDS.reduce((all, [kind, like]) => (like.test(word) ? all | CUE[kind] : all), 0)
  if (known.size >= MOST_KNOWN) known.clear()
  known.set(word, bits)
  return bits
}

/** The kinds of whole-message phrases that some words may be, a bit each: 0 for most messages, which are then let go at once. */
export const cuesOf = (tokens: readonly Token[]): number => {
  let bits = 0
  for (const t of tokens) if (t.kind === 'word') bits |= cueOf(t.norm)
  return bits
}
