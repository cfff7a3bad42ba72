import type { Token } from './token.ts'

/** A fraction's value: 1/2. */
export const fraction = (t: Token | undefined): number | undefined => {
  const m = t && /^(\d{1,3})\/(\d{1,3})[’'′"”″]?$/.exec(t.text)
  if (!m || Number(m[2]) < 2 || Number(m[1]) >= Number(m[2]) || ![2, 3, 4, 5, 8, 16].includes(Number(m[2]))) return undefined
  return Number(m[1]) / Number(m[2])
}
/** Feet or inches, where a fraction was written with their mark: 2 1/2'. */
export const marked = (t: Token): { feet?: true; inches?: true } =>
  /[’'′]$/.test(t.text) ? { feet: true } : /["”″]$/.test(t.text) ? { inches: true } : {}

/** "and a half", "and three quarters", "y medio": how many tokens, and what they add. */
export const tail = (tokens: Token[], i: number): { length: number; adds: number } | undefined => {
  const w = (k: number) => tokens[i + k]?.norm ?? ''
  if (w(0) === 'y')
    return w(1) === 'medio' || w(1) === 'media' ? { length: 2, adds: 0.5 } : w(1) === 'cuarto' ? { length: 2, adds: 0.25 } : undefined
  if (w(0) !== 'and' && w(0) !== '&' && w(0) !== 'n') return undefined
  const k = w(1) === 'a' || w(1) === 'one' ? 2 : 1
  if (w(k) === 'half') return { length: k + 1, adds: 0.5 }
  if (w(k) === 'quarter') return { length: k + 1, adds: 0.25 }
  if (w(1) === 'three' && w(2) === 'quarters') return { length: 3, adds: 0.75 }
  return undefined
}
