/**
 * A Gaussian belief about a few numbers, sharpened by one linear reading after another (the Kalman update in its scalar form;
 * Kalman 1960, and any textbook of estimation). Plain arrays, row by row; nothing is inverted.
 */
export interface Belief {
  n: number
  mean: Float64Array
  /** Covariance, n by n. */
  cov: Float64Array
  /** Log of the evidence: how well the readings so far were foretold. */
  evidence: number
  /** Room to work in. */
  room: Float64Array
}

export const belief = (means: readonly number[], sds: readonly number[]): Belief => {
  const n = means.length
  const cov = new Float64Array(n * n)
  for (let i = 0; i < n; i++) cov[i * n + i] = sds[i]! ** 2
  return { n, mean: Float64Array.from(means), cov, evidence: 0, room: new Float64Array(n) }
}

/** Number `to` grows by `by` times number `from`. */
export const drift = (b: Belief, to: number, from: number, by: number): void => {
  const { n, mean, cov } = b
  if (by === 0) return
  mean[to]! += by * mean[from]!
  for (let j = 0; j < n; j++) cov[to * n + j]! += by * cov[from * n + j]!
  for (let i = 0; i < n; i++) cov[i * n + to]! += by * cov[i * n + from]!
}

/** Number `at` is drawn back toward `mean`: `keep` of it stays, and it becomes less sure by `variance`. */
export const relax = (b: Belief, at: number, keep: number, mean: number, variance: number): void => {
  const { n, cov } = b
  b.mean[at] = keep * b.mean[at]! + (1 - keep) * mean
  for (let j = 0; j < n; j++) cov[at * n + j]! *= keep
  for (let i = 0; i < n; i++) cov[i * n + at]! *= keep
  cov[at * n + at]! += variance
}

export const blur = (b: Belief, at: number, variance: number): void => {
  b.cov[at * b.n + at]! += variance
}

/** Readings further off than this many standard errors count as if they were less exact: a slip must not move everything. */
const SLIP = 2.5

/** `ph` is covariance times `h`, `off` the reading less what was foretold, `s` its variance. */
const take = (b: Belief, off: number, variance: number): void => {
  const { n, mean, cov, room: ph } = b
  let s = variance
  const e2 = (off * off) / s
  // Beyond the limit the tail is an exponential one (Huber), and the reading is widened until it stands at the limit.
  b.evidence -= 0.5 * (Math.log(s) + (e2 > SLIP * SLIP ? 2 * SLIP * Math.sqrt(e2) - SLIP * SLIP : e2))
  if (e2 > SLIP * SLIP) s = (off * off) / (SLIP * SLIP)
  for (let i = 0; i < n; i++) {
    const k = ph[i]! / s
    mean[i]! += k * off
    if (k !== 0) for (let j = 0, at = i * n; j < n; j++, at++) cov[at]! -= k * ph[j]!
  }
}

/** Takes in one reading: `sum(h[i] * number[i]) = z`, with error variance `r`. */
export const learn = (b: Belief, h: Float64Array, z: number, r: number): void => {
  const { n, mean, cov, room: ph } = b
  let s = r
  let off = z
  for (let i = 0, at = 0; i < n; i++) {
    let t = 0
    for (let j = 0; j < n; j++, at++) t += cov[at]! * h[j]!
    ph[i] = t
    off -= h[i]! * mean[i]!
  }
  for (let i = 0; i < n; i++) s += h[i]! * ph[i]!
  take(b, off, s)
}

/** The same where one number alone was read. */
export const learnOne = (b: Belief, at: number, z: number, r: number): void => {
  const { n, cov, room: ph } = b
  for (let i = 0; i < n; i++) ph[i] = cov[i * n + at]!
  take(b, z - b.mean[at]!, r + ph[at]!)
}

/** Standard normal distribution: share below `z`. Abramowitz and Stegun 26.2.17, error below 7.5e-8. */
export const normalBelow = (z: number): number => {
  const t = 1 / (1 + 0.2316419 * Math.abs(z))
  const poly = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))))
  const tail = 0.3989422804014327 * Math.exp(-0.5 * z * z) * poly
  return z >= 0 ? 1 - tail : tail
}
