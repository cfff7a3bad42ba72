import { LEXICON } from './lexicon.ts'
import { type NameIndex, nameAt } from './names.ts'
import { foldWord, tokenise } from './tokens.ts'

/** A second name for a pile that the farm knows. */
export interface Alias {
  pile: string
  alias: string
  /** The trade's own word ("the hole"): as a name it would be heard in every report. */
  tradeWord: boolean
}

const QUOTED = `["'“‘«]?(.{2,40}?)["'”’»]?`
/** The ways a second name is given; `pile` and `alias` say which group is which. */
const WAYS: { like: RegExp; pile: 1 | 2 }[] = [
  {
    like: new RegExp(`^(?:we|they|the crew|everybody|everyone)\\s+(?:also\\s+)?calls?\\s+(.{2,40}?)\\s+(?:the\\s+)?${QUOTED}$`, 'i'),
    pile: 1,
  },
  { like: new RegExp(`^(.{2,40}?),?\\s+(?:is\\s+)?(?:also\\s+(?:called|known as)|a\\.?k\\.?a\\.?)\\s+${QUOTED}$`, 'i'), pile: 1 },
  { like: new RegExp(`^(.{2,40}?)\\s+is\\s+called\\s+${QUOTED},?\\s+(?:too|as well)$`, 'i'), pile: 1 },
  { like: new RegExp(`^${QUOTED}\\s+is\\s+(?:the\\s+same\\s+(?:pile\\s+)?as|another\\s+name\\s+for)\\s+(.{2,40}?)$`, 'i'), pile: 2 },
  {
    like: new RegExp(
      `^(?:al?\\s+)?(.{2,40}?),?\\s+(?:tambi[eé]n\\s+)?(?:se\\s+)?le\\s+(?:decimos|dicen|llamamos|llaman|dice|llama)\\s+${QUOTED}$`,
      'i',
    ),
    pile: 1,
  },
  { like: new RegExp(`^(.{2,40}?),?\\s+tambi[eé]n\\s+(?:se\\s+llama|conocid[oa]\\s+como)\\s+${QUOTED}$`, 'i'), pile: 1 },
  {
    like: new RegExp(`^${QUOTED}\\s+es\\s+(?:el\\s+mismo|la\\s+misma|lo\\s+mismo)\\s+(?:mont[oó]n\\s+|pila\\s+)?que\\s+(.{2,40}?)$`, 'i'),
    pile: 2,
  },
]

const ARTICLES = /^(?:the|el|la|los|las|pile|pila|mont[oó]n)\s+/i
/** What is said behind a name and is no part of it. */
const ASIDE = /,?\s+(?:too|also|fyi|btw|as well|tambi[eé]n|ok|okay|por si acaso|just so you know)$/i
const strip = (text: string): string =>
  text
    .trim()
    .replace(ARTICLES, '')
    .replace(ARTICLES, '')
    .replace(/\s+(?:pile|pila|mont[oó]n)$/i, '')

/** The second name that a message gives to a known pile, or undefined. */
export const aliasIn = (text: string, names: NameIndex): Alias | undefined => {
  if (text.length > 110) return undefined
  const said = text.trim().replace(/[.!\s]+$/, '')
  for (const { like, pile } of WAYS) {
    const m = like.exec(said)
    if (!m) continue
    const tokens = tokenise(strip(m[pile]!))
    const hit = tokens.length ? nameAt(names, tokens, 0) : undefined
    if (hit?.kind !== 'pile' || hit.to !== tokens.length) continue
    const alias = strip(m[3 - pile]!.replace(ASIDE, ''))
      .replace(/["'“”‘’«»]/g, '')
      .toLowerCase()
    const words = alias.split(/\s+/).map(foldWord)
    if (!alias || words.length > 4 || alias === hit.name) continue
    const own = words.length === 1 ? LEXICON.byFirst.get(words[0]!)?.find(p => p.words.length === 1) : undefined
    const tradeWord = own !== undefined && [...own.en, ...own.es].some(s => s !== 'filler' && s !== 'where:place')
    return { pile: hit.name, alias, tradeWord }
  }
  return undefined
}
