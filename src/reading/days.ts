import { dayOf, isDay } from '../units/calendar.ts'
import { EN_AHEAD, EN_MONTHS, EN_NUMBERED, EN_PART_PHRASES, EN_PHRASES, EN_SPANS } from './en/dates.ts'
import { EN_NUMBER, EN_RULES } from './en/days.ts'
import { ES_AHEAD, ES_MONTHS, ES_NUMBERED, ES_PART_PHRASES, ES_PHRASES, ES_SPANS } from './es/dates.ts'
import { ES_NUMBER, ES_RULES } from './es/days.ts'
import { LEXICON } from './lexicon.ts'
import { timeAt } from './times.ts'
import type { Token } from './token.ts'
import type { Part, Said } from './when.ts'

/** A date found over tokens up to `to`; `until` where it is the first of a range. */
export interface Found {
  to: number
  said: Said
  until?: Said
  part?: Part
}
export type Rule = (s: Words, i: number) => Found | undefined

const phrases = <T>(rows: [string, ...T[]][]) => {
  const byFirst = new Map<string, { words: string[]; what: T[] }[]>()
  for (const [list, ...what] of rows) {
    for (const raw of list.split(', ')) {
      const words = raw.split(' ')
      const at = byFirst.get(words[0]!)
      if (at) at.push({ words, what })
      else byFirst.set(words[0]!, [{ words, what }])
    }
  }
  for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length)
  return {
    at: (s: Words, i: number) => byFirst.get(s.w[i]!)?.find(p => p.words.every((word, k) => s.w[i + k] === word)),
    firsts: [...byFirst.keys()],
  }
}
const dayPhrases = phrases<Said | Part | undefined>([...EN_PHRASES, ...ES_PHRASES])
const partPhrases = phrases<Part>([...EN_PART_PHRASES, ...ES_PART_PHRASES])
export const partPhrase = partPhrases.at
/** Words that a day or a part of one may begin with; figures aside. */
export const DAY_STARTS: readonly string[] = [...dayPhrases.firsts, ...partPhrases.firsts, ...EN_RULES.keys(), ...ES_RULES.keys()]

// the trade's own words, so that "may 6 loads" and "a las 6 vacas" stay what they are wherever a unit is added
const MEASURES = new Set(['x', '%', '#', '*'])
const NOUNS = new Set<string>()
const CROPS = new Set<string>()
for (const [first, list] of LEXICON.byFirst) {
  for (const p of list) {
    if (p.words.length > 1) continue
    const senses = [...p.en, ...p.es]
    if (senses.some(x => x.startsWith('unit:') && !/:(day|hour|month)$/.test(x)) && !/^(in|f|t|below|dump|ac|cut)$/.test(first))
      MEASURES.add(first)
    if (senses.some(x => /^(animal|mat|item|group|unit):/.test(x))) NOUNS.add(first)
    if (senses.some(x => x.startsWith('crop:'))) CROPS.add(first)
  }
}
const END = new Set(['.', ',', ';', '!', '?', ':', ')', '(', '<link>'])
const NUMERIC_AFTER = new Set(
  'on since by until til till before after from dated for thru through and el desde hasta para dia al del last this'.split(' '),
)
const NUMERIC_BEFORE = new Set(
  'we i he she they it put fed at we had got hail to and - y le les se hubo cayo tapamos echamos dimos pusimos for in on'.split(' '),
)
const NUMERIC_NOT = new Set('is was are at about ratio ration mix mixed of ran esta es de load mezcla relacion split'.split(' '))

/** "2026-09-12", "9/12", "9/12/26", "on 9-12": the month first, as in the States; 28/5 can only be the 28th. */
const numericDay: Rule = (s, i) => {
  const t = s.tokens[i]!
  if (t.text.length === 10 && isDay(t.text))
    return {
      to: i + 1,
      said: { as: 'date', year: Number(t.text.slice(0, 4)), month: Number(t.text.slice(5, 7)), day: Number(t.text.slice(8)) },
    }
  const before = s.all[i - 1] ?? ''
  let to = i + 1
  let text = t.text
  if (!text.includes('/')) {
    const glued =
      s.w[i + 1] === '-' && t.to === s.tokens[i + 1]!.from && s.number(i + 2) !== undefined && s.tokens[i + 1]!.to === s.tokens[i + 2]!.from
    // "8-30" is no range of loads, "9-12" may be
    const [low, high] = glued ? [s.number(i)!, s.number(i + 2)!] : [0, 0]
    if (!glued || (before !== 'on' && before !== 'el' && !(high > 12 && high > 2 * low + 1 && s.ends(i + 3)))) return undefined
    text = `${text}/${s.tokens[i + 2]!.text}`
    to = i + 3
  }
  const m = /^(\d{1,2})\/(\d{1,2})(?:\/(\d{2}|\d{4}))?$/.exec(text)
  if (!m || s.measure(to) || s.number(i - 1) !== undefined) return undefined
  const [a, b] = [Number(m[1]), Number(m[2])]
  const [month, day] = a > 12 && b <= 12 ? [b, a] : [a, b]
  const year = m[3] ? Number(m[3]) + (m[3].length === 2 ? 2000 : 0) : undefined
  if (month < 1 || day < 1 || !isDay(dayOf(year ?? 2024, month, day))) return undefined
  const found: Found = { to, said: { as: 'date', month, day, year } }
  if (year !== undefined || day > 16) return found
  // 7/8 and 3/4 may be fractions, 12/10 a mix: only where a date would stand
  const open = s.ends(to) || NUMERIC_BEFORE.has(s.all[to]!) || s.clock(to)
  if (/^(full|empty|mix|mixes|ratio|split|blend|of|mile|cup|way|done|gone|left|size|llena|lleno)$/.test(s.all[to] ?? '')) return undefined
  if (NUMERIC_AFTER.has(before) && (before !== 'for' || open) && (before !== 'on' || open || a >= b)) return found
  const common = a < b && [2, 3, 4, 8, 16].includes(b)
  if (day > 12 && !common) return found
  if (common || NUMERIC_NOT.has(before)) return undefined
  return s.ends(to) || ((i === 0 || s.ends(i - 1)) && !CROPS.has(s.all[to]!) && (a < b || open)) ? found : undefined
}

