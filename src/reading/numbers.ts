import { EN_HOMOPHONES, EN_UNITS } from './en/numbers.ts'
import { fraction, marked, tail } from './fractions.ts'
import { BEGINS, counted, scaleOf, small, tens, words } from './numberWords.ts'
import { normAt, type Token } from './token.ts'

/** A number said in digits or words over tokens `from` up to `to`. */
export interface NumberItem {
  from: number
  to: number
  value: number
  /** "10 to 12": the two ends; what was meant must be asked. */
  range?: [number, number]
  /** Only a homophone or an article: a number only beside a unit. */
  weak?: boolean
  /** "second", "3rd". */
  ordinal?: boolean
  /** Written as feet and inches; the value is feet. */
  feet?: boolean
  /** Written with the inch mark. */
  inches?: boolean
}

const AFTER_K = /^(?:of|off|from|out|on|lb|lbs|pounds?|de|del|libras?|a|al|in|per|to)?$/

const ORDINAL = /^(\d{1,2})(st|nd|rd|th|ra|da|do|er|ro|ta|to|va|vo|°|º|ª)$/

const PARTS: Record<string, number> = { quarters: 4, thirds: 3, eighths: 8, tenths: 10, cuartos: 4, tercios: 3, decimos: 10, decimas: 10 }

/** Numbers, with "three quarters" and "6 tenths" as the fractions they are. */
const one = (tokens: Token[], i: number): NumberItem | undefined => {
  const n = whole(tokens, i)
  const part =
    n && !n.ordinal && !n.feet && !n.inches && Object.hasOwn(PARTS, tokens[n.to]?.norm ?? '') ? PARTS[tokens[n.to]!.norm]! : undefined
  return n && part ? { from: n.from, to: n.to + 1, value: n.value / part } : n
}

