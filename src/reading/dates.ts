import * as chrono from 'chrono-node/en'
import { addDays, addMonths, type Day, dayOf, daysBetween, isDay, monthOf, weekday } from '../units/calendar.ts'
import { EN_AHEAD, EN_BETWEEN, EN_JOINS, EN_NUMBER, EN_PART_PHRASES, EN_PARTS, EN_PHRASES, EN_RULES, EN_SINCE, EN_UNTIL } from './en/dates.ts'
import { ES_AHEAD, ES_BETWEEN, ES_JOINS, ES_NUMBER, ES_PART_PHRASES, ES_PARTS, ES_PHRASES, ES_RULES, ES_SINCE, ES_UNTIL } from './es/dates.ts'
import type { DateItem } from './item.ts'
import { LEXICON } from './lexicon.ts'
import { type Clock, settle, takesTimes, timeAt } from './times.ts'
import type { Token } from './token.ts'

export type Part = NonNullable<DateItem['part']>
export type Unit = 'minute' | 'hour' | 'day' | 'night' | 'week' | 'month' | 'year'
