/** The settings that may be told in a message. Hours are `HH:MM`, days of the year `MM-DD`, days of the week 0 Sunday to 6. */
export type WishName =
  | 'checkDays'
  | 'morningHour'
  | 'eveningHour'
  | 'weeklyHour'
  | 'weeklyDay'
  | 'askHour'
  | 'quietFrom'
  | 'quietTo'
  | 'nudgesPerDay'
  | 'lat'
  | 'lon'
  | 'freezeDay'
  | 'thawDay'
  | 'emptySummaries'
  | 'waitDays'
  | 'morning'
  | 'evening'
  | 'weekly'
  | 'lang'
  | 'totalEvery'

/** What a fixed phrase sets, before it is checked; `who` is `me`, `crew` or a name as it was said. */
export interface Made {
  sets: [WishName, string | number | boolean | undefined][]
  who?: string
}

const ME = new Set(['me', 'my', 'mi', 'i', 'yo', 'mine', "i'd"])
const CREW = new Set(['us', 'here', 'everyone', 'everybody', 'all', 'crew', 'group', 'grupo', 'todos', 'nosotros', 'cuadrilla', 'equipo'])

/** Whom a word means: `me`, `crew`, or itself. */
export const whoOf = (word: string): string => (ME.has(word) ? 'me' : CREW.has(word) ? 'crew' : word)
export const isWho = (word: string): boolean => ME.has(word) || CREW.has(word)
