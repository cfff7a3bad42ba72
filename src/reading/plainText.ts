/** Number words of hours, days and times; a clock or an interval wants no more. */
const NUMBERS: Record<string, string> = {
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  ten: '10',
  eleven: '11',
  twelve: '12',
  fourteen: '14',
  fifteen: '15',
  twenty: '20',
  thirty: '30',
  sixty: '60',
  dos: '2',
  tres: '3',
  cuatro: '4',
  cinco: '5',
  seis: '6',
  siete: '7',
  ocho: '8',
  nueve: '9',
  diez: '10',
  once: '11',
  doce: '12',
  catorce: '14',
  quince: '15',
  veinte: '20',
  treinta: '30',
  sesenta: '60',
}
const NUMBER_WORDS = new RegExp(`\\b(?:${Object.keys(NUMBERS).join('|')})\\b`, 'g')
/** "once a week" is no eleven. */
const ONCE = /\bonce (?=a |per |every |each |daily)/g

const LEAD =
  /^(?:(?:hey|ok|okay|oye|hola|bueno|please|por favor|porfa|pilehand|and|y|also|can you|could you|would you|will you|puedes|podrias|lets|let's|i want you to|i'd like you to|quiero que)[\s,:]+)+/
const TAIL = /(?:[\s,]+(?:please|pls|por favor|porfa|thanks|thank you|gracias|from now on|de ahora en adelante|ok|okay))+$/

// most messages are
const ASCII = /^[ -~]*$/

/** A message as plain lower-case words, numbers in digits, without courtesies and accents: what fixed phrases are looked for in. */
export const plainText = (text: string): string =>
  (ASCII.test(text) ? text : text.normalize('NFD').replace(/\p{M}/gu, ''))
    .toLowerCase()
    .replace(/[‘’´`]/g, "'")
    .replace(/[“”«»"¿¡]/g, '')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[.!?\s]+$/, '')
    .replace(LEAD, '')
    .replace(TAIL, '')
    .replace(ONCE, '1 time ')
    .replace(/\btwice\b/g, '2 times')
    .replace(NUMBER_WORDS, w => NUMBERS[w]!)

/** An hour as it may be written: "5:30", "5 am", "half past 5", "5 y media de la mañana", "noon". One group, to be read by `hourOf`. */
export const HOUR =
  "((?:half past \\d{1,2}|\\d{1,2}(?:[:.h]\\d{2})?(?: y (?:media|cuarto))?)(?: ?(?:a\\.?m\\.?|p\\.?m\\.?|o'?clock))?(?: (?:in the (?:morning|afternoon|evening)|at night|(?:de|en|por) la (?:manana|tarde|noche|madrugada)))?|noon|midnight|mediodia|medianoche)"

/** Which half of the day an hour without a mark of its own belongs to. */
export type Half = 'am' | 'pm'

/** `HH:MM` of an hour that `HOUR` found, or undefined where no clock shows it. */
export const hourOf = (said: string, half?: Half): string | undefined => {
  if (/^(?:noon|mediodia)$/.test(said)) return '12:00'
  if (/^(?:midnight|medianoche)$/.test(said)) return '00:00'
  const m = /(\d{1,2})(?:[:.h](\d{2}))?/.exec(said)
  if (!m) return undefined
  let hour = Number(m[1])
  const minute = /half past|y media/.test(said) ? 30 : /y cuarto/.test(said) ? 15 : Number(m[2] ?? 0)
  const am = /a\.?m\b|morning|manana|madrugada/.test(said)
  const pm = /p\.?m\b|afternoon|evening|night|tarde|noche/.test(said)
  if ((pm || (!am && half === 'pm')) && hour < 12) hour += 12
  if ((am || (!pm && half === 'am')) && hour === 12) hour = 0
  if (hour === 24 && minute === 0) hour = 0
  return hour < 24 && minute < 60 ? `${String(hour).padStart(2, '0')}:${String(minute).padStart(2, '0')}` : undefined
}
