import { small } from './numberWords.ts'
import { normAt, type Token } from './token.ts'

/** A fraction's value: 1/2. */
export const fraction = (t: Token | undefined): number | undefined => {
  const m = t && /^(\d{1,3})\/(\d{1,3})[’'′"”″]?$/.exec(t.text)
  if (!m || Number(m[2]) < 2 || Number(m[1]) >= Number(m[2]) || ![2, 3, 4, 5, 8, 16].includes(Number(m[2]))) return undefined
  return Number(m[1]) / Number(m[2])
}
/** Feet or inches, where a fraction was written with their mark: 2 1/2'. */
export const marked = (t: Token): { feet?: true; inches?: true } =>
  /[’'′]$/.test(t.text) ? { feet: true } : /["”″]$/.test(t.text) ? { inches: true } : {}

const FINE: Record<string, number> = { tenths: 10, tenth: 10, eighths: 8, decimas: 10, decimos: 10 }

/** "and a half", "and three tenths", "and three quarters", "y medio": how many tokens, and what they add. */
export const tail = (tokens: Token[], i: number): { length: number; adds: number } | undefined => {
  const first = normAt(tokens, i)
  // nearly always something else stands there
  if (first !== 'y' && first !== 'and' && first !== '&' && first !== 'n' && !(first === 'an' && normAt(tokens, i + 2) === 'half'))
    return undefined
  const next = normAt(tokens, i + 1)
  const tenths = FINE[normAt(tokens, i + 2)]
  if (tenths) {
    const many = small(next) ?? Number(next)
    return many < tenths ? { length: 3, adds: many / tenths } : undefined
  }
  if (first === 'y')
    return next === 'medio' || next === 'media' ? { length: 2, adds: 0.5 } : next === 'cuarto' ? { length: 2, adds: 0.25 } : undefined
  const k = next === 'a' || next === 'one' ? 2 : 1
  // "50 mph and half an inch": half of something else
  if (normAt(tokens, i + k) === 'half' && /^an?$/.test(normAt(tokens, i + k + 1))) return undefined
  if (normAt(tokens, i + k) === 'half') return { length: k + 1, adds: 0.5 }
  if (normAt(tokens, i + k) === 'quarter') return { length: k + 1, adds: 0.25 }
  if (next === 'three' && normAt(tokens, i + 2) === 'quarters') return { length: 3, adds: 0.75 }
  return undefined
}
