import type { Words } from './days.ts'
import { EN_CLOCKED, EN_PARTS, EN_PLACED } from './en/dates.ts'
import { EN_UNITS } from './en/numbers.ts'
import { ES_HOUR_PARTS } from './es/dates.ts'
import { ES_UNITS } from './es/numbers.ts'
import type { Part } from './when.ts'

/** A time of day as said over tokens up to `to`. `sure` where morning or afternoon was said or the 24-hour clock used. */
export interface Clock {
  to: number
  /** As said; 0 to 24. */
  hour: number
  minute: number
  sure: boolean
  part?: Part
  /** Only a number behind "at" or "by": a time only beside a day or a word that goes with times. */
  bare?: boolean
  /** The number stands behind "around": it may count something. */
  loose?: boolean
}

const HOURS: ReadonlyMap<string, number> = new Map(
  Object.entries({ ...EN_UNITS, ...ES_UNITS, una: 1 }).filter(
    ([w, n]) => n >= 1 && n <= 12 && w !== 'once' && w !== 'fore' && w !== 'tree',
  ),
)
const WHOLE: ReadonlyMap<string, [hour: number, part?: Part]> = new Map<string, [number, Part?]>([
  ['noon', [12, 'noon']],
  ['noontime', [12, 'noon']],
  ['midday', [12, 'noon']],
  ['mediodia', [12, 'noon']],
  ['midnight', [0]],
  ['medianoche', [0]],
])

const half = (hour: number, minute: number, pm: boolean, to: number): Clock | undefined =>
  hour >= 1 && hour <= 12 ? { to, hour: pm ? (hour % 12) + 12 : hour % 12, minute, sure: true } : undefined

/** The hour the words of a part make of a bare one: 6 in the evening is 18, 2 at night is 2. */
const byPart = (hour: number, part: Part): number => {
  if (hour > 12 || hour === 0) return hour
  if (part === 'morning') return hour % 12
  if (part === 'noon') return hour <= 3 ? hour + 12 : hour
  if (part === 'night') return hour === 12 ? 0 : hour >= 5 ? hour + 12 : hour
  return (hour % 12) + 12
}

const CLOCK = /^(\d{1,2})(?::(\d{2}))?\s?(?:([ap])\.?(?:m\.?)?)?$/

/** An hour at `i` with whatever tail it has; `led` where "at" or "a las" stood before it. */
const hourAt = (s: Words, i: number, led: boolean): Clock | undefined => {
  const word = s.w[i]
  if (!word) return undefined
  let hour: number
  let minute = 0
  let k = i + 1
  const spelt = HOURS.get(word)
  if (s.tokens[i]!.kind === 'number') {
    // "0600", "1430 hrs"
    const { text, value } = s.tokens[i]!
    // "430 pm"
    if (value !== undefined && value >= 100 && value < 1260 && value % 100 < 60 && /^[ap]m$/.test(s.w[k] ?? ''))
      return half(Math.floor(value / 100), value % 100, s.w[k] === 'pm', k + 1)
    if (value !== undefined && value > 24 && text.length !== 4) return undefined
    if (/^\d{4}$/.test(text)) {
      const hrs = /^(hrs|hours|horas|h)$/.test(s.w[k] ?? '')
      hour = Number(text.slice(0, 2))
      minute = Number(text.slice(2))
      // "555-0142" is a telephone
      return (text[0] === '0' || hrs) && s.all[i - 1] !== '-' && hour < 24 && minute < 60 && !s.measure(k)
        ? { to: hrs ? k + 1 : k, hour, minute, sure: true }
        : undefined
    }
    const m = CLOCK.exec(word)
    if (!m) return undefined
    hour = Number(m[1])
    minute = Number(m[2] ?? 0)
    if (minute > 59 || hour > 24 || s.measure(k) || /^(mix|mixes|ratio|split|blend|mezcla)$/.test(s.all[k] ?? '')) return undefined
    if (m[3]) return half(hour, minute, m[3] === 'p', k)
    if (m[2]) {
      if (hour > 12 || hour === 0 || /^0/.test(m[1]!)) return { to: k, hour: hour % 24, minute, sure: true }
      return tail(s, k, hour, minute) ?? { to: k, hour, minute, sure: false }
    }
  } else if (spelt !== undefined) hour = spelt
  else return undefined
  // "5 y media", "6 y 15", "7 menos cuarto", "seven thirty"
  if (led && s.w[k] === 'y') {
    const next = s.w[k + 1] ?? ''
    const more = /^(media|medio)$/.test(next) ? 30 : next === 'cuarto' ? 15 : s.number(k + 1)
    if (more !== undefined && more < 60 && !s.measure(k + 2)) {
      minute = more
      k += 2
    }
  } else if (led && s.w[k] === 'menos' && s.w[k + 1] === 'cuarto') {
    minute = 45
    hour -= 1
    k += 2
  } else if (led && /^(thirty|fifteen)$/.test(s.w[k] ?? '')) minute = s.w[k++] === 'thirty' ? 30 : 15
  return tail(s, k, hour, minute) ?? (led && !s.measure(k) ? { to: k, hour, minute, sure: hour > 12, bare: true } : undefined)
}

