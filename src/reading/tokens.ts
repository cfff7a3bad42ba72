import type { Token } from './token.ts'

/** Folds case and accents; ñ becomes n. Length may change, so spans are taken from the original text. */
export const foldWord = (text: string): string => (PLAIN.test(text) ? text : folded(text))

// most words are typed so
const PLAIN = /^[a-z0-9]+$/

const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[’'`´]/g, '')

// Order matters: a link before its letters, feet-and-inches before a plain number, a number with its tail before a word.
const PATTERN = new RegExp(
  [
    String.raw`(?<link>(?:https?:\/\/|www\.)\S{1,2000})`,
    String.raw`(?<phone>\+?\d{0,2}[ .-]?\(?\d{3}\)?[ .-]\d{3}[ .-]\d{4}\b)`,
    String.raw`(?<iso>\d{4}-\d{2}-\d{2})`,
    String.raw`(?<clock>\d{1,2}:\d{2}(?:\s?[ap]\.?m\b\.?|[ap]\b)?|\d{1,2}(?:\s?[ap]\.?m\b\.?|[ap]\b))`,
    String.raw`(?<ordinal>\d{1,2}(?:st|nd|rd|th|ra|da|do|er|ro|ta|to|va|vo|°|º|ª)\b)`,
    String.raw`(?<texted>2(?:day|nite|night|morrow|moro|mrw)\b)`,
    String.raw`(?<before>\bb4\b)`,
    String.raw`(?<thousands>\d{1,3}(?:\.\d{1,3})?k\b)`,
    String.raw`(?<feet>\d{1,4}(?:\.\d+)?\s?['’′](?:\s?\d{1,2}(?:\.\d+)?(?:\s?(?:["”″]|'')|(?![\d'’])))?)`,
    String.raw`(?<inches>\d{1,3}(?:\.\d+)?\s?(?:["”″]|''))`,
    String.raw`(?<fraction>\d{1,3}\/\d{1,3}(?:\/\d{2,4}|[’'′"”″](?![\d\p{L}]))?)`,
    String.raw`(?<number>\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+)`,
    String.raw`(?<word>[\p{L}\p{M}]+(?:[’'´\u0060][\p{L}\p{M}]+)*)`,
    '(?<glyph>[½¼¾⅓⅔])',
    String.raw`(?<mark>[.,;:!?¿¡()#%$&+=*@"“”\n\/-])`,
  ].join('|'),
  'giu',
)

const GLYPHS: Record<string, number> = { '½': 0.5, '¼': 0.25, '¾': 0.75, '⅓': 1 / 3, '⅔': 2 / 3 }

/** Splits a message. A number stands apart from the unit glued to it (7lds is two tokens); clock times (6am, 7:30), ordinals
 * (12th, 2da), fractions (7/8), feet and inches (22'6) and thousands (12k) are one. */
export const tokenise = (text: string, most = Number.POSITIVE_INFINITY): Token[] => {
  const out: Token[] = []
  PATTERN.lastIndex = 0
  for (let m = PATTERN.exec(text); m && out.length < most; m = PATTERN.exec(text)) {
    const g = m.groups!
    const raw = m[0]
    const from = m.index
    const put = (kind: Token['kind'], norm: string, value?: number) =>
      out.push({ text: raw, norm, from, to: from + raw.length, kind, value })
    if (g.word !== undefined) put('word', foldWord(raw))
    else if (g.number !== undefined) put('number', raw, Number(raw.replace(/,/g, '')))
    else if (g.thousands !== undefined) put('number', raw.toLowerCase(), Math.round(Number(raw.slice(0, -1)) * 1e6) / 1e3)
    else if (g.glyph !== undefined) put('number', raw, GLYPHS[raw]!)
    else if (g.iso ?? g.clock ?? g.ordinal ?? g.fraction ?? g.feet ?? g.inches) put('number', raw.toLowerCase())
    else if (g.link ?? g.phone) put('mark', g.link ? '<link>' : '<phone>')
    else if (g.before !== undefined) put('word', 'before')
    else if (g.texted !== undefined) put('word', /^2m/i.test(raw) ? 'tomorrow' : /^2n/i.test(raw) ? 'tonight' : 'today')
    else put('mark', raw === '\n' ? '.' : raw)
  }
  return out
}
