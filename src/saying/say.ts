import { FluentBundle, type FluentFunction, FluentNone, FluentNumber, FluentResource, type FluentValue } from '@fluent/bundle'
import type { Datum, Message } from '../book/questions.ts'
import type { Lang } from '../ports.ts'
import { isDay } from '../units/calendar.ts'
import { LB_PER_TON } from '../units/measure.ts'
import { DayText, textOf, usedVariables, WordList } from './fluent.ts'

export type Say = (message: Message, lang: Lang) => string

/** Spanish numbers as written in Mexico and the United States: 12,345.6. */
const LOCALES: Record<Lang, string> = { en: 'en-US', es: 'es-MX' }
/** British list style has no comma before "and", and every one counts in a cab. */
const LIST_LOCALES: Record<Lang, string> = { en: 'en-GB', es: 'es-MX' }
const GLUE: Record<string, string> = { comma: ', ', space: ' ', line: '\n', semicolon: '; ' }
const NUMBER: Intl.NumberFormatOptions = { maximumFractionDigits: 2, signDisplay: 'negative' }

interface Voice {
  bundle: FluentBundle
  list: Intl.ListFormat
  either: Intl.ListFormat
  /** Variables of each message that may be left out: those it asks `HAS` about. */
  optional: Map<string, string[]>
}

/** `corn silage` is `corn-silage`: the last part of a word's code. */
const slug = (word: string): string =>
  word
    .toLowerCase()
    .trim()
    .replace(/[^a-z0-9]+/g, '-')

/** Spanish turns "y" into "e" and "o" into "u" before a silent h; in a pile's English name the h is heard. */
const inList = (format: Intl.ListFormat, parts: string[]): string =>
  format
    .formatToParts(parts)
    .map((p, i, all) =>
      p.type === 'literal' && /^h/i.test(all[i + 1]?.value ?? '') ? p.value.replace(' e ', ' y ').replace(' u ', ' o ') : p.value,
    )
    .join('')

const capital = (text: string, locale: string): string =>
  text.replace(/^(\P{L}*)(\p{L})/u, (all, before: string, first: string) =>
    /\p{N}/u.test(before) ? all : before + first.toLocaleUpperCase(locale),
  )

/**
 * Says messages in both languages from the text of their Fluent files.
 *
 * Fluent files may use, beside NUMBER: `HAS($x)` yes or no, and `$x` may then be left out; `WORD("crop", $crop)` a trade
 * word by the code `crop-…`, else as said, also of a list; `CAP($text)` with a capital; `LONGDAY($day)` with its weekday; `CLOCK($time)`;
 * `WEIGHT($lb)` exact, in tons where that comes out even; `ABOUT($lb)` to three digits; `PCT($share)` the number of percent. Data that is a calendar day is
 * said as a date, data that is a message is said first, a list is joined with "and". `{code: 'join', data: {list, by}}`
 * joins with `comma`, `space`, `line`, `semicolon`, `and` or `or`, and leaves out what is empty.
 *
 * A missing code or variable throws where `strict`; otherwise the code itself is said, so that a slip never silences a reply.
 */
export const makeSayer = (ftl: Record<Lang, string[]>, { strict = false }: { strict?: boolean } = {}): Say => {
  const voices: Record<Lang, Voice> = { en: makeVoice('en', ftl.en, strict), es: makeVoice('es', ftl.es, strict) }

  const plain = (datum: Datum, lang: Lang): string => {
    if (Array.isArray(datum)) return inList(voices[lang].list, datum.map(d => plain(d, lang)).filter(Boolean))
    if (typeof datum === 'object') return say(datum, lang)
    if (typeof datum === 'number') return new Intl.NumberFormat(LOCALES[lang], NUMBER).format(datum)
    if (typeof datum === 'boolean') return datum ? 'yes' : 'no'
    return isDay(datum) ? textOf(voices[lang].bundle, new DayText(datum)) : datum
  }

  const value = (datum: Datum, lang: Lang): FluentValue => {
    if (typeof datum === 'number') return new FluentNumber(datum, NUMBER)
    if (typeof datum === 'string' && isDay(datum)) return new DayText(datum)
    if (Array.isArray(datum) && datum.length && datum.every(d => typeof d === 'string')) {
      return new WordList(
        datum.map(d => plain(d, lang)),
        words => inList(voices[lang].list, words),
      )
    }
    return plain(datum, lang)
  }

  const say: Say = (message, lang) => {
    if (message.code === 'join') {
      const list = message.data.list
      const parts = (Array.isArray(list) ? list : []).map(d => plain(d, lang)).filter(Boolean)
      const glue = GLUE[String(message.data.by)]
      if (glue !== undefined) return parts.join(glue)
      return inList(voices[lang][message.data.by === 'or' ? 'either' : 'list'], parts)
    }
    const { bundle, optional } = voices[lang]
    const pattern = bundle.getMessage(message.code)?.value
    if (!pattern) {
      if (strict) throw new Error(`no sentence for ${message.code} in ${lang}`)
      return message.code
    }
    const args: Record<string, FluentValue> = {}
    for (const name of optional.get(message.code) ?? []) args[name] = ''
    for (const [name, datum] of Object.entries(message.data)) args[name] = value(datum, lang)
    const errors: Error[] = []
    const text = bundle.formatPattern(pattern, args as never, errors)
    if (!errors.length) return text
    if (strict) throw new Error(`${message.code} in ${lang}: ${errors.map(e => e.message).join('; ')}`)
    return message.code
  }
  return say
}

