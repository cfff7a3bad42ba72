import { distance } from 'fastest-levenshtein'
import { boxForms } from './boxNames.ts'
import { EN_UNITS } from './en/numbers.ts'
import { ES_UNITS } from './es/numbers.ts'
import { isShort } from './slips.ts'
import { soundOf } from './sounds.ts'
import type { Token } from './token.ts'
import { foldWord } from './tokens.ts'

/** The farm's own names, as the reader needs them. */
export interface Names {
  /** Pile names and aliases, to the pile's own name. */
  piles: Map<string, string>
  boxes: string[]
  /** The farm's own words: what is typed, and the trade words it stands for. */
  words: Map<string, string>
  people: string[]
}

export const NO_NAMES: Names = { piles: new Map(), boxes: [], words: new Map(), people: [] }

export interface NameHit {
  from: number
  to: number
  kind: 'pile' | 'box' | 'person'
  name: string
  slip: boolean
  /** What an item of this name means, one list for all of them. */
  senses: string[]
}

interface Entry {
  words: string[]
  kind: NameHit['kind']
  name: string
  senses: string[]
  /** A name only behind a number and before no thing. */
  counted?: boolean
}

export interface NameIndex {
  byFirst: Map<string, Entry[]>
  /** Pile names, and box names of several words, for slips. */
  singles: Entry[]
  /** The farm's own words, to what they mean. */
  taught: ReadonlyMap<string, string>
}

const split = (name: string): string[] =>
  name
    .trim()
    .split(/[\s-]+/)
    .map(foldWord)
    .filter(Boolean)

const DIGITS = new Map<string, string>()
const WORDS = new Map<string, string[]>()
for (const table of [EN_UNITS, ES_UNITS])
  for (const [word, n] of Object.entries(table)) {
    if (n > 20) continue
    DIGITS.set(word, String(n))
    WORDS.set(String(n), [...(WORDS.get(String(n)) ?? []), word])
  }

/** A name as written, and as it is dictated: "pad 3" and "pad three" are one. A name that is a number alone stays as it is. */
const spoken = (words: string[]): string[][] => {
  if (words.length < 2) return [words]
  const out = [words]
  for (const [k, w] of words.entries()) {
    const other = DIGITS.has(w) ? [DIGITS.get(w)!] : (WORDS.get(w) ?? [])
    for (const o of other) out.push([...words.slice(0, k), o, ...words.slice(k + 1)])
  }
  return out
}

const sensesOf = (kind: NameHit['kind'], name: string): string[] => (kind === 'box' ? [`box:${name}`, 'unit:load'] : [`${kind}:${name}`])

/** An index over the farm's names, made once for each state of the book. */
export const indexNames = (names: Names): NameIndex => {
  const byFirst = new Map<string, Entry[]>()
  const singles: Entry[] = []
  const put = (words: string[], kind: NameHit['kind'], name: string, counted = false) => {
    if (!words.length) return
    const e = { words, kind, name, senses: sensesOf(kind, name), ...(counted && { counted }) }
    const list = byFirst.get(words[0]!)
    if (list) list.push(e)
    else byFirst.set(words[0]!, [e])
    if (kind === 'pile' || (kind === 'box' && words.length > 1 && !counted)) singles.push(e)
  }
  for (const [alias, name] of names.piles) for (const words of spoken(split(alias))) put(words, 'pile', name)
  for (const b of names.boxes) {
    const w = split(b)
    put(w, 'box', b)
    if (w.length) put([...w.slice(0, -1), plural(w.at(-1)!)], 'box', b)
  }
  const boxWords = new Map(names.boxes.map(b => [split(b), b]))
  const isPile = (word: string) => [...names.piles.keys()].some(alias => split(alias).join(' ') === word)
  for (const [name, forms] of boxForms([...boxWords.keys()], isPile))
    for (const f of forms) put(f.words, 'box', boxWords.get(name)!, f.counted)
  for (const p of names.people) put(split(p), 'person', p)
  for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length)
  return { byFirst, singles, taught: names.words }
}

