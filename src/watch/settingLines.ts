import { type Book, nameOf, setting } from '../book/book.ts'
import type { Datum, Message } from '../book/questions.ts'
import { PLAIN_DAYS } from './checks.ts'
import { NUDGES_PER_DAY } from './escalate.ts'
import { FREEZE_DAY, THAW_DAY } from './freeze.ts'
import { clockText, type Hours, hoursOf } from './hours.ts'
import { ofPerson, PERSONAL, settingOf, TOTAL_EVERY } from './settings.ts'
import { WEEKLY_DAY } from './summaries.ts'
import { WAIT_DAYS } from './waiting.ts'

const DAYS = ['sun', 'mon', 'tue', 'wed', 'thu', 'fri', 'sat']
const msg = (code: string, data: Record<string, Datum> = {}): Message => ({ code, data })

/** Whose line it is: `you` is yes for the reader's own, `who` a name, both empty for the farm's. */
interface Of {
  you: 'yes' | 'no'
  who: string
}

/** A day of the year as a day that can be said. */
const yearDay = (book: Book, name: string, usual: string): string => `2000-${setting(book, name, usual)}`

type Maker = (book: Book, hours: Hours, of: Of, person?: string) => Message | undefined
const summaryLine =
  (name: 'morning' | 'evening', code: string): Maker =>
  (_, hours, of) =>
    msg(code, { time: clockText(hours[name]), ...of })

const gets =
  (kind: 'morning' | 'evening' | 'weekly'): Maker =>
  (book, _, of, person) => {
    const on = person === undefined ? book.settings.get(kind) !== false : book.settings.get(ofPerson(person, kind))
    return on === undefined ? undefined : msg(on === true ? 'set-gets' : 'set-gets-not', { kind, ...of })
  }

/** One line for each kind of setting, in the order of the list. */
const LINES: { names: string[]; make: Maker }[] = [
  {
    names: ['morning'],
    make: gets('morning'),
  },
  { names: ['morningHour'], make: summaryLine('morning', 'set-morning') },
  { names: ['evening'], make: gets('evening') },
  { names: ['eveningHour'], make: summaryLine('evening', 'set-evening') },
  { names: ['weekly'], make: gets('weekly') },
  {
    names: ['weeklyDay', 'weeklyHour'],
    make: (book, hours, of, person) =>
      msg('set-weekly', { weekday: DAYS[settingOf(book, 'weeklyDay', WEEKLY_DAY, person)] ?? 'sun', time: clockText(hours.weekly), ...of }),
  },
  { names: ['emptySummaries'], make: book => msg('set-empty', { always: setting(book, 'emptySummaries', false) ? 'yes' : 'no' }) },
  {
    names: ['quietFrom', 'quietTo'],
    make: (_, hours, of) =>
      hours.quietFrom === hours.quietTo
        ? msg('set-quiet-none', { ...of })
        : msg('set-quiet', { from: clockText(hours.quietFrom), to: clockText(hours.quietTo), ...of }),
  },
  { names: ['checkDays'], make: book => msg('set-check', { days: setting(book, 'checkDays', PLAIN_DAYS) }) },
  { names: ['nudgesPerDay'], make: book => msg('set-nudges', { count: setting(book, 'nudgesPerDay', NUDGES_PER_DAY) }) },
  {
    names: ['totalEvery'],
    // the usual is not worth a line
    make: book => (book.settings.has('totalEvery') ? msg('set-total', { count: setting(book, 'totalEvery', TOTAL_EVERY) }) : undefined),
  },
  { names: ['askHour'], make: (_, hours) => msg('set-ask', { time: clockText(hours.ask) }) },
  { names: ['waitDays'], make: book => msg('set-wait', { days: setting(book, 'waitDays', WAIT_DAYS) }) },
  { names: ['freezeDay'], make: book => msg('set-freeze', { on: yearDay(book, 'freezeDay', FREEZE_DAY) }) },
  { names: ['thawDay'], make: book => msg('set-thaw', { on: yearDay(book, 'thawDay', THAW_DAY) }) },
  {
    names: ['lat', 'lon'],
    make: book => {
      const lat = setting(book, 'lat', Number.NaN)
      const lon = setting(book, 'lon', Number.NaN)
      if (!Number.isFinite(lat) || !Number.isFinite(lon)) return msg('set-place-none')
      return msg('set-place', { lat: Math.abs(lat), lon: Math.abs(lon), south: lat < 0 ? 'yes' : 'no', west: lon < 0 ? 'yes' : 'no' })
    },
  },
  {
    names: ['lang'],
    make: (book, _, of, person) => {
      const lang = settingOf<string>(book, 'lang', '', person)
      return lang === '' ? undefined : msg('set-lang', { lang, ...of })
    },
  },
]

const SUMMARIES = ['morning', 'evening', 'weekly']
const FARM: Of = { you: 'no', who: '' }
const ofOne = (book: Book, person: string, reader: string): Of =>
  person === reader ? { you: 'yes', who: '' } : { you: 'no', who: nameOf(book, person) }

const make = (book: Book, lines: typeof LINES, person: string | undefined, reader: string): Message[] => {
  const of = person === undefined ? FARM : ofOne(book, person, reader)
  return lines.flatMap(l => l.make(book, hoursOf(book, person), of, person) ?? [])
}

/** The lines of some settings; that a summary comes needs no line beside its hour. */
const linesOf = (has: (name: string) => boolean, on: (name: string) => boolean): typeof LINES =>
  LINES.filter(({ names: [name = '', ...rest] }) => {
    const hour = SUMMARIES.includes(name) && on(name) && [`${name}Hour`, `${name}Day`].some(has)
    return !hour && [name, ...rest].some(has)
  })

/** What holds now of the settings named, a line each, as told to `reader`; `person` where they are somebody's own. */
export const wishLines = (book: Book, names: string[], person: string | undefined, reader: string): Message[] => {
  const on = (name: string): boolean => book.settings.get(person === undefined ? name : ofPerson(person, name)) !== false
  return make(
    book,
    linesOf(n => names.includes(n), on),
    person,
    reader,
  )
}

/** All settings of the farm; what a summary is switched off is told in place of its hour. */
export const farmLines = (book: Book): Message[] => {
  const off = (['morning', 'evening', 'weekly'] as const).filter(n => book.settings.get(n) === false)
  const shown = LINES.filter(l => {
    const [name] = l.names
    if (name === 'morning' || name === 'evening' || name === 'weekly') return off.includes(name)
    return !off.some(n => l.names.some(x => x.startsWith(n)))
  })
  return make(book, shown, undefined, '')
}

/** A person's own settings, where they have any. */
export const personLines = (book: Book, person: string, reader: string): Message[] =>
  make(
    book,
    linesOf(
      n => PERSONAL.includes(n) && book.settings.has(ofPerson(person, n)),
      n => book.settings.get(ofPerson(person, n)) === true,
    ),
    person,
    reader,
  )
