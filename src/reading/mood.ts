import type { Segment } from './clauses.ts'
import { has, type Item } from './item.ts'
import type { Mood } from './reading.ts'

/** How a clause was meant, by the words of mood in it and before it. */
export const moodOf = (items: Item[], from: number, seg: Segment, carried: Mood | undefined): Mood => {
  let mood: Mood = carried ?? 'fact'
  for (let k = from; k < seg.to; k++) {
    const i = items[k]!
    if (has(i, 'find:good')) continue
    const inside = k >= seg.from
    if (has(i, 'but')) mood = 'fact'
    if (has(i, 'so') && inside && seg.act?.frame !== 'open') return 'plan'
    if (has(i, 'm:hope')) return 'hope'
    // "si, di 11 mil": yes, not if
    const yes = i.tokens[0]?.norm === 'si' && k === 0 && (has(items[1], 'comma') || /í/.test(i.text))
    if (has(i, 'm:if') && inside && !yes && seg.act?.frame !== 'open') return 'if'
    if (has(i, 'm:no') && !has(i, 'find:good') && (inside || k >= from)) mood = 'denial'
    if (has(i, 'm:tell') && mood === 'fact') mood = 'hearsay'
    if (has(i, 'm:plan') && mood === 'fact' && !has(i, 'approx')) mood = 'plan'
    if (i.date?.ahead && mood === 'fact') mood = 'plan'
  }
  return mood
}