/** What stands behind a bare "7 red": nothing, or where it went. */
const ENDS = /^(?:|on|onto|to|in|of|at|and|,|\.|en|a|al|de|y)$/

const plural = (w: string): string => (/(s|x|ch|sh)$/.test(w) ? `${w}es` : `${w}s`)

const swapped = (a: string, b: string): boolean => {
  if (a.length !== b.length) return false
  let i = 0
  while (i < a.length && a[i] === b[i]) i++
  return i < a.length - 1 && a[i] === b[i + 1] && a[i + 1] === b[i] && a.slice(i + 2) === b.slice(i + 2)
}

/** True where `typed` is one slip of a thumb away from `name`: a letter wrong, missing, doubled, or two swapped. */
export const isSlip = (typed: string, name: string): boolean =>
  typed !== name &&
  name.length >= 4 &&
  typed.length >= 3 &&
  ((Math.abs(typed.length - name.length) <= 1 && (distance(typed, name) === 1 || swapped(typed, name))) ||
    isShort(typed, name) ||
    // "arrollo": as it sounds
    (typed[0] === name[0] && typed.length >= 6 && name.length >= 5 && soundOf(typed) === soundOf(name)))

/** The name that starts at token `i`, written right. */
export const nameAt = (index: NameIndex, tokens: Token[], i: number): NameHit | undefined => {
  for (const e of index.byFirst.get(tokens[i]!.norm) ?? []) {
    if (e.counted && !(tokens[i - 1]?.kind === 'number' && ENDS.test(tokens[i + e.words.length]?.norm ?? ''))) continue
    if (e.words.every((w, k) => tokens[i + k]?.norm === w))
      return { from: i, to: i + e.words.length, kind: e.kind, name: e.name, slip: false, senses: e.senses }
  }
  // a possessive or a run-together: "shops", "northpile"
  const { norm } = tokens[i]!
  const bare = norm.endsWith('s') ? norm.slice(0, -1) : norm.endsWith('pile') ? norm.slice(0, -4) : ''
  if (bare.length >= 3) {
    const e = index.byFirst
      .get(bare)
      ?.find(x => x.words.length === 1 && (x.kind === 'pile' || (x.kind === 'person' && /['’]s$/i.test(tokens[i]!.text))))
    if (e) return { from: i, to: i + 1, kind: e.kind, name: e.name, slip: false, senses: e.senses }
  }
  return undefined
}

/** Which one of a name's words is not what is typed from token `i` on; -1 where none or several are, or where no words stand. */
const onlyWrong = (words: string[], tokens: Token[], i: number): number => {
  if (i + words.length > tokens.length) return -1
  let at = -1
  for (let k = 0; k < words.length; k++) {
    const t = tokens[i + k]!
    if (t.kind !== 'word') return -1
    if (t.norm === words[k]) continue
    if (at >= 0) return -1
    at = k
  }
  return at
}

/** The name that token `i` is a slip of; undefined where none or several fit. */
export const slipAt = (index: NameIndex, tokens: Token[], i: number, severalWords = false): NameHit | undefined => {
  let hit: NameHit | undefined
  for (const e of index.singles) {
    if (severalWords && e.words.length < 2) continue
    const at = onlyWrong(e.words, tokens, i)
    if (at < 0) continue
    const right = e.words[at]!
    const typed = tokens[i + at]!.norm
    // beside a word that is right, a short one may be wrong too: "ol slab"
    const short = e.words.length > 1 && right.length === 3 && typed.length >= 2 && typed[0] === right[0] && distance(typed, right) === 1
    if (!short && !isSlip(typed, right)) continue
    if (hit && hit.name !== e.name) return undefined
    hit = { from: i, to: i + e.words.length, kind: e.kind, name: e.name, slip: true, senses: e.senses }
  }
  return hit
}
