/**
 * A crew member who comes out of a dead zone sends a dozen messages at once, and a busy one some in a minute; more than that is a
 * loop between two machines. Common practice, no source.
 */
export const BURST = 30
export const PER_MINUTE = 10
/** Numbers kept in mind; only signed requests bring one, so this is no more than a bound. */
const MOST = 10_000

/** Seconds to wait for one more message of a number; undefined where it may come now. */
export type Rate = (phone: string) => number | undefined

export const makeRate = (nowMs: () => number): Rate => {
  const left = new Map<string, { n: number; at: number }>()
  return phone => {
    const now = nowMs()
    const was = left.get(phone)
    const n = Math.min(BURST, (was?.n ?? BURST) + ((now - (was?.at ?? now)) / 60_000) * PER_MINUTE)
    if (n < 1) return Math.ceil(((1 - n) * 60) / PER_MINUTE)
    // the one heard last stands last: the first is forgotten first
    left.delete(phone)
    left.set(phone, { n: n - 1, at: now })
    if (left.size > MOST) left.delete(left.keys().next().value!)
    return undefined
  }
}
