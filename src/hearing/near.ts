/**
 * Words of numbers that are taken for one another by ear, the worst first. The teens and the tens most of all: "fourteen loads" and
 * "forty loads" differ by one weak consonant. Which pairs matter was measured on synthetic voices; all pairs of teen and ten stand
 * here because people mistake them too.
 */
const NEAR: Record<string, string[]> = {
  thirteen: ['thirty'],
  fourteen: ['forty'],
  fifteen: ['fifty'],
  sixteen: ['sixty'],
  seventeen: ['seventy'],
  eighteen: ['eighty'],
  nineteen: ['ninety'],
  thirty: ['thirteen'],
  forty: ['fourteen'],
  fifty: ['fifteen', 'sixty'],
  sixty: ['sixteen', 'fifty'],
  seventy: ['seventeen'],
  eighty: ['eighteen'],
  ninety: ['nineteen'],
  one: ['nine'],
  two: ['ten'],
  four: ['five', 'forty'],
  five: ['nine', 'four'],
  six: ['eight'],
  eight: ['six', 'eighty'],
  nine: ['one', 'five'],
  ten: ['two'],
  seven: ['eleven'],
  eleven: ['seven'],
}

/** Number words that `word` is mistaken for, the worst first; empty for what is no number, or for one that sounds like no other. */
export const nearNumbers = (word: string): string[] => (Object.hasOwn(NEAR, word) ? NEAR[word]! : [])

const OTHERS =
  'zero twelve twenty hundred thousand half couple dozen dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince veinte treinta cuarenta cincuenta sesenta setenta ochenta noventa cien ciento mil media medio'
const NUMBERS = new Set([...Object.keys(NEAR), ...OTHERS.split(' ')])

export const isNumberWord = (word: string): boolean => NUMBERS.has(word)

const TEEN = /^(ten|eleven|twelve|(thir|four|fif|six|seven|eigh|nine)teen)$/
const DIGIT = /^(one|two|three|four|five|six|seven|eight|nine)$/

/** "thirteen two": nobody counts so. The sound was "thirty two". */
export const isNoNumber = (words: readonly string[]): boolean => words.some((w, k) => TEEN.test(w) && DIGIT.test(words[k + 1] ?? ''))
