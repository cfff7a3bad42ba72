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
    String.raw`(?<water>\bh2o\b)`,
    String.raw`(?<before>\bb4\b)`,
    String.raw`(?<thousands>\d{1,4}(?:\.\d{1,3})?k\b)`,
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

const isLetter = (c: number): boolean => (c >= 97 && c <= 122) || (c >= 65 && c <= 90)

/** Where a word of plain letters that begins at `from` ends; -1 where the pattern must look: a link, "b4", an accent, an apostrophe. */
const plainWordEnd = (text: string, from: number): number => {
  let to = from + 1
  while (to < text.length && isLetter(text.charCodeAt(to))) to++
  const next = to < text.length ? text.charCodeAt(to) : 32
  if (next > 127 || next === 39 || next === 96) return -1
  const first = text[from]!
  if ((first === 'b' || first === 'B') && text[from + 1] === '4') return -1
  if ((first === 'h' || first === 'H') && text[from + 1] === '2') return -1
  return (next === 46 || next === 58) && LINK_HEAD.test(text.slice(from, to)) ? -1 : to
}
const LINK_HEAD = /^(?:https?|www)$/i

/** Splits a message. A number stands apart from the unit glued to it (7lds is two tokens); clock times (6am, 7:30), ordinals
 * (12th, 2da), fractions (7/8), feet and inches (22'6) and thousands (12k) are one. */
export const tokenise = (text: string, most = Number.POSITIVE_INFINITY): Token[] => {
  const out: Token[] = []
  for (let at = 0; at < text.length && out.length < most; ) {
    const code = text.charCodeAt(at)
    if (code === 32) {
      at++
      continue
    }
    // most of a message is plain words: they need no pattern
    const end = isLetter(code) ? plainWordEnd(text, at) : -1
    if (end > 0) {
      const raw = text.slice(at, end)
      out.push({ text: raw, norm: raw.toLowerCase(), from: at, to: end, kind: 'word', value: undefined })
      at = end
      continue
    }
    PATTERN.lastIndex = at
    const m = PATTERN.exec(text)
    if (!m) break
    out.push(tokenOf(m))
    at = m.index + m[0].length
  }
  return out
}

const tokenAt = (m: RegExpExecArray, kind: Token['kind'], norm: string, value?: number): Token => ({
  text: m[0],
  norm,
  from: m.index,
  to: m.index + m[0].length,
  kind,
  value,
})

const tokenOf = (m: RegExpExecArray): Token => {
  const g = m.groups!
  const raw = m[0]
  if (g.word !== undefined) return tokenAt(m, 'word', foldWord(raw))
  if (g.number !== undefined) return tokenAt(m, 'number', raw, Number(raw.replace(/,/g, '')))
  if (g.thousands !== undefined) return tokenAt(m, 'number', raw.toLowerCase(), Math.round(Number(raw.slice(0, -1)) * 1e6) / 1e3)
  if (g.glyph !== undefined) return tokenAt(m, 'number', raw, GLYPHS[raw]!)
  if (g.iso ?? g.clock ?? g.ordinal ?? g.fraction ?? g.feet ?? g.inches) return tokenAt(m, 'number', raw.toLowerCase())
  if (g.link ?? g.phone) return tokenAt(m, 'mark', g.link ? '<link>' : '<phone>')
  if (g.water !== undefined) return tokenAt(m, 'word', 'water')
  if (g.before !== undefined) return tokenAt(m, 'word', 'before')
  if (g.texted !== undefined) return tokenAt(m, 'word', /^2m/i.test(raw) ? 'tomorrow' : /^2n/i.test(raw) ? 'tonight' : 'today')
  return tokenAt(m, 'mark', raw === '\n' ? '.' : raw)
}