/** "pm", "oclock", "in the morning", "de la tarde" behind an hour. */
const tail = (s: Words, i: number, hour: number, minute: number): Clock | undefined => {
  if (hour > 12) return undefined
  let k = i
  let clock = false
  if (s.w[k] === 'oclock' || (s.w[k] === 'o' && s.w[k + 1] === 'clock') || (s.w[k] === 'en' && s.w[k + 1] === 'punto')) {
    k += s.w[k] === 'oclock' ? 1 : 2
    clock = true
  }
  const w = s.w[k]
  const m = s.w[k + 1] === 'm' || s.w[k + 1] === '.'
  if (w === 'am' || w === 'pm') return half(hour, minute, w === 'pm', k + 1)
  if ((w === 'a' || w === 'p') && m && (s.w[k + 1] === 'm' || s.w[k + 2] === 'm'))
    return half(hour, minute, w === 'p', s.w[k + 1] === 'm' ? k + 2 : k + 3)
  let part: Part | undefined
  let to = k
  if ((w === 'in' || w === 'at') && s.w[k + 1] === 'the') {
    part = EN_PARTS.get(s.w[k + 2] ?? '')
    to = k + 3
  } else if (w === 'at' && /^(night|nite)$/.test(s.w[k + 1] ?? '')) {
    part = 'night'
    to = k + 2
  } else if (/^(de|en|por)$/.test(w ?? '') && s.w[k + 1] === 'la') {
    part = ES_HOUR_PARTS.get(s.w[k + 2] ?? '')
    to = k + 3
  } else if (w === 'del' && /^(dia|mediodia)$/.test(s.w[k + 1] ?? '')) {
    part = s.w[k + 1] === 'dia' ? 'morning' : 'noon'
    to = k + 2
  }
  if (part && hour >= 1)
    return {
      to,
      hour: byPart(hour === 12 && w === 'del' ? 12 : hour, part) || (part === 'morning' && w === 'del' ? 12 : 0),
      minute,
      sure: true,
      part,
    }
  return clock ? { to: k, hour, minute, sure: false } : undefined
}

/** "half past six", "quarter to 7". */
const pastHour = (s: Words, i: number): Clock | undefined => {
  const k = s.w[i] === 'a' ? i + 1 : i
  const minutes = s.w[k] === 'half' ? 30 : s.w[k] === 'quarter' ? 15 : 0
  const join = s.w[k + 1]
  if (!minutes || !(join === 'past' || join === 'after' || (minutes === 15 && (join === 'to' || join === 'til' || join === 'till'))))
    return undefined
  const at = hourAt(s, k + 2, true)
  if (!at || at.minute) return undefined
  return join === 'past' || join === 'after'
    ? { ...at, minute: minutes, bare: undefined }
    : { ...at, hour: (at.hour + 23) % 24, minute: 60 - minutes, bare: undefined }
}

/** Words that a time of day may begin with; figures aside. */
export const TIME_STARTS: readonly string[] = [
  ...WHOLE.keys(),
  ...HOURS.keys(),
  ...'half quarter medio media at @ by til till until around about bout al alas a las'.split(' '),
]

