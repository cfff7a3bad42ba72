/**
 * How a formula answers: the figure, and a code for everything that lies outside the range the formula was made for. The figure is
 * always finite: an input that cannot be (a dry matter of 140 %) is held to the nearest that can, and its code says so. What the
 * codes mean in words is not decided here.
 */
export interface Figure<T extends number = number> {
  value: T
  outside?: string[]
}

/** A figure with what it may be instead, `low` and `high` about one time in ten each. */
export interface Range {
  low: number
  mid: number
  high: number
}

export interface Bounds {
  /** The input, or where it cannot be worked with, the nearest that can. Outside `valid` it leaves `code`. */
  hold(code: string, x: number, valid: readonly [low: number, high: number], can?: readonly [low: number, high: number]): number
  flag(code: string, when: boolean): void
  figure<T extends number>(value: T): Figure<T>
  /** `{ outside }` to spread into a result of another form. */
  rest(): { outside?: string[] }
}

/**
 * Collects the codes of one evaluation. `can` are the hard limits of an input, `valid` those of the formula; `can` is `valid` where
 * left out.
 */
export const bounds = (): Bounds => {
  const codes: string[] = []
  const flag = (code: string, when: boolean): void => {
    if (when && !codes.includes(code)) codes.push(code)
  }
  const rest = () => (codes.length ? { outside: codes } : {})
  return {
    hold(code, x, valid, can = valid) {
      flag(code, !(x >= valid[0] && x <= valid[1]))
      if (Number.isNaN(x)) return valid[0]
      const held = Math.min(Math.max(x, can[0]), can[1])
      return Number.isFinite(held) ? held : held > 0 ? valid[1] : valid[0]
    },
    flag,
    figure: value => ({ value, ...rest() }),
    rest,
  }
}

export const outsideOf = (...figures: { outside?: string[] }[]): { outside?: string[] } => {
  const codes = [...new Set(figures.flatMap(f => f.outside ?? []))]
  return codes.length ? { outside: codes } : {}
}