/** Several messages as the lines of one text. */
export const lines = (list: Message[]): Message => ({ code: 'join', data: { list, by: 'line' } })

const makeVoice = (lang: Lang, sources: string[], strict: boolean): Voice => {
  const locale = LOCALES[lang]
  const bundle: FluentBundle = new FluentBundle(locale, { useIsolating: false, functions: functionsOf(locale, () => bundle) })
  const resources = sources.map(text => new FluentResource(text))
  for (const resource of resources) {
    const errors = bundle.addResource(resource)
    if (strict && errors.length) throw errors[0]
  }
  const listOf = (type: 'conjunction' | 'disjunction') => new Intl.ListFormat(LIST_LOCALES[lang], { type })
  return { bundle, list: listOf('conjunction'), either: listOf('disjunction'), optional: usedVariables(resources, 'HAS') }
}

const functionsOf = (locale: string, bundle: () => FluentBundle): Record<string, FluentFunction> => {
  const text = (value: FluentValue | undefined): string => textOf(bundle(), value)
  const number = (value: FluentValue | undefined): number => (value instanceof FluentNumber ? value.value : Number(text(value)))
  const said = (code: string, args: Record<string, FluentValue>): string => {
    const pattern = bundle().getMessage(code)?.value
    return pattern ? bundle().formatPattern(pattern, args as never, []) : code
  }
  const weight = (lb: number, tons: boolean, digits?: number): string => {
    const opts = digits ? { ...NUMBER, maximumSignificantDigits: digits } : NUMBER
    return tons ? said('amount-tons', { n: new FluentNumber(lb / LB_PER_TON, opts) }) : said('amount-lb', { n: new FluentNumber(lb, opts) })
  }
  return {
    HAS: ([x]) => (x === undefined || x instanceof FluentNone || x === '' ? 'no' : 'yes'),
    WORD: ([kind, word]) => {
      const one = (w: string): string => {
        const pattern = bundle().getMessage(`${text(kind)}-${slug(w)}`)?.value
        return pattern ? bundle().formatPattern(pattern, {}, []) : w
      }
      return word instanceof WordList ? word.map(one) : text(word).split(', ').map(one).join(', ')
    },
    CAP: ([x]) => capital(text(x), locale),
    LONGDAY: ([x]) => (x instanceof DayText ? x.long(bundle()) : text(x)),
    CLOCK: ([x]) => {
      const m = /^(\d{1,2}):(\d{2})$/.exec(text(x))
      if (!m) return text(x)
      const h = Number(m[1])
      return said('clock', { hour: new FluentNumber(h % 12 || 12), minute: m[2] ?? '00', half: h < 12 ? 'am' : 'pm' })
    },
    WEIGHT: ([x]) => {
      const lb = number(x)
      return weight(lb, lb >= LB_PER_TON && (lb * 10) % LB_PER_TON === 0)
    },
    PCT: ([x]) => new FluentNumber(number(x) * 100, { ...NUMBER, maximumFractionDigits: 0 }),
    ABOUT: ([x]) => {
      const lb = number(x)
      return weight(lb, Math.abs(lb) >= 10 * LB_PER_TON, 3)
    },
  }
}
