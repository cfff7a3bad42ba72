import { EN_WORDS } from './en/words.ts'
import { ES_WORDS } from './es/words.ts'
import { foldWord } from './tokens.ts'

export interface Phrase {
  words: string[]
  en: string[]
  es: string[]
}

/** What one word begins. */
interface Start {
  alone?: Phrase
  /** Longest first. */
  longer: Map<string, Phrase[]>
}

export interface Lexicon {
  /** Phrases by first word, longest first. */
  byFirst: Map<string, Phrase[]>
  /** For each first word, what it means alone and its longer phrases by their second word. */
  starts: Map<string, Start>
  /** Single words with what they mean, for mending slips. */
  singles: string[]
  /** Single words that no English table has. */
  onlySpanish: Set<string>
}

const add = (byKey: Map<string, Phrase>, table: Record<string, string>, lang: 'en' | 'es') => {
  for (const [sense, list] of Object.entries(table)) {
    if (sense.startsWith('qt:')) continue
    for (const raw of list.split(',')) {
      const words = raw.trim().split(/[\s]+/).map(foldWord).filter(Boolean)
      if (!words.length) continue
      const key = words.join(' ')
      let p = byKey.get(key)
      if (!p) {
        p = { words, en: [], es: [] }
        byKey.set(key, p)
      }
      if (!p[lang].includes(sense)) p[lang].push(sense)
    }
  }
}

const startOf = (list: Phrase[]): Start => {
  const longer = new Map<string, Phrase[]>()
  for (const p of list) {
    const second = p.words[1]
    if (second !== undefined) longer.set(second, [...(longer.get(second) ?? []), p])
  }
  return { alone: list.find(p => p.words.length === 1), longer }
}

/** Builds the look-up from word tables. */
export const buildLexicon = (en: Record<string, string>, es: Record<string, string>): Lexicon => {
  const byKey = new Map<string, Phrase>()
  add(byKey, en, 'en')
  add(byKey, es, 'es')
  const byFirst = new Map<string, Phrase[]>()
  for (const p of byKey.values()) {
    const list = byFirst.get(p.words[0]!)
    if (list) list.push(p)
    else byFirst.set(p.words[0]!, [p])
  }
  for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length)
  const starts = new Map([...byFirst].map(([word, list]) => [word, startOf(list)]))
  const singles = [...byKey.values()]
    .filter(p => p.words.length === 1 && p.words[0]!.length >= 5 && [...p.en, ...p.es].some(s => s !== 'filler'))
    .map(p => p.words[0]!)
  const onlySpanish = new Set(
    [...byKey.values()].filter(p => p.words.length === 1 && p.es.length > 0 && p.en.length === 0).map(p => p.words[0]!),
  )
  return { byFirst, starts, singles, onlySpanish }
}

export const LEXICON = buildLexicon(EN_WORDS, ES_WORDS)

/** What questions are about: phrases looked for anywhere in an asking sentence, joined by single spaces. */
const topicsOf = (...tables: Record<string, string>[]): Map<string, string[]> => {
  const out = new Map<string, string[]>()
  for (const table of tables) {
    for (const [sense, list] of Object.entries(table)) {
      if (!sense.startsWith('qt:')) continue
      const phrases = list.split(',').map(p => ` ${p.trim().split(/\s+/).map(foldWord).join(' ')} `)
      out.set(sense, [...(out.get(sense) ?? []), ...phrases])
    }
  }
  return out
}

const TOPICS = topicsOf(EN_WORDS, ES_WORDS)

const spoken = new Map<string, RegExp | undefined>()
const topic = (sense: string): RegExp | undefined => {
  if (!spoken.has(sense)) {
    const phrases = TOPICS.get(sense)?.map(p => p.trim().replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
    spoken.set(sense, phrases && new RegExp(`(?:^| )(?:${phrases.join('|')})(?= |$)`))
  }
  return spoken.get(sense)
}

/** True where a sentence (words folded, single spaces) speaks of a topic such as `qt:ready`. */
export const speaksOf = (sense: string, text: string): boolean => {
  return topic(sense)?.test(text) ?? false
}
