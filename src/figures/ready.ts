import { addDays, type Day, daysBetween } from '../units/calendar.ts'
import type { Pct } from '../units/measure.ts'
import { bounds, type Figure } from './result.ts'

/** Fermentation is mostly done three weeks after sealing (Hay & Forage Grower), days. */
export const WAIT_DAYS = 21
/** Better after two months (Thomas, Hoard's), days. */
export const BETTER_DAYS = 60
/** Starch and protein digest better up to four months on (feed company), days. */
export const BEST_DAYS = 120
/** Silo gas: begins within hours of filling, worst on days 1 to 3, dangerous up to three weeks (NASD, MSU, Penn State), days. */
export const GAS_DAYS = 21
export const GAS_WORST = [1, 3] as const

export interface Ready {
  readyOn: Day
  betterOn: Day
  /** Whole days still to wait; 0 when ready. */
  daysToGo: number
  ready: boolean
}

/** When a pile may be opened: its last sealing and the wait. Calendar days of the farm. */
export const readyOn = (sealedOn: Day, today: Day, waitDays = WAIT_DAYS): Ready => {
  const on = addDays(sealedOn, waitDays)
  const daysToGo = Math.max(0, daysBetween(today, on))
  return { readyOn: on, betterOn: addDays(sealedOn, BETTER_DAYS), daysToGo, ready: daysToGo === 0 }
}

export interface Gas {
  clearOn: Day
  stage: 'worst' | 'danger' | 'clear'
}

/** Silo gas (nitrogen dioxide) after the last load went in. Drought and late nitrogen make more of it. */
export const siloGas = (filledOn: Day, today: Day): Gas => {
  const days = daysBetween(filledOn, today)
  const clearOn = addDays(filledOn, GAS_DAYS)
  return { clearOn, stage: days >= GAS_DAYS ? 'clear' : days <= GAS_WORST[1] ? 'worst' : 'danger' }
}

/** pH below which clostridia are held down, at 25 and 35 % dry matter: Hay & Forage Grower 4430. Grass is as corn. */
const PH: Record<'corn' | 'alfalfa', readonly [number, number]> = { corn: [4.25, 4.6], alfalfa: [4.4, 5] }

/**
 * pH that a silage should have reached, by its dry matter: a straight line between the two published points. Valid 25 to 35 %; held
 * at their ends past them.
 */
export const targetPh = (crop: string, dmPct: Pct): Figure => {
  const b = bounds()
  const dm = b.hold('dry-matter', dmPct, [25, 35])
  const [low, high] = PH[crop === 'haylage' ? 'alfalfa' : 'corn']
  return b.figure(low + ((high - low) * (dm - 25)) / 10)
}
