import type { EventType } from '../book/events.ts'
import type { Draft } from '../book/questions.ts'
import type { Act } from '../reading/reading.ts'
import { addDays } from '../units/calendar.ts'
import type { Context } from './context.ts'

/** Frames whose day lies ahead. */
const AHEAD = new Set(['remind', 'harvest'])

/** A clause as a draft: the reading's slots, its day, the words. */
export const draftOf = (act: Act, c: Context): Draft => {
  const slots: Record<string, unknown> = { ...act.slots }
  if (act.date) slots.on = AHEAD.has(act.frame) ? act.date.future : act.date.past
  else if (act.frame === 'remind' && (typeof slots.time === 'string' || slots.every !== undefined)) {
    // a time without a day: the next time the clock shows it
    const late = typeof slots.time === 'string' && Number(slots.time.slice(0, 2)) + Number(slots.time.slice(3)) / 60 <= c.hour
    slots.on = late || slots.time === undefined ? addDays(c.day, 1) : c.day
  } else if (!AHEAD.has(act.frame)) slots.on = c.day
  slots.by = c.name
  slots.said = c.message.text.slice(0, 4096)
  return { type: act.frame as EventType, slots, sure: [], replaces: [] }
}
