import type { Day } from '../units/calendar.ts'
import { has, hasCat, type Item } from './item.ts'
import { isThin } from './pool.ts'
import type { Act } from './reading.ts'
import { mayComeBack, remindActs, standingActs } from './remind.ts'

/** Words of courtesy before what is wanted. */
const LEADS_IN =
  /^(?:ok|okay|hey|hi|so|please|pls|plz|can|could|would|will|you|u|need to|puedes|podrias|me puedes|me podrias|por favor|porfa|oye)$/

/** `remind` and `note` take the rest of their sentence as words; so does a thing to be done every so often. */
export const wordy = (items: Item[], text: string, day: Day): Act[] | undefined => {
  const content = items.findIndex(
    i => (!isThin(i) && !hasCat(i, 'person') && !LEADS_IN.test(i.text.toLowerCase())) || has(i, 'v:note') || has(i, 'v:remind'),
  )
  const i = items[content]
  if (!i) return undefined
  // "we need to order plastic, remind me monday": what it is about stands before
  const later = items.findIndex(x => has(x, 'v:remind'))
  if (
    later > content &&
    items.slice(later + 1).every(x => x.date || isThin(x) || hasCat(x, 'person')) &&
    items.slice(0, later).some(x => has(x, 'm:plan'))
  )
    return remindActs(items, later, text, day)
  // "can you remind me wednesday", "next monday remind me"
  if (
    later >= 0 &&
    items.slice(0, later).every(x => x.date || isThin(x) || hasCat(x, 'person') || has(x, 'comma') || LEADS_IN.test(x.text.toLowerCase()))
  )
    return remindActs(items, later, text, day)
  if (has(i, 'v:note') && content <= 2) {
    const rest = items.slice(content + 1).filter((x, k) => !(k === 0 && (has(x, 'comma') || has(x, 'mark'))))
    // "apunta 7 viajes" is a log, not a note
    if (has(i, 'v:put') && items.some(x => x.num !== undefined && (x.unit !== undefined || !has(rest[0], 'q:what')))) return undefined
    if (!rest.length) return undefined
    const first = rest[0]!.tokens[0]!
    const last = rest.at(-1)!.tokens.at(-1)!
    return [
      {
        frame: 'note',
        mood: 'fact',
        slots: { text: text.slice(first.from, last.to).replace(/^that\s+/i, '') },
        used: 6,
        left: 0,
        leftWords: [],
        leftNumbers: 0,
        full: true,
      },
    ]
  }
  return mayComeBack(items) ? standingActs(items, text, day) : undefined
}
