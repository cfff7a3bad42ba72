/**
 * The alphabet of text messages: 3GPP TS 23.038, the GSM 7 bit default alphabet (6.2.1) and its extension table (6.2.1.1).
 * A character of the extension is sent as an escape and one more, so it takes two septets.
 */
const BASIC =
  '@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !"#¤%&\'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà'
const EXTENSION = '\f^{}\\[~]|€'

const SEPTETS = new Map<string, number>([
  ...[...BASIC].map((c): [string, number] => [c, 1]),
  ...[...EXTENSION].map((c): [string, number] => [c, 2]),
])

/** Septets that a text takes; undefined where a character of it is not in the alphabet. */
export const septets = (text: string): number | undefined => {
  let n = 0
  for (const c of text) {
    const own = SEPTETS.get(c)
    if (own === undefined) return undefined
    n += own
  }
  return n
}

/** Characters that say the same in the alphabet. What only carries looks (joiners, marks of direction) goes. */
const INSTEAD: [RegExp, string][] = [
  [/\r\n?|[\u2028\u2029\v\f]/g, '\n'],
  [/[\t\u00a0\u1680\u2000-\u200a\u202f\u205f\u3000]/g, ' '],
  [/\u00ad|[\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]|\ufe0e|\ufe0f/g, ''],
  [/[\u2010-\u2015\u2212\u2022\u2043\u00b7\u2219]/g, '-'],
  [/[\u2018-\u201b\u2032\u0060\u00b4\u02bc]/g, "'"],
  [/[\u201c-\u201f\u2033\u00ab\u00bb]/g, '"'],
  [/\u2026/g, '...'],
  [/\s?\u00b0(?=[FC]\b)/g, ' '],
  [/\u00b0/g, ''],
  [/\u00d7/g, 'x'],
  [/\u00f7/g, '/'],
  [/\u00b1/g, '+/-'],
  [/\u2264/g, '<='],
  [/\u2265/g, '>='],
  [/[\u2192\u21d2\u27a1]/g, '->'],
  [/[\u2713\u2714]/g, 'ok'],
  [/\u0153/g, 'oe'],
  [/\u0152/g, 'OE'],
]

const HALVES = /(\d?)([\u00bc-\u00be\u2150-\u215e])/g

/**
 * A text in the alphabet of text messages, as far as that does no harm: ñ é ü stay, á í ó ú lose their mark, dashes and quotes
 * become plain, `≈` becomes `about`. A character that nothing stands for (another script, a picture) is left as it is.
 */
export const plainly = (text: string, about: string): string => {
  let out = text.normalize('NFC').replace(/\s*≈\s*/g, (_, at: number) => `${at ? ' ' : ''}${about} `)
  // ½ is 1/2, and 2½ is 2 1/2
  out = out.replace(HALVES, (_, whole: string, half: string) => `${whole && `${whole} `}${half.normalize('NFKD').replace('\u2044', '/')}`)
  for (const [from, to] of INSTEAD) out = out.replace(from, to)
  return [...out]
    .map(c => {
      if (SEPTETS.has(c)) return c
      // superscripts and full-width letters by compatibility, accents by their base letter
      const bare = c.normalize('NFKD').replace(/\p{M}/gu, '')
      return bare !== '' && septets(bare) !== undefined ? bare : c
    })
    .join('')
}
