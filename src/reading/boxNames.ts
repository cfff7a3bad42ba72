/** The words that only say that a name is a box. */
const KIND =
  /^(?:box|boxes|wagon|truck|cart|trailer|semi|dump|carreta|troca|camion|remolque|carro|vagon|traila|caja|gondola|trailer|volteo)$/
const HAULS = ['load', 'loads', 'trip', 'trips']
const FEMININE = /^(?:carreta|troca|traila|caja|gondola)$/

/** A way to name a box, as folded words. `counted`: only behind a number ("put 7 red on north"). */
export interface BoxForm {
  words: string[]
  counted?: boolean
}

/**
 * What is left of a box's name without its kind: "red" of "red wagon", "amarilla" of "carreta amarilla". A part that two boxes share, or
 * that is a pile's name too, is no name.
 */
const shortNames = (boxes: readonly string[][], taken: (word: string) => boolean): Map<string[], string[]> => {
  const short = new Map<string[], string[]>()
  for (const name of boxes) {
    const rest = name.filter(w => !KIND.test(w))
    if (rest.length && !taken(rest.join(' '))) short.set(name, rest)
  }
  const seen = [...short.values()].map(r => r.join(' '))
  for (const [name, rest] of short) if (seen.filter(s => s === rest.join(' ')).length > 1) short.delete(name)
  return short
}

/** How the crew names each box in short: "red loads", "the red one", "la amarilla", and a bare "red" behind a number. */
export const boxForms = (boxes: readonly string[][], taken: (word: string) => boolean): Map<string[], BoxForm[]> => {
  const out = new Map<string[], BoxForm[]>()
  for (const [name, rest] of shortNames(boxes, taken)) {
    const forms: BoxForm[] = HAULS.map(h => ({ words: [...rest, h] }))
    const kind = name.find(w => KIND.test(w))
    const spanish = kind !== undefined && name[0] === kind
    if (spanish) {
      const the = FEMININE.test(kind) ? 'la' : 'el'
      forms.push({ words: [the, ...rest] })
      // "del rojo"
      if (the === 'el') forms.push({ words: ['del', ...rest] })
    } else {
      for (const one of ['one', ...(kind ? [kind] : [])]) forms.push({ words: ['the', ...rest, one] })
      // "the red" is also how a net is called where both languages are spoken
      if (rest.join(' ') !== 'red') forms.push({ words: ['the', ...rest] })
    }
    forms.push({ words: rest, counted: true })
    out.set(name, forms)
  }
  return out
}
