import type { Lb, Share } from '../../units/measure.ts'
import { type FedDay, median } from './fedOut.ts'
import type { Need } from './need.ts'

/** What a day of a pile is told against: the ration as said, else the usual log, else what the face has passed. */
export interface Reference {
  from: 'ration' | 'logs' | 'face' | 'none'
  /** For each day, lb. */
  days: Lb[]
  /** From now on, lb a day. */
  next: Lb
  /** What is really fed, as a multiple of it, before any log was read. */
  use: { mean: number; sd: number }
}

/**
 * Really fed over the ration: refusals and what falls beside, 5 to 10 % at least (Cornell, South Central New York 2020); a part of
 * it is in what is told.
 */
const OVER: Share = 1.02
/** Errors by where the figure comes from. Common practice, no source. */
const SD = { pile: 0.07, crop: 0.1, herd: 0.13, intake: 0.3, logs: 0.1, face: 0.5 }
const SHARED_SD: Share = 0.25
/** So many whole logs tell more than a guess by the head. */
const ENOUGH_LOGS = 3

export const referenceOf = (
  days: readonly FedDay[],
  needs: readonly (Need | undefined)[],
  now: Need | undefined,
  byFace: Lb | undefined,
): Reference => {
  const first = needs.find(n => n !== undefined) ?? now
  const logs = days.flatMap(d => (d.lb !== undefined && d.whole ? [d.lb] : []))
  const said = first !== undefined && (first.from !== 'intake' || logs.length < ENOUGH_LOGS)
  if (said) {
    // A ration told after the opening holds for the days before it too.
    const list = days.map((_, i) => (needs[i] ?? first).lbDay)
    const from = (now ?? first).from
    const shared = (now ?? first).sharedBy > 1
    const use = from === 'intake' ? { mean: 1, sd: SD.intake } : { mean: OVER, sd: Math.hypot(SD[from], shared ? SHARED_SD : 0) }
    return { from: 'ration', days: list, next: (now ?? first).lbDay, use }
  }
  const same = (from: 'logs' | 'face', lb: Lb): Reference => ({ from, days: days.map(() => lb), next: lb, use: { mean: 1, sd: SD[from] } })
  const usual = median(logs.length ? logs : days.flatMap(d => d.lb ?? []))
  if (usual !== undefined) return same('logs', usual)
  if (byFace !== undefined) return same('face', byFace)
  return { from: 'none', days: days.map(() => 0), next: 0, use: { mean: 1, sd: 1 } }
}

/** Closer than this a log is the ration itself, a share. */
const NOMINAL: Share = 0.001

/** Most of the logs are the ration to the pound: the figure was copied, the scale was not read. */
export const isCopied = (days: readonly FedDay[], refs: readonly Lb[]): boolean => {
  const off = days.flatMap((d, i) => (d.lb !== undefined && refs[i] ? [Math.abs(d.lb / refs[i]! - 1)] : []))
  return off.length >= 4 && off.filter(x => x < NOMINAL).length >= 0.7 * off.length
}

/** Least and most that one day's log is off, a share; where few were logged. Common practice, no source. */
const LOG_SD = { least: 0.025, most: 0.3, few: 0.1 }

/** Error of one day's log, from how the logs differ from one to the next. */
export const logError = (ratios: readonly number[]): Share => {
  if (ratios.length < 4) return LOG_SD.few
  const steps = ratios.slice(1).map((r, i) => Math.abs(r - ratios[i]!))
  // The middle of the steps, as a standard deviation of a normal, over the root of two for a difference.
  return Math.min(LOG_SD.most, Math.max(LOG_SD.least, (1.4826 * median(steps)!) / Math.SQRT2))
}
