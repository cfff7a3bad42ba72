import { addDays, type Day } from '../../../src/units/calendar.ts'
import type { Dice } from '../random.ts'
import type { Question } from '../season.ts'

/**
 * Days of asking along a feeding: `ends` is when the feed runs out, in days from the morning of the opening (with the part of the last
 * day). Asked in the evenings, so that many days are behind.
 */
export const askAlong = (d: Dice, opened: Day, ends: number): Question[] => {
  const questions: Question[] = []
  for (let ahead = 8; ahead < Math.min(ends - 4, 120); ahead += Math.round(d.between(5, 12))) {
    const day = Math.floor(ends - ahead) - 1
    if (day >= 0) questions.push({ on: addDays(opened, day), truth: ends - day - 1 })
  }
  return questions
}