/** The time of day that starts at token `i`. */
export const timeAt = (s: Words, i: number): Clock | undefined => {
  const word = s.w[i]
  if (!word) return undefined
  const whole = WHOLE.get(word)
  if (whole)
    return /^(good|buenas)$/.test(s.all[i - 1] ?? '') ? undefined : { to: i + 1, hour: whole[0], minute: 0, sure: true, part: whole[1] }
  if (s.tokens[i]!.kind === 'number' || HOURS.has(word)) return hourAt(s, i, false)
  if (word === 'half' || word === 'quarter') return pastHour(s, i)
  if (word === 'medio' && s.w[i + 1] === 'dia')
    return s.all[i - 1] === 'al' || s.all[i - 1] === 'a' ? { to: i + 2, hour: 12, minute: 0, sure: true, part: 'noon' } : undefined
  if (word === 'media' && s.w[i + 1] === 'noche') return s.all[i - 1] === 'a' ? { to: i + 2, hour: 0, minute: 0, sure: true } : undefined
  if (word === 'at' || word === '@' || word === 'by' || word === 'til' || word === 'till' || word === 'until') {
    const k = /^(about|around|exactly|like|noon)$/.test(s.w[i + 1] ?? '') && s.w[i + 1] !== 'noon' ? i + 2 : i + 1
    const at = whole1(s, k) ?? pastHour(s, k) ?? hourAt(s, k, true)
    return at
  }
  if (word === 'around' || word === 'about' || word === 'bout') {
    const at = hourAt(s, i + 1, true)
    return at?.bare ? { ...at, loose: true } : at
  }
  // "al mediodia", "a las 6 y media de la tarde", "a eso de las 6", "alas 6"
  if (word === 'al')
    return (
      whole1(s, i + 1) ??
      (s.w[i + 1] === 'medio' && s.w[i + 2] === 'dia' ? { to: i + 3, hour: 12, minute: 0, sure: true, part: 'noon' } : undefined)
    )
  let k = -1
  if (word === 'alas') k = i + 1
  else if (word === 'a') {
    let j = i + 1
    if (s.w[j] === 'eso' && s.w[j + 1] === 'de') j += 2
    if (s.w[j] === 'las' || s.w[j] === 'la') k = j + 1
    else return whole1(s, j) ?? (/^(medio|media)$/.test(s.w[j] ?? '') ? timeAt(s, j) : pastHour(s, i))
    if (s.w[j] === 'la' && !/^(1|una)\b/.test(s.w[k] ?? '')) return undefined
  } else if (word === 'las') {
    const at = hourAt(s, i + 1, true)
    return at?.sure && at.part ? at : undefined
  }
  if (k < 0) return undefined
  const at = hourAt(s, k, true)
  // "a las 6 vacas" are cows; "a las 6" is a time
  return at && (!at.bare || s.ends(at.to) || !s.noun(at.to)) ? { ...at, bare: undefined } : undefined
}

const whole1 = (s: Words, i: number): Clock | undefined => {
  const whole = WHOLE.get(s.w[i] ?? '')
  return whole ? { to: i + 1, hour: whole[0], minute: 0, sure: true, part: whole[1] } : undefined
}

/** True where a bare "at 6" can be a time: the message reminds, or tells of what falls, breaks or is done at an hour. */
export const takesTimes = (s: Words, to: number): boolean =>
  s.ahead ||
  ((s.ends(to) || /^(and|so|but|then|on|to|for|y)$/.test(s.all[to] ?? '')) &&
    s.all.some(w => EN_CLOCKED.has(w)) &&
    !s.all.some(w => EN_PLACED.has(w)))

const two = (n: number) => String(n).padStart(2, '0')

/**
 * The hour meant, as HH:MM. An hour without morning or afternoon goes by the part of the day said with it; else 1 to 4 are
 * afternoon; else, on the day of writing, the last such hour in a report and the next one in a reminder; on another day the
 * morning one. Common practice, no source.
 */
export const settle = (c: Clock, part: Part | undefined, today: boolean, nowHour: number, ahead: boolean): string => {
  let hour = c.hour
  if (!c.sure) {
    if (part) hour = byPart(hour, part)
    else if (hour >= 1 && hour <= 4) hour += 12
    else if (hour < 12 && today) {
      const at = hour + c.minute / 60
      if (ahead ? at <= nowHour && at + 12 > nowHour : at + 12 <= nowHour) hour += 12
    }
  }
  return `${two(hour % 24)}:${two(c.minute)}`
}