const longer = (a: Found | undefined, b: Found | undefined): Found | undefined => (!a || (b && b.to > a.to) ? b : a)

const real = (said: Said): boolean =>
  said.as !== 'date' ||
  said.month === undefined ||
  (said.day <= 28 && said.day >= 0) ||
  isDay(dayOf(said.year ?? 2024, said.month, said.day))

// a plain number begins a date only before one of these: most numbers of a message are loads and pounds
const AFTER_NUMBER = new Set([
  ...EN_MONTHS.keys(),
  ...ES_MONTHS.keys(),
  ...EN_SPANS.keys(),
  ...ES_SPANS.keys(),
  ...'of de del and y - nite moro morrow morow ultimos ultimas'.split(' '),
])

const longest = (s: Words, i: number): Found | undefined => {
  const word = s.w[i]!
  let best: Found | undefined
  const p = dayPhrases.at(s, i)
  if (p) best = { to: i + p.words.length, said: p.what[0] as Said, part: p.what[1] as Part | undefined }
  const t = s.tokens[i]!
  if (t.kind === 'number') {
    if (t.value !== undefined && !AFTER_NUMBER.has(s.all[i + 1] ?? '')) return best
    best = longer(longer(longer(best, numericDay(s, i)), EN_NUMBER(s, i)), ES_NUMBER(s, i))
  }
  best = longer(longer(best, EN_RULES.get(word)?.(s, i)), ES_RULES.get(word)?.(s, i))
  return best && real(best.said) ? best : undefined
}

/** How far one date may lean on another: "a week after the last friday". Keeps "on the on the on the …" from winding up. */
const DEEPEST = 6

/** A message as the rules of a language see it. */
export class Words {
  readonly tokens: readonly Token[]
  /** Norms of everything, for looking at what stands around. */
  readonly all: readonly string[]
  /** Norms; empty for what is claimed already. */
  readonly w: readonly string[]
  /** Something in the message looks ahead: a bare hour is the next one. */
  readonly ahead: boolean
  readonly #days: (Found | null | undefined)[] = []
  #depth = 0

  constructor(tokens: readonly Token[], taken: (i: number) => boolean) {
    this.tokens = tokens
    this.all = tokens.map(t => t.norm)
    this.w = tokens.map((t, i) => (taken(i) ? '' : t.norm))
    this.ahead = this.all.some(x => EN_AHEAD.has(x) || ES_AHEAD.has(x))
  }

  claimed(i: number): boolean {
    return this.w[i] === ''
  }

  /** The whole number at an unclaimed token. */
  number(i: number): number | undefined {
    const t = this.tokens[i]
    return t?.kind === 'number' && this.w[i] && Number.isInteger(t.value) && !/k$/i.test(t.text) ? t.value : undefined
  }

  /** True at the end of a clause. */
  ends(i: number): boolean {
    return i >= this.all.length || END.has(this.all[i]!)
  }

  /** True where a word of measure stands: loads, ft, %. */
  measure(i: number): boolean {
    return MEASURES.has(this.all[i] ?? '')
  }

  /** True where a thing that is counted stands: cows, tires. */
  noun(i: number): boolean {
    return NOUNS.has(this.all[i] ?? '')
  }

  /** True where the figure numbers the thing before it: "load 12". */
  numbered(i: number): boolean {
    const before = this.all[i - 1] ?? ''
    return before === '#' || ((EN_NUMBERED.has(before) || ES_NUMBERED.has(before)) && this.tokens[i - 2]?.kind !== 'number')
  }

  /** True where nothing but marks stands outside. */
  alone(from: number, to: number): boolean {
    return this.tokens.every((t, k) => (k >= from && k < to) || t.kind === 'mark')
  }

  /** The day that starts at token `i`, the longest any rule finds. */
  day(i: number): Found | undefined {
    if (!this.w[i]) return undefined
    const known = this.#days[i]
    if (known !== undefined) return known ?? undefined
    if (this.#depth >= DEEPEST) return undefined
    this.#depth++
    const found = longest(this, i)
    this.#depth--
    this.#days[i] = found ?? null
    return found
  }

  /** True where a time of day starts. */
  clock(i: number): boolean {
    const c = timeAt(this, i)
    return c !== undefined && !c.bare
  }
}