const whole = (tokens: Token[], i: number): NumberItem | undefined => {
  const t = tokens[i]!
  const n = t.norm
  if (t.kind === 'number') {
    if (t.value !== undefined) {
      const next = tokens[i + 1]
      const f = fraction(next)
      if (f !== undefined && Number.isInteger(t.value)) return { from: i, to: i + 2, value: t.value + f, ...marked(next!) }
      if (next?.kind === 'number' && next.value !== undefined && next.value < 1 && next.text.length === 1)
        return { from: i, to: i + 2, value: t.value + next.value }
      // "12 mil 500", "12 thousand 5 hundred", "9 hundred"
      if (next && scaleOf(next.norm) !== undefined && !/k$/i.test(t.text)) {
        const scale = scaleOf(next.norm)!
        let value = t.value * scale
        let to = i + 2
        const rest =
          tokens[to]?.kind === 'number' && tokens[to]!.value !== undefined && tokens[to]!.value! < scale
            ? { to: to + 1, value: tokens[to]!.value! }
            : scale === 1000
              ? words(tokens, to)
              : undefined
        const hundreds = rest && rest.value < 10 && scaleOf(normAt(tokens, rest.to)) === 100
        if (rest && hundreds && scale === 1000) {
          value += rest.value * 100
          to = rest.to + 1
        } else if (rest && rest.value < scale && scale === 1000 && rest.value >= 10) {
          value += rest.value
          to = rest.to
        }
        const h = tail(tokens, to)
        if (h) return { from: i, to: to + h.length, value: value + scale * h.adds }
        return { from: i, to, value }
      }
      // "12 k from lane": thousands written apart; Spanish "k" for "que" is followed by a verb
      if (next?.norm === 'k' && t.value < 1000 && AFTER_K.test(tokens[i + 2]?.norm ?? ''))
        return { from: i, to: i + 2, value: t.value * 1000 }
      // "33 punto 8"
      const point = /^(?:punto|point)$/.test(next?.norm ?? '') ? tokens[i + 2] : undefined
      if (point?.value !== undefined && Number.isInteger(t.value) && point.value < 10 && Number.isInteger(point.value))
        return { from: i, to: i + 3, value: t.value + point.value / 10 }
      // "2 dozen"
      if (/^(?:dozen|doz|dzn|docenas?|dosenas?)$/.test(tokens[i + 1]?.norm ?? '')) return { from: i, to: i + 2, value: t.value * 12 }
      const h = tail(tokens, i + 1)
      if (h) return { from: i, to: i + 1 + h.length, value: t.value + h.adds }
      return { from: i, to: i + 1, value: t.value }
    }
    const f = fraction(t)
    // "1/2 a wagon"
    if (f !== undefined && f < 1 && /^an?$/.test(normAt(tokens, i + 1))) return { from: i, to: i + 2, value: f }
    if (f !== undefined) return { from: i, to: i + 1, value: f, ...marked(t) }
    const feet = /^(\d+(?:\.\d+)?)\s?['’′](?:\s?(\d+(?:\.\d+)?))?/.exec(t.text)
    if (feet) return { from: i, to: i + 1, value: Number(feet[1]) + Number(feet[2] ?? 0) / 12, feet: true }
    const inches = /^(\d+(?:\.\d+)?)\s?(?:["”″]|'')$/.exec(t.text)
    if (inches) return { from: i, to: i + 1, value: Number(inches[1]), inches: true }
    const ord = ORDINAL.exec(n)
    if (ord) return { from: i, to: i + 1, value: Number(ord[1]), ordinal: true }
    return undefined
  }
  if (t.kind !== 'word' || !BEGINS.has(n)) return undefined
  if (n === 'quarter' && /^(?:ton|load|bucket|batch)$/.test(normAt(tokens, i + 1))) return { from: i, to: i + 1, value: 0.25 }
  if (n === 'quarter' && (tokens[i + 1]?.norm === 'inch' || (tokens[i + 1]?.norm === 'of' && tokens[i + 2]?.norm === 'an')))
    return { from: i, to: tokens[i + 1]!.norm === 'of' ? i + 3 : i + 1, value: 0.25 }
  if ((n === 'inch' || n === 'foot' || n === 'pulgada' || n === 'pie') && tail(tokens, i + 1))
    return {
      from: i,
      to: i + 1 + tail(tokens, i + 1)!.length,
      value: 1 + tail(tokens, i + 1)!.adds,
      ...(n === 'inch' || n === 'pulgada' ? { inches: true } : { feet: true }),
    }
  const second = normAt(tokens, i + 1)
  // "for teen loads"
  if (/^teens?$/.test(second) && TEEN.has(n)) return { from: i, to: i + 2, value: TEEN.get(n)! }
  if (n === 'half' || n === 'medio' || n === 'media') {
    if (/^(?:dozen|doz|dzn|docena|dosena)$/.test(second)) return { from: i, to: i + 2, value: 6 }
    let to = i + 1
    if (second === 'of') to++
    if (tokens[to]?.norm === 'a' || tokens[to]?.norm === 'an') to++
    if (tokens[to]?.norm === 'dozen') return { from: i, to: to + 1, value: 6 }
    return { from: i, to, value: 0.5 }
  }
  if ((n === 'a' || n === 'an' || n === 'un' || n === 'una' || n === 'one') && counted(second) !== undefined) {
    const value = counted(second)!
    return {
      from: i,
      to: i + (normAt(tokens, i + 2) === 'of' || normAt(tokens, i + 2) === 'de' || normAt(tokens, i + 2) === 'd' ? 3 : 2),
      value,
    }
  }
  // "docena y media"
  const more = counted(n) === 12 ? tail(tokens, i + 1) : undefined
  if (more)
    return { from: i, to: i + 1 + more.length + (normAt(tokens, i + 1 + more.length) === 'de' ? 1 : 0), value: 12 * (1 + more.adds) }
  if (counted(n) !== undefined && n !== 'pair') return { from: i, to: i + (second === 'of' || second === 'de' ? 2 : 1), value: counted(n)! }
  if ((n === 'a' || n === 'an') && second === 'half' && /^(?:dozen|doz|dzn)$/.test(normAt(tokens, i + 2)))
    return { from: i, to: i + 3, value: 6 }
  if ((n === 'a' || n === 'an') && second === 'half' && normAt(tokens, i + 2) !== 'dollar') return { from: i, to: i + 2, value: 0.5 }
  if ((n === 'a' || n === 'an') && (second === 'hundred' || second === 'thousand')) {
    const rest = words([...tokens.slice(0, i), { ...t, norm: 'one' }, ...tokens.slice(i + 1)], i)
    if (rest) return { from: i, to: rest.to, value: rest.value }
  }
  const q = words(tokens, i)
  if (q) {
    // "five dozen"
    if (tokens[q.to] && /^(?:dozen|doz|dzn|docenas)$/.test(tokens[q.to]!.norm)) return { from: i, to: q.to + 1, value: q.value * 12 }
    const h = tail(tokens, q.to)
    const scale = h ? scaleOf(tokens[q.to + h.length]?.norm ?? '') : undefined
    // "two and a half thousand"
    if (h && scale) return { from: i, to: q.to + h.length + 1, value: (q.value + h.adds) * scale }
    if (h) return { from: i, to: q.to + h.length, value: q.value + (q.value >= 1000 ? 1000 : 1) * h.adds }
    const f = fraction(tokens[q.to])
    if (f !== undefined) return { from: i, to: q.to + 1, value: q.value + f }
    if (normAt(tokens, q.to) === 'a' && normAt(tokens, q.to + 1) === 'half') return { from: i, to: q.to + 2, value: q.value + 0.5 }
    return { from: i, to: q.to, value: q.value, weak: (q.to === i + 1 && (n === 'one' || n === 'once' || n === 'uno')) || undefined }
  }
  if (Object.hasOwn(EN_HOMOPHONES, n)) {
    const h = tail(tokens, i + 1)
    if (
      h &&
      (normAt(tokens, i + 1 + h.length) === 'feet' ||
        normAt(tokens, i + 1 + h.length) === 'foot' ||
        normAt(tokens, i + 1 + h.length) === 'ft' ||
        /^(loads|buckets|inches|tons|batches|hours|hrs|hour)$/.test(normAt(tokens, i + 1 + h.length)))
    )
      return { from: i, to: i + 1 + h.length, value: EN_HOMOPHONES[n]! + h.adds }
    // "won twenty to", "forty by won ten"
    if ((n === 'won' || n === 'wun') && (tens(second) !== undefined || (small(second) ?? 0) >= 10)) {
      const rest = words([...tokens.slice(0, i), { ...t, norm: 'one' }, ...tokens.slice(i + 1)], i)
      if (rest) return { from: i, to: rest.to, value: rest.value }
    }
    // "ate thousand five hundred", "to hundred"
    if (scaleOf(second) !== undefined) {
      const name = Object.keys(EN_UNITS).find(k => EN_UNITS[k] === EN_HOMOPHONES[n])!
      const rest = words([...tokens.slice(0, i), { ...t, norm: name }, ...tokens.slice(i + 1)], i)
      if (rest) return { from: i, to: rest.to, value: rest.value }
    }
    return { from: i, to: i + 1, value: EN_HOMOPHONES[n]!, weak: true }
  }
  if (n === 'a' || n === 'an' || n === 'un' || n === 'una') return { from: i, to: i + 1, value: 1, weak: true }
  return undefined
}

/** "for teen", "six teen": written apart. */
const TEEN = new Map(Object.entries({ thir: 13, for: 14, fore: 14, four: 14, fif: 15, six: 16, seven: 17, eight: 18, ate: 18, nine: 19 }))

/** The number that starts at token `i`, with "10-12", "10 to 12", "two or three" as a range. */
export const numberAt = (tokens: Token[], i: number): NumberItem | undefined => {
  const a = one(tokens, i)
  if (!a || a.ordinal || a.feet || a.inches) return a
  const join = tokens[a.to]?.norm
  if (!a.weak && (join === '-' || join === 'to' || join === 'or' || join === 'o' || join === 'a')) {
    const b = tokens[a.to + 1] ? one(tokens, a.to + 1) : undefined
    // "10 to 12", "two or three": close together and rising; "2 to 1" is a ratio and "9 - 2" nothing
    if (b && !b.weak && !b.ordinal && !b.feet && !b.inches && b.value > a.value && b.value <= a.value * 2 + 1)
      return { from: a.from, to: b.to, value: b.value, range: [a.value, b.value] }
  }
  return a
}
